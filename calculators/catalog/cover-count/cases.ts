import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const counted = (plant: number, of: number, grazing = 'moderate'): string => `plant=${plant}&litter=0&rock=0&bare=${of - plant}&grazing=${grazing}`;

/** Exact intervals as printed, in percent. */
const intervals = [
  [3, 20, '3.21', '37.89'],
  [42, 100, '32.20', '52.29'],
] as const;
const computedIntervals = [
  [0, 10, '0.00', '30.84971'],
  [1, 10, '0.2528579', '44.50161'],
  [2, 10, '2.5210726', '55.60955'],
  [3, 10, '6.6739511', '65.24529'],
  [4, 10, '12.1552258', '73.76219'],
  [682, 925, '70.76683', '76.54066'],
] as const;

const notes = { source: 'tr55-1986', seen: 'transcription' } as const;
const humid = [
  [49, 'rested', 'poor'],
  [90, 'heavy', 'poor'],
  [50, 'moderate', 'fair'],
  [75, 'light', 'fair'],
  [76, 'light', 'good'],
] as const;
const dry = [
  [29, 'poor'],
  [30, 'fair'],
  [70, 'fair'],
  [71, 'good'],
] as const;

export default defineCases(definition, [
  {
    name: '44 of 100 foot marks',
    query: counted(44, 100),
    expect: { coveredPercent: '44' },
    source: 'missouri-g1570',
    where: 'counting the marks',
    seen: 'computed',
  },
  {
    name: '40 of 100 knots, litter only',
    query: 'plant=0&litter=40&rock=0&bare=60',
    expect: { coveredPercent: '40' },
    source: 'illinois-60-ways',
    where: 'page 4, residue cover in the field',
    seen: 'computed',
  },
  {
    name: 'ten points, one at a plant base, six of them under leaves: at the ground 10 % grass and 90 % bare',
    query: counted(1, 10),
    expect: { 'kinds.0.sharePercent': '10', 'kinds.3.sharePercent': '90', coveredPercent: '10' },
    source: 'idaho-point-cover-2009',
    where: 'ten-point sample, row for ground',
    seen: 'print',
  },
  ...intervals.map(
    ([plant, of, coveredLowPercent, coveredHighPercent]): Case => ({
      name: `exact interval of ${plant} in ${of}`,
      query: counted(plant, of),
      expect: { coveredLowPercent, coveredHighPercent },
      source: 'codingace-exact-interval',
      where: 'example data table',
      seen: 'print',
    }),
  ),
  ...computedIntervals.map(
    ([plant, of, sodLowPercent, sodHighPercent]): Case => ({
      name: `exact interval of ${plant} in ${of} by another program`,
      query: counted(plant, of),
      expect: { sodLowPercent, sodHighPercent },
      source: 'r-binom-test',
      where: 'binom.test of R, and binom.exact of its package binom',
      seen: 'computed',
    }),
  ),
  ...humid.map(
    ([plant, grazing, condition]): Case => ({
      name: `pasture, ${plant} % covered, grazing ${grazing}`,
      query: counted(plant, 100, grazing),
      expect: { condition },
      where: 'table 2-2c, notes on pasture',
      ...notes,
    }),
  ),
  ...dry.map(
    ([plant, condition]): Case => ({
      name: `dry range, ${plant} % covered`,
      query: `country=dry&${counted(plant, 100, 'light')}`,
      expect: { condition },
      where: 'table 2-2d, notes',
      ...notes,
    }),
  ),
]);
