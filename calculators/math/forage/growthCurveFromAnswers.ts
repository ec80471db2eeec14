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
 * Growth by month in percent of the year from four answers: w = ((m - s + 1) / (b - s + 1))^2 up to the best month, ((q + 1 - m) / (q + 1 - b))^2
 * after it, with m the month, s, b, q = `startMonth`, `bestMonth`, `quitMonth`; then a flush over the last three months after the best one. A local
 * printed curve comes before this one.
 * @param options.startMonth - Month in which growth starts, 1 to 12
 * @param options.bestMonth - Month of most growth; `startMonth` to `quitMonth`
 * @param options.quitMonth - Last month with growth; `bestMonth` to 12, after it where there is a flush
 * @param options.fallFlush - How much comes back in the fall: none, some or much
 * @returns Twelve shares, January first, percent of the year; they sum to 100
 * @throws RangeError if the months are not in order
 * @source our own, squared sides, which come closer to printed curves than straight ones
 * @example growthCurveFromAnswers({ startMonth: 5, bestMonth: 6, quitMonth: 6, fallFlush: 'none' }) //=> [0, 0, 0, 0, 20, 80, 0, 0, 0, 0, 0, 0]
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
  need('growthCurveFromAnswers', 'startMonth', startMonth, { atLeast: 1, atMost: 12, whole: true });
  need('growthCurveFromAnswers', 'bestMonth', bestMonth, { atLeast: startMonth, atMost: 12, whole: true });
  need('growthCurveFromAnswers', 'quitMonth', quitMonth, { atLeast: fallFlush === 'none' ? bestMonth : bestMonth + 1, atMost: 12, whole: true });
  const months = Array.from({ length: 12 }, (_, index) => index + 1);
  const shares = (weights: readonly number[]): number[] => {
    const sum = sumOf(weights, (weight) => weight);
    return weights.map((weight) => (sum === 0 ? 0 : weight / sum));
  };
  const main = shares(
    months.map((month) => {
      if (month < startMonth || month > quitMonth) return 0;
      return month <= bestMonth
        ? ((month - startMonth + 1) / (bestMonth - startMonth + 1)) ** 2
        : ((quitMonth + 1 - month) / (quitMonth + 1 - bestMonth)) ** 2;
    }),
  );
  /** By months before the last one: 0, -1, -2. */
  const flushOf = (back: number): number => needThere('growthCurveFromAnswers', 'share of the flush', flushSpread[back + flushSpread.length - 1]);
  const flush = shares(
    months.map((month) => (month > bestMonth && month > quitMonth - flushSpread.length && month <= quitMonth ? flushOf(month - quitMonth) : 0)),
  );
  const flushed = flushShare[fallFlush];
  return main.map(
    (share, index) => 100 * ((1 - flushed) * share + flushed * needThere('growthCurveFromAnswers', 'month of the flush', flush[index])),
  );
}
