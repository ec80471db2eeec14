import { type Calculator, defineCalculator, type Words, type Work } from './define.ts';
import type { Inputs, ValuesOf } from './inputs.ts';
import type { Quantity } from './quantities.ts';
import type { Refusal } from './refusals.ts';

/** What works out a calculation that runs long: at one go, and the same a slice at a time, yielding the share that is done. */
interface Engine<I extends Inputs, R> {
  readonly compute: (inputs: ValuesOf<I>) => R;
  readonly computeBySteps: (inputs: ValuesOf<I>) => Generator<number, R>;
}
interface LongWork<I extends Inputs, R, E> extends Omit<Work<I, R>, 'compute' | 'computeBySteps' | 'refusals'> {
  /** A file of its own: `() => import('./compute.ts')`. A page whose worker has it never fetches it. */
  readonly engine: () => Promise<E & Engine<I, R>>;
  /** Some can only be told by what works it out. */
  readonly refusals?: readonly (Omit<Refusal<I>, 'when'> & { readonly when: (values: ValuesOf<I>, engine: E) => boolean })[];
}

/** The same as `defineCalculator` for one that runs long. It says what it asks and tells at once; before it can run, its `fetchEngine` must have been waited for. */
export const defineLong = <const I extends Inputs, R extends object, E>({ engine, refusals = [], ...work }: LongWork<I, R, E>) => ({
  describe: (words: Words<I, R> & { readonly quantities: Readonly<Record<string, Quantity>> }): Calculator => {
    let here: (E & Engine<I, R>) | undefined;
    const fetched = (): E & Engine<I, R> => {
      if (!here) throw new Error(`${work.slug}: what works it out was not fetched`);
      return here;
    };
    const calculator = defineCalculator<I, R>({
      ...work,
      refusals: refusals.map(({ when, ...refusal }) => ({ ...refusal, when: (values) => when(values, fetched()) })),
      compute: (values) => fetched().compute(values),
      computeBySteps: (values) => fetched().computeBySteps(values),
    }).describe(words);
    return {
      ...calculator,
      fetchEngine: async () => {
        here ??= await engine();
      },
    };
  },
});
