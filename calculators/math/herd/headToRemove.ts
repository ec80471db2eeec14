import { need } from '../need.ts';

/**
 * Head that must go on a later day so that the forage lasts: x = n - (F / d - n t) / (T - t), with n = `head`, F = `eatenLb`, d = `dailyLbPerHead`,
 * t = `daysUntilSale`, T = `daysToFeed`. Every day of waiting is eaten by all of them, so the number grows.
 * @param options.head - Head now, number; at least 0
 * @param options.eatenLb - Forage that may still be eaten, lb of dry matter; at least 0
 * @param options.dailyLbPerHead - Dry matter that one animal eats, lb per day; above 0
 * @param options.daysToFeed - Days that the forage must last, days; above `daysUntilSale`
 * @param options.daysUntilSale - Days until the animals leave, days; at least 0
 * @returns Head to remove, number, not rounded: 0 where all can stay; Infinity where even removing all on that day comes too late
 * @throws RangeError if a value is outside its range
 * @source our own, forage shared out over the days
 * @example headToRemove({ head: 100, eatenLb: 240000, dailyLbPerHead: 30, daysToFeed: 100, daysUntilSale: 0 }) //=> 20
 */
export function headToRemove({
  head,
  eatenLb,
  dailyLbPerHead,
  daysToFeed,
  daysUntilSale,
}: {
  readonly head: number;
  readonly eatenLb: number;
  readonly dailyLbPerHead: number;
  readonly daysToFeed: number;
  readonly daysUntilSale: number;
}): number {
  need('headToRemove', 'head', head, { atLeast: 0 });
  need('headToRemove', 'eatenLb', eatenLb, { atLeast: 0 });
  need('headToRemove', 'dailyLbPerHead', dailyLbPerHead, { above: 0 });
  need('headToRemove', 'daysUntilSale', daysUntilSale, { atLeast: 0 });
  need('headToRemove', 'daysToFeed', daysToFeed, { above: daysUntilSale });
  const headDays = eatenLb / dailyLbPerHead;
  const headDaysLeft = headDays - head * daysUntilSale;
  if (headDaysLeft < 0) return Number.POSITIVE_INFINITY;
  return Math.max(0, head - headDaysLeft / (daysToFeed - daysUntilSale));
}
