import { type DrinkingAnimal, type HeatList, intakeByDegree, intakeByHeat, intakeRanges } from '../../tables/stockWater.ts';
import { need } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';

/** What one published list says of an animal at a temperature, after its running maximum. */
export interface IntakeBySource {
  readonly source: string;
  readonly galPerDay: number;
}

/** A list at a temperature, held at its running maximum: straight between its columns, level beyond them. */
function heldAt(airF: readonly number[], gal: readonly number[], wantedF: number): number {
  const held = gal.map((_, index) => Math.max(...gal.slice(0, index + 1)));
  return interpolated(wantedF, airF.slice(0, gal.length), held);
}

/**
 * Water to plan for, a head a day: the highest of the published lists at T = `airF`, each held at its running maximum, so that a hotter day never asks for less.
 * @param animal - Animal, a key of the lists
 * @param airF - Hottest air temperature of the day to plan for, degrees Fahrenheit; -40 to 130
 * @returns Water, US gallons a head a day, by the highest list and by the lowest; the source that asks for most; and every source's figure, most first
 * @throws RangeError if the temperature is outside its range
 * @source gould-fs1090, water intake by temperature; the other lists are named in the table
 * @example planningIntakeGal('cow-nursing', 90).galPerDay //=> 22.0
 */
export function planningIntakeGal(
  animal: DrinkingAnimal,
  airF: number,
): { readonly galPerDay: number; readonly leastGalPerDay: number; readonly source: string; readonly bySource: readonly IntakeBySource[] } {
  need('planningIntakeGal', 'airF', airF, { atLeast: -40, atMost: 130 });
  const lists: readonly HeatList[] = intakeByHeat;
  const byHeat = lists.flatMap(({ source, airF: columnsF, gal }) => {
    const row = gal[animal];
    return row === undefined ? [] : { source, galPerDay: heldAt(columnsF, row, airF) };
  });
  const { fromF, toF, gal, galPerDegree, source } = intakeByDegree;
  const degrees = Math.min(Math.max(airF, fromF), toF) - fromF;
  const byRule = animal === intakeByDegree.animal ? [{ source, galPerDay: gal + galPerDegree * degrees }] : [];
  const byRange = intakeRanges.filter((range) => range.animal === animal).map((range) => ({ source: range.source, galPerDay: range.highGal }));
  const bySource: readonly IntakeBySource[] = [...byHeat, ...byRule, ...byRange].sort((one, other) => other.galPerDay - one.galPerDay);
  const [most, least] = [bySource[0], bySource.at(-1)];
  if (most === undefined || least === undefined) throw new RangeError(`planningIntakeGal needs an animal of its lists, got ${animal}`);
  return { galPerDay: most.galPerDay, leastGalPerDay: least.galPerDay, source: most.source, bySource };
}

/**
 * Water by live weight: g W / 100, with W = `weightLb`, g = `galPerCwt`.
 * @param weightLb - Live weight of one animal, lb; above 0
 * @param galPerCwt - Gallons for each 100 lb; 0 to 5. For a cow 1.5 in summer and 0.75 in winter, for a horse at least 1
 * @returns Water, US gallons a head a day
 * @throws RangeError if a value is outside its range
 * @source k-state-watering-handbook, first paragraphs
 * @example intakeByWeightGal(1200, 1.5) //=> 18
 */
export function intakeByWeightGal(weightLb: number, galPerCwt: number): number {
  need('intakeByWeightGal', 'weightLb', weightLb, { above: 0 });
  need('intakeByWeightGal', 'galPerCwt', galPerCwt, { atLeast: 0, atMost: 5 });
  return (weightLb * galPerCwt) / 100;
}
