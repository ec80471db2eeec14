import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const merced = { source: 'merced-ess110-2008', where: 'worked ponding example' } as const;
const mercedStorm = 'storm=burst&rain=1cm&hard=120min&texture=own&conductivity=0.044cm/hr&suction=22.4cm&room=25pct';
const sheet = {
  source: 'abdulwahab-green-ampt',
  where: 'Green-Ampt table, ground under water from the start; here rain so hard that it stands at once',
  seen: 'print',
} as const;
const ochsner = { source: 'ochsner-2019', where: 'section 6.5, questions 2 and 3, without the answers; worked out apart', seen: 'computed' } as const;
const chow = { source: 'chow-1988', seen: 'memory' } as const;
const chowStorm = 'storm=burst&rain=5cm&hard=60min&texture=silt-loam&wetness=known&filled=30pct';

/** Rain in ten-minute spells, cm, and what soaked in by the end of so many of them. */
const unevenCm = [0.18, 0.21, 0.26, 0.32, 0.37, 0.43, 0.64, 1.14, 3.18, 1.65, 0.81, 0.52] as const;
const unevenStorm = [
  [8, '2.5894'],
  [9, '2.9497'],
  [10, '3.28995'],
  [12, '3.92771'],
] as const;

export default defineCases(definition, [
  {
    name: 'half a centimeter an hour for two hours on tight soil: depth and minutes until it stands (1.08 h)',
    query: mercedStorm,
    expect: { 'lines.0.whenPondedCm': '0.54' },
    ...merced,
    seen: 'print',
  },
  { name: 'the same: minutes until it stands, printed as 1.08 h', query: mercedStorm, expect: { pondsAfterMin: '65' }, ...merced, seen: 'print' },
  {
    name: 'the same, carried on to the end of the storm',
    query: mercedStorm,
    expect: { totalSoakedCm: '0.897', totalRunoffCm: '0.103', endRateCmPerHr: '0.319' },
    ...merced,
    where: 'the same example carried on, worked out apart',
    seen: 'computed',
  },
  {
    name: 'silty clay 45 percent full, six minutes under water',
    query: 'storm=burst&rain=5in&hard=6min&texture=silty-clay&wetness=known&filled=45pct',
    expect: { roomShare: '0.23265', totalSoakedCm: '0.264' },
    ...sheet,
  },
  {
    name: 'the same, twelve minutes',
    query: 'storm=burst&rain=10in&hard=12min&texture=silty-clay&wetness=known&filled=45pct',
    expect: { totalSoakedCm: '0.375' },
    ...sheet,
  },
  {
    name: 'silt loam, 1.5 cm an hour: until it stands',
    query: 'storm=burst&rain=6cm&hard=240min&texture=own&conductivity=0.65cm/hr&suction=17cm&room=34pct',
    expect: { 'lines.0.whenPondedCm': '4.42' },
    ...ochsner,
  },
  {
    name: 'the same with half the conductivity, as two ring tests might say',
    query:
      'storm=burst&rain=6cm&hard=240min&texture=own&conductivity=0.65cm/hr&suction=17cm&room=34pct&rings=both&ring-here=1in/hr&ring-there=2in/hr',
    expect: { 'lines.0.whenPondedCm': '1.599' },
    ...ochsner,
  },
  {
    name: 'silt loam 30 percent full, an hour at 5 cm an hour',
    query: chowStorm,
    expect: { roomShare: '0.340', totalSoakedCm: '3.02' },
    ...chow,
    where: 'examples 4.3.1 and 5.4.2',
  },
  {
    name: 'the same: minutes until it stands, printed as 0.17 h',
    query: chowStorm,
    expect: { pondsAfterMin: '10' },
    ...chow,
    where: 'example 4.4.1',
  },
  {
    name: 'an uneven storm in ten-minute spells on sandy loam 40 percent full: soaked in by the 70th minute',
    query:
      'storm=spells&spells.lasts=10min,10min,10min,10min,10min,10min,10min&spells.fell=0.18cm,0.21cm,0.26cm,0.32cm,0.37cm,0.43cm,0.64cm&texture=sandy-loam&wetness=known&filled=40pct',
    expect: { totalSoakedCm: '2.2011' },
    source: 'chow-1988',
    where: 'rate equation of section 5.4, integrated by a general solver (SciPy)',
    seen: 'computed',
  },
  ...unevenStorm.map(
    ([spells, totalSoakedCm]): Case => ({
      name: `the same storm, soaked in by the ${10 * spells}th minute`,
      query: `storm=spells&spells.lasts=${Array(spells).fill('10min').join(',')}&spells.fell=${unevenCm
        .slice(0, spells)
        .map((fell) => `${fell}cm`)
        .join(',')}&texture=sandy-loam&wetness=known&filled=40pct`,
      expect: { totalSoakedCm },
      source: 'chow-1988',
      where: 'example 5.4.1, as the tests of another, open program solve it',
      seen: 'computed',
    }),
  ),
]);
