import type { ValuesOf } from '../../kit/inputs.ts';
import { formula, lookup, tex, type Working, when } from '../../kit/steps.ts';
import { type compute, fewestDecileYears, fewestIndexYears } from './compute.ts';
import type { inputs } from './inputs.ts';

export type Results = ReturnType<typeof compute>;
export type All = ValuesOf<typeof inputs> & Results;

export const isRanked = ({ basis }: All): boolean => basis === 'index' || basis === 'ranks';
export const hasMedian = (values: All): boolean => (isRanked(values) || values.basis === 'medians') && values.medianIn > 0;
export const hasMean = (values: All): boolean => isRanked(values) && values.meanIn > 0;
export const hasIndex = ({ basis }: All): boolean => basis === 'index';
export const hasQuarter = (values: All): boolean => isRanked(values) && values.yearsCount >= fewestDecileYears;
export const hasDecile = (values: All): boolean => isRanked(values) && values.recordCount >= fewestIndexYears;

export const steps: Working<All, Results> = [
  lookup('totalIn', { says: 'Rain from {beginsDay} to {endsDay}.', source: 'our own, added up from the record' }),
  lookup('yearsCount', {
    says: 'Years that judge it: the same months, read well enough, this one {ownYear}. In {leftOutCount} others too little was read.',
    onlyWhen: ({ basis }) => basis !== 'medians',
    source: 'our own, counted',
  }),
  when(isRanked, [
    lookup('drierCount', { says: 'Of those years, the ones that had less than {totalIn}.', source: 'our own, counted' }),
    formula('rankCount', tex`\q{drierCount} + 1`, { says: 'So this is its place from the dry end.' }),
  ]),
  when(hasMedian, [
    lookup('medianIn', {
      says: 'The normal to hold it against: the median.',
      source: 'common practice, the middle of the years, or the station’s medians of these months added up',
    }),
    formula('ofMedianPercent', tex`\frac{100 \times \q{totalIn}}{\q{medianIn}}`, { says: 'Percent of that normal.', source: 'common practice' }),
  ]),
  formula('ofMeanPercent', tex`\frac{100 \times \q{totalIn}}{\q{meanIn}}`, {
    says: 'Percent of the mean, which a few wet years lift above the middle: {meanIn}.',
    onlyWhen: hasMean,
    source: 'common practice',
  }),
  when(hasQuarter, [
    formula('quarterPlaceCount', tex`0.25 \times (\q{yearsCount} + 1)`, {
      says: 'Place of the driest quarter among the {yearsCount} years, counted from the dry end.',
      source: 'hyndman-fan-1996, definition 6',
    }),
    lookup('quarterBelowIn', {
      says: 'The year just below that place; the one above it had {quarterAboveIn}.',
      source: 'our own, the record in order',
    }),
    lookup('quarterIn', { says: 'On the line between the two: what three years in four reach.', source: 'hyndman-fan-1996, definition 6' }),
  ]),
  lookup('decile', {
    says: 'Decile: one more than the tenths (by the same rule, place p times n + 1) that {totalIn} lies above.',
    onlyWhen: hasDecile,
    source: 'gibbs-maher-1967, boundaries by hyndman-fan-1996, definition 6',
  }),
  when(hasIndex, [
    formula('gap', tex`\ln(\q{wetMeanIn}) - \q{meanLog}`, {
      says: 'The index: the spread of the years with rain, from their mean and the mean of their logarithms.',
      source: 'thom-1958, eq. 22',
    }),
    formula('shape', tex`\frac{1 + \sqrt{1 + 4 \times \q{gap} / 3}}{4 \times \q{gap}}`, {
      says: 'Shape of the gamma curve through them.',
      source: 'thom-1958, eq. 22',
    }),
    formula('scaleIn', tex`\frac{\q{wetMeanIn}}{\q{shape}}`, { says: 'Its scale.', source: 'thom-1958, eq. 22' }),
    lookup('gammaRatio', {
      says: 'Share of that curve below {totalIn}: the incomplete gamma function.',
      source: 'edwards-mckee-1997, computation of the index',
    }),
    formula('belowRatio', tex`\q{zeroRatio} + (1 - \q{zeroRatio}) \times \q{gammaRatio}`, {
      says: 'With the years without rain in these months counted in.',
      source: 'edwards-mckee-1997, computation of the index',
    }),
    lookup('index', {
      says: 'The place on the bell curve with that share below it, kept within 3 either way.',
      source: 'edwards-mckee-1997, computation of the index',
    }),
    formula('indexError', tex`\sqrt{\frac{1 + (\q{index})^2 / 2}{\q{yearsCount}}}`, {
      says: 'How far a record of {yearsCount} years can be off.',
      source: 'kite-1977, standard error of a normal quantile',
    }),
    formula('lowIndex', tex`\q{index} - 2 \times \q{indexError}`, {
      says: 'Two errors below; two above is {highIndex}. About nineteen such records in twenty hold the truth between.',
      source: 'common practice',
    }),
    lookup('verdict', { says: 'In the words of the published classes.', source: 'wmo-1090-2012, table of classes' }),
  ]),
];
