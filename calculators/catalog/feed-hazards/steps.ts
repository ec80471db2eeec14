import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { Values } from './inputs.ts';

type R = ReturnType<typeof compute>;
type V = Values & R;
const hasFeed = ({ forageNitrate }: V): boolean => forageNitrate !== 'not-tested';
const hasWater = ({ waterNitrate }: V): boolean => waterNitrate !== 'not-tested';
const isDose = (values: V): boolean => hasFeed(values) || hasWater(values);
const isMixed = (values: V): boolean => hasFeed(values) && values.otherFeed === 'tested';
const isSorghum = ({ crop }: V): boolean => crop !== 'other';

const slipSteps: Working<V, R> = [
  when(hasFeed, [
    byCase('slipPpm', {
      says: 'The slip’s value in parts per million. One percent is 10,000 of them.',
      ways: [
        { when: ({ slipUnit }) => slipUnit === 'percent', formula: tex`\q{nitratePercent} \times 10000` },
        { formula: tex`\q{nitratePpmCount}` },
      ],
    }),
    byCase('slipNitrogenPpm', {
      says: 'Counted as its nitrogen, by the weights of the atoms: N 14.007, O 15.999, K 39.098.',
      source: 'anderson-nitrate-2016, the two ways of reporting',
      ways: [
        { when: ({ forageNitrate }) => forageNitrate === 'no3', formula: tex`\q{slipPpm} \times \frac{14.007}{14.007 + 3 \times 15.999}` },
        { when: ({ forageNitrate }) => forageNitrate === 'kno3', formula: tex`\q{slipPpm} \times \frac{14.007}{39.098 + 14.007 + 3 \times 15.999}` },
        { when: ({ forageNitrate }) => forageNitrate === 'no3-n', formula: tex`\q{slipPpm}`, because: 'the slip counts it so' },
        { formula: tex`\q{slipPpm}`, because: 'the slip does not say, so it is read the strictest way' },
      ],
    }),
    byCase('nitrogenPpm', {
      says: 'In dry matter, as the lists have it.',
      ways: [
        { when: ({ basis }) => basis === 'dry', formula: tex`\q{slipNitrogenPpm}` },
        { when: ({ basis }) => basis === 'as-fed', formula: tex`\frac{\q{slipNitrogenPpm}}{\q{dryMatterPercent} / 100}` },
        {
          formula: tex`\frac{\q{slipNitrogenPpm}}{\q{dryMatterPercent} / 100}`,
          because: 'the slip does not say, so it is read the strictest way, as fed',
        },
      ],
    }),
    formula('ionPpm', tex`\q{nitrogenPpm} \times \frac{14.007 + 3 \times 15.999}{14.007}`, {
      says: 'The same nitrate as other laboratories report it, as nitrate.',
      source: 'anderson-nitrate-2016, the two ways of reporting',
    }),
    formula('potassiumNitratePpm', tex`\q{nitrogenPpm} \times \frac{39.098 + 14.007 + 3 \times 15.999}{14.007}`, {
      says: 'And as potassium nitrate.',
      source: 'anderson-nitrate-2016, the two ways of reporting',
    }),
  ]),
  byCase('prussicPpm', {
    onlyWhen: ({ prussicAcid }) => prussicAcid === 'tested',
    says: 'Prussic acid in dry matter.',
    ways: [
      { when: ({ basis }) => basis === 'dry', formula: tex`\q{prussicPpmCount}` },
      { formula: tex`\frac{\q{prussicPpmCount}}{\q{dryMatterPercent} / 100}` },
    ],
  }),
  byCase('waterNitrogenMgPerL', {
    onlyWhen: hasWater,
    says: 'The water’s nitrate, counted as nitrogen.',
    source: 'anderson-nitrate-2016, the two ways of reporting',
    ways: [
      { when: ({ waterNitrate }) => waterNitrate === 'no3', formula: tex`\q{slipNitrateMgPerL} \times \frac{14.007}{14.007 + 3 \times 15.999}` },
      { formula: tex`\q{slipNitrateMgPerL}` },
    ],
  }),
  byCase('sulfateMgPerL', {
    onlyWhen: ({ waterSulfate }) => waterSulfate !== 'not-tested',
    says: 'The water’s sulfate as SO4. Where the slip may mean sulfur it is read so: three times as much.',
    source: 'virginia-spes-201, table 1',
    ways: [
      { when: ({ waterSulfate }) => waterSulfate === 'so4', formula: tex`\q{slipSulfateMgPerL}` },
      { formula: tex`\q{slipSulfateMgPerL} \times \frac{32.06 + 4 \times 15.999}{32.06}` },
    ],
  }),
  byCase('saltsMgPerL', {
    onlyWhen: ({ waterSalts }) => waterSalts !== 'not-tested',
    says: 'The water’s salts. From conductivity it is a rough figure.',
    source: 'servitech-water, factors for reports',
    ways: [
      { when: ({ waterSalts }) => waterSalts === 'conductivity', formula: tex`640 \times \q{conductivityCount}` },
      { formula: tex`\q{slipSaltsMgPerL}` },
    ],
  }),
];

