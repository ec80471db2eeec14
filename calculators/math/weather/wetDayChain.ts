import { gammaFitThom } from '../drought/gammaFitThom.ts';
import { need, needThere } from '../need.ts';

/** Rain of one month of the year as a chain of wet and dry days with gamma amounts. */
export interface WetDayChain {
  /** Chance of a wet day after a wet one. */
  readonly wetAfterWet: number;
  /** Chance of a wet day after a dry one. */
  readonly wetAfterDry: number;
  /** Gamma shape of a wet day's rain. */
  readonly shape: number;
  /** Gamma scale of a wet day's rain, millimeters. */
  readonly scaleMm: number;
}

/** How often each kind of day followed each kind. */
export interface WetDayCounts {
  readonly dryToDry: number;
  readonly dryToWet: number;
  readonly wetToDry: number;
  readonly wetToWet: number;
}

/** Fewer wet days than this do not bear a shape: amounts are then taken as exponential. */
const fewestForShape = 5;

/**
 * Counts wet days after wet and dry ones, month by month: a day is wet if its rain is above `wetAboveMm`; each pair of days belongs to the month of
 * its second day, the first day of all has none.
 * @param rainMm - Rain of each day in order, none missing, millimeters; at least 0
 * @param months - Month of each day, 1 to 12
 * @param wetAboveMm - Rain that makes a day wet if there is more of it, millimeters; at least 0; 0 if left out
 * @returns Counts for the 12 months
 * @throws RangeError if a list is empty, the two differ in length, or a value is outside its range
 * @source richardson-1981, the chain of wet and dry days
 * @example wetDayCounts([0, 3, 2, 0], [1, 1, 1, 1])[0] //=> ({ dryToDry: 0, dryToWet: 1, wetToDry: 1, wetToWet: 1 })
 */
export function wetDayCounts(rainMm: readonly number[], months: readonly number[], wetAboveMm = 0): WetDayCounts[] {
  need('wetDayCounts', 'rainMm.length', rainMm.length, { atLeast: 1 });
  need('wetDayCounts', 'months.length', months.length, { atLeast: rainMm.length, atMost: rainMm.length });
  const counts = Array.from({ length: 12 }, () => ({ dryToDry: 0, dryToWet: 0, wetToDry: 0, wetToWet: 0 }));
  let wasWet: boolean | undefined;
  for (const [index, rain] of rainMm.entries()) {
    const month = needThere('wetDayCounts', `month of day ${index + 1}`, months[index]);
    need('wetDayCounts', 'rainMm', rain, { atLeast: 0 });
    need('wetDayCounts', 'months', month, { atLeast: 1, atMost: 12, whole: true });
    const isWet = rain > wetAboveMm;
    const ofMonth = counts[month - 1];
    if (wasWet !== undefined && ofMonth !== undefined) {
      ofMonth[wasWet ? (isWet ? 'wetToWet' : 'wetToDry') : isWet ? 'dryToWet' : 'dryToDry'] += 1;
    }
    wasWet = isWet;
  }
  return counts;
}

/**
 * Fits the chain of each month to a daily record: chances from the counts, gamma amounts by Thom's approximation from the month's wet days. Where a
 * kind of day never came before, its chance is the month's share of wet days; a month without rain gets chance 0; one with under five wet days,
 * exponential amounts. A few years make a poor fit: show how many went in.
 * @param rainMm - Rain of each day in order, none missing, millimeters; at least 0
 * @param months - Month of each day, 1 to 12
 * @param wetAboveMm - Rain that makes a day wet if there is more of it, millimeters; at least 0; 0 if left out
 * @returns Chains for the 12 months
 * @throws RangeError if a list is empty, the two differ in length, or a value is outside its range
 * @source richardson-1984, the rain model
 * @example wetDayChain([0, 3, 2, 0], [1, 1, 1, 1])[0] //=> ({ wetAfterWet: 0.5, wetAfterDry: 1, shape: 1, scaleMm: 2.5 })
 */
