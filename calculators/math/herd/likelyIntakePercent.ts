import { type Grazer, type GrazerKind, grazers } from '../../tables/grazers.ts';
import type { Intake } from '../../tables/intake.ts';
import { printedPercents } from './guidePercents.ts';

/**
 * The likely one of the printed intakes of an animal, percent of its weight.
 * @param animal - Animal of the intake table
 * @param stage - Its stage, as the table names it
 * @param quality - Quality of the forage; any where the table does not tell them apart
 * @returns Dry matter eaten in a day, percent of live weight
 * @throws RangeError if the table has no such line
 * @source hibberd-thrift-1992, and the other guides that the table names line by line
 * @example likelyIntakePercent('beef-cow', 'dry', 'average') //=> 2.2
 */
export function likelyIntakePercent(animal: Intake['animal'], stage: string, quality: Intake['quality'] = 'any'): number {
  return printedPercents(animal, stage, quality).likelyPercent;
}

/**
 * Common weight of a kind of stock and the likely share of it that it eats.
 * @param kind - Kind of stock by its key
 * @returns Weight, lb, and dry matter eaten in a day, percent of it
 * @throws RangeError if the intake table has no line for it
 * @source common practice
 * @example commonGrazer('cow-nursing') //=> { weightLb: 1250, intakePercent: 2.5 }
 */
export function commonGrazer(kind: GrazerKind): { readonly weightLb: number; readonly intakePercent: number } {
  const { weightLb, eats }: Grazer = grazers[kind];
  return { weightLb, intakePercent: 'percent' in eats ? eats.percent : likelyIntakePercent(eats.animal, eats.stage, eats.quality) };
}
