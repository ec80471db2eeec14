import { caution, defineCalculator } from '../../kit/define.ts';
import { midSentence } from '../../kit/midSentence.ts';
import { ranged } from '../../kit/shown.ts';
import { compute, isShortSeason, isTooEarly, regrowthDays, seasonDays } from './compute.ts';
import { inputs, isWarmSeason } from './inputs.ts';
import { quantities } from './quantities.ts';
import { hasLikely, hasLow, inTime, steps } from './steps.ts';

const longestYearDays = 366;

export default defineCalculator({
  slug: 'sown-feed',
  version: 2,
  title: 'Emergency feed crop, or hay',
  inputs,
  refusals: [
    {
      at: 'frostDay',
      when: ({ sowDay, frostDay }) => frostDay < sowDay,
      say: 'This frost comes before the sowing. Put in the first killing frost after the day when you can sow.',
    },
    {
      at: 'frostDay',
      when: ({ sowDay, frostDay }) => frostDay - sowDay > longestYearDays,
      say: 'This frost comes more than a year after the sowing. Put in the first killing frost after the day when you can sow.',
    },
    {
      at: 'likelyRainIn',
      when: ({ lowRainIn, likelyRainIn }) => likelyRainIn < lowRainIn,
      say: 'The likely rain is less than the rain of a dry year. Put the smaller one with the dry year.',
    },
  ],
  compute,
}).describe({
  question: 'Sow a feed crop or buy hay?',
  lead: 'What can still be sown by your date, the water it needs, the tons it is likely to make, and what a ton costs beside hay when failed tries are paid for.',
  searchWords:
    'emergency forage, annual forages in drought, summer annuals, sorghum sudan, cover crop grazing, cost per ton of forage, last planting date forage, prevented planting forage',
  first: ['crop', 'sowDay', 'likelyRainIn', 'areaAc', 'hayPriceUsdPerTon'],
  groups: [
    {
      title: 'The crop',
      inputs: ['growDays', 'waterPerTonIn', 'mostTonPerAc', 'use', 'eatenPercent'],
      summary: 'used after {growDays}, takes {waterPerTonIn}, at most {mostTonPerAc}, {use}, {eatenPercent} eaten',
    },
    {
      title: 'The season',
      inputs: ['frostDay', 'isSoilWarm', 'lowRainIn', 'usedPercent', 'failCount'],
      summary: 'frost {frostDay}, {isSoilWarm}, {lowRainIn} of rain in a dry year, {usedPercent} of rain used, {failCount} in 10 fail',
    },
    {
      title: 'Water in the soil now',
      inputs: ['storedFrom', 'knownStoredIn', 'texture', 'rootDepthIn', 'filledPercent'],
      summary: '{storedFrom}, {knownStoredIn} stored, {texture}, roots to {rootDepthIn}, {filledPercent} full',
    },
    {
      title: 'What sowing costs',
      inputs: ['seedUsd', 'sowingUsd', 'feedUsd', 'otherUsd', 'balingUsdPerTon'],
      summary: '{seedUsd} for seed, {sowingUsd} to sow, {feedUsd} for fertilizer, {otherUsd} for rent and fence, baling {balingUsdPerTon}',
    },
    {
      title: 'The hay beside it',
      inputs: ['hayMoisturePercent', 'hayStoragePercent', 'hayFeedingPercent'],
      summary: '{hayMoisturePercent} water, {hayStoragePercent} lost in storage, {hayFeedingPercent} wasted at feeding',
    },
  ],
  handout: ['verdict', 'sownUsdPerTon', 'hayEatenUsdPerTon', 'likelyTonPerAc', 'spentUsd', 'hazard'],
  quantities,
  results: [
    { of: 'verdict', said: 'by these numbers' },
    ranged('sownUsdPerTon', ['madeUsdPerTon', 'dryUsdPerTon'], {
      when: (values) => inTime(values) && hasLikely(values),
      says: (values) =>
        hasLow(values)
          ? '{low} when nothing goes wrong, {high} in a dry year'
          : '{low} when nothing goes wrong; in a dry year there is no crop to speak of',
    }),
    { of: 'hayEatenUsdPerTon' },
    ranged('likelyTonPerAc', ['lowTonPerAc', 'likelyTonPerAc'], { when: inTime, says: '{low} in a dry year' }),
    { of: 'storedNowIn' },
    { of: 'needStoredIn', when: ({ canPay }) => canPay === 'yes' },
    { of: 'canPay', when: ({ canPay }) => canPay === 'no' },
    { of: 'evenTonPerAc', when: ({ canPay }) => canPay === 'yes' },
    { of: 'crops' },
    { of: 'leftDays', when: ({ leftDays }) => leftDays > 0 },
    { of: 'hazard' },
    { of: 'grazeHeightIn', when: ({ hazard }) => hazard === 'prussic-nitrate' },
    { of: 'spentUsd' },
    { of: 'feedTon', when: (values) => inTime(values) && hasLikely(values) },
    { of: 'byYield' },
  ],
  steps,
  cautions: [
    caution(({ hazard }) => hazard === 'prussic-nitrate', {
      lead: 'Sorghum can kill by prussic acid: short, after frost, after a drought.',
      life: true,
      say: 'Sorghums can kill by prussic acid: when short, in the shoots that come after a drought breaks, and after frost. Keep stock off until it is taller than the height below, and off for two weeks after a frost, or until every leaf is brown and dry if that takes longer, and for two weeks after rain breaks a drought; each later frost and new shoots start the count again. Never turn hungry stock in. Horses do not go on sorghums at all.',
      source: 'agproud-35189',
    }),
    caution(({ hazard, use }) => hazard === 'prussic-nitrate' && use === 'bale', {
      lead: 'Drying does not clear sorghum hay of prussic acid. Test before feeding.',
      life: true,
      say: 'Drying does not clear sorghum hay of prussic acid: in a Kansas test, what makes it was all still there after two months. Other pages call hay safe once it is cured well. Go by a laboratory’s test before you feed it.',
      source: 'kansas-sorghum-hay-2024',
    }),
    caution(({ crop }) => crop === 'foxtail-millet', {
      lead: 'Foxtail millet as the main hay has killed horses.',
      life: true,
      say: 'Foxtail millet must not be a horse’s main hay: it has caused trouble with kidneys, bones and joints, and deaths. Its ripe bristles hurt mouths and eyes of all stock: cut before they set.',
      source: 'high-plains-millet',
    }),
    caution(({ use }) => use === 'graze', {
      lead: 'Cows off dry grass can die on lush growth. Feed hay first and go slowly.',
      life: true,
      say: 'Cows that come off dry, poor grass onto lush growth can die of lung trouble (fog fever), mostly within ten days. Feed hay first, let them in a few hours a day at the start, and ask your veterinarian. Do not drive sick ones.',
      source: 'carlson-fog-fever-2021',
    }),
    caution(({ hazard }) => hazard !== 'unknown', {
      lead: 'Any of these can hold nitrate that kills. Have it tested before it is fed.',
      life: true,
      say: 'Any of these can hold enough nitrate to kill when growth stops for want of water, and baling does not take it out. Have it tested at a laboratory before it is grazed or fed; leave tall stubble. A strip or a field kit is no clearance. Your veterinarian knows the local rules.',
      source: 'common practice',
    }),
    caution(({ hazard }) => hazard === 'nitrate-bloat', {
      lead: 'On turnips stock can bloat or choke. Turn them in full, hay beside it.',
      life: true,
      say: 'Turnips: stock can bloat, or choke on a root. Turn them in full, hay beside it, and let them get used to it over days.',
      source: 'common practice',
    }),
    caution(({ hazard, use }) => hazard === 'nitrate-foam' && use === 'graze', {
      lead: 'Lush oats can bloat stock. Never turn them in hungry or onto wet growth.',
      life: true,
      say: 'Lush oats can bloat cattle, sheep and goats, as lush wheat and rye do, and bloat kills. Never turn in hungry stock, nor onto wet or very young growth; fill them with dry hay first and watch them. Ask your veterinarian about bloat blocks.',
      source: 'volesky-bloat-2023, with msu-fall-bloat',
    }),
    caution(({ hazard }) => hazard === 'unknown', {
      lead: 'Ask what this crop can do to stock before you sow it.',
      life: true,
      say: 'Before you sow something that is not in the list, ask what it can do to stock: prussic acid, nitrate, bloat, mold.',
      source: 'common practice',
    }),
    caution((values) => inTime(values) && isWarmSeason(values.crop) && longestYearDays - values.leftDays <= seasonDays, {
      lead: 'Sown this soon after last fall’s frost, the next frost kills it.',
      say: 'The usual first frost of a year earlier is less than three months past. Another can come long before the one that you gave. Sow after the last frost of spring, or put in the day of the next frost.',
      source: 'common practice',
    }),
    caution(isShortSeason, {
      lead: 'Frost comes soon after its first use: count on fewer tons than these.',
      say: `Fewer than ${regrowthDays} days lie between its first use and the usual frost. These tons are those of a summer that lets it grow back, so count on less. Sow no more than your stock can eat before frost, or sow oats, which stand it.`,
      source: 'common practice',
    }),
    caution(isTooEarly, {
      lead: 'These days and tons are for late summer.',
      say: 'These days and tons are for late summer, August 10 to September 10 in Nebraska. Put in your own, or sow a warm-season crop.',
      source: 'drewnoski-double-crop',
    }),
    caution(() => true, {
      lead: 'Read the labels of sprays and treated seed: some forbid grazing.',
      say: 'Read the labels of what the field was sprayed with, and of treated seed: some forbid grazing or haying for months. Keep treated seed from stock.',
      source: 'common practice',
    }),
  ],
  limits: [
    'Water for a ton was measured in good stands with plentiful water. Thin, weedy or hot stands take more. Yields of the table come from irrigated plots: they are a ceiling, not a promise.',
    'It takes rain as a sum. Two inches the week after sowing make a crop; the same two inches at the end do not. A dry top inch at sowing may give no stand over wet subsoil: that belongs in your failures.',
    'Tons come from water alone. The fewer days between sowing and frost, the more they are overstated.',
    'The chance of failure is yours. No table knows your field.',
    'A ton is a ton here. Young sudangrass or oats feed better than most hay; headed-out millet feeds worse. Compare slips from a laboratory.',
    'Ground that is worked or sprayed to sow a crop in drought may blow or wash. Drill into what stands, where you can; that cost is not in here.',
    'Crop insurance and program rules can forbid or pay for a feed crop. Ask before you sow.',
  ],
  note: (values, show) => {
    const tons =
      inTime(values) && hasLikely(values)
        ? ` Likely ${show('likelyTonPerAc')} (${show('lowTonPerAc')} in a dry year) at ${show('sownUsdPerTon')} eaten, hay ${show('hayEatenUsdPerTon')}; ${values.failCount} in 10 judged to fail.`
        : ` Hay costs ${show('hayEatenUsdPerTon')} eaten.`;
    const what = values.crop === 'own' ? 'A crop that is not in the list' : show('crop');
    return `${what}, sown on ${show('sowDay')}, by these numbers: ${midSentence(show('verdict')).replace(':', ',')}.${tons} Stored water now ${show('storedNowIn')}.`;
  },
  picture: {
    kind: 'shares',
    title: 'Sown: {sownUsdPerTon} eaten',
    whole: 'sownUsdPerTon',
    parts: [
      { of: 'madeUsdPerTon', tone: 'kept', says: 'when nothing goes wrong' },
      { of: 'failedUsdPerTon', tone: 'lost', says: 'for tries that fail' },
    ],
    beside: [
      { title: 'Hay: {hayEatenUsdPerTon} eaten', whole: 'hayEatenUsdPerTon', parts: [{ of: 'hayEatenUsdPerTon', tone: 'bought', says: 'bought' }] },
    ],
    shownWhen: { timing: 'in-time' },
  },
  sources: [
    'volesky-g2012',
    'anderson-g2183',
    'lsu-summer-annuals',
    'barnhart-replant',
    'anderson-oats-2014',
    'drewnoski-double-crop',
    'ball-extending-grazing',
    'unl-spring-annuals-2023',
    'uga-planting-warm-annuals',
    'ucdavis-drought-awc',
    'drewnoski-redfearn-2024',
    'agproud-35189',
    'seedway-sorghum',
    'kansas-sorghum-hay-2024',
    'high-plains-millet',
    'carlson-fog-fever-2021',
    'kansas-forage-water',
    'shelley-winter-cereal-2022',
    'volesky-bloat-2023',
    'msu-fall-bloat',
  ],
  changes: [{ version: 2, say: 'it says that lush oats can bloat stock, where it named their nitrate alone. No number has changed.' }],
  topic: 'grass',
  order: 60,
  guides: ['sowing-a-feed-crop'],
});
