import { soilLossTolerance } from '../../tables/soilLossTolerance.ts';
import { need } from '../need.ts';

/**
 * Soil loss tolerance T where nobody has the soil survey's own: 1 to 5 tons an acre a year by how deep roots can go. It asks what the soil bears, whatever
 * grows there; it says nothing of the water below the field. A depth on a limit goes to the shallower class.
 * @param rootingDepthIn - Depth to rock, hardpan or what else stops roots, inches; above 0, or Infinity if there is none within reach
 * @param isSubsoilRenewable - Whether dressing and manure can make the subsoil into fertile ground
 * @returns T, tons an acre a year
 * @throws RangeError if `rootingDepthIn` is not above 0
 * @source mccormack-young-1981, guide for assigning T (from memory); nrcs-nssh-430-vi, classes 1 to 5
 * @example toleranceTonPerAc(30, true) //=> 3
 */
export function toleranceTonPerAc(rootingDepthIn: number, isSubsoilRenewable: boolean): number {
  if (rootingDepthIn !== Infinity) need('toleranceTonPerAc', 'rootingDepthIn', rootingDepthIn, { above: 0 });
  const row = soilLossTolerance.rows.find(({ toRootingDepthIn }) => rootingDepthIn <= toRootingDepthIn) ?? soilLossTolerance.rows[4];
  return isSubsoilRenewable ? row.renewable : row.nonRenewable;
}
