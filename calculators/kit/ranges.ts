import { withUnitOnce } from './hollowRanges.ts';
import { fillWords } from './print.ts';

/** How the range of a result is told. */
export interface RangeOf<V> {
  /** `{low} if the ground was dry, {high} if wet`. Any input or result may be named. Nothing stands there where it is empty. */
  readonly says: string | ((values: V) => string);
  /** Where both ends read the same this stands there instead, or nothing. */
  readonly same?: string;
  /** The same in at most 45 characters, for the place under a large figure; `says` if it is short enough. */
  readonly short?: string | ((values: V) => string);
}
/** A result, with its range if it has one: its words, and the names of its two ends. */
interface Ranged<V> {
  readonly of: string;
  readonly range?: RangeOf<V> & { readonly low: string; readonly high: string };
}

/** The words of each range with its numbers in, by the name of the result. A range whose ends print the same says nothing, or what it has for that. */
export const tellRanges = <V>(
  results: readonly Ranged<V>[],
  values: V,
  length: 'says' | 'short',
  printOf: (name: string) => string,
): Readonly<Record<string, string>> =>
  Object.fromEntries(
    results.flatMap(({ of, range }) => {
      if (range === undefined) return [];
      const words = range[length] ?? range.says;
      const says = typeof words === 'string' ? words : words(values);
      if (says === '') return [];
      const named: Readonly<Record<string, string>> = { low: range.low, high: range.high };
      const print = (name: string): string => printOf(named[name] ?? name);
      const isHollow = says.includes('{low}') && says.includes('{high}') && print('low') === print('high');
      if (isHollow && range.same === undefined) return [];
      return [[of, withUnitOnce(fillWords(isHollow && range.same !== undefined ? range.same : says, print))]];
    }),
  );
