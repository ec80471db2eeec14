/**
 * Move of the market until the usual day at which weaning early and at the usual time leave the same. All of the usual calf moves with the market; of
 * the early one only what is sold on that day: U (1 + z) = M (1 + z) + (E - M).
 * @param ways - What each way leaves if the market stays
 * @param ways.usualUsd - Weaned at the usual time, dollars a calf
 * @param ways.earlyUsd - Weaned early, dollars a calf
 * @param ways.movingUsd - Of that, what moves with the market, dollars a calf
 * @returns Move, percent; a fall is negative. Nothing where both move alike, so that no move makes them even
 * @source our own, both ways set equal
 * @example evenMarketPercent({ usualUsd: 1000, earlyUsd: 900, movingUsd: 0 }) //=> -10.0
 */
export function evenMarketPercent(ways: { readonly usualUsd: number; readonly earlyUsd: number; readonly movingUsd: number }): number | undefined {
  const { usualUsd, earlyUsd, movingUsd } = ways;
  return usualUsd === movingUsd ? undefined : 100 * ((earlyUsd - movingUsd) / (usualUsd - movingUsd) - 1);
}
