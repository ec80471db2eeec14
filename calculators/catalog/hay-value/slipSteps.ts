import { byCase, formula, tex } from '../../kit/steps.ts';
import { type HayStep, hasSlip, isByBale, isByProtein, isCompared, isDivided, isDry, onTop } from './step.ts';

export const slipSteps: readonly HayStep[] = [
  byCase('proteinDryPercent', {
    onlyWhen: hasSlip,
    says: 'Protein of the dry matter.',
    source: 'common practice',
    ways: [
      { when: isDry, formula: tex`\q{proteinPercent}`, because: 'as the slip has it' },
      { formula: tex`\frac{100 \times \q{proteinPercent}}{100 - \q{moisturePercent}}` },
    ],
  }),
  byCase('tdnDryPercent', {
    onlyWhen: hasSlip,
    says: 'TDN of the dry matter.',
    source: 'common practice',
    ways: [
      { when: isDry, formula: tex`\q{tdnPercent}`, because: 'as the slip has it' },
      { formula: tex`\frac{100 \times \q{tdnPercent}}{100 - \q{moisturePercent}}` },
    ],
  }),
  formula('eatenProteinLb', tex`\q{eatenLb} \times \frac{\q{proteinDryPercent}}{100}`, {
    onlyWhen: hasSlip,
    says: 'Protein eaten from a ton bought.',
    source: 'montana-richland-2022, cost per pound of protein',
  }),
  formula('eatenTdnLb', tex`\q{eatenLb} \times \frac{\q{tdnDryPercent}}{100}`, {
    onlyWhen: hasSlip,
    says: 'TDN eaten from a ton bought.',
    source: 'penn-state-feeds-1993, comparing the value of hays',
  }),
  formula('proteinUsdPerLb', tex`\frac{\q{eatenUsdPerTon}}{2000 \times \q{proteinDryPercent} / 100}`, {
    onlyWhen: hasSlip,
    says: 'What a pound of protein costs by the time it is eaten.',
    source: 'montana-richland-2022, cost per pound of protein',
  }),
  formula('tdnUsdPerLb', tex`\frac{\q{eatenUsdPerTon}}{2000 \times \q{tdnDryPercent} / 100}`, {
    onlyWhen: hasSlip,
    says: 'And a pound of TDN.',
    source: 'warner-feedstuff-costs, example',
  }),
  byCase('otherNutrientPercent', {
    onlyWhen: isCompared,
    says: 'The other feed holds, of its dry matter.',
    ways: [{ when: isByProtein, formula: tex`\q{otherProteinPercent}` }, { formula: tex`\q{otherTdnPercent}` }],
  }),
  byCase('otherUsdPerLb', {
    onlyWhen: isCompared,
    says: 'A pound of it in the other feed, its own loss counted.',
    source: 'montana-richland-2022, cost per pound of protein',
    ways: [
      {
        when: isDivided,
        formula: tex`\frac{\q{otherPriceUsdPerTon}}{2000 (1 - \q{otherLossPercent} / 100) (1 - \q{otherMoisturePercent} / 100) \times \q{otherNutrientPercent} / 100}`,
      },
      {
        formula: tex`\frac{\q{otherPriceUsdPerTon} (1 + \q{otherLossPercent} / 100)}{2000 (1 - \q{otherMoisturePercent} / 100) \times \q{otherNutrientPercent} / 100}`,
        because: onTop,
      },
    ],
  }),
  byCase('worthUsdPerTon', {
    onlyWhen: isCompared,
    says: 'So this hay is worth that, times what they get of it from a ton, less freight.',
    source: 'our own, the same sum turned round',
    ways: [
      {
        when: isByProtein,
        formula: tex`\q{otherUsdPerLb} \times 2000 \times \q{eatenRatio} \times \frac{\q{proteinDryPercent}}{100} - \q{freightUsdPerTon}`,
      },
      { formula: tex`\q{otherUsdPerLb} \times 2000 \times \q{eatenRatio} \times \frac{\q{tdnDryPercent}}{100} - \q{freightUsdPerTon}` },
    ],
  }),
  formula('worthBaleUsd', tex`\frac{\q{worthUsdPerTon} \times \q{baleLb}}{2000}`, {
    onlyWhen: (values) => isCompared(values) && isByBale(values),
    says: 'For a bale.',
  }),
];
