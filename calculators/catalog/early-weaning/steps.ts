import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import { type compute, youngDays } from './compute.ts';
import type { Values } from './inputs.ts';

type R = ReturnType<typeof compute>;
type V = Values & R;
const isFed = ({ calfGoes }: V): boolean => calfGoes !== 'sold';
const isTabled = ({ intakeFrom }: V): boolean => intakeFrom !== 'own';

const feedSteps: Working<V, R> = [
  when(isTabled, [
    lookup('nursingPercent', { says: 'What a nursing cow eats on such forage.', source: 'hibberd-thrift-1992, intake by forage quality' }),
    lookup('idlePercent', { says: 'And a dry one.', source: 'hibberd-thrift-1992, intake by forage quality' }),
  ]),
  lookup('calfPercent', {
    onlyWhen: ({ calfForageFrom, ageDays }) => calfForageFrom === 'by-weight' && ageDays >= youngDays,
    says: 'What a calf takes beside milk.',
    source: 'jaeger-early-weaning, calf of 450 lb at 120 days',
  }),
  lookup('calfPercent', {
    onlyWhen: ({ calfForageFrom, ageDays }) => calfForageFrom === 'by-weight' && ageDays < youngDays,
    says: 'What a calf under three months takes beside milk.',
    source: 'unl-stocking-creep, calf before three months',
  }),
  formula('nursingMeanLb', tex`\frac{\q{earlyWeightLb} + \q{usualWeightLb}}{2}`, { says: 'A calf’s weight in the middle of those days.' }),
  when(isFed, [
    formula('fedWeightLb', tex`\q{earlyWeightLb} + \q{fedGainLbPerDay} \times \q{aheadDays}`, {
      says: 'What the weaned calf weighs on the usual day.',
    }),
    formula('fedMeanLb', tex`\frac{\q{earlyWeightLb} + \q{fedWeightLb}}{2}`, { says: 'Its weight in the middle of the days.' }),
    formula('calfNeedLb', tex`\frac{\q{fedMeanLb} \times \q{calfNeedPercent} \times \q{aheadDays}}{100}`, { says: 'Feed that it needs.' }),
    formula('calfNeedHerdLb', tex`\q{calfNeedLb} \times \q{pairsHead}`, { says: 'For all calves.' }),
  ]),
  tabulate('lines', {
    says: 'Cow and calf apart: the cow by how much less she eats dry, the calf by the grass that it took. Once with the guides that save least, once with the likely ones, once with those that save most.',
    source: 'hibberd-thrift-1992, with michigan-beef-notes, luling-foundation and unl-stocking-creep',
    formulas: {
      calfLbPerDay: [
        { when: ({ calfForageFrom }) => calfForageFrom === 'own', formula: tex`\q{ownCalfLbPerDay}` },
        { formula: tex`\frac{\q{nursingMeanLb} \times \q{calfPercent}}{100}` },
      ],
      cowLb: tex`\frac{\q{cowWeightLb} \times (\q{milkingPercent} - \q{dryPercent}) \times \q{aheadDays}}{100}`,
      calfLb: tex`\q{calfLbPerDay} \times \q{aheadDays}`,
      sparedLb: tex`\q{cowLb} + \q{calfLb}`,
      keptLb: [
        { when: ({ calfGoes }) => calfGoes === 'own-feed', formula: tex`\q{sparedLb} - \q{calfNeedLb}`, because: 'the weaned calf still eats here' },
        { formula: tex`\q{sparedLb}` },
      ],
      keptHerdLb: tex`\q{keptLb} \times \q{pairsHead}`,
    },
  }),
  formula('cowOnlyPercent', tex`\frac{\q{nursingPercent} - \q{idlePercent}}{\q{nursingPercent}} \times 100`, {
    says: 'As a share of what the cow eats, the cow alone.',
  }),
  formula('pairEatsLb', tex`(\frac{\q{cowWeightLb} \times \q{nursingPercent}}{100} + \q{calfLbPerDay}) \times \q{aheadDays}`, {
    says: 'What cow and calf would have eaten.',
  }),
  formula('bothPercent', tex`\frac{\q{savedLb}}{\q{pairEatsLb}} \times 100`, {
    says: 'And counting the calf: a share of what the pair would have eaten.',
  }),
  formula('stillEatsLb', tex`\q{pairEatsLb} - \q{savedLb}`, { says: 'What the dry cow still eats.' }),
  formula('cowDays', tex`\frac{\q{cowSavedLb}}{\q{cowWeightLb} \times \q{idlePercent} / 100}`, {
    says: 'The cow’s part, in days of a dry cow’s grazing.',
    source: 'jaeger-early-weaning, days of grazing by calf and by cow',
  }),
  formula('calfDays', tex`\frac{\q{calfSavedLb}}{\q{cowWeightLb} \times \q{idlePercent} / 100}`, { says: 'The calf’s part, the same way.' }),
];

