import { erodibilityByTextureLists } from '../../tables/erodibility.ts';
import type { Texture } from '../../tables/soilGroups.ts';
import { need } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';

export type ErodibilityList = keyof typeof erodibilityByTextureLists;

/**
 * Soil factor K by texture and organic matter, where nobody has the soil survey's own. `stewart-1975` goes straight between its levels of 0.5, 2 and 4 %
 * and keeps the end values beyond; `stone-hilborn-2012` has two classes and counts exactly 2 % as the lower.
 * @param texture - One of the twelve texture classes
 * @param organicMatterPercent - Organic matter, percent by weight; 0 or more
 * @param list - Published list
 * @returns K, ton acre hour per hundred acre foot-ton inch, or undefined where the list does not give the texture a value
 * @throws RangeError if `organicMatterPercent` is negative
 * @source stewart-1975, table by texture; stone-hilborn-2012, table 2
 * @example erodibilityByTexture('silt-loam', 3, 'stewart-1975') //=> 0.375
 */
export function erodibilityByTexture(texture: Texture, organicMatterPercent: number, list: ErodibilityList): number | undefined {
  need('erodibilityByTexture', 'organicMatterPercent', organicMatterPercent, { atLeast: 0, atMost: 100 });
  if (list === 'stewart-1975') {
    const { organicMatterPercent: levels, erodibility } = erodibilityByTextureLists[list];
    const row: readonly number[] | undefined = texture === 'clay' ? undefined : erodibility[texture];
    return row && interpolated(organicMatterPercent, levels, row);
  }
  const rows: Readonly<Record<string, { readonly below: number; readonly above: number } | undefined>> = erodibilityByTextureLists[list].erodibility;
  return organicMatterPercent > 2 ? rows[texture]?.above : rows[texture]?.below;
}
