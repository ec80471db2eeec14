import { need } from '../need.ts';

/** The classes of the index, driest first. */
export type PrecipitationIndexClass =
  | 'extremely-dry'
  | 'severely-dry'
  | 'moderately-dry'
  | 'near-normal'
  | 'moderately-wet'
  | 'very-wet'
  | 'extremely-wet';

/**
 * Class of a standardized precipitation index, with z = `index`: extremely dry at −2 and below, severely dry to −1.5, moderately dry to −1, near
 * normal between −1 and 1, and so up the wet side.
 * @param index - Standardized precipitation index, no unit; any finite number
 * @returns Class of the index
 * @throws RangeError if `index` is not finite
 * @source wmo-1090-2012, table of classes
 * @example precipitationIndexClass(-1.5) //=> 'severely-dry'
 */
export function precipitationIndexClass(index: number): PrecipitationIndexClass {
  need('precipitationIndexClass', 'index', index);
  if (index <= -2) return 'extremely-dry';
  if (index <= -1.5) return 'severely-dry';
  if (index <= -1) return 'moderately-dry';
  if (index < 1) return 'near-normal';
  if (index < 1.5) return 'moderately-wet';
  return index < 2 ? 'very-wet' : 'extremely-wet';
}
