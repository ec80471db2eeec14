import { need } from '../need.ts';
import { logisticMass } from './logisticMass.ts';

/** What stands, in pounds of dry matter per acre. */
export interface Sward {
  readonly greenLbPerAc: number;
  readonly deadLbPerAc: number;
}

/**
 * One day of an ungrazed sward: green mass grows by the logistic curve slowed to the day's `response`, shaded by all that stands; a share of it
 * dies, and a share of the dead weathers away. With r = `ratePerDay`, K = `ceilingLbPerAc`, green = `greenLbPerAc`, dead = `deadLbPerAc`, dying
 * share `senescenceShare`, weathering share `weatheringShare`.
 * @param options.greenLbPerAc - Green mass last evening, pounds of dry matter per acre; above 0
 * @param options.deadLbPerAc - Standing dead mass last evening, pounds of dry matter per acre; at least 0
 * @param options.ratePerDay - Relative growth rate under the best conditions, per day; 0 to 1
 * @param options.ceilingLbPerAc - Standing mass at which growth stops, pounds of dry matter per acre; above 0
 * @param options.response - Share of best growth that warmth and water allow today; 0 to 1
 * @param options.senescenceShare - Share of green mass that dies in a day; 0 to below 1
 * @param options.weatheringShare - Share of dead mass that falls or rots in a day; 0 to below 1
 * @returns Green and dead mass this evening, and growth of the day, pounds of dry matter per acre
 * @throws RangeError if a parameter is outside its range
 * @source our own, after noy-meir-1975
 * @example swardDay({ greenLbPerAc: 1000, deadLbPerAc: 0, ratePerDay: 0.08, ceilingLbPerAc: 5000, response: 0, senescenceShare: 0.01, weatheringShare: 0 }) //=> ({ greenLbPerAc: 990, deadLbPerAc: 10, grownLbPerAc: 0 })
 */
export function swardDay({
  greenLbPerAc,
  deadLbPerAc,
  ratePerDay,
  ceilingLbPerAc,
  response,
  senescenceShare,
  weatheringShare,
}: Sward & {
  readonly ratePerDay: number;
  readonly ceilingLbPerAc: number;
  readonly response: number;
  readonly senescenceShare: number;
  readonly weatheringShare: number;
}): Sward & { readonly grownLbPerAc: number } {
  need('swardDay', 'greenLbPerAc', greenLbPerAc, { above: 0 });
  need('swardDay', 'deadLbPerAc', deadLbPerAc, { atLeast: 0 });
  need('swardDay', 'ceilingLbPerAc', ceilingLbPerAc, { above: 0 });
  need('swardDay', 'ratePerDay', ratePerDay, { atLeast: 0, atMost: 1 });
  need('swardDay', 'response', response, { atLeast: 0, atMost: 1 });
  need('swardDay', 'senescenceShare', senescenceShare, { atLeast: 0, below: 1 });
  need('swardDay', 'weatheringShare', weatheringShare, { atLeast: 0, below: 1 });
  const room = ceilingLbPerAc - deadLbPerAc;
  const isGrowing = response > 0 && greenLbPerAc < room;
  const grown = isGrowing
    ? Math.max(0, logisticMass({ massLbPerAc: greenLbPerAc, ceilingLbPerAc: room, ratePerDay: ratePerDay * response, days: 1 }) - greenLbPerAc)
    : 0;
  const dying = (greenLbPerAc + grown) * senescenceShare;
  return { greenLbPerAc: greenLbPerAc + grown - dying, deadLbPerAc: deadLbPerAc * (1 - weatheringShare) + dying, grownLbPerAc: grown };
}

/**
 * Growth rate at which an ungrazed year peaks, green and dead together, at the yield that the guide gives: found by halving. The guide's yield is
 * what stands at the peak of a normal year, not the sum of all regrowth; fitting the sum would make every pasture grow far too much.
 * @param options.responses - Share of best growth that warmth and water allow, each day of a normal year; 0 to 1
 * @param options.startLbPerAc - Green mass at the start of the year, pounds of dry matter per acre; above 0, below `peakLbPerAc`
 * @param options.peakLbPerAc - Standing mass at the peak of the normal year, pounds of dry matter per acre; below `ceilingLbPerAc`
 * @param options.ceilingLbPerAc - Standing mass at which growth stops, pounds of dry matter per acre
 * @param options.senescenceShare - Share of green mass that dies in a day; 0 to below 1
 * @param options.weatheringShare - Share of dead mass that falls or rots in a day; 0 to below 1
 * @returns Relative growth rate under the best conditions, per day
 * @throws RangeError if no rate up to 1 a day reaches the peak, or a parameter is outside its range
 * @source our own, a fit to the guide's yield
 * @example rateForPeak({ responses: Array(200).fill(1), startLbPerAc: 200, peakLbPerAc: 4000, ceilingLbPerAc: 5000, senescenceShare: 0, weatheringShare: 0 }) //=> 0.0228
 */
export function rateForPeak({
  responses,
  startLbPerAc,
  peakLbPerAc,
  ceilingLbPerAc,
  senescenceShare,
  weatheringShare,
}: {
  readonly responses: readonly number[];
  readonly startLbPerAc: number;
  readonly peakLbPerAc: number;
  readonly ceilingLbPerAc: number;
  readonly senescenceShare: number;
  readonly weatheringShare: number;
}): number {
  need('rateForPeak', 'peakLbPerAc', peakLbPerAc, { above: startLbPerAc, below: ceilingLbPerAc });
  const peakAt = (ratePerDay: number): number => {
    let sward: Sward = { greenLbPerAc: startLbPerAc, deadLbPerAc: 0 };
    let peak = 0;
    for (const response of responses) {
      sward = swardDay({ ...sward, ratePerDay, ceilingLbPerAc, response, senescenceShare, weatheringShare });
      peak = Math.max(peak, sward.greenLbPerAc + sward.deadLbPerAc);
    }
    return peak;
  };
  need('rateForPeak', 'peak reached at rate 1', peakAt(1), { atLeast: peakLbPerAc });
  let low = 0;
  let high = 1;
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    if (peakAt(middle) < peakLbPerAc) low = middle;
    else high = middle;
  }
  return high;
}
