import { need } from '../need.ts';

/** Where the mass was measured decides which share may be applied to it: the two are never combined. */
export type Stand =
  | { readonly measured: 'whole-growth'; readonly lbPerAc: number; readonly harvestShare: number }
  | { readonly measured: 'above-stubble'; readonly lbPerAc: number; readonly grazedShare: number };

/**
 * Forage that animals will eat from an acre: M h of the whole growth, or A g of what stands above the stubble. A harvest share already leaves the
 * stubble; a grazed share takes off only trampling and refusal. Using both counts the stubble twice.
 * @param stand - Mass in lb of dry matter per acre, at least 0, and the share that belongs to the way it was measured, 0 to 1
 * @returns Forage eaten, lb per acre
 * @throws RangeError if a value is outside its range
 * @source penn-state-agronomy-guide, table 1.8-9 (grazed share); white-b5036 (harvest share)
 * @example eatenLbPerAc({ measured: 'whole-growth', lbPerAc: 2000, harvestShare: 0.25 }) //=> 500
 */
export function eatenLbPerAc(stand: Stand): number {
  need('eatenLbPerAc', 'lbPerAc', stand.lbPerAc, { atLeast: 0 });
  if (stand.measured === 'whole-growth') {
    need('eatenLbPerAc', 'harvestShare', stand.harvestShare, { atLeast: 0, atMost: 1 });
    return stand.lbPerAc * stand.harvestShare;
  }
  need('eatenLbPerAc', 'grazedShare', stand.grazedShare, { atLeast: 0, atMost: 1 });
  return stand.lbPerAc * stand.grazedShare;
}
