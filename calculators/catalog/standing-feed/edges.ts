import { always, defineEdges, edge, shows, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

/** Ten acres and no loss; each head eats 20 lb a day. */
const even = 'loss=0pct&eaten-from=own&own-eaten=100pct&area=10ac&strip=5d&stock.kind=other&stock.weight=1000lb&stock.intake=2pct';

/** Too thin for cattle to fill themselves. */
const thin = 'loss=0pct&stubble=0lb/ac&standing=700lb/ac';
/** The same in summer, 1,000 lb an acre of it to be eaten. */
const summer = `${even}&standing=2000lb/ac&feed=annual-range&measured=2026-05-01&from=2026-05-31&until=2026-12-01`;

const southSummer = `${even}&south=yes&standing=2000lb/ac&feed=annual-range&measured=2026-11-01&from=2026-11-15&until=2027-06-01`;
const southWinter = 'south=yes&from=2027-03-01&until=2027-09-01';

export default defineEdges(definition, {
  limits: {
    standingLbPerAc: [100, 20000],
    heightIn: [1, 80],
    densityLbPerAcIn: [20, 1000],
    lossPercent: [0, 30],
    areaAc: [0.5, 20000],
    fenceFt: [50, 20000],
    'stock.countHead': [1, 20000],
    'stock.weightLb': [20, 3000],
    'stock.intakePercent': [0.5, 8],
    stubbleLbPerAc: [0, 10000],
    stubbleHeightIn: [0, 40],
    stripDays: [1, 120],
    ownEatenPercent: [5, 100],
  },
  edges: [
    edge('Most old tall fescue carries', { raised: '', silent: 'feed=other' }),
    edge('Most old tall fescue carries', { on: 'stock.count=6', raised: 'stock.kind=cow-dry', silent: 'stock.kind=horse' }),
    edge('The toxin of old tall fescue gives mares', { on: 'stock.kind=horse&stock.count=6', raised: '', silent: 'feed=other' }),
    edge('The toxin of old tall fescue gives mares', { on: 'stock.count=6', raised: 'stock.kind=horse', silent: 'stock.kind=cow-dry' }),
    edge('The toxin of old tall fescue gives mares', { on: 'stock.count=6', raised: 'stock.kind=other', silent: 'stock.kind=doe' }),
    edge('The lowest inches of old', { on: 'mass-from=height', raised: 'stubble-height=3.9in', silent: 'stubble-height=4in' }),
    edge('The lowest inches of old', { on: 'mass-from=height&stubble-height=3in', raised: 'feed=tall-fescue', silent: 'feed=other' }),
    edge('Cured grass is often under', { raised: 'feed=other', silent: '' }),
    // Grazed in June, July and August alone: from June 1, and 25 days to August 31.
    edge('Ice or deep snow can', { on: `${summer}&stock.count=20`, raised: 'start=2026-05-31', silent: 'start=2026-06-01' }),
    edge('Ice or deep snow can', { on: `${summer}&stock.count=20`, raised: 'start=2026-08-08', silent: 'start=2026-08-07' }),
    edge('From April through September, in the', { raised: 'measured=2026-09-30', silent: 'measured=2026-10-01' }),
    edge('From April through September, in the', { raised: 'measured=2026-04-01', silent: 'measured=2026-03-31' }),
    edge('From April through September, in the', {
      on: 'measured=2026-09-01&from=2026-09-15',
      raised: 'start=2026-10-01',
      silent: 'start=2026-09-30',
    }),
    edge('From April through September, in the', { on: 'measured=2026-06-30', raised: 'feed=other', silent: 'feed=annual-range' }),
    // South of the equator the same half a year apart: summer is December to February, growth October to March.
    edge('Ice or deep snow can', { on: `${southSummer}&stock.count=20`, raised: 'start=2026-11-30', silent: 'start=2026-12-01' }),
    edge('Ice or deep snow can', { on: `${southSummer}&stock.count=20`, raised: 'start=2027-02-05', silent: 'start=2027-02-04' }),
    edge('From April through September, in the', {
      on: `${southWinter}&start=2027-05-15`,
      raised: 'measured=2027-03-31',
      silent: 'measured=2027-04-01',
    }),
    edge('From April through September, in the', {
      on: `${southWinter}&measured=2027-03-01`,
      raised: 'start=2027-04-01',
      silent: 'start=2027-03-31',
    }),
    always('Use a proper fence energizer,'),
    edge('The share eaten is read', { raised: 'strip=8d', silent: 'strip=7d' }),
    edge('One strip would take the', { raised: 'strip=30d', silent: 'strip=29d' }),
    edge('One strip would take the', { on: `${even}&standing=2000lb/ac`, raised: 'stock.count=100', silent: 'stock.count=99' }),
    edge('One strip would take the', { on: 'strip=29d', raised: 'stubble=1021lb/ac', silent: 'stubble=1020lb/ac' }),
    edge('Under about 750 pounds an', { on: 'loss=0pct&stubble=0lb/ac', raised: 'standing=749lb/ac', silent: 'standing=750lb/ac' }),
    edge('Under about 750 pounds an', { on: 'loss=0pct&mass-from=height&height=10in', raised: 'density=74.9lb/ac/in', silent: 'density=75lb/ac/in' }),
    // 21 days at 5 percent a month take 3.45 percent.
    edge('Under about 750 pounds an', { on: 'stubble=0lb/ac', raised: 'standing=776lb/ac', silent: 'standing=777lb/ac' }),
    edge('Under about 750 pounds an', { on: `${thin}&stock.count=45`, raised: 'stock.kind=cow-dry', silent: 'stock.kind=doe' }),
    edge('On grass as thin as', { on: `${thin}&stock.count=45`, raised: 'stock.kind=doe', silent: 'stock.kind=cow-dry' }),
    edge('On grass as thin as', { on: 'loss=0pct&stubble=0lb/ac&stock.kind=ewe-dry', raised: 'standing=749lb/ac', silent: 'standing=750lb/ac' }),
    edge('Grass keeps most of its', { on: `${thin}&stock.count=45`, raised: 'stock.kind=horse', silent: 'stock.kind=cow-dry' }),
    edge('Grass keeps most of its', { on: `${thin}&stock.count=45`, raised: 'stock.kind=other', silent: 'stock.kind=doe' }),
    edge('Grass keeps most of its', { on: 'loss=0pct&stubble=0lb/ac&stock.kind=horse', raised: 'standing=749lb/ac', silent: 'standing=750lb/ac' }),
    edge('It would last a year', { raised: 'stock.count=1,2', silent: 'stock.count=2,2' }),
    edge('It would last a year', {
      on: 'stock.count=1,2&stock.weight=1000lb,1900lb&stock.intake=2.2pct,2pct',
      raised: 'strip=1d',
      silent: 'strip=2d',
    }),
    edge('It would last a year', {
      on: 'stock.count=1,2&stock.weight=1250lb,1900lb&stock.intake=2.2pct,2pct',
      raised: 'stubble=862lb/ac',
      silent: 'stubble=863lb/ac',
    }),
    edge('The loss for other dormant', { raised: 'feed=other', silent: '' }),
    edge('The stubble takes all that', { raised: 'stubble=2900lb/ac', silent: 'stubble=2899lb/ac' }),
    edge('The stubble takes all that', { raised: 'standing=1000lb/ac', silent: 'standing=1001lb/ac' }),
    edge('The stubble is as tall', { on: 'mass-from=height', raised: 'height=4in', silent: 'height=4.1in' }),
    edge('The stubble is as tall', { on: 'mass-from=height', raised: 'stubble-height=11in', silent: 'stubble-height=10.9in' }),
    edge('Grazing must start on the', { raised: 'start=2026-11-09', silent: 'start=2026-11-10' }),
    edge('Grazing must start on the', { raised: 'measured=2025-11-30', silent: 'measured=2025-12-01' }),
    edge('Grazing starts before feed is', { raised: 'from=2026-12-02', silent: '' }),
    edge('Grazing starts before feed is', { raised: 'start=2026-11-30', silent: '' }),
    edge('The day until which feed', { raised: 'from=2026-03-31', silent: 'from=2026-04-01' }),
    edge('The day until which feed', { raised: 'until=2027-12-02', silent: 'until=2027-12-01' }),
    edge('The day until which feed', { raised: 'start=2027-04-01', silent: 'start=2027-03-31' }),
    edge('By that day weather has', { raised: 'start=2028-06-11', silent: 'start=2028-06-10' }),
    edge('By that day weather has', { raised: 'measured=2025-05-01', silent: 'measured=2025-05-02' }),
    edge('By that day weather has', { on: 'measured=2025-10-01', raised: 'loss=6.67pct', silent: 'loss=6.66pct' }),
    // 10,000 lb are a day for 500 head, a hair less for 501.
    shows('lastDay', { on: `${even}&standing=2000lb/ac`, shown: 'stock.count=500', hidden: 'stock.count=501' }),
    turns('verdict', { reaches: 'standing=1968lb/ac', short: 'standing=1967lb/ac' }, { on: `${even}&stock.count=4` }),
  ],
});