const daySteps: Working<V, R> = [
  formula('drunkGal', tex`\q{waterGalPerDay}`, {
    onlyWhen: (values) => hasWater(values) && values.waterFrom === 'known',
    says: 'What one animal drinks in a day.',
  }),
  lookup('drunkGal', {
    onlyWhen: (values) => hasWater(values) && values.waterFrom !== 'known',
    says: 'What one animal of that weight drinks in a day by the highest list, as for days of stock water; no less than 1.5 gallons for each 100 lb when it is hot and 0.75 when it is cold.',
    source: 'noble-water-1999, gould-fs1090 and beef-summer-water, with mwps14-new-hampshire for goats and k-state-watering-handbook for 100 lb',
  }),
  formula('otherPpm', tex`\q{otherPpmCount}`, { onlyWhen: isMixed, says: 'The other feed, as its slip has it.' }),
  when(hasFeed, [
    byCase('rationPpm', {
      says: 'Nitrate nitrogen in all they eat.',
      ways: [
        {
          when: ({ otherFeed }) => otherFeed === 'tested',
          formula: tex`\frac{\q{sharePercent}}{100} \times \q{nitrogenPpm} + (1 - \frac{\q{sharePercent}}{100}) \times \q{otherPpm}`,
        },
        {
          when: ({ otherFeed }) => otherFeed === 'untested',
          formula: tex`\q{nitrogenPpm}`,
          because: 'a feed that nobody tested is counted as high as this one',
        },
        { formula: tex`\q{nitrogenPpm}`, because: 'they eat nothing else' },
      ],
    }),
    formula('feedG', tex`\frac{\q{eatenLbPerDay} \times 0.45359237 \times \q{rationPpm}}{1000}`, {
      says: 'Grams a day from feed: a pound is 0.45359237 kg, and a ppm is a thousandth of a gram in each.',
      source: 'dairyland-nitrate, comment on the first class',
    }),
  ]),
  formula('waterG', tex`\frac{\q{drunkGal} \times 3.785411784 \times \q{waterNitrogenMgPerL}}{1000}`, {
    onlyWhen: hasWater,
    says: 'Grams a day from water: a gallon is 3.785411784 liters.',
  }),
  when(isDose, [
    formula('totalG', tex`\q{feedG} + \q{waterG}`, { says: 'Feed and water add.', source: 'harty-nitrate' }),
    formula('gPerCwt', tex`\frac{100 \times \q{totalG}}{\q{weightLb}}`, { says: 'For each 100 lb of the animal.' }),
  ]),
  formula('asFeedPpm', tex`\frac{1000 \times \q{totalG}}{\q{eatenLbPerDay} \times 0.45359237}`, {
    onlyWhen: (values) => hasFeed(values) && hasWater(values),
    says: 'The same amount as if it were all in what they eat, to hold it against the lists.',
  }),
  tabulate('readings', {
    says: 'Each list’s class: the last one whose lower edge the value reaches, as a whole number, the way it stands there. A value on an edge belongs to the class above it.',
    source: 'clemson-nitrate, and the other lists that are named',
    formulas: {},
  }),
];

