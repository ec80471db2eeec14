import type { UnitSystem } from '../units/units.ts';
import type { Compares } from './compares.ts';
import { withoutHollowRanges, withUnitOnce } from './hollowRanges.ts';
import type { Inputs, Named, ValuesOf } from './inputs.ts';
import type { Leading, Led, PlainLead } from './leads.ts';
import type { Picture, PlainPicture } from './pictures.ts';
import { areValuesOf, isComputed, plainInputs, plainStep } from './plain.ts';
import { printName } from './print.ts';
import type { Computed, NumberKeys, PlainValues, Quantity, QuantityFor, RowOf, RowsKeys } from './quantities.ts';
import { tellRanges } from './ranges.ts';
import { plainRefusals, type Refusal, refusalsOf } from './refusals.ts';
import { type First, type Group, type Layout, layoutOf } from './screen.ts';
import { type PlainShown, plainShown, type Shown } from './shown.ts';
import type { Problem, Values } from './state.ts';
import { type PlainStep, type StepUse, stepsOf, type Working } from './steps.ts';
import { useOf } from './stepUse.ts';
import type { Topic } from './topics.ts';
import { whenAsked } from './whenAsked.ts';
import { type Whole, wholesOf } from './wholes.ts';

/** Stands before the result; it does not stop it. */
export interface Caution<V> {
  readonly when: (values: V) => boolean;
  /** One sentence of at most 75 characters that does its work alone. */
  readonly lead: string;
  /** People or animals can die of it: moving water, poison, digging, fire, hungry stock. Such a lead always stands open above the answer. */
  readonly life?: true;
  /** The whole of it, opened from its lead and printed. */
  readonly say: string;
  /** Source key, `common practice` or `from memory`. */
  readonly source: string;
}
/** `caution(({ fedOut }) => fedOut, { say: '…', source: 'common practice' })`: what must be said before somebody acts, when, and by whom. */
export const caution = <V>(when: (values: NoInfer<V>) => boolean, words: Omit<Caution<V>, 'when'>): Caution<V> => ({ when, ...words });
/** First call: what is asked and what is computed. */
export interface Work<I extends Inputs, R> {
  readonly slug: string;
  readonly version: number;
  readonly title: string;
  readonly inputs: I & Named<I>;
  readonly refusals?: readonly Refusal<I>[];
  readonly compute: (inputs: ValuesOf<I>) => R;
  /** It runs long (`defineLong`): the same a slice at a time, yielding the share that is done. Pages then run it beside the form, show how far it is, and can stop it. */
  readonly computeBySteps?: (inputs: ValuesOf<I>) => Generator<number, R>;
}
type Show<V> = (name: keyof V & string) => string;
type SwingOf<I extends Inputs> = { readonly of: { [K in keyof I & string]: I[K]['kind'] extends 'number' ? K : never }[keyof I & string] } & Omit<
  Swing,
  'of'
