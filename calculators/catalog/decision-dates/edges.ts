import { defineEdges, edge, turns } from '../../kit/edges.ts';
import definition from './definition.ts';
import { demoRain } from './inputs.ts';

/** The first years of the demo place's rain, with the line of headings. */
const firstYears = (years: number): string =>
  demoRain
    .split('\n')
    .slice(0, years + 1)
    .join('\n');

export default defineEdges(definition, {
  limits: {
    grassLbPerAc: [100, 20000],
    feedDays: [10, 366],
    herdLbPerDay: [10, 1000000],
    rainRecord: [0, 60],
    stationIn: [0, 40],
    rainSoFarIn: [0, 120],
    triggerPercent: [30, 100],
    'steps.leaveHead': [0, 20000],
    'steps.eachLbPerDay': [0, 100],
    'steps.hayTon': [0, 50000],
  },
  edges: [
    edge('Rain alone is half of', { raised: 'trigger=67.4pct', silent: 'trigger=67.3pct' }),
    edge('Rain alone is half of', { raised: 'today=2026-05-23', silent: 'today=2026-05-22' }),
    edge('Rain alone is half of', { raised: 'rain-so-far=8.79in', silent: 'rain-so-far=8.8in' }),
    edge('Every date of this plan', { raised: 'today=2026-08-16', silent: 'today=2026-08-15' }),
    edge('Every date of this plan', {
      on: 'today=2026-07-28',
      raised: 'steps.day=2026-05-15,2026-06-15,2026-07-10,2026-07-27',
      silent: 'steps.day=2026-05-15,2026-06-15,2026-07-10,2026-07-28',
    }),
    edge('Every date of this plan', {
      on: 'today=2026-07-24',
      raised: 'steps.day=2026-05-15,2026-06-15,2026-07-10&steps.step=look,sell-open,wean-early&steps.leave=,5,38&steps.each=,26lb/d,10lb/d',
      silent:
        'steps.day=2026-05-15,2026-06-15,2026-07-10,2026-08-01&steps.step=look,sell-open,wean-early,sell-sheep&steps.leave=,5,38,30&steps.each=,26lb/d,10lb/d,6.4lb/d',
    }),
    edge('The record is short of', { raised: 'since-month=jul', silent: '' }),
    edge('Medians of the months give', { raised: 'rain-from=station', silent: '' }),
    edge('One date comes when nine', {
      raised: 'steps.day=2026-09-06,2026-06-15,2026-07-10,2026-08-01,2026-08-15',
      silent: 'steps.day=2026-09-05,2026-06-15,2026-07-10,2026-08-01,2026-08-15',
    }),
    edge('Calves under about three months', {
      raised: 'steps.day=2026-05-15,2026-06-15,2026-07-10&steps.step=look,sell-open,wean-early',
      silent: 'steps.day=2026-05-15,2026-06-15&steps.step=look,sell-open',
    }),
    edge('Bring hungry stock onto new', {
      raised: '',
      silent:
        'steps.day=2026-05-15,2026-06-15,2026-07-10,2026-08-01&steps.step=look,sell-open,wean-early,sell-sheep&steps.leave=,5,38,30&steps.each=,26lb/d,10lb/d,6.4lb/d',
    }),
    edge('Before anything is sold, look', { raised: 'steps.day=2026-05-15,2026-06-15&steps.step=look,sell-open', silent: 'steps.day=2026-05-15' }),
    edge('If this is a hard', { raised: 'trigger=67.4pct', silent: 'trigger=67.3pct' }),
    edge('If this is a hard', { raised: 'today=2026-05-23', silent: 'today=2026-05-22' }),
    edge('If this is a hard', { raised: 'rain-so-far=8.79in', silent: 'rain-so-far=8.8in' }),
    edge('One date lies 12 months', {
      on: 'today=2026-11-20&end=2027-10-31&steps.step=look',
      raised: 'steps.day=2026-10-31',
      silent: 'steps.day=2026-11-01',
    }),
    edge('The day until which the', {
      on: 'today=2026-11-20&steps.day=2026-11-25&steps.step=look',
      raised: 'end=2027-11-20',
      silent: 'end=2027-11-19',
    }),
    edge('Growth ends and starts anew', {
      on: 'today=2026-11-20&end=2027-10-20&steps.step=look',
      raised: 'steps.day=2026-10-31',
      silent: 'steps.day=2026-11-01',
    }),
    edge('The grazing ends today or', { raised: 'end=2026-06-01', silent: 'end=2026-06-02' }),
    edge('The grazing ends today or', { raised: 'today=2026-10-31', silent: 'today=2026-10-30' }),
    edge('One date falls on the', { raised: 'end=2026-08-15', silent: 'end=2026-08-16' }),
    edge('One date falls on the', { on: 'end=2026-05-12', raised: 'today=2026-05-11', silent: 'today=2026-05-12' }),
    edge('One date falls on the', {
      raised: 'steps.day=2026-10-31,2026-06-15,2026-07-10,2026-08-01,2026-08-15',
      silent: 'steps.day=2026-10-30,2026-06-15,2026-07-10,2026-08-01,2026-08-15',
    }),
    edge('The months must come in', { raised: 'best-month=jan', silent: '' }),
    edge('This record holds fewer than', { raised: { records: { rainRecord: firstYears(2) } }, silent: { records: { rainRecord: firstYears(3) } } }),
    edge('These steps spare nearly all', { raised: 'herd=738lb/d', silent: 'herd=739lb/d' }),
    edge('These steps spare nearly all', {
      on: 'steps.step=sell-sheep,sell-open,wean-early,sell-sheep,buy-hay&steps.each=26lb/d,26lb/d,10lb/d,6.4lb/d,',
      raised: 'steps.leave=45,5,38,30,',
      silent: 'steps.leave=44,5,38,30,',
    }),
    turns('ahead', { past: 'today=2026-08-16', ahead: 'today=2026-08-15' }),
    turns('rainSays', { 'not-begun': 'today=2026-02-28', over: 'today=2026-03-01' }, { on: 'rain-from=station' }),
    turns('rainSays', { over: 'trigger=67.3pct', under: 'trigger=67.4pct' }),
    turns(
      'rainSays',
      { 'too-early': 'station=2in,2in,0in,0in,0in,0in,3in,2in,2in,2in,2in,2in', over: 'station=2in,2in,0in,0in,0.01in,0in,3in,2in,2in,2in,2in,2in' },
      { on: 'rain-from=station', within: 0.01 },
    ),
  ],
});
