import type { Inputs, ValuesOf } from './inputs.ts';
import { isShown, type Problem, type Values } from './state.ts';

/** Stops the calculation at one field. Refusals of a row's cells belong to its `rows(...)`. */
export interface Refusal<I extends Inputs> {
  readonly at: keyof I & string;
  readonly when: (values: ValuesOf<I>) => boolean;
  readonly say: string;
}
/** What stops it with these values, at fields and at cells of rows. */
export const refusalsOf = <I extends Inputs>(inputs: I, own: readonly Refusal<I>[], values: Values & ValuesOf<I>): readonly Problem[] => [
  ...own.filter((refusal) => refusal.when(values)).map(({ at, say }) => ({ at, say })),
  ...Object.entries(inputs).flatMap(([key, input]) => {
    const list = values[key];
    if (input.kind !== 'rows' || !isShown(input, values) || !Array.isArray(list)) return [];
    return list.flatMap((row, index) => input.refuse(row).map(({ at, say }) => ({ at: `${key}.${index}.${at}`, say })));
  }),
];
/** All that can stop it, for the checks. */
export const plainRefusals = <I extends Inputs>(inputs: I, own: readonly Refusal<I>[]): readonly Problem[] => [
  ...own.map(({ at, say }) => ({ at, say })),
  ...Object.entries(inputs).flatMap(([key, input]) =>
    input.kind === 'rows' ? input.refusals.map(({ at, say }) => ({ at: `${key}.${at}`, say })) : [],
  ),
];
