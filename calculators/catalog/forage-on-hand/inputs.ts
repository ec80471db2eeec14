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
  areaAc: number('Acres of this pasture', 'A', 'ac', [0.1, 100_000], 85, { usual: 'pastureAc' }),
  reachPercent: number('Share of it that stock use', 'q', 'pct', [1, 100], 100, {
    help: 'Leave out brush, steep slopes and ground far from water.',
    ask: 'Ride it late in the season: how much of it shows no bites? Past a mile from water count half, past two miles none.',
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
  stubbleLbPerAc: number('Pounds to leave on an acre', 's', 'lb/ac', [0, 10_000], 1000, {
    belongsTo: 'management',
    usual: 'stubbleLbPerAc',
    shownWhen: cutAtGround,
    help: 'With the water out. It keeps the ground covered and the plant alive.',
    field: 'Cut two or three plots at the height you leave, then cut the rest at the ground and weigh that by itself.',
    ask: 'Four inches of good sod pasture hold about 1,000 pounds, the bottom inches more than the top.',
  }),
  stubbleHeightIn: number('Stubble to leave, height', 'h', 'in', [0.5, 40], 4, {
    belongsTo: 'management',
    usual: 'stubbleIn',
    shownWhen: { way: ['height-clips', 'height-known', 'height-stand'] },
    ask: 'On sod pasture 3 to 4 inches; on tall native grass 8 or more. In a drought leave more, not less.',
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
  }),
  ownEatenPercent: number('Share eaten', 'u_o', 'pct', [5, 100], 60, { belongsTo: 'management', shownWhen: { eatenFrom: 'own' } }),
  withinPercent: number('How close you want the mean', 'E', 'pct', [5, 100], 20, {
    help: 'For the number of plots: within this share of the true mean, up or down.',
  }),
  surePercent: number('How often it should hold', 'c', 'pct', [50, 95], 80, {
    help: '80 means four times in five. It also sets how wide the range is.',
  }),
};
