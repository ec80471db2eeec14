import { airDryPercentByGroup } from '../../tables/dryMatterByStage.ts';
import { type HeightDensity, heightDensity } from '../../tables/heightDensity.ts';

const densities: readonly HeightDensity[] = heightDensity;

export const standOptions = {
  'mixed-pasture': { label: 'Mixed pasture' },
  'tall-fescue': { label: 'Tall fescue with nitrogen' },
  'orchardgrass-legume': { label: 'Orchardgrass and legume' },
  'bluegrass-clover': { label: 'Bluegrass and clover' },
  'perennial-ryegrass-clover': { label: 'Perennial ryegrass and clover' },
  'timothy-legume': { label: 'Timothy and legume' },
  bermudagrass: { label: 'Bermudagrass (from memory)' },
  alfalfa: { label: 'Alfalfa (from memory)' },
  'red-clover': { label: 'Red clover (from memory)' },
} as const;
export type Stand = keyof typeof standOptions;

export const conditionOptions = {
  fair: { label: 'Thin: I see much ground from above' },
  good: { label: 'Good: some ground shows' },
  excellent: { label: 'Thick: no ground shows' },
} as const;
export type Condition = keyof typeof conditionOptions;

export const isRecalled = (stand: Stand): boolean => stand === 'bermudagrass' || stand === 'alfalfa' || stand === 'red-clover';

/** Least and most pounds in an acre-inch that the table prints for a stand. */
export function densityOf(stand: Stand, condition: Condition): readonly [low: number, high: number] {
  const found = densities.find((each) => each.stand === stand && each.condition === condition);
  if (!found) throw new RangeError(`densityOf needs a line of the table, got ${stand}, ${condition}`);
  return found.lbPerAcreInch;
}

export const grassOptions = {
  'cool-season': { label: 'Cool-season grass' },
  'warm-tall': { label: 'Tall warm-season grass' },
  'warm-mid': { label: 'Middle-height warm-season grass' },
  'warm-short': { label: 'Short warm-season grass' },
} as const;
export type Grass = keyof typeof grassOptions;

export const stageOptions = {
  'before-heading': { label: 'Leafy, before seed heads' },
  headed: { label: 'Seed heads out, up to bloom' },
  'seed-ripe': { label: 'Seed ripe, leaf tips drying' },
  'leaves-dry': { label: 'Leaves dry, stems partly dry' },
  dormant: { label: 'Cured, no green in it' },
} as const;
export type Stage = keyof typeof stageOptions;

/** Air-dry weight in a hundred of green weight. */
export function airDryPercentOf(grass: Grass, stage: Stage): number {
  const found = airDryPercentByGroup.find(({ group }) => group === grass);
  if (!found) throw new RangeError(`airDryPercentOf needs a group of the table, got ${grass}`);
  return {
    'before-heading': found.beforeHeading,
    headed: found.headed,
    'seed-ripe': found.seedRipe,
    'leaves-dry': found.leavesDry,
    dormant: found.dormant,
  }[stage];
}
