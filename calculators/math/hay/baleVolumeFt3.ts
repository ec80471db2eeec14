import { need } from '../need.ts';

export type Bale =
  | { readonly shape: 'round'; readonly diameterFt: number; readonly widthFt: number }
  | { readonly shape: 'rectangular'; readonly lengthFt: number; readonly widthFt: number; readonly heightFt: number };

/**
 * Volume of a bale: pi D^2 w / 4 for a round one, l w h for a rectangular one. Trade names put the width of a round bale first: 4x5 is 4 ft wide, 5
 * ft across.
 * @param bale - Shape and sides, feet; each side above 0
 * @returns Volume, cubic feet
 * @throws RangeError if a side is not above 0
 * @source banta-2012, bale size and weight
 * @example baleVolumeFt3({ shape: 'round', diameterFt: 5, widthFt: 4 }) //=> 78.5
 */
export function baleVolumeFt3(bale: Bale): number {
  need('baleVolumeFt3', 'widthFt', bale.widthFt, { above: 0 });
  if (bale.shape === 'round') {
    need('baleVolumeFt3', 'diameterFt', bale.diameterFt, { above: 0 });
    return (Math.PI / 4) * bale.diameterFt ** 2 * bale.widthFt;
  }
  need('baleVolumeFt3', 'lengthFt', bale.lengthFt, { above: 0 });
  need('baleVolumeFt3', 'heightFt', bale.heightFt, { above: 0 });
  return bale.lengthFt * bale.widthFt * bale.heightFt;
}
