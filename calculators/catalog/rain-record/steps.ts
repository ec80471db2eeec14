import type { ValuesOf } from '../../kit/inputs.ts';
import type { Step } from '../../kit/steps.ts';
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

export const steps: readonly Step<All, Results>[] = [
  {
    kind: 'lookup',
    shows: 'totalIn',
    says: 'Rain from {beginsDay} to {endsDay}.',
    source: 'our own, added up from the record',
  },
  {
    kind: 'lookup',
    shows: 'yearsCount',
    says: 'Years that judge it: the same months, read well enough, this one {ownYear}. In {leftOutCount} others too little was read.',
    onlyWhen: ({ basis }) => basis !== 'medians',
    source: 'our own, counted',
  },
  {
    kind: 'lookup',
    shows: 'drierCount',
    says: 'Of those years, the ones that had less than {totalIn}.',
    onlyWhen: isRanked,
    source: 'our own, counted',
  },
  {
    kind: 'formula',
    shows: 'rankCount',
    says: 'So this is its place from the dry end.',
    onlyWhen: isRanked,
    ways: [{ formula: String.raw`\q{drierCount} + 1` }],
  },
  {
    kind: 'lookup',
    shows: 'medianIn',
    says: 'The normal to hold it against: the median.',
    onlyWhen: hasMedian,
    source: 'common practice, the middle of the years, or the station’s medians of these months added up',
  },
  {
    kind: 'formula',
    shows: 'ofMedianPercent',
    says: 'Percent of that normal.',
    onlyWhen: hasMedian,
    source: 'common practice',
    ways: [{ formula: String.raw`\frac{100 \times \q{totalIn}}{\q{medianIn}}` }],
  },
  {
    kind: 'formula',
    shows: 'ofMeanPercent',
    says: 'Percent of the mean, which a few wet years lift above the middle: {meanIn}.',
    onlyWhen: hasMean,
    source: 'common practice',
    ways: [{ formula: String.raw`\frac{100 \times \q{totalIn}}{\q{meanIn}}` }],
  },
  {
    kind: 'formula',
    shows: 'quarterPlaceCount',
    says: 'Place of the driest quarter among the {yearsCount} years, counted from the dry end.',
    onlyWhen: hasQuarter,
    source: 'hyndman-fan-1996, definition 6',
    ways: [{ formula: String.raw`0.25 \times (\q{yearsCount} + 1)` }],
  },
  {
    kind: 'lookup',
    shows: 'quarterBelowIn',
    says: 'The year just below that place; the one above it had {quarterAboveIn}.',
    onlyWhen: hasQuarter,
    source: 'our own, the record in order',
  },
  {
    kind: 'lookup',
    shows: 'quarterIn',
    says: 'On the line between the two: what three years in four reach.',
    onlyWhen: hasQuarter,
    source: 'hyndman-fan-1996, definition 6',
  },
  {
    kind: 'lookup',
    shows: 'decile',
    says: 'Decile: one more than the tenths (by the same rule, place p times n + 1) that {totalIn} lies above.',
    onlyWhen: hasDecile,
    source: 'gibbs-maher-1967, boundaries by hyndman-fan-1996, definition 6',
  },
  {
    kind: 'formula',
    shows: 'gap',
    says: 'The index: the spread of the years with rain, from their mean and the mean of their logarithms.',
    onlyWhen: hasIndex,
    source: 'thom-1958, eq. 22',
    ways: [{ formula: String.raw`\ln(\q{wetMeanIn}) - \q{meanLog}` }],
  },
  {
    kind: 'formula',
    shows: 'shape',
    says: 'Shape of the gamma curve through them.',
    onlyWhen: hasIndex,
    source: 'thom-1958, eq. 22',
    ways: [{ formula: String.raw`\frac{1 + \sqrt{1 + 4 \times \q{gap} / 3}}{4 \times \q{gap}}` }],
  },
  {
    kind: 'formula',
    shows: 'scaleIn',
    says: 'Its scale.',
    onlyWhen: hasIndex,
    source: 'thom-1958, eq. 22',
    ways: [{ formula: String.raw`\frac{\q{wetMeanIn}}{\q{shape}}` }],
  },
  {
    kind: 'lookup',
    shows: 'gammaRatio',
    says: 'Share of that curve below {totalIn}: the incomplete gamma function.',
    onlyWhen: hasIndex,
    source: 'edwards-mckee-1997, computation of the index',
  },
  {
    kind: 'formula',
    shows: 'belowRatio',
    says: 'With the years without rain in these months counted in.',
    onlyWhen: hasIndex,
    source: 'edwards-mckee-1997, computation of the index',
    ways: [{ formula: String.raw`\q{zeroRatio} + (1 - \q{zeroRatio}) \times \q{gammaRatio}` }],
  },
  {
    kind: 'lookup',
    shows: 'index',
    says: 'The place on the bell curve with that share below it, kept within 3 either way.',
    onlyWhen: hasIndex,
    source: 'edwards-mckee-1997, computation of the index',
  },
  {
    kind: 'formula',
    shows: 'indexError',
    says: 'How far a record of {yearsCount} years can be off.',
    onlyWhen: hasIndex,
    source: 'kite-1977, standard error of a normal quantile',
    ways: [{ formula: String.raw`\sqrt{\frac{1 + (\q{index})^2 / 2}{\q{yearsCount}}}` }],
  },
  {
    kind: 'formula',
    shows: 'lowIndex',
    says: 'Two errors below; two above is {highIndex}. About nineteen such records in twenty hold the truth between.',
    onlyWhen: hasIndex,
    source: 'common practice',
    ways: [{ formula: String.raw`\q{index} - 2 \times \q{indexError}` }],
  },
  {
    kind: 'lookup',
    shows: 'verdict',
    says: 'In the words of the published classes.',
    onlyWhen: hasIndex,
    source: 'wmo-1090-2012, table of classes',
  },
];
