import { conditionOptions, standOptions } from '../../asks/stand.ts';
import { grazingStock, nursingHerd, stockKind } from '../../asks/stock.ts';
import { choice, number, rows } from '../../kit/inputs.ts';
import { rangeStubbleLbPerAc } from '../../tables/harvestShare.ts';

export const grassOptions = {
  'cool-season': { label: 'Cool-season grass', short: 'cool-season grass' },
  'warm-tall': { label: 'Tall warm-season grass', short: 'tall warm-season' },
  'warm-mid': { label: 'Middle-height warm-season grass', short: 'middle warm-season' },
  'warm-short': { label: 'Short warm-season grass', short: 'short warm-season' },
} as const;
export type Grass = keyof typeof grassOptions;

export const stageOptions = {
  'before-heading': { label: 'Leafy, before seed heads', short: 'before seed heads' },
  headed: { label: 'Seed heads out, up to bloom', short: 'headed' },
  'seed-ripe': { label: 'Seed ripe, leaf tips drying', short: 'seed ripe' },
  'leaves-dry': { label: 'Leaves dry, stems partly dry', short: 'leaves dry' },
  dormant: { label: 'Cured, no green in it', short: 'cured' },
} as const;
export type Stage = keyof typeof stageOptions;

/** Was it cut at the stubble, so that what lies below was never measured? */
export const isCutHigh = ({ way, clippedTo }: { readonly way: Way; readonly clippedTo: 'not-sure' | 'ground' | 'stubble' }): boolean =>
  !isByHeight(way) && clippedTo === 'stubble';
/** Does the answer turn on where the cut was, and nobody has said? */
export const isCutUnsaid = ({ way, clippedTo }: { readonly way: Way; readonly clippedTo: 'not-sure' | 'ground' | 'stubble' }): boolean =>
  !isByHeight(way) && clippedTo === 'not-sure';

type Way = 'clips' | 'height-clips' | 'height-known' | 'height-stand' | 'plate';

/** Ways in which the place is known by heights; the others weigh it, or read a plate that clips have set. */
export const isByHeight = (way: Way): boolean => way === 'height-clips' || way === 'height-known' || way === 'height-stand';
/** Ways that need a frame and a scale. */
export const isClipping = (way: Way): boolean => way === 'clips' || way === 'height-clips' || way === 'plate';

export const stock = grazingStock({
  label: 'All stock that graze here',
  kind: stockKind('cow-nursing', ['cow-nursing', 'cow-dry', 'bull', 'stocker', 'calf', 'ewe-nursing', 'ewe-dry', 'doe', 'doe-dry', 'horse']),
  ask: 'Average the weights on your cull tickets. Guesses by eye run light.',
  start: 'cow-nursing',
  herd: nursingHerd,
});

const clipping = { way: ['clips', 'height-clips', 'plate'] };
const byHeight = { way: ['height-clips', 'height-known', 'height-stand'] };
const greenField =
  'Throw the frame without looking, or walk a set number of steps between plots. Cut all that grows inside it, bag it, weigh it green, and take the bag off.';