>;
/** From where to where an answer may lie; both over the answer itself where they are shares of it. */
export interface Swing {
  readonly of: string;
  readonly low: number;
  readonly high: number;
  readonly isShare?: true;
}
/** Second call: what is said. By then the results have their types. */
export interface Words<I extends Inputs, R> {
  /** The reader's own question: `How much of that rain ran off?` */
  readonly question: string;
  readonly lead: string;
  /** Words that people search with and the page does not use, separated by commas. */
  readonly searchWords?: string;
  readonly quantities: { readonly [K in keyof R]: QuantityFor<R[K]> };
  readonly results: readonly (Shown<ValuesOf<I> & R, R> | readonly Shown<ValuesOf<I> & R, R>[])[];
  /** The questions that stand open, in order. */
  readonly first: First<I>;
  /** Into which the others fold, in order; what no group names folds into a last one. */
  readonly groups?: readonly Group<I>[];
  /** Management that is read in the field: each of two sides has its own, so they stand side by side as soon as somebody compares, and name no side. */
  readonly readings?: readonly (keyof I & string)[];
  /** Up to six results for the first printed page; the first six unless said. */
  readonly handout?: readonly (keyof R & string)[];
  readonly steps: Working<ValuesOf<I> & R, R>;
  readonly cautions: readonly Caution<ValuesOf<I> & R>[];
  /** What this cannot tell. */
  readonly limits: readonly string[];
  /** One line for a follow-up note, in the reader's units. */
  readonly note: (values: ValuesOf<I> & R, show: Show<ValuesOf<I> & R>) => string;
  /** Tells somebody to sell, to pull stock or to stop: the lines to call stand under the answer, on paper and in the note. */
  readonly weighsOnPeople?: true;
  /** Stands by the answer. */
  readonly picture?: Picture<ValuesOf<I> & R, R>;
  /** Stand below the results; the first of all that apply takes the place of a picture that does not. */
  readonly morePictures?: readonly Picture<ValuesOf<I> & R, R>[];
  /** What is shown together with its parts, where the picture does not show it so. A part may be the whole of smaller ones. */
  readonly wholes?: readonly Whole<NumberKeys<ValuesOf<I> & R>>[];
  /** How two visits are compared by it, where it is a test that is made again. */
  readonly compares?: Compares;
  readonly calendar?: { readonly [K in RowsKeys<R>]: CalendarOf<R, K> }[RowsKeys<R>];
  /** What people ask next, with what is known by then: `leading([…])` of `leads.ts`. */
  readonly leadsTo?: Leading<ValuesOf<I> & R>;
  /** How far what is asked may honestly be off, in the unit of its field: each is run alone, on demand, and told by how far it moves the first result. */
  readonly swings?: readonly SwingOf<I>[];
  /** Source keys, in the order in which they matter. */
  readonly sources: readonly string[];
  readonly topic: Topic;
  /** Place among the calculators of its topic, low first. */
  readonly order: number;
  /** The guide that it belongs to, which shows it, then others that lead to it. */
  readonly guides: readonly [string, ...string[]];
  /** What changed in the results since an earlier version; told to links of that version. */
  readonly changes?: readonly { readonly version: number; readonly say: string }[];
}
interface CalendarOf<R, K extends keyof R> {
  readonly rows: K;
  readonly day: keyof RowOf<R[K]> & string;
  readonly title: (row: RowOf<R[K]>) => string;
  readonly text: (row: RowOf<R[K]>) => string;
}
export interface CalendarEntry {
  readonly day: number;
  readonly title: string;
  readonly text: string;
}
/** A caution that holds. */
export interface Said {
  readonly lead: string;
  readonly life: boolean;
  readonly say: string;
  readonly source: string;
}
/** All that one run gives, as plain data: the same for page, command, worker and test. */
export interface Outcome {
  /** Inputs and results by name. */
  readonly values: PlainValues;
  readonly computed: Computed;
  /** Results that apply, in order. */
  readonly shown: readonly string[];
  /** The words under a result that tell its range, by the result's name. */
  readonly ranges: Readonly<Record<string, string>>;
  /** The same in few words, for the place under a large figure. */
  readonly shorts: Readonly<Record<string, string>>;
  readonly cautions: readonly Said[];
  readonly uses: readonly StepUse[];
  readonly note: string;
  readonly calendar: readonly CalendarEntry[];
  /** Where to go on from here; nothing where nothing leads on. */
  readonly leads: readonly Led[] | undefined;
}
export type Run = { readonly outcome: Outcome } | { readonly refusals: readonly Problem[] };

/** A definition as the rest of the program sees it. The functions are closed over, so nobody else needs the type parameters. */
export interface Calculator {
  readonly slug: string;
  readonly version: number;
  readonly title: string;
  readonly question: string;
  readonly lead: string;
  readonly searchWords: readonly string[];
  readonly inputs: Inputs;
  readonly quantities: Readonly<Record<string, Quantity>>;
  readonly results: readonly PlainShown[];
  readonly steps: readonly PlainStep[];
  /** Every caution that can appear, for the reference page and the checks. */
  readonly cautions: readonly Said[];
  readonly layout: Layout;
  readonly readings?: readonly string[];
  readonly handout: readonly string[];
  /** Every refusal past those of the fields' own limits, for the checks; `parts.soilGroup` for a row's cell. */
  readonly refusals: readonly Problem[];
  readonly limits: readonly string[];
  readonly weighsOnPeople: boolean;
  readonly picture: PlainPicture | undefined;
  readonly morePictures: readonly PlainPicture[];
  /** Numbers that are told together with their parts, by name. */
  readonly wholes: readonly Whole[];
  readonly hasCalendar: boolean;
  readonly compares?: Compares;
  readonly leadsTo: readonly PlainLead[];
  readonly sources: readonly string[];
  readonly topic: Topic;
  readonly order: number;
  readonly guides: readonly string[];
  readonly changes: readonly { readonly version: number; readonly say: string }[];
  readonly run: (values: Values, system?: UnitSystem) => Run;
  /** What is refused of these values, without working them out. */
  readonly refuses: (values: Values) => readonly Problem[];
  readonly swings?: readonly Swing[];
  /** `long`: pages run it by steps, beside the form, show how far it is, and can stop it. */
  readonly runs?: 'long';
  /** The same as `run` where it runs long, yielding the share that is done. */
  readonly runBySteps?: (values: Values, system?: UnitSystem) => Generator<number, Run>;
  /** Brings what works it out, where that is a file of its own: neither runs before it is here. Rejects where it cannot be had. */
  readonly fetchEngine?: () => Promise<void>;
}