export function wetDayChain(rainMm: readonly number[], months: readonly number[], wetAboveMm = 0): WetDayChain[] {
  return wetDayCounts(rainMm, months, wetAboveMm).map(({ dryToDry, dryToWet, wetToDry, wetToWet }, index) => {
    const amounts = rainMm.filter((rain, day) => months[day] === index + 1 && rain > wetAboveMm);
    const pairs = dryToDry + dryToWet + wetToDry + wetToWet;
    const wetShare = pairs === 0 ? 0 : (dryToWet + wetToWet) / pairs;
    const chance = (wet: number, dry: number): number => (wet + dry === 0 ? wetShare : wet / (wet + dry));
    const meanMm = amounts.reduce((sum, each) => sum + each, 0) / Math.max(1, amounts.length);
    const isFitted = amounts.length >= fewestForShape && amounts.some((each) => each !== amounts[0]);
    const { shape, scale } = isFitted ? gammaFitThom(amounts) : { shape: 1, scale: meanMm };
    return { wetAfterWet: chance(wetToWet, wetToDry), wetAfterDry: chance(dryToWet, dryToDry), shape, scaleMm: scale };
  });
}

/**
 * Share of days that are wet in the long run: π = P(W|D) / (1 + P(W|D) − P(W|W)), with P(W|W) = `wetAfterWet`, P(W|D) = `wetAfterDry`.
 * @param wetAfterWet - Chance of a wet day after a wet one; 0 to 1
 * @param wetAfterDry - Chance of a wet day after a dry one; 0 to 1, not 0 while the other is 1
 * @returns Share of wet days, 0 to 1
 * @throws RangeError if a chance is outside its range
 * @source katz-1977, long-run chance of the chain (from memory)
 * @example wetDayShare(0.662, 0.250) //=> 0.425170
 */
export function wetDayShare(wetAfterWet: number, wetAfterDry: number): number {
  need('wetDayShare', 'wetAfterWet', wetAfterWet, { atLeast: 0, atMost: 1 });
  need('wetDayShare', 'wetAfterDry', wetAfterDry, { atLeast: 0, atMost: 1 });
  need('wetDayShare', '1 + wetAfterDry - wetAfterWet', 1 + wetAfterDry - wetAfterWet, { above: 0 });
  return wetAfterDry / (1 + wetAfterDry - wetAfterWet);
}

/**
 * Mean and variance of the rain of N days of a chain: mean N π α β, variance about N π α β² + N π (1 − π) (1 + r) / (1 − r) (α β)², with r = P(W|W)
 * − P(W|D), from `chain` and N = `days`.
 * @param chain - Chain of the month
 * @param days - Number of days; a whole number, at least 1
 * @returns Mean and variance, millimeters and square millimeters
 * @throws RangeError if `days` or a value of the chain is outside its range
 * @source katz-1977, mean and variance of a total (from memory)
 * @example chainTotal({ wetAfterWet: 0.7344, wetAfterDry: 0.3220, shape: 0.9862, scaleMm: 7.1591 }, 31).meanMm //=> 119.9
 */
export function chainTotal(chain: WetDayChain, days: number): { readonly meanMm: number; readonly varianceMm2: number } {
  need('chainTotal', 'days', days, { atLeast: 1, whole: true });
  const { wetAfterWet, wetAfterDry, shape, scaleMm } = chain;
  const share = wetDayShare(wetAfterWet, wetAfterDry);
  const meanWetMm = shape * scaleMm;
  const persistence = wetAfterWet - wetAfterDry;
  const clustering = (1 + persistence) / (1 - persistence);
  return {
    meanMm: days * share * meanWetMm,
    varianceMm2: days * share * meanWetMm * scaleMm + days * share * (1 - share) * clustering * meanWetMm ** 2,
  };
}
