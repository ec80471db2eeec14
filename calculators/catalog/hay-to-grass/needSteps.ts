import { type HayStep, isDivided, isWet } from './step.ts';

export const eatenSteps: readonly HayStep[] = [
  { kind: 'lookup', shows: 'periodDays', says: 'From {fromDay} to {toDay}, counted on the calendar.', source: 'common practice' },
  {
    kind: 'lookup',
    shows: 'criticalF',
    onlyWhen: ({ isColdCounted }) => isColdCounted,
    says: 'How cold it may feel before cattle with this coat need more feed: {coat}.',
    source: 'rusche-2020, lower critical temperatures',
  },
  {
    kind: 'formula',
    shows: 'chillPercent',
    onlyWhen: ({ isColdCounted }) => isColdCounted,
    says: 'One percent more for each degree below that; for a wet coat one or two, by the rule that you chose.',
    source: 'rusche-2020, general rule, with selk-wet-coat',
    ways: [
      {
        when: ({ coat, wetCoatRule }) => coat === 'wet' && wetCoatRule === 'two',
        formula: String.raw`2 \max(\q{criticalF} - \q{feelsLikeF}, 0)`,
        because: 'twice as much for a wet coat',
      },
      { formula: String.raw`\max(\q{criticalF} - \q{feelsLikeF}, 0)` },
    ],
  },
  {
    kind: 'formula',
    shows: 'otherChillPercent',
    onlyWhen: isWet,
    says: 'And by the other rule for wet coats.',
    source: 'beck-cold-2025, with kansas-cold-2025',
    ways: [
      {
        when: ({ wetCoatRule }) => wetCoatRule === 'two',
        formula: String.raw`\max(\q{criticalF} - \q{feelsLikeF}, 0)`,
        because: 'the same for a wet coat as for a dry one',
      },
      { formula: String.raw`2 \max(\q{criticalF} - \q{feelsLikeF}, 0)`, because: 'twice as much for a wet coat' },
    ],
  },
  {
    kind: 'formula',
    shows: 'coldPercent',
    onlyWhen: ({ isColdCounted }) => isColdCounted,
    says: 'The cold days spread over the whole time.',
    ways: [{ formula: String.raw`\frac{\q{chillPercent} \times \q{coldDays}}{\q{periodDays}}` }],
  },
  {
    kind: 'rows',
    of: 'kinds',
    says: 'What each kind eats, with the water out: the days before birth at one rate, the days after at the other. Where none are born, all days are before.',
    source: 'common practice',
    formulas: {
      beforeDays: String.raw`\min(\max(\q{toBirthDays}, 0), \q{periodDays})`,
      afterDays: String.raw`\q{periodDays} - \q{beforeDays}`,
      eachLbPerDay: String.raw`\frac{\q{weightLb} (\q{intakePercent} \times \q{beforeDays} + \q{nursingPercent} \times \q{afterDays})}{100 \times \q{periodDays}} (1 + \frac{\q{addedPercent}}{100})`,
      kindLb: String.raw`\q{countHead} \times \q{eachLbPerDay} \times \q{periodDays}`,
      endLbPerDay: [
        {
          when: ({ afterDays }) => afterDays > 0,
          formula: String.raw`\frac{\q{countHead} \q{weightLb} \q{nursingPercent}}{100}`,
          because: 'nursing by then',
        },
        { formula: String.raw`\frac{\q{countHead} \q{weightLb} \q{intakePercent}}{100}` },
      ],
    },
    sums: { dryMatterLb: 'kindLb', herdEndLbPerDay: 'endLbPerDay' },
  },
  { kind: 'formula', shows: 'dryMatterTon', says: 'In tons.', ways: [{ formula: String.raw`\frac{\q{dryMatterLb}}{2000}` }] },
  {
    kind: 'formula',
    shows: 'besideLb',
    onlyWhen: ({ beside }) => beside !== 'none',
    says: 'Other feed, taken to spare hay pound for pound.',
    ways: [
      { when: ({ beside }) => beside === 'standing', formula: String.raw`\q{standingLb}` },
      { when: ({ beside }) => beside === 'daily', formula: String.raw`\q{otherFeedLbPerDay} \times \q{periodDays}` },
      { formula: String.raw`\q{standingLb} + \q{otherFeedLbPerDay} \times \q{periodDays}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'hayEatenLb',
    says: 'The rest must come from hay.',
    ways: [{ formula: String.raw`\max(\q{dryMatterLb} - \q{besideLb}, 0)` }],
  },
];

export const lossesSteps: readonly HayStep[] = [
  {
    kind: 'lookup',
    shows: 'feedingLossPercent',
    onlyWhen: ({ feeder }) => feeder !== 'known',
    says: 'What the trials lost this way: {feeder}. Where trials differ, the middle or the one repeated most.',
    source: 'lalman-feeders, with buskirk-2003, schnakenberg-feeders, bell-martz-1973 and kallenbach-g4570',
  },
  {
    kind: 'formula',
    shows: 'boughtMonths',
    onlyWhen: ({ storage }) => storage !== 'known',
    says: 'How long the bought hay stands: the last bale the whole time, the first one not at all.',
    source: 'common practice',
    ways: [
      { when: ({ storedFrom }) => storedFrom === 'months', formula: String.raw`\q{storedMonths}`, because: 'as you gave it' },
      { formula: String.raw`\frac{\q{periodDays} / 30.4375}{2}`, because: 'half of the days on hay' },
    ],
  },
  {
    kind: 'lookup',
    shows: 'lossAt9Percent',
    onlyWhen: ({ storage }) => storage !== 'known',
    says: 'What is lost by nine months ({storage}; rain {yearlyRain}).',
    source: 'huhnke-bae1716, up to 9 months',
  },
  {
    kind: 'lookup',
    shows: 'lossAt15Percent',
    onlyWhen: ({ storage }) => storage !== 'known',
    says: 'And by the middle of twelve to eighteen months.',
    source: 'huhnke-bae1716, 12 to 18 months',
  },
  {
    kind: 'formula',
    shows: 'storageLossPercent',
    says: 'Lost in storage by the months that it really stands, on a straight line between those.',
    ways: [
      { when: ({ storage }) => storage === 'known', formula: String.raw`\q{knownStoragePercent}`, because: 'your own figure' },
      { when: ({ boughtMonths }) => boughtMonths <= 9, formula: String.raw`\q{lossAt9Percent} \times \frac{\q{boughtMonths}}{9}` },
      {
        formula: String.raw`\q{lossAt9Percent} + (\q{lossAt15Percent} - \q{lossAt9Percent}) \frac{\min(\q{boughtMonths}, 15) - 9}{15 - 9}`,
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'feedingKeptRatio',
    says: 'What feeding leaves.',
    ways: [
      { when: isDivided, formula: String.raw`1 - \frac{\q{feedingLossPercent}}{100}` },
      { formula: String.raw`\frac{1}{1 + \q{feedingLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  },
  {
    kind: 'formula',
    shows: 'storageKeptRatio',
    says: 'What storage leaves.',
    ways: [
      { when: isDivided, formula: String.raw`1 - \frac{\q{storageLossPercent}}{100}` },
      { formula: String.raw`\frac{1}{1 + \q{storageLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  },
  {
    kind: 'formula',
    shows: 'eatenRatio',
    says: 'Water and losses one upon another: what the cow gets of a ton as weighed. Losses are never added up.',
    source: 'wv-farm-bureau-2014, p. 15',
    ways: [{ formula: String.raw`(1 - \frac{\q{moisturePercent}}{100}) \times \q{storageKeptRatio} \times \q{feedingKeptRatio}` }],
  },
];
