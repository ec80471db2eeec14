import { type DrinkingAnimal, type HeatList, intakeByDegree, intakeByHeat, intakeRanges, plainOf, unlistedHeat } from '../../tables/stockWater.ts';
import { need } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';

/** What one published list says of an animal at a temperature, after its running maximum. */
export interface IntakeBySource {
  readonly source: string;
  readonly galPerDay: number;
}

/** From here on a list of its own heat is asked; where one names no heat, on any day. */
const anyF = -40;
interface Speaks extends IntakeBySource {
  readonly fromF: number;
}
/** Those that speak of so cold a day: a list that begins at 70 degrees says nothing of one of 40. Where none reaches so far down, those that reach furthest. */
function speakingAt(airF: number, lists: readonly Speaks[]): readonly IntakeBySource[] {
  const coldestF = Math.max(airF, Math.min(...lists.map(({ fromF }) => fromF)));
  const heard = lists.filter(({ fromF }) => fromF <= coldestF);
  return heard.map(({ source, galPerDay }) => ({ source, galPerDay })).sort((one, other) => other.galPerDay - one.galPerDay);
}

/** A list at a temperature, held at its running maximum: straight between its columns, level beyond them. */
function heldAt(airF: readonly number[], gal: readonly number[], wantedF: number): number {
  const held = gal.map((_, index) => Math.max(...gal.slice(0, index + 1)));
  return interpolated(wantedF, airF.slice(0, gal.length), held);
}

/**
 * Water to plan for, a head a day: the highest of the published lists at T = `airF`, each held at its running maximum, so that a hotter day never asks for less.
 * A list is asked from its coldest column on, and on a colder day only where none begins lower. Where none goes by heat, half as much again from 80 degrees on;
 * a nursing ewe or doe never less than a plain one.
 * @param animal - Animal, a key of the lists
 * @param airF - Hottest air temperature of the day to plan for, degrees Fahrenheit; -40 to 130
 * @returns Water, US gallons a head a day, by the highest list and by the lowest; the source that asks for most; and the figure of every source that speaks of
 *   such a day, most first
 * @throws RangeError if the temperature is outside its range
 * @source gould-fs1090, water intake by temperature; the other lists are named in the table; half as much again is common practice
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
    return row === undefined ? [] : { source, galPerDay: heldAt(columnsF, row, airF), fromF: Math.min(...columnsF) };
  });
  const rule = intakeByDegree;
  const degrees = Math.min(Math.max(airF, rule.fromF), rule.toF) - rule.fromF;
  const byRule = animal === rule.animal ? [{ source: rule.source, galPerDay: rule.gal + rule.galPerDegree * degrees, fromF: rule.fromF }] : [];
  const byRange = intakeRanges
    .filter((range) => range.animal === animal)
    .map((range) => ({ source: range.source, galPerDay: range.highGal, fromF: anyF }));
  const bySource = speakingAt(airF, [...byHeat, ...byRule, ...byRange]);
  const [most, least] = [bySource[0], bySource.at(-1)];
  if (most === undefined || least === undefined) throw new RangeError(`planningIntakeGal needs an animal of its lists, got ${animal}`);
  const isUnlistedHeat = byHeat.length + byRule.length === 0 && airF >= unlistedHeat.fromF;
  const own = { galPerDay: most.galPerDay * (isUnlistedHeat ? unlistedHeat.times : 1), source: most.source };
  const plain = plainOf[animal];
  const other = plain === undefined ? own : planningIntakeGal(plain, airF);
  const { galPerDay, source } = other.galPerDay > own.galPerDay ? other : own;
  return { galPerDay, leastGalPerDay: least.galPerDay, source, bySource };
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
