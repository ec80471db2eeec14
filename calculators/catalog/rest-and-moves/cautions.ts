import { toxicStubble } from '../../asks/cautions.ts';
import { fescueMares, founder, hasHorses, isSugary } from '../../asks/horses.ts';
import { bloat, canBloat, isInMilk, isStaggersSeason, staggers } from '../../asks/lushGrowth.ts';
import { type Caution, caution } from '../../kit/define.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { toxicFescueIn } from '../../tables/forageHeights.ts';
import { type compute, secondBiteDays } from './compute.ts';
import { hasDensity, type inputs, isBelowTable, leastSorghumIn, sorghumIn } from './inputs.ts';

/** A height that grass must have: rounded up, so that nobody goes in lower. */
const inBoth = (inches: number): string => `${inches} inches (${Math.ceil(inches * 2.54)} cm)`;

export interface Rotation {
  readonly verdict: 'none-until-rain' | 'grows-back';
  readonly todayVerdict: 'enough' | 'short' | 'none';
  readonly paddockCount: number;
  readonly herdCount: number;
}
export const isBackTooSoon = ({ verdict, todayVerdict }: Rotation): boolean => verdict === 'grows-back' && todayVerdict === 'short';
/** With a paddock for each herd and none to spare, stock are in every one of them all the time. */
export const restsNever = ({ verdict, todayVerdict }: Rotation): boolean => verdict === 'grows-back' && todayVerdict === 'none';

const bloats: readonly string[] = ['alfalfa', 'white-clover', 'other-clovers', 'low-cool-season', 'small-grains'];
/** Cool-season grass that outruns its magnesium in spring; legumes hold it, so what names clover is left out (anderson-tetany). */
const outruns: readonly string[] = [
  'cool-season-mix',
  'tall-fescue',
  'orchardgrass',
  'kentucky-bluegrass',
  'smooth-brome',
  'reed-canarygrass',
  'perennial-ryegrass',
  'annual-ryegrass',
  'small-grains',
];

