import { need } from '../need.ts';

/**
 * Acres that feed a herd for a stay: A = D s / (F u), with D = `dailyDemandLb`, s = `stayDays`, F = `availableLbPerAc`, u = `grazedShare`.
 * @param options.dailyDemandLb - Dry matter that the herd eats, lb per day; at least 0
 * @param options.stayDays - Days in the paddock, days; above 0
 * @param options.availableLbPerAc - Dry matter above the stubble, lb per acre; above 0
 * @param options.grazedShare - Share of the available dry matter that is eaten (the rest is trampled or refused), no unit; above 0, at most 1
 * @returns Area of the paddock, acres
 * @throws RangeError if a value is outside its range
 * @source penn-state-agronomy-guide, table 1.8-9
 * @example paddockAcres({ dailyDemandLb: 25, stayDays: 5, availableLbPerAc: 1000, grazedShare: 0.65 }) //=> 0.192
 */
export function paddockAcres({
  dailyDemandLb,
  stayDays,
  availableLbPerAc,
  grazedShare,
}: {
  readonly dailyDemandLb: number;
  readonly stayDays: number;
  readonly availableLbPerAc: number;
  readonly grazedShare: number;
}): number {
  need('paddockAcres', 'dailyDemandLb', dailyDemandLb, { atLeast: 0 });
  need('paddockAcres', 'stayDays', stayDays, { above: 0 });
  need('paddockAcres', 'availableLbPerAc', availableLbPerAc, { above: 0 });
  need('paddockAcres', 'grazedShare', grazedShare, { above: 0, atMost: 1 });
  return (dailyDemandLb * stayDays) / (availableLbPerAc * grazedShare);
}
