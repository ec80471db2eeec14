import type { NumberKeys } from './quantities.ts';
import type { RangeOf } from './ranges.ts';

// What a definition shows of its results.

/** Inputs and results of one side by their names: numbers, words, and the numbers of a table's column. */
export interface SideNamed<Name extends string> {
  readonly number: (name: Name) => number;
  readonly word: (name: Name) => string;
  readonly column: (table: Name, column: string) => readonly number[];
}
/** What is known of a gap between two sides that were each measured by themselves, so that each has a chance of its own. */
export type Between =
  /** From where to where that side may lie over this one, 95 times in 100: in the unit of the result, or so many times, `as fast`. A hint is past chance and yet no proof, with why. */
  | { readonly low: number; readonly high: number; readonly times?: string; readonly hint?: string }
  /** Nothing bounds it: why stands under the gap. */
  | { readonly unbounded: string }
  /** Words in place of the gap, with why. */
  | { readonly instead: string; readonly because: string };

interface ShownWords<V> {
  /** What the figure is, in at most four words that follow it: `1.2 in` `ran off`. Every result that can come first has them. */
  readonly said?: string;
  /**
   * Comparing: what follows the gap where the other side has less, and where it has more: `less ran off that ground`. Where the first
   * result is the same for both, the next with such words that differs is told.
   */
  readonly gap?: readonly [less: string, more: string];
  /** Comparing: how far the gap is to be believed. Two sides are told by the first result that has this, whatever comes first alone; not where it gives nothing. */
  readonly between?: (here: SideNamed<keyof V & string>, there: SideNamed<keyof V & string>) => Between | undefined;
  /** Left out unless this holds: a cost that nobody pays. */
  readonly when?: (values: V) => boolean;
}
/** A result in the order in which people want it; the first one is told large. */
export interface Shown<V, R> extends ShownWords<V> {
  readonly of: keyof R & string;
  readonly range?: RangeOf<V> & { readonly low: NumberKeys<R>; readonly high: NumberKeys<R> };
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
  { says, same, short, ...more }: RangeWords<NoInfer<V>>,
): { readonly of: K; readonly range: RangeOf<V> & { readonly low: N; readonly high: N } } & ShownWords<V> => ({
  of,
  range: { low, high, says, ...(same === undefined ? {} : { same }), ...(short === undefined ? {} : { short }) },
  ...more,
});
type RangeWords<V> = RangeOf<V> & ShownWords<V>;

/** The same as the rest of the program sees it. */
export interface PlainShown {
  readonly of: string;
  readonly said?: string;
  readonly gap?: readonly [less: string, more: string];
  readonly between?: (here: SideNamed<string>, there: SideNamed<string>) => Between | undefined;
  readonly range?: { readonly low: string; readonly high: string };
}
export const plainShown = <V, R>({ of, said, gap, between, range }: Shown<V, R>): PlainShown => ({
  of,
  ...(said === undefined ? {} : { said }),
  ...(gap === undefined ? {} : { gap }),
  ...(between === undefined ? {} : { between }),
  ...(range === undefined ? {} : { range: { low: range.low, high: range.high } }),
});
