import { eatenAsGiven, stockLinesStep } from '../../asks/stock.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, type Step, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import { type inputs, isByHeight, isCutHigh, isCutUnsaid, isClipping as needsFrame } from './inputs.ts';

type Results = ReturnType<typeof compute>;
export type Values = ValuesOf<typeof inputs> & Results;
const isClipping = ({ way }: Values): boolean => needsFrame(way);
const takesHeights = ({ way }: Values): boolean => isByHeight(way);

const isPlate = ({ way }: Values): boolean => way === 'plate';
const fit = 'nist-norris, a straight line by least squares';

/** From clips under the plate to a line of the place's own, and from the line to a mass for each reading. */
export const plateSteps: Working<Values, Results> = [
  when(isPlate, [
    tabulate('pairLines', {
      says: 'Each clip under the plate, how far its reading and its weight are off their means, and how far it lies off the line that comes out below.',
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
    }),
    formula('pairMeanReadingCount', tex`\frac{\q{pairReadingSumCount}}{\q{pairCount}}`, { says: 'The mean reading of {pairCount} clips.' }),
    formula('pairMeanLbPerAc', tex`\frac{\q{pairSumLbPerAc}}{\q{pairCount}}`, { says: 'And their mean weight.' }),
    formula('plateSlopeLbPerAc', tex`\frac{\q{productSumRatio}}{\q{readingSpreadRatio}}`, {
      says: 'What one more on the plate is worth.',
      source: fit,
    }),
    formula('plateStartLbPerAc', tex`\q{pairMeanLbPerAc} - \q{plateSlopeLbPerAc} \times \q{pairMeanReadingCount}`, {
      says: 'The line goes through the middle of the clips.',
      source: fit,
    }),
    tabulate('readingLines', {
      says: 'Dry forage on an acre by each reading, and how far each is off their mean.',
      source: 'dillard-2016, calibration by linear regression',
      formulas: {
        readLbPerAc: tex`\max(0, \q{plateStartLbPerAc} + \q{plateSlopeLbPerAc} \times \q{readingCount})`,
        offSquaredRatio: tex`(\frac{\q{readLbPerAc} - \q{clippedLbPerAc}}{\q{clippedLbPerAc}})^2`,
      },
      sums: { readingSumCount: 'readingCount', plotSumLbPerAc: 'readLbPerAc', offSumRatio: 'offSquaredRatio' },
    }),
    formula('meanReadingCount', tex`\frac{\q{readingSumCount}}{\q{sampleCount}}`, { says: 'The mean reading.' }),
    formula('scatterLbPerAc', tex`\sqrt{\frac{\q{offLineSumRatio}}{\q{pairCount} - 2}}`, {
      says: 'How far the clips scatter about the line.',
      source: fit,
    }),
    lookup('lineTRatio', { says: 'Student’s t for {pairCount} clips less two, to hold {surePercent} of the time.', source: 'missouri-sample-size' }),
    formula(
      'lineOffLbPerAc',
      tex`\q{lineTRatio} \times \q{scatterLbPerAc} \times \sqrt{\frac{1}{\q{pairCount}} + \frac{(\q{meanReadingCount} - \q{pairMeanReadingCount})^2}{\q{readingSpreadRatio}}}`,
      {
        says: 'So at the mean reading the line itself may be off by this much, up or down. The range takes it on top of how much the places differ.',
        source: fit,
      },
    ),
  ]),
];

