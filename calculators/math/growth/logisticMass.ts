import { need } from '../need.ts';

/**
 * Mass of a growing sward after some days: V(t) = K / (1 + ((K − V0) / V0) e^(−r t)), with V0 = `massLbPerAc`, K = `ceilingLbPerAc`, r =
 * `ratePerDay`, t = `days`. Growth is slow from bare stubble, fastest at half the ceiling, slow again when shaded.
 * @param options.massLbPerAc - Mass now, pounds of dry matter per acre; above 0, at most `ceilingLbPerAc`
 * @param options.ceilingLbPerAc - Mass at which growth stops, pounds of dry matter per acre; above 0
 * @param options.ratePerDay - Relative growth rate r, per day; 0 to 1
 * @param options.days - Time, days; at least 0
 * @returns Mass then, pounds of dry matter per acre
 * @throws RangeError if a parameter is outside its range
 * @source noy-meir-1975, logistic growth
 * @example logisticMass({ massLbPerAc: 1200, ceilingLbPerAc: 5000, ratePerDay: 0.08, days: 20 }) //=> 3050.01
 */
export function logisticMass({
  massLbPerAc,
  ceilingLbPerAc,
  ratePerDay,
  days,
}: {
  readonly massLbPerAc: number;
  readonly ceilingLbPerAc: number;
  readonly ratePerDay: number;
  readonly days: number;
}): number {
  needSward('logisticMass', massLbPerAc, ceilingLbPerAc, ratePerDay);
  need('logisticMass', 'days', days, { atLeast: 0 });
  return ceilingLbPerAc / (1 + ((ceilingLbPerAc - massLbPerAc) / massLbPerAc) * Math.exp(-ratePerDay * days));
}

/**
 * Growth of a sward today: dV/dt = r V (1 − V / K), with V = `massLbPerAc`, K = `ceilingLbPerAc`, r = `ratePerDay`.
 * @param options.massLbPerAc - Mass now, pounds of dry matter per acre; above 0, at most `ceilingLbPerAc`
 * @param options.ceilingLbPerAc - Mass at which growth stops, pounds of dry matter per acre; above 0
 * @param options.ratePerDay - Relative growth rate r, per day; 0 to 1
 * @returns Growth, pounds of dry matter per acre and day
 * @throws RangeError if a parameter is outside its range
 * @source noy-meir-1975, logistic growth
 * @example logisticGrowthLbPerAcDay({ massLbPerAc: 1200, ceilingLbPerAc: 5000, ratePerDay: 0.08 }) //=> 72.96
 */
export function logisticGrowthLbPerAcDay({
  massLbPerAc,
  ceilingLbPerAc,
  ratePerDay,
}: {
  readonly massLbPerAc: number;
  readonly ceilingLbPerAc: number;
  readonly ratePerDay: number;
}): number {
  needSward('logisticGrowthLbPerAcDay', massLbPerAc, ceilingLbPerAc, ratePerDay);
  return ratePerDay * massLbPerAc * (1 - massLbPerAc / ceilingLbPerAc);
}

/**
 * Days that a sward takes from one mass to another: t = (1 / r) ln[V1 (K − V0) / (V0 (K − V1))], with V0 = `massLbPerAc`, V1 = `targetLbPerAc`, K =
 * `ceilingLbPerAc`, r = `ratePerDay`. Without growth there is no answer in days: `not-without-growth`; likewise for a target at the ceiling or
 * above: `never`.
 * @param options.massLbPerAc - Mass now, pounds of dry matter per acre; above 0, below `ceilingLbPerAc`
 * @param options.targetLbPerAc - Mass wanted, pounds of dry matter per acre; above 0
 * @param options.ceilingLbPerAc - Mass at which growth stops, pounds of dry matter per acre; above 0
 * @param options.ratePerDay - Relative growth rate r, per day; 0 to 1
 * @returns Days, 0 if it is there already, or one of the two words
 * @throws RangeError if a parameter is outside its range
 * @source noy-meir-1975, logistic growth solved for time
 * @example daysToMass({ massLbPerAc: 1200, targetLbPerAc: 2500, ceilingLbPerAc: 5000, ratePerDay: 0.08 }) //=> 14.408
 */
export function daysToMass({
  massLbPerAc,
  targetLbPerAc,
  ceilingLbPerAc,
  ratePerDay,
}: {
  readonly massLbPerAc: number;
  readonly targetLbPerAc: number;
  readonly ceilingLbPerAc: number;
  readonly ratePerDay: number;
}): number | 'not-without-growth' | 'never' {
  needSward('daysToMass', massLbPerAc, ceilingLbPerAc, ratePerDay);
  need('daysToMass', 'targetLbPerAc', targetLbPerAc, { above: 0 });
  if (targetLbPerAc <= massLbPerAc) return 0;
  if (targetLbPerAc >= ceilingLbPerAc) return 'never';
  if (ratePerDay === 0) return 'not-without-growth';
  return Math.log((targetLbPerAc * (ceilingLbPerAc - massLbPerAc)) / (massLbPerAc * (ceilingLbPerAc - targetLbPerAc))) / ratePerDay;
}

/**
 * Relative growth rate of a sward from its best day: r = 4 G / K, since growth peaks at r K / 4 when the mass is half the ceiling, with G =
 * `bestGrowthLbPerAcDay`, K = `ceilingLbPerAc`.
 * @param bestGrowthLbPerAcDay - Growth on the best day, pounds of dry matter per acre and day; at least 0
 * @param ceilingLbPerAc - Mass at which growth stops, pounds of dry matter per acre; above 0
 * @returns Relative growth rate r, per day
 * @throws RangeError if a parameter is outside its range
 * @source noy-meir-1975, logistic growth at its peak
 * @example ratePerDay(100, 5000) //=> 0.08
 */
export function ratePerDay(bestGrowthLbPerAcDay: number, ceilingLbPerAc: number): number {
  need('ratePerDay', 'bestGrowthLbPerAcDay', bestGrowthLbPerAcDay, { atLeast: 0 });
  need('ratePerDay', 'ceilingLbPerAc', ceilingLbPerAc, { above: 0 });
  return (4 * bestGrowthLbPerAcDay) / ceilingLbPerAc;
}

function needSward(name: string, massLbPerAc: number, ceilingLbPerAc: number, rate: number): void {
  need(name, 'ceilingLbPerAc', ceilingLbPerAc, { above: 0 });
  need(name, 'massLbPerAc', massLbPerAc, { above: 0, atMost: ceilingLbPerAc });
  need(name, 'ratePerDay', rate, { atLeast: 0, atMost: 1 });
}
