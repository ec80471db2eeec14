import { need } from '../need.ts';

/**
 * One day's growth of grass: ΔG = r R (G + c) (1 − (G + D) / K), 0 at least, with G = `greenLbPerAc`, D = `deadLbPerAc`, c = `crownLbPerAc`, K =
 * `ceilingLbPerAc`, r = `ratePerDay`, R = `response`. The crown is leaf that no mouth reaches: from there grazed grass starts again.
 * @param options.greenLbPerAc - Green mass this morning, pounds of dry matter per acre; at least 0
 * @param options.deadLbPerAc - Standing dead mass this morning, pounds of dry matter per acre; at least 0
 * @param options.crownLbPerAc - Green out of reach, pounds of dry matter per acre; at least 0
 * @param options.ceilingLbPerAc - Standing mass at which growth stops, pounds of dry matter per acre; above 0
 * @param options.ratePerDay - Relative growth rate under the mean of the best conditions, per day; 0 to 1
 * @param options.response - What warmth, light, season and water leave of it today, share of 1; at least 0 (a spring flush goes past 1)
 * @returns Growth of the day, pounds of dry matter per acre
 * @throws RangeError if a parameter is outside its range
 * @source noy-meir-1975, logistic growth; the crown in place of an ungrazable reserve is our own
 * @example regrowthLbPerAcDay({ greenLbPerAc: 850, deadLbPerAc: 150, crownLbPerAc: 150, ceilingLbPerAc: 4000, ratePerDay: 0.05, response: 0.8 }) //=> 30
 */
export function regrowthLbPerAcDay({
  greenLbPerAc,
  deadLbPerAc,
  crownLbPerAc,
  ceilingLbPerAc,
  ratePerDay,
  response,
}: {
  readonly greenLbPerAc: number;
  readonly deadLbPerAc: number;
  readonly crownLbPerAc: number;
  readonly ceilingLbPerAc: number;
  readonly ratePerDay: number;
  readonly response: number;
}): number {
  need('regrowthLbPerAcDay', 'greenLbPerAc', greenLbPerAc, { atLeast: 0 });
  need('regrowthLbPerAcDay', 'deadLbPerAc', deadLbPerAc, { atLeast: 0 });
  need('regrowthLbPerAcDay', 'crownLbPerAc', crownLbPerAc, { atLeast: 0 });
  need('regrowthLbPerAcDay', 'ceilingLbPerAc', ceilingLbPerAc, { above: 0 });
  need('regrowthLbPerAcDay', 'ratePerDay', ratePerDay, { atLeast: 0, atMost: 1 });
  need('regrowthLbPerAcDay', 'response', response, { atLeast: 0 });
  return Math.max(0, ratePerDay * response * (greenLbPerAc + crownLbPerAc) * (1 - (greenLbPerAc + deadLbPerAc) / ceilingLbPerAc));
}
