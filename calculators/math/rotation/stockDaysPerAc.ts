import { need } from '../need.ts';

/**
 * Stock-days off an acre of grass, counted in one kind of stock: S = max(0, (D t - H) / (y A)), with D = `eatenLbPerDay`, t = `days`, H = `hayFedLb`,
 * y = `yardstickLbPerDay`, A = `areaAc`. What hay covered is no credit to the grass; it covers no more than all.
 * @param options.eatenLbPerDay - What all the stock there eat, lb dry matter per day; at least 0
 * @param options.days - Days that they were there, days; at least 0
 * @param options.areaAc - Acres that they grazed, acres; above 0
 * @param options.yardstickLbPerDay - What one of the kind eats that is counted in, lb dry matter per day; above 0
 * @param options.hayFedLb - Hay fed there, the water out, lb; at least 0
 * @returns Stock-days per acre
 * @throws RangeError if a value is outside its range
 * @source tannachton-cow-days, paragraph on 3.6 acres
 * @example stockDaysPerAc({ eatenLbPerDay: 60 * 31, days: 5, areaAc: 10, yardstickLbPerDay: 31 }) //=> 30
 */
export function stockDaysPerAc({
  eatenLbPerDay,
  days,
  areaAc,
  yardstickLbPerDay,
  hayFedLb = 0,
}: {
  readonly eatenLbPerDay: number;
  readonly days: number;
  readonly areaAc: number;
  readonly yardstickLbPerDay: number;
  readonly hayFedLb?: number;
}): number {
  need('stockDaysPerAc', 'eatenLbPerDay', eatenLbPerDay, { atLeast: 0 });
  need('stockDaysPerAc', 'days', days, { atLeast: 0 });
  need('stockDaysPerAc', 'areaAc', areaAc, { above: 0 });
  need('stockDaysPerAc', 'yardstickLbPerDay', yardstickLbPerDay, { above: 0 });
  need('stockDaysPerAc', 'hayFedLb', hayFedLb, { atLeast: 0 });
  return Math.max(0, eatenLbPerDay * days - hayFedLb) / (yardstickLbPerDay * areaAc);
}
