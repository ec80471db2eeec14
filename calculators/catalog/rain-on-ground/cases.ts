import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const oneAcre = 'rain=1in&surface=acres&area=1ac';
const acreInch = { source: 'freedictionary-acre-inch', where: 'acre-inch', seen: 'print' } as const;
const acreFoot = { source: 'sizes-acre-foot', where: 'acre-foot', seen: 'print' } as const;
const victoria = { source: 'bekker-stock-water-2024', where: 'how much do you need', seen: 'print' } as const;
/** Liters a day stand for gallons a day where the source is metric: the sums are the same. */
const drinking = (name: string, head: number, each: number, herdGalPerDay: string): Case => ({
  name,
  query: `stock.kind=other&stock.count=${head}&stock.own=${each}gal/d`,
  expect: { herdGalPerDay },
  ...victoria,
});
/** The list is in Imperial gallons of 4.54609 L: a US tank of that many holds 1.20095 as many. */
const imperial = (name: string, tank: string, fullTankGal: string, printed: string): Case => ({
  name,
  query: tank,
  expect: { fullTankGal },
  source: 'weathers-1913',
  where: `water tanks: ${printed} Imperial gallons, moved to US gallons`,
  seen: 'computed',
});

export default defineCases(definition, [
  { name: 'an inch on an acre', query: oneAcre, expect: { waterFt3: '3,630', waterGal: '27,154' }, ...acreInch },
  {
    name: 'an inch on an acre, to the hundredth',
    query: oneAcre,
    expect: { waterGal: '27154.29' },
    source: 'math-forum-rainfall-1995',
    where: 'answer',
    seen: 'print',
  },
  {
    name: 'an inch on an acre, by weight',
    query: oneAcre,
    expect: { waterTon: '113' },
    source: 'forrest-inch-of-rain',
    where: 'first paragraph',
    seen: 'print',
  },
  { name: 'a foot on an acre', query: 'rain=12in&surface=acres&area=1ac', expect: { waterFt3: '43,560', waterGal: '325,851' }, ...acreFoot },
  {
    name: 'an inch on a flat roof of 1,000 square feet',
    query: 'rain=1in&surface=roof&roof-length=50ft&roof-width=20ft&caught=100pct',
    expect: { waterGal: '623', caughtGal: '623' },
    source: 'math-central-roof-2006',
    where: 'answer',
    seen: 'print',
  },
  {
    name: '80 cows with calves at 15 gallons',
    query: 'stock.kind=other&stock.count=80&stock.own=15gal/d',
    expect: { herdGalPerDay: '1200' },
    source: 'alberta-pasture-pipeline',
    where: 'step 1',
    seen: 'print',
  },
  drinking('25 rams', 25, 10, '250'),
  drinking('500 lambs', 500, 4, '2000'),
  drinking('100 calves', 100, 4, '400'),
  imperial('round tank, 4 ft across and 3 ft deep', 'tank-from=round&tank-across=4ft&tank-depth=3ft', '282', '235'),
  imperial('square tank, 6 by 3 ft and 3 ft deep', 'tank-from=square&tank-length=6ft&tank-width=3ft&tank-depth=3ft', '404', '336'),
  {
    name: 'an acre by two fence lengths, two cans that agree',
    query: 'rain-from=two-cans&first-can=1in&second-can=1in&surface=sides&length=660ft&width=66ft',
    expect: { surfaceAc: '1', waterGal: '27,154' },
    source: 'freedictionary-acre-inch',
    where: 'acre-inch; an acre is a chain by ten',
    seen: 'computed',
  },
]);
