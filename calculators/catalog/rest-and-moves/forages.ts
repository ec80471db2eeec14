import { type ForageHeight, forageHeights } from '../../tables/forageHeights.ts';
import { type HeightDensity, heightDensity } from '../../tables/heightDensity.ts';
import { restByGrowth } from '../../tables/restByGrowth.ts';

const heights: readonly ForageHeight[] = forageHeights;
const densities: readonly HeightDensity[] = heightDensity;

export type RangeFrom = 'forage' | 'memory' | 'guides';

/** The row of the table that stands for a forage: the preferred one, or the only one. */
const heightRow = (forage: string): ForageHeight | undefined => {
  const rows = heights.filter((row) => row.forage === forage);
  return rows.find((row) => row.preferred) ?? rows[0];
};

/** What choosing a forage writes: the middle of the heights to start, the taller of the stubbles to leave, the middle for a good stand. */
function fillsOf(forage: string, stand?: string): Readonly<Record<string, number>> {
  const row = heightRow(forage);
  if (!row) throw new RangeError(`fillsOf needs a forage of the table, got ${forage}`);
  const fills = { startHeightIn: (row.startIn[0] + row.startIn[1]) / 2, stopHeightIn: row.stopIn[1] };
  if (stand === undefined) return fills;
  const found = densities.find((each) => each.stand === stand && each.condition === 'good');
  if (!found) throw new RangeError(`fillsOf needs a stand of the table, got ${stand}`);
  return { ...fills, densityLbPerAcIn: Math.round((found.lbPerAcreInch[0] + found.lbPerAcreInch[1]) / 2) };
}

const cool = 'Cool-season grass';
const warm = 'Warm-season grass';
const native = 'Native grass';
const legume = 'Alfalfa and clover';
const sown = 'Sown each year';
export const forageOptions = {
  'cool-season-mix': { label: 'Cool-season mix', group: cool, fills: fillsOf('cool-season-mix', 'mixed-pasture') },
  'tall-fescue': { label: 'Tall fescue', group: cool, fills: fillsOf('tall-fescue', 'tall-fescue') },
  orchardgrass: { label: 'Orchardgrass', group: cool, fills: fillsOf('orchardgrass', 'orchardgrass-legume') },
  'kentucky-bluegrass': { label: 'Kentucky bluegrass', group: cool, fills: fillsOf('kentucky-bluegrass', 'bluegrass-clover') },
  'low-cool-season': { label: 'Bluegrass, redtop, white clover', group: cool, fills: fillsOf('low-cool-season', 'bluegrass-clover') },
  'smooth-brome': { label: 'Smooth brome', group: cool, fills: fillsOf('smooth-brome', 'mixed-pasture') },
  'reed-canarygrass': { label: 'Reed canarygrass', group: cool, fills: fillsOf('reed-canarygrass', 'mixed-pasture') },
  'perennial-ryegrass': { label: 'Perennial ryegrass', group: cool, fills: fillsOf('perennial-ryegrass', 'perennial-ryegrass-clover') },
  bermudagrass: { label: 'Bermudagrass', group: warm, fills: fillsOf('bermudagrass', 'bermudagrass') },
  bahiagrass: { label: 'Bahiagrass', group: warm, fills: fillsOf('bahiagrass') },
  kleingrass: { label: 'Kleingrass, dallisgrass', group: warm, fills: fillsOf('kleingrass') },
  'old-world-bluestem': { label: 'Old World bluestem (heights from memory)', group: warm, fills: fillsOf('old-world-bluestem') },
  crabgrass: { label: 'Crabgrass (heights from memory)', group: warm, fills: fillsOf('crabgrass') },
  'native-tall-grass': { label: 'Bluestem, indiangrass, gamagrass', group: native, fills: fillsOf('native-tall-grass') },
  switchgrass: { label: 'Switchgrass', group: native, fills: fillsOf('switchgrass') },
  'little-bluestem': { label: 'Little bluestem (heights from memory)', group: native, fills: fillsOf('little-bluestem') },
  'sideoats-grama': { label: 'Sideoats grama', group: native, fills: fillsOf('sideoats-grama') },
  'blue-grama': { label: 'Blue grama', group: native, fills: fillsOf('blue-grama') },
  alfalfa: { label: 'Alfalfa, grazing types', group: legume, fills: fillsOf('alfalfa', 'alfalfa') },
  'white-clover': { label: 'White clover', group: legume, fills: fillsOf('white-clover') },
  'other-clovers': { label: 'Other clovers', group: legume, fills: fillsOf('other-clovers', 'red-clover') },
  'annual-ryegrass': { label: 'Annual ryegrass', group: sown, fills: fillsOf('annual-ryegrass') },
  'small-grains': { label: 'Wheat, rye, oats', group: sown, fills: fillsOf('small-grains') },
  'pearl-millet': { label: 'Pearl millet', group: sown, fills: fillsOf('pearl-millet') },
  'sorghum-sudan': { label: 'Sorghum, sudangrass', group: sown, fills: fillsOf('sorghum-sudan') },
  own: { label: 'Something else: I give the heights', group: 'Your own' },
} as const;
export type Forage = keyof typeof forageOptions;

/** Is there a published figure for pounds in an inch of this forage? */
export const hasDensity = (forage: Forage): boolean => {
  const option = forageOptions[forage];
  return 'fills' in option && 'densityLbPerAcIn' in option.fills;
};

/** Is this stubble lower than the forage's row of the table goes? No row, no word. */
export function isBelowTable(forage: Forage, stopHeightIn: number): boolean {
  const row = heightRow(forage);
  return row !== undefined && stopHeightIn < row.stopIn[0];
}

/** Rest that publications give: for the forage where its table has it, else from fast to slow growth in guides for any pasture. */
export function publishedRest(forage: Forage): { readonly low: number; readonly high: number; readonly from: RangeFrom } {
  const rows = heights.filter((each) => each.forage === forage && each.restDays !== undefined);
  const row = rows.find((each) => each.seen === 'print') ?? rows.find(() => heightRow(forage)?.seen === 'memory');
  if (row?.restDays) return { low: row.restDays[0], high: row.restDays[1], from: row.seen === 'print' ? 'forage' : 'memory' };
  const all = restByGrowth.flatMap((each) => each.restDays);
  return { low: Math.min(...all), high: Math.max(...all), from: 'guides' };
}
