import { yearsToBound } from '../math/drought/yearsToBound.ts';
import { barnForYears, yearsShort } from '../math/hay/barnForYears.ts';
import { barnYears } from '../math/hay/barnYears.ts';
import { exactBinomialInterval } from '../math/special/exactBinomialInterval.ts';
import { resampledYears } from '../math/weather/resampledYears.ts';
import { seededRandom } from '../math/weather/seededRandom.ts';
import { numberAt } from './flat.ts';
import type { HayYear } from './years.ts';

/** So many of so many years, and what such a count says of the chance, 95 %. */
export interface Count {
  readonly short: number;
  readonly of: number;
  readonly lowerShare: number;
  readonly upperShare: number;
}
const countOf = (short: number, of: number): Count => ({ short, of, ...exactBinomialInterval({ successes: short, trials: of }) });

/** Hay needed and hay made in the hay years that count, in order. */
export interface HayLists {
  readonly needTons: readonly number[];
  readonly cropTons: readonly number[];
}
export function hayLists(years: readonly HayYear[]): HayLists {
  const counted = years.filter(({ isCounted }) => isCounted);
  return { needTons: counted.map(({ needTons }) => needTons), cropTons: counted.map(({ cropTons }) => cropTons) };
}

/** How a barn is kept. */
export interface Barn {
  /** What is meant to stand in it each fall. */
  readonly barnTons: number;
  /** Most hay that could be bought in a bad fall. */
  readonly mostBoughtTons: number;
  /** Share of leftover hay that is still good a year later. */
  readonly carriedShare: number;
}

export interface BarnAnswer {
  /** Full again every fall, whatever that takes. */
  readonly filled: Count;
  /** What is left is carried over and no more is bought than can be. Its years lean on one another, so the true range is wider than the one shown. */
  readonly carried: Count;
  /** Whether the record is long enough to bound a one-in-ten need with 95 % confidence. */
  readonly canBoundOneInTen: boolean;
}

const yearsForOneInTen = yearsToBound(0.1);
export const canBoundOneInTen = (years: number): boolean => years >= yearsForOneInTen;

/** Short years of one barn through the years in the order given. It starts full. */
function shortIn({ needTons, cropTons }: HayLists, barn: Barn, mostBoughtTons: number): number {
  const { barnTons, carriedShare } = barn;
  const years = barnYears({ needTons, cropTons, barnTons, startTons: barnTons, mostBoughtTons: () => mostBoughtTons, carriedShare });
  return years.filter(({ shortTons }) => shortTons > 0).length;
}

/** The barn's answer as counts. One number without its buying rule is worthless, so both stand side by side. */
export function barnAnswer(lists: HayLists, barn: Barn): BarnAnswer {
  const years = lists.needTons.length;
  return {
    filled: countOf(shortIn(lists, barn, Number.POSITIVE_INFINITY), years),
    carried: countOf(shortIn(lists, barn, barn.mostBoughtTons), years),
    canBoundOneInTen: canBoundOneInTen(years),
  };
}

/** Hay to have in a barn that is full every fall, to have run short in at most so many years of ten; and the years in which it was not enough. */
export function hayToHave({ needTons }: HayLists, shortOfTen: number): { readonly barnTons: number; readonly count: Count } {
  const barnTons = barnForYears(needTons, Math.floor((needTons.length * shortOfTen) / 10));
  return { barnTons, count: countOf(yearsShort(needTons, barnTons), needTons.length) };
}

/** Short years in records of the same length drawn from this one in blocks. */
export interface Blocks {
  readonly blockYears: number;
  readonly of: number;
  readonly meanShort: number;
  readonly leastShort: number;
  readonly mostShort: number;
}
/**
 * Short years of a carried barn through years of a record in the order drawn: `barnYears`, counted only. Lists and objects for each year of six hundred draws of
 * a thousand years took half as long as all their days.
 */
function shortThrough(
  drawn: readonly number[],
  needTons: Float64Array,
  cropTons: Float64Array,
  { barnTons, mostBoughtTons, carriedShare }: Barn,
): number {
  let carried = barnTons;
  let short = 0;
  for (const year of drawn) {
    const needed = numberAt(needTons, year);
    const before = carried + numberAt(cropTons, year);
    const bought = Math.min(Math.max(0, barnTons - before), mostBoughtTons);
    const stood = Math.min(Math.max(barnTons, carried), before + bought);
    carried = Math.max(0, stood - needed) * carriedShare;
    if (needed > stood) short += 1;
  }
  return short;
}
/**
 * What the order of years does to a carried barn: the record drawn again and again in unbroken blocks of years, each draw as long as the record. It shows
 * how such counts scatter and is never turned into a range of the chance: no drawing makes up for years that nobody saw.
 */
export function inBlocks(
  lists: HayLists,
  barn: Barn,
  { blockYears, draws, seed }: { readonly blockYears: 2 | 3 | 4; readonly draws: number; readonly seed: number },
): Blocks {
  const random = seededRandom(seed);
  const years = lists.needTons.length;
  const [needTons, cropTons] = [Float64Array.from(lists.needTons), Float64Array.from(lists.cropTons)];
  const counts = Array.from({ length: draws }, () =>
    shortThrough(resampledYears({ years, blockYears: Math.min(blockYears, years), random }), needTons, cropTons, barn),
  );
  return {
    blockYears,
    of: years,
    meanShort: counts.reduce((sum, each) => sum + each, 0) / draws,
    leastShort: Math.min(...counts),
    mostShort: Math.max(...counts),
  };
}
