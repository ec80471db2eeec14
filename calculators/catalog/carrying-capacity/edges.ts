import { defineEdges, edge, shows, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

/** In a normal year 12.03 acres carry one cow, and in a poor one twice as many. */
const oneCow = 'herd.kind=cow-nursing&herd.count=1&pastures.normal=1600lb/ac&pastures.poor=800lb/ac';

export default defineEdges(definition, {
  limits: {
    'pastures.areaAc': [0.1, 100000],
    'pastures.waterDistanceMi': [0, 10],
    'pastures.slopePercent': [0, 100],
    'pastures.ownUsablePercent': [0, 100],
    'pastures.normalLbPerAc': [0, 20000],
    'pastures.poorLbPerAc': [0, 20000],
    'pastures.usualHead': [0, 20000],
    'pastures.lastedDays': [0, 366],
    usualEatenLbPerDay: [0.2, 100],
    poorPercent: [0, 100],
    'herd.countHead': [1, 20000],
    'herd.weightLb': [20, 3500],
    'herd.intakePercent': [0.5, 8],
    soFarPercent: [0, 150],
    restPercent: [0, 100],
    harvestPercent: [5, 80],
    gonePercent: [5, 90],
    eatenOfGonePercent: [10, 100],
    grazedPercent: [10, 100],
  },
  edges: [
    edge('By these numbers the herd', { on: 'harvest=40pct', raised: 'so-far=3.74pct', silent: 'so-far=3.75pct' }),
    edge('By these numbers the herd', { on: 'harvest=40pct&so-far=24.2pct', raised: 'rest=40.6pct', silent: 'rest=40.7pct' }),
    edge('By that day it is', { on: 'harvest=40pct', raised: 'so-far=44.8pct', silent: 'so-far=44.9pct' }),
    edge('By that day it is', { raised: 'harvest=29pct', silent: 'harvest=29.1pct' }),
    edge('By that day it is', { on: 'harvest=40pct&to=2026-12-31', raised: 'go=2026-08-14', silent: 'go=2026-08-13' }),
    edge('Before you sell, check that', { on: 'harvest=40pct&rest=100pct', raised: 'so-far=97.4pct', silent: 'so-far=97.5pct' }),
    edge('Before you sell, check that', { on: 'harvest=40pct&so-far=100pct', raised: 'rest=96.2pct', silent: 'rest=96.3pct' }),
    edge('Before you sell, check that', { on: 'harvest=40pct&today=2026-10-01&go=2026-10-01', raised: 'from=2026-05-27', silent: 'from=2026-05-28' }),
    edge('If this is a hard', { on: 'harvest=40pct&rest=100pct', raised: 'so-far=97.4pct', silent: 'so-far=97.5pct' }),
    edge('If this is a hard', { on: 'harvest=40pct&so-far=100pct', raised: 'rest=96.2pct', silent: 'rest=96.3pct' }),
    edge('If this is a hard', { on: 'harvest=40pct&today=2026-10-01&go=2026-10-01', raised: 'from=2026-05-27', silent: 'from=2026-05-28' }),
    edge('On one of the pastures a', {
      raised: 'pastures.poor=749lb/ac,1700lb/ac,800lb/ac,2600lb/ac,1500lb/ac,1100lb/ac',
      silent: 'pastures.poor=750lb/ac,1700lb/ac,800lb/ac,2600lb/ac,1500lb/ac,1100lb/ac',
    }),
    edge('On one of the pastures a', {
      on: 'pastures.normal=1600lb/ac&pastures.poor=749lb/ac',
      raised: 'herd.kind=stocker',
      silent: 'herd.kind=doe-dry',
    }),
    edge('On one of the pastures a', {
      on: 'pastures.normal=1600lb/ac,1600lb/ac',
      raised: 'pastures.poor=749lb/ac,750lb/ac',
      silent: 'pastures.poor=749lb/ac,749lb/ac',
    }),
    edge('On more than one of the', {
      on: 'pastures.normal=1600lb/ac,1600lb/ac',
      raised: 'pastures.poor=749lb/ac,749lb/ac',
      silent: 'pastures.poor=749lb/ac,750lb/ac',
    }),
    edge('On more than one of the', {
      on: 'pastures.normal=1600lb/ac,1600lb/ac&pastures.poor=749lb/ac,749lb/ac',
      raised: 'herd.kind=stocker',
      silent: 'herd.kind=doe',
    }),
    // Of pastures that are not asked for, nothing is said.
    edge('On one of the pastures a', {
      on: 'pastures.poor=749lb/ac,1700lb/ac,800lb/ac,2600lb/ac,1500lb/ac,1100lb/ac',
      raised: 'yield-from=survey',
      silent: 'yield-from=stock-days',
    }),
    edge('On one of the pastures the', {
      on: 'pastures.normal=1600lb/ac&pastures.poor=1601lb/ac',
      raised: 'yield-from=survey',
      silent: 'yield-from=stock-days',
    }),
    edge('More than half of the', { on: 'harvest=51pct', raised: 'yield-from=survey', silent: 'yield-from=stock-days' }),
    edge('On one of the pastures the', { on: 'pastures.normal=1600lb/ac', raised: 'pastures.poor=1601lb/ac', silent: 'pastures.poor=1600lb/ac' }),
    // 2.5 parts of 2.739 squared are a third.
    edge('On one pasture or more,', { raised: 'pastures.water-distance=2.74mi', silent: 'pastures.water-distance=2.73mi' }),
    // At 2.5 miles 40 % counts by water; past 10 % of slope seven tenths of that.
    edge('On one pasture or more,', { on: 'pastures.water-distance=2.5mi', raised: 'pastures.slope=10.1pct', silent: 'pastures.slope=10pct' }),
    edge('On one pasture or more,', { on: 'pastures.water-distance=9mi', raised: 'reach-from=guide', silent: 'reach-from=own' }),
    edge('The share eaten decides this', { raised: 'harvest=26pct', silent: 'harvest=25pct' }),
    edge('More than half of the', { raised: 'harvest=51pct', silent: 'harvest=50pct' }),
    edge('More than half of the', { on: 'yield-means=gone-of-growth&eaten-of-gone=100pct', raised: 'gone=51pct', silent: '' }),
    edge('More than half of the', {
      on: 'yield-means=gone-of-growth&gone=84.6pct',
      raised: 'eaten-of-gone=59.2pct',
      silent: 'eaten-of-gone=59.1pct',
    }),
    edge('Distance and slope are counted', {
      raised: '',
      silent: 'herd.kind=cow-nursing,heifer,bull&herd.count=45,9,2&herd.weight=1250lb,950lb,1900lb&herd.intake=2.5pct,2.2pct,2pct',
    }),
    edge('The last day must come', {
      on: 'start-month=nov&best-month=mar&quit-month=may&from=2026-11-01&today=2026-12-01&go=2026-12-01',
      raised: 'to=2027-11-01',
      silent: 'to=2027-10-31',
    }),
    edge('Growth ends and starts anew', { raised: 'to=2027-03-01', silent: 'to=2027-02-28' }),
    edge('Growth ends and starts anew', { on: 'to=2027-03-01&today=2026-11-05&go=2026-11-05', raised: 'from=2026-10-31', silent: 'from=2026-11-01' }),
    edge('By this curve nothing grows', { on: 'to=2027-02-15&today=2026-11-05&go=2026-11-05', raised: 'from=2026-10-31', silent: 'from=2026-10-30' }),
    edge('The last day must come', { on: 'from=2026-06-20&today=2026-06-20&go=2026-06-20', raised: 'to=2026-06-20', silent: 'to=2026-06-21' }),
    edge('Today must lie between turn-in', { raised: 'from=2026-06-21', silent: 'from=2026-06-20' }),
    edge('Today must lie between turn-in', { raised: 'today=2026-10-31', silent: 'today=2026-10-30' }),
    edge('The day by which they', { raised: 'go=2026-10-31', silent: 'go=2026-10-30' }),
    edge('The day by which they', { raised: 'today=2026-07-11', silent: 'today=2026-07-10' }),
    edge('The months must come in', { raised: 'quit-month=mar', silent: '' }),
    tells('normal year carries less than one head', { on: oneCow, told: 'pastures.area=12ac', untold: 'pastures.area=12.1ac' }),
    tells('less than one head, and less still in a poor year', { on: oneCow, told: 'pastures.area=12ac', untold: 'pastures.area=12.1ac' }),
    tells('a poor one less than one head', { on: oneCow, told: 'pastures.area=24ac', untold: 'pastures.area=24.1ac' }),
    shows('nowGoHead', { shown: 'go=2026-06-21', hidden: 'go=2026-06-20', on: 'harvest=40pct' }),
    tells(', all 45', { told: 'so-far=95.2pct', untold: 'so-far=95.3pct', on: 'harvest=40pct' }),
    tells('gone today it would be', { told: 'go=2026-06-21', untold: 'go=2026-06-20', on: 'harvest=40pct' }),
    tells('gone already', { told: 'harvest=16.3pct', untold: 'harvest=16.4pct' }),
    turns('verdict', { 'too-late': 'so-far=44.8pct', 'some-go': 'so-far=44.9pct' }, { on: 'harvest=40pct' }),
    turns('verdict', { 'all-stay': 'so-far=97.5pct', 'some-go': 'so-far=97.4pct' }, { on: 'harvest=40pct&rest=100pct' }),
    turns(
      'verdict',
      { 'all-stay': 'to=2026-10-02', 'too-late': 'to=2026-10-03' },
      {
        on: 'harvest=40pct&yield-basis=oven-dry&pastures.area=1ac&pastures.water-distance=0.2mi&pastures.slope=2pct&herd.count=10,9,2,60&herd.weight=1200lb,950lb,1900lb,160lb&from=2026-10-01&today=2026-10-01&so-far=100pct&go=2026-10-01',
      },
    ),
  ],
});
