import { always, defineEdges, edge, shows, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

const own = 'weather-from=record';
const isoDay = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10);
const dayOf = (date: string): number => Date.parse(date) / 86_400_000;
/** A tenth of an inch on each day, without some days at its beginning. */
const daysRead = (from: string, to: string, unread = 0): readonly string[] =>
  Array.from({ length: dayOf(to) - dayOf(from) + 1 }, (_, at) => isoDay(dayOf(from) + at)).flatMap((date, at) =>
    at > 0 && at <= unread ? [] : [`${date},0.1`],
  );
const recordOf = (lines: readonly string[]) => ({ records: { rainRecord: ['#= unlisted=not-read', 'day,rain (in)', ...lines].join('\n') } });
/** Six hay years to the eve of turn-out, and how many days more, the first of them with unread days. */
const sixYears = (to: string) => recordOf(daysRead('2001-04-20', to));
const eightYears = (unread: number) => recordOf(daysRead('2001-04-20', '2009-04-19', unread));
/** Four years by the month, then as many days as they have, and some more. */
const halfByMonth = (to: string) =>
  recordOf([
    ...[2001, 2002, 2003, 2004].flatMap((year) => Array.from({ length: 12 }, (_, month) => `${year}-${String(month + 1).padStart(2, '0')},3`)),
    ...daysRead('2005-01-01', to),
  ]);

/** Seven years of 365 days with highs and lows on the dates of the year up to one: 182 of them are under half, 183 over. */
const warmUpTo = (last: string) => ({
  records: {
    rainRecord: [
      'day,rain (in),high F,low F',
      ...daysRead('2001-01-01', '2008-12-31')
        .filter((line) => !line.includes('02-29'))
        .map((line) => (line.slice(5, 10) <= last ? `${line},70,45` : `${line},,`)),
    ].join('\n'),
  },
});

/** A place so dry that few yields go with it. */
const dry = 'run=6yr&month-rain=0.3in,0.3in,0.3in,0.3in,0.3in,0.3in,0.3in,0.3in,0.3in,0.3in,0.3in,0.3in';

export default defineEdges(definition, {
  limits: {
    usualForageLbPerAc: [200, 12000],
    'stock.countHead': [1, 20000],
    'stock.weightLb': [20, 3000],
    'stock.intakePercent': [0.5, 8],
    rainRecord: [0, 60],
    monthRainIn: [0, 40],
    monthWetDays: [0.1, 28],
    coldHighF: [-20, 90],
    coldLowF: [-40, 75],
    hotHighF: [50, 120],
    hotLowF: [30, 95],
    runYears: [6, 60],
    throwCount: [1, 999],
    organicPercent: [0, 8],
    rootsIn: [3, 72],
    rainFactorRatio: [1, 700],
    slopePercent: [0.2, 60],
    slopeLengthFt: [15, 1000],
    grazedAc: [1, 100000],
    meadowAc: [0, 100000],
    usualHayTonPerAc: [0.3, 8],
    winterPercent: [40, 150],
    moisturePercent: [0, 80],
    densityLbPerAcIn: [20, 1000],
    shortOfTenCount: [0, 5],
    carriedPercent: [0, 100],
    referenceRatio: [0.7, 1.3],
    crownLbPerAc: [30, 600],
    ceilingRatio: [1.2, 4],
    weatheredPercent: [1, 20],
    trampledRatio: [0.1, 1.5],
    fullIntakeLbPerAc: [200, 2000],
    shownYearCount: [1, 200],
    paddocksCount: [1, 60],
    stayDays: [1, 365],
    restDays: [0, 200],
    stubbleIn: [0.5, 24],
    pullBelowDays: [0, 120],
    keptPercent: [0, 300],
    soldPercent: [0, 100],
    saleBelowDays: [1, 365],
    rootsMoreIn: [-24, 24],
    feedingLossPercent: [0, 60],
    barnTon: [0, 100000],
    mostBoughtTon: [0, 100000],
  },
  edges: [
    always('Try “stock kept” at 80'),
    // Three quarters of 1,000 lb are 750.
    edge('A usual year here, with', { on: 'run=6yr', raised: 'usual-forage=999lb/ac', silent: 'usual-forage=1000lb/ac' }),
    edge('A usual year here, with', { on: 'run=6yr&usual-forage=1000lb/ac', raised: 'full-intake=751lb/ac', silent: 'full-intake=750lb/ac' }),
    edge('What the sold stock bring', { on: 'run=6yr', raised: 'sells=yearly', silent: 'sells=never' }),
    shows('soldCount', { shown: 'run=6yr&sells=dry', hidden: 'run=6yr&sells=never' }),
    edge('Each day here is drawn', { on: 'run=6yr', raised: 'weather-from=made-up', silent: own }),
    edge('The rain is the record', { raised: own, silent: 'weather-from=made-up' }),
    edge('The rain is the record', { on: own, raised: warmUpTo('07-01'), silent: warmUpTo('07-02') }),
    edge('This record holds fewer', { on: own, raised: sixYears('2007-04-18'), silent: sixYears('2007-04-19') }),
    edge('More than three days of', { on: own, raised: eightYears(4), silent: eightYears(3) }),
    edge('The rain of each month', { on: own, raised: halfByMonth('2008-12-31'), silent: halfByMonth('2009-01-01') }),
    turns('weatherIs', { months: halfByMonth('2008-12-31'), days: halfByMonth('2009-01-01') }, { on: own }),
    turns('weatherIs', { 'made-up': 'weather-from=made-up', months: own }),
    shows('leftOutCount', { shown: own, hidden: 'weather-from=made-up' }),
    // 29 hay years take 30 years of weather.
    edge('With no short year at all', { raised: 'run=29yr', silent: 'run=30yr', within: 1 }),
    edge('In the coldest month the night', { on: 'cold-high=42f', raised: 'cold-low=42f', silent: 'cold-low=41.9f' }),
    edge('In the hottest month the night', { on: 'hot-high=88f', raised: 'hot-low=88f', silent: 'hot-low=87.9f' }),
    edge('The days of the hottest', { on: 'hot-high=70f', raised: 'cold-high=70f', silent: 'cold-high=69.9f' }),
    edge('The nights of the coldest', { on: 'hot-low=32f&cold-high=42f', raised: 'cold-low=32f', silent: 'cold-low=31.9f' }),
    edge('This yield does not go', { on: `${dry}&usual-hay=0.3ton/ac`, raised: 'usual-forage=7300lb/ac', silent: 'usual-forage=7250lb/ac' }),
    edge('So much hay does not go', { on: `${dry}&usual-forage=300lb/ac`, raised: 'usual-hay=2.76ton/ac', silent: 'usual-hay=2.75ton/ac' }),
    turns('bound', { bounds: 'run=30yr', cannot: 'run=29yr' }, { within: 1 }),
    turns('herdOn', { hay: 'shown=2026-04-19', here: 'shown=2026-04-20' }),
    turns('herdOn', { here: 'shown=2026-05-19', elsewhere: 'shown=2026-05-20' }),
  ],
});
