import type { NumberKeys, PlainValues } from './quantities.ts';
import type { RangeOf } from './ranges.ts';

// What a definition shows of its results.

interface ShownWords<V> {
  /** What the figure is, in at most four words that follow it: `1.2 in` `ran off`. Every result that can come first has them. */
  readonly said?: string;
  /**
   * Comparing: what follows the gap where the other side has less, and where it has more: `less ran off that ground`. Where the first
   * result is the same for both, the next with such words that differs is told.
   */
  readonly gap?: readonly [less: string, more: string];
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
  { says, same, short, counted, ...more }: RangeWords<NoInfer<V>>,
): { readonly of: K; readonly range: RangeOf<V> & { readonly low: N; readonly high: N } } & ShownWords<V> => ({
  of,
  range: { low, high, says, ...(same === undefined ? {} : { same }), ...(short === undefined ? {} : { short }), ...(counted && { counted }) },
  ...more,
});
type RangeWords<V> = RangeOf<V> & ShownWords<V>;

/** The range of the gap between two sides, by their numbers. */
type CountedGap = NonNullable<RangeOf<PlainValues>['counted']>;
/** The same as the rest of the program sees it. */
export interface PlainShown {
  readonly of: string;
  readonly said?: string;
  readonly gap?: readonly [less: string, more: string];
  readonly range?: { readonly low: string; readonly high: string; readonly counted?: CountedGap };
}
export const plainShown = <V, R>({ of, said, gap, range }: Shown<V, R>): PlainShown => ({
  of,
  ...(said === undefined ? {} : { said }),
  ...(gap === undefined ? {} : { gap }),
  ...(range === undefined ? {} : { range: { low: range.low, high: range.high, ...(range.counted && { counted: range.counted }) } }),
});
