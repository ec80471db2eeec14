import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

/** One animal at a heat, as the lists print it. */
const one = (stock: string, hotF: number): string => `herd.stock=${stock}&herd.count=1&hot=${hotF}f`;
/** So many head of one kind at so many gallons. */
const drinking = (count: number, gallons: number): string =>
  `herd.stock=cow-nursing&herd.count=${count}&intake-from=known&herd.known=${gallons}gal/d`;

const summer = { source: 'beef-summer-water', where: 'daily water intake in gallons', seen: 'print' } as const;
const michigan = { source: 'gould-fs1090', where: 'water intake by temperature, after Guyer', seen: 'transcription' } as const;
const handbook = { source: 'mwps14-new-hampshire', where: 'drinking water needs of farm animals', seen: 'transcription' } as const;
const indiana = { source: 'burbrink-2022', where: 'water needs in winter', seen: 'print' } as const;
const alberta = { source: 'alberta-pasture-pipeline', seen: 'print' } as const;
const victoria = {
  source: 'bekker-stock-water-2024',
  where: 'how much do you need; liters stand for gallons, the sums are the same',
  seen: 'print',
} as const;

/** What the highest list prints for one head. */
const heads: readonly (readonly [string, number, string, Pick<Case, 'source' | 'where' | 'seen'>])[] = [
  ['cow-dry', 90, '17.6', summer],
  ['bull', 90, '19.5', summer],
  ['heifer-pregnant-750', 90, '14.6', summer],
  ['calf-500', 80, '7.4', summer],
  ['calf-500', 90, '10.6', summer],
  ['growing-400', 90, '9.5', michigan],
  ['growing-600', 88, '12.0', michigan],
  ['finishing-1000', 73, '13.0', michigan],
  ['finishing-1200', 90, '23.0', michigan],
  // Figures of no heat: from 80 °F on the plan takes half as much again.
  ['llama', 60, '5', handbook],
  ['goat', 60, '4', handbook],
  ['ewe-nursing', 60, '3', indiana],
  ['draft-horse', 60, '20', indiana],
];

export default defineCases(definition, [
  ...heads.map(
    ([stock, hotF, printed, from]): Case => ({
      name: `${stock} at ${hotF} °F`,
      query: one(stock, hotF),
      expect: { needGalPerDay: printed },
      ...from,
    }),
  ),
  {
    name: 'A cow with a calf at 95 °F, by the rule of 0.4 gallons a degree',
    query: one('cow-nursing', 95),
    expect: { needGalPerDay: '24' },
    source: 'noble-water-1999',
    where: 'fourth paragraph',
    seen: 'print',
  },
  {
    name: '80 cows with calves at 15 gallons',
    query: `${drinking(80, 15)}&supply=flow&flow-from=known&known=5gpm`,
    expect: { needGalPerDay: '1,200' },
    ...alberta,
    where: 'step 1',
  },
  {
    name: 'The same from a pump of 5 gallons a minute: hours to run',
    query: `${drinking(80, 15)}&supply=flow&flow-from=known&known=5gpm&pumped=4hr`,
    expect: { neededHr: '4', supplyGalPerDay: '1,200' },
    ...alberta,
    where: 'step 2: 1,200 gallons in 240 minutes is 5 gallons a minute',
  },
  {
    name: 'A spring of a quart a minute',
    query: 'supply=flow&flow-from=bucket&bucket=0.25gal&bucket-fill=60s&pumped=24hr',
    expect: { supplyGalPerDay: '360' },
    source: 'missouri-tank-capacities-2000',
    where: 'spring development',
    seen: 'print',
  },
  {
    name: 'A flow of 2 a minute for a day',
    query: 'supply=flow&flow-from=known&known=2gpm&pumped=24hr',
    expect: { supplyGalPerDay: '2,880' },
    source: 'gw-project-domestic-wells-2022',
    where: 'solution of exercise 1; liters stand for gallons, the sum is the same',
    seen: 'print',
  },
  { name: '1,000 ewes at 6 a day', query: drinking(1000, 6), expect: { needGalPerDay: '6000' }, ...victoria },
  {
    name: '1,000 ewes for 150 days out of storage alone',
    query: `${drinking(1000, 6)}&supply=hauled&weekly-loads=0&storage=known&own-stored=900000gal&wanted=150d`,
    expect: { lastsDays: '150', verdict: 'lasts' },
    ...victoria,
    where: 'how much do you need: 900,000 for 150 days; liters stand for gallons',
  },
  {
    name: '100 cows, 100 calves and 3 bulls for 150 days out of storage alone',
    query:
      'herd.stock=cow-nursing,calf-500,bull&herd.count=100,100,3&intake-from=known&herd.known=100gal/d,4gal/d,100gal/d&supply=hauled&weekly-loads=0&storage=known&own-stored=1605000gal&wanted=150d',
    expect: { 'lines.0.lineGalPerDay': '10,000', 'lines.1.lineGalPerDay': '400', 'lines.2.lineGalPerDay': '300', lastsDays: '150' },
    ...victoria,
    where: 'how much do you need: 1,605,000 for 150 days; liters stand for gallons',
  },
  {
    name: 'A pond of one acre, 2.5 ft at its deepest, holds a foot over all of it',
    query: 'supply=pond&surface-from=known&surface=1ac&max-depth=2.5ft&dead-depth=1ft',
    expect: { pondGal: '325,851' },
    source: 'sizes-acre-foot',
    where: 'acre-foot; 0.4 of 2.5 ft is one foot',
    seen: 'print',
  },
  {
    name: '60 head that need 1,200 gallons and come from 1,500 ft',
    query: `${drinking(60, 20)}&supply=flow&walk=1500ft`,
    expect: { troughGal: '300', refillGpm: '5', atOnceHead: '6', edgeFt: '12', comes: 'herd' },
    source: 'ohioline-anr12-2003',
    where: 'the rules read; worked out apart: a quarter of 1,200, refilled in an hour, a tenth at once, 2 ft each',
    seen: 'computed',
  },
  {
    name: 'Three days in reserve',
    query: `${drinking(60, 20)}`,
    expect: { reserveGal: '3,600' },
    source: 'klausmeyer-watering',
    where: 'third paragraph: three days; worked out apart',
    seen: 'computed',
  },
  ...(
    [
      ['three-quarter', '3.73', '4'],
      ['one', '6.3', '10'],
      ['one-and-quarter', '6.0', '20'],
      ['one-and-half', '5.96', '30'],
    ] as const
  ).map(
    ([size, lossFt, pipeGpm]): Case => ({
      name: `${size} in plastic pipe: ${lossFt} ft lost in 100 ft`,
      query: `supply=flow&pipe=piped&pipe-size=${size}&pipe-length=100ft&pipe-head=${lossFt}ft`,
      expect: { pipeGpm },
      source: 'apm-pipe-loss',
      where: 'PE columns, read from the loss back to the flow',
      seen: 'print',
    }),
  ),
  {
    name: 'in 30 ft of 3-in plastic pipe 2.7 ft are lost at 200 gallons a minute',
    query: 'supply=flow&pipe=piped&pipe-size=three&pipe-length=30ft&pipe-head=2.7ft',
    expect: { pipeGpm: '200' },
    source: 'engineering-toolbox-hazen-williams',
    where: 'example, read from the loss back to the flow',
    seen: 'print',
    differs: { by: '5', because: 'its pipe is 3.048 in inside, the size here 3.068' },
  },
]);
