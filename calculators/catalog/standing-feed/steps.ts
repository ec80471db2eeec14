import type { ValuesOf } from '../../kit/inputs.ts';
import type { Step } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type Values = ValuesOf<typeof inputs> & Results;

export const steps: readonly Step<Values, Results>[] = [
  {
    kind: 'formula',
    shows: 'aboveLbPerAc',
    says: 'What stood above the stubble when it was measured. The stubble comes off here, once.',
    source: 'umaine-pasture-lesson-1, appendix D',
    ways: [
      { when: ({ massFrom }) => massFrom === 'known', formula: String.raw`\q{standingLbPerAc} - \q{stubbleLbPerAc}` },
      { formula: String.raw`(\q{heightIn} - \q{stubbleHeightIn}) \times \q{densityLbPerAcIn}` },
    ],
  },
  {
    kind: 'lookup',
    shows: 'waitMonths',
    says: 'From the day it was measured to the first day of grazing, in months of 30.44 days.',
    source: 'our own',
  },
  {
    kind: 'formula',
    shows: 'weatheredPercent',
    says: 'What weather takes meanwhile. The loss is a straight line: each month the same share of what stood at first.',
    source: 'larsen-2021, abstract',
    ways: [{ formula: String.raw`\q{lossPercent} \times \q{waitMonths}` }],
  },
  {
    kind: 'formula',
    shows: 'startLbPerAc',
    says: 'So this stands above the stubble on the first day.',
    source: 'larsen-2021, abstract',
    ways: [{ formula: String.raw`\q{aboveLbPerAc} \times (1 - \q{weatheredPercent} / 100)` }],
  },
  {
    kind: 'lookup',
    shows: 'eatenPercent',
    says: 'Share of that eaten when a strip lasts {stripDays}. The table is for growing pasture and ends at seven days.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'by-strip',
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
    shows: 'eatenLb',
    says: 'What stock would eat if all of it were grazed on the first day.',
    source: 'penn-state-agronomy-guide, table 1.8-9',
    ways: [{ formula: String.raw`\q{startLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc}` }],
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
    shows: 'fromStartPercent',
    says: 'The loss in a month, as a share of the less that is left on the first day.',
    ways: [{ formula: String.raw`\frac{\q{lossPercent}}{1 - \q{weatheredPercent} / 100}` }],
  },
  {
    kind: 'formula',
    shows: 'grazingForDays',
    says: 'Days that it lasts. Each strip holds less than the one before, so the later ones must be longer. A plan ends at a year.',
    source: 'our own',
    ways: [
      {
        when: ({ lossPercent }) => lossPercent === 0,
        formula: String.raw`\min(365, \frac{\q{eatenLb}}{\q{demandLbPerDay}})`,
        because: 'nothing is lost',
      },
      {
        formula: String.raw`\min(365, \frac{1 - \exp(-\frac{\q{fromStartPercent}}{3043.75} \times \frac{\q{eatenLb}}{\q{demandLbPerDay}})}{\q{fromStartPercent} / 3043.75})`,
      },
    ],
  },
  {
    kind: 'rows',
    of: 'lossCases',
    says: 'The same with no loss, with yours and with twice yours: the range comes from the first and the last.',
    source: 'our own',
    formulas: {
      caseStartLbPerAc: String.raw`\q{aboveLbPerAc} \times \max(0, 1 - \q{caseLossPercent} \times \q{waitMonths} / 100)`,
      caseFromStartPercent: [
        { when: ({ caseStartLbPerAc }) => caseStartLbPerAc <= 0, formula: '0', because: 'weather has taken it all before the first day' },
        { formula: String.raw`\min(100, \frac{\q{caseLossPercent} \times \q{aboveLbPerAc}}{\q{caseStartLbPerAc}})` },
      ],
      caseEatenLb: String.raw`\q{caseStartLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc}`,
      caseDays: [
        {
          when: ({ caseFromStartPercent }) => caseFromStartPercent === 0,
          formula: String.raw`\min(365, \frac{\q{caseEatenLb}}{\q{demandLbPerDay}})`,
        },
        {
          formula: String.raw`\min(365, \frac{1 - \exp(-\frac{\q{caseFromStartPercent}}{3043.75} \times \frac{\q{caseEatenLb}}{\q{demandLbPerDay}})}{\q{caseFromStartPercent} / 3043.75})`,
        },
      ],
    },
  },
  {
    kind: 'formula',
    shows: 'lossDays',
    says: 'Days lost to weather, before you start and while you graze.',
    ways: [{ formula: String.raw`\q{highGrazingDays} - \q{grazingForDays}` }],
  },
  {
    kind: 'formula',
    shows: 'firstStripAc',
    says: 'Acres that feed all the stock while the first strip lasts.',
    source: 'penn-state-agronomy-guide, table 1.8-9',
    ways: [{ formula: String.raw`\min(\q{areaAc}, \frac{\q{demandLbPerDay} \times \q{stripDays}}{\q{startLbPerAc} \times \q{eatenPercent} / 100})` }],
  },
  {
    kind: 'formula',
    shows: 'firstStripFt',
    says: 'How far that moves the wire. An acre has 43,560 square feet.',
    source: 'common practice',
    ways: [{ formula: String.raw`\frac{43560 \times \q{firstStripAc}}{\q{fenceFt}}` }],
  },
  {
    kind: 'rows',
    of: 'strips',
    says: 'A strip every two weeks: what it holds by then, its acres and the move of the wire.',
    source: 'larsen-2021, abstract',
    formulas: {
      ungrazedLbPerAc: String.raw`\q{aboveLbPerAc} \times (1 - \q{lossPercent} \times (\q{waitMonths} + \q{daysIn} / 30.4375) / 100)`,
      stripAc: String.raw`\min(\q{areaAc}, \frac{\q{demandLbPerDay} \times \q{stripDays}}{\q{ungrazedLbPerAc} \times \q{eatenPercent} / 100})`,
      stripFt: String.raw`\frac{43560 \times \q{stripAc}}{\q{fenceFt}}`,
    },
  },
  { kind: 'lookup', shows: 'wantedDays', says: 'From the first day when feed is wanted to the last.', source: 'our own' },
  { kind: 'lookup', shows: 'openDays', says: 'From the first day of grazing this field to the same last day.', source: 'our own' },
  {
    kind: 'formula',
    shows: 'shortDays',
    says: 'Days to be fed another way: before the field is opened, and after it runs out.',
    ways: [{ formula: String.raw`\q{wantedDays} - \min(\q{openDays}, \q{grazingForDays})` }],
  },
  {
    kind: 'formula',
    shows: 'shortLb',
    says: 'Dry feed that the stock eat in those days, before any loss in feeding.',
    onlyWhen: ({ verdict }) => verdict === 'short',
    ways: [{ formula: String.raw`\q{shortDays} \times \q{demandLbPerDay}` }],
  },
];
