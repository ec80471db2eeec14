import { choice } from '../kit/inputs.ts';
import { grownShare } from '../math/forage/grownShare.ts';
import { type FallFlush, growthCurveFromAnswers } from '../math/forage/growthCurveFromAnswers.ts';
import { needThere } from '../math/need.ts';
import { dayOfYear } from '../math/weather/dayOfYear.ts';
import { growthCurves } from '../tables/growthCurves.ts';
import { type Month, monthNumber, months } from '../units/months.ts';

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
  say: 'The months must come in order: growth starts, is best, quits. With growth in the fall, the last month must come after the best one.',
} as const;
/** A printed curve by name, or the four answers that stand in for one. */
export interface CurveAnswers {
  readonly curve: 'answers' | 'nd0002' | 'smooth-brome-kansas' | 'co6707' | 'mlra69-fine-a';
  readonly startMonth: Month;
  readonly bestMonth: Month;
  readonly quitMonth: Month;
  readonly fallFlush: FallFlush;
}

/** Whether the answers can be a curve: start, best and last month in this order, and a flush after the best one. A printed curve always can. */
export function isCurveInOrder(answers: CurveAnswers): boolean {
  if (answers.curve !== 'answers') return true;
  const [start, best, quit] = [monthNumber(answers.startMonth), monthNumber(answers.bestMonth), monthNumber(answers.quitMonth)];
  return start <= best && (answers.fallFlush === 'none' ? best <= quit : best < quit);
}

/**
 * Percent of the year's growth that has come by the end of a day. 29 February is read as 1 March.
 * @throws RangeError if the answers are not in order
 */
export function grownPercentBy(answers: CurveAnswers, day: number): number {
  const date = new Date(Date.UTC(1970, 0, 1 + day));
  const percent =
    answers.curve === 'answers'
      ? growthCurveFromAnswers({
          startMonth: monthNumber(answers.startMonth),
          bestMonth: monthNumber(answers.bestMonth),
          quitMonth: monthNumber(answers.quitMonth),
          fallFlush: answers.fallFlush,
        })
      : needThere(
          'grownPercentBy',
          answers.curve,
          growthCurves.find((each) => each.curve === answers.curve),
        ).percent;
  return 100 * grownShare(percent, dayOfYear(date.getUTCMonth() + 1, date.getUTCDate()));
}
