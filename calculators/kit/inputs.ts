import type { Suffix, UnitName } from '../units/units.ts';
import type { OfferKey, TableOffer } from './offers.ts';
import type { RecordLine } from './record/recordLine.ts';
import type { Understood, understandRecord } from './record/understandRecord.ts';
import type { Marks, Tool } from './tools.ts';
import type { UsualName } from './usual.ts';

/** What the drought and the ground decide, and what people decide. Two managements share the place. */
export type Side = 'place' | 'management';

/** Shown only while the named inputs (same row or top level) hold one of these texts: `{ cover: 'own' }`. Data, never a function, so that form, link and tests agree. */
export type ShownWhen = Readonly<Record<string, string | readonly string[]>>;

interface Common {
  readonly label: string;
  readonly belongsTo: Side;
  /** One line under the label. */
  readonly help?: string;
  /** How to get it in the field, on tap. */
  readonly field?: string;
  /** The question that stands in for it when nobody knows it, on tap. */
  readonly ask?: string;
  /** Former names in links. Never reused. */
  readonly aliases?: readonly string[];
  readonly shownWhen?: ShownWhen;
  /** Added in a later version: links written before it get `before`, the text that reproduces their result. */
  readonly since?: { readonly version: number; readonly before: string };
  /** What of a place goes into it. Texts alone come from there: links and `compute` know nothing of it. */
  readonly offeredBy?: OfferKey;
  /** No figure of a place, but a setting of the calculation that nobody measures: it stays when a form is cleared. */
  readonly isSetting?: true;
}

export interface NumberInput<U extends UnitName = UnitName> extends Common {
  readonly kind: 'number';
  readonly unit: U;
  readonly symbol: string;
  readonly min: number;
  readonly max: number;
  readonly default: number;
  readonly whole?: boolean;
  /** Past this range a number looks wrong, and the form asks about it. */
  readonly usual?: UsualName;
  /** What one tap on plus or minus adds, in this unit. If it is not said, a round figure near a hundredth of the number, of what is counted one. */
  readonly step?: number;
  readonly tool?: Tool;
}
type ShortWords = string | readonly [one: string, many: string];
export interface Option {
  readonly label: string;
  /** At most 24 characters, for a line that sums up a group: `soil group B`; of what is counted, one and many: `['cow', 'cows']`. */
  readonly short?: ShortWords;
  /** The same where an amount stands in it, for who reads in metric: `over 1,015 mm of rain`. */
  readonly shortMetric?: ShortWords;
  /** Options of one group stand together in a long list. */
  readonly group?: string;
  readonly aliases?: readonly string[];
  /** Choosing it writes these neighbouring fields, so that a link carries the numbers. */
  readonly fills?: Readonly<Record<string, number | string>>;
}
export interface ChoiceInput<O extends string = string> extends Common {
  readonly kind: 'choice';
  readonly options: Readonly<Record<O, Option>>;
  readonly default: O;
  /** A way of counting on which publications differ: always visible, and the result says what the others would give. */
  readonly convention?: boolean;
  readonly tool?: Marks;
  /** The twelve months in order, of which a fresh form shows that of today. */
  readonly occurs?: 'today';
  /** Words of a place that this list has nothing for, though something near them stands in it: lambs among stock that drink as listed. */
  readonly takesNot?: readonly string[];
}
export interface YesNoInput extends Common {
  readonly kind: 'yesNo';
  readonly default: boolean;
  /** What yes and no mean in a line that sums up a group: `['cold counted', 'cold not counted']`. */
  readonly short?: readonly [yes: string, no: string];
}
/**
 * How a date of the example stands to today, so that a fresh form opens with days that can still come: it is today; some days after; the same month
 * and day in this year; the last such day up to an anchor, or today where that is past already (`notBefore`); the first such day from an anchor on,
 * or today where the time from it to another date is under way (`until`); as many days before an anchor as it was `built` before a day; the one that lies between two dates, else the one nearest to them.
 * An anchor is `today` or the name of a date at the top of the form. `fixed` is for a date of something that does not move, its reason beside it.
 */
export type Occurs =
  | 'today'
  | 'thisYear'
  | 'fixed'
  | { readonly daysAfterToday: number }
  | { readonly before: string; readonly built: string }
  | { readonly lastBy: string; readonly notBefore?: 'today' }
  | { readonly nextFrom: string; readonly until?: string }
  | { readonly nearest: readonly [from: string, to: string] };
export interface DateInput extends Common {
  readonly kind: 'date';
  readonly default: string;
  readonly occurs: Occurs;
}
export type Cell = NumberInput | ChoiceInput | YesNoInput | DateInput;
export type Columns = Readonly<Record<string, Cell>>;

