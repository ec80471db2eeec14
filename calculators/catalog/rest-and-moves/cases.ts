import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

/** Acres for one animal unit of 25 lb a day: days in the paddock and what the table prints at 750, 1,000 and 1,500 lb above the stubble. The table's own shares are the default. */
const acres = [
  ['1d', '0.042', '0.031', '0.021'],
  ['2d', '0.089', '0.067', '0.044'],
  ['3d', '0.133', '0.100', '0.067'],
  ['5d', '0.256', '0.192', '0.128'],
  ['7d', '0.389', '0.292', '0.194'],
] as const;
const oneUnit = 'stock.count=1&stock.weight=1000lb&stock.intake=2.5pct';
const cell = (stay: string, density: number, paddockAc: string): Case => ({
  name: `one animal unit, ${stay}, ${5 * density} lb above the stubble`,
  query: `start-height=9in&stop-height=4in&density=${density}lb/ac/in&stay=${stay}&${oneUnit}`,
  expect: { paddockAc },
  source: 'penn-state-agronomy-guide',
  where: 'Table 1.8-9',
  seen: 'print',
});

export default defineCases(definition, [
  ...acres.flatMap(([stay, at750, at1000, at1500]) => [cell(stay, 150, at750), cell(stay, 200, at1000), cell(stay, 300, at1500)]),
  {
    name: '35 days of rest in stays of 3 days: paddocks to build',
    query: 'start-height=9in&stop-height=4in&density=280lb/ac/in&growth=40lb/ac/d&stay=3d',
    expect: { neededPaddocks: '13' },
    source: 'penn-state-four-steps',
    where: 'Step 3, example herd; heights and growth chosen to make its 35 days',
    seen: 'print',
  },
  {
    name: '12 paddocks, stays of 3 days, one herd',
    query: 'paddock=12&stay=3d',
    expect: { givenRestDays: '33' },
    source: 'penn-state-four-steps',
    where: 'Step 3, rule turned round',
    seen: 'computed',
  },
  {
    name: '30 days of rest, stays of 3 days, two herds',
    query: 'start-height=9in&stop-height=4in&density=240lb/ac/in&growth=40lb/ac/d&stay=3d&herd=2',
    expect: { neededPaddocks: '12' },
    source: 'penn-state-four-steps',
    where: 'Step 3, rule, carried to two herds',
    seen: 'computed',
  },
  ...(
    [
      ['7in', '3in', 300, '1200', 'umaine-pasture-lesson-1', 'Appendix D, example'],
      ['7in', '3in', 350, '1400', 'umaine-pasture-lesson-1', 'Appendix D, example'],
      ['7in', '4in', 300, '900', 'penn-state-four-steps', 'Step 4'],
    ] as const
  ).map(
    ([start, stop, density, regrowLbPerAc, source, where]): Case => ({
      name: `${start} down to ${stop} at ${density} lb an inch`,
      query: `start-height=${start}&stop-height=${stop}&density=${density}lb/ac/in`,
      expect: { regrowLbPerAc },
      source,
      where,
      seen: 'print',
    }),
  ),
  {
    name: 'four paddocks, one herd: share at rest',
    query: 'paddock=4',
    expect: { restingPercent: '75' },
    source: 'shelton-rest',
    where: 'Four paddocks',
    seen: 'print',
  },
  {
    name: 'orchardgrass: published rest',
    query: 'forage=orchardgrass',
    expect: { lowRestDays: '15', highRestDays: '30' },
    source: 'uga-wait-to-graze',
    where: 'Table 1',
    seen: 'print',
  },
  {
    name: 'switchgrass: published rest',
    query: 'forage=switchgrass',
    expect: { lowRestDays: '30', highRestDays: '45' },
    source: 'uga-wait-to-graze',
    where: 'Table 1',
    seen: 'print',
  },
  {
    name: 'no growth: the answer is in words',
    query: 'growth=0lb/ac/d',
    expect: { verdict: 'none-until-rain' },
    source: 'common practice',
    where: 'No growth, no rest long enough',
    seen: 'practice',
  },
]);
