import { need, needThere } from '../need.ts';
import { sumOf } from '../special/sumOf.ts';

export type FallFlush = 'none' | 'some' | 'much';

/**
 * Share of the year's growth in the flush. Some: smooth brome in Kansas, 10 percent in early fall. Much: cool-season pasture in Arkansas, a third
 * in autumn.
 */
const flushShare: Readonly<Record<FallFlush, number>> = { none: 0, some: 0.1, much: 1 / 3 };
/** How the flush is spread over the last three months. */
const flushSpread = [0.25, 0.5, 0.25] as const;

/**
 * Growth by month in percent of a year's growth from four answers: w = ((m + 1) / (b + 1))^2 up to the best month, ((q + 1 - m) / (q + 1 - b))^2
 * after it, with m the months from the first one to this one, b and q those to `bestMonth` and `quitMonth`, all counted on round the year, over New
 * Year too; then a flush over the last three months after the best one. A local printed curve comes before this one.
 * @param options.startMonth - Month in which growth starts, 1 to 12
 * @param options.bestMonth - Month of most growth, 1 to 12; going on from `startMonth` not past `quitMonth`
 * @param options.quitMonth - Last month with growth, 1 to 12; going on from `startMonth` not before `bestMonth`, after it where there is a flush
 * @param options.fallFlush - How much comes back in the fall: none, some or much
 * @returns Twelve shares, January first, percent of a year's growth; they sum to 100
 * @throws RangeError if the months are not in order
 * @source our own, squared sides, which come closer to printed curves than straight ones
 * @example growthCurveFromAnswers({ startMonth: 5, bestMonth: 6, quitMonth: 6, fallFlush: 'none' }) //=> [0, 0, 0, 0, 20, 80, 0, 0, 0, 0, 0, 0]
 * @example growthCurveFromAnswers({ startMonth: 12, bestMonth: 1, quitMonth: 1, fallFlush: 'none' }) //=> [80, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 20]
 */
export function growthCurveFromAnswers({
  startMonth,
  bestMonth,
  quitMonth,
  fallFlush,
}: {
  readonly startMonth: number;
  readonly bestMonth: number;
  readonly quitMonth: number;
  readonly fallFlush: FallFlush;
}): number[] {
  for (const [name, month] of Object.entries({ startMonth, bestMonth, quitMonth }))
    need('growthCurveFromAnswers', name, month, { atLeast: 1, atMost: 12, whole: true });
  const after = (month: number): number => (month - startMonth + 12) % 12;
  const [best, quit] = [after(bestMonth), after(quitMonth)];
  need('growthCurveFromAnswers', 'months from startMonth to quitMonth', quit, { atLeast: fallFlush === 'none' ? best : best + 1 });
  const shares = (weights: readonly number[]): number[] => {
    const sum = sumOf(weights, (weight) => weight);
    return weights.map((weight) => (sum === 0 ? 0 : weight / sum));
  };
  // Months from the first one on.
  const months = Array.from({ length: 12 }, (_, index) => index);
  const main = shares(
    months.map((month) => {
      if (month > quit) return 0;
      return month <= best ? ((month + 1) / (best + 1)) ** 2 : ((quit + 1 - month) / (quit + 1 - best)) ** 2;
    }),
  );
  /** By months before the last one: 0, -1, -2. */
  const flushOf = (back: number): number => needThere('growthCurveFromAnswers', 'share of the flush', flushSpread[back + flushSpread.length - 1]);
  const flush = shares(months.map((month) => (month > best && month > quit - flushSpread.length && month <= quit ? flushOf(month - quit) : 0)));
  const flushed = flushShare[fallFlush];
  return months.map((index) => {
    const month = after(index + 1);
    const mainShare = needThere('growthCurveFromAnswers', 'month', main[month]);
    return 100 * ((1 - flushed) * mainShare + flushed * needThere('growthCurveFromAnswers', 'month of the flush', flush[month]));
  });
}
