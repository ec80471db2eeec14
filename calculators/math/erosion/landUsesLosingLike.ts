import { type LandUse, landUseCover } from '../../tables/cropCover.ts';
import { need } from '../need.ts';

/**
 * Uses of land whose published span of the cover factor holds this one: with the same rain, soil and slope they lose soil alike. A pasture grazed until a fifth
 * of its ground is covered stands among the row crops.
 * @param coverFactor - C, share of the loss from clean-tilled fallow; 0 to 1
 * @returns Uses of land, from the best covered to the barest
 * @throws RangeError if `coverFactor` is outside its range
 * @source weiner-matthews-2003, table 11-3
 * @example landUsesLosingLike(0.6) //=> ['large-seeded-legumes', 'row-crops']
 */
export function landUsesLosingLike(coverFactor: number): readonly LandUse[] {
  need('landUsesLosingLike', 'coverFactor', coverFactor, { atLeast: 0, atMost: 1 });
  const uses: readonly LandUse[] = [
    'permanent-vegetation',
    'established-meadow',
    'small-grains',
    'large-seeded-legumes',
    'row-crops',
    'tilled-fallow',
  ];
  return uses.filter((use) => coverFactor >= landUseCover.uses[use].low && coverFactor <= landUseCover.uses[use].high);
}
