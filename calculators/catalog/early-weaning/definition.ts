import { defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { printNumber } from '../../units/printQuantity.ts';
import { cautions } from './cautions.ts';
import { compute, slidesBelowZero } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  slug: 'early-weaning',
  version: 1,
  title: 'Early weaning: forage and money',
  inputs,
  refusals: [
    {
      at: 'dryPercent',
      when: ({ intakeFrom, milkingPercent, dryPercent }) => intakeFrom === 'own' && dryPercent > milkingPercent,
      say: 'A dry cow eats no more than a nursing one. Make this the same as the nursing figure or less.',
    },
    {
      at: 'usualWeightLb',
      when: ({ earlyWeightLb, usualWeightLb }) => usualWeightLb <= earlyWeightLb,
      say: 'The calf must weigh more at the usual weaning than now, or there is nothing to wait for. Look at the two weights.',
    },
    {
      at: 'usualPriceUsdPerCwt',
      when: slidesBelowZero,
      say: 'The line through your two quotes falls under nothing before the weight of the fed calf. Look at the quotes, or lower its gain.',
    },
  ],
  compute,
}).describe({
  question: 'What does weaning early save, for cow and for calf?',
  lead: 'The feed a dry cow saves and the feed a weaned calf needs, each by itself, and what two quotes on one day say about selling now.',
  searchWords: 'wean early, drought weaning, dry off cows, light calves, price slide, value of gain, creep, drylot calves, save grass',
  first: ['pairsHead', 'ageDays', 'calfGoes', 'earlyPriceUsdPerCwt', 'usualPriceUsdPerCwt'],
  groups: [
    {
      title: 'The cow',
      inputs: ['cowWeightLb', 'intakeFrom', 'milkingPercent', 'dryPercent'],
      summary: '{cowWeightLb}, {intakeFrom}, {milkingPercent} of her weight eaten nursing, {dryPercent} dry',
    },
    {
      title: 'The calf',
      inputs: ['aheadDays', 'earlyWeightLb', 'usualWeightLb', 'calfForageFrom', 'ownCalfLbPerDay'],
      summary: 'weaned {aheadDays} early, {earlyWeightLb} then, {usualWeightLb} at the usual time, {calfForageFrom}, {ownCalfLbPerDay}',
    },
    {
      title: 'Feeding a weaned calf',
      inputs: ['calfNeedPercent', 'fedGainLbPerDay', 'calfFeedUsdPerTon', 'careUsdPerDay'],
      summary: 'eats {calfNeedPercent} of its weight, gains {fedGainLbPerDay}, feed at {calfFeedUsdPerTon}, care {careUsdPerDay}',
    },
    {
      title: 'Money',
      inputs: ['movePercent', 'forageUsdPerTon', 'weaningCostUsd', 'interestPercent'],
      summary: 'market may move {movePercent}, forage {forageUsdPerTon}, weaning costs {weaningCostUsd} a calf, interest {interestPercent}',
    },
  ],
  handout: ['keptHerdLb', 'cowSavedLb', 'calfSavedLb', 'best', 'sellEarlyUsd', 'usualUsd'],
  quantities,
  results: [
    ranged('keptHerdLb', ['lowKeptHerdLb', 'highKeptHerdLb'], {
      says: '{low} to {high} by how the guides differ on what they eat',
      short: '{low} to {high}, as the guides differ',
      said: 'of forage kept',
      gap: ['less forage kept', 'more forage kept'],
    }),
    shown('cowSavedLb', 'calfSavedLb'),
    shownWhen(({ calfGoes }) => calfGoes !== 'sold', 'calfNeedLb', 'calfNeedHerdLb'),
    shown('cowOnlyPercent', 'bothPercent', 'cowDays', 'calfDays', 'best', 'sellEarlyUsd'),
    ranged('feedEarlyUsd', ['lowFeedUsd', 'highFeedUsd'], {
      when: ({ calfGoes }) => calfGoes !== 'sold',
      says: '{low} if the market falls, {high} if it rises',
    }),
    ranged('usualUsd', ['lowUsualUsd', 'highUsualUsd'], { says: '{low} if the market falls, {high} if it rises' }),
    { of: 'evenMarketPercent', when: ({ isEven }) => isEven === 'yes' },
    shown('savedUsd', 'slideUsdPerCwt', 'gainUsdPerLb'),
    shownWhen(({ calfGoes }) => calfGoes !== 'sold', 'calfUsdPerDay', 'fedWeightLb'),
    shown('swings', 'byMarket', 'lines', 'markets'),
    { of: 'fedMarkets', when: ({ calfGoes }) => calfGoes !== 'sold' },
  ],
  steps,
  cautions,
  limits: [
    'Published savings run from 12 to 40 percent. Most of that spread depends on whether the grass of the calf is counted, so both shares stand here, cow and calf apart.',
    'The calf’s part is saved only where the calf no longer eats. In one feedlot trial, feed for each pound of calf was no less when early-weaned calves were fed too.',
    'Guides on what cattle eat err by about 15 percent either way, and the difference between two of them errs more. Cows hold back less on poor grass than the table says.',
    'It does not count what often matters most: cows that go into winter in better flesh, eat less hay and breed back.',
    'The two quotes draw a straight line. Real markets step, and light, plain or unvaccinated calves fall under it. Haul, commission, shrink and tax are not in it; put them into the cost of weaning.',
    'The list of what the answer depends on moves one number at a time. Things that go wrong together are worse than any line of it.',
    'The market may move further than you put in. A fed calf can also die; put your own loss into the cost of weaning.',
  ],
  weighsOnPeople: true,
  note: ({ pairsHead, calfGoes, isEven, keptHerdLb }, show) =>
    [
      `Weaning ${show('aheadDays')} early from ${printNumber(pairsHead, 0)} ${pairsHead === 1 ? 'cow' : 'cows'}; forage kept on this place: ${keptHerdLb <= 0 ? 'none, for the calves eat more than is saved: ' : ''}${show('keptHerdLb')} (${show('lowKeptHerdLb')} to ${show('highKeptHerdLb')}).`,
      `For each pair the cow eats ${show('cowSavedLb')} less and the calf leaves ${show('calfSavedLb')}: ${show('cowOnlyPercent')} of what the cow would have eaten, and with the calf ${show('bothPercent')} of what both would${calfGoes === 'sold' ? '' : `; the weaned calf needs ${show('calfNeedLb')} of feed`}.`,
      `A calf: sold early ${show('sellEarlyUsd')}${calfGoes === 'sold' ? '' : `, fed ${show('feedEarlyUsd')}`}, with the worth of the forage; at the usual time ${show('usualUsd')} (${show('lowUsualUsd')} to ${show('highUsualUsd')} by the market); leaves most: ${show('best').toLowerCase()}${isEven === 'yes' ? `; a market move of ${show('evenMarketPercent')} by then would make early and usual the same` : ''}.`,
    ].join(' '),
  picture: {
    kind: 'shares',
    title: 'Spared on each pair: {savedLb}',
    whole: 'savedLb',
    parts: [
      { of: 'cowSavedLb', tone: 'kept', says: 'the dry cow eats less' },
      { of: 'calfSavedLb', tone: 'lines', says: 'the calf leaves' },
    ],
    beside: [
      {
        title: 'The weaned calf then eats {calfNeedLb}',
        whole: 'calfNeedLb',
        parts: [{ of: 'calfNeedLb', tone: 'lost', says: 'spent on the calf' }],
      },
    ],
  },
  sources: [
    'hibberd-thrift-1992',
    'jaeger-early-weaning',
    'danielson-1997',
    'nevada-early-weaning',
    'noble-early-weaning-1998',
    'aces-price-slide',
    'noble-value-of-gain-2005',
    'rasby-value-of-gain-2015',
    'michigan-beef-notes',
    'luling-foundation',
    'unl-stocking-creep',
    'mullenix-2022',
    'banta-agproud',
  ],
  topic: 'hay',
  order: 40,
  guides: ['weaning-early'],
});
