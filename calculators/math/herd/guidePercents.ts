import { grazers } from '../../tables/grazers.ts';
import { type Intake, intake } from '../../tables/intake.ts';
import type { Stage } from './stageFromBirth.ts';

export type HerdStock = 'cow' | 'heifer' | 'bull' | 'growing' | 'calf' | 'ewe' | 'lamb' | 'doe' | 'horse';
/** What names a line of the intake table. */
export type IntakeLine = Pick<Intake, 'animal' | 'stage' | 'quality'>;
export interface Percents {
  readonly lowPercent: number;
  readonly likelyPercent: number;
  readonly highPercent: number;
}

/**
 * Least, likely and most of the printed intakes of an animal.
 * @param animal - Animal of the intake table
 * @param stage - Its stage, as the table names it
 * @param quality - Quality of the forage; any where the table does not tell them apart
 * @returns Dry matter eaten in a day, percent of live weight
 * @throws RangeError if the table has no such line
 * @source hibberd-thrift-1992, and the other guides that the table names line by line
 * @example printedPercents('beef-cow', 'dry', 'average').likelyPercent //=> 2.2
 */
export function printedPercents(animal: Intake['animal'], stage: string, quality: Intake['quality'] = 'any'): Percents {
  const found = intake.find((each) => each.animal === animal && each.stage === stage && each.quality === quality);
  if (!found) throw new RangeError(`printedPercents needs a line of the table, got ${animal}, ${stage}, ${quality}`);
  const { lowPercent, likelyPercent, highPercent } = found;
  return { lowPercent, likelyPercent, highPercent };
}

const named = { poor: 'low', fair: 'average', good: 'high' } as const;
const ewes = { dry: 'ewe, maintenance', late: 'ewe, late gestation', nursing: 'ewe, nursing twins' } as const;

/**
 * The line of the intake table for one kind. A bull goes by that of a dry cow; cows and mares near birth as dry ones; does at rest as ewes.
 * @param stock - Kind of stock
 * @param stage - Dry, late or nursing; any for kinds that do not breed
 * @param quality - Quality of the feed; only the cattle guides split it
 * @returns Animal, stage and quality of the line
 * @source common practice
 * @example guideLine('bull', 'dry', 'fair') //=> { animal: 'beef-cow', stage: 'dry', quality: 'average' }
 */
export function guideLine(stock: HerdStock, stage: Stage, quality: 'poor' | 'fair' | 'good'): IntakeLine {
  switch (stock) {
    case 'cow':
    case 'heifer':
      return { animal: 'beef-cow', stage: stage === 'nursing' ? 'lactating' : 'dry', quality: named[quality] };
    case 'bull':
      return { animal: 'beef-cow', stage: 'dry', quality: named[quality] };
    case 'growing':
      return { animal: 'growing-cattle', stage: 'stocker', quality: 'any' };
    case 'calf':
      return { animal: 'nursing-calf', stage: 'forage beside milk', quality: 'any' };
    case 'ewe':
      return { animal: 'sheep', stage: ewes[stage], quality: 'any' };
    case 'lamb':
      return { animal: 'sheep', stage: 'lamb, growing', quality: 'any' };
    case 'doe':
      return stage === 'dry' ? { animal: 'sheep', stage: ewes.dry, quality: 'any' } : { animal: 'goat', stage: 'doe', quality: 'any' };
    case 'horse':
      return { animal: 'horse', stage: stage === 'nursing' ? 'nursing mare' : 'maintenance', quality: 'any' };
  }
}

/**
 * What the printed guides say of one kind, by its line of the intake table. A bull eats less of his weight than a dry cow does of hers, on any feed by as much
 * as on fair.
 * @param stock - Kind of stock
 * @param stage - Dry, late or nursing; any for kinds that do not breed
 * @param quality - Quality of the feed; only the cattle guides split it
 * @returns Dry matter eaten in a day, percent of live weight
 * @source hibberd-thrift-1992, and the other guides that the table names line by line
 * @example guidePercents('bull', 'dry', 'fair').likelyPercent //=> 2
 */
export function guidePercents(stock: HerdStock, stage: Stage, quality: 'poor' | 'fair' | 'good'): Percents {
  const line = guideLine(stock, stage, quality);
  const printed = printedPercents(line.animal, line.stage, line.quality);
  return stock === 'bull' ? bullOf(printed) : printed;
}
function bullOf({ lowPercent, likelyPercent, highPercent }: Percents): Percents {
  const fair = printedPercents('beef-cow', 'dry', 'average').likelyPercent;
  const of = (percent: number): number => (percent * grazers.bull.eats.percent) / fair;
  return { lowPercent: of(lowPercent), likelyPercent: of(likelyPercent), highPercent: of(highPercent) };
}
