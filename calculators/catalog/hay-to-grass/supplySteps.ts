import { byCase, formula, lookup, tex } from '../../kit/steps.ts';
import { type HayStep, hasOwn, isDivided, isOwnLooked, isWet } from './step.ts';

export const onHandSteps: readonly HayStep[] = [
  formula('ownTon', tex`\frac{\q{ownCount} \times \q{ownBaleLb}}{2000}`, { onlyWhen: hasOwn, says: 'Hay on hand, as it was weighed.' }),
  lookup('ownWeighingMonths', { onlyWhen: isOwnLooked, says: 'How long it had stood when it was weighed.', source: 'common practice' }),
  lookup('ownFeedingMonths', {
    onlyWhen: isOwnLooked,
    says: 'How long it will have stood in the middle of feeding, from {baledDay} on.',
    source: 'common practice',
  }),
  lookup('ownLossAtWeighingPercent', {
    onlyWhen: isOwnLooked,
    says: 'Lost by the weighing ({ownStorage}).',
    source: 'huhnke-bae1716, straight line between its months',
  }),
  lookup('ownLossAtFeedingPercent', {
    onlyWhen: isOwnLooked,
    says: 'Lost by the middle of feeding.',
    source: 'huhnke-bae1716, straight line between its months',
  }),
  byCase('ownLossPercent', {
    onlyWhen: hasOwn,
    says: 'Still to be lost, as a share of what was weighed.',
    ways: [
      { when: ({ ownStorage }) => ownStorage === 'known', formula: tex`\q{knownOwnPercent}`, because: 'your own figure' },
      {
        when: ({ ownStorage }) => ownStorage === 'rind',
        formula: tex`100 (1 - (1 - \frac{2 \times \q{rindIn}}{12 \times \q{ownDiameterFt}})^2)`,
        because: 'the spoiled rind, with bales end to end',
      },
      { formula: tex`100 (1 - \frac{1 - \q{ownLossAtFeedingPercent} / 100}{1 - \q{ownLossAtWeighingPercent} / 100})` },
    ],
  }),
  byCase('ownStorageKeptRatio', {
    onlyWhen: hasOwn,
    says: 'What storage leaves of it.',
    ways: [
      { when: isDivided, formula: tex`1 - \frac{\q{ownLossPercent}}{100}` },
      { formula: tex`\frac{1}{1 + \q{ownLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  }),
  formula('ownAtFeedingTon', tex`\q{ownTon} \times \q{ownStorageKeptRatio}`, { onlyWhen: hasOwn, says: 'So much of it is left to feed.' }),
  formula('ownEatenRatio', tex`(1 - \frac{\q{moisturePercent}}{100}) \times \q{ownStorageKeptRatio} \times \q{feedingKeptRatio}`, {
    onlyWhen: hasOwn,
    says: 'What the cow gets of a ton of it as weighed.',
  }),
  formula('ownUsedTon', tex`\min(\q{ownTon}, \frac{\q{hayEatenLb}}{2000 \times \q{ownEatenRatio}})`, {
    onlyWhen: hasOwn,
    says: 'It goes first, as far as it reaches or is needed.',
  }),
  formula('ownEatenLb', tex`2000 \times \q{ownUsedTon} \times \q{ownEatenRatio}`, { onlyWhen: hasOwn, says: 'And gives so much to eat.' }),
  formula('ownLeftTon', tex`\max(\q{ownTon} - \q{ownUsedTon}, 0)`, { onlyWhen: hasOwn, says: 'Left over.' }),
];

export const haySteps: readonly HayStep[] = [
  formula('buyTon', tex`\frac{\max(\q{hayEatenLb} - \q{ownEatenLb}, 0)}{2000 \times \q{eatenRatio}}`, {
    says: 'What is still to be eaten, over the share that the cow gets of a ton.',
    source: 'banta-hay-needs, example',
  }),
  formula('haveTon', tex`\q{ownUsedTon} + \q{buyTon}`, { says: 'Hay to have in all.' }),
  lookup('otherHaveTon', {
    onlyWhen: isWet,
    says: 'The whole working again with {otherChillPercent} more on a cold day, as the other rule for wet coats has it.',
    source: 'our own',
  }),
  formula('waterTon', tex`\q{haveTon} \times \frac{\q{moisturePercent}}{100}`, { says: 'Of that, water.' }),
  formula('eatenTon', tex`\frac{\q{hayEatenLb}}{2000}`, { says: 'Of what they eat, so much as hay.' }),
  formula('feedingLostTon', tex`\max(\frac{\q{eatenTon}}{\q{feedingKeptRatio}} - \q{eatenTon}, 0)`, { says: 'Lost in feeding.' }),
  formula('storageLostTon', tex`\max(\q{haveTon} - \q{waterTon} - \q{eatenTon} - \q{feedingLostTon}, 0)`, { says: 'Lost in storage: the rest.' }),
  formula('putOutLbPerDay', tex`\frac{\q{hayEatenLb}}{\q{feedingKeptRatio} (1 - \q{moisturePercent} / 100) \q{periodDays}}`, {
    says: 'To put out on an average day, as fed.',
  }),
  byCase('twoWeeksTon', {
    says: 'Each two weeks that the grass comes later, at the rate that they eat by then.',
    source: 'anderson-turnout, 10 to 14 days after drought',
    ways: [
      {
        when: ({ beside }) => beside === 'daily' || beside === 'both',
        formula: tex`\frac{14 \max(\q{herdEndLbPerDay} - \q{otherFeedLbPerDay}, 0)}{2000 \times \q{eatenRatio}}`,
      },
      { formula: tex`\frac{14 \times \q{herdEndLbPerDay}}{2000 \times \q{eatenRatio}}` },
    ],
  }),
];
