import { whyAppetiteRange } from '../../asks/appetiteRange.ts';
import { highBelow, lowAbove } from '../../asks/hay.ts';
import { defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { cautions } from './cautions.ts';
import { compute, hasOwn, ownByTable } from './compute.ts';
import { countsCold, hasOtherStock, isTried, stockWords } from './herd.ts';
import { inputs, type Values } from './inputs.ts';
import { quantities } from './quantities.ts';
import { buys, isWet, savesByFeeder, savesByRoof, steps } from './steps.ts';

const longestDays = 400;
const oldestMonths = 18;
/** The kind on the first line, as a letter says it. */
function firstKind([first]: Values['herd']): string {
  if (first === undefined || first.stock === 'other') return 'one of the first kind';
  return `one ${stockWords[first.stock].toLowerCase()}`;
}
const periodOf = ({ fromDay, toDay }: Values): number => toDay - fromDay;

export default defineCalculator({
  slug: 'hay-to-grass',
  version: 4,
  title: 'Hay needed to bridge a drought',
  inputs,
  refusals: [
    { at: 'toDay', when: (values) => periodOf(values) <= 0, say: 'Turn-out must come after the first day on hay.' },
    {
      at: 'toDay',
      when: (values) => periodOf(values) > longestDays,
      say: `This is more than ${longestDays} days on hay. Plan one stretch at a time: choose a turn-out within ${longestDays} days.`,
    },
    { at: 'herd', when: ({ herd }) => herd.every(({ countHead }) => countHead === 0), say: 'Nobody is left to feed. Give at least one line a head.' },
    {
      at: 'coldDays',
      when: (values) => values.isColdCounted && periodOf(values) > 0 && values.coldDays > periodOf(values),
      say: 'There are more cold days than days on hay. Count only the cold days between the first day on hay and turn-out.',
    },
    {
      at: 'baledDay',
      when: (values) => ownByTable(values) !== undefined && values.baledDay > values.fromDay,
      say: 'The hay on hand is dated after the first day on hay. It must be baled on or before that day. Leave out what is still to be baled, or count it as hay to buy.',
    },
    {
      at: 'baledDay',
      when: (values) => {
        const own = ownByTable(values);
        return own !== undefined && own.feedingMonths > oldestMonths;
      },
      say: `By the middle of feeding this hay would be older than ${oldestMonths} months, where the table of losses ends. Choose “I know my own loss” for it.`,
    },
    {
      at: 'weighedDay',
      when: (values) => values.onHand === 'now' && ownByTable(values) !== undefined && values.weighedDay < values.baledDay,
      say: 'It was weighed before it was baled. The weighing must come on or after the day of baling.',
    },
    {
      at: 'weighedDay',
      when: (values) => values.onHand === 'now' && ownByTable(values) !== undefined && values.weighedDay > values.fromDay,
      say: 'The weighing must come on or before the first day on hay. If they have eaten of it since, move the first day up to the weighing.',
    },
    {
      at: 'lowPriceUsdPerTon',
      when: ({ pricedBy, lowPriceUsdPerTon, priceUsdPerTon }) => pricedBy === 'range' && lowPriceUsdPerTon > priceUsdPerTon,
      say: lowAbove,
    },
    {
      at: 'highPriceUsdPerTon',
      when: ({ pricedBy, highPriceUsdPerTon, priceUsdPerTon }) => pricedBy === 'range' && highPriceUsdPerTon < priceUsdPerTon,
      say: highBelow,
    },
  ],
  compute,
}).describe({
  question: 'How much hay gets me to grass?',
  lead: 'Tons, bales, loads and money from the first day on hay to turn-out, for your own herd, with the hay that you have and what storing and feeding lose.',
  searchWords:
    'how much hay do I need, how many bales of hay per cow, winter hay needs, hay for 50 cows, hay shortage, running out of hay, buying hay in a drought, hay budget, hay inventory, hay waste, cost to winter a cow, round bales a day',
  first: ['fromDay', 'toDay', 'herd', 'ownCount', 'feeder'],
  groups: [
    {
      title: 'The hay you have',
      inputs: ['onHand', 'ownBaleLb', 'moisturePercent', 'ownStorage', 'knownOwnPercent', 'rindIn', 'ownDiameterFt', 'baledDay', 'weighedDay'],
      summary:
        '{onHand}, {ownBaleLb} a bale, {moisturePercent} water, {ownStorage}, {knownOwnPercent} still to be lost, a rind of {rindIn}, {ownDiameterFt} across',
    },
    {
      title: 'The hay to buy',
      inputs: [
        'pricedBy',
        'priceUsdPerTon',
        'lowPriceUsdPerTon',
        'highPriceUsdPerTon',
        'balePriceUsd',
        'freightUsdPerLoad',
        'baleFrom',
        'baleLb',
        'widthFt',
        'diameterFt',
        'heightFt',
        'lengthFt',
        'densityLbPerFt3',
        'loadCount',
      ],
      summary:
        '{priceUsdPerTon}, {lowPriceUsdPerTon} to {highPriceUsdPerTon}, {balePriceUsd} a bale, bales of {baleLb}, {loadCount} in a load, freight {freightUsdPerLoad}',
    },
    {
      title: 'Storing and feeding',
      inputs: ['storage', 'knownStoragePercent', 'storedFrom', 'storedMonths', 'yearlyRain', 'knownFeedingPercent'],
      summary:
        'bought hay {storage}, {knownStoragePercent} lost there, {storedFrom}, {storedMonths}, {yearlyRain}, {knownFeedingPercent} lost in feeding',
    },
    {
      title: 'Other feed and the cold',
      inputs: ['beside', 'standingLb', 'otherFeedLbPerDay', 'isColdCounted', 'coat', 'coldDays', 'feelsLikeF'],
      summary: '{beside}, {standingLb} standing, {otherFeedLbPerDay} fed, {isColdCounted}, {coat}, {coldDays} at {feelsLikeF}',
    },
    { title: 'Ways of counting', inputs: ['lossConvention', 'wetCoatRule'], summary: '{lossConvention}, {wetCoatRule}' },
  ],
  handout: ['haveTon', 'ownAtFeedingTon', 'buyTon', 'balesCount', 'loadsCount', 'costUsd'],
  quantities,
  results: [
    ranged('haveTon', ['lowHaveTon', 'highHaveTon'], {
      says: ({ herd }) => `{low} to {high}, ${whyAppetiteRange(herd.filter(({ countHead }) => countHead > 0).map(({ stock }) => isTried(stock)))}`,
      short: '{low} to {high}, by how much they eat',
      said: 'of hay to have',
      gap: ['less hay to have', 'more hay to have'],
    }),
    { of: 'otherHaveTon', when: isWet },
    { of: 'dryMatterTon' },
    { of: 'eatenTon', when: ({ beside }) => beside !== 'none' },
    { of: 'chillPercent', when: countsCold },
    { of: 'otherChillPercent', when: isWet },
    { of: 'ownAtFeedingTon', when: hasOwn },
    { of: 'ownLeftTon', when: (values) => hasOwn(values) && values.buyTon === 0 && values.ownLeftTon > 0 },
    ranged('buyTon', ['lowBuyTon', 'highBuyTon'], { when: ({ highBuyTon }) => highBuyTon > 0, says: '{low} to {high}' }),
    shownWhen(buys, 'balesCount', 'loadsCount'),
    ranged('costUsd', ['lowCostUsd', 'highCostUsd'], { when: buys, says: '{low} to {high}, by what they eat and the price' }),
    shownWhen(buys, 'fullLoadBalesCount', 'fullLoadsUsd', 'headUsdPerDay', 'herdUsdPerDay', 'deliveredUsdPerTon', 'eatenUsdPerTon'),
    shown('putOutLbPerDay', 'twoWeeksTon'),
    { of: 'storageLossPercent', when: buys },
    { of: 'feedingLossPercent' },
    shownWhen(savesByFeeder, 'feederSavesTon', 'feederSavesUsd'),
    shownWhen(savesByRoof, 'roofSavesTon', 'roofSavesUsd'),
    { of: 'kindCosts', when: ({ buyTon, herd }) => buyTon > 0 && herd.length > 1 },
  ],
  steps,
  cautions,
  limits: [
    'It counts pounds, not quality. Whether this hay keeps this cow takes a laboratory test and, for thin, young or nursing stock, a nutritionist.',
    'Storage losses come from one table with wide ranges; months between are on a straight line, and the rainfall only picks the end of the range. Your own stack can be well outside it.',
    'Feeder trials differ: the same kind of open ring lost 6 % in one and 20 % in two others. Cows that are crowded or fed for days at once waste more.',
    'The cold rule is for beef cattle in fair flesh. For wet coats universities print one or two percent a degree Fahrenheit; you can switch between them, and both stand in the result.',
    'Other feed is taken to spare hay pound for pound. A little protein can make them eat more hay, much grain less.',
    'The cost is what you pay for bought hay and freight. Your own hay, fuel, labor, mineral and supplement are not in it.',
    'Printed appetites of sheep, goats and horses lie far apart, so with them the range is wide. Hay weighed for a week tells yours.',
    'A price is one quote on one day. It depends on the year, the distance, the test and the bale.',
    'Nobody knows the day when the grass is ready. After a drought let it grow ten to fourteen days longer than you would otherwise.',
    'A loaded round bale can roll or fall on a person. Keep it low, keep off slopes, and never work under a spear.',
  ],
  note: (values, show) => {
    const { buyTon, loadsCount, haveTon, herd, beside, isColdCounted, coat } = values;
    const wet =
      countsCold({ isColdCounted, herd }) && coat === 'wet'
        ? `; ${hasOtherStock({ herd }) ? 'for the cattle ' : ''}wet coats are counted at ${show('chillPercent')} more feed on a cold day, and the other rule gives ${show('otherChillPercent')} and ${show('otherHaveTon')} to have`
        : '';
    const own = !hasOwn(values) ? '' : `Of ${show('ownTon')} on hand ${show('ownAtFeedingTon')} will be left to feed`;
    return [
      `From ${show('fromDay')} to ${show('toDay')} (${show('periodDays')}) the herd eats ${show('dryMatterTon')} with the water out${beside === 'none' ? '' : `, ${show('eatenTon')} of it as hay`}: ${haveTon === 0 ? 'the other feed covers it, and no hay is needed' : `have ${show('haveTon')} of hay as fed, ${show('lowHaveTon')} to ${show('highHaveTon')} by how much they eat`}${wet}.`,
      buyTon > 0
        ? `${own === '' ? 'Buy' : `${own}; buy`} ${show('buyTon')}: ${show('balesCount')} bales, ${show('loadsCount')} ${loadsCount === 1 ? 'load' : 'loads'}, about ${show('costUsd')} with freight, ${show('headUsdPerDay')} of bought hay for ${firstKind(herd)}.`
        : own === ''
          ? 'None is to be bought.'
          : `${own}, and none is to be bought.`,
      `Two more weeks would take ${show('twoWeeksTon')}.`,
    ].join(' ');
  },
  picture: {
    kind: 'shares',
    title: 'Where it comes from: {haveTon}',
    whole: 'haveTon',
    parts: [
      { of: 'ownUsedTon', tone: 'own', says: 'on hand' },
      { of: 'buyTon', tone: 'bought', says: 'to buy, in bales: {balesCount}', stands: true },
    ],
    beside: [
      {
        title: 'Where it goes',
        whole: 'haveTon',
        parts: [
          { of: 'eatenTon', tone: 'kept', says: 'eaten', stands: true },
          { of: 'feedingLostTon', tone: 'lost', says: 'wasted feeding' },
          { of: 'storageLostTon', tone: 'lost', says: 'spoiled' },
          { of: 'waterTon', tone: 'water', says: 'water in it' },
        ],
      },
    ],
  },
  sources: [
    'hibberd-thrift-1992',
    'gross-intake',
    'mullenix-2022',
    'schoenian-intake',
    'luling-foundation',
    'texas-animal-units',
    'nmsu-ewe-gestation',
    'wv-farm-bureau-2014',
    'huhnke-bae1716',
    'lalman-feeders',
    'buskirk-2003',
    'schnakenberg-feeders',
    'bell-martz-1973',
    'kallenbach-g4570',
    'rusche-2020',
    'banta-2012',
    'banta-hay-needs',
    'south-dakota-alfalfa-protein',
    'oklahoma-cold-feeding',
    'selk-wet-coat',
    'beck-cold-2025',
    'osu-sheep-cold-2019',
    'selk-nitrate-test',
    'swiger-blister-beetles',
    'kansas-cold-2025',
    'burbrink-hay-fire-2024',
    'cornell-hay-fires',
    'ndsu-net-wrap',
    'anderson-turnout',
    'mayo-hay-waste-2024',
    'high-plains-millet',
    'extension-fescue-mares',
    'blakley-monensin-2012',
  ],
  changes: [
    {
      version: 2,
      say: 'For a wet coat you now choose between one and two percent more feed a degree Fahrenheit. Links from before keep one percent, as they were figured.',
    },
    {
      version: 3,
      say: 'The range takes the appetite of each kind by its own guides: 17 % either way for grown cattle, the least and the most that guides print for other kinds. Before, all kinds took 15 % either way.',
    },
    {
      version: 4,
      say: 'Ewes and does with births are counted at what guides have for late pregnancy in the last six weeks before them. Before, they ate as at rest until the day.',
    },
  ],
  topic: 'hay',
  order: 10,
  guides: ['bridging-with-hay', 'choosing-a-feeding-place', 'pulling-stock-early', 'stretching-winter-feed'],
});
