import { blisterBeetles, boughtHay, droughtHay, fedOnTheGround, hotHay, moldyHay, wrappedHay } from '../../asks/hay.ts';
import { horseHay, isHorse } from '../../asks/horses.ts';
import { type Caution, caution } from '../../kit/define.ts';
import type { compute } from './compute.ts';
import { countsCold, hasOtherStock } from './herd.ts';
import type { Values } from './inputs.ts';
import { buys } from './steps.ts';

type V = Values & ReturnType<typeof compute>;
const birthsOutside = ({ herd, fromDay, toDay }: Values): number =>
  herd.filter(({ hasBirths, birthDay }) => hasBirths && (birthDay < fromDay || birthDay > toDay)).length;
const feedsHorsesHay = ({ haveTon, herd }: V): boolean => haveTon > 0 && herd.some(({ stock, countHead }) => isHorse(stock) && countHead > 0);

const inTheCold =
  'They need more in the cold all the same: a freshly shorn sheep from about 50 °F (10 °C) down, a goat from about 32 °F (0 °C), either with a wet coat from about 58 °F (14 °C). Wet or freshly shorn ones can die of it. Feed them more hay on such days, and give shelter from wind, rain and wet snow.';

export const cautions: readonly Caution<V>[] = [
  caution(({ lossConvention, haveTon }) => lossConvention === 'multiply' && haveTon > 0, {
    lead: 'Losses put on top of the need buy too little. Set it to dividing.',
    say: 'Putting losses on top buys too little: a fifth lost means a fourth more to have, not a fifth. Set it back to dividing before you order.',
    source: 'wv-farm-bureau-2014',
  }),
  hotHay,
  wrappedHay,
  caution(({ herd }) => herd.some(({ stock }) => stock === 'cow-poor-hay'), {
    lead: 'Under 7 % protein fewer tons are no saving: cows lose flesh. Test it.',
    say: 'Under 7 % protein cows eat less hay because it passes slowly, not because they need less. Fewer tons here are no saving: they lose flesh unless they get protein. Have the hay tested and the feed planned by a nutritionist.',
    source: 'south-dakota-alfalfa-protein',
  }),
  caution(({ beside }) => beside === 'daily' || beside === 'both', {
    lead: 'Sudden grain kills; so can urea, monensin and copper. Change feed slowly.',
    life: true,
    say: 'Change feed over two to three weeks: sudden grain kills. Urea is poison to stock that is hungry or not used to it. Cattle feed with monensin kills horses, and cattle mineral can hold enough copper to kill sheep.',
    source: 'common practice',
  }),
  caution((values) => birthsOutside(values) === 1, {
    lead: 'One birth date lies outside the days on hay. See that the year is right.',
    say: 'One birth date lies outside the days on hay, so that kind eats at one rate all the while: nursing if the date is past, the other if it is still to come. See that the year is right.',
    source: 'common practice',
  }),
  caution((values) => birthsOutside(values) > 1, {
    lead: 'More than one birth date lies outside the days on hay. See to the years.',
    say: 'More than one birth date lies outside the days on hay, so those kinds eat at one rate all the while: nursing if the date is past, the other if it is still to come. See that the years are right.',
    source: 'common practice',
  }),
  fedOnTheGround,
  caution(({ chillPercent }) => chillPercent > 25, {
    lead: 'A cow cannot eat this much more hay in the cold. Give shelter and bedding.',
    say: 'More than a quarter extra is more than a cow can eat on such a day. Windbreak, dry bedding and better feed spread over the days after do what more hay can’t. Thin cows need it sooner: ask your veterinarian.',
    source: 'oklahoma-cold-feeding',
  }),
  caution((values) => values.isColdCounted && !countsCold(values), {
    lead: 'No cold is counted: the rule is for cattle. Give shelter and more hay.',
    life: true,
    say: `The rule for cold was made for beef cattle, so nothing is added here for sheep, goats, horses or stock not listed. ${inTheCold}`,
    source: 'rusche-2020, with osu-sheep-cold-2019',
  }),
  caution((values) => countsCold(values) && hasOtherStock(values), {
    lead: 'Cold is counted for cattle alone. Give the others more hay, and shelter.',
    life: true,
    say: `Only the feed of the cattle is raised for cold, because the rule was made for them: nothing is added for the other stock. ${inTheCold}`,
    source: 'rusche-2020, with osu-sheep-cold-2019',
  }),
  caution(({ haveTon }) => haveTon > 0, {
    lead: 'Net wrap, twine and wire have killed cattle. Take them off before feeding.',
    life: true,
    say: 'Take net wrap, twine and wire off before you feed or grind. Plastic does not break down in the paunch and has killed cattle; wire and nails pierce it, and worn tire feeders shed wire.',
    source: 'ndsu-net-wrap',
  }),
  { when: ({ haveTon }) => haveTon > 0, ...moldyHay },
  { when: ({ haveTon }) => haveTon > 0, ...droughtHay },
  { when: feedsHorsesHay, ...horseHay },
  { when: feedsHorsesHay, ...blisterBeetles },
  { when: buys, ...boughtHay },
];
