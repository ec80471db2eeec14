import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const byHand = { source: 'common practice', where: 'Worked by hand with the rules of the steps', seen: 'practice' } as const;
const worked = (name: string, query: string, expect: Case['expect']): Case => ({ name, query, expect, ...byHand });
const exact = { source: 'clopper-pearson-1934', where: 'The exact interval, 95 percent, from tails of the binomial', seen: 'computed' } as const;

export default defineCases(definition, [
  worked('45 nursing cows of 1,250 lb at 2.5 percent', 'run=6yr&stock.kind=cow-nursing&stock.count=45&stock.weight=1250lb&stock.intake=2.5pct', {
    herdLbPerDay: '1406.25',
  }),
  worked('3 in of stubble at 250 lb an inch', 'run=6yr&stubble=3in&density=250lb/ac/in', { stubbleLbPerAc: '750' }),
  // A herd that nothing can feed but hay: 100 cows of 1,000 lb at 2 percent, no season, no meadow. A year of 365 days takes 730,000 lb, one of 366 takes 732,000.
  worked(
    '100 cows on hay all year, nothing lost, dry hay',
    'run=6yr&turn-out=2026-04-20&pull=2026-04-20&stock.kind=cow-dry&stock.count=100&stock.weight=1000lb&stock.intake=2pct&winter=100pct&feeding-loss=0pct&moisture=0pct&meadow=0ac',
    { medianNeedTon: '365', mostNeedTon: '366', hayTon: '366', grazedDays: '0', movesCount: '0', fedLb: '2000', outOfBarnLb: '2000' },
  ),
  worked(
    'the same with a fifth lost in feeding, and 15 percent water in the hay',
    'run=6yr&turn-out=2026-04-20&pull=2026-04-20&stock.kind=cow-dry&stock.count=100&stock.weight=1000lb&stock.intake=2pct&winter=100pct&feeding-loss=20pct&moisture=15pct&meadow=0ac',
    // 730,000 lb over 0.8, over 0.85, over 2,000.
    { medianNeedTon: '536.8', outOfBarnLb: '2500' },
  ),
  worked(
    'the same herd, half of it sold on October 20, nothing lost, dry hay',
    'run=6yr&turn-out=2026-04-20&pull=2026-04-20&stock.kind=cow-dry&stock.count=100&stock.weight=1000lb&stock.intake=2pct&winter=100pct&feeding-loss=0pct&moisture=0pct&meadow=0ac&sells=yearly&sold=50pct&sale=2026-10-20',
    // 183 days of 2,000 lb up to the sale, then 182 of 1,000, or 183 of them over a leap day.
    { medianNeedTon: '274', mostNeedTon: '274.5', soldCount: '5' },
  ),
  worked('on its 31st day the herd is in another paddock: nothing is bitten off in the first', 'run=6yr&paddocks=4&stay=30d&shown=2026-05-20', {
    dayEatenLbPerAc: '0',
  }),
  worked(
    'a month in which it never rains: nothing falls, nothing runs off',
    'run=6yr&month-rain=2.2in,2.1in,3.2in,3.9in,4.9in,4.6in,0in,2.5in,3.1in,3.2in,2.9in,2.4in',
    { dayWaterIn: '0', dayRunoffIn: '0' },
  ),
  {
    name: '2 of 29 years: the chance is 0.8 to 22.8 percent',
    query: 'turn-out=2026-04-20&pull=2026-11-01&run=30yr',
    expect: { shortCount: '2', yearsCount: '29', lowPercent: '0.85', highPercent: '22.77' },
    ...exact,
  },
  {
    name: '29 years that were never short bound one in ten: 0.9 to the 29th is under 0.05',
    query: 'run=30yr',
    expect: { yearsCount: '29', bound: 'bounds' },
    ...exact,
  },
  { name: '28 cannot: 0.9 to the 28th is over 0.05', query: 'run=29yr', expect: { yearsCount: '28', bound: 'cannot' }, ...exact },
]);
