import { need, needThere } from '../need.ts';
import { gammaDeviate } from './gammaDeviate.ts';
import type { RandomSource } from './seededRandom.ts';
import type { WetDayChain } from './wetDayChain.ts';

/**
 * Makes up a run of daily rain: each day is wet with the chance that its month's chain gives after yesterday, and a wet day draws a gamma amount.
 * @param options.months - Month of each day wanted, 1 to 12
 * @param options.chains - Chains of the 12 months
 * @param options.random - Random source; the same source state gives the same rain
 * @param options.startsAfterWet - Whether the day before the first was wet; no if left out
 * @returns Rain of each day, millimeters
 * @throws RangeError if `chains` has not 12 entries or a month is outside its range
 * @source richardson-1984, the rain model
 * @example generatedRainMm({ months: [1, 1], chains: Array(12).fill({ wetAfterWet: 0, wetAfterDry: 0, shape: 1, scaleMm: 5 }), random: () => 0.5 }) //=> [0, 0]
 */
export function generatedRainMm({
  months,
  chains,
  random,
  startsAfterWet = false,
}: {
  readonly months: ArrayLike<number>;
  readonly chains: readonly WetDayChain[];
  readonly random: RandomSource;
  readonly startsAfterWet?: boolean;
}): number[] {
  need('generatedRainMm', 'chains.length', chains.length, { atLeast: 12, atMost: 12 });
  let wasWet = startsAfterWet;
  const rainMm: number[] = [];
  for (let day = 0; day < months.length; day += 1) {
    const month = needThere('generatedRainMm', 'month', months[day]);
    // No other number than one of the twelve months finds a chain.
    const chain = needThere('generatedRainMm', 'chain of the month', chains[month - 1]);
    wasWet = random() < (wasWet ? chain.wetAfterWet : chain.wetAfterDry);
    rainMm.push(wasWet ? gammaDeviate(chain.shape, chain.scaleMm, random) : 0);
  }
  return rainMm;
}
