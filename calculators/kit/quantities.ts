import type { UnitName } from '../units/units.ts';

/** What `compute` may hand back: numbers, words of a closed set, day numbers, or rows of those. Never sentences. */
export type Scalar = number | string;
export type Rows = readonly Readonly<Record<string, Scalar>>[];
export type Computed = Readonly<Record<string, Scalar | Rows>>;

export interface NumberQuantity {
  readonly kind: 'number';
  readonly label: string;
  readonly symbol: string;
  readonly unit: UnitName;
  /** Digits after the point in this unit; −2 tells it to hundreds, and a number too small for that to two figures or in ones. */
  readonly digits: number;
  /** Digits that count, where a number can be of any size: with 2, 1,291,000 is told as 1,300,000 and 14.37 as 14. Never finer than `digits`. */
  readonly significant?: number;
  /** From this size on it is told whole, however large; so is nothing. */
  readonly wholeFrom?: number;
  /** What there must be at least: told as the next larger number, since a smaller one would not do. */
  readonly isLeast?: boolean;
}
/** Figures that a small area is told to, with no idle zeros behind them: 0.054 of an acre is not 0.1, and half of one is 0.5. */
const areaFigures = 2;
const areaDigits = (value: number): number => (String(Number(value.toPrecision(areaFigures))).split('.')[1] ?? '').length;

/** Digits after the point for this value. */
export function digitsTold(
  value: number,
  { digits, significant, wholeFrom, unit }: Pick<NumberQuantity, 'digits' | 'significant' | 'wholeFrom'> & { readonly unit?: UnitName },
): number {
  // 19.97 is not told as 20.0.
  if (wholeFrom !== undefined && (value === 0 || Math.abs(value) >= wholeFrom - 0.5 * 10 ** -digits)) return 0;
  if (value === 0) return digits;
  if (unit === 'ac') return Math.max(digits, areaDigits(value));
  // What one ewe eats is not told as 0 lb because a herd's feed is told to tens.
  if (significant === undefined) return digits < 0 ? Math.max(digits, Math.min(0, 1 - Math.floor(Math.log10(Math.abs(value))))) : digits;
  return Math.min(digits, significant - 1 - Math.floor(Math.log10(Math.abs(value))));
}
/** A day number (days since 1970-01-01). */
export interface DayQuantity {
  readonly kind: 'day';
  readonly label: string;
}
export interface WordQuantity<W extends string = string> {
  readonly kind: 'word';
  readonly label: string;
  readonly words: Readonly<Record<W, string>>;
  /** Those of them that name a unit, for people who read the other system. */
  readonly si?: Partial<Readonly<Record<W, string>>>;
}
export interface RowsQuantity<C> {
  readonly kind: 'rows';
  readonly label: string;
  readonly columns: C;
  /** Columns of the table that people see; the others serve the working. Default: all. */
  readonly shown?: readonly (keyof C & string)[];
  /** Columns whose cells are the parts of one whole, such as shares of all steps: rounded so that they add up as printed. */
  readonly addsUp?: readonly (keyof C & string)[];
}
/** A number among the results: `amount('Hay to buy', 'Y', 'ton')`. */
export const amount = (label: string, symbol: string, unit: UnitName, digits = 0, significant?: number): NumberQuantity => ({
  kind: 'number',
  label,
  symbol,
  unit,
  digits,
  ...(significant === undefined ? {} : { significant }),
});
export const word = <const W extends string>(
  label: string,
  words: Readonly<Record<W, string>>,
  si?: Partial<Readonly<Record<NoInfer<W>, string>>>,
): WordQuantity<W> => ({ kind: 'word', label, words, ...(si && { si }) });
export const day = (label: string): DayQuantity => ({ kind: 'day', label });

/** Rows among the results: `table('Each pasture', { areaAc: amount(…), … })`; where people see only some of the columns, their names stand before all of them. */
export function table<const C>(label: string, columns: C): Table<C>;
export function table<const C>(label: string, shown: readonly (keyof C & string)[], columns: C): Table<C> & Pick<Required<RowsQuantity<C>>, 'shown'>;
export function table<const C>(label: string, ...more: readonly [C] | readonly [readonly (keyof C & string)[], C]): Table<C> {
  return more.length === 1 ? { kind: 'rows', label, columns: more[0] } : { kind: 'rows', label, columns: more[1], ...{ shown: more[0] } };
}
type Table<C> = Pick<RowsQuantity<C>, 'kind' | 'label' | 'columns'>;

export type ScalarQuantity = NumberQuantity | DayQuantity | WordQuantity;
export type Quantity = ScalarQuantity | RowsQuantity<Readonly<Record<string, ScalarQuantity>>>;

export type QuantityFor<V> = [V] extends [number]
  ? NumberQuantity | DayQuantity
  : [V] extends [string]
    ? WordQuantity<V>
    : V extends readonly (infer Row)[]
      ? RowsQuantity<{ readonly [K in keyof Row]: QuantityFor<Row[K]> }>
      : never;

export type NumberKeys<R> = { [K in keyof R]: R[K] extends number ? K : never }[keyof R] & string;
export type ScalarKeys<R> = { [K in keyof R]: R[K] extends Scalar ? K : never }[keyof R] & string;
export type RowsKeys<R> = { [K in keyof R]: R[K] extends readonly unknown[] ? K : never }[keyof R] & string;
export type RowOf<L> = L extends readonly (infer Row)[] ? Row : never;

/** Inputs and results by name, as they are printed. */
export type PlainValues = Readonly<Record<string, Scalar | Rows | readonly number[]>>;
