import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const noWait = 'measured=2026-12-01&start=2026-12-01';
const oneUnit = 'stock.count=1&stock.weight=1000lb&stock.intake=2.5pct';
const wholeStand = (lbPerAc: number): string => `standing=${lbPerAc}lb/ac&stubble=0lb/ac&${noWait}`;
/** Acres for one animal unit of 25 lb a day: days in the paddock and what the table prints at 750, 1,000 and 1,500 lb above the stubble. */
const acres = [
  ['1d', '0.042', '0.031', '0.021'],
  ['2d', '0.089', '0.067', '0.044'],
  ['3d', '0.133', '0.100', '0.067'],
  ['5d', '0.256', '0.192', '0.128'],
  ['7d', '0.389', '0.292', '0.194'],
] as const;
const cell = (strip: string, lbPerAc: number, firstStripAc: string): Case => ({
  name: `one animal unit, ${strip}, ${lbPerAc} lb above the stubble`,
  query: `${wholeStand(lbPerAc)}&strip=${strip}&${oneUnit}`,
  expect: { firstStripAc },
  source: 'penn-state-agronomy-guide',
  where: 'Table 1.8-9',
  seen: 'print',
});
const season = { by: '0.4', because: 'the length of the season is not printed; 193 days come from the rounded figures of 2015' };

export default defineCases(definition, [
  ...acres.flatMap(([strip, at750, at1000, at1500]) => [cell(strip, 750, at750), cell(strip, 1000, at1000), cell(strip, 1500, at1500)]),
  {
    name: 'annual range of 2016, a season of 193 days: share lost',
    query: 'loss=8.7pct&measured=2026-05-01&from=2026-11-10&start=2026-11-10',
    expect: { weatheredPercent: '55.0' },
    source: 'larsen-2021',
    where: 'Abstract',
    seen: 'print',
    differs: season,
  },
  {
    name: 'annual range of 2017, a season of 193 days: share lost',
    query: 'loss=7.3pct&measured=2026-05-01&from=2026-11-10&start=2026-11-10',
    expect: { weatheredPercent: '46.5' },
    source: 'larsen-2021',
    where: 'Abstract',
    seen: 'print',
    differs: season,
  },
  {
    name: 'tall fescue from November to March: share lost',
    query: 'feed=tall-fescue&loss=5pct&measured=2026-11-01&start=2027-04-01&until=2027-05-01',
    expect: { weatheredPercent: '25' },
    source: 'tall-fescue-monograph',
    where: 'Stockpiling, dry matter losses over a winter',
    seen: 'print',
  },
  {
    name: '68 cows of 24 lb, 2,129 lb an acre all eaten: acres a day',
    query: `${wholeStand(2129)}&strip=1d&eaten-from=own&own-eaten=100pct&stock.count=68&stock.weight=1200lb&stock.intake=2pct`,
    expect: { firstStripAc: '0.77' },
    source: 'kerr-center-fences',
    where: 'Acres a day at 100 percent utilization',
    seen: 'print',
  },
  {
    name: '100 cows of 30 lb, 45 cow-days an acre: acres a day',
    query: `${wholeStand(45 * 30)}&strip=1d&eaten-from=own&own-eaten=100pct&stock.count=100&stock.weight=1000lb&stock.intake=3pct`,
    expect: { firstStripAc: '2.2' },
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach, step 5',
    seen: 'print',
  },
  ...(
    [
      [300, '3in', '1200', 'umaine-pasture-lesson-1', 'Appendix D, example'],
      [350, '3in', '1400', 'umaine-pasture-lesson-1', 'Appendix D, example'],
      [300, '4in', '900', 'penn-state-four-steps', 'Step 4'],
    ] as const
  ).map(
    ([density, stubble, aboveLbPerAc, source, where]): Case => ({
      name: `7 in down to ${stubble} at ${density} lb an inch`,
      query: `mass-from=height&height=7in&stubble-height=${stubble}&density=${density}lb/ac/in`,
      expect: { aboveLbPerAc },
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
    ([condition, lbPerAc, grazingForDays]): Case => ({
      name: `an inch of ${condition} pasture without loss: days for one cow on an acre`,
      query: `${wholeStand(lbPerAc)}&loss=0pct&area=1ac&eaten-from=own&own-eaten=100pct&stock.count=1&stock.weight=1000lb&stock.intake=3pct`,
      expect: { grazingForDays },
      source: 'umaine-pasture-lesson-5',
      where: 'A simpler approach: cow of 30 lb a day',
      seen: 'print',
    }),
  ),
  {
    name: 'an acre across a wire of a furlong is a chain deep',
    query: `${wholeStand(1000)}&strip=1d&eaten-from=own&own-eaten=100pct&fence=660ft&stock.count=40&stock.weight=1000lb&stock.intake=2.5pct`,
    expect: { firstStripAc: '1.00', firstStripFt: '66' },
    source: 'common practice',
    where: 'An acre is a furlong by a chain: 660 by 66 feet',
    seen: 'practice',
  },
  {
    name: 'weather takes it all before the first day if it takes twice as much',
    query: 'loss=25pct&measured=2026-11-01&start=2027-01-15',
    expect: { lowGrazingDays: '0' },
    source: 'common practice',
    where: 'Nothing stands, nothing feeds',
    seen: 'practice',
  },
]);
