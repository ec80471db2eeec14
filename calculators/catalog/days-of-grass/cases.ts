import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

/** Twenty-five acres from 7 to 3 inches with clips of one's own, 40 pairs. */
const plain =
  'today=2026-07-01&until=2026-08-15&area=25ac&height=7in&stop-height=3in&density-from=own&density=300lb/ac/in&stock.kind=cow-nursing&stock.count=40&stock.weight=1250lb&stock.intake=2.5pct&can-go=30';
/** A stand by the list, cows and bulls, some ground out of reach, some growth. */
const mixed =
  'today=2026-06-20&until=2026-09-01&area=60ac&reach=80pct&height=8.5in&stop-height=4in&stand=mixed-pasture&condition=good&eaten-from=own&own-eaten=60pct&stock.kind=cow-nursing,bull&stock.count=45,2&stock.weight=1250lb,1900lb&stock.intake=2.5pct,2pct&growth=10lb/ac/d&can-go=20';
/** Nearly over. */
const thin =
  'today=2026-07-01&until=2026-07-20&area=30ac&height=6in&stop-height=4in&stand=mixed-pasture&condition=good&eaten-from=own&own-eaten=65pct&stock.kind=cow-nursing&stock.count=60&stock.weight=1200lb&stock.intake=2.5pct&growth=5lb/ac/d&can-go=10';

const byHand = {
  source: 'common practice',
  where: 'Worked by hand with the rules of the steps; half an inch and 17 percent either way',
  seen: 'practice',
} as const;
const worked = (name: string, query: string, expect: Case['expect']): Case => ({ name, query, expect, ...byHand });
const shares = [
  ['eaten-from=week', '60', 'penn-state-agronomy-guide', 'Table 1.8-9, seven days'],
  ['eaten-from=until-gone', '35', 'uga-forage-team-2021', 'Utilization in the text, continuous: the middle of 30 to 40'],
] as const;

export default defineCases(definition, [
  {
    name: '7 in down to 3 in at 300 lb an inch',
    query: plain,
    expect: { availableLbPerAc: '1200' },
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix D, example',
    seen: 'print',
  },
  {
    name: '14,000 lb at 1,000 lb a day',
    query:
      'today=2026-07-01&height=8in&stop-height=4in&density-from=own&density=350lb/ac/in&eaten-from=own&own-eaten=100pct&area=10ac&stock.kind=cow-nursing&stock.count=40&stock.weight=1000lb&stock.intake=2.5pct',
    expect: { demandLbPerDay: '1000', eatenLb: '14000', lastsDays: '14', wholeDays: '14' },
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix D, example',
    seen: 'print',
  },
  {
    name: 'mixed pasture, good: the middle of 250 to 300 lb an inch',
    query: mixed,
    expect: { usedLbPerAcIn: '275', 'rangeEnds.0.endLbPerAcIn': '250', 'rangeEnds.1.endLbPerAcIn': '300' },
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix D, table',
    seen: 'print',
  },
  ...shares.map(
    ([query, eatenPercent, source, where]): Case => ({
      name: `share eaten, ${query.replace('eaten-from=', '')}`,
      query,
      expect: { eatenPercent },
      source,
      where,
      seen: 'print',
    }),
  ),
  {
    name: 'ends of the share eaten in a pasture grazed until it is gone',
    query: 'eaten-from=until-gone',
    expect: { 'rangeEnds.0.endEatenPercent': '30', 'rangeEnds.1.endEatenPercent': '40' },
    source: 'uga-forage-team-2021',
    where: 'Utilization in the text, continuous',
    seen: 'print',
  },
  worked('25 acres, own pounds an inch, 60 % eaten', `${plain}&eaten-from=own&own-eaten=60pct`, {
    demandLbPerDay: '1250',
    eatenLb: '18000',
    growthLbPerDay: '0',
    lastsDays: '14.4',
    'rangeEnds.0.endDays': '10.8',
    'rangeEnds.1.endDays': '19.5',
    wholeDays: '14',
    lowWholeDays: '10',
    highWholeDays: '19',
    shortDays: '30.6',
    wholeShortDays: '31',
    'goingOn.0.exactHead': '27.2',
    'goingOn.1.exactHead': '32.2',
    'goingOn.2.exactHead': '39.5',
    'goingOn.0.goHead': '28',
    'goingOn.1.goHead': '33',
    'goingOn.2.goHead': '40',
    lastSellDays: '4',
  }),
  worked('the same, grazed until it is gone', plain, {
    eatenLb: '10500',
    lastsDays: '8.4',
    'rangeEnds.0.endDays': '5.4',
    'rangeEnds.1.endDays': '13.0',
  }),
  worked('60 acres by the list, bulls, growth of 10 lb an acre', mixed, {
    demandLbPerDay: '1482.25',
    eatenLb: '35640',
    growthLbPerDay: '288',
    lastsDays: '29.8',
    'rangeEnds.0.endDays': '19.9',
    'rangeEnds.1.endDays': '45.8',
    wholeDays: '29',
    lowWholeDays: '19',
    highWholeDays: '45',
    shortDays: '43.2',
    'goingOn.0.exactHead': '22.6',
    'goingOn.1.exactHead': '25.0',
    'goingOn.2.exactHead': '28.0',
    goTodayHead: '23',
    missingHead: '3',
  }),
  worked('30 acres, nearly over', thin, {
    demandLbPerDay: '1800',
    eatenLb: '10725',
    growthLbPerDay: '97.5',
    lastsDays: '6.3',
    'rangeEnds.0.endDays': '3.6',
    'rangeEnds.1.endDays': '10.5',
    wholeDays: '6',
    lowWholeDays: '3',
    highWholeDays: '10',
    shortDays: '12.7',
    goTodayHead: '38',
    missingHead: '28',
  }),
  worked(
    '40 acres, growth of 40 lb an acre: 900 lb eaten a day, 960 grown',
    'area=40ac&height=8in&stop-height=4in&stand=mixed-pasture&condition=good&eaten-from=own&own-eaten=60pct&stock.kind=cow-dry&stock.count=30&stock.weight=1200lb&stock.intake=2.5pct&growth=40lb/ac/d',
    { demandLbPerDay: '900', growthLbPerDay: '960', verdict: 'keeps-up' },
  ),
]);
