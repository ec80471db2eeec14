import { need } from '../need.ts';

/**
 * Cost of selling part of a herd and feeding the rest: T = (N − n) K + n R, with N = `herdHead`, n = `sellHead`, K, R = `keepingUsdPerHead`,
 * `rebuyingUsdPerHead` from `keepAgainstRebuyUsd`.
 * @param options.herdHead - Cows in the herd, head; above 0
 * @param options.sellHead - Cows sold and bought back, head; 0 to `herdHead`
 * @param options.keepingUsdPerHead - Cost of feeding one through, dollars; any sign
 * @param options.rebuyingUsdPerHead - Cost of selling one and buying back, dollars; any sign
 * @returns Cows kept, head; share sold, percent; cost of the plan, and what it saves against keeping all, dollars
 * @throws RangeError if a value is outside its range
 * @source gessner-2016, option A
 * @example partialHerd({ herdHead: 200, sellHead: 35, keepingUsdPerHead: 756, rebuyingUsdPerHead: 459 }).soldPercent //=> 17.5
 */
export function partialHerd({
  herdHead,
  sellHead,
  keepingUsdPerHead,
  rebuyingUsdPerHead,
}: {
  readonly herdHead: number;
  readonly sellHead: number;
  readonly keepingUsdPerHead: number;
  readonly rebuyingUsdPerHead: number;
}): { readonly keptHead: number; readonly soldPercent: number; readonly costUsd: number; readonly savedUsd: number } {
  need('partialHerd', 'herdHead', herdHead, { above: 0 });
  need('partialHerd', 'sellHead', sellHead, { atLeast: 0, atMost: herdHead });
  need('partialHerd', 'keepingUsdPerHead', keepingUsdPerHead);
  need('partialHerd', 'rebuyingUsdPerHead', rebuyingUsdPerHead);
  const keptHead = herdHead - sellHead;
  const costUsd = keptHead * keepingUsdPerHead + sellHead * rebuyingUsdPerHead;
  return { keptHead, soldPercent: (100 * sellHead) / herdHead, costUsd, savedUsd: herdHead * keepingUsdPerHead - costUsd };
}

/**
 * Head that the feed on hand carries through: n = F / (w t), whole animals, with F = `feedLb`, w = `lbPerHeadDay`, t = `days`.
 * @param feedLb - Feed on hand, lb; 0 or more
 * @param lbPerHeadDay - Feed taken from the stack for one animal, losses included, lb a day, weighed like `feedLb`; above 0
 * @param days - Days to get through, days; above 0
 * @returns Animals, whole head
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example headFedThrough(100000, 33, 150) //=> 20
 */
export function headFedThrough(feedLb: number, lbPerHeadDay: number, days: number): number {
  need('headFedThrough', 'feedLb', feedLb, { atLeast: 0 });
  need('headFedThrough', 'lbPerHeadDay', lbPerHeadDay, { above: 0 });
  need('headFedThrough', 'days', days, { above: 0 });
  return Math.floor(feedLb / (lbPerHeadDay * days));
}
