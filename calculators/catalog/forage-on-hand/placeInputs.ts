import { choice, number, rows } from '../../kit/inputs.ts';
import { conditionOptions, grassOptions, stageOptions, standOptions } from './stands.ts';

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
      'hoop-around': 'A hoop, measured round its edge',
      'hoop-across': 'A hoop, measured across',
      rectangle: 'A square or rectangle',
      area: 'I know its area',
    },
    shownWhen: clipping,
  }),
  aroundIn: number('Inside of the hoop, round its edge', 'C', 'in', [20, 400], 93, {
    shownWhen: { ...clipping, frame: 'hoop-around' },
    help: 'A hoop 93 inches round holds 4.8 square feet: then each gram of dry forage is 20 pounds an acre.',
  }),
  acrossIn: number('Inside of the hoop, straight across', 'D_f', 'in', [6, 130], 29.67, { shownWhen: { ...clipping, frame: 'hoop-across' } }),
  lengthIn: number('Inside length', 'l', 'in', [6, 130], 26.25, { shownWhen: { ...clipping, frame: 'rectangle' } }),
  widthIn: number('Inside width', 'w', 'in', [6, 130], 26.25, { shownWhen: { ...clipping, frame: 'rectangle' } }),
  frameKnownFt2: number('Area of the frame', 'a_k', 'sqft', [0.5, 100], 4.8, { shownWhen: { ...clipping, frame: 'area' } }),
  plots: rows({
    label: 'Plots clipped',
    rowName: 'plot',
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
    help: 'Three or more: a thin spot, an average one, a thick one. Cut at the height that you mean to leave: the bottom inches are heavier than the top.',
    maxRows: 20,
    shownWhen: { way: 'height-clips' },
    columns: {
      cutIn: number('Inches cut off', 'h_c', 'in', [0.5, 80], 5, { help: 'Height before less height after.' }),
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
    help: 'With the water out, in one inch over one acre. Printed figures run from 50 to 400.',
    ask: 'Clip three plots and choose “clipped three plots to set the stick”.',
  }),
  stand: choice('What grows there', 'mixed-pasture', {
    options: standOptions,
    shownWhen: { way: 'height-stand' },
    help: 'Nothing here fits native range by height alone: clip it.',
  }),
  condition: choice('Look straight down: how thick is it', 'good', { options: conditionOptions, shownWhen: { way: 'height-stand' } }),
  dryFrom: choice('How dry the clippings are', 'dried', {
    options: { dried: 'I dried a sample', known: 'I know the share of dry matter', stage: 'I go by the look of the grass' },
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
