import { growthCurves } from '../../tables/growthCurves.ts';
import { type Month, months } from '../../tables/months.ts';
import { needThere } from '../need.ts';
import { dayOfYear } from '../weather/dayOfYear.ts';
import { grownShare } from './grownShare.ts';
import { type FallFlush, growthCurveFromAnswers } from './growthCurveFromAnswers.ts';

/** A printed curve by name, or the four answers that stand in for one. */
export interface CurveAnswers {
  readonly curve: 'answers' | 'nd0002' | 'smooth-brome-kansas' | 'co6707' | 'mlra69-fine-a';
  readonly startMonth: Month;
  readonly bestMonth: Month;
  readonly quitMonth: Month;
  readonly fallFlush: FallFlush;
}
const numberOf = (month: Month): number => Object.keys(months).indexOf(month) + 1;

/**
 * Whether the answers can be a curve: start, best and last month in this order, and a flush after the best one. A printed curve always can.
 * @param answers - Curve and answers
 * @returns Yes or no
 * @source our own, what growthCurveFromAnswers takes
 * @example isCurveInOrder({ curve: 'answers', startMonth: 'may', bestMonth: 'apr', quitMonth: 'oct', fallFlush: 'none' }) //=> false
 */
export function isCurveInOrder(answers: CurveAnswers): boolean {
  if (answers.curve !== 'answers') return true;
  const [start, best, quit] = [numberOf(answers.startMonth), numberOf(answers.bestMonth), numberOf(answers.quitMonth)];
  return start <= best && (answers.fallFlush === 'none' ? best <= quit : best < quit);
}

/**
 * Percent of the year's growth that has come by the end of a day. 29 February is read as 1 March.
 * @param answers - Curve and answers; in order
 * @param day - Day number since 1970-01-01
 * @returns Share of the year's growth, percent
 * @throws RangeError if the answers are not in order
 * @source common practice
 * @example grownPercentBy({ curve: 'nd0002', startMonth: 'mar', bestMonth: 'may', quitMonth: 'oct', fallFlush: 'none' }, 20634) //=> 80
 */
export function grownPercentBy(answers: CurveAnswers, day: number): number {
  const date = new Date(Date.UTC(1970, 0, 1 + day));
  const percent =
    answers.curve === 'answers'
      ? growthCurveFromAnswers({
          startMonth: numberOf(answers.startMonth),
          bestMonth: numberOf(answers.bestMonth),
          quitMonth: numberOf(answers.quitMonth),
          fallFlush: answers.fallFlush,
        })
      : needThere(
          'grownPercentBy',
          answers.curve,
          growthCurves.find((each) => each.curve === answers.curve),
        ).percent;
  return 100 * grownShare(percent, dayOfYear(date.getUTCMonth() + 1, date.getUTCDate()));
}
