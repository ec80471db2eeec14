import { infiltrationClasses } from '../../tables/infiltrationRates.ts';
import { need } from '../need.ts';

export type InfiltrationClass = (typeof infiltrationClasses.classes)[number][0];

/**
 * Class of an infiltration rate. A rate on a limit belongs to the faster class, except that the fastest class begins above its limit.
 * @param rateInPerHr - Rate, inches per hour; 0 or more
 * @returns Class, from `impermeable` to `very-rapid`
 * @throws RangeError if `rateInPerHr` is negative
 * @source usepa-1981-permeability, NRCS permeability classes
 * @example infiltrationClass(1.2) //=> 'moderate'
 */
export function infiltrationClass(rateInPerHr: number): InfiltrationClass {
  need('infiltrationClass', 'rateInPerHr', rateInPerHr, { atLeast: 0 });
  const found = infiltrationClasses.classes.findLast(([name, from]) => (name === 'very-rapid' ? rateInPerHr > from : rateInPerHr >= from));
  if (!found) throw new RangeError(`infiltrationClass needs a table that begins at 0, found no class for ${rateInPerHr}`);
  return found[0];
}
