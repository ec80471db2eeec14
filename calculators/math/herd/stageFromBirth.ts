/** Kinds whose appetite depends on whether they carry or nurse young. */
export const breeding = ['cow', 'heifer', 'ewe', 'doe', 'horse'] as const;
export type Breeding = (typeof breeding)[number];
export type Stage = 'dry' | 'late' | 'nursing';

/** Months that the young suckle, and months before birth in which she eats for it, by kind. */
const suckling = { cow: 7, heifer: 7, horse: 6, ewe: 3, doe: 3 } as const;
const heavy = { cow: 3, heifer: 3, horse: 3, ewe: 2, doe: 2 } as const;

/**
 * Whether a kind is one that carries or nurses young.
 * @param stock - Kind of stock
 * @returns Yes or no
 * @source common practice
 * @example isBreeding('bull') //=> false
 */
export function isBreeding(stock: string): stock is Breeding {
  return breeding.some((each) => each === stock);
}

/**
 * Stage from the month in which most of them give birth: nursing while the young suckle, late in the last months before the next birth, dry between.
 * @param stock - Kind that breeds
 * @param birthMonth - Month of birth, 1 to 12
 * @param nowMonth - Month asked about, 1 to 12
 * @returns Stage in that month
 * @source common practice
 * @example stageFromBirth('cow', 3, 10) //=> 'dry'
 */
export function stageFromBirth(stock: Breeding, birthMonth: number, nowMonth: number): Stage {
  const since = (nowMonth - birthMonth + 12) % 12;
  if (since < suckling[stock]) return 'nursing';
  return 12 - since <= heavy[stock] ? 'late' : 'dry';
}