const mixSteps: Working<V, R> = [
  formula('waterAsFeedPpm', tex`\frac{1000 \times \q{waterG}}{\q{eatenLbPerDay} \times 0.45359237}`, {
    onlyWhen: isMixed,
    says: 'What the water puts on top, as if it were in the feed.',
  }),
  lookup('limitPpm', {
    onlyWhen: (values) => isMixed(values) && values.limitFrom === 'strictest',
    says: 'The lowest edge at which any of the lists sets a limit or warns.',
    source: 'servitech-nitrate, table 1',
  }),
  formula('limitPpm', tex`\q{ownLimitPpmCount}`, {
    onlyWhen: (values) => isMixed(values) && values.limitFrom === 'own',
    says: 'The level that you were given.',
  }),
  when(isMixed, [
    formula('roomPpm', tex`\q{limitPpm} - \q{waterAsFeedPpm}`, { says: 'What the water leaves of it for feed.' }),
    lookup('higherFeed', { says: 'Which of the two holds more nitrate nitrogen.', source: 'common practice' }),
    byCase('mixSharePercent', {
      says: 'Share of the higher feed that brings the mix just to that, by dry matter.',
      source: 'amaglab-nitrate-mixing, equation solved for the share',
      ways: [
        {
          when: ({ roomPpm, nitrogenPpm, otherPpm }) => roomPpm <= Math.min(nitrogenPpm, otherPpm),
          formula: '0',
          because: 'the lower feed and the water leave no room',
        },
        {
          when: ({ roomPpm, nitrogenPpm, otherPpm }) => Math.max(nitrogenPpm, otherPpm) <= roomPpm,
          formula: '100',
          because: 'both are under that by themselves',
        },
        {
          when: ({ higherFeed }) => higherFeed === 'this',
          formula: tex`\frac{100 \times (\q{roomPpm} - \q{otherPpm})}{\q{nitrogenPpm} - \q{otherPpm}}`,
        },
        { formula: tex`\frac{100 \times (\q{roomPpm} - \q{nitrogenPpm})}{\q{otherPpm} - \q{nitrogenPpm}}` },
      ],
    }),
    lookup('listSharePercent', {
      says: 'The smallest share that any list names for this feed’s value; 100 where none names one.',
      source: 'clemson-nitrate, dairyland-nitrate and servitech-nitrate',
    }),
    lookup('otherListSharePercent', { says: 'The same for the other feed.', source: 'clemson-nitrate, dairyland-nitrate and servitech-nitrate' }),
    lookup('leadSharePercent', {
      says: 'The smaller of the two for the higher feed: the largest whole percent that stays under the level, and the lists’ share.',
      source: 'common practice',
    }),
    formula('restSharePercent', tex`100 - \q{leadSharePercent}`, { says: 'The rest of the mix is the lower feed.' }),
  ]),
];

const ruleSteps: Working<V, R> = [
  when(isSorghum, [
    lookup('leastHeightIn', {
      says: 'The tallest height that a list asks for before this crop is grazed. A list that asks for none is no leave to graze short.',
      source: 'seedway-sorghum, with drewnoski-redfearn-2024, agproud-35189, hay-forage-311 and, for indiangrass, sulc-frost-1613',
    }),
    lookup('killingFrostDays', {
      says: 'After a killing frost, by the longest list: that of a stand which it found short. For indiangrass no waits were found, so those of sorghum stand in.',
      source: 'agproud-35189, with drewnoski-redfearn-2024',
    }),
    lookup('lightFrostDays', {
      says: 'After a frost that leaves part of it alive. Each such frost starts the count again.',
      source: 'agproud-35189, heights and waits',
    }),
    lookup('afterDroughtDays', { says: 'After the rain that ends a drought.', source: 'hay-forage-311, heights and waits' }),
    lookup('ensiledDays', {
      says: 'In the silo or the wrapped bale, by the longest list. It lowers the risk and is no clearance.',
      source: 'seedway-sorghum, heights and ensiling',
    }),
  ]),
];

export const steps = [...slipSteps, ...daySteps, ...mixSteps, ...ruleSteps];
