import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

/** Growth is over, so that all of it counts; nothing is grazed yet. */
const grown = 'curve=answers&quit-month=aug&fall-flush=none&so-far=100pct&rest=100pct';
const days = (from: string, to: string, go = from): string => `from=${from}&today=${from}&to=${to}&go=${go}&${grown}`;
const flat = 'yield-basis=oven-dry&yield-means=eaten-of-growth';
const one = (acres: number, lbPerAc: number): string =>
  `pastures.area=${acres}ac&pastures.water-distance=0.2mi&pastures.slope=2pct&pastures.normal=${lbPerAc}lb/ac&pastures.poor=0lb/ac`;
const herd = (head: number, weightLb: number, percent: number): string =>
  `herd.kind=other&herd.count=${head}&herd.weight=${weightLb}lb&herd.intake=${percent}pct`;
const handMade = { source: 'common practice', where: 'Feed shared out by hand', seen: 'computed' } as const;
const hundred = `${flat.replace('eaten-of-growth', 'above-stubble')}&grazed=100pct&${one(100, 2400)}&${herd(100, 1000, 3)}`;
const grownBy = (name: string, query: string, grownPercent: string, from: Pick<Case, 'source' | 'where' | 'seen' | 'differs'>): Case => ({
  name,
  query: `from=2026-04-01&to=2026-12-31&go=2026-12-01&${query}`,
  expect: { grownPercent },
  ...from,
});

export default defineCases(definition, [
  {
    name: '2,000 lb an acre, a quarter eaten',
    query: `${flat}&harvest=25pct&${one(1, 2000)}`,
    expect: { normalYearLb: '500' },
    source: 'drovers-grazing-plan-2012',
    where: 'Example',
    seen: 'print',
  },
  {
    name: 'take half, leave half',
    query: 'yield-means=gone-of-growth&gone=50pct&eaten-of-gone=50pct',
    expect: { eatenPercent: '25' },
    source: 'white-b5036',
    where: 'Harvest efficiency',
    seen: 'print',
  },
  {
    name: '550 acres at 800 lb, 45 % proper use',
    query: `${flat}&harvest=45pct&${one(550, 800)}`,
    expect: { normalYearLb: '198,000' },
    source: 'launchbaugh-stocking-rate',
    where: 'Slide 6',
    seen: 'print',
  },
  {
    name: '4,000 at 300: 60 % near water, 25 % half used, 15 % not; 30 % allowed (hectares and kilograms in the print)',
    query: `${flat}&harvest=30pct&reach-from=own&pastures.area=2400ac,1000ac,600ac&pastures.own-usable=100pct,50pct,0pct&pastures.normal=300lb/ac,300lb/ac,300lb/ac`,
    expect: { normalYearLb: '261,000' },
    source: 'rangelands-gateway-matching',
    where: 'Steps a and b',
    seen: 'print',
  },
  {
    // Of a circle of 2 miles, 4 parts, one lies within the mile and three in the ring: 1 + 1.5 of 4. At 2.1 miles it is 2.5 of 4.41.
    name: 'round pastures that reach 1, 2 and 2.1 miles from their water: shares of the rings added up',
    query: `${flat}&reach-from=guide&pastures.area=1ac,1ac,1ac&pastures.water-distance=1mi,2mi,2.1mi&pastures.slope=0pct,0pct,0pct`,
    expect: { 'grounds.0.usablePercent': '100', 'grounds.1.usablePercent': '62.5', 'grounds.2.usablePercent': '56.7' },
    source: 'rangelands-gateway-matching',
    where: 'Step a, laid round a water by hand',
    seen: 'computed',
  },
  {
    name: '1,000 acres at 2,500 lb, 30 % eaten, head of 26 lb a day for 30 days',
    query: `${flat}&harvest=30pct&${one(1000, 2500)}&${herd(100, 1000, 2.6)}&${days('2026-10-01', '2026-10-31')}`,
    expect: { normalYearLb: '750,000', normalHead: '961.5' },
    source: 'stocking-example-unsigned',
    where: 'Supply of 1,000 acres',
    seen: 'transcription',
  },
  {
    name: '1,400 lb an acre to be eaten, cows of 1,200 lb at 2.8 %: cows for a day',
    query: `yield-basis=oven-dry&yield-means=above-stubble&grazed=100pct&${one(1, 1400)}&${herd(10, 1200, 2.8)}&${days('2026-10-01', '2026-10-02')}`,
    expect: { normalHead: '41.7' },
    source: 'pasture-inventory-2015',
    where: 'First approach',
    seen: 'print',
  },
  grownBy('North Dakota, by the end of June', 'curve=nd0002&today=2026-06-30', '80', {
    source: 'nrcs-g058cy500nd',
    where: 'Growth curve, April to June added up',
    seen: 'print',
  }),
  grownBy('Smooth brome in Kansas, through May', 'curve=smooth-brome-kansas&today=2026-05-31', '70', {
    source: 'kstate-meadowlark-2024',
    where: 'Perennial forage season of use, March to May added up',
    seen: 'print',
  }),
  grownBy(
    'Four answers for North Dakota, by the end of June',
    'curve=answers&start-month=apr&best-month=may&quit-month=sep&fall-flush=none&today=2026-06-30',
    '80',
    {
      source: 'nrcs-g058cy500nd',
      where: 'Growth curve, April to June added up',
      seen: 'print',
      differs: { by: '3.5', because: 'four answers stand in for twelve numbers' },
    },
  ),
  {
    // 240,000 lb over 30 lb is 8,000 head-days; over 100 days that is 80 head.
    name: '100 head, 240,000 lb, 100 days: gone today',
    query: `${hundred}&${days('2026-09-01', '2026-12-10')}`,
    expect: { exactGoHead: '20.0', nowHead: '80.0' },
    ...handMade,
  },
  {
    // 20 days of 100 head take 2,000 of the 8,000 head-days; 6,000 over 80 days is 75 head.
    name: 'the same, gone in 20 days',
    query: `${hundred}&${days('2026-09-01', '2026-12-10', '2026-09-21')}`,
    expect: { exactGoHead: '25.0', goHead: '25' },
    ...handMade,
  },
  {
    // 60 head for 30 days at 31 lb.
    name: 'a pasture known by what it fed',
    query: 'yield-from=stock-days&pastures.usual=60&pastures.lasted=30d&usual-eaten=31lb/d&poor=50pct',
    expect: { normalYearLb: '55,800', poorYearLb: '27,900' },
    ...handMade,
  },
]);
