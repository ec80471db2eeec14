import type { DrinkingAnimal } from '../../tables/stockWater.ts';
import { need } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';
import { planningIntakeGal } from './planningIntakeGal.ts';

/**
 * Kinds of the lists by the live weight that they stand for, lb, rising: the weight in their name, else one that is common practice. The lists give the
 * nursing cow no weight; it is set low, so that a light cow is not told too little.
 */
const kindsByWeight = {
  cattle: [
    { fromLb: 400, animals: ['growing-400'] },
    { fromLb: 500, animals: ['calf-500'] },
    { fromLb: 600, animals: ['growing-600', 'finishing-600'] },
    { fromLb: 750, animals: ['heifer-pregnant-750'] },
    { fromLb: 800, animals: ['growing-800', 'finishing-800'] },
    { fromLb: 900, animals: ['cow-nursing'] },
    { fromLb: 1000, animals: ['finishing-1000'] },
    { fromLb: 1200, animals: ['finishing-1200'] },
  ],
  'sheep-or-goats': [{ fromLb: 120, animals: ['ewe', 'ewe-nursing', 'goat', 'goat-nursing'] }],
} as const satisfies Readonly<Record<string, readonly { readonly fromLb: number; readonly animals: readonly DrinkingAnimal[] }[]>>;

/**
 * Most that the lists say one animal of its weight drinks: `planningIntakeGal` of every kind that the lists have for such animals, straight between the
 * weights of those kinds and never less for a heavier animal; in proportion to its weight below the lightest of them, and level above the heaviest.
 * @param drinkers - 'cattle', or 'sheep-or-goats', whose lists do not go by heat: half as much again from 80 degrees on
 * @param weightLb - Live weight of one animal, lb; above 0
 * @param airF - Hottest air temperature of the day, degrees Fahrenheit; -40 to 130
 * @returns Water, US gallons a head a day
 * @throws RangeError if a value is outside its range
 * @source noble-water-1999, fourth paragraph; the other lists are named in the table
 * @example highestIntakeGal('cattle', 1250, 95) //=> 24
 */
export function highestIntakeGal(drinkers: keyof typeof kindsByWeight, weightLb: number, airF: number): number {
  need('highestIntakeGal', 'weightLb', weightLb, { above: 0 });
  const kinds = kindsByWeight[drinkers];
  const most = kinds.map(({ animals }) => Math.max(...animals.map((animal) => planningIntakeGal(animal, airF).galPerDay)));
  const held = most.map((_, index) => Math.max(...most.slice(0, index + 1)));
  const weightsLb = kinds.map(({ fromLb }) => fromLb);
  return interpolated(weightLb, weightsLb, held) * Math.min(1, weightLb / kinds[0].fromLb);
}
