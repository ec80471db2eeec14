import type { Step } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { Values } from './measureSteps.ts';
import { isByHeight, isCutHigh, isCutUnsaid } from './ways.ts';

type Results = ReturnType<typeof compute>;

/** From what stands to days of grazing, with both ends of the range. */
export const feedSteps: readonly Step<Values, Results>[] = [
  {
    kind: 'formula',
    shows: 'standingLbPerAc',
    says: 'What was found standing: by the stick from the ground up, by clips from where you cut.',
    ways: [
      { when: ({ way }) => !isByHeight(way), formula: String.raw`\q{clippedLbPerAc}` },
      { formula: String.raw`\q{meanHeightIn} \times \q{usedLbPerAcIn}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'availableLbPerAc',
    says: 'What stands above the stubble. The stubble comes off here, once.',
    source: 'umaine-pasture-lesson-1, appendices D and E',
    ways: [
      {
        when: isCutHigh,
        formula: String.raw`\q{clippedLbPerAc}`,
        because: 'you cut at the stubble, so it is already left out',
      },
      {
        when: isCutUnsaid,
        formula: String.raw`\max(0, \q{clippedLbPerAc} - \q{stubbleLbPerAc})`,
        because: 'you have not said where you cut, and this reading gives the fewer days',
      },
      {
        when: ({ way }) => !isByHeight(way),
        formula: String.raw`\max(0, \q{clippedLbPerAc} - \q{stubbleLbPerAc})`,
        because: 'you cut at the ground',
      },
      { formula: String.raw`\max(0, \q{meanHeightIn} - \q{stubbleHeightIn}) \times \q{usedLbPerAcIn}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'stubbleKeptLbPerAc',
    says: 'What of it stays as stubble.',
    onlyWhen: (values) => !isCutHigh(values),
    ways: [{ formula: String.raw`\q{standingLbPerAc} - \q{availableLbPerAc}` }],
  },
  {
    kind: 'formula',
    shows: 'lowAvailableLbPerAc',
    says: 'The same at the low end.',
    ways: [
      {
        when: ({ way, clippedTo }) => way === 'plate' && clippedTo === 'stubble',
        formula: String.raw`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100) - \q{lineOffLbPerAc})`,
      },
      {
        when: ({ way }) => way === 'plate',
        formula: String.raw`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100) - \q{lineOffLbPerAc} - \q{stubbleLbPerAc})`,
      },
      {
        when: isCutHigh,
        formula: String.raw`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100))`,
      },
      {
        when: ({ way }) => !isByHeight(way),
        formula: String.raw`\max(0, \q{clippedLbPerAc} \times (1 - \q{closePercent} / 100) - \q{stubbleLbPerAc})`,
      },
      {
        formula: String.raw`\max(0, \q{meanHeightIn} \times (1 - \q{closePercent} / 100) - \q{stubbleHeightIn}) \times \q{lowLbPerAcIn}`,
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'highAvailableLbPerAc',
    says: 'And at the high end.',
    ways: [
      {
        when: ({ way, clippedTo }) => way === 'plate' && clippedTo === 'stubble',
        formula: String.raw`\max(0, \q{clippedLbPerAc} \times (1 + \q{closePercent} / 100) + \q{lineOffLbPerAc})`,
      },
      {
        when: ({ way }) => way === 'plate',
        formula: String.raw`\max(0, \q{clippedLbPerAc} \times (1 + \q{closePercent} / 100) + \q{lineOffLbPerAc} - \q{stubbleLbPerAc})`,
      },
      {
        when: isCutHigh,
        formula: String.raw`\q{clippedLbPerAc} \times (1 + \q{closePercent} / 100)`,
      },
      {
        when: ({ way }) => !isByHeight(way),
        formula: String.raw`\max(0, \q{clippedLbPerAc} \times (1 + \q{closePercent} / 100) - \q{stubbleLbPerAc})`,
      },
      {
        formula: String.raw`\max(0, \q{meanHeightIn} \times (1 + \q{closePercent} / 100) - \q{stubbleHeightIn}) \times \q{highLbPerAcIn}`,
      },
    ],
  },
  {
    kind: 'lookup',
    shows: 'eatenPercent',
    says: 'Share of that eaten, for {stayDays} in one paddock. The table ends at seven days.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'by-stay',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  },
  {
    kind: 'formula',
    shows: 'eatenPercent',
    says: 'Share of that eaten, as you gave it.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'own',
    ways: [{ formula: String.raw`\q{ownEatenPercent}` }],
  },
  {
    kind: 'formula',
    shows: 'eatenLbPerAc',
    says: 'What stock will eat from an acre.',
    source: 'penn-state-agronomy-guide, table 1.8-9',
    ways: [{ formula: String.raw`\q{availableLbPerAc} \times \q{eatenPercent} / 100` }],
  },
  {
    kind: 'formula',
    shows: 'trampledLbPerAc',
    says: 'The rest above the stubble is trampled or passed over.',
    ways: [{ formula: String.raw`\q{availableLbPerAc} - \q{eatenLbPerAc}` }],
  },
  {
    kind: 'formula',
    shows: 'eatenLb',
    says: 'And from all the ground that they use.',
    source: 'rangelands-gateway-matching, step a',
    ways: [{ formula: String.raw`\q{eatenLbPerAc} \times \q{areaAc} \times \q{reachPercent} / 100` }],
  },
  {
    kind: 'formula',
    shows: 'rangeMonths',
    says: 'In animal-unit months of 26 lb a day and 30.4 days, the water out.',
    source: 'srm-1998, with nrph-2003, chapter 6',
    ways: [{ formula: String.raw`\frac{\q{eatenLb}}{26 \times 30.4}` }],
  },
  {
    kind: 'formula',
    shows: 'airDryMonths',
    says: 'In those of 30 lb a day, which are counted air-dry, with a tenth of water still in.',
    source: 'ndmc-ranch-plan, inventory of the herd',
    ways: [{ formula: String.raw`\frac{\q{eatenLb} / 0.9}{30 \times 30.4}` }],
  },
  {
    kind: 'rows',
    of: 'stockLines',
    says: 'What the stock eat in a day.',
    source: 'common practice',
    formulas: { lineLbPerDay: String.raw`\q{countHead} \times \q{weightLb} \times \q{intakePercent} / 100` },
    sums: { demandLbPerDay: 'lineLbPerDay' },
  },
  {
    kind: 'formula',
    shows: 'grazingForDays',
    says: 'Days that this feeds them.',
    source: 'umaine-pasture-lesson-1, appendix D',
    ways: [{ formula: String.raw`\frac{\q{eatenLb}}{\q{demandLbPerDay}}` }],
  },
  {
    kind: 'formula',
    shows: 'cutHighGrazingDays',
    says: 'Days, if you cut at the height that you leave: then the stubble is off already.',
    onlyWhen: isCutUnsaid,
    ways: [
      {
        formula: String.raw`\frac{\q{clippedLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100}{\q{demandLbPerDay}}`,
      },
    ],
  },
  ...(['low', 'high'] as const).map(
    (end): Step<Values, Results> => ({
      kind: 'formula',
      shows: `${end}GrazingDays`,
      says: `Days at the ${end} end.`,
      ways: [
        {
          formula: String.raw`\frac{\q{${end}AvailableLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100}{\q{demandLbPerDay}}`,
        },
      ],
    }),
  ),
];
