import { guideErrorPercent } from '../../tables/intake.ts';
import { type IntakeLine, printedPercents } from './guidePercents.ts';

export interface IntakeSwing {
  readonly lowRatio: number;
  readonly highRatio: number;
}

/**
 * How far the likely intake of a kind may be off, each end as a share of it. For grown beef cattle it is how far usual guides missed in trials of cows,
 * 17 percent either way; no trial of that sort is known here for other kinds, so theirs are the least and the most that guides print for them.
 * @param line.animal - Animal of the intake table
 * @param line.stage - Its stage, as the table names it
 * @param line.quality - Quality of the forage; any where the table does not tell them apart
 * @returns The least and the most as shares of the likely intake, 1 being the same
 * @throws RangeError if the table has no such line
 * @source gross-intake, abstract, for beef cattle; the guides that the table of intakes names line by line for the others
 * @example intakeSwing({ animal: 'horse', stage: 'maintenance', quality: 'any' }) //=> { lowRatio: 0.75, highRatio: 1.5 }
 */
export function intakeSwing({ animal, stage, quality }: IntakeLine): IntakeSwing {
  if (animal === 'beef-cow') return { lowRatio: (100 - guideErrorPercent) / 100, highRatio: (100 + guideErrorPercent) / 100 };
  const { lowPercent, likelyPercent, highPercent } = printedPercents(animal, stage, quality);
  return { lowRatio: lowPercent / likelyPercent, highRatio: highPercent / likelyPercent };
}
