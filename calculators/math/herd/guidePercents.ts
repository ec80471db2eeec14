import { type Intake, intake } from '../../tables/intake.ts';
import type { Stage } from './stageFromBirth.ts';

export type HerdStock = 'cow' | 'heifer' | 'bull' | 'growing' | 'calf' | 'ewe' | 'lamb' | 'doe' | 'horse';
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
 * What the printed guides say of one kind. A bull eats as a dry cow of his weight; cows and mares near birth as dry ones; does at rest as ewes.
 * @param stock - Kind of stock
 * @param stage - Dry, late or nursing; any for kinds that do not breed
 * @param quality - Quality of the feed; only the cattle guides split it
 * @returns Dry matter eaten in a day, percent of live weight
 * @source hibberd-thrift-1992, and the other guides that the table names line by line
 * @example guidePercents('bull', 'dry', 'fair').likelyPercent //=> 2.2
 */
export function guidePercents(stock: HerdStock, stage: Stage, quality: 'poor' | 'fair' | 'good'): Percents {
  switch (stock) {
    case 'cow':
    case 'heifer':
      return printedPercents('beef-cow', stage === 'nursing' ? 'lactating' : 'dry', named[quality]);
    case 'bull':
      return printedPercents('beef-cow', 'dry', named[quality]);
    case 'growing':
      return printedPercents('growing-cattle', 'stocker');
    case 'calf':
      return printedPercents('nursing-calf', 'forage beside milk');
    case 'ewe':
      return printedPercents('sheep', ewes[stage]);
    case 'lamb':
      return printedPercents('sheep', 'lamb, growing');
    case 'doe':
      return stage === 'dry' ? printedPercents('sheep', ewes.dry) : printedPercents('goat', 'doe');
    case 'horse':
      return printedPercents('horse', stage === 'nursing' ? 'nursing mare' : 'maintenance');
  }
}
