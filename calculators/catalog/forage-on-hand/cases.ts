import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const oneCow = 'area=1ac&stock.count=1&stock.weight=1000lb&stock.intake=3pct';
const byHeight = (query: string): string => `way=height-known&${query}`;
/** The source gives one figure for the field; two equal places stand for it. */
const one = (height: string, stubble: string, density: number): string =>
  byHeight(`heights.height=${height},${height}&stubble-height=${stubble}&density=${density}lb/ac/in`);
const shares = [
  [1, '80'],
  [2, '75'],
  [3, '75'],
  [4, '70'],
  [5, '65'],
  [6, '60'],
  [7, '60'],
] as const;

export default defineCases(definition, [
  {
    name: '2.07 lb from a square yard cut at grazing height, 9 oz drying to 3 on a plate of 1',
    query: 'clipped-to=stubble&frame=area&frame-known=9sqft&plots.green=2.07lb,2.07lb&dry-from=dried&wet=9g&dry=3g&plate=1g',
    expect: { dryPercent: '25', availableLbPerAc: '2505' },
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix E, example; its ounces typed as grams, its one plot twice',
    seen: 'print',
  },
  {
    name: '200 g from two square feet, 20 % dry',
    query: 'clipped-to=stubble&frame=area&frame-known=2sqft&plots.green=200g,200g&dry-from=known&known-dry=20pct',
    expect: { availableLbPerAc: '1916' },
    source: 'sliworsky-forage',
    where: 'Sample and weigh; its one plot twice',
    seen: 'print',
    differs: { by: '4.7', because: 'the column takes 2.2 lb for a kilogram' },
  },
  {
    name: '100 g drying to 20',
    query: 'dry-from=dried&wet=100g&dry=20g&plate=0g',
    expect: { dryPercent: '20' },
    source: 'sliworsky-forage',
    where: 'Sample and weigh',
    seen: 'print',
  },
  {
    name: 'hoop 93 in round',
    query: 'frame=hoop-around&around=93in',
    expect: { frameAreaFt2: '4.8', gramLbPerAc: '20' },
    source: 'county-aum-handout',
    where: 'Square or hoop, times 20',
    seen: 'transcription',
  },
  {
    name: 'square of 26.25 in',
    query: 'frame=rectangle&length=26.25in&width=26.25in',
    expect: { frameAreaFt2: '4.8', gramLbPerAc: '20' },
    source: 'county-aum-handout',
    where: 'Square or hoop, times 20',
    seen: 'transcription',
  },
  {
    name: 'square yard',
    query: 'frame=area&frame-known=9sqft',
    expect: { gramLbPerAc: '10.7' },
    source: 'luling-foundation',
    where: 'Yard square, times 10.7',
    seen: 'print',
  },
  {
    name: 'frame of 1.92 square feet',
    query: 'frame=area&frame-known=1.92sqft',
    expect: { gramLbPerAc: '50' },
    source: 'moseley-forage',
    where: 'Grams times 50',
    seen: 'transcription',
  },
  ...(
    [
      ['7in', '3in', 300, '1200', 'umaine-pasture-lesson-1', 'Appendix D, example'],
      ['7in', '3in', 350, '1400', 'umaine-pasture-lesson-1', 'Appendix D, example'],
      ['7in', '4in', 300, '900', 'penn-state-four-steps', 'Step 4'],
    ] as const
  ).map(
    ([height, stubble, density, availableLbPerAc, source, where]): Case => ({
      name: `${height} down to ${stubble} at ${density} lb an inch`,
      query: one(height, stubble, density),
      expect: { availableLbPerAc },
      source,
      where,
      seen: 'print',
    }),
  ),
  ...(
    [
      ['good', 275, '9'],
      ['fair', 175, '6'],
    ] as const
  ).map(
    ([condition, density, grazingForDays]): Case => ({
      name: `an inch of ${condition} pasture: days for one cow on an acre`,
      query: `${one('5in', '4in', density)}&eaten-from=own&own-eaten=100pct&${oneCow}`,
      expect: { grazingForDays },
      source: 'umaine-pasture-lesson-5',
      where: 'A simpler approach: cow of 30 lb a day',
      seen: 'print',
    }),
  ),
  ...shares.map(
    ([stay, eatenPercent]): Case => ({
      name: `${stay} days in a paddock: share eaten`,
      query: `stay=${stay}d`,
      expect: { eatenPercent },
      source: 'penn-state-agronomy-guide',
      where: 'Table 1.8-9',
      seen: 'print',
    }),
  ),
  ...(
    [
      [790, 'rangeMonths', 'nrcs-528-1-2007', 'Animal-unit month', 'transcription'],
      [820.8, 'airDryMonths', 'drovers-grazing-plan-2012', 'Animal-unit month of 912 lb, nine tenths of it dry', 'print'],
    ] as const
  ).map(
    ([eatenLb, months, source, where, seen]): Case => ({
      name: `an animal-unit month: ${months}`,
      query: `${one('9in', '4in', eatenLb / 5)}&eaten-from=own&own-eaten=100pct&area=1ac`,
      expect: { [months]: '1.00' },
      source,
      where,
      seen,
    }),
  ),
  {
    name: '550 acres at 800 lb, 45 % eaten',
    query: `${one('8in', '4in', 200)}&area=550ac&eaten-from=own&own-eaten=45pct`,
    expect: { availableLbPerAc: '800', eatenLb: '198000' },
    source: 'launchbaugh-stocking-rate',
    where: 'Slide 6; heights chosen to make its 800 lb',
    seen: 'print',
  },
  {
    name: 'mixed pasture, good: the middle of 250 to 300 lb an inch',
    query: 'way=height-stand&stand=mixed-pasture&condition=good',
    expect: { lowLbPerAcIn: '250', highLbPerAcIn: '300' },
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix D, table',
    seen: 'print',
  },
  {
    name: 'ten unlike readings, 95 % sure: mean, half width 0.88 of 1.58',
    query: byHeight(
      'heights.height=1.2in,2.4in,1.3in,1.3in,0in,1in,1.8in,0.8in,4.6in,1.4in&stubble-height=0.7001142in&density=100lb/ac/in&sure=95pct',
    ),
    expect: { meanHeightIn: '1.58', lowAvailableLbPerAc: '0.000', highAvailableLbPerAc: '175.97716' },
    source: 'student-sleep',
    where: 'Paired comparison, 95 percent: 0.7001142 to 2.4598858, with the low end taken for stubble',
    seen: 'transcription',
  },
  {
    name: 'differences of about 45 %, within 20 % four times in five',
    query: 'plots.green=142.7g,57.3g,142.7g,57.3g,142.7g,57.3g,142.7g,57.3g,142.7g,57.3g&within=20pct&sure=80pct',
    expect: { neededPlots: '10' },
    source: 'common practice',
    where: 'About ten plots of 4.8 square feet; the weights are made to differ by 45 %',
    seen: 'practice',
  },
  {
    name: 'a line through eleven clips under a plate: 3.00 and 0.500 a step, 7.5 at the mean reading',
    query:
      'way=plate&clipped-to=stubble&frame=area&frame-known=96.0333614sqft&dry-from=known&known-dry=100pct&plate-readings.reading=9,9&plate-pairs.pair-reading=10,8,13,9,11,14,6,4,12,7,5&plate-pairs.green=8.04g,6.95g,7.58g,8.81g,8.33g,9.96g,7.24g,4.26g,10.84g,4.82g,5.68g',
    expect: { plateStartLbPerAc: '3.00', plateSlopeLbPerAc: '0.500', clippedLbPerAc: '7.5' },
    source: 'anscombe-1973',
    where: 'First of the four sets; its x stands for the plate, its y for pounds, in a frame where a gram is a pound an acre',
    seen: 'print',
  },
  {
    name: 'the same cut at the ground, with 0.5 to leave',
    query:
      'way=plate&clipped-to=ground&stubble=0.5lb/ac&frame=area&frame-known=96.0333614sqft&dry-from=known&known-dry=100pct&plate-readings.reading=9,9&plate-pairs.pair-reading=10,8,13,9,11,14,6,4,12,7,5&plate-pairs.green=8.04g,6.95g,7.58g,8.81g,8.33g,9.96g,7.24g,4.26g,10.84g,4.82g,5.68g',
    expect: { clippedLbPerAc: '7.5', availableLbPerAc: '7.0' },
    source: 'anscombe-1973',
    where: 'First of the four sets; its x stands for the plate, its y for pounds, in a frame where a gram is a pound an acre',
    seen: 'print',
  },
]);
