import { choice } from '../kit/inputs.ts';
import { grownShare } from '../math/forage/grownShare.ts';
import { type FallFlush, growthCurveFromAnswers } from '../math/forage/growthCurveFromAnswers.ts';
import { needThere } from '../math/need.ts';
import { dayOfYear } from '../math/weather/dayOfYear.ts';
import { growthCurves } from '../tables/growthCurves.ts';
import { dayMs, firstOfMonth, yearOf } from '../units/days.ts';
import { type Month, monthNumber, months, monthsOnTo } from '../units/months.ts';

const shownWhen = { curve: 'answers' };

/** When the grass grows: a printed curve by name, or the four answers that stand in for one. */
export const growthCurve = (quitLabel: string) => ({
  curve: choice('When the grass grows', 'answers', {
    options: {
      answers: { label: 'Four answers of my own', short: 'by four answers' },
      nd0002: { label: 'Cool-season grass, North Dakota', short: 'North Dakota curve' },
      'smooth-brome-kansas': { label: 'Smooth brome with nitrogen, northeast Kansas', short: 'Kansas brome curve' },
      co6707: { label: 'Warm-season grass, eastern Colorado', short: 'eastern Colorado curve' },
      'mlra69-fine-a': { label: 'Mixed warm and cool season, southeastern Colorado', short: 'southeast Colorado curve' },
    },
    help: 'A curve printed for your own county comes before any of these.',
    offeredBy: 'growth.curve',
  }),
  startMonth: choice('Month in which growth starts', 'mar', { options: months, shownWhen, offeredBy: 'growth.start' }),
  bestMonth: choice('Best month', 'may', { options: months, shownWhen, offeredBy: 'growth.best' }),
  quitMonth: choice(quitLabel, 'oct', { options: months, shownWhen, offeredBy: 'growth.quit' }),
  fallFlush: choice('Comes back in the fall', 'some', {
    options: {
      none: { label: 'No', short: 'no fall growth' },
      some: { label: 'Some, about a tenth of the year', short: 'some fall growth' },
      much: { label: 'Much, about a third of the year', short: 'much fall growth' },
    },
    shownWhen,
    offeredBy: 'growth.fall',
  }),
});

/** Why the four answers are refused; each calculator says when. */
export const curveOutOfOrder = {
  at: 'quitMonth',
  say: 'The months must come in order: growth starts, is best, quits, at most 12 months, over New Year if need be. With growth in the fall, the last month must come after the best one.',
} as const;
/** Why a grazing season is refused in which growth ends and starts anew; each calculator says when, and at which day. */
export const twoGrowths =
  'Growth ends and starts anew before the last day: that makes two seasons. Count each by itself; one season has at most 12 months from the month in which growth starts.';
/** A printed curve by name, or the four answers that stand in for one. */
export interface CurveAnswers {
  readonly curve: 'answers' | 'nd0002' | 'smooth-brome-kansas' | 'co6707' | 'mlra69-fine-a';
  readonly startMonth: Month;
  readonly bestMonth: Month;
  readonly quitMonth: Month;
  readonly fallFlush: FallFlush;
}

/** Whether the answers can be a curve: going on from the start, the best and the last month in this order, and a flush after the best one. A printed curve always can. */
export function isCurveInOrder({ curve, startMonth, bestMonth, quitMonth, fallFlush }: CurveAnswers): boolean {
  if (curve !== 'answers') return true;
  const [best, quit] = [monthsOnTo(startMonth, bestMonth), monthsOnTo(startMonth, quitMonth)];
  return fallFlush === 'none' ? best <= quit : best < quit;
}

/** Twelve shares, January first, and the months with which growth starts and ends, 0 for January. */
function shapeOf(answers: CurveAnswers) {
  if (answers.curve === 'answers') {
    const [startMonth, bestMonth, quitMonth] = [monthNumber(answers.startMonth), monthNumber(answers.bestMonth), monthNumber(answers.quitMonth)];
    const percent = growthCurveFromAnswers({ startMonth, bestMonth, quitMonth, fallFlush: answers.fallFlush });
    return { percent, startIndex: startMonth - 1, quitIndex: quitMonth - 1 };
  }
  // Each printed one begins and ends within a calendar year.
  const { percent } = needThere(
    'shapeOf',
    answers.curve,
    growthCurves.find((each) => each.curve === answers.curve),
  );
  const grows = (share: number): boolean => share > 0;
  return { percent, startIndex: percent.findIndex(grows), quitIndex: percent.findLastIndex(grows) };
}
/** Last first of a month, 0 for January, that does not come after a day. */
export function lastFirstOf(monthIndex: number, day: number): number {
  const inYear = firstOfMonth(monthIndex, yearOf(day));
  return inYear <= day ? inYear : firstOfMonth(monthIndex, yearOf(day) - 1);
}

/**
 * First day of the growth that a season lives on: the last one on which growth starts by the season's last day. Where that day is dormant, the growth is past.
 * @throws RangeError if the answers are not in order
 */
export const growthBegins = (answers: CurveAnswers, lastDay: number): number => lastFirstOf(shapeOf(answers).startIndex, lastDay);

/**
 * Whether a season lives on one growth: no day of its first lies in an earlier growth than its last.
 * @throws RangeError if the answers are not in order
 */
export function isOneGrowth(answers: CurveAnswers, firstDay: number, lastDay: number): boolean {
  const { startIndex, quitIndex } = shapeOf(answers);
  const beginDay = lastFirstOf(startIndex, lastDay);
  if (firstDay >= beginDay) return true;
  // The first day after the growth before it; where grass grows all year, its own first day.
  const dormantDay = lastFirstOf((quitIndex + 1) % 12, beginDay);
  return firstDay >= dormantDay;
}

/**
 * Percent of a growth that has come by the end of a day: none before it begins, all from a year after that. 29 February is read as 1 March.
 * @param beginDay - As `growthBegins` has it
 * @throws RangeError if the answers are not in order
 */
export function grownPercentBy(answers: CurveAnswers, beginDay: number, day: number): number {
  const [begin, date] = [new Date(beginDay * dayMs), new Date(day * dayMs)];
  if (date.getUTCMonth() === 1 && date.getUTCDate() === 29) return grownPercentBy(answers, beginDay, day + 1);
  if (day < beginDay) return 0;
  if (day >= firstOfMonth(begin.getUTCMonth(), begin.getUTCFullYear() + 1)) return 100;
  const { percent } = shapeOf(answers);
  return 100 * grownShare(percent, dayOfYear(date.getUTCMonth() + 1, date.getUTCDate()), begin.getUTCMonth() + 1);
}
