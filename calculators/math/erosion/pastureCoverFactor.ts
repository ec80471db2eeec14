import { type CanopyHeight, type CoverKind, pastureCover } from '../../tables/pastureCover.ts';
import { need } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';

/**
 * Cover factor C of pasture, range or idle land that was not tilled for three years or more, by the published table, straight between its columns of ground
 * cover and its rows of canopy, as a published permit reads it, or on the logarithms of C between the columns, since C falls about so. Above 95 % ground cover and above 75 % canopy the last value holds.
 * @param options.coverPercent - Ground covered by plants, litter or stones, percent; 0 to 100
 * @param options.coverKind - `grass`: grass, duff or litter; `weeds`: mostly broadleaf plants or undecayed residue
 * @param options.canopyPercent - Ground under raised leaves, seen from above, percent; 0 to 100; 0 for plain pasture
 * @param options.canopyHeight - From where drops fall: `short-brush` about 20 in, `tall-brush` 6.5 ft, `trees` 13 ft; of no effect without canopy
 * @param options.between - Between columns of ground cover: `straight` lines, or straight lines of the `logarithms` of C; `straight` if left out
 * @returns C, share of the loss from clean-tilled fallow
 * @throws RangeError if a share is outside its range
 * @source scs-agronomy-note-50-1982, table 1
 * @example pastureCoverFactor({ coverPercent: 50, coverKind: 'grass', canopyPercent: 0, canopyHeight: 'short-brush' }) //=> 0.071
 */
export function pastureCoverFactor({
  coverPercent,
  coverKind,
  canopyPercent,
  canopyHeight,
  between = 'straight',
}: {
  readonly coverPercent: number;
  readonly coverKind: CoverKind;
  readonly canopyPercent: number;
  readonly canopyHeight: CanopyHeight;
  readonly between?: 'straight' | 'logarithms';
}): number {
  need('pastureCoverFactor', 'coverPercent', coverPercent, { atLeast: 0, atMost: 100 });
  need('pastureCoverFactor', 'canopyPercent', canopyPercent, { atLeast: 0, atMost: 100 });
  const byCanopy = pastureCover.factors[canopyHeight][coverKind].map((row) =>
    between === 'straight'
      ? interpolated(coverPercent, pastureCover.coverPercent, row)
      : Math.exp(interpolated(coverPercent, pastureCover.coverPercent, row.map(Math.log))),
  );
  return interpolated(canopyPercent, pastureCover.canopyPercent, byCanopy);
}
