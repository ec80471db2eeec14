import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const oneLayer = (ratio: string, more: string): string => `layers.thickness=12in&layers.survey=${ratio}&roots-most=12in&roots-deepest=12in&${more}`;

/** Inches missing from a foot, as two sheets print them: the dry end stands on the most that such a soil holds, the wet end on the least. */
const feelCases = (source: string, most: string, least: string, printed: readonly (readonly [feel: string, high: string, low: string])[]): Case[] =>
  printed.flatMap(([feel, high, low]): Case[] => [
    {
      name: `${feel.replace('-', ' ')}, dry end`,
      query: oneLayer(most, `layers.feel=${feel}`),
      expect: { highMissingIn: high },
      source,
      where: 'in./ft. depleted',
      seen: 'print',
    },
    {
      name: `${feel.replace('-', ' ')}, wet end`,
      query: oneLayer(least, `layers.feel=${feel}`),
      expect: { lowMissingIn: low },
      source,
      where: 'in./ft. depleted',
      seen: 'print',
    },
  ]);

const tutorial = { source: 'precisionag-irrigation-tutorial', seen: 'print' } as const;
const fourFeet = 'layers.thickness=48in&layers.survey=5/48&roots-most=48in&roots-deepest=48in';
/** 160 mm held, 55 mm missing on the first morning, 6 mm a day used, 40 percent of it easy to take. */
const exampleDays = [
  ['97', '2'],
  ['91', '3'],
  ['85', '4'],
  ['80', '5'],
  ['75', '6'],
  ['70', '7'],
  ['66', '8'],
  ['62', '9'],
] as const;

export default defineCases(definition, [
  {
    name: 'three layers of 0.75, 1.60 and 2.20 in a foot',
    query: 'layers.thickness=12in,24in,12in&layers.survey=1/16,2/15,11/60&roots-most=48in&roots-deepest=48in',
    expect: { 'lines.0.layerHoldsIn': '0.75', 'lines.1.layerHoldsIn': '3.20', 'lines.2.layerHoldsIn': '2.20', holdsIn: '6.15' },
    where: 'question 7',
    ...tutorial,
  },
  { name: '1.25 in a foot, roots 4 ft deep', query: fourFeet, expect: { holdsIn: '5' }, where: 'question 8', ...tutorial },
  {
    name: 'the same, 60 percent used',
    query: `${fourFeet}&layers.feel=measured&layers.filled=40pct`,
    expect: { missingIn: '3' },
    where: 'question 9',
    ...tutorial,
  },
  { name: 'field capacity 48, wilting point 28 percent', query: oneLayer('0.2', ''), expect: { holdsIn: '2.40' }, where: 'question 2', ...tutorial },
  {
    name: 'field capacity 35.1, wilting point 10.4 percent',
    query: oneLayer('0.247', ''),
    expect: { holdsIn: '2.96' },
    source: 'arizona-swes200-quiz',
    where: 'question 2',
    seen: 'transcription',
  },
  {
    name: 'a zone of 1.4 in, 70 percent down',
    query: oneLayer('7/60', 'layers.feel=measured&layers.filled=30pct'),
    expect: { missingIn: '1.0' },
    source: 'nrcs-feel-montana',
    where: 'example, first line',
    seen: 'print',
  },
  ...feelCases('nrcs-feel-loam', '7/40', '1/8', [
    ['dry', '2.1', '1.1'],
    ['slightly-moist', '1.6', '0.8'],
    ['moist', '1.1', '0.4'],
    ['wet', '0.5', '0.0'],
    ['full', '0.0', '0.0'],
  ]),
  ...feelCases('nrcs-feel-clay', '1/5', '2/15', [
    ['dry', '2.4', '1.2'],
    ['slightly-moist', '1.8', '0.8'],
    ['moist', '1.2', '0.4'],
    ['wet', '0.6', '0.0'],
    ['full', '0.0', '0.0'],
  ]),
  ...exampleDays.map(
    ([growth, growthDays]): Case => ({
      name: `whole days until use is down to ${growth} percent`,
      query: `layers.thickness=800mm&layers.survey=0.2&layers.feel=measured&layers.filled=65.625pct&roots-most=800mm&roots-deepest=800mm&use=6mm/d&easy-from=own&easy=40pct&growth=${growth}pct`,
      expect: { growthDays },
      source: 'allen-1998',
      where: 'example 37, which steps by whole days',
      seen: 'print',
    }),
  ),
  {
    name: 'sun above the air, July, 45 degrees north',
    query: 'use-from=weather&month=july&latitude=north-45',
    expect: { sunMj: '40.6' },
    source: 'allen-1998',
    where: 'table 2.6, recomputed by another program',
    seen: 'computed',
  },
]);
