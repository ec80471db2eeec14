import { need } from '../need.ts';

/**
 * Days that forage feeds a herd: T = F / D, with F = `eatenLb` (what will be eaten, not what stands), D = `dailyDemandLb`.
 * @param options.eatenLb - Forage that will be eaten, lb of dry matter; at least 0
 * @param options.dailyDemandLb - Dry matter that the herd eats, lb per day; above 0
 * @returns Grazing, days
 * @throws RangeError if a value is outside its range
 * @source umaine-pasture-lesson-1, appendix D
 * @example grazingDays({ eatenLb: 14000, dailyDemandLb: 1000 }) //=> 14
 */
export function grazingDays({ eatenLb, dailyDemandLb }: { readonly eatenLb: number; readonly dailyDemandLb: number }): number {
  need('grazingDays', 'eatenLb', eatenLb, { atLeast: 0 });
  need('grazingDays', 'dailyDemandLb', dailyDemandLb, { above: 0 });
  return eatenLb / dailyDemandLb;
}
