import { formula, lookup, type Step, tex } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { Values } from './measureSteps.ts';

type Results = ReturnType<typeof compute>;
const isPlate = ({ way }: Values): boolean => way === 'plate';
const fit = 'nist-norris, a straight line by least squares';

/** From clips under the plate to a line of the place's own, and from the line to a mass for each reading. */
export const plateSteps: readonly Step<Values, Results>[] = [
  {
    kind: 'rows',
    of: 'pairLines',
    says: 'Each clip under the plate, how far its reading and its weight are off their means, and how far it lies off the line that comes out below.',
    onlyWhen: isPlate,
    source: fit,
    formulas: {
      pairLbPerAc: tex`\q{gramLbPerAc} \times \q{greenG} \times \q{dryPercent} / 100`,
      readingSquaredRatio: tex`(\q{pairReadingCount} - \q{pairMeanReadingCount})^2`,
      productRatio: tex`(\q{pairReadingCount} - \q{pairMeanReadingCount}) \times (\q{pairLbPerAc} - \q{pairMeanLbPerAc})`,
      offLineRatio: tex`(\q{pairLbPerAc} - \q{plateStartLbPerAc} - \q{plateSlopeLbPerAc} \times \q{pairReadingCount})^2`,
    },
    sums: {
      pairReadingSumCount: 'pairReadingCount',
      pairSumLbPerAc: 'pairLbPerAc',
      readingSpreadRatio: 'readingSquaredRatio',
      productSumRatio: 'productRatio',
      offLineSumRatio: 'offLineRatio',
    },
  },
  formula('pairMeanReadingCount', tex`\frac{\q{pairReadingSumCount}}{\q{pairCount}}`, {
    says: 'The mean reading of {pairCount} clips.',
    onlyWhen: isPlate,
  }),
  formula('pairMeanLbPerAc', tex`\frac{\q{pairSumLbPerAc}}{\q{pairCount}}`, { says: 'And their mean weight.', onlyWhen: isPlate }),
  formula('plateSlopeLbPerAc', tex`\frac{\q{productSumRatio}}{\q{readingSpreadRatio}}`, {
    says: 'What one more on the plate is worth.',
    onlyWhen: isPlate,
    source: fit,
  }),
  formula('plateStartLbPerAc', tex`\q{pairMeanLbPerAc} - \q{plateSlopeLbPerAc} \times \q{pairMeanReadingCount}`, {
    says: 'The line goes through the middle of the clips.',
    onlyWhen: isPlate,
    source: fit,
  }),
  {
    kind: 'rows',
    of: 'readingLines',
    says: 'Dry forage on an acre by each reading, and how far each is off their mean.',
    onlyWhen: isPlate,
    source: 'dillard-2016, calibration by linear regression',
    formulas: {
      readLbPerAc: tex`\max(0, \q{plateStartLbPerAc} + \q{plateSlopeLbPerAc} \times \q{readingCount})`,
      offSquaredRatio: tex`(\frac{\q{readLbPerAc} - \q{clippedLbPerAc}}{\q{clippedLbPerAc}})^2`,
    },
    sums: { readingSumCount: 'readingCount', plotSumLbPerAc: 'readLbPerAc', offSumRatio: 'offSquaredRatio' },
  },
  formula('meanReadingCount', tex`\frac{\q{readingSumCount}}{\q{sampleCount}}`, { says: 'The mean reading.', onlyWhen: isPlate }),
  formula('scatterLbPerAc', tex`\sqrt{\frac{\q{offLineSumRatio}}{\q{pairCount} - 2}}`, {
    says: 'How far the clips scatter about the line.',
    onlyWhen: isPlate,
    source: fit,
  }),
  lookup('lineTRatio', {
    says: 'Student’s t for {pairCount} clips less two, to hold {surePercent} of the time.',
    onlyWhen: isPlate,
    source: 'missouri-sample-size',
  }),
  formula(
    'lineOffLbPerAc',
    tex`\q{lineTRatio} \times \q{scatterLbPerAc} \times \sqrt{\frac{1}{\q{pairCount}} + \frac{(\q{meanReadingCount} - \q{pairMeanReadingCount})^2}{\q{readingSpreadRatio}}}`,
    {
      says: 'So at the mean reading the line itself may be off by this much, up or down. The range takes it on top of how much the places differ.',
      onlyWhen: isPlate,
      source: fit,
    },
  ),
];
