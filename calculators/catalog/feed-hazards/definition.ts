import { defineCalculator } from '../../kit/define.ts';
import { shownWhen } from '../../kit/shown.ts';
import { cautions } from './cautions.ts';
import { compute } from './compute.ts';
import { inputs, type Values } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

/** Under this a number is most likely a percent typed as ppm: ten thousand times too small, it would read as clean feed. Our own. */
const leastPpm = 20;
const tooSmall = (at: 'nitratePpmCount' | 'otherPpmCount' | 'prussicPpmCount') => ({
  at,
  when: (values: Values) => values[at] > 0 && values[at] < leastPpm,
  say: `So little is most likely percent: type its sign too, as in 0.2 %. If the slip does say ppm, put ${leastPpm}; for none found, 0.`,
});

export default defineCalculator({
  slug: 'feed-hazards',
  version: 5,
  title: 'Nitrate, prussic acid and water test reading',
  inputs,
  refusals: [
    tooSmall('nitratePpmCount'),
    tooSmall('otherPpmCount'),
    tooSmall('prussicPpmCount'),
    {
      at: 'animals',
      when: ({ animals, forageNitrate, prussicAcid }) => animals === 'horses' && (forageNitrate !== 'not-tested' || prussicAcid === 'tested'),
      say: 'These lists are for cattle, with sheep and goats read by them. For horses take the slip of a feed to your veterinarian; for one of water alone say above that nitrate and prussic acid in the feed were not tested. Keep them off sorghum, sudangrass and johnsongrass, and off short, frosted or new indiangrass: prussic acid kills within minutes. Moldy sweetclover hay makes stock bleed inside.',
    },
  ],
  compute,
}).describe({
  question: 'What does the laboratory’s slip say?',
  lead: 'Copy the slip’s own words. It turns them into one unit, puts feed and water together, and says what the strictest published list means for your animals. Every list stands beside it.',
  searchWords:
    'nitrate toxicity, nitrate poisoning, cyanide, HCN, sorghum-sudan, drought corn, forage test, water test, sulfates, salty water, TDS, NO3-N to NO3, ppm to percent',
  first: ['crop', 'forageNitrate', ['nitratePpmCount', 'nitratePercent'], 'animals', 'pregnant'],
  groups: [
    {
      title: 'The feed’s slip',
      inputs: ['testedBy', 'slipUnit', 'basis', 'feedForm', 'dryMatterPercent', 'prussicAcid', 'prussicPpmCount'],
      summary: '{testedBy}, {slipUnit}, {basis}, {feedForm}, {dryMatterPercent} dry matter, prussic acid {prussicAcid}, {prussicPpmCount} ppm of it',
    },
    {
      title: 'The water’s slip',
      inputs: ['waterNitrate', 'slipNitrateMgPerL', 'waterSulfate', 'slipSulfateMgPerL', 'waterSalts', 'slipSaltsMgPerL', 'conductivityCount'],
      summary: '{waterNitrate}, {slipNitrateMgPerL}, {waterSulfate}, {slipSulfateMgPerL}, {waterSalts}, {slipSaltsMgPerL}, {conductivityCount} mS/cm',
    },
    {
      title: 'What one animal eats and drinks',
      inputs: ['weightLb', 'eatenLbPerDay', 'waterFrom', 'waterGalPerDay'],
      summary: '{weightLb}, eats {eatenLbPerDay}, {waterFrom}, {waterGalPerDay}',
    },
    {
      title: 'Mixing it down',
      inputs: ['otherFeed', 'sharePercent', 'otherPpmCount', 'limitFrom', 'ownLimitPpmCount'],
      summary: '{otherFeed}, {sharePercent} of this feed, {otherPpmCount} ppm in the other, to {limitFrom}, {ownLimitPpmCount} ppm',
    },
  ],
  handout: ['reading', 'feedReading', 'verdict', 'nitrogenPpm', 'prussicPpm', 'leadSharePercent'],
  quantities,
  results: [
    { of: 'reading', said: 'by the strictest list' },
    { of: 'feedReading', when: ({ reading, feedReading, forageNitrate }) => forageNitrate !== 'not-tested' && reading !== feedReading },
    { of: 'otherReading', when: ({ reading, otherReading }) => otherReading !== 'not-tested' && reading !== otherReading },
    { of: 'verdict', when: ({ verdict }) => verdict !== 'under-every-limit' && verdict !== 'nothing-tested' },
    shownWhen(({ forageNitrate }) => forageNitrate !== 'not-tested', 'nitrogenPpm', 'ionPpm', 'potassiumNitratePpm'),
    { of: 'rationPpm', when: ({ otherReading, waterNitrate }) => otherReading !== 'not-tested' && waterNitrate === 'not-tested' },
    { of: 'asFeedPpm', when: ({ forageNitrate, waterNitrate }) => forageNitrate !== 'not-tested' && waterNitrate !== 'not-tested' },
    shownWhen(({ forageNitrate, waterNitrate }) => forageNitrate !== 'not-tested' || waterNitrate !== 'not-tested', 'totalG', 'gPerCwt'),
    { of: 'mixing', when: ({ forageNitrate }) => forageNitrate !== 'not-tested' },
    { of: 'limitPpm', when: ({ mixing }) => mixing === 'share' || mixing === 'no-room' || mixing === 'under-one' || mixing === 'no-share-named' },
    // A share of 100 would read like leave to feed it alone.
    shownWhen(({ mixing }) => mixing === 'share', 'higherFeed', 'leadSharePercent'),
    { of: 'prussicPpm', when: ({ prussicAcid }) => prussicAcid === 'tested' },
    { of: 'waterNitrogenMgPerL', when: ({ waterNitrate }) => waterNitrate !== 'not-tested' },
    { of: 'sulfateMgPerL', when: ({ waterSulfate }) => waterSulfate !== 'not-tested' },
    { of: 'saltsMgPerL', when: ({ waterSalts }) => waterSalts !== 'not-tested' },
    { of: 'readings', when: ({ readings }) => readings.length > 0 },
    shownWhen(({ crop }) => crop !== 'other', 'leastHeightIn', 'killingFrostDays', 'lightFrostDays', 'afterDroughtDays', 'ensiledDays'),
  ],
  steps,
  cautions,
  limits: [
    'It reads a slip. It does not know whether the sample stands for the stack: take cores from many bales of one field and one cutting, and test each field by itself.',
    'Nitrate sits lowest in the stem and changes with every rain. A slip from before the rain tells little of the stand after it.',
    'Published lists differ, some tenfold for water. They are quoted here, some shortened; three were not read again and are marked as from memory. One from memory leads only where none that was read sets a limit. Your own laboratory’s list goes before them.',
    'Which class is strictest is our own ordering of the lists’ words. Where a list’s share of the ration was not in the copy that was read, it says so.',
    'A mix on paper is even; in a bunk it seldom is. Stock sort, and the strong eat first.',
    'Thin, sick, hungry or parasite-ridden stock stand less than these lists assume. Slow change over days lets them stand more. Neither is counted.',
    'It says nothing of blue-green algae, lead, ergot, mold, aflatoxin, blister beetles or other poisons.',
  ],
  note: (
    { forageNitrate, waterNitrate, prussicAcid, waterSulfate, waterSalts, reading, feedReading, otherReading, higherFeed, mixing, testedBy },
    show,
  ) => {
    // A letter without this word would pass a strip off for a laboratory.
    const by = testedBy === 'field-strip' ? ' by a field strip, which clears nothing' : '';
    const hasFeed = forageNitrate !== 'not-tested';
    const hasWater = waterNitrate !== 'not-tested';
    const joined = (...parts: readonly string[]): string => parts.filter((each) => each !== '').join('; ');
    const inOne = (words: string): string => words.replace(/\. ([A-Z])/, (_, letter: string) => `; ${letter.toLowerCase()}`);
    // Of a feed under the limits the reading names the nitrate again.
    const ofFeed = inOne(show('feedReading').replace(/^The feed’s nitrate is /, ''));
    const ofOther = inOne(show('otherReading')).replace(/^./, (letter) => letter.toLowerCase());
    const sentences = [
      inOne(show('reading')),
      feedReading === 'feed-quarter-pregnant' ? 'a quarter is ServiTech’s table, the strictest of three; Clemson’s and Dairyland’s print half' : '',
      hasFeed
        ? joined(
            reading === feedReading || reading === 'under-every-limit' ? '' : `the feed’s nitrate: ${ofFeed}`,
            `feed${by}: ${show('nitrogenPpm')} ppm NO3-N in dry matter, the same as ${show('ionPpm')} ppm nitrate or ${show('potassiumNitratePpm')} ppm potassium nitrate${forageNitrate === 'not-said' ? ', read the strictest way since the slip’s word for nitrate is not known' : ''}`,
          )
        : '',
      joined(
        prussicAcid === 'tested' ? `prussic acid in the feed${by}: ${show('prussicPpm')} ppm in dry matter` : '',
        hasWater ? `water: ${show('waterNitrogenMgPerL')} NO3-N` : '',
        waterSulfate === 'not-tested' ? '' : `sulfate in the water ${show('sulfateMgPerL')}`,
        waterSalts === 'not-tested' ? '' : `salts in the water ${show('saltsMgPerL')}`,
      ),
      joined(
        hasFeed && hasWater
          ? `${otherReading === 'not-tested' ? 'feed' : 'both feeds'} and water together bring one animal ${show('totalG')} of nitrate nitrogen a day, as if all its feed held ${show('asFeedPpm')} ppm`
          : otherReading === 'not-tested'
            ? ''
            : `both feeds together hold ${show('rationPpm')} ppm NO3-N in dry matter`,
        ['not-tested', 'other-under', reading].includes(otherReading) ? '' : ofOther,
        mixing === 'share'
          ? `to stay under ${show('limitPpm')} ppm, at most ${show('leadSharePercent')} of all they eat may be ${higherFeed === 'this' ? 'this' : 'the other'} feed`
          : '',
      ),
      'talk it over with the laboratory and the veterinarian before feeding',
    ];
    return sentences.flatMap((each) => (each === '' ? [] : [`${each.charAt(0).toUpperCase()}${each.slice(1)}.`])).join(' ');
  },
  picture: {
    kind: 'shares',
    title: 'The most of the higher feed in the mix',
    parts: [
      { of: 'leadSharePercent', tone: 'lost', says: 'the higher feed' },
      { of: 'restSharePercent', tone: 'other', says: 'the lower feed' },
    ],
    shownWhen: { mixing: 'share' },
  },
  wholes: [{ whole: 'totalG', parts: ['feedG', 'waterG'] }],
  sources: [
    'clemson-nitrate',
    'dairyland-nitrate',
    'servitech-nitrate',
    'amaglab-nitrate-mixing',
    'harty-nitrate',
    'anderson-nitrate-2016',
    'bauder-1998',
    'nrc-nutrients-toxic-1974',
    'meehan-water-2023',
    'harty-sulfate-2012',
    'german-c274-2008',
    'montana-livestock-water',
    'rhykerd-johnson-prussic',
    'k-state-unl-prussic',
    'drewnoski-redfearn-2024',
    'agproud-35189',
    'hay-forage-311',
    'seedway-sorghum',
    'virginia-spes-201',
    'servitech-water',
    'k-state-watering-handbook',
    'noble-water-1999',
    'gould-fs1090',
    'beef-summer-water',
    'sigler-mt202209ag-2022',
    'mwps14-new-hampshire',
    'burbrink-2022',
    'pennington-2014',
    'nrc-small-ruminants-2007',
    'ars-nitrate-plants',
    'prewitt-merilan',
    'rasby-g1779',
    'mahanna-nitrate',
    'beck-nitrate',
    'bean-prussic-302',
    'k-state-3861',
    'hay-forage-5459',
    'arkansas-johnsongrass-2015',
    'sulc-frost-1613',
    'missouri-aflatoxin',
    'high-plains-millet',
    'mostrom-sweetclover',
    'lejeune-listeria',
  ],
  topic: 'harm',
  order: 20,
  guides: ['handling-stressed-forage'],
  changes: [
    {
      version: 5,
      say: 'on a day of 95 °F sheep and goats are taken to drink half as much again as their lists have, which go by no heat, so that more nitrate comes with it.',
    },
    {
      version: 4,
      say: 'in the cold an animal drinks the most that lists for such a day have: a nursing cow 12 gallons. Before, a list that begins at 70 °F was asked too, and it was 16.',
    },
    {
      version: 3,
      say: 'a second feed that was tested is held against the lists too, by itself and in all they eat, and the share told is that of the higher of the two, in whole percent under the level; numbers are held against the lists as they stand there, whole; and what an animal drinks is the most that the lists of stock water have, so that more nitrate comes with it. A weight that no calf, sheep or goat has is warned of.',
    },
    {
      version: 2,
      say: 'what leads is the reading for these animals, with the share of the ration; the amount that is near deadly starts at 3 grams of nitrate nitrogen for 100 lb instead of 30; a level that allows pregnant stock none of a feed counts as “do not feed”; prussic acid has a line at 500 ppm dry and 200 as is; and what the form starts with reads as not known or not tested.',
    },
  ],
});
