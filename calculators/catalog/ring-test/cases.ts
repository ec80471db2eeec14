import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const page = { source: 'symbiosis-ring-page', where: 'one inch of water', seen: 'print' } as const;
const apart = { source: 'nist-sematech-handbook', where: 'two-sample t interval on logarithms by SciPy, turned over', seen: 'computed' } as const;
const inch = 'bore=6in&water=463.3ml';
const ring = (minutes: number): string => `${inch}&rings.first=3min&rings.pours=twice&rings.second=${minutes}min&rings.end=gone`;

/** Minutes for an inch of water, and the class whose printed limits in inches an hour that rate lies between. */
const classes = [
  [2, 'very-rapid'],
  [6, 'rapid'],
  [20, 'moderately-rapid'],
  [60, 'moderate'],
  [150, 'moderately-slow'],
  [600, 'slow'],
] as const;
const kit = [
  [3, '20'],
  [10, '6'],
  [30, '2'],
] as const;

export default defineCases(definition, [
  {
    name: '444 mL in a 6-inch ring stands an inch deep',
    query: 'bore=6in&water=444ml',
    expect: { depthIn: '1' },
    ...page,
    differs: { by: '0.05', because: '444 mL is an inch only in a bore of 5.87 in; the page calls the ring 6 inches' },
  },
  ...classes.map(
    ([minutes, rateClass]): Case => ({
      name: `an inch in ${minutes} minutes`,
      query: ring(minutes),
      expect: { rateClass },
      source: 'usepa-1981-permeability',
      where: 'classes in inches an hour',
      seen: 'transcription',
    }),
  ),
  ...kit.map(
    ([minutes, middleInPerHr]): Case => ({
      name: `an inch in ${minutes} minutes, inches an hour`,
      query: ring(minutes),
      expect: { middleInPerHr },
      source: 'soil-quality-test-kit-2001',
      where: 'classes in minutes per inch',
      seen: 'memory',
    }),
  ),
  {
    name: 'a ring filled 3 in deep by three true inches of a 6-inch bore',
    query: 'bore-from=filled&fill-water=1389.9ml&fill-depth=3in',
    expect: { ringIn: '6.000' },
    source: 'symbiosis-ring-page',
    where: 'volume of a true inch, worked out apart',
    seen: 'computed',
  },
  {
    name: 'three rings beside four of another visit: ratio and its range',
    query:
      'bore=6in&water=463.333ml&rings.first=75min,40min,28.571429min&rings.pours=once,once,once&rings.end=gone,gone,gone&beside=visit&others.then=1.9in/hr,4.4in/hr,3in/hr,2.2in/hr',
    expect: { middleInPerHr: '1.3608', ratioTimes: '0.4993', lowRatioTimes: '0.2176', highRatioTimes: '1.1456', verdict: 'chance' },
    ...apart,
  },
  {
    name: 'three rings beside three that vary by 80 percent: what is still scatter',
    query: 'beside=place&others.then=0.8in/hr,1.5in/hr,2.1in/hr',
    expect: { scatterTimes: '4.9257' },
    ...apart,
  },
]);