export interface RowProblem {
  readonly at: string;
  readonly say: string;
}
export interface RowsInput<C extends Columns = Columns> {
  readonly kind: 'rows';
  readonly label: string;
  readonly help?: string;
  /** One of them, for the button and the row's heading: `part`, `kind of stock`. */
  readonly rowName: string;
  /** A row in a few words: `{#countHead} {stock} of {weightLb}`. */
  readonly each: string;
  readonly columns: C;
  readonly default: readonly RowDefault<C>[];
  readonly maxRows: number;
  readonly shownWhen?: ShownWhen;
  /** What of a place gives its rows. */
  readonly offeredBy?: TableOffer;
  /** Stands once, above the table. */
  readonly tool?: Marks;
  readonly refuse: (row: unknown) => readonly RowProblem[];
  /** Every refusal that `refuse` can give. */
  readonly refusals: readonly RowProblem[];
}
/** Twelve values, January first. */
export interface MonthsInput<U extends UnitName = UnitName> extends Common {
  readonly kind: 'months';
  readonly unit: U;
  readonly symbol: string;
  readonly min: number;
  readonly max: number;
  readonly default: readonly number[];
}
/** A long list of days and amounts, pasted or read from a file. Never in links. */
export interface RecordInput<U extends UnitName = UnitName> extends Common {
  readonly kind: 'record';
  readonly unit: U;
  /** Limits of one day. */
  readonly min: number;
  readonly max: number;
  readonly maxRows: number;
  /** Highs and lows beside the rain are used too, where a line names their columns. */
  readonly takesTemperatures?: true;
  /** Stands on every page: some kilobytes at most. */
  readonly default: string;
  /** Said before every result that comes from the default, which a link always opens with. */
  readonly standIn?: string;
  /** Reads a text. It comes with the input, so that only forms that ask for a record carry the code. */
  readonly read: (text: string) => Understood;
  /** Takes what reads it, where few who open the form use a record: until then `read` only says that it waits. Left out: it came along. */
  readonly readBy?: (understand: typeof understandRecord) => void;
}
export const isRecord = (input: Input): input is RecordInput => input.kind === 'record';
type RowDefault<C extends Columns> = { readonly [K in keyof C]: C[K]['default'] };
export type Input = Cell | RowsInput | MonthsInput | RecordInput;
export type Inputs = Readonly<Record<string, Input>>;

/** What a constructor does not take by place. An input belongs to the place unless it says otherwise. */
type More<I extends Common> = Partial<Pick<Common, 'belongsTo'>> &
  Omit<I, 'kind' | 'label' | 'symbol' | 'unit' | 'min' | 'max' | 'default' | 'options' | 'belongsTo'>;

/** `number('Rain', 'P', 'in', [0.01, 40], 3)`: label, symbol in the working, unit, least and most, what a fresh form shows. */
export const number = <const U extends UnitName>(
  label: string,
  symbol: string,
  unit: U,
  [min, max]: readonly [number, number],
  start: number,
  more: More<NumberInput<U>> = {},
): NumberInput<U> => ({ kind: 'number', label, symbol, unit, min, max, default: start, belongsTo: 'place', ...more });
const areOptions = <O extends string>(written: Readonly<Record<O, unknown>>, built: object): built is Readonly<Record<O, Option>> =>
  Object.keys(written).every((name) => Object.hasOwn(built, name));
function optionsOf<const O extends string, T>(written: Readonly<Record<O, T>>, optionOf: (each: T) => Option): Readonly<Record<O, Option>> {
  const built = Object.fromEntries(Object.entries<T>(written).map(([name, each]) => [name, optionOf(each)]));
  if (!areOptions(written, built)) throw new TypeError('options need their names');
  return built;
}
const labeled = (each: string | Option): Option => (typeof each === 'string' ? { label: each } : each);
/** `choice('Soil', 'loam', { options: { loam: 'Loam', clay: { label: 'Clay', fills: { … } } } })`: label, what a fresh form shows, options; one with a label only is a text. */
export const choice = <const O extends string>(
  label: string,
  start: NoInfer<O>,
  { options, ...more }: More<ChoiceInput<O>> & { readonly options: Readonly<Record<O, string | Option>> },
): ChoiceInput<O> => ({ kind: 'choice', label, options: optionsOf(options, labeled), default: start, belongsTo: 'place', ...more });
/** Options that stand together in a long list: `options: { ...grouped('Dry range', { … }), ...grouped('Cropland', { … }) }`. */
export const grouped = <const O extends string>(group: string, labels: Readonly<Record<O, string>>): Readonly<Record<O, Option>> =>
  optionsOf(labels, (label) => ({ label, group }));
