import { need } from '../need.ts';

/**
 * Head that forage carries through a season: n = F / (d T), with F = `eatenLb` (what may be eaten, not what stands), d = `dailyLbPerHead`, T =
 * `days`. Not rounded.
 * @param options.eatenLb - Forage that may be eaten, lb of dry matter; at least 0
 * @param options.dailyLbPerHead - Dry matter that one animal (with its calf) eats, lb per day; above 0
 * @param options.days - Length of the season, days; above 0
 * @returns Head, number
 * @throws RangeError if a value is outside its range
 * @source umaine-pasture-lesson-5, equation 1
 * @example carryingHead({ eatenLb: 540000, dailyLbPerHead: 30, days: 180 }) //=> 100
 */
export function carryingHead({
  eatenLb,
  dailyLbPerHead,
  days,
}: {
  readonly eatenLb: number;
  readonly dailyLbPerHead: number;
  readonly days: number;
}): number {
  need('carryingHead', 'eatenLb', eatenLb, { atLeast: 0 });
  need('carryingHead', 'dailyLbPerHead', dailyLbPerHead, { above: 0 });
  need('carryingHead', 'days', days, { above: 0 });
  return eatenLb / (dailyLbPerHead * days);
}