/** Two calls, so that the results of `compute` have their types before anything speaks of them. */
export const defineCalculator = <const I extends Inputs, R extends object>(work: Work<I, R>) => ({
  describe: (words: Words<I, R> & { readonly quantities: Readonly<Record<string, Quantity>> }): Calculator => {
    type V = ValuesOf<I> & R;
    const { inputs, refusals: own = [], computeBySteps } = work;
    const steps = stepsOf(words.steps);
    const told = words.results.flat();
    const said = ({ lead, life, say, source }: Caution<V>): Said => ({ lead, life: life === true, say, source });
    const readyOf = (values: Values): { readonly values: Values & ValuesOf<I> } | { readonly refusals: readonly Problem[] } => {
      if (!areValuesOf(inputs, values)) throw new TypeError(`${work.slug}: values do not fit the inputs`);
      const refusals = refusalsOf(inputs, own, values);
      return refusals.length > 0 ? { refusals } : { values };
    };
    const outcomeOf = (values: Values & ValuesOf<I>, results: R, system: UnitSystem): Run => {
      if (!isComputed(results)) throw new RangeError(`${work.slug}: a result is not finite`);
      const all: V = { ...values, ...results };
      const plain: Outcome['values'] = { ...plainInputs(inputs, values), ...results };
      const list: unknown = words.calendar && results[words.calendar.rows];
      // A result stands in a range, in its short form and in the note: printed once.
      const printed = new Map<string, string>();
      const show = (name: string): string => {
        const text = printed.get(name) ?? printName(calculator, plain, name, system);
        printed.set(name, text);
        return text;
      };
      return {
        outcome: whenAsked(
          {
            values: plain,
            computed: results,
            shown: told.filter(({ when }) => when === undefined || when(all)).map(({ of }) => of),
            cautions: words.cautions.filter((caution) => caution.when(all)).map(said),
          },
          {
            ranges: () => tellRanges(told, all, 'says', show),
            shorts: () => tellRanges(told, all, 'short', show),
            uses: () => steps.map((step) => useOf(step, all)),
            note: () => withUnitOnce(withoutHollowRanges(words.note(all, show))),
            calendar: () =>
              words.calendar && Array.isArray(list)
                ? list.map((row) => ({
                    day: Number(row[words.calendar?.day ?? '']),
                    title: words.calendar?.title(row) ?? '',
                    text: words.calendar?.text(row) ?? '',
                  }))
                : [],
            leads: () => words.leadsTo?.follow(all, plain, calculator),
          },
        ),
      };
    };
    const calculator: Calculator = {
      slug: work.slug,
      version: work.version,
      title: work.title,
      question: words.question,
      lead: words.lead,
      searchWords: words.searchWords?.split(', ') ?? [],
      inputs,
      quantities: words.quantities,
      results: told.map(plainShown),
      steps: steps.map(plainStep),
      cautions: words.cautions.map(said),
      layout: layoutOf(inputs, words.first, words.groups ?? []),
      ...(words.readings && { readings: words.readings }),
      handout: words.handout ?? [],
      refusals: plainRefusals(inputs, own),
      limits: words.limits,
      weighsOnPeople: words.weighsOnPeople === true,
      picture: words.picture,
      morePictures: words.morePictures ?? [],
      wholes: [...(words.wholes ?? []), ...[words.picture, ...(words.morePictures ?? [])].flatMap(wholesOf)],
      hasCalendar: words.calendar !== undefined,
      ...(words.compares && { compares: words.compares }),
      leadsTo: words.leadsTo?.list ?? [],
      ...(words.swings && { swings: words.swings }),
      sources: words.sources,
      topic: words.topic,
      order: words.order,
      guides: words.guides,
      changes: words.changes ?? [],
      run: (values, system = 'us') => {
        const ready = readyOf(values);
        return 'refusals' in ready ? ready : outcomeOf(ready.values, work.compute(ready.values), system);
      },
      refuses: (values) => {
        const ready = readyOf(values);
        return 'refusals' in ready ? ready.refusals : [];
      },
      ...(computeBySteps && {
        runs: 'long',
        *runBySteps(values: Values, system: UnitSystem = 'us') {
          const ready = readyOf(values);
          return 'refusals' in ready ? ready : outcomeOf(ready.values, yield* computeBySteps(ready.values), system);
        },
      }),
    };
    return calculator;
  },
});