export const yesNo = (label: string, start: boolean, more: More<YesNoInput> = {}): YesNoInput => ({
  kind: 'yesNo',
  label,
  default: start,
  belongsTo: 'place',
  ...more,
});
/** `date('Turn-in', '2026-04-20', { occurs: { lastBy: 'today' } })`: label, what the built page shows, and how a fresh form moves it. */
export const date = (label: string, start: string, more: More<DateInput>): DateInput => ({
  kind: 'date',
  label,
  default: start,
  belongsTo: 'place',
  ...more,
});
/** Twelve numbers, as `number` takes one. */
export const months = <const U extends UnitName>(
  label: string,
  symbol: string,
  unit: U,
  [min, max]: readonly [number, number],
  start: readonly number[],
  more: More<MonthsInput<U>> = {},
): MonthsInput<U> => ({ kind: 'months', label, symbol, unit, min, max, default: start, belongsTo: 'place', ...more });

export interface RowRefusal<C extends Columns> {
  readonly at: keyof C & string;
  readonly when: (row: RowValue<C>) => boolean;
  readonly say: string;
}
/** A table whose refusals are typed by its own columns; outside they are erased, so that any table is a `RowsInput`. */
export const rows = <const C extends Columns>({
  refusals = [],
  ...spec
}: Omit<RowsInput<C>, 'kind' | 'refuse' | 'refusals'> & { readonly refusals?: readonly RowRefusal<NoInfer<C>>[] }): RowsInput<C> => ({
  kind: 'rows',
  ...spec,
  refusals: refusals.map(({ at, say }) => ({ at, say })),
  refuse: (row) => (isRowOf(spec.columns, row) ? refusals.filter((each) => each.when(row)).map(({ at, say }) => ({ at, say })) : []),
});

export type ValueOf<I> = I extends NumberInput
  ? number
  : I extends ChoiceInput<infer O>
    ? O
    : I extends YesNoInput
      ? boolean
      : I extends DateInput
        ? number
        : I extends RowsInput<infer C>
          ? readonly RowValue<C>[]
          : I extends MonthsInput
            ? readonly number[]
            : I extends RecordInput
              ? readonly RecordLine[]
              : never;
type RowValue<C extends Columns> = { readonly [K in keyof C]: ValueOf<C[K]> };
export type ValuesOf<I> = { readonly [K in keyof I]: ValueOf<I[K]> };

/** The key of a number ends in its unit, as a type: `rainIn` for inches. */
export type Named<I> = {
  readonly [K in keyof I]: I[K] extends NumberInput<infer U> | MonthsInput<infer U>
    ? K extends `${string}${Suffix<U>}`
      ? I[K]
      : Suffix<U> extends 'CurveNumber'
        ? K extends 'curveNumber'
          ? I[K]
          : 'name must end in CurveNumber'
        : `name must end in ${Suffix<U>}`
    : I[K] extends RowsInput<infer C>
      ? Named<C> extends C
        ? I[K]
        : 'a column name must end in its unit'
      : I[K];
};

const isRowOf = <C extends Columns>(columns: C, row: unknown): row is RowValue<C> => {
  if (typeof row !== 'object' || row === null) return false;
  const values = new Map<string, unknown>(Object.entries(row));
  return Object.entries(columns).every(([name, cell]) => fits(cell, values.get(name)));
};

/** Honest guard: each value is what its input says, so that `compute` may rely on its types. */
export function fits(input: Input, value: unknown): boolean {
  switch (input.kind) {
    case 'number':
    case 'date':
      return typeof value === 'number' && Number.isFinite(value);
    case 'yesNo':
      return typeof value === 'boolean';
    case 'choice':
      return typeof value === 'string' && Object.hasOwn(input.options, value);
    case 'rows':
      return Array.isArray(value) && value.every((row) => isRowOf(input.columns, row));
    case 'months':
      return Array.isArray(value) && value.length === 12 && value.every((each) => typeof each === 'number' && Number.isFinite(each));
    case 'record':
      return (
        Array.isArray(value) &&
        value.every(
          (line: unknown) =>
            typeof line === 'object' &&
            line !== null &&
            'day' in line &&
            'amount' in line &&
            Number.isFinite(line.day) &&
            Number.isFinite(line.amount) &&
            (!('days' in line) || Number.isInteger(line.days)),
        )
      );
  }
}

/** Does this table have the same rows under both managements? It does as soon as any of its columns belongs to the place. */
export const sharesRows = (input: RowsInput): boolean => Object.values(input.columns).some((cell) => cell.belongsTo === 'place');

/** Is there such an input, or a column of such cells? */
const asks = (inputs: Inputs, isSuch: (input: Input) => boolean): boolean =>
  Object.values(inputs).some((input) => isSuch(input) || (input.kind === 'rows' && Object.values(input.columns).some(isSuch)));
/** Is there any tool to draw? Then its code is fetched. */
export const usesTools = (inputs: Inputs): boolean => asks(inputs, (input) => 'tool' in input && input.tool !== undefined);
/** Is there any date, or month, that goes with today? */
export const movesWithToday = (inputs: Inputs): boolean => asks(inputs, (input) => 'occurs' in input);
