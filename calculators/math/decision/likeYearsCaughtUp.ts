import { need } from '../need.ts';
import { exactBinomialInterval } from '../special/exactBinomialInterval.ts';

/** One year of the record: rain before the date and after it, inches. */
export interface SplitYear {
  readonly beforeIn: number;
  readonly afterIn: number;
}

/**
 * Of the years that stood no better at this date, how many still reached the target: years with b at most a are looked at, those with b + r at least T
 * counted, with a = `toDateIn`, b, r = each year's rain before and after the date, T = `targetIn`. Say the count, as "2 of 7", not a chance.
 * @param toDateIn - Rain of this season to date, inches; 0 or more
 * @param record - Rain before and after the date in each year, inches; each 0 or more
 * @param targetIn - Rain of the whole season that is called enough, inches; 0 or more
 * @returns Years looked at, years that reached the target, and the exact 95 percent interval of their share, percent: 0 to 100 where no year stood as badly
 * @throws RangeError if a value is outside its range
 * @source clopper-pearson-1934, p. 404
 * @example likeYearsCaughtUp(3, [{ beforeIn: 2, afterIn: 8 }, { beforeIn: 3, afterIn: 4 }, { beforeIn: 6, afterIn: 9 }], 9).caughtUp //=> 1
 */
export function likeYearsCaughtUp(
  toDateIn: number,
  record: readonly SplitYear[],
  targetIn: number,
): { readonly years: number; readonly caughtUp: number; readonly lowerPercent: number; readonly upperPercent: number } {
  need('likeYearsCaughtUp', 'toDateIn', toDateIn, { atLeast: 0 });
  need('likeYearsCaughtUp', 'targetIn', targetIn, { atLeast: 0 });
  for (const { beforeIn, afterIn } of record) {
    need('likeYearsCaughtUp', 'beforeIn', beforeIn, { atLeast: 0 });
    need('likeYearsCaughtUp', 'afterIn', afterIn, { atLeast: 0 });
  }
  const alike = record.filter(({ beforeIn }) => beforeIn <= toDateIn);
  const caughtUp = alike.filter(({ beforeIn, afterIn }) => beforeIn + afterIn >= targetIn).length;
  const { lowerShare, upperShare } =
    alike.length === 0 ? { lowerShare: 0, upperShare: 1 } : exactBinomialInterval({ successes: caughtUp, trials: alike.length });
  return { years: alike.length, caughtUp, lowerPercent: 100 * lowerShare, upperPercent: 100 * upperShare };
}
