import { isSouth } from '../../asks/south.ts';
import { grazingStock, nursingHerd, stockKind } from '../../asks/stock.ts';
import { choice, date, number } from '../../kit/inputs.ts';
import { strictestPrussicRule } from '../../math/hazards/strictestPrussicRule.ts';
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

/** Heights under which the strictest list of each keeps stock off for prussic acid, inches. One option stands for all of them, so the tallest leads. */
export const sorghumIn = {
  sudangrass: strictestPrussicRule('sudangrass', 'height').least,
  sorghum: strictestPrussicRule('sorghum', 'height').least,
  crossed: strictestPrussicRule('sorghum-sudangrass', 'height').least,
} as const;
export const leastSorghumIn = Math.max(...Object.values(sorghumIn));

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
  'low-cool-season': {
    label: 'Bluegrass, redtop, white clover',
    short: 'Bluegrass and clover',
    group: cool,
    fills: fillsOf('low-cool-season', 'bluegrass-clover'),
  },
  'smooth-brome': { label: 'Smooth brome', group: cool, fills: fillsOf('smooth-brome', 'mixed-pasture') },
  'reed-canarygrass': { label: 'Reed canarygrass', group: cool, fills: fillsOf('reed-canarygrass', 'mixed-pasture') },
  'perennial-ryegrass': { label: 'Perennial ryegrass', group: cool, fills: fillsOf('perennial-ryegrass', 'perennial-ryegrass-clover') },
  bermudagrass: { label: 'Bermudagrass', group: warm, fills: fillsOf('bermudagrass', 'bermudagrass') },
  bahiagrass: { label: 'Bahiagrass', group: warm, fills: fillsOf('bahiagrass') },
  kleingrass: { label: 'Kleingrass, dallisgrass', group: warm, fills: fillsOf('kleingrass') },
  'old-world-bluestem': {
    label: 'Old World bluestem (heights from memory)',
    short: 'Old World bluestem',
    group: warm,
    fills: fillsOf('old-world-bluestem'),
  },
  crabgrass: { label: 'Crabgrass (heights from memory)', short: 'Crabgrass', group: warm, fills: fillsOf('crabgrass') },
  'native-tall-grass': { label: 'Bluestem, indiangrass, gamagrass', short: 'Tall native grass', group: native, fills: fillsOf('native-tall-grass') },
  switchgrass: { label: 'Switchgrass', group: native, fills: fillsOf('switchgrass') },
  'little-bluestem': { label: 'Little bluestem (heights from memory)', short: 'Little bluestem', group: native, fills: fillsOf('little-bluestem') },
  'sideoats-grama': { label: 'Sideoats grama', group: native, fills: fillsOf('sideoats-grama') },
  'blue-grama': { label: 'Blue grama', group: native, fills: fillsOf('blue-grama') },
  alfalfa: { label: 'Alfalfa, grazing types', group: legume, fills: fillsOf('alfalfa', 'alfalfa') },
  'white-clover': { label: 'White clover', group: legume, fills: fillsOf('white-clover') },
  'other-clovers': { label: 'Other clovers', group: legume, fills: fillsOf('other-clovers', 'red-clover') },
  'annual-ryegrass': { label: 'Annual ryegrass', group: sown, fills: fillsOf('annual-ryegrass') },
  'small-grains': { label: 'Wheat, rye, oats', group: sown, fills: fillsOf('small-grains') },
  'pearl-millet': { label: 'Pearl millet', group: sown, fills: fillsOf('pearl-millet') },
  'sorghum-sudan': { label: 'Sorghum, sudangrass', group: sown, fills: { ...fillsOf('sorghum-sudan'), startHeightIn: leastSorghumIn } },
  own: { label: 'Something else: I give the heights', short: 'Other grass', group: 'Your own' },
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

