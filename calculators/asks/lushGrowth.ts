import { northernMonth } from './south.ts';

// What lush growth does to stock, in the same words wherever a form knows the stand and who grazes it.

interface Grazed {
  readonly stock: readonly { readonly kind: string }[];
}

/** Foam holds gas in the paunch of cattle, sheep and goats; a horse has no paunch. Stock that no list names may have one. */
export const canBloat = ({ stock }: Grazed): boolean => stock.some(({ kind }) => kind !== 'horse');
export const bloat = {
  lead: 'Bloat kills. Never turn hungry stock into alfalfa, clover or lush wheat.',
  life: true,
  say: 'Alfalfa, clover and lush wheat, rye and oats can bloat cattle, sheep and goats. Never turn in hungry stock, nor onto wet or very young growth; fill them with dry hay first and watch them. With grass as half of the stand or more the risk is lower, and never gone. Ask your veterinarian about bloat blocks.',
  source: 'volesky-bloat-2023, with msu-fall-bloat',
} as const;

/** February to April where spring is early (winter-tetany-drovers), May where it is late (harty-tetany-2020); 0 for January, half a year later in the south. */
const staggersMonths: readonly number[] = [1, 2, 3, 4];
export const isStaggersSeason = (day: number, isSouth: boolean): boolean => staggersMonths.includes(northernMonth(day, isSouth));
/** Milk takes the magnesium: cows in milk first, and ewes (anderson-tetany); does like ewes, by common practice. */
export const isInMilk = ({ stock }: Grazed): boolean => stock.some(({ kind }) => kind === 'cow-nursing' || kind === 'ewe-nursing' || kind === 'doe');
export const staggers = {
  lead: 'Lush spring grass can kill cows in milk. Give magnesium before they go in.',
  life: true,
  say: 'Fast, lush cool-season grass and small grains in spring are short of magnesium for cows, ewes and does in milk (grass staggers). Old cows with young calves go first: jumpy, staring, staggering, then down and dead. Give them a high-magnesium mineral from 30 days before, or put dry cows and stockers there, and look often. Call the veterinarian at the first sign. Never give cattle mineral to sheep.',
  source: 'davis-staggers, with anderson-tetany, winter-tetany-drovers and harty-tetany-2020',
} as const;