export const cautions: readonly Caution<ValuesOf<typeof inputs> & ReturnType<typeof compute>>[] = [
  caution(isBackTooSoon, {
    lead: 'This plan is back before the grass is. Go in only where it has grown back.',
    say: 'This plan is back before the grass is. Go in only where a paddock has grown back to its height. Where it has not, wait: feed hay on one lot that you can spare, or take stock off. Each round that comes too early leaves less leaf to grow from.',
    source: 'common practice',
  }),
  caution(restsNever, {
    lead: 'With stock in every paddock none rests. Split one, or take stock off.',
    say: 'A paddock rests only while no stock are in it, and here stock are in every one, all the time. So nothing grows back to its height: they bite each new leaf as it comes. Split the ground, or run herds together, so that at least one paddock stands empty. Or feed hay on one lot that you can spare until the grass is back.',
    source: 'common practice',
  }),
  caution(({ verdict }) => verdict === 'none-until-rain', {
    lead: 'Nothing grows. Another round takes the last leaf: feed hay, or pull stock.',
    say: 'Nothing is growing, so going round again takes the last leaf that the plants have to grow from. The calendar shows one pass over what stands. After it, feed hay on one lot that you can spare, or take stock off, until rain has brought the grass back to height.',
    source: 'common practice',
  }),
  caution(({ occupiedDays }) => occupiedDays > secondBiteDays, {
    lead: 'Past a week in one paddock stock bite the new leaf. Shorten the stay.',
    say: 'Stock are in one paddock for more than about seven days. They then bite the new leaf of plants that they grazed on the first days, and the rest has not even begun. Shorten the stay.',
    source: 'common practice',
  }),
  caution((values) => isBackTooSoon(values) && values.wholeSlowerOccupiedDays > secondBiteDays, {
    lead: 'Too few paddocks for this rest. Split some, run one herd, or pull stock.',
    say: 'Too few paddocks for this rest. Going slower round the ones you have makes each stay longer, past the seven days or so after which stock take a second bite. Split paddocks, run the herds as one, or take stock off.',
    source: 'common practice',
  }),
  caution(({ verdict, restDays, givenRestDays }) => verdict === 'grows-back' && givenRestDays > 2 * restDays, {
    lead: 'This round is far longer than the grass needs. Go faster, or shut some.',
    say: 'This round is more than twice as long as the grass needs now. It will run to stem. Go round faster, or shut some paddocks for hay or for standing feed.',
    source: 'common practice',
  }),
  caution(({ forage, stopHeightIn }) => isBelowTable(forage, stopHeightIn), {
    lead: 'This stubble is lower than the table goes: grass comes back slower.',
    say: 'This stubble is lower than the table goes for this forage. Growth from so short a stubble is slower than the growth that you measured on taller grass, and more ground lies bare.',
    source: 'common practice',
  }),
  caution(({ forage }) => forage !== 'own' && !hasDensity(forage), {
    lead: 'No table has pounds in an inch for this forage. Clip your own.',
    say: 'No table here gives the pounds in an inch for this forage. If you have not clipped your own, the figure in that field is left over from another forage.',
    source: 'common practice',
  }),
  { when: ({ forage, stopHeightIn }) => forage === 'tall-fescue' && stopHeightIn < toxicFescueIn, ...toxicStubble },
  {
    when: (values) => hasHorses(values) && isSugary({ stopHeightIn: values.stopHeightIn, growthLbPerAcDay: values.growthNowLbPerAcDay }),
    ...founder,
  },
  { when: (values) => values.forage === 'tall-fescue' && hasHorses(values), ...fescueMares },
  { when: (values) => bloats.includes(values.forage) && canBloat(values), ...bloat },
  {
    when: (values) =>
      values.verdict === 'grows-back' &&
      outruns.includes(values.forage) &&
      isInMilk(values) &&
      values.moves.some(({ inDay }) => isStaggersSeason(inDay, values.isSouth)),
    ...staggers,
  },
  caution(({ forage }) => forage === 'sorghum-sudan' || forage === 'pearl-millet' || forage === 'small-grains', {
    lead: 'These crops can hold nitrate that kills. Test before stock go in.',
    life: true,
    say: 'Drought can leave nitrate in these crops, and it kills within hours. It is highest low in the stem, and in the days after a rain. Have a laboratory test it before stock go in, hungry stock above all.',
    source: 'common practice',
  }),
  caution(({ forage }) => forage === 'sorghum-sudan', {
    lead: 'Short or new sorghum kills in minutes. Wait for the height. No horses.',
    life: true,
    say: `Sorghum kinds make prussic acid, which kills within minutes, in short, wilted, trampled and frosted growth and in new shoots. By the strictest lists sudangrass must stand ${inBoth(sorghumIn.sudangrass)} tall, sorghum and johnsongrass ${inBoth(sorghumIn.sorghum)}, sorghum-sudangrass ${inBoth(sorghumIn.crossed)}, each time that stock come back, and a tall stand with short shoots in it counts as short. Keep them off for two weeks after frost and after the rain that ends a drought, counted again after each. Horses do not go on it at all.`,
    source: 'seedway-sorghum, with agproud-35189, drewnoski-redfearn-2024 and hay-forage-311',
  }),
  caution(({ forage, startHeightIn }) => forage === 'sorghum-sudan' && startHeightIn < leastSorghumIn, {
    lead: `Under ${inBoth(leastSorghumIn)} sorghum-sudangrass can kill. Raise the start.`,
    life: true,
    say: `You start lower than the ${inBoth(leastSorghumIn)} that the strictest lists ask of sorghum-sudangrass for prussic acid. Raise the height when grazing starts, unless you know by the seed tag that it is sudangrass (${inBoth(sorghumIn.sudangrass)}) or sorghum (${inBoth(sorghumIn.sorghum)}).`,
    source: 'seedway-sorghum, with agproud-35189',
  }),
  caution(({ forage }) => forage === 'native-tall-grass', {
    lead: 'Short, wilted or frosted indiangrass kills in minutes. Keep off.',
    life: true,
    say: 'Indiangrass can hold prussic acid, which kills within minutes, under 8 inches (20 cm) and in wilted, frosted or new growth after rain.',
    source: 'sulc-frost-1613',
  }),
  caution((values) => isBackTooSoon(values) || restsNever(values), {
    lead: 'Keep new electric wire away from power lines and dry grass.',
    life: true,
    say: 'New paddocks mean electric wire. Use a proper fence energizer, keep wire away from power lines and dry grass, put up signs where people pass, and see that each paddock has water.',
    source: 'common practice',
  }),
];
