import type { UnitSystem } from '../units/units.ts';
import { shortHelpText } from './helpLines.ts';
import { withoutHollowRanges } from './hollowRanges.ts';
import { fits, type Inputs, type Named, type ValuesOf } from './inputs.ts';
import type { Picture, PlainPicture } from './pictures.ts';
import { fillWords, printName } from './print.ts';
import type { Computed, NumberKeys, PlainValues, Quantity, QuantityFor, RowOf, Rows, RowsKeys, Scalar } from './quantities.ts';
import { isShown, type Problem, type Values } from './state.ts';
import { type PlainStep, type PlainWay, type Step, type StepUse, stepsOf, type Way, type Working } from './steps.ts';
import type { Topic } from './topics.ts';
import { type Whole, wholesOf } from './wholes.ts';

/** Stops the calculation at one field. Refusals of a row's cells belong to its `rows(...)`. */
export interface Refusal<I extends Inputs> {
  readonly at: keyof I & string;
  readonly when: (values: ValuesOf<I>) => boolean;
  readonly say: string;
}
/** Stands before the result; it does not stop it. */
export interface Caution<V> {
  readonly when: (values: V) => boolean;
  readonly say: string;
  /** Source key, `common practice` or `from memory`. */
  readonly source: string;
}
/** `caution(({ fedOut }) => fedOut, { say: '…', source: 'common practice' })`: what must be said before somebody acts, when, and by whom. */
export const caution = <V>(when: (values: NoInfer<V>) => boolean, words: Omit<Caution<V>, 'when'>): Caution<V> => ({ when, ...words });
/** A result in the order in which people want it; the first one is told large. */
export interface Shown<V, R> {
  readonly of: keyof R & string;
  /**
   * The range that stands under it: `{low} if the ground was dry, {high} if wet`. Any input or result may be named.
   * Where both ends read the same, `same` stands there instead, or nothing.
   */
  readonly range?: {
    readonly low: NumberKeys<R>;
    readonly high: NumberKeys<R>;
    readonly says: string | ((values: V) => string);
    readonly same?: string;
  };
  /** Left out unless this holds: a cost that nobody pays. */
  readonly when?: (values: V) => boolean;
}
/** Results that need no word of their own: `shown('haveTon', 'eatenTon')`. */
export const shown = <const K extends string>(...names: readonly K[]): readonly { readonly of: K }[] => names.map((of) => ({ of }));
/** The same, left out unless this holds. */
export const shownWhen = <V, const K extends string>(
  when: (values: V) => boolean,
  ...names: readonly K[]
): readonly { readonly of: K; readonly when: (values: V) => boolean }[] => names.map((of) => ({ of, when }));
/** A result with its range under it: `ranged('hasIn', ['lowHasIn', 'highHasIn'], { says: '{low} to {high}' })`. */
export const ranged = <V, const K extends string, const N extends string>(
  of: K,
  [low, high]: readonly [N, N],
  { when, ...words }: RangeWords<NoInfer<V>>,
): { readonly of: K; readonly range: RangeWords<V> & { readonly low: N; readonly high: N }; readonly when?: (values: V) => boolean } => ({
  of,
  range: { low, high, ...words },
  ...(when === undefined ? {} : { when }),
});
interface RangeWords<V> {
  readonly when?: (values: V) => boolean;
  readonly says: string | ((values: V) => string);
  readonly same?: string;
}
/** First call: what is asked and what is computed. */
export interface Work<I extends Inputs, R> {
  readonly slug: string;
  readonly version: number;
  readonly title: string;
  readonly inputs: I & Named<I>;
  readonly refusals?: readonly Refusal<I>[];
  readonly compute: (inputs: ValuesOf<I>) => R;
}
type Show<V> = (name: keyof V & string) => string;
/** Second call: what is said. By then the results have their types. */
export interface Words<I extends Inputs, R> {
  /** The reader's own question: `How much of that rain ran off?` */
  readonly question: string;
  readonly lead: string;
  /** Words that people search with and the page does not use, separated by commas. */
  readonly searchWords?: string;
  readonly quantities: { readonly [K in keyof R]: QuantityFor<R[K]> };
  readonly results: readonly (Shown<ValuesOf<I> & R, R> | readonly Shown<ValuesOf<I> & R, R>[])[];
  readonly steps: Working<ValuesOf<I> & R, R>;
  readonly cautions: readonly Caution<ValuesOf<I> & R>[];
  /** What this cannot tell. */
  readonly limits: readonly string[];
  /** One line for a follow-up note, in the reader's units. */
  readonly note: (values: ValuesOf<I> & R, show: Show<ValuesOf<I> & R>) => string;
  /** Tells somebody to sell, to pull stock or to stop: the lines to call stand under the answer, on paper and in the note. */
  readonly weighsOnPeople?: true;
  readonly picture?: Picture<ValuesOf<I> & R, R>;
  /** What is shown together with its parts, where the picture does not show it so. A part may be the whole of smaller ones. */
  readonly wholes?: readonly Whole<NumberKeys<ValuesOf<I> & R>>[];
  readonly calendar?: { readonly [K in RowsKeys<R>]: CalendarOf<R, K> }[RowsKeys<R>];
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
/** All that one run gives, as plain data: the same for page, command, worker and test. */
export interface Outcome {
  /** Inputs and results by name. */
  readonly values: PlainValues;
  readonly computed: Computed;
  /** Results that apply, in order. */
  readonly shown: readonly string[];
  /** The words under a result that tell its range, by the result's name. */
  readonly ranges: Readonly<Record<string, string>>;
  readonly cautions: readonly { readonly say: string; readonly source: string }[];
  readonly uses: readonly StepUse[];
  readonly note: string;
  readonly calendar: readonly CalendarEntry[];
}
export type Run = { readonly outcome: Outcome } | { readonly refusals: readonly Problem[] };

export interface PlainShown {
  readonly of: string;
  readonly range?: { readonly low: string; readonly high: string };
}
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
  readonly cautions: readonly { readonly say: string; readonly source: string }[];
  /** Every refusal past those of the fields' own limits, for the checks; `parts.soilGroup` for a row's cell. */
  readonly refusals: readonly Problem[];
  readonly limits: readonly string[];
  readonly weighsOnPeople: boolean;
  readonly picture: PlainPicture | undefined;
  /** Numbers that are told together with their parts, by name. */
  readonly wholes: readonly Whole[];
  readonly hasCalendar: boolean;
  readonly sources: readonly string[];
  readonly topic: Topic;
  readonly order: number;
  readonly guides: readonly string[];
  readonly changes: readonly { readonly version: number; readonly say: string }[];
  readonly run: (values: Values, system?: UnitSystem) => Run;
}

