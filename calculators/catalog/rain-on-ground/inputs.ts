import { choice, number, rows } from '../../kit/inputs.ts';

const cans = { rainFrom: 'two-cans' };

export const inputs = {
  rainFrom: choice('The rain was read', 'gauge', {
    options: { gauge: 'in one gauge', 'two-cans': { label: 'in two straight-sided cans', short: 'in two cans' } },
  }),
  rainIn: number('Rain', 'P', 'in', [0.05, 30], 1, {
    step: 0.25,
    shownWhen: { rainFrom: 'gauge' },
    field: 'Read it at the same hour every day, eye level with the water. Not while it thunders.',
    ask: 'No gauge? Set out two straight-sided cans well away from trees and walls, and choose “in two straight-sided cans”.',
    offeredBy: 'rain.lastReading',
  }),
  firstCanIn: number('Depth in the first can', 'P_1', 'in', [0.05, 30], 1, {
    shownWhen: cans,
    field: 'Straight sides, both read at the same hour. Stand a ruler on the bottom.',
  }),
  secondCanIn: number('Depth in the second can', 'P_2', 'in', [0.05, 30], 1, { shownWhen: cans }),
  surface: choice('It fell on', 'acres', {
    options: { acres: 'Ground, I know the acres', sides: 'Ground, I know two fence lengths', paces: 'Ground, I will pace it', roof: 'A roof' },
  }),
  areaAc: number('Ground', 'A', 'ac', [0.1, 100_000], 120, {
    step: 5,
    usual: 'pastureAc',
    shownWhen: { surface: 'acres' },
    ask: 'Take two fence lengths, or pace two sides. Cut odd ground into rectangles and add them up.',
    offeredBy: 'pasture.area',
  }),
  lengthFt: number('One side', 'l', 'ft', [50, 50_000], 1320, { shownWhen: { surface: 'sides' }, help: 'A quarter mile is 1,320 ft (402 m).' }),
  widthFt: number('The side that meets it', 'w', 'ft', [50, 50_000], 1320, { shownWhen: { surface: 'sides' }, help: 'At a square corner.' }),
  longPacesCount: number('Paces along one side', 'n_1', 'count', [20, 20_000], 528, {
    shownWhen: { surface: 'paces' },
    field: 'One step is one pace, at your usual walk.',
  }),
  shortPacesCount: number('Paces along the side that meets it', 'n_2', 'count', [20, 20_000], 264, { shownWhen: { surface: 'paces' } }),
  paceFt: number('One of your paces', 'b', 'ft', [1, 7], 2.5, {
    usual: 'paceFt',
    shownWhen: { surface: 'paces' },
    help: 'Many people step about 2 1/2 ft (0.76 m).',
    ask: 'Walk between two posts 100 ft or 30 m apart and count. That way divided by your count is your pace.',
    offeredBy: 'tools.pace',
  }),
  roofLengthFt: number('Length of the roof', 'l', 'ft', [4, 2000], 60, {
    shownWhen: { surface: 'roof' },
    help: 'From above, eave to eave. The slope does not count.',
    field: 'Measure on the ground from drip line to drip line.',
  }),
  roofWidthFt: number('Width of the roof that drains to the tank', 'w', 'ft', [4, 2000], 40, {
    shownWhen: { surface: 'roof' },
    help: 'With a gutter on one side only, take half the width of a gable roof.',
  }),
  caughtPercent: number('Share of it that reaches the tank', 'c', 'pct', [5, 100], 80, {
    belongsTo: 'management',
    shownWhen: { surface: 'roof' },
    help: 'Some wets the roof, splashes over the gutter, or is let go first to wash the roof.',
    ask: 'A common figure is 80 percent. Leaking gutters take much more.',
  }),
  tankFrom: choice('Your tank', 'known', {
    options: { known: 'I know what it holds', round: 'Round, I will measure', square: 'Square corners, I will measure' },
  }),
  tankGal: number('Tank holds', 'T', 'gal', [10, 1_000_000], 2500, { shownWhen: { tankFrom: 'known' } }),
  tankAcrossFt: number('Across, inside', 'd', 'ft', [1, 200], 8, { shownWhen: { tankFrom: 'round' } }),
  tankLengthFt: number('Length, inside', 'l_T', 'ft', [1, 200], 8, { shownWhen: { tankFrom: 'square' } }),
  tankWidthFt: number('Width, inside', 'w_T', 'ft', [1, 200], 4, { shownWhen: { tankFrom: 'square' } }),
  tankDepthFt: number('Depth of water when full', 'h', 'ft', [0.5, 50], 6, { shownWhen: { tankFrom: ['round', 'square'] } }),
  stock: rows({
    label: 'Stock that drink',
    rowName: 'kind of stock',
    each: '{#countHead} {kind}, {ownGalPerDay} each',
    maxRows: 8,
    columns: {
      kind: choice('Kind of stock', 'cow-nursing', {
        options: {
          'cow-nursing': { label: 'Cow with a calf on her', short: ['cow with a calf', 'cows with calves'] },
          'cow-dry': { label: 'Dry cow', short: ['dry cow', 'dry cows'] },
          bull: { label: 'Bull', short: ['bull', 'bulls'] },
          'heifer-pregnant-750': { label: 'Bred heifer, about 750 lb', short: ['bred heifer', 'bred heifers'] },
          'calf-500': { label: 'Calf, about 500 lb', short: ['calf', 'calves'] },
          'growing-600': {
            label: 'Growing cattle, about 600 lb',
            short: ['600 lb stocker', '600 lb stockers'],
            shortMetric: ['270 kg stocker', '270 kg stockers'],
          },
          'growing-800': {
            label: 'Growing cattle, about 800 lb',
            short: ['800 lb stocker', '800 lb stockers'],
            shortMetric: ['360 kg stocker', '360 kg stockers'],
          },
          'finishing-1000': { label: 'Cattle on grain, about 1,000 lb', short: ['steer on grain', 'cattle on grain'] },
          ewe: { label: 'Dry ewe', short: ['dry ewe', 'dry ewes'] },
          'ewe-nursing': { label: 'Ewe with lambs', short: ['ewe with lambs', 'ewes with lambs'] },
          goat: { label: 'Goat', short: ['goat', 'goats'] },
          'goat-nursing': { label: 'Goat with kids', short: ['goat with kids', 'goats with kids'] },
          horse: { label: 'Horse, donkey or mule', short: ['horse', 'horses'] },
          other: { label: 'Other, or my own figure', short: ['other', 'others'] },
        },
        offeredBy: 'herd.kind',
        takesNot: ['lamb'],
      }),
      countHead: number('Head', 'N', 'head', [1, 20_000], 45, { whole: true, offeredBy: 'herd.count' }),
      ownGalPerDay: number('One drinks', 'g', 'gal/d', [0.1, 60], 15, {
        usual: 'drunkGalPerDay',
        shownWhen: { kind: 'other' },
        field: 'Shut the float off, mark the level, and see how far it is down a day later.',
      }),
    },
    default: [
      { kind: 'cow-nursing', countHead: 45, ownGalPerDay: 15 },
      { kind: 'bull', countHead: 2, ownGalPerDay: 15 },
      { kind: 'ewe-nursing', countHead: 60, ownGalPerDay: 3 },
    ],
    offeredBy: 'herd',
  }),
  airF: number('Hottest part of the day', 't', 'f', [-20, 125], 90, {
    help: 'Cattle drink half again as much at 90 °F as at 60 °F (32 and 16 °C). Sheep, goats and horses are counted with that from 80 °F (27 °C) on.',
    offeredBy: 'place.hot',
  }),
};