const moneySteps: Working<V, R> = [
  formula('nursingGainLbPerDay', tex`\frac{\q{usualWeightLb} - \q{earlyWeightLb}}{\q{aheadDays}}`, {
    says: 'Gain on the cow that your two weights mean.',
  }),
  formula('slideUsdPerCwt', tex`\frac{100 \times (\q{earlyPriceUsdPerCwt} - \q{usualPriceUsdPerCwt})}{\q{usualWeightLb} - \q{earlyWeightLb}}`, {
    says: 'The price slide: how far the price of a hundred pounds falls for each 100 lb more.',
    source: 'aces-price-slide, equation 1 solved for the slide',
  }),
  formula('usualUsd', tex`\frac{\q{usualWeightLb} \times \q{usualPriceUsdPerCwt}}{100}`, {
    says: 'The calf at the usual time, if the market stays.',
  }),
  formula('gainUsdPerLb', tex`\frac{\q{usualUsd} - \q{earlyWeightLb} \times \q{earlyPriceUsdPerCwt} / 100}{\q{usualWeightLb} - \q{earlyWeightLb}}`, {
    says: 'So a pound of gain brings less than the price of a pound.',
    source: 'noble-value-of-gain-2005, second paragraph',
  }),
  formula('savedUsd', tex`\frac{\q{savedLb} \times \q{forageUsdPerTon}}{2000}`, { says: 'What the forage is worth that cow and calf leave.' }),
  formula(
    'sellEarlyUsd',
    tex`\frac{\q{earlyWeightLb} \times \q{earlyPriceUsdPerCwt}}{100} \times (1 + \frac{\q{interestPercent} \times \q{aheadDays}}{36500}) - \q{weaningCostUsd} + \q{savedUsd}`,
    {
      says: 'Sold now: the calf, interest on its money until the usual day, the forage, less the cost of weaning early.',
      source: 'noble-early-weaning-1998, projected budget',
    },
  ),
  tabulate('markets', {
    says: 'The same if the market moves before the usual day.',
    formulas: {
      shiftedUsualUsdPerCwt: tex`\q{usualPriceUsdPerCwt} \times (1 + \frac{\q{shiftPercent}}{100})`,
      usualWayUsd: tex`\frac{\q{usualWeightLb} \times \q{shiftedUsualUsdPerCwt}}{100}`,
      soldWayUsd: tex`\q{sellEarlyUsd}`,
    },
  }),
  when(isFed, [
    byCase('calfUsdPerDay', {
      says: 'What the weaned calf costs a day.',
      ways: [
        {
          when: ({ calfGoes }) => calfGoes === 'own-feed',
          formula: tex`\frac{\q{fedMeanLb} \times \q{calfNeedPercent}}{100} \times \frac{\q{forageUsdPerTon}}{2000} + \q{careUsdPerDay}`,
          because: 'your own forage is charged at what it is worth',
        },
        { formula: tex`\frac{\q{fedMeanLb} \times \q{calfNeedPercent}}{100} \times \frac{\q{calfFeedUsdPerTon}}{2000} + \q{careUsdPerDay}` },
      ],
    }),
    formula('fedPriceUsdPerCwt', tex`\q{usualPriceUsdPerCwt} + \frac{(\q{usualWeightLb} - \q{fedWeightLb}) \times \q{slideUsdPerCwt}}{100}`, {
      says: 'The price at the weight it then has, on the line through your two quotes.',
      source: 'aces-price-slide, equation 1',
    }),
    formula(
      'feedEarlyUsd',
      tex`\frac{\q{fedWeightLb} \times \q{fedPriceUsdPerCwt}}{100} - \q{calfUsdPerDay} \times \q{aheadDays} - \q{weaningCostUsd} + \q{savedUsd}`,
      { says: 'Fed until the usual day.' },
    ),
    tabulate('fedMarkets', {
      says: 'And if the market moves.',
      formulas: {
        shiftedFedUsdPerCwt: tex`\q{fedPriceUsdPerCwt} \times (1 + \frac{\q{shiftPercent}}{100})`,
        fedWayUsd: tex`\frac{\q{fedWeightLb} \times \q{shiftedFedUsdPerCwt}}{100} - \q{calfUsdPerDay} \times \q{aheadDays} - \q{weaningCostUsd} + \q{savedUsd}`,
      },
    }),
  ]),
  byCase('earlyUsd', {
    says: 'Weaned early, the way you chose',
    ways: [
      { when: ({ calfGoes }) => calfGoes === 'sold', formula: tex`\q{sellEarlyUsd}`, because: 'the calf is sold' },
      { formula: tex`\q{feedEarlyUsd}`, because: 'the calf is fed' },
    ],
  }),
  byCase('grossUsd', {
    says: 'and what of it moves with the market until the usual day.',
    ways: [
      { when: ({ calfGoes }) => calfGoes === 'sold', formula: '0', because: 'its money is in hand' },
      { formula: tex`\frac{\q{fedWeightLb} \times \q{fedPriceUsdPerCwt}}{100}` },
    ],
  }),
  formula('evenMarketPercent', tex`100 \times (\frac{\q{earlyUsd} - \q{grossUsd}}{\q{usualUsd} - \q{grossUsd}} - 1)`, {
    says: 'The move of the market at which early and usual leave the same.',
    onlyWhen: ({ isEven }) => isEven === 'yes',
    source: 'our own, both ways set equal',
  }),
  tabulate('byMarket', {
    says: 'Both ways, as the market moves.',
    formulas: {
      usualAtUsd: tex`\q{usualUsd} \times (1 + \frac{\q{marketPercent}}{100})`,
      earlyAtUsd: tex`\q{grossUsd} \times (1 + \frac{\q{marketPercent}}{100}) + \q{earlyUsd} - \q{grossUsd}`,
    },
  }),
];

export const steps = [...feedSteps, ...moneySteps];
