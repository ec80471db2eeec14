import { stockLinesStep } from '../../asks/stock.ts';
import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { Asked } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type Values = Asked & Results;
const day = 'our own';
const handbook = 'allen-1998';
const isHere = ({ herdOn }: Values): boolean => herdOn === 'here';
const isSelling = ({ sells }: Values): boolean => sells !== 'never';

export const steps: Working<Values, Results> = [
  lookup('weatherIs', {
    says: 'Days of a record are used as they were read. A total over several days is laid on them as rain lies in the one of sixty made-up years that comes nearest to it on those dates.',
    source: day,
  }),
  lookup('madeUpTempPercent', {
    says: 'Highs and lows of the record are used. Dates that it has in no year take what is drawn about the usual months, cooler on a wet day.',
    source: 'richardson-1984',
  }),
  lookup('bridgedTempPercent', {
    says: 'Gaps of up to five days take a straight line between the days beside them, longer ones the mean of the same dates in the other years.',
    source: day,
  }),
  lookup('leftOutCount', {
    says: 'A hay year with more than three days of unread rain is not counted. Up to three such days in a row run dry; a longer stretch runs with made-up rain, so that the years after it begin with grass.',
    source: day,
  }),
  tabulate('stockLines', { ...stockLinesStep, sums: { herdLbPerDay: 'lineLbPerDay' } }),
  formula('stubbleLbPerAc', tex`\q{stubbleIn} \times \q{densityLbPerAcIn}`, { says: 'The stubble in pounds.', source: 'common practice' }),
  lookup('hayDryTon', {
    says: 'Each hay year’s need in order of size; the first that as many years pass as may run short, {shortOfTenCount} of ten.',
    source: day,
  }),
  formula('hayTon', tex`\frac{\q{hayDryTon}}{1 - \q{moisturePercent} / 100}`, {
    says: 'With the water that hay holds in the barn.',
    source: 'common practice',
  }),
  lookup('lowPercent', {
    says: '{shortCount} short years of {yearsCount}: the exact binomial range, low end, 95 percent.',
    source: 'clopper-pearson-1934',
  }),
  lookup('highPercent', { says: 'The same, high end.', source: 'clopper-pearson-1934' }),

  lookup('bound', {
    says: 'Years without one short year that would still leave a chance of one in ten: under 5 percent from the 29th on.',
    source: 'clopper-pearson-1934',
  }),

  lookup('carriedShortCount', {
    says: 'The years in their own order. What their order does stands in the table: two hundred drawings of as many years, two, three or four kept together. They show scatter and never narrow the range: no drawing makes up for years that nobody saw.',
    source: 'kunsch-1989, moving blocks',
  }),

  // One day worked through.
  lookup('dayWaterIn', {
    says: 'One day of the drawn year, {workedDay}, in the first paddock. Rain that fell, with what melted.',
    source: 'kuusisto-1980, for the melt',
  }),
  lookup('dayReferenceIn', {
    says: 'What sun and heat could take, by the day’s high and low and the latitude; nothing under snow.',
    source: 'allen-1998, eq. 52',
  }),
  formula('greenRatio', tex`1 - \exp(-0.00118 \times \q{dayGreenLbPerAc})`, { says: 'Ground under green leaves.', source: 'gregory-1982' }),
  formula(
    'coverRatio',
    tex`1 - 0.85 \times \exp(-(0.00118 \times \q{dayGreenLbPerAc} + 0.0006 \times \q{dayDeadLbPerAc} + 0.001 \times \q{dayLitterLbPerAc}))`,
    { says: 'Ground covered by green, dead and litter, and by crowns and stones where nothing else lies.', source: 'gregory-1982' },
  ),
  lookup('dayCurveNumber', { says: 'Curve number of pasture by that cover, between the middles of the classes.', source: 'tr55-1986, table 2-2c' }),
  formula('tabledIn', tex`\q{wetRetentionIn} + \frac{\q{dayTopIn}}{\q{topHoldIn}} (\q{dryRetentionIn} - \q{wetRetentionIn})`, {
    says: 'What the ground could hold back, between wet and dry by the top foot.',
    source: 'our own',
  }),
  byCase('retentionIn', {
    says: 'The same in the convention chosen.',
    source: 'hawkins-2002',
    ways: [
      { when: ({ abstraction }) => abstraction === 'late', formula: tex`1.33 \times \q{tabledIn}^{1.15}` },
      { formula: tex`\q{tabledIn}`, because: 'the old convention takes it as it is' },
    ],
  }),
  byCase('dayRunoffIn', {
    says: 'What runs off.',
    source: 'tr55-1986, eq. 2-1',
    ways: [
      {
        when: ({ dayWaterIn, abstractedRatio, retentionIn }) => dayWaterIn > abstractedRatio * retentionIn,
        formula: tex`\frac{(\q{dayWaterIn} - \q{abstractedRatio} \times \q{retentionIn})^2}{\q{dayWaterIn} + (1 - \q{abstractedRatio}) \times \q{retentionIn}}`,
      },
      { formula: tex`0`, because: 'too little fell' },
    ],
  }),
  formula('leafStoreIn', tex`\frac{1.5}{25.4} \times \q{coverRatio}`, {
    says: 'Leaves and litter can hold 1.5 mm where the ground is covered.',
    source: 'thurow-1987',
  }),
  formula('dripIn', tex`\max(0, \q{dayHeldIn} - \q{leafStoreIn})`, { says: 'What they held and can hold no longer drips.', source: day }),
  formula('caughtIn', tex`\min(\q{dayWaterIn} - \q{dayRunoffIn}, \q{leafStoreIn} - \q{dayHeldIn} + \q{dripIn})`, {
    says: 'They catch of the rain.',
    source: day,
  }),
  formula('throughIn', tex`\q{dayWaterIn} - \q{dayRunoffIn} - \q{caughtIn} + \q{dripIn}`, { says: 'The rest reaches the ground.', source: day }),
  formula('driedIn', tex`\min(\q{dayHeldIn} - \q{dripIn} + \q{caughtIn}, \q{dayReferenceIn})`, {
    says: 'Wet leaves dry first.',
    source: 'burgy-pomeroy-1958',
  }),
  formula('leftIn', tex`\q{dayReferenceIn} - \q{driedIn}`, { says: 'What is then left for plants and ground.', source: 'burgy-pomeroy-1958' }),
  formula('basalRatio', tex`0.15 + (0.95 - 0.15) \times \q{greenRatio}`, { says: 'More leaves drink more.', source: `${handbook}, eq. 97` }),
  formula('wantedIn', tex`\q{basalRatio} \times \q{leftIn}`, { says: 'Plants want.', source: `${handbook}, eq. 80` }),
  formula('easyRatio', tex`\max(0.1, \min(0.8, 0.6 + 0.04 (5 - 25.4 \times \q{wantedIn})))`, {
    says: 'How much of the root zone gives with ease.',
    source: `${handbook}, table 22`,
  }),
  formula('rootsMissingIn', tex`\max(0, \q{dayMissingIn} - \q{throughIn})`, {
    says: 'Rain fills the root zone first.',
    source: `${handbook}, eq. 85`,
  }),
  formula('stressRatio', tex`\min(1, \frac{\q{rootsHoldIn} - \q{rootsMissingIn}}{(1 - \q{easyRatio}) \times \q{rootsHoldIn}})`, {
    says: 'The drier the root zone, the less it gives.',
    source: `${handbook}, eq. 84`,
  }),
  formula('surfaceMissingIn', tex`\max(0, \q{daySurfaceIn} - \q{throughIn})`, {
    says: 'The surface layer after rain.',
    source: `${handbook}, eq. 77`,
  }),
  formula('exposedRatio', tex`\max(0.01, 1 - \q{coverRatio})`, { says: 'Ground that lies open.', source: `${handbook}, eq. 75` }),
  formula(
    'groundRatio',
    tex`\min(\min(1, \frac{\q{surfaceHoldIn} - \q{surfaceMissingIn}}{\q{surfaceHoldIn} - \q{surfaceEasyIn}}) (1.2 - \q{basalRatio}), 1.2 \times \q{exposedRatio})`,
    { says: 'What open ground can give.', source: `${handbook}, eq. 71` },
  ),
  formula(
    'evaporationIn',
    tex`\min(\q{groundRatio} \times \q{leftIn}, \q{exposedRatio} (\q{surfaceHoldIn} - \q{surfaceMissingIn}), \q{rootsHoldIn} - \q{rootsMissingIn})`,
    { says: 'It evaporates, as long as there is water.', source: `${handbook}, eq. 71` },
  ),
  formula('transpirationIn', tex`\min(\q{stressRatio} \times \q{wantedIn}, \q{rootsHoldIn} - \q{rootsMissingIn} - \q{evaporationIn})`, {
    says: 'Plants use, as long as there is water.',
    source: `${handbook}, eq. 80`,
  }),
  formula('drainageIn', tex`\max(0, \q{throughIn} - \q{dayMissingIn})`, {
    says: 'What the root zone has no room for drains.',
    source: `${handbook}, eq. 88`,
  }),
  byCase('waterRatio', {
    says: 'How well they were watered.',
    source: `${handbook}, eq. 90`,
    ways: [
      { when: ({ wantedIn }) => wantedIn > 0, formula: tex`\frac{\q{transpirationIn}}{\q{wantedIn}}` },
      { formula: tex`\q{stressRatio}`, because: 'nothing was wanted' },
    ],
  }),
  formula(
    'dayGrownLbPerAc',
    tex`\max(0, \q{rateRatio} \times \q{dayResponseRatio} \times \q{waterRatio} (\q{dayGreenLbPerAc} + \q{crownLbPerAc}) (1 - \frac{\q{dayGreenLbPerAc} + \q{dayDeadLbPerAc}}{\q{ceilingLbPerAc}}))`,
    {
      says: 'Growth: by what is green, what the day allows, water, and room. The rate is the one that gives your usual yield.',
      source: 'noy-meir-1975',
    },
  ),
  formula('dyingLbPerAc', tex`(\q{dayGreenLbPerAc} + \q{dayGrownLbPerAc}) (0.008 + 0.012 (1 - \q{waterRatio}) + 0.03 \times \q{dayFrostRatio})`, {
    says: 'Leaves die of age, thirst and hard frost.',
    source: 'our own',
  }),
  formula('fallenLbPerAc', tex`\q{dayDeadLbPerAc} \times \frac{\q{weatheredPercent} / 100}{365 / 12}`, {
    says: 'Dead grass falls.',
    source: 'larsen-2021',
  }),
  formula('standsGreenLbPerAc', tex`\q{dayGreenLbPerAc} + \q{dayGrownLbPerAc} - \q{dyingLbPerAc}`, { says: 'Green before grazing.', source: day }),
  formula('standsDeadLbPerAc', tex`\q{dayDeadLbPerAc} - \q{fallenLbPerAc} + \q{dyingLbPerAc}`, { says: 'Dead before grazing.', source: day }),
  when(isSelling, [
    lookup('soldCount', {
      says: 'Sold on {saleDay}, in the hay years that count. Where it hangs on the grass: if half of what stands above the stubble would last the herd fewer days than you said.',
      source: day,
    }),
    formula('dayWantedLb', tex`\q{dayFullLb} \times \q{dayKeptRatio}`, {
      says: 'From the sale to the next turn-out the herd wants that much less.',
      source: day,
    }),
  ]),
  lookup('herdOn', { says: 'By your rules: stay, move, or on hay.', source: 'our own' }),
  when(isHere, [
    formula(
      'dayEatenLbPerAc',
      tex`\min(\frac{\q{dayWantedLb} \times \min(1, (\q{standsGreenLbPerAc} + \q{standsDeadLbPerAc}) / \q{fullIntakeLbPerAc})}{\q{paddockAc}}, \frac{\max(0, \q{standsGreenLbPerAc} + \q{standsDeadLbPerAc} - 150)}{1 + \q{trampledRatio}})`,
      { says: 'The herd is here. It eats its fill while enough stands, never below 150 lb an acre, and tramples some.', source: 'white-b5036' },
    ),
    formula('dayEatenLb', tex`\q{dayEatenLbPerAc} \times \q{paddockAc}`, { says: 'In the whole paddock.', source: day }),
  ]),
  formula('fedLb', tex`\max(0, \q{dayWantedLb} - \q{dayEatenLb})`, {
    says: 'Hay makes up what they did not get. The herd is never short here: the barn is.',
    source: day,
  }),
  formula('outOfBarnLb', tex`\frac{\q{fedLb}}{1 - \q{feedingLossPercent} / 100}`, {
    says: 'Out of the barn, with what is wasted.',
    source: 'common practice',
  }),
];