export const placeInputs = {
  way: choice('How you measured', 'clips', {
    options: {
      clips: 'I clipped and weighed plots',
      'height-clips': 'I measured heights, and clipped three plots to set my stick',
      'height-known': 'I measured heights, and know my pounds in an inch',
      'height-stand': 'I measured heights only',
      plate: 'I read a plate meter, and clipped under it ten times or more',
    },
    help: 'Clipping is surest. A stick that three clips of your own have set is next. A stick with a printed figure is a guess.',
  }),
  frame: choice('Your clipping frame', 'hoop-around', {
    options: {
      'hoop-around': { label: 'A hoop, measured round its edge', short: 'a hoop' },
      'hoop-across': { label: 'A hoop, measured across', short: 'a hoop' },
      rectangle: { label: 'A square or rectangle', short: 'a rectangle' },
      area: { label: 'I know its area', short: 'a frame of my own' },
    },
    shownWhen: clipping,
    offeredBy: 'tools.frame',
  }),
  aroundIn: number('Inside of the hoop, round its edge', 'C', 'in', [20, 400], 93, {
    shownWhen: { ...clipping, frame: 'hoop-around' },
    help: 'In a hoop 93 inches around (4.8 sq ft) each gram of dry forage is 20 lb/ac, in one of 1,772 mm (0.25 m²) 40 kg/ha.',
    offeredBy: 'tools.frameAround',
  }),
  acrossIn: number('Inside of the hoop, straight across', 'D_f', 'in', [6, 130], 29.67, {
    shownWhen: { ...clipping, frame: 'hoop-across' },
    offeredBy: 'tools.frameAcross',
  }),
  lengthIn: number('Inside length', 'l', 'in', [6, 130], 26.25, { shownWhen: { ...clipping, frame: 'rectangle' }, offeredBy: 'tools.frameLength' }),
  widthIn: number('Inside width', 'w', 'in', [6, 130], 26.25, { shownWhen: { ...clipping, frame: 'rectangle' }, offeredBy: 'tools.frameWidth' }),
  frameKnownFt2: number('Area of the frame', 'a_k', 'sqft', [0.5, 100], 4.8, { shownWhen: { ...clipping, frame: 'area' } }),
  plots: rows({
    label: 'Plots clipped',
    rowName: 'plot',
    each: '{greenG}',
    help: 'One line a plot, each weighed by itself. How much they differ tells how far to trust the average.',
    maxRows: 20,
    shownWhen: { way: 'clips' },
    columns: {
      greenG: number('Weight green', 'g', 'g', [0, 20_000], 300, {
        usual: 'clippedG',
        help: 'Bare ground counts: a plot with nothing on it is 0.',
        field: greenField,
      }),
    },
    default: [310, 420, 180, 350, 290, 510, 240, 330, 390, 270].map((greenG) => ({ greenG })),
  }),
  clippedTo: choice('Where you cut', 'not-sure', {
    options: { 'not-sure': 'Not answered yet, or not sure', ground: 'At the ground', stubble: 'At the height that I mean to leave' },
    shownWhen: { way: ['clips', 'plate'] },
    help: 'It decides whether the stubble is still to come off, and can double the days. It comes off once, never twice.',
  }),
  heights: rows({
    label: 'Heights measured',
    rowName: 'height',
    each: '{heightIn}',
    help: 'One line a place, from the ground. Twenty over the pasture do well.',
    maxRows: 24,
    shownWhen: byHeight,
    columns: {
      heightIn: number('Height', 'H', 'in', [0, 80], 9, {
        usual: 'swardIn',
        field: 'Set the stick on the soil and read where most leaves end, seed heads left out. Take bare spots as they come.',
      }),
    },
    default: [9, 11, 6, 10, 8, 12, 7, 9, 10, 8].map((heightIn) => ({ heightIn })),
  }),
  calibration: rows({
    label: 'Clips that set the stick',
    rowName: 'clip',
    each: '{greenG} in {cutIn}',
    help: 'Three or more: a thin spot, an average one, a thick one. Cut at the height that you mean to leave: the bottom inches are heavier than the top.',
    maxRows: 20,
    shownWhen: { way: 'height-clips' },
    columns: {
      cutIn: number('Height cut off', 'h_c', 'in', [0.5, 80], 5, { help: 'Height before less height after.' }),
      greenG: number('Weight green', 'g', 'g', [1, 20_000], 200, { usual: 'clippedG', field: greenField }),
    },
    default: [
      { cutIn: 3, greenG: 95 },
      { cutIn: 5, greenG: 180 },
      { cutIn: 7, greenG: 290 },
    ],
  }),
  plateReadings: rows({
    label: 'Plate readings',
    rowName: 'reading',
    each: '{readingCount}',
    help: 'One line a place, in whatever the plate counts. Twenty or more over the pasture do well.',
    maxRows: 24,
    shownWhen: { way: 'plate' },
    columns: {
      readingCount: number('Reading', 'R', 'count', [0, 500], 12, {
        field: 'Set the plate down where your foot falls at a set number of steps. Take bare spots as they come.',
      }),
    },
    default: [12, 15, 9, 14, 11, 18, 10, 13, 15, 11].map((readingCount) => ({ readingCount })),
  }),
  platePairs: rows({
    label: 'Clips that set the plate',
    rowName: 'clip',
    each: '{greenG} at {pairReadingCount}',
    help: 'Ten or more from this pasture and this season, thin spots and thick ones. Printed lines come from other grass, mostly ryegrass, and are not used here.',
    maxRows: 20,
    shownWhen: { way: 'plate' },
    columns: {
      pairReadingCount: number('Plate read', 'r', 'count', [0, 500], 12, {
        field: 'Read the plate first. Then lay the frame where it stood and cut all that grows inside it.',
      }),
      greenG: number('Weight green', 'g', 'g', [1, 20_000], 300, { usual: 'clippedG', field: greenField }),
    },
    default: (
      [
        [6, 170],
        [7, 150],
        [9, 250],
        [10, 230],
        [12, 300],
        [13, 350],
        [15, 340],
        [16, 420],
        [18, 430],
        [20, 520],
      ] as const
    ).map(([pairReadingCount, greenG]) => ({ pairReadingCount, greenG })),
  }),
  densityLbPerAcIn: number('Pounds in an inch of height', 'd_k', 'lb/ac/in', [20, 1000], 250, {
    usual: 'swardLbPerAcIn',
    shownWhen: { way: 'height-known' },
    help: 'With the water out. Printed figures run from 50 to 400 lb/ac an inch (22 to 177 kg/ha a cm).',
    ask: 'Clip three plots and choose “clipped three plots to set the stick”.',
    offeredBy: 'pasture.density',
  }),
  stand: choice('What grows there', 'mixed-pasture', {
    options: standOptions,
    shownWhen: { way: 'height-stand' },
    help: 'Nothing here fits native range by height alone: clip it.',
    offeredBy: 'pasture.stand',
  }),
  condition: choice('Look straight down: how thick is it', 'good', {
    options: conditionOptions,
    shownWhen: { way: 'height-stand' },
    offeredBy: 'pasture.condition',
  }),
  dryFrom: choice('How dry the clippings are', 'dried', {
    options: {
      dried: { label: 'I dried a sample', short: 'a dried sample' },
      known: { label: 'I know the share of dry matter', short: 'dry matter known' },
      stage: { label: 'I go by the look of the grass', short: 'by its look' },
    },
    shownWhen: clipping,
    help: 'Stock are fed by what is left when the water is out.',
  }),
  wetG: number('Sample and plate before drying', 'W_1', 'g', [2, 5000], 110, {
    shownWhen: { ...clipping, dryFrom: 'dried' },
    field: 'Mix all clippings and take a good handful, about 100 grams.',
  }),
  dryG: number('Sample and plate when dry', 'W_2', 'g', [1, 5000], 45, {
    shownWhen: { ...clipping, dryFrom: 'dried' },
    field:
      'In a microwave with a cup of water beside it: two minutes, then half a minute at a time, weighing until it stops losing. Stay with it; dry grass can catch fire.',
  }),
  plateG: number('Empty plate', 'W_0', 'g', [0, 3000], 10, { shownWhen: { ...clipping, dryFrom: 'dried' } }),
  knownDryPercent: number('Dry matter', 'm_k', 'pct', [5, 100], 35, {
    shownWhen: { ...clipping, dryFrom: 'known' },
    help: 'If you dried the bags before you weighed them, put 100.',
    ask: 'Lush spring grass is 20 to 30 percent dry matter, hay about 85 to 90. Dry a sample, or go by the look.',
  }),
  grass: choice('Kind of grass', 'cool-season', { options: grassOptions, shownWhen: { ...clipping, dryFrom: 'stage' } }),
  stage: choice('Look of the grass', 'before-heading', {
    options: stageOptions,
    shownWhen: { ...clipping, dryFrom: 'stage' },
    help: 'The table behind this is from memory. A dried sample is better.',
  }),
};

