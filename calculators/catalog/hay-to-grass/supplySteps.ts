import { type HayStep, hasOwn, isDivided, isOwnLooked, isWet } from './step.ts';

export const onHandSteps: readonly HayStep[] = [
  {
    kind: 'formula',
    shows: 'ownTon',
    onlyWhen: hasOwn,
    says: 'Hay on hand, as it was weighed.',
    ways: [{ formula: String.raw`\frac{\q{ownCount} \times \q{ownBaleLb}}{2000}` }],
  },
  {
    kind: 'lookup',
    shows: 'ownWeighingMonths',
    onlyWhen: isOwnLooked,
    says: 'How long it had stood when it was weighed.',
    source: 'common practice',
  },
  {
    kind: 'lookup',
    shows: 'ownFeedingMonths',
    onlyWhen: isOwnLooked,
    says: 'How long it will have stood in the middle of feeding, from {baledDay} on.',
    source: 'common practice',
  },
  {
    kind: 'lookup',
    shows: 'ownLossAtWeighingPercent',
    onlyWhen: isOwnLooked,
    says: 'Lost by the weighing ({ownStorage}).',
    source: 'huhnke-bae1716, straight line between its months',
  },
  {
    kind: 'lookup',
    shows: 'ownLossAtFeedingPercent',
    onlyWhen: isOwnLooked,
    says: 'Lost by the middle of feeding.',
    source: 'huhnke-bae1716, straight line between its months',
  },
  {
    kind: 'formula',
    shows: 'ownLossPercent',
    onlyWhen: hasOwn,
    says: 'Still to be lost, as a share of what was weighed.',
    ways: [
      { when: ({ ownStorage }) => ownStorage === 'known', formula: String.raw`\q{knownOwnPercent}`, because: 'your own figure' },
      {
        when: ({ ownStorage }) => ownStorage === 'rind',
        formula: String.raw`100 (1 - (1 - \frac{2 \times \q{rindIn}}{12 \times \q{ownDiameterFt}})^2)`,
        because: 'the spoiled rind, with bales end to end',
      },
      { formula: String.raw`100 (1 - \frac{1 - \q{ownLossAtFeedingPercent} / 100}{1 - \q{ownLossAtWeighingPercent} / 100})` },
    ],
  },
  {
    kind: 'formula',
    shows: 'ownStorageKeptRatio',
    onlyWhen: hasOwn,
    says: 'What storage leaves of it.',
    ways: [
      { when: isDivided, formula: String.raw`1 - \frac{\q{ownLossPercent}}{100}` },
      { formula: String.raw`\frac{1}{1 + \q{ownLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  },
  {
    kind: 'formula',
    shows: 'ownAtFeedingTon',
    onlyWhen: hasOwn,
    says: 'So much of it is left to feed.',
    ways: [{ formula: String.raw`\q{ownTon} \times \q{ownStorageKeptRatio}` }],
  },
  {
    kind: 'formula',
    shows: 'ownEatenRatio',
    onlyWhen: hasOwn,
    says: 'What the cow gets of a ton of it as weighed.',
    ways: [{ formula: String.raw`(1 - \frac{\q{moisturePercent}}{100}) \times \q{ownStorageKeptRatio} \times \q{feedingKeptRatio}` }],
  },
  {
    kind: 'formula',
    shows: 'ownUsedTon',
    onlyWhen: hasOwn,
    says: 'It goes first, as far as it reaches or is needed.',
    ways: [{ formula: String.raw`\min(\q{ownTon}, \frac{\q{hayEatenLb}}{2000 \times \q{ownEatenRatio}})` }],
  },
  {
    kind: 'formula',
    shows: 'ownEatenLb',
    onlyWhen: hasOwn,
    says: 'And gives so much to eat.',
    ways: [{ formula: String.raw`2000 \times \q{ownUsedTon} \times \q{ownEatenRatio}` }],
  },
  {
    kind: 'formula',
    shows: 'ownLeftTon',
    onlyWhen: hasOwn,
    says: 'Left over.',
    ways: [{ formula: String.raw`\max(\q{ownTon} - \q{ownUsedTon}, 0)` }],
  },
];

export const haySteps: readonly HayStep[] = [
  {
    kind: 'formula',
    shows: 'buyTon',
    says: 'What is still to be eaten, over the share that the cow gets of a ton.',
    source: 'banta-hay-needs, example',
    ways: [{ formula: String.raw`\frac{\max(\q{hayEatenLb} - \q{ownEatenLb}, 0)}{2000 \times \q{eatenRatio}}` }],
  },
  { kind: 'formula', shows: 'haveTon', says: 'Hay to have in all.', ways: [{ formula: String.raw`\q{ownUsedTon} + \q{buyTon}` }] },
  {
    kind: 'lookup',
    shows: 'otherHaveTon',
    onlyWhen: isWet,
    says: 'The whole working again with {otherChillPercent} more on a cold day, as the other rule for wet coats has it.',
    source: 'our own',
  },
  {
    kind: 'formula',
    shows: 'waterTon',
    says: 'Of that, water.',
    ways: [{ formula: String.raw`\q{haveTon} \times \frac{\q{moisturePercent}}{100}` }],
  },
  { kind: 'formula', shows: 'eatenTon', says: 'Of what they eat, so much as hay.', ways: [{ formula: String.raw`\frac{\q{hayEatenLb}}{2000}` }] },
  {
    kind: 'formula',
    shows: 'feedingLostTon',
    says: 'Lost in feeding.',
    ways: [{ formula: String.raw`\max(\frac{\q{eatenTon}}{\q{feedingKeptRatio}} - \q{eatenTon}, 0)` }],
  },
  {
    kind: 'formula',
    shows: 'storageLostTon',
    says: 'Lost in storage: the rest.',
    ways: [{ formula: String.raw`\max(\q{haveTon} - \q{waterTon} - \q{eatenTon} - \q{feedingLostTon}, 0)` }],
  },
  {
    kind: 'formula',
    shows: 'putOutLbPerDay',
    says: 'To put out on an average day, as fed.',
    ways: [{ formula: String.raw`\frac{\q{hayEatenLb}}{\q{feedingKeptRatio} (1 - \q{moisturePercent} / 100) \q{periodDays}}` }],
  },
  {
    kind: 'formula',
    shows: 'twoWeeksTon',
    says: 'Each two weeks that the grass comes later, at the rate that they eat by then.',
    source: 'anderson-turnout, 10 to 14 days after drought',
    ways: [
      {
        when: ({ beside }) => beside === 'daily' || beside === 'both',
        formula: String.raw`\frac{14 \max(\q{herdEndLbPerDay} - \q{otherFeedLbPerDay}, 0)}{2000 \times \q{eatenRatio}}`,
      },
      { formula: String.raw`\frac{14 \times \q{herdEndLbPerDay}}{2000 \times \q{eatenRatio}}` },
    ],
  },
];
