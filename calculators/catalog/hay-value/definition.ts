import { boughtHay, droughtHay, fedOnTheGround, highBelow, hotHay, lowAbove, moldyHay, wrappedHay } from '../../asks/hay.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';

import { compute, proteinOnDry, type Results, tdnOnDry } from './compute.ts';
import { inputs, type Values } from './inputs.ts';
import { quantities } from './quantities.ts';
import { type All, hasSlip, isByBale, isCompared, steps } from './steps.ts';

/** Hay under this eats poorly: cows take less of it, and lose flesh. */
const poorProteinPercent = 7;
const orderOf = (low: number, likely: number, high: number): 'low' | 'high' | 'right' => (low > likely ? 'low' : high < likely ? 'high' : 'right');
const tonOrder = ({ pricedBy, lowPriceUsdPerTon, priceUsdPerTon, highPriceUsdPerTon }: Values) =>
  pricedBy === 'ton' ? orderOf(lowPriceUsdPerTon, priceUsdPerTon, highPriceUsdPerTon) : 'right';
const baleOrder = ({ pricedBy, lowBalePriceUsd, balePriceUsd, highBalePriceUsd }: Values) =>
  pricedBy === 'bale' ? orderOf(lowBalePriceUsd, balePriceUsd, highBalePriceUsd) : 'right';
/** Hay that is not worth its freight has no price worth telling. */
const isWorthIt = (values: All): boolean => isCompared(values) && values.verdict !== 'not-its-freight';
const overDry =
  'With this much water there would be more of it than dry matter. Look at the slip again: the figure may be of the dry matter, or the water is wrong.';

/** With hay that costs nothing, nothing moves the answer. */
const hangs = ({ swings }: Pick<Results, 'swings'>): boolean => swings.some(({ swingUsdPerTon }) => swingUsdPerTon > 0);

