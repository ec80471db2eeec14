import { choice, number } from '../../kit/inputs.ts';
import { rangeStubbleLbPerAc } from '../../tables/harvestShare.ts';
import { placeInputs } from './placeInputs.ts';
import { stock } from './stock.ts';

/** The middle of what is printed for a kind of range. */
function stubbleOf(range: (typeof rangeStubbleLbPerAc)[number]['range']): number {
  const found = rangeStubbleLbPerAc.find((row) => row.range === range);
  if (!found) throw new RangeError(`stubbleOf needs a range of the table, got ${range}`);
  return (found.lbPerAc[0] + found.lbPerAc[1]) / 2;
}
const cutAtGround = { way: ['clips', 'plate'], clippedTo: ['ground', 'not-sure'] };

export const inputs = {
  ...placeInputs,
  areaAc: number({
    label: 'Acres of this pasture',
    symbol: 'A',
    belongsTo: 'place',
    unit: 'ac',
    min: 0.1,
    max: 100_000,
    usual: 'pastureAc',
    default: 85,
  }),
  reachPercent: number({
    label: 'Share of it that stock use',
    symbol: 'q',
    belongsTo: 'place',
    unit: 'pct',
    min: 1,
    max: 100,
    default: 100,
    help: 'Leave out brush, steep slopes and ground far from water.',
    ask: 'Ride it late in the season: how much of it shows no bites? Past a mile from water count half, past two miles none.',
  }),
  stock,
  stubbleKind: choice({
    label: 'Stubble to leave',
    belongsTo: 'management',
    default: 'own',
    shownWhen: cutAtGround,
    help: 'For range, choosing one fills in the middle of the published figures.',
    options: {
      own: { label: 'My own figure' },
      desert: { label: 'Desert range', fills: { stubbleLbPerAc: stubbleOf('desert') } },
      shortgrass: { label: 'Shortgrass range', fills: { stubbleLbPerAc: stubbleOf('shortgrass') } },
      midgrass: { label: 'Midgrass range', fills: { stubbleLbPerAc: stubbleOf('midgrass') } },
      tallgrass: { label: 'Tallgrass range', fills: { stubbleLbPerAc: stubbleOf('tallgrass') } },
    },
  }),
  stubbleLbPerAc: number({
    label: 'Pounds to leave on an acre',
    symbol: 's',
    belongsTo: 'management',
    unit: 'lb/ac',
    min: 0,
    max: 10_000,
    usual: 'stubbleLbPerAc',
    default: 1000,
    shownWhen: cutAtGround,
    help: 'With the water out. It keeps the ground covered and the plant alive.',
    field: 'Cut two or three plots at the height you leave, then cut the rest at the ground and weigh that by itself.',
    ask: 'Four inches of good sod pasture hold about 1,000 pounds, the bottom inches more than the top.',
  }),
  stubbleHeightIn: number({
    label: 'Stubble to leave, height',
    symbol: 'h',
    belongsTo: 'management',
    unit: 'in',
    min: 0.5,
    max: 40,
    usual: 'stubbleIn',
    default: 4,
    shownWhen: { way: ['height-clips', 'height-known', 'height-stand'] },
    ask: 'On sod pasture 3 to 4 inches; on tall native grass 8 or more. In a drought leave more, not less.',
  }),
  eatenFrom: choice({
    label: 'Share eaten of what stands above the stubble',
    belongsTo: 'management',
    default: 'by-stay',
    help: 'The rest is trampled or passed over. The stubble is already left out, so don’t halve it again.',
    options: { 'by-stay': { label: 'from the table, by days in one paddock' }, own: { label: 'my own figure' } },
  }),
  stayDays: number({
    label: 'Days that stock stay in one paddock',
    symbol: 't_s',
    belongsTo: 'management',
    unit: 'd',
    min: 1,
    max: 365,
    default: 4,
    whole: true,
    shownWhen: { eatenFrom: 'by-stay' },
    help: 'The table ends at seven days; a longer stay is read there, and is likely worse.',
  }),
  ownEatenPercent: number({
    label: 'Share eaten',
    symbol: 'u_o',
    belongsTo: 'management',
    unit: 'pct',
    min: 5,
    max: 100,
    default: 60,
    shownWhen: { eatenFrom: 'own' },
  }),
  withinPercent: number({
    label: 'How close you want the mean',
    symbol: 'E',
    belongsTo: 'place',
    unit: 'pct',
    min: 5,
    max: 100,
    default: 20,
    help: 'For the number of plots: within this share of the true mean, up or down.',
  }),
  surePercent: number({
    label: 'How often it should hold',
    symbol: 'c',
    belongsTo: 'place',
    unit: 'pct',
    min: 50,
    max: 95,
    default: 80,
    help: '80 means four times in five. It also sets how wide the range is.',
  }),
};
