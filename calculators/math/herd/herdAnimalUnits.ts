import { need } from '../need.ts';

/**
 * Animal units of a herd: the sum of n u over its groups, with n = head, u = unitsPerHead.
 * @param groups - For each group: head, at least 0; animal units of one, at least 0
 * @returns Animal units, no unit
 * @throws RangeError if a value is outside its range
 * @source penn-state-four-steps, step 1
 * @example herdAnimalUnits([{ head: 30, unitsPerHead: 1.6 }, { head: 1, unitsPerHead: 1.7 }]) //=> 49.7
 */
export function herdAnimalUnits(groups: readonly { readonly head: number; readonly unitsPerHead: number }[]): number {
  return groups.reduce((sum, { head, unitsPerHead }) => {
    need('herdAnimalUnits', 'head', head, { atLeast: 0 });
    need('herdAnimalUnits', 'unitsPerHead', unitsPerHead, { atLeast: 0 });
    return sum + head * unitsPerHead;
  }, 0);
}
