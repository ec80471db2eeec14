import { type HeightDensity, heightDensity } from '../tables/heightDensity.ts';

/** What grows there, where a height alone must tell the pounds; the keys stand in links for ever. */
export const standOptions = {
  'mixed-pasture': { label: 'Mixed pasture', short: 'mixed pasture' },
  'tall-fescue': { label: 'Tall fescue with nitrogen', short: 'tall fescue' },
  'orchardgrass-legume': { label: 'Orchardgrass and legume', short: 'orchardgrass and legume' },
  'bluegrass-clover': { label: 'Bluegrass and clover', short: 'bluegrass and clover' },
  'perennial-ryegrass-clover': { label: 'Perennial ryegrass and clover', short: 'ryegrass and clover' },
  'timothy-legume': { label: 'Timothy and legume', short: 'timothy and legume' },
  bermudagrass: { label: 'Bermudagrass (from memory)', short: 'bermudagrass' },
  alfalfa: { label: 'Alfalfa (from memory)', short: 'alfalfa' },
  'red-clover': { label: 'Red clover (from memory)', short: 'red clover' },
} as const;
export type Stand = keyof typeof standOptions;

export const conditionOptions = {
  fair: { label: 'Thin: I see much ground from above', short: 'thin' },
  good: { label: 'Good: some ground shows', short: 'good' },
  excellent: { label: 'Thick: no ground shows', short: 'thick' },
} as const;
export type Condition = keyof typeof conditionOptions;

export const isRecalled = (stand: Stand): boolean => stand === 'bermudagrass' || stand === 'alfalfa' || stand === 'red-clover';

/** Is alfalfa or clover named in it? What bloats stock is fewer of them in a mix, and never none. */
export const hasLegume = (stand: Stand): boolean => legumes.includes(stand);
const legumes: readonly Stand[] = ['orchardgrass-legume', 'bluegrass-clover', 'perennial-ryegrass-clover', 'timothy-legume', 'alfalfa', 'red-clover'];
/** Cool-season grass by itself; legumes hold magnesium, so a stand with them is left out (anderson-tetany). */
export const isCoolGrass = (stand: Stand): boolean => stand === 'mixed-pasture' || stand === 'tall-fescue';

const densities: readonly HeightDensity[] = heightDensity;
/** Least and most pounds in an acre-inch that the table prints for a stand. */
export function densityOf(stand: Stand, condition: Condition): readonly [low: number, high: number] {
  const found = densities.find((each) => each.stand === stand && each.condition === condition);
  if (!found) throw new RangeError(`densityOf needs a line of the table, got ${stand}, ${condition}`);
  return found.lbPerAcreInch;
}