export default defineCalculator({
  slug: 'hay-value',
  version: 1,
  title: 'Hay cost after storage and feeding losses',
  inputs,
  refusals: [
    { at: 'lowPriceUsdPerTon', when: (values) => tonOrder(values) === 'low', say: lowAbove },
    { at: 'highPriceUsdPerTon', when: (values) => tonOrder(values) === 'high', say: highBelow },
    { at: 'lowBalePriceUsd', when: (values) => baleOrder(values) === 'low', say: lowAbove },
    { at: 'highBalePriceUsd', when: (values) => baleOrder(values) === 'high', say: highBelow },
    { at: 'proteinPercent', when: (values) => hasSlip(values) && proteinOnDry(values) > 100, say: overDry },
    { at: 'tdnPercent', when: (values) => hasSlip(values) && tdnOnDry(values) > 100, say: overDry },
    {
      at: 'against',
      when: (values) => isCompared(values) && !hasSlip(values),
      say: 'Without a slip nobody knows what this hay holds. Have it tested and choose “Yes” at the slip, or choose “No” here.',
    },
  ],
  compute,
}).describe({
  question: 'What is this hay worth?',
  lead: 'What a ton costs by the time it is inside the cow: price and freight, water, what storing and feeding lose, and what the laboratory’s slip says is in it.',
  searchWords:
    'hay price per ton, price per bale to price per ton, cost per pound of protein, cost per pound of TDN, hay value, compare hay prices, spoiled hay, round bale spoilage, hay waste cost, is this hay a good buy, forage test',
  first: [['priceUsdPerTon', 'balePriceUsd'], 'moisturePercent', 'storage', 'feeder'],
  groups: [
    {
      title: 'The price',
      inputs: [
        'pricedBy',
        'lowPriceUsdPerTon',
        'highPriceUsdPerTon',
        'lowBalePriceUsd',
        'highBalePriceUsd',
        'baleLb',
        'isWeighed',
        'freightUsdPerTon',
      ],
      summary:
        '{lowPriceUsdPerTon} to {highPriceUsdPerTon}, {lowBalePriceUsd} to {highBalePriceUsd} a bale, bales of {baleLb}, {isWeighed}, freight {freightUsdPerTon}',
    },
    {
      title: 'The laboratory’s slip',
      inputs: ['slip', 'proteinPercent', 'tdnPercent', 'slipBasis'],
      summary: '{slip}, {proteinPercent} protein, {tdnPercent} TDN, {slipBasis}',
    },
    {
      title: 'Storing and feeding',
      inputs: ['storedMonths', 'yearlyRain', 'rindIn', 'diameterFt', 'ends', 'widthFt', 'knownStoragePercent', 'knownFeedingPercent'],
      summary:
        'stored for {storedMonths}, {yearlyRain}, a rind of {rindIn}, {diameterFt} across, {ends}, {widthFt} wide, {knownStoragePercent} lost in storage, {knownFeedingPercent} lost in feeding',
    },
    {
      title: 'Another feed beside it',
      inputs: ['against', 'otherPriceUsdPerTon', 'otherMoisturePercent', 'otherProteinPercent', 'otherTdnPercent', 'otherLossPercent'],
      summary:
        '{against}, {otherPriceUsdPerTon}, {otherMoisturePercent} water, {otherProteinPercent} protein, {otherTdnPercent} TDN, {otherLossPercent} lost',
    },
    { title: 'Ways of counting', inputs: ['lossConvention'], summary: '{lossConvention}' },
  ],
  handout: ['eatenUsdPerTon', 'worthUsdPerTon', 'deliveredUsdPerTon', 'proteinUsdPerLb', 'storageLossPercent', 'feedingLossPercent'],
  quantities,
  results: [
    ranged('eatenUsdPerTon', ['lowEatenUsdPerTon', 'highEatenUsdPerTon'], {
      says: '{low} at the low price, {high} at the high one',
      short: '{low} to {high}, by the price',
      said: 'once it is eaten',
      gap: ['less once it is eaten', 'more once it is eaten'],
    }),
    { of: 'worthUsdPerTon', when: isWorthIt },
    { of: 'worthBaleUsd', when: (values) => isWorthIt(values) && isByBale(values) },
    { of: 'verdict', when: isCompared },
    shownWhen(hasSlip, 'proteinUsdPerLb', 'tdnUsdPerLb'),
    { of: 'otherUsdPerLb', when: isCompared },
    { of: 'gateUsdPerTon', when: isByBale },
    shown('deliveredUsdPerTon', 'wastedUsdPerTon'),
    ranged('storageLossPercent', ['lowStoragePercent', 'highStoragePercent'], { says: '{low} to {high}' }),
    ranged('feedingLossPercent', ['lowFeedingPercent', 'highFeedingPercent'], { says: '{low} to {high}' }),
    { of: 'hangsOn', when: hangs },
    shown('otherUsdPerTon', 'priceLines', 'swings'),
  ],
  steps,
  cautions: [
    caution(
      ({ lossConvention, storageLossPercent, feedingLossPercent }) => lossConvention === 'multiply' && storageLossPercent + feedingLossPercent > 0,
      {
        lead: 'Losses put on top of the price charge too little. Set it to dividing.',
        say: 'Putting losses on top of the price charges too little: a fifth lost makes the rest cost a fourth more, not a fifth. Set it back to dividing before you decide.',
        source: 'wv-farm-bureau-2014',
      },
    ),
    hotHay,
    wrappedHay,
    { when: ({ storage, rindIn }) => storage === 'rind' && rindIn > 0, ...moldyHay },
    caution((values) => hasSlip(values) && values.proteinDryPercent < poorProteinPercent, {
      lead: 'Under 7 % protein cows lose flesh without a supplement. Figure that in.',
      say: 'Under 7 % protein cows eat less of it and lose flesh without a supplement, whatever it costs. Figure that in, and have the feed planned by a nutritionist.',
      source: 'south-dakota-alfalfa-protein',
    }),
    caution((values) => !hasSlip(values), {
      lead: 'Nobody sees protein or nitrate by color. Core ten bales and test.',
      say: 'Nobody sees protein, energy or nitrate by color. Core ten bales or more, send it in, and wait for the slip before you pay much or feed it.',
      source: 'common practice',
    }),
    caution(isCompared, {
      lead: 'Urea, monensin and copper each kill some stock. Change feed over weeks.',
      life: true,
      say: 'This sets the two side by side by one thing only. Change feed over two to three weeks. Urea is poison to stock that is hungry or not used to it; cattle feed with monensin kills horses, and cattle mineral can hold enough copper to kill sheep.',
      source: 'common practice',
    }),
    fedOnTheGround,
    { when: () => true, ...droughtHay },
    { when: () => true, ...boughtHay },
  ],
  limits: [
    'It is a cost, not a ration. Whether this hay keeps this cow takes the slip, her stage and, for thin, young or nursing stock, a nutritionist.',
    'Storage losses come from one table with wide ranges; months between are on a straight line. What is left of weathered hay also feeds worse; that is not counted.',
    'A rind is counted as wholly lost. Stock eat some of it, and waste more of the good hay in sorting.',
    'Feeder trials differ: the same kind of open ring lost 6 % in one and 20 % in two others.',
    'Swings are tried one at a time. Things go wrong together: poor hay is both wasted more and worth less.',
    'TDN on a slip is worked out from fiber, each laboratory in its way. Compare slips from the same one.',
    'Your labor, fuel, twine and manure value are not in it. A price is one quote on one day.',
    'A loaded round bale can roll or fall on a person. Keep it low, keep off slopes, and never work under a spear.',
  ],
  note: (values, show) =>
    [
      `Hay at ${show('gateUsdPerTon')} at the gate, ${show('deliveredUsdPerTon')} delivered, costs ${show('eatenUsdPerTon')} by the time it is eaten, water out (${show('lowEatenUsdPerTon')} to ${show('highEatenUsdPerTon')} by the price): ${show('storageLossPercent')} lost in storage, ${show('feedingLossPercent')} in feeding${hangs(values) ? `; what moves it most: ${show('hangsOn')}` : ''}.`,
      hasSlip(values) ? `Protein eaten costs ${show('proteinUsdPerLb')}, TDN ${show('tdnUsdPerLb')}.` : 'It has not been tested.',
      isCompared(values)
        ? `Beside feed at ${show('otherPriceUsdPerTon')} it is worth ${isWorthIt(values) ? `${show('worthUsdPerTon')} at the gate` : 'less than its freight'} by ${values.against === 'tdn' ? 'TDN' : 'protein'}.`
        : '',
    ]
      .filter((part) => part !== '')
      .join(' '),
  picture: {
    kind: 'shares',
    title: 'Of a ton paid for, {boughtLb}',
    whole: 'boughtLb',
    parts: [
      { of: 'eatenLb', tone: 'kept', says: 'eaten' },
      { of: 'feedingLostLb', tone: 'lost', says: 'wasted feeding' },
      { of: 'storageLostLb', tone: 'lost', says: 'spoiled' },
      { of: 'waterLb', tone: 'water', says: 'water' },
    ],
  },
  sources: [
    'huhnke-bae1716',
    'undersander-storage',
    'ball-extending-grazing',
    'lalman-feeders',
    'buskirk-2003',
    'schnakenberg-feeders',
    'bell-martz-1973',
    'boyles-2019',
    'kallenbach-g4570',
    'selk-nitrate-test',
    'montana-richland-2022',
    'warner-feedstuff-costs',
    'penn-state-feeds-1993',
    'banta-2012',
    'wv-farm-bureau-2014',
    'south-dakota-alfalfa-protein',
  ],
  topic: 'hay',
  order: 20,
  guides: ['buying-and-storing-hay'],
});
