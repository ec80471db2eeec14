import { defineCalculator } from '../../kit/define.ts';
import { cautions } from './cautions.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  slug: 'feed-hazards',
  version: 1,
  title: 'Nitrate, prussic acid and water test reading',
  inputs,
  refusals: [
    {
      at: 'forageNitrate',
      when: ({ forageNitrate, prussicAcid, waterNitrate, waterSulfate, waterSalts }) =>
        [forageNitrate, prussicAcid, waterNitrate, waterSulfate, waterSalts].every((each) => each === 'not-tested'),
      say: 'Nothing was tested, so there is nothing to read. Put in at least one value from a slip.',
    },
    {
      at: 'animals',
      when: ({ animals }) => animals === 'horses',
      say: 'These lists are for cattle, with sheep and goats read by them. For horses take the slip to your veterinarian, and keep them off sorghum and sudangrass.',
    },
  ],
  compute,
}).describe({
  question: 'What does the laboratory’s slip say?',
  lead: 'Copy the slip’s own words. It turns them into one unit, puts feed and water together, and shows what each published list says, the strictest first.',
  searchWords: [
    'nitrate toxicity',
    'nitrate poisoning',
    'cyanide',
    'HCN',
    'sorghum-sudan',
    'drought corn',
    'forage test',
    'water test',
    'sulfates',
    'salty water',
    'TDS',
    'NO3-N to NO3',
    'ppm to percent',
  ],
  quantities,
  results: [
    { of: 'verdict' },
    { of: 'leadThing', when: ({ verdict }) => verdict !== 'under-every-limit' },
    { of: 'leadList', when: ({ verdict }) => verdict !== 'under-every-limit' },
    { of: 'leadSays', when: ({ verdict }) => verdict !== 'under-every-limit' },
    { of: 'nitrogenPpm', when: ({ forageNitrate }) => forageNitrate !== 'not-tested' },
    { of: 'asFeedPpm', when: ({ forageNitrate, waterNitrate }) => forageNitrate !== 'not-tested' && waterNitrate !== 'not-tested' },
    { of: 'totalG', when: ({ forageNitrate, waterNitrate }) => forageNitrate !== 'not-tested' || waterNitrate !== 'not-tested' },
    { of: 'gPerCwt', when: ({ forageNitrate, waterNitrate }) => forageNitrate !== 'not-tested' || waterNitrate !== 'not-tested' },
    { of: 'mixing', when: ({ forageNitrate }) => forageNitrate !== 'not-tested' },
    { of: 'limitPpm', when: ({ mixing }) => mixing === 'share' || mixing === 'no-room' || mixing === 'no-share-named' },
    // A share of 100 would read like leave to feed it alone.
    { of: 'leadSharePercent', when: ({ mixing }) => mixing === 'share' },
    { of: 'prussicPpm', when: ({ prussicAcid }) => prussicAcid === 'tested' },
    { of: 'waterNitrogenMgPerL', when: ({ waterNitrate }) => waterNitrate !== 'not-tested' },
    { of: 'sulfateMgPerL', when: ({ waterSulfate }) => waterSulfate !== 'not-tested' },
    { of: 'saltsMgPerL', when: ({ waterSalts }) => waterSalts !== 'not-tested' },
    { of: 'readings' },
    { of: 'leastHeightIn', when: ({ crop }) => crop !== 'other' },
    { of: 'killingFrostDays', when: ({ crop }) => crop !== 'other' },
    { of: 'lightFrostDays', when: ({ crop }) => crop !== 'other' },
    { of: 'afterDroughtDays', when: ({ crop }) => crop !== 'other' },
    { of: 'ensiledDays', when: ({ crop }) => crop !== 'other' },
  ],
  steps,
  cautions,
  limits: [
    'It reads a slip. It does not know whether the sample stands for the stack: take cores from many bales of one field and one cutting, and test each field by itself.',
    'Nitrate sits lowest in the stem and changes with every rain. A slip from before the rain tells little of the stand after it.',
    'Published lists differ, some tenfold for water. They are quoted here, some shortened; three were not read again and are marked as from memory. Your own laboratory’s list goes before them.',
    'Which class is strictest is our own ordering of the lists’ words. Where a list’s share of the ration was not in the copy that was read, it says so.',
    'A mix on paper is even; in a bunk it seldom is. Stock sort, and the strong eat first.',
    'Thin, sick, hungry or parasite-ridden stock stand less than these lists assume. Slow change over days lets them stand more. Neither is counted.',
    'It says nothing of blue-green algae, lead, ergot, mold, blister beetles or other poisons.',
  ],
  note: ({ forageNitrate, waterNitrate, prussicAcid, waterSulfate, waterSalts, verdict, mixing, testedBy }, show) => {
    // A letter without this word would pass a strip off for a laboratory.
    const by = testedBy === 'field-strip' ? ' by a field strip, which clears nothing' : '';
    return [
      forageNitrate === 'not-tested' ? '' : `Feed${by}: ${show('nitrogenPpm')} ppm NO3-N in dry matter.`,
      prussicAcid === 'tested' ? `Prussic acid in the feed${by}: ${show('prussicPpm')} ppm in dry matter.` : '',
      waterNitrate === 'not-tested' ? '' : `Water: ${show('waterNitrogenMgPerL')} NO3-N.`,
      waterSulfate === 'not-tested' ? '' : `Sulfate in the water ${show('sulfateMgPerL')}.`,
      waterSalts === 'not-tested' ? '' : `Salts in the water ${show('saltsMgPerL')}.`,
      forageNitrate === 'not-tested' || waterNitrate === 'not-tested'
        ? ''
        : `Feed and water together bring one animal ${show('totalG')} of nitrate nitrogen a day, as if all its feed held ${show('asFeedPpm')} ppm.`,
      verdict === 'under-every-limit'
        ? `${show('verdict')}.`
        : `${show('verdict')}: ${show('leadThing').toLowerCase()}, ${show('leadList')}, ${show('leadSays')}.`,
      mixing === 'share' ? `To stay under ${show('limitPpm')} ppm, at most ${show('leadSharePercent')} of all they eat may be this feed.` : '',
      'Talk it over with the laboratory and the veterinarian before feeding.',
    ]
      .filter((each) => each !== '')
      .join(' ');
  },
  picture: {
    kind: 'shares',
    whole: 'totalG',
    parts: [
      { of: 'feedG', tone: 'other' },
      { of: 'waterG', tone: 'water' },
    ],
  },
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
    'mahanna-nitrate',
    'beck-nitrate',
  ],
  guides: ['handling-stressed-forage'],
});
