import { eatenAsGiven, stockLinesStep } from '../../asks/stock.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, tabulate, tex, type Working } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
export type Values = ValuesOf<typeof inputs> & Results;

export const steps: Working<Values, Results> = [
  byCase('aboveLbPerAc', {
    says: 'What stood above the stubble when it was measured. The stubble comes off here, once.',
    source: 'umaine-pasture-lesson-1, appendix D',
    ways: [
      { when: ({ massFrom }) => massFrom === 'known', formula: tex`\q{standingLbPerAc} - \q{stubbleLbPerAc}` },
      { formula: tex`(\q{heightIn} - \q{stubbleHeightIn}) \times \q{densityLbPerAcIn}` },
    ],
  }),
  lookup('waitMonths', { says: 'From the day it was measured to the first day of grazing, in months of 30.44 days.', source: 'our own' }),
  formula('weatheredPercent', tex`\q{lossPercent} \times \q{waitMonths}`, {
    says: 'What weather takes meanwhile. The loss is a straight line: each month the same share of what stood at first.',
    source: 'larsen-2021, abstract',
  }),
  formula('startLbPerAc', tex`\q{aboveLbPerAc} \times (1 - \q{weatheredPercent} / 100)`, {
    says: 'So this stands above the stubble on the first day.',
    source: 'larsen-2021, abstract',
  }),
  lookup('eatenPercent', {
    says: 'Share of that eaten when a strip lasts {stripDays}. The table is for growing pasture and ends at seven days.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'by-strip',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  }),
  formula('eatenPercent', tex`\q{ownEatenPercent}`, eatenAsGiven),
  formula('eatenLb', tex`\q{startLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc}`, {
    says: 'What stock would eat if all of it were grazed on the first day.',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  }),
  tabulate('stockLines', stockLinesStep),
  formula('fromStartPercent', tex`\frac{\q{lossPercent}}{1 - \q{weatheredPercent} / 100}`, {
    says: 'The loss in a month, as a share of the less that is left on the first day.',
  }),
  byCase('grazingForDays', {
    says: 'Days that it lasts. Each strip holds less than the one before, so the later ones must be longer. A plan ends at a year.',
    source: 'our own',
    ways: [
      { when: ({ lossPercent }) => lossPercent === 0, formula: tex`\min(365, \frac{\q{eatenLb}}{\q{demandLbPerDay}})`, because: 'nothing is lost' },
      {
        formula: tex`\min(365, \frac{1 - \exp(-\frac{\q{fromStartPercent}}{3043.75} \times \frac{\q{eatenLb}}{\q{demandLbPerDay}})}{\q{fromStartPercent} / 3043.75})`,
      },
    ],
  }),
  lookup('lastDay', {
    says: 'As many days as are told, counted from the first day of grazing: that one is the first.',
    onlyWhen: ({ grazingForDays }) => grazingForDays >= 1,
    source: 'our own',
  }),
  tabulate('lossCases', {
    says: 'The same with no loss, with yours and with twice yours: the range comes from the first and the last.',
    source: 'our own',
    formulas: {
      caseStartLbPerAc: tex`\q{aboveLbPerAc} \times \max(0, 1 - \q{caseLossPercent} \times \q{waitMonths} / 100)`,
      caseFromStartPercent: [
        { when: ({ caseStartLbPerAc }) => caseStartLbPerAc <= 0, formula: '0', because: 'weather has taken it all before the first day' },
        { formula: tex`\min(100, \frac{\q{caseLossPercent} \times \q{aboveLbPerAc}}{\q{caseStartLbPerAc}})` },
      ],
      caseEatenLb: tex`\q{caseStartLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc}`,
      caseDays: [
        { when: ({ caseFromStartPercent }) => caseFromStartPercent === 0, formula: tex`\min(365, \frac{\q{caseEatenLb}}{\q{demandLbPerDay}})` },
        {
          formula: tex`\min(365, \frac{1 - \exp(-\frac{\q{caseFromStartPercent}}{3043.75} \times \frac{\q{caseEatenLb}}{\q{demandLbPerDay}})}{\q{caseFromStartPercent} / 3043.75})`,
        },
      ],
    },
  }),
  formula('lossDays', tex`\q{highGrazingDays} - \q{grazingForDays}`, { says: 'Days lost to weather, before you start and while you graze.' }),
  formula('firstStripAc', tex`\min(\q{areaAc}, \frac{\q{demandLbPerDay} \times \q{stripDays}}{\q{startLbPerAc} \times \q{eatenPercent} / 100})`, {
    says: 'Acres that feed all the stock while the first strip lasts.',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  }),
  formula('firstStripFt', tex`\frac{43560 \times \q{firstStripAc}}{\q{fenceFt}}`, {
    says: 'How far that moves the wire. An acre has 43,560 square feet.',
    source: 'common practice',
  }),
  tabulate('dayByDay', {
    says: 'What is not yet grazed, as weather takes it, until the last day.',
    source: 'larsen-2021, abstract',
    formulas: { leftLbPerAc: tex`\q{aboveLbPerAc} \times \max(0, 1 - \q{lossPercent} \times (\q{waitMonths} + \q{afterDays} / 30.4375) / 100)` },
  }),
  tabulate('strips', {
    says: 'A strip every two weeks: what it holds by then, its acres and the move of the wire.',
    source: 'larsen-2021, abstract',
    formulas: {
      ungrazedLbPerAc: tex`\q{aboveLbPerAc} \times (1 - \q{lossPercent} \times (\q{waitMonths} + \q{daysIn} / 30.4375) / 100)`,
      stripAc: tex`\min(\q{areaAc}, \frac{\q{demandLbPerDay} \times \q{stripDays}}{\q{ungrazedLbPerAc} \times \q{eatenPercent} / 100})`,
      stripFt: tex`\frac{43560 \times \q{stripAc}}{\q{fenceFt}}`,
    },
  }),
  lookup('wantedDays', { says: 'From the first day when feed is wanted to the last.', source: 'our own' }),
  lookup('openDays', { says: 'From the first day of grazing this field to the same last day.', source: 'our own' }),
  formula('shortDays', tex`\q{wantedDays} - \min(\q{openDays}, \q{grazingForDays})`, {
    says: 'Days to be fed another way: before the field is opened, and after it runs out.',
  }),
  formula('shortLb', tex`\q{shortDays} \times \q{demandLbPerDay}`, {
    says: 'Dry feed that the stock eat in those days, before any loss in feeding.',
    onlyWhen: ({ verdict }) => verdict === 'short',
  }),
];
