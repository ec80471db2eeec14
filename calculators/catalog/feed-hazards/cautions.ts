import { waterCautions } from '../../asks/waterSlip.ts';
import { type Caution, caution } from '../../kit/define.ts';
import { asPrinted } from '../../kit/wholes.ts';
import { deadlyNitrateBand } from '../../tables/feedHazards.ts';
import { asTold, type compute } from './compute.ts';
import type { Values } from './inputs.ts';
import { quantities, type ReadingWord } from './quantities.ts';

type V = Values & ReturnType<typeof compute>;
const hasFeed = ({ forageNitrate }: V): boolean => forageNitrate !== 'not-tested';
const hasWater = ({ waterNitrate }: V): boolean => waterNitrate !== 'not-tested';
// By the figure that is told: 2.996 stands there as 3.00.
const isDeadly = ({ gPerCwt }: V): boolean => asPrinted(gPerCwt, quantities.gPerCwt.digits) >= deadlyNitrateBand.leastGPerCwt;
const isMixed = (values: V): boolean => hasFeed(values) && values.otherFeed === 'tested';
/** Heavier than any calf, sheep or goat, lb. Common practice. */
const heaviestLb: Partial<Record<Values['animals'], number>> = { calves: 900, 'sheep-or-goats': 400 };
const isCowWeight = ({ animals, weightLb }: V): boolean => weightLb > (heaviestLb[animals] ?? Number.POSITIVE_INFINITY);
const hasPrussicCrop = ({ crop }: V): boolean => crop !== 'other';
const hasPrussicAcid = ({ prussicAcid }: V): boolean => prussicAcid === 'tested';
const isWrapped = ({ basis, feedForm }: V): boolean => basis !== 'dry' && (feedForm === 'silage' || feedForm === 'baleage');

/** What the reading of the feed's nitrate means at the feeder. */
const feedCaution = (word: ReadingWord, words: Omit<Caution<V>, 'when'>): Caution<V> => caution(({ feedReading }) => feedReading === word, words);
const feedCautions: readonly Caution<V>[] = [
  feedCaution('feed-quarter-pregnant', {
    lead: 'Pregnant stock: at most a quarter of all they eat.',
    life: true,
    say: 'For pregnant stock the strictest table allows this feed as no more than a quarter of all they eat, by dry matter. Fed alone it is four times that. Two other tables, Clemson University’s and Dairyland’s, print half at this level; the strictest leads.',
    source: 'servitech-nitrate',
  }),
  feedCaution('feed-half-pregnant', {
    lead: 'Pregnant stock: at most half of what they eat, by the strictest table.',
    life: true,
    say: 'For pregnant stock the strictest table allows this feed as no more than half of all they eat, by dry matter. Fed alone it is twice that.',
    source: 'servitech-nitrate',
  }),
  feedCaution('feed-half', {
    lead: 'At most half of all they eat, by the strictest table.',
    life: true,
    say: 'The strictest table allows this feed as no more than half of all they eat, by dry matter. Fed alone it is twice that.',
    source: 'servitech-nitrate',
  }),
  feedCaution('feed-third', {
    lead: 'At most about a third of all they eat, by the strictest table.',
    life: true,
    say: 'The strictest table allows this feed as no more than about a third of all they eat (35 percent), by dry matter; from 2,100 ppm on another table feeds it only properly mixed. Fed alone it is nearly three times that.',
    source: 'clemson-nitrate',
  }),
  feedCaution('feed-quarter', {
    lead: 'At most a quarter of all they eat, by the strictest table.',
    life: true,
    say: 'The strictest table allows this feed as no more than a quarter of all they eat, by dry matter; from 2,100 ppm on another table feeds it only properly mixed. Fed alone it is four times that.',
    source: 'clemson-nitrate',
  }),
  feedCaution('feed-none-pregnant', {
    lead: 'Pregnant stock: none of this feed, by the strictest table.',
    life: true,
    say: 'The strictest table allows pregnant stock none of this feed. They may lose calves or lambs days after eating it.',
    source: 'clemson-nitrate',
  }),
];