/** The middle of what is printed for a kind of range. */
function stubbleOf(range: (typeof rangeStubbleLbPerAc)[number]['range']): number {
  const found = rangeStubbleLbPerAc.find((row) => row.range === range);
  if (!found) throw new RangeError(`stubbleOf needs a range of the table, got ${range}`);
  return (found.lbPerAc[0] + found.lbPerAc[1]) / 2;
}
const cutAtGround = { way: ['clips', 'plate'], clippedTo: ['ground', 'not-sure'] };

export const inputs = {
  ...placeInputs,
  areaAc: number('Size of this pasture', 'A', 'ac', [0.1, 100_000], 85, { step: 5, usual: 'pastureAc', offeredBy: 'pasture.area' }),
  reachPercent: number('Share of it that stock use', 'q', 'pct', [1, 100], 100, {
    help: 'Leave out brush, steep slopes and ground far from water.',
    ask: 'Ride it late in the season: how much of it shows no bites? Past a mile from water count half, past two miles none.',
    offeredBy: 'pasture.reach',
  }),
  stock,
  stubbleKind: choice('Stubble to leave', 'own', {
    options: {
      own: 'My own figure',
      desert: { label: 'Desert range', fills: { stubbleLbPerAc: stubbleOf('desert') } },
      shortgrass: { label: 'Shortgrass range', fills: { stubbleLbPerAc: stubbleOf('shortgrass') } },
      midgrass: { label: 'Midgrass range', fills: { stubbleLbPerAc: stubbleOf('midgrass') } },
      tallgrass: { label: 'Tallgrass range', fills: { stubbleLbPerAc: stubbleOf('tallgrass') } },
    },
    belongsTo: 'management',
    shownWhen: cutAtGround,
    help: 'For range, choosing one fills in the middle of the published figures.',
  }),
  stubbleLbPerAc: number('Feed to leave', 's', 'lb/ac', [0, 10_000], 1000, {
    belongsTo: 'management',
    usual: 'stubbleLbPerAc',
    shownWhen: cutAtGround,
    help: 'With the water out. It keeps the ground covered and the plant alive.',
    field: 'Cut two or three plots at the height you leave, then cut the rest at the ground and weigh that by itself.',
    ask: 'Four inches (100 mm) of good sod pasture hold about 1,000 lb/ac (1,120 kg/ha), the bottom inches more than the top.',
  }),
  stubbleHeightIn: number('Stubble to leave, height', 'h', 'in', [0.5, 40], 4, {
    belongsTo: 'management',
    usual: 'stubbleIn',
    shownWhen: { way: ['height-clips', 'height-known', 'height-stand'] },
    ask: 'On sod pasture 3 to 4 inches (75 to 100 mm); on tall native grass 8 (200 mm) or more. In a drought leave more, not less.',
    offeredBy: 'pasture.stopHeight',
  }),
  eatenFrom: choice('Share eaten of what stands above the stubble', 'by-stay', {
    options: { 'by-stay': 'from the table, by days in one paddock', own: 'my own figure' },
    belongsTo: 'management',
    help: 'The rest is trampled or passed over. The stubble is already left out, so don’t halve it again.',
  }),
  stayDays: number('Days that stock stay in one paddock', 't_s', 'd', [1, 365], 4, {
    belongsTo: 'management',
    whole: true,
    shownWhen: { eatenFrom: 'by-stay' },
    help: 'The table ends at seven days; a longer stay is read there, and is likely worse.',
    offeredBy: 'grazing.stay',
  }),
  ownEatenPercent: number('Share eaten', 'u_o', 'pct', [5, 100], 60, { belongsTo: 'management', shownWhen: { eatenFrom: 'own' } }),
  withinPercent: number('How close you want the mean', 'E', 'pct', [5, 100], 20, {
    help: 'For the number of plots: within this share of the true mean, up or down.',
  }),
  surePercent: number('How often it should hold', 'c', 'pct', [50, 95], 80, {
    help: '80 means four times in five. It also sets how wide the range is.',
  }),
};