const measured = { growthFrom: 'heights' };
export const inputs = {
  forage: choice('What grows there', 'cool-season-mix', {
    options: forageOptions,
    help: 'Fills in the heights: the middle of the published heights to start, the taller of the stubbles to leave. For sorghum and sudangrass the start is the height that lists for prussic acid ask. Change them to fit yours.',
    offeredBy: 'pasture.forage',
    takesNot: ['annual-range'],
  }),
  startHeightIn: number('Height when grazing starts', 'H_1', 'in', [1, 60], 9, {
    usual: 'swardIn',
    field:
      'Set a ruler on the soil among the plants and read where most leaves end, seed heads left out. Do it in twenty places over the paddock and take the mean.',
    ask: 'Your forage’s published height stands in when you choose what grows there.',
    offeredBy: 'pasture.startHeight',
  }),
  densityLbPerAcIn: number('Pounds in an inch of height', 'd', 'lb/ac/in', [20, 1000], 275, {
    usual: 'swardLbPerAcIn',
    help: 'Hay with the water out, in one inch over one acre. Filled in for a good stand where a table has it; a thin stand has little more than half. For bermudagrass, alfalfa and clovers it is from memory.',
    field:
      'Three clips make the stick fit your place. Lay a frame of 4.8 sq ft (or of 0.25 m²), measure the height, clip to the stubble you leave, dry it, weigh it. Each gram is 20 lb/ac (40 kg/ha); divide by the inches (centimeters) that you cut off.',
    ask: 'Is the stand thick, or can you see the ground from above? Tables run from 50 lb/ac an inch (22 kg/ha a cm) for open native grass to 400 (177) for thick sod.',
    offeredBy: 'pasture.density',
  }),
  growthFrom: choice('How fast it grows now', 'known', {
    options: {
      known: { label: 'I know the growth a day', short: 'growth a day known' },
      heights: { label: 'I measured the height on two days', short: 'height on two days' },
    },
    offeredBy: 'record.growthFrom',
  }),
  growthLbPerAcDay: number('Growth a day', 'g', 'lb/ac/d', [0, 300], 40, {
    step: 5,
    usual: 'growthLbPerAcDay',
    shownWhen: { growthFrom: 'known' },
    help: 'Now, on this ground. In good spring weather 60 to 100 lb/ac a day (67 to 112 kg/ha a day); in a drought it may be nothing.',
    ask: 'Measure the height twice, 7 to 10 days apart, under a cage or in a paddock at rest, and choose “I measured the height on two days”.',
  }),
  firstHeightIn: number('Height on the first day', 'h_1', 'in', [0, 60], 4.5, {
    shownWhen: measured,
    field: 'In a paddock at rest or under a cage, at stakes that you find again.',
    offeredBy: 'record.firstHeight',
  }),
  secondHeightIn: number('Height on the second day', 'h_2', 'in', [0, 60], 5.5, {
    shownWhen: measured,
    field: 'At the same stakes, measured the same way by the same person.',
    offeredBy: 'record.secondHeight',
  }),
  betweenDays: number('Days between the two', 't', 'd', [3, 60], 10, {
    shownWhen: measured,
    help: 'Seven to ten days do well. In fewer, the growth drowns in the error of the ruler.',
    offeredBy: 'record.between',
  }),
  stock: grazingStock({
    label: 'All stock that graze these paddocks',
    help: 'Several herds are counted together: each passes through every paddock.',
    kind: stockKind('cow-nursing', ['cow-nursing', 'cow-dry', 'bull', 'stocker', 'ewe-nursing', 'ewe-dry', 'doe', 'doe-dry', 'horse']),
    ask: 'Take the mean of your cull tickets. Guesses by eye run light.',
    start: 'cow-nursing',
    herd: nursingHerd,
  }),
  startDay: date('Day of the first move', '2026-05-01', { occurs: 'today' }),
  isSouth,
  stopHeightIn: number('Stubble left when grazing stops', 'H_0', 'in', [0.5, 40], 4, {
    step: 0.5,
    belongsTo: 'management',
    usual: 'stubbleIn',
    help: 'In a drought leave more, not less: the leaf that stays is what grows the next.',
    ask: 'Your forage’s published stubble stands in when you choose what grows there.',
    offeredBy: 'pasture.stopHeight',
  }),
  paddockCount: number('Paddocks today', 'n', 'count', [1, 100], 8, {
    belongsTo: 'management',
    whole: true,
    help: 'Only those in this round: leave out hay ground and any that is set aside.',
    offeredBy: 'pasture.paddocks',
  }),
  acresFrom: choice('Size of a paddock', 'known', {
    options: {
      known: { label: 'I know them', short: 'acres known' },
      needed: { label: 'Take them as large as the herd needs', short: 'acres as needed' },
    },
    belongsTo: 'management',
    help: 'Without it nothing here can tell whether a paddock feeds the herd for one stay.',
    since: { version: 2, before: 'needed' },
  }),
  ownPaddockAc: number('Size of one paddock', 'A_o', 'ac', [0.05, 20_000], 8, {
    belongsTo: 'management',
    shownWhen: { acresFrom: 'known' },
    help: 'What stock graze: without ponds, rock and brush. Where paddocks differ, the mean.',
    ask: 'Pace two sides of the paddock and multiply: 1 acre is 4,840 square yards, 1 hectare 10,000 m².',
    offeredBy: 'pasture.paddockArea',
  }),
  stayDays: number('Days a herd stays in one', 's', 'd', [1, 120], 4, { belongsTo: 'management', whole: true, offeredBy: 'grazing.stay' }),
  herdCount: number('Herds', 'm', 'count', [1, 4], 1, {
    belongsTo: 'management',
    whole: true,
    help: 'Herds that go through the same paddocks, one right behind the other.',
    offeredBy: 'grazing.herds',
  }),
  eatenFrom: choice('Share eaten of what stands above the stubble', 'by-stay', {
    options: {
      'by-stay': { label: 'from the table, by days in the paddock', short: 'by days in the paddock' },
      own: { label: 'my own figure', short: 'by my own figure' },
    },
    belongsTo: 'management',
    help: 'The rest is trampled or passed over. The stubble is already left out, so don’t halve it again.',
  }),
  ownEatenPercent: number('Share eaten', 'u_{o}', 'pct', [5, 100], 65, {
    belongsTo: 'management',
    help: 'Eaten, of what stood above the stubble.',
    field: 'Measure the height before they go in and after they come out, and work out what is gone. What lies trampled is gone, but not eaten.',
    shownWhen: { eatenFrom: 'own' },
  }),
};