export const cautions: readonly Caution<V>[] = [
  caution(() => true, {
    lead: 'Nothing here clears a feed: talk to the laboratory and your veterinarian.',
    say: 'Nothing here clears a feed or a water. The lists disagree, one sample is not the whole stack, and thin, sick or hungry stock die at levels that others stand. Talk to the laboratory and to your veterinarian before anything is fed.',
    source: 'common practice',
  }),
  caution(isDeadly, {
    lead: 'Do not feed it so: this much nitrate in a day is near what kills.',
    life: true,
    say: 'This is as much nitrate nitrogen in a day as research puts near the least that kills: a band of 3 to 5 grams for each 100 lb of the animal. It comes from few animals and is no ceiling to feed up to. Do not feed it so.',
    source: 'ars-nitrate-plants',
  }),
  caution(isDeadly, {
    lead: 'One hungry meal kills with about half the nitrate of a slow day.',
    life: true,
    say: 'Speed matters. Feed that is eaten within a few hours kills with about half the nitrate that it takes over a day or two, so one hungry meal is worse than the day’s amount shows.',
    source: 'rasby-g1779',
  }),
  caution(isCowWeight, {
    lead: 'This is a cow’s weight: give what one of them weighs, and what it eats.',
    life: true,
    say: 'No calf, sheep or goat weighs this much. With a cow’s weight and a cow’s feed the nitrate for each 100 lb can come out half of what it is. Give what one of them weighs and what it eats in a day; choosing the animals again fills in common figures.',
    source: 'common practice',
  }),
  caution((values) => !hasFeed(values) && values.animals !== 'horses', {
    lead: 'Nitrate in the feed was not tested. It kills, and the feed looks sound.',
    life: true,
    say: 'Nitrate in the feed was not tested. Corn, oats, small grains, millets, sorghums and weeds that drought stopped can hold enough to kill within hours, and look sound. Keep stock off until a laboratory has tested it, hungry stock above all. Where they stagger, breathe hard or show brown or blue gums, take the feed away and call the veterinarian at once.',
    source: 'common practice',
  }),
  caution(({ verdict }) => verdict === 'do-not-feed', {
    lead: 'At least one list says not to feed or use it: keep stock away now.',
    life: true,
    say: 'At least one list says not to feed or use this. Keep stock away from it now, and ask the veterinarian what can be done with it.',
    source: 'common practice',
  }),
  caution(({ verdict }) => verdict === 'only-mixed', {
    lead: 'Do not feed it as it is: lists allow it only when properly mixed.',
    life: true,
    say: 'At least one list says not to feed this unless it is properly mixed. Keep stock off it as it is, and have your veterinarian or a nutritionist set the mix.',
    source: 'common practice',
  }),
  ...feedCautions,
  caution((values) => isMixed(values) && values.otherListSharePercent < 100, {
    lead: 'The other feed has a limit of its own, or none of it may be fed.',
    life: true,
    say: 'By itself the other feed is over a limit. Its own line under the answer says how much of it the strictest table allows, if any. Do not turn to it to thin out this one.',
    source: 'clemson-nitrate',
  }),
  caution((values) => isMixed(values) && values.sharePercent > values.listSharePercent, {
    lead: 'You feed more of it than the strictest table allows: cut the share.',
    life: true,
    say: 'The share of this feed that you gave is more than the strictest table allows. Cut it, or feed something else, until the veterinarian has set it.',
    source: 'common practice',
  }),
  caution((values) => isMixed(values) && 100 - values.sharePercent > values.otherListSharePercent, {
    lead: 'You feed more of the other feed than the strictest table allows: cut it.',
    life: true,
    say: 'The share of the other feed is more than the strictest table allows. Cut it, or feed something else, until the veterinarian has set it.',
    source: 'common practice',
  }),
  caution((values) => values.verdict !== 'under-every-limit' && (hasFeed(values) || hasWater(values)), {
    lead: 'Staggers, hard breath, brown or blue gums: veterinarian now.',
    life: true,
    say: 'Stock that stagger, breathe hard, tremble or lie down, with brown or blue gums: call the veterinarian at once, take the feed away, and do not drive them. Death can come within hours.',
    source: 'common practice',
  }),
  caution(({ testedBy, ...values }) => testedBy === 'field-strip' && (values.forageNitrate !== 'not-tested' || values.prussicAcid === 'tested'), {
    lead: 'A field strip never clears a feed: wait for the laboratory.',
    life: true,
    say: 'A strip or drops in the field can only tell you to hold stock out and send a sample. They never clear a feed. Wait for the laboratory.',
    source: 'common practice',
  }),
  caution(
    ({ forageNitrate, waterNitrate, waterSulfate }) => forageNitrate === 'not-said' || waterNitrate === 'not-said' || waterSulfate === 'not-said',
    {
      lead: 'The slip’s word is not known: call the laboratory before you act.',
      say: 'The slip’s word is not known, so its number was read the strictest way. It may be three to seven times less. Call the laboratory before you act on either.',
      source: 'anderson-nitrate-2016',
    },
  ),
  caution((values) => values.basis === 'not-said' && (hasFeed(values) || hasPrussicAcid(values)), {
    lead: 'Dry or as fed is not known, so it was read the strictest way.',
    say: 'Dry or as fed is not known, so it was read the strictest way, as fed. Ask the laboratory which it is.',
    source: 'common practice',
  }),
  caution((values) => hasFeed(values) && !hasWater(values), {
    lead: 'The water was not tested: nitrate in feed and water adds up.',
    say: 'The water was not tested for nitrate. Feed and water add, so the day’s amount here may be too low. Test the water.',
    source: 'harty-nitrate',
  }),
  caution((values) => hasFeed(values) && values.otherFeed === 'untested', {
    lead: 'The other feed was not tested: it is counted as high as this one.',
    say: 'The other feed was not tested and is counted as high as this one. Test it before you mix with it.',
    source: 'common practice',
  }),
  caution((values) => hasFeed(values) && values.verdict !== 'under-every-limit', {
    lead: 'Never turn hungry stock onto it: fill them with a low feed first.',
    life: true,
    say: 'Never turn hungry stock onto it. Fill them with a low feed first, bring them to it over days, in small meals, and mix it so that they cannot sort it. Drying does not take nitrate out of hay. Do not stretch it with urea.',
    source: 'common practice',
  }),
  caution(({ animals }) => animals === 'sheep-or-goats', {
    lead: 'These lists were written mostly for cattle, not for sheep and goats.',
    say: 'These lists were written mostly for cattle. For sheep and goats the stricter cattle class stands here; the veterinarian has the last word.',
    source: 'common practice',
  }),
  caution(({ animals }) => animals === 'horses', {
    lead: 'Only water is read for horses. Keep them off sorghum and its hay.',
    life: true,
    say: 'These lists were written for cattle: for horses, donkeys and mules only the water is read, by the stricter class of cattle, and the veterinarian has the last word. Keep them off sorghum, sudangrass and johnsongrass, and off short, frosted or new indiangrass: prussic acid kills within minutes. Moldy sweetclover hay makes stock bleed inside.',
    source: 'common practice',
  }),
  caution(hasPrussicCrop, {
    lead: 'Short, wilted, frosted or new growth kills in minutes. Keep off.',
    life: true,
    say: 'Sorghum kinds and indiangrass: keep stock out of short, wilted, trampled, frosted or new growth after rain, whatever a slip said earlier. Prussic acid kills within minutes; move no animal that shows it, and call the veterinarian. Horses should never have sorghums.',
    source: 'common practice',
  }),
  caution(hasPrussicCrop, {
    lead: 'Hay and silage of these crops are not cleared: have them tested.',
    say: 'Hay and silage of these crops are no clearance. Kansas State says that the risk in hay is not zero and that ensiling takes off 40 to 60 percent; Arkansas and others call well cured hay free of it. Go by the strict reading: have the hay or silage itself tested, for no wait alone clears it.',
    source: 'k-state-3861',
  }),
  caution((values) => hasPrussicCrop(values) && !hasPrussicAcid(values), {
    lead: 'Prussic acid was not tested: nitrate tells nothing of it.',
    say: 'Prussic acid was not tested. What is said here of nitrate tells nothing about it.',
    source: 'common practice',
  }),
  caution(hasPrussicAcid, {
    lead: 'Over 500 ppm of prussic acid dry, or 200 as is: never their only feed.',
    say: 'Over 500 ppm dry, or 200 as is, feed is potentially toxic and never their only feed. Always ask which of the two the slip means. Prussic acid leaves a sample on its way and changes in the field from day to day: a low figure tells of that sample on that day alone.',
    source: 'bean-prussic-302',
  }),
  caution(({ crop }) => crop === 'other', {
    lead: 'Corn from a drought year: have it tested for aflatoxin too.',
    say: 'Corn from a drought year: have it tested for aflatoxin too. Federal levels for corn are 20 parts per billion for dairy and young animals or where the use is not known, 100 for breeding cattle, 300 for finishing cattle. Blending it down may need permission from the state.',
    source: 'missouri-aflatoxin',
  }),
  caution(({ crop }) => crop === 'other', {
    lead: 'Moldy sweetclover hay makes stock bleed inside: have it tested.',
    life: true,
    say: 'Hay with sweetclover in it: mold turns it into a poison that makes stock bleed inside. Seeing no mold does not clear it. Have it tested before calving, castrating or dehorning.',
    source: 'mostrom-sweetclover',
  }),
  caution(({ crop }) => crop === 'other', {
    lead: 'Foxtail millet hay is no main hay for horses.',
    say: 'Foxtail (German) millet hay is no main hay for horses: growers themselves say not to sell it as horse hay. One equine nutritionist allows it with extra calcium; ask your veterinarian.',
    source: 'high-plains-millet',
  }),
  caution(isWrapped, {
    lead: 'Spoiled silage and torn bales can carry listeria: throw it out.',
    life: true,
    say: 'Silage and wrapped bales that did not sour below pH 5, hold soil, or have a torn cover can carry listeria: circling, one side of the face drooping, lost calves and lambs, sheep and goats most of all. Throw out what is spoiled and clear what they leave.',
    source: 'lejeune-listeria',
  }),
  ...waterCautions<V>(
    ({ sulfateMgPerL, saltsMgPerL }) => ({ sulfateMgPerL: asTold(sulfateMgPerL), saltMgPerL: asTold(saltsMgPerL) }),
    ({ animals }) => (animals === 'calves' || animals === 'adult-cattle' ? 'cattle' : animals),
  ),
  caution(({ waterSulfate, waterSalts }) => waterSulfate !== 'not-tested' || waterSalts !== 'not-tested', {
    lead: 'Green or blue scum on water can be deadly: no number here shows it.',
    life: true,
    say: 'Sulfur in feed, mineral and distillers grain adds to the water’s sulfate. A pond that dries down gets saltier by the week: test again. Green or blue scum can be deadly to stock, dogs and people, and no number here shows it. Thirsty stock must not be let loose on salty water.',
    source: 'common practice',
  }),
];
