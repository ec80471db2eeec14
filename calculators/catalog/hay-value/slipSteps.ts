import { type HayStep, hasSlip, isByBale, isByProtein, isCompared, isDivided, isDry, onTop } from './step.ts';

export const slipSteps: readonly HayStep[] = [
  {
    kind: 'formula',
    shows: 'proteinDryPercent',
    onlyWhen: hasSlip,
    says: 'Protein of the dry matter.',
    source: 'common practice',
    ways: [
      { when: isDry, formula: String.raw`\q{proteinPercent}`, because: 'as the slip has it' },
      { formula: String.raw`\frac{100 \times \q{proteinPercent}}{100 - \q{moisturePercent}}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'tdnDryPercent',
    onlyWhen: hasSlip,
    says: 'TDN of the dry matter.',
    source: 'common practice',
    ways: [
      { when: isDry, formula: String.raw`\q{tdnPercent}`, because: 'as the slip has it' },
      { formula: String.raw`\frac{100 \times \q{tdnPercent}}{100 - \q{moisturePercent}}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'eatenProteinLb',
    onlyWhen: hasSlip,
    says: 'Protein eaten from a ton bought.',
    source: 'montana-richland-2022, cost per pound of protein',
    ways: [{ formula: String.raw`\q{eatenLb} \times \frac{\q{proteinDryPercent}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'eatenTdnLb',
    onlyWhen: hasSlip,
    says: 'TDN eaten from a ton bought.',
    source: 'penn-state-feeds-1993, comparing the value of hays',
    ways: [{ formula: String.raw`\q{eatenLb} \times \frac{\q{tdnDryPercent}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'proteinUsdPerLb',
    onlyWhen: hasSlip,
    says: 'What a pound of protein costs by the time it is eaten.',
    source: 'montana-richland-2022, cost per pound of protein',
    ways: [{ formula: String.raw`\frac{\q{eatenUsdPerTon}}{2000 \times \q{proteinDryPercent} / 100}` }],
  },
  {
    kind: 'formula',
    shows: 'tdnUsdPerLb',
    onlyWhen: hasSlip,
    says: 'And a pound of TDN.',
    source: 'warner-feedstuff-costs, example',
    ways: [{ formula: String.raw`\frac{\q{eatenUsdPerTon}}{2000 \times \q{tdnDryPercent} / 100}` }],
  },
  {
    kind: 'formula',
    shows: 'otherNutrientPercent',
    onlyWhen: isCompared,
    says: 'The other feed holds, of its dry matter.',
    ways: [{ when: isByProtein, formula: String.raw`\q{otherProteinPercent}` }, { formula: String.raw`\q{otherTdnPercent}` }],
  },
  {
    kind: 'formula',
    shows: 'otherUsdPerLb',
    onlyWhen: isCompared,
    says: 'A pound of it in the other feed, its own loss counted.',
    source: 'montana-richland-2022, cost per pound of protein',
    ways: [
      {
        when: isDivided,
        formula: String.raw`\frac{\q{otherPriceUsdPerTon}}{2000 (1 - \q{otherLossPercent} / 100) (1 - \q{otherMoisturePercent} / 100) \times \q{otherNutrientPercent} / 100}`,
      },
      {
        formula: String.raw`\frac{\q{otherPriceUsdPerTon} (1 + \q{otherLossPercent} / 100)}{2000 (1 - \q{otherMoisturePercent} / 100) \times \q{otherNutrientPercent} / 100}`,
        because: onTop,
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'worthUsdPerTon',
    onlyWhen: isCompared,
    says: 'So this hay is worth that, times what they get of it from a ton, less freight.',
    source: 'our own, the same sum turned round',
    ways: [
      {
        when: isByProtein,
        formula: String.raw`\q{otherUsdPerLb} \times 2000 \times \q{eatenRatio} \times \frac{\q{proteinDryPercent}}{100} - \q{freightUsdPerTon}`,
      },
      { formula: String.raw`\q{otherUsdPerLb} \times 2000 \times \q{eatenRatio} \times \frac{\q{tdnDryPercent}}{100} - \q{freightUsdPerTon}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'worthBaleUsd',
    onlyWhen: (values) => isCompared(values) && isByBale(values),
    says: 'For a bale.',
    ways: [{ formula: String.raw`\frac{\q{worthUsdPerTon} \times \q{baleLb}}{2000}` }],
  },
];
