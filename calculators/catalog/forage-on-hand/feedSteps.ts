import { byCase, formula, lookup, type Step, tex } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { Values } from './measureSteps.ts';
import { isByHeight, isCutHigh, isCutUnsaid } from './ways.ts';

type Results = ReturnType<typeof compute>;

/** From what stands to days of grazing, with both ends of the range. */
export const feedSteps: readonly Step<Values, Results>[] = [
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
  formula('eatenPercent', tex`\q{ownEatenPercent}`, {
    says: 'Share of that eaten, as you gave it.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'own',
  }),
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
  {
    kind: 'rows',
    of: 'stockLines',
    says: 'What the stock eat in a day.',
    source: 'common practice',
    formulas: { lineLbPerDay: tex`\q{countHead} \times \q{weightLb} \times \q{intakePercent} / 100` },
    sums: { demandLbPerDay: 'lineLbPerDay' },
  },
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
