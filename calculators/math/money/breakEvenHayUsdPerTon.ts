import { need } from '../need.ts';

/**
 * Most that hay may cost, delivered, when a day of keeping must not cost more than a limit: p = 2,000 (c − o) / w, with c = `dailyLimitUsd`,
 * o = `otherUsdPerDay`, w = `hayLbPerDay`.
 * @param options.dailyLimitUsd - Most that a day of keeping one animal may cost, dollars
 * @param options.otherUsdPerDay - What the day costs beside hay, dollars; 0 or more
 * @param options.hayLbPerDay - Hay that must be bought for the day, storage and feeding losses included, lb as fed; above 0
 * @returns Price, dollars per ton as fed; 0 or below means that hay is too dear at any price
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example breakEvenHayUsdPerTon({ dailyLimitUsd: 2.5, otherUsdPerDay: 0.3, hayLbPerDay: 33 }) //=> 133.33
 */
export function breakEvenHayUsdPerTon({
  dailyLimitUsd,
  otherUsdPerDay,
  hayLbPerDay,
}: {
  readonly dailyLimitUsd: number;
  readonly otherUsdPerDay: number;
  readonly hayLbPerDay: number;
}): number {
  need('breakEvenHayUsdPerTon', 'dailyLimitUsd', dailyLimitUsd);
  need('breakEvenHayUsdPerTon', 'otherUsdPerDay', otherUsdPerDay, { atLeast: 0 });
  need('breakEvenHayUsdPerTon', 'hayLbPerDay', hayLbPerDay, { above: 0 });
  return (2000 * (dailyLimitUsd - otherUsdPerDay)) / hayLbPerDay;
}
