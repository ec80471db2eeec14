import { type Caution, caution } from '../../kit/define.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { type compute, secondBiteDays } from './compute.ts';
import { hasDensity, type inputs, isBelowTable } from './inputs.ts';

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
  caution(({ forage }) => bloats.includes(forage), {
    lead: 'Bloat kills. Never turn hungry stock into alfalfa, clover or lush wheat.',
    life: true,
    say: 'Alfalfa, clover and lush wheat, rye and oats can bloat cattle and sheep. Never turn in hungry stock, nor onto wet or very young growth; fill them with dry hay first and watch them. Ask your veterinarian about bloat blocks.',
    source: 'common practice',
  }),
  caution(({ forage }) => forage === 'sorghum-sudan' || forage === 'pearl-millet' || forage === 'small-grains', {
    lead: 'These crops can hold nitrate or prussic acid. Test before stock go in.',
    life: true,
    say: 'Drought can leave nitrate in these crops, and sorghum and sudangrass can hold prussic acid in young, wilted, frosted or new growth after rain. Have a laboratory test it before stock go in. Horses should not graze sorghum or sudangrass.',
    source: 'common practice',
  }),
  caution(({ forage }) => forage === 'native-tall-grass', {
    lead: 'Short, wilted or frosted indiangrass kills in minutes. Keep off.',
    life: true,
    say: 'Indiangrass can hold prussic acid, which kills within minutes, under 8 inches and in wilted, frosted or new growth after rain.',
    source: 'sulc-frost-1613',
  }),
  caution((values) => isBackTooSoon(values) || restsNever(values), {
    lead: 'Keep new electric wire away from power lines and dry grass.',
    life: true,
    say: 'New paddocks mean electric wire. Use a proper fence energizer, keep wire away from power lines and dry grass, put up signs where people pass, and see that each paddock has water.',
    source: 'common practice',
  }),
];
