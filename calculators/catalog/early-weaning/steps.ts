import type { Step } from '../../kit/steps.ts';
import { type compute, youngDays } from './compute.ts';
import type { Values } from './inputs.ts';

type R = ReturnType<typeof compute>;
type V = Values & R;
const isFed = ({ calfGoes }: V): boolean => calfGoes !== 'sold';
const isTabled = ({ intakeFrom }: V): boolean => intakeFrom !== 'own';

const formula = (shows: (Step<V, R> & { kind: 'formula' })['shows'], says: string, template: string, source?: string): Step<V, R> => ({
  kind: 'formula',
  shows,
  says,
  ways: [{ formula: template }],
  ...(source === undefined ? {} : { source }),
});

const feedSteps: readonly Step<V, R>[] = [
  {
    kind: 'lookup',
    shows: 'nursingPercent',
    onlyWhen: isTabled,
    says: 'What a nursing cow eats on such forage.',
    source: 'hibberd-thrift-1992, intake by forage quality',
  },
  {
    kind: 'lookup',
    shows: 'idlePercent',
    onlyWhen: isTabled,
    says: 'And a dry one.',
    source: 'hibberd-thrift-1992, intake by forage quality',
  },
  {
    kind: 'lookup',
    shows: 'calfPercent',
    onlyWhen: ({ calfForageFrom, ageDays }) => calfForageFrom === 'by-weight' && ageDays >= youngDays,
    says: 'What a calf takes beside milk.',
    source: 'jaeger-early-weaning, calf of 450 lb at 120 days',
  },
  {
    kind: 'lookup',
    shows: 'calfPercent',
    onlyWhen: ({ calfForageFrom, ageDays }) => calfForageFrom === 'by-weight' && ageDays < youngDays,
    says: 'What a calf under three months takes beside milk.',
    source: 'unl-stocking-creep, calf before three months',
  },
  formula('nursingMeanLb', 'A calf’s weight in the middle of those days.', String.raw`\frac{\q{earlyWeightLb} + \q{usualWeightLb}}{2}`),
  {
    kind: 'formula',
    shows: 'fedWeightLb',
    says: 'What the weaned calf weighs on the usual day.',
    onlyWhen: isFed,
    ways: [{ formula: String.raw`\q{earlyWeightLb} + \q{fedGainLbPerDay} \times \q{aheadDays}` }],
  },
  {
    kind: 'formula',
    shows: 'fedMeanLb',
    says: 'Its weight in the middle of the days.',
    onlyWhen: isFed,
    ways: [{ formula: String.raw`\frac{\q{earlyWeightLb} + \q{fedWeightLb}}{2}` }],
  },
  {
    kind: 'formula',
    shows: 'calfNeedLb',
    says: 'Feed that it needs.',
    onlyWhen: isFed,
    ways: [{ formula: String.raw`\frac{\q{fedMeanLb} \times \q{calfNeedPercent} \times \q{aheadDays}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'calfNeedHerdLb',
    says: 'For all calves.',
    onlyWhen: isFed,
    ways: [{ formula: String.raw`\q{calfNeedLb} \times \q{pairsHead}` }],
  },
  {
    kind: 'rows',
    of: 'lines',
    says: 'Cow and calf apart: the cow by how much less she eats dry, the calf by the grass that it took. Once with the guides that save least, once with the likely ones, once with those that save most.',
    source: 'hibberd-thrift-1992, with michigan-beef-notes, luling-foundation and unl-stocking-creep',
    formulas: {
      calfLbPerDay: [
        { when: ({ calfForageFrom }) => calfForageFrom === 'own', formula: String.raw`\q{ownCalfLbPerDay}` },
        { formula: String.raw`\frac{\q{nursingMeanLb} \times \q{calfPercent}}{100}` },
      ],
      cowLb: String.raw`\frac{\q{cowWeightLb} \times (\q{milkingPercent} - \q{dryPercent}) \times \q{aheadDays}}{100}`,
      calfLb: String.raw`\q{calfLbPerDay} \times \q{aheadDays}`,
      sparedLb: String.raw`\q{cowLb} + \q{calfLb}`,
      keptLb: [
        {
          when: ({ calfGoes }) => calfGoes === 'own-feed',
          formula: String.raw`\q{sparedLb} - \q{calfNeedLb}`,
          because: 'the weaned calf still eats here',
        },
        { formula: String.raw`\q{sparedLb}` },
      ],
      keptHerdLb: String.raw`\q{keptLb} \times \q{pairsHead}`,
    },
  },
  {
    kind: 'formula',
    shows: 'cowOnlyPercent',
    says: 'As a share of what the cow eats, the cow alone.',
    ways: [{ formula: String.raw`\frac{\q{nursingPercent} - \q{idlePercent}}{\q{nursingPercent}} \times 100` }],
  },
  formula(
    'pairEatsLb',
    'What cow and calf would have eaten.',
    String.raw`(\frac{\q{cowWeightLb} \times \q{nursingPercent}}{100} + \q{calfLbPerDay}) \times \q{aheadDays}`,
  ),
  formula(
    'bothPercent',
    'And counting the calf: a share of what the pair would have eaten.',
    String.raw`\frac{\q{savedLb}}{\q{pairEatsLb}} \times 100`,
  ),
  formula('stillEatsLb', 'What the dry cow still eats.', String.raw`\q{pairEatsLb} - \q{savedLb}`),
  formula(
    'cowDays',
    'The cow’s part, in days of a dry cow’s grazing.',
    String.raw`\frac{\q{cowSavedLb}}{\q{cowWeightLb} \times \q{idlePercent} / 100}`,
    'jaeger-early-weaning, days of grazing by calf and by cow',
  ),
  formula('calfDays', 'The calf’s part, the same way.', String.raw`\frac{\q{calfSavedLb}}{\q{cowWeightLb} \times \q{idlePercent} / 100}`),
];

const moneySteps: readonly Step<V, R>[] = [
  formula(
    'nursingGainLbPerDay',
    'Gain on the cow that your two weights mean.',
    String.raw`\frac{\q{usualWeightLb} - \q{earlyWeightLb}}{\q{aheadDays}}`,
  ),
  formula(
    'slideUsd',
    'The price slide: how far the price of a hundred pounds falls for each 100 lb more.',
    String.raw`\frac{100 \times (\q{earlyPriceUsdPerCwt} - \q{usualPriceUsdPerCwt})}{\q{usualWeightLb} - \q{earlyWeightLb}}`,
    'aces-price-slide, equation 1 solved for the slide',
  ),
  formula('usualUsd', 'The calf at the usual time, if the market stays.', String.raw`\frac{\q{usualWeightLb} \times \q{usualPriceUsdPerCwt}}{100}`),
  formula(
    'gainUsdPerLb',
    'So a pound of gain brings less than the price of a pound.',
    String.raw`\frac{\q{usualUsd} - \q{earlyWeightLb} \times \q{earlyPriceUsdPerCwt} / 100}{\q{usualWeightLb} - \q{earlyWeightLb}}`,
    'noble-value-of-gain-2005, second paragraph',
  ),
  formula('savedUsd', 'What the forage is worth that cow and calf leave.', String.raw`\frac{\q{savedLb} \times \q{forageUsdPerTon}}{2000}`),
  formula(
    'sellEarlyUsd',
    'Sold now: the calf, interest on its money until the usual day, the forage, less the cost of weaning early.',
    String.raw`\frac{\q{earlyWeightLb} \times \q{earlyPriceUsdPerCwt}}{100} \times (1 + \frac{\q{interestPercent} \times \q{aheadDays}}{36500}) - \q{weaningCostUsd} + \q{savedUsd}`,
    'noble-early-weaning-1998, projected budget',
  ),
  {
    kind: 'rows',
    of: 'markets',
    says: 'The same if the market moves before the usual day.',
    formulas: {
      shiftedUsualUsdPerCwt: String.raw`\q{usualPriceUsdPerCwt} \times (1 + \frac{\q{shiftPercent}}{100})`,
      usualWayUsd: String.raw`\frac{\q{usualWeightLb} \times \q{shiftedUsualUsdPerCwt}}{100}`,
      soldWayUsd: String.raw`\q{sellEarlyUsd}`,
    },
  },
  {
    kind: 'formula',
    shows: 'calfUsdPerDay',
    says: 'What the weaned calf costs a day.',
    onlyWhen: isFed,
    ways: [
      {
        when: ({ calfGoes }) => calfGoes === 'own-feed',
        formula: String.raw`\frac{\q{fedMeanLb} \times \q{calfNeedPercent}}{100} \times \frac{\q{forageUsdPerTon}}{2000} + \q{careUsdPerDay}`,
        because: 'your own forage is charged at what it is worth',
      },
      { formula: String.raw`\frac{\q{fedMeanLb} \times \q{calfNeedPercent}}{100} \times \frac{\q{calfFeedUsdPerTon}}{2000} + \q{careUsdPerDay}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'fedPriceUsdPerCwt',
    says: 'The price at the weight it then has, on the line through your two quotes.',
    onlyWhen: isFed,
    source: 'aces-price-slide, equation 1',
    ways: [{ formula: String.raw`\q{usualPriceUsdPerCwt} + \frac{(\q{usualWeightLb} - \q{fedWeightLb}) \times \q{slideUsd}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'feedEarlyUsd',
    says: 'Fed until the usual day.',
    onlyWhen: isFed,
    ways: [
      {
        formula: String.raw`\frac{\q{fedWeightLb} \times \q{fedPriceUsdPerCwt}}{100} - \q{calfUsdPerDay} \times \q{aheadDays} - \q{weaningCostUsd} + \q{savedUsd}`,
      },
    ],
  },
  {
    kind: 'rows',
    of: 'fedMarkets',
    onlyWhen: isFed,
    says: 'And if the market moves.',
    formulas: {
      shiftedFedUsdPerCwt: String.raw`\q{fedPriceUsdPerCwt} \times (1 + \frac{\q{shiftPercent}}{100})`,
      fedWayUsd: String.raw`\frac{\q{fedWeightLb} \times \q{shiftedFedUsdPerCwt}}{100} - \q{calfUsdPerDay} \times \q{aheadDays} - \q{weaningCostUsd} + \q{savedUsd}`,
    },
  },
  {
    kind: 'formula',
    shows: 'earlyUsd',
    says: 'Weaned early, the way you chose',
    ways: [
      { when: ({ calfGoes }) => calfGoes === 'sold', formula: String.raw`\q{sellEarlyUsd}`, because: 'the calf is sold' },
      { formula: String.raw`\q{feedEarlyUsd}`, because: 'the calf is fed' },
    ],
  },
  {
    kind: 'formula',
    shows: 'grossUsd',
    says: 'and what of it moves with the market until the usual day.',
    ways: [
      { when: ({ calfGoes }) => calfGoes === 'sold', formula: '0', because: 'its money is in hand' },
      { formula: String.raw`\frac{\q{fedWeightLb} \times \q{fedPriceUsdPerCwt}}{100}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'evenMarketPercent',
    says: 'The move of the market at which early and usual leave the same.',
    onlyWhen: ({ isEven }) => isEven === 'yes',
    source: 'our own, both ways set equal',
    ways: [{ formula: String.raw`100 \times (\frac{\q{earlyUsd} - \q{grossUsd}}{\q{usualUsd} - \q{grossUsd}} - 1)` }],
  },
  {
    kind: 'rows',
    of: 'byMarket',
    says: 'Both ways, as the market moves.',
    formulas: {
      usualAtUsd: String.raw`\q{usualUsd} \times (1 + \frac{\q{marketPercent}}{100})`,
      earlyAtUsd: String.raw`\q{grossUsd} \times (1 + \frac{\q{marketPercent}}{100}) + \q{earlyUsd} - \q{grossUsd}`,
    },
  },
];

export const steps = [...feedSteps, ...moneySteps];
