import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, type Step, tex } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';
import { plateSteps } from './plateSteps.ts';
import { isClipping as needsFrame, isByHeight as takesHeights } from './ways.ts';

type Results = ReturnType<typeof compute>;
export type Values = ValuesOf<typeof inputs> & Results;
const isClipping = ({ way }: Values): boolean => needsFrame(way);
const isByHeight = ({ way }: Values): boolean => takesHeights(way);

/** From frame, scales and stick to a mean, and how far to trust it. */
export const measureSteps: readonly Step<Values, Results>[] = [
  byCase('frameAreaFt2', {
    says: 'Area inside the frame.',
    onlyWhen: isClipping,
    source: 'common practice',
    ways: [
      { when: ({ frame }) => frame === 'hoop-around', formula: tex`\frac{\q{aroundIn}^2}{4 \pi \times 144}` },
      { when: ({ frame }) => frame === 'hoop-across', formula: tex`\frac{\pi \times \q{acrossIn}^2}{4 \times 144}` },
      { when: ({ frame }) => frame === 'rectangle', formula: tex`\frac{\q{lengthIn} \times \q{widthIn}}{144}` },
      { formula: tex`\q{frameKnownFt2}` },
    ],
  }),
  formula('gramLbPerAc', tex`\frac{43560}{453.59237 \times \q{frameAreaFt2}}`, {
    says: 'An acre has 43,560 square feet and a pound 453.59 grams, so each gram in the frame is so many pounds on an acre.',
    onlyWhen: isClipping,
    source: 'common practice',
  }),
  lookup('stagePercent', {
    says: 'Air-dry weight of that grass at that stage. From memory.',
    onlyWhen: (values) => isClipping(values) && values.dryFrom === 'stage',
    source: 'nrph-2003, chapter 4',
  }),
  byCase('dryPercent', {
    says: 'Dry matter in the clippings.',
    onlyWhen: isClipping,
    source: 'umaine-pasture-lesson-1, appendix E',
    ways: [
      { when: ({ dryFrom }) => dryFrom === 'dried', formula: tex`\frac{100 \times (\q{dryG} - \q{plateG})}{\q{wetG} - \q{plateG}}` },
      { when: ({ dryFrom }) => dryFrom === 'known', formula: tex`\q{knownDryPercent}` },
      { formula: tex`\q{stagePercent} \times 90 / 100`, because: 'air-dry forage still holds about a tenth of water' },
    ],
  }),
  {
    kind: 'rows',
    of: 'plotLines',
    says: 'Dry forage on an acre by each plot, and how far each is off their mean.',
    onlyWhen: ({ way }) => way === 'clips',
    source: 'umaine-pasture-lesson-1, appendix E',
    formulas: {
      plotLbPerAc: tex`\q{gramLbPerAc} \times \q{greenG} \times \q{dryPercent} / 100`,
      offSquaredRatio: tex`(\frac{\q{plotLbPerAc} - \q{clippedLbPerAc}}{\q{clippedLbPerAc}})^2`,
    },
    sums: { plotSumLbPerAc: 'plotLbPerAc', offSumRatio: 'offSquaredRatio' },
  },
  ...plateSteps,
  formula('clippedLbPerAc', tex`\frac{\q{plotSumLbPerAc}}{\q{sampleCount}}`, {
    says: 'The mean of {sampleCount} places.',
    onlyWhen: ({ way }) => way === 'clips' || way === 'plate',
  }),
  {
    kind: 'rows',
    of: 'heightLines',
    says: 'Each height, and how far it is off their mean.',
    onlyWhen: isByHeight,
    formulas: { offSquaredRatio: tex`(\frac{\q{heightIn} - \q{meanHeightIn}}{\q{meanHeightIn}})^2` },
    sums: { heightSumIn: 'heightIn', offSumRatio: 'offSquaredRatio' },
  },
  formula('meanHeightIn', tex`\frac{\q{heightSumIn}}{\q{sampleCount}}`, { says: 'The mean of {sampleCount} heights.', onlyWhen: isByHeight }),
  {
    kind: 'rows',
    of: 'clipLines',
    says: 'What each clip says of an inch.',
    onlyWhen: ({ way }) => way === 'height-clips',
    source: 'common practice',
    formulas: {
      clipLbPerAc: tex`\q{gramLbPerAc} \times \q{greenG} \times \q{dryPercent} / 100`,
      clipLbPerAcIn: tex`\frac{\q{clipLbPerAc}}{\q{cutIn}}`,
    },
    sums: { cutSumIn: 'cutIn', clipSumLbPerAc: 'clipLbPerAc' },
  },
  lookup('lowLbPerAcIn', {
    says: 'The least that is printed for such a stand.',
    onlyWhen: ({ way }) => way === 'height-stand',
    source: 'umaine-pasture-lesson-1, appendix D',
  }),
  lookup('highLbPerAcIn', {
    says: 'The most that is printed for such a stand.',
    onlyWhen: ({ way }) => way === 'height-stand',
    source: 'umaine-pasture-lesson-1, appendix D',
  }),
  lookup('lowLbPerAcIn', {
    says: 'The least in an inch of any of your clips. The range takes it.',
    onlyWhen: ({ way }) => way === 'height-clips',
    source: 'our own',
  }),
  lookup('highLbPerAcIn', {
    says: 'The most in an inch of any of your clips. The range takes it.',
    onlyWhen: ({ way }) => way === 'height-clips',
    source: 'our own',
  }),
  byCase('usedLbPerAcIn', {
    says: 'Pounds in an inch.',
    onlyWhen: isByHeight,
    ways: [
      { when: ({ way }) => way === 'height-clips', formula: tex`\frac{\q{clipSumLbPerAc}}{\q{cutSumIn}}`, because: 'all your clips together' },
      { when: ({ way }) => way === 'height-known', formula: tex`\q{densityLbPerAcIn}` },
      { formula: tex`\frac{\q{lowLbPerAcIn} + \q{highLbPerAcIn}}{2}`, because: 'the middle of the printed figures' },
    ],
  }),
  formula('variationPercent', tex`100 \times \sqrt{\frac{\q{offSumRatio}}{\q{sampleCount} - 1}}`, {
    says: 'How much the places differ: their standard deviation, as a share of the mean.',
    source: 'missouri-sample-size',
  }),
  lookup('tRatio', { says: 'Student’s t for {sampleCount} places, to hold {surePercent} of the time.', source: 'missouri-sample-size' }),
  formula('closePercent', tex`\frac{\q{tRatio} \times \q{variationPercent}}{\sqrt{\q{sampleCount}}}`, {
    says: 'So the mean is good to within this much, up or down.',
    source: 'missouri-sample-size',
  }),
  lookup('neededPlots', {
    says: 'Places that make it good to within {withinPercent}: the first whole number that is at least the square of t times the difference over that closeness.',
    source: 'missouri-sample-size',
  }),
];