/** The note to take along, of one side or of both, with whom to call where the calculation weighs on people. */
export const noteOf = ({ weighsOnPeople }: Calculator, ...sides: readonly Outcome[]): string =>
  [...sides.map(({ note }) => note), ...(weighsOnPeople ? [shortHelpText] : [])].join('\n');

const isScalar = (value: unknown): value is Scalar => (typeof value === 'number' && Number.isFinite(value)) || typeof value === 'string';
const isRows = (value: unknown): value is Rows =>
  Array.isArray(value) && value.every((row: unknown) => typeof row === 'object' && row !== null && Object.values(row).every(isScalar));
const isComputed = (value: object): value is Computed => Object.values(value).every((each: unknown) => isScalar(each) || isRows(each));
const areValuesOf = <I extends Inputs>(inputs: I, values: Values): values is Values & ValuesOf<I> =>
  Object.entries(inputs).every(([key, input]) => fits(input, values[key]));
/** Inputs as they stand among the results: yes and no as words, rows as rows. */
const plainCell = (cell: unknown): Scalar => (typeof cell === 'boolean' ? (cell ? 'yes' : 'no') : typeof cell === 'number' ? cell : String(cell));
const plainRow = (row: number | object): Readonly<Record<string, Scalar>> =>
  Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, plainCell(cell)]));
const plainInputs = (inputs: Inputs, values: Values): Outcome['values'] =>
  Object.fromEntries(
    Object.entries(values).flatMap(([key, value]): (readonly [string, Scalar | Rows | readonly number[]])[] => {
      // A record is no number to name: thousands of lines that nobody draws.
      if (inputs[key]?.kind === 'record') return [];
      if (typeof value !== 'object') return [[key, plainCell(value)]];
      const list: readonly (number | object)[] = value;
      return [[key, list.length > 0 && list.every((each) => typeof each === 'number') ? list : list.map(plainRow)]];
    }),
  );
const plainWays = (ways: string | readonly PlainWay[]): readonly PlainWay[] =>
  typeof ways === 'string' ? [{ formula: ways }] : ways.map(({ formula, because }) => ({ formula, ...(because === undefined ? {} : { because }) }));
const areWays = <V>(ways: unknown): ways is readonly Way<V>[] => Array.isArray(ways);
const usedWay = <V>(ways: readonly (Way<V> | Omit<Way<V>, 'when'>)[], values: V): number =>
  ways.findIndex((way) => !('when' in way) || way.when === undefined || way.when(values));

function plainStep<V, R>(step: Step<V, R>): PlainStep {
  const common = { says: step.says, ...(step.source === undefined ? {} : { source: step.source }) };
  switch (step.kind) {
    case 'formula':
      return { ...common, kind: 'formula', shows: step.shows, ways: plainWays(step.ways) };
    case 'lookup':
      return { ...common, kind: 'lookup', shows: step.shows };
    case 'check':
      return { ...common, kind: 'check', left: step.left, right: step.right, because: step.because };
    case 'rows': {
      const formulas: Record<string, readonly PlainWay[]> = {};
      for (const [column, ways] of Object.entries<string | readonly PlainWay[] | undefined>(step.formulas))
        if (ways !== undefined) formulas[column] = plainWays(ways);
      const sums: Record<string, string> = {};
      for (const [name, column] of Object.entries<string | undefined>(step.sums ?? {})) if (column !== undefined) sums[name] = column;
      return { ...common, kind: 'rows', of: String(step.of), formulas, sums };
    }
  }
}