/** From frame, scales and stick to a mean, and how far to trust it. */
export const measureSteps: Working<Values, Results> = [
  when(isClipping, [
    byCase('frameAreaFt2', {
      says: 'Area inside the frame.',
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
      source: 'common practice',
    }),
  ]),
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
  tabulate('plotLines', {
    says: 'Dry forage on an acre by each plot, and how far each is off their mean.',
    onlyWhen: ({ way }) => way === 'clips',
    source: 'umaine-pasture-lesson-1, appendix E',
    formulas: {
      plotLbPerAc: tex`\q{gramLbPerAc} \times \q{greenG} \times \q{dryPercent} / 100`,
      offSquaredRatio: tex`(\frac{\q{plotLbPerAc} - \q{clippedLbPerAc}}{\q{clippedLbPerAc}})^2`,
    },
    sums: { plotSumLbPerAc: 'plotLbPerAc', offSumRatio: 'offSquaredRatio' },
  }),
  ...plateSteps,
  formula('clippedLbPerAc', tex`\frac{\q{plotSumLbPerAc}}{\q{sampleCount}}`, {
    says: 'The mean of {sampleCount} places.',
    onlyWhen: ({ way }) => way === 'clips' || way === 'plate',
  }),
  when(takesHeights, [
    tabulate('heightLines', {
      says: 'Each height, and how far it is off their mean.',
      formulas: { offSquaredRatio: tex`(\frac{\q{heightIn} - \q{meanHeightIn}}{\q{meanHeightIn}})^2` },
      sums: { heightSumIn: 'heightIn', offSumRatio: 'offSquaredRatio' },
    }),
    formula('meanHeightIn', tex`\frac{\q{heightSumIn}}{\q{sampleCount}}`, { says: 'The mean of {sampleCount} heights.' }),
  ]),
  tabulate('clipLines', {
    says: 'What each clip says of an inch.',
    onlyWhen: ({ way }) => way === 'height-clips',
    source: 'common practice',
    formulas: {
      clipLbPerAc: tex`\q{gramLbPerAc} \times \q{greenG} \times \q{dryPercent} / 100`,
      clipLbPerAcIn: tex`\frac{\q{clipLbPerAc}}{\q{cutIn}}`,
    },
    sums: { cutSumIn: 'cutIn', clipSumLbPerAc: 'clipLbPerAc' },
  }),
  when(
    ({ way }) => way === 'height-stand',
    [
      lookup('lowLbPerAcIn', { says: 'The least that is printed for such a stand.', source: 'umaine-pasture-lesson-1, appendix D' }),
      lookup('highLbPerAcIn', { says: 'The most that is printed for such a stand.', source: 'umaine-pasture-lesson-1, appendix D' }),
    ],
  ),
  when(
    ({ way }) => way === 'height-clips',
    [
      lookup('lowLbPerAcIn', { says: 'The least in an inch of any of your clips. The range takes it.', source: 'our own' }),
      lookup('highLbPerAcIn', { says: 'The most in an inch of any of your clips. The range takes it.', source: 'our own' }),
    ],
  ),
  byCase('usedLbPerAcIn', {
    says: 'Pounds in an inch.',
    onlyWhen: takesHeights,
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

/** From what stands to days of grazing, with both ends of the range. */
export const feedSteps: Working<Values, Results> = [
  byCase('standingLbPerAc', {
    says: 'What was found standing: by the stick from the ground up, by clips from where you cut.',
    ways: [{ when: ({ way }) => !isByHeight(way), formula: tex`\q{clippedLbPerAc}` }, { formula: tex`\q{meanHeightIn} \times \q{usedLbPerAcIn}` }],
  }),
  byCase('availableLbPerAc', {
    says: 'What stands above the stubble. The stubble comes off here, once.',
    source: 'umaine-pasture-lesson-1, appendices D and E',
    ways: [
      { when: isCutHigh, formula: tex`\q{clippedLbPerAc}`, because: 'you cut at the stubble, so it is already left out' },
      {
        when: isCutUnsaid,
        formula: tex`\max(0, \q{clippedLbPerAc} - \q{stubbleLbPerAc})`,
        because: 'you have not said where you cut, and this reading gives the fewer days',
      },
      { when: ({ way }) => !isByHeight(way), formula: tex`\max(0, \q{clippedLbPerAc} - \q{stubbleLbPerAc})`, because: 'you cut at the ground' },
      { formula: tex`\max(0, \q{meanHeightIn} - \q{stubbleHeightIn}) \times \q{usedLbPerAcIn}` },
    ],
  }),
  formula('stubbleKeptLbPerAc', tex`\q{standingLbPerAc} - \q{availableLbPerAc}`, {
    says: 'What of it stays as stubble.',
    onlyWhen: (values) => !isCutHigh(values),
  }),
  byCase('lowAvailableLbPerAc', {
    says: 'The same at the low end.',
    ways: [
      {
        when: ({ way, clippedTo }) => way === 'plate' && clippedTo === 'stubble',
        formula: tex`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100) - \q{lineOffLbPerAc})`,
      },
      {
        when: ({ way }) => way === 'plate',
        formula: tex`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100) - \q{lineOffLbPerAc} - \q{stubbleLbPerAc})`,
      },
      { when: isCutHigh, formula: tex`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100))` },
      { when: ({ way }) => !isByHeight(way), formula: tex`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100) - \q{stubbleLbPerAc})` },
      { formula: tex`\max(0, \q{meanHeightIn} \times (1 - \q{closePercent} / 100) - \q{stubbleHeightIn}) \times \q{lowLbPerAcIn}` },
    ],
  }),
  byCase('highAvailableLbPerAc', {
    says: 'And at the high end.',
    ways: [
      {
        when: ({ way, clippedTo }) => way === 'plate' && clippedTo === 'stubble',
        formula: tex`\max(0, \q{clippedLbPerAc} \times (1 + \q{closePercent} / 100) + \q{lineOffLbPerAc})`,
      },
      {
        when: ({ way }) => way === 'plate',
        formula: tex`\max(0, \q{clippedLbPerAc} \times (1 + \q{closePercent} / 100) + \q{lineOffLbPerAc} - \q{stubbleLbPerAc})`,
      },
      { when: isCutHigh, formula: tex`\q{clippedLbPerAc} \times (1 + \q{closePercent} / 100)` },
      { when: ({ way }) => !isByHeight(way), formula: tex`\max(0, \q{clippedLbPerAc} \times (1 + \q{closePercent} / 100) - \q{stubbleLbPerAc})` },
      { formula: tex`\max(0, \q{meanHeightIn} \times (1 + \q{closePercent} / 100) - \q{stubbleHeightIn}) \times \q{highLbPerAcIn}` },
    ],
  }),
  lookup('eatenPercent', {
    says: 'Share of that eaten, for {stayDays} in one paddock. The table ends at seven days.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'by-stay',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  }),
  formula('eatenPercent', tex`\q{ownEatenPercent}`, eatenAsGiven),
  formula('eatenLbPerAc', tex`\q{availableLbPerAc} \times \q{eatenPercent} / 100`, {
    says: 'What stock will eat from an acre.',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  }),
  formula('trampledLbPerAc', tex`\q{availableLbPerAc} - \q{eatenLbPerAc}`, { says: 'The rest above the stubble is trampled or passed over.' }),
  formula('eatenLb', tex`\q{eatenLbPerAc} \times \q{areaAc} \times \q{reachPercent} / 100`, {
    says: 'And from all the ground that they use.',
    source: 'rangelands-gateway-matching, step a',
  }),
  formula('rangeMonths', tex`\frac{\q{eatenLb}}{26 \times 30.4}`, {
    says: 'In animal-unit months of 26 lb a day and 30.4 days, the water out.',
    source: 'srm-1998, with nrph-2003, chapter 6',
  }),
  formula('airDryMonths', tex`\frac{\q{eatenLb} / 0.9}{30 \times 30.4}`, {
    says: 'In those of 30 lb a day, which are counted air-dry, with a tenth of water still in.',
    source: 'ndmc-ranch-plan, inventory of the herd',
  }),
  tabulate('stockLines', stockLinesStep),
  formula('grazingForDays', tex`\frac{\q{eatenLb}}{\q{demandLbPerDay}}`, {
    says: 'Days that this feeds them.',
    source: 'umaine-pasture-lesson-1, appendix D',
  }),
  formula(
    'cutHighGrazingDays',
    tex`\frac{\q{clippedLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100}{\q{demandLbPerDay}}`,
    { says: 'Days, if you cut at the height that you leave: then the stubble is off already.', onlyWhen: isCutUnsaid },
  ),
  ...(['low', 'high'] as const).map(
    (end): Step<Values, Results> =>
      formula(
        `${end}GrazingDays`,
        tex`\frac{\q{${end}AvailableLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100}{\q{demandLbPerDay}}`,
        { says: `Days at the ${end} end.` },
      ),
  ),
];