/** Two calls, so that the results of `compute` have their types before anything speaks of them. */
export const defineCalculator = <const I extends Inputs, R extends object>(work: Work<I, R>) => ({
  describe: (words: Words<I, R> & { readonly quantities: Readonly<Record<string, Quantity>> }): Calculator => {
    type V = ValuesOf<I> & R;
    const { inputs } = work;
    const steps = stepsOf(words.steps);
    const told = words.results.flat();
    const useOf = (step: Step<V, R>, values: V): StepUse => {
      if (step.onlyWhen && !step.onlyWhen(values)) return null;
      if (step.kind === 'formula') return usedWay(step.ways, values);
      if (step.kind !== 'rows') return 0;
      const list: unknown = values[step.of];
      const use: Record<string, readonly number[]> = {};
      const formulas: readonly (readonly [string, unknown])[] = Object.entries(step.formulas);
      for (const [column, ways] of formulas) {
        if (Array.isArray(list)) use[column] = list.map((row) => (areWays<V>(ways) ? usedWay(ways, { ...values, ...row }) : 0));
      }
      return use;
    };
    const refusalsOf = (values: Values & ValuesOf<I>): readonly Problem[] => [
      ...(work.refusals ?? []).filter((refusal) => refusal.when(values)).map(({ at, say }) => ({ at, say })),
      ...Object.entries(inputs).flatMap(([key, input]) => {
        const list = values[key];
        if (input.kind !== 'rows' || !isShown(input, values) || !Array.isArray(list)) return [];
        return list.flatMap((row, index) => input.refuse(row).map(({ at, say }) => ({ at: `${key}.${index}.${at}`, say })));
      }),
    ];
    const rangesOf = (all: V, plain: Outcome['values'], system: UnitSystem): Outcome['ranges'] =>
      Object.fromEntries(
        told.flatMap(({ of, range }) => {
          if (range === undefined) return [];
          const says = typeof range.says === 'string' ? range.says : range.says(all);
          const named: Readonly<Record<string, string>> = { low: range.low, high: range.high };
          const print = (name: string) => printName(calculator, plain, named[name] ?? name, system);
          const isHollow = says.includes('{low}') && says.includes('{high}') && print('low') === print('high');
          if (isHollow && range.same === undefined) return [];
          return [[of, fillWords(isHollow && range.same !== undefined ? range.same : says, print)]];
        }),
      );
    const calculator: Calculator = {
      slug: work.slug,
      version: work.version,
      title: work.title,
      question: words.question,
      lead: words.lead,
      searchWords: words.searchWords?.split(', ') ?? [],
      inputs,
      quantities: words.quantities,
      results: told.map(({ of, range }) => ({ of, ...(range === undefined ? {} : { range: { low: range.low, high: range.high } }) })),
      steps: steps.map(plainStep),
      cautions: words.cautions.map(({ say, source }) => ({ say, source })),
      refusals: [
        ...(work.refusals ?? []).map(({ at, say }) => ({ at, say })),
        ...Object.entries(inputs).flatMap(([key, input]) =>
          input.kind === 'rows' ? input.refusals.map(({ at, say }) => ({ at: `${key}.${at}`, say })) : [],
        ),
      ],
      limits: words.limits,
      weighsOnPeople: words.weighsOnPeople === true,
      picture: words.picture,
      wholes: [...(words.wholes ?? []), ...wholesOf(words.picture)],
      hasCalendar: words.calendar !== undefined,
      sources: words.sources,
      topic: words.topic,
      order: words.order,
      guides: words.guides,
      changes: words.changes ?? [],
      run: (values, system = 'us') => {
        if (!areValuesOf(inputs, values)) throw new TypeError(`${work.slug}: values do not fit the inputs`);
        const refusals = refusalsOf(values);
        if (refusals.length > 0) return { refusals };
        const results = work.compute(values);
        if (!isComputed(results)) throw new RangeError(`${work.slug}: a result is not finite`);
        const all: V = { ...values, ...results };
        const plain: Outcome['values'] = { ...plainInputs(inputs, values), ...results };
        const list: unknown = words.calendar && results[words.calendar.rows];
        return {
          outcome: {
            values: plain,
            computed: results,
            shown: told.filter(({ when }) => when === undefined || when(all)).map(({ of }) => of),
            ranges: rangesOf(all, plain, system),
            cautions: words.cautions.filter((caution) => caution.when(all)).map(({ say, source }) => ({ say, source })),
            uses: steps.map((step) => useOf(step, all)),
            note: withoutHollowRanges(words.note(all, (name) => printName(calculator, plain, name, system))),
            calendar:
              words.calendar && Array.isArray(list)
                ? list.map((row) => ({
                    day: Number(row[words.calendar?.day ?? '']),
                    title: words.calendar?.title(row) ?? '',
                    text: words.calendar?.text(row) ?? '',
                  }))
                : [],
          },
        };
      },
    };
    return calculator;
  },
});
