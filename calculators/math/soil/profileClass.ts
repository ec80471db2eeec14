import { profileClasses } from '../../tables/availableWater.ts';
import { need } from '../need.ts';

export type ProfileClass = (typeof profileClasses.classes)[number]['name'];

/**
 * The soil survey's word for the water that the top 60 in hold for plants. A value on a bound goes to the class below it.
 * @param availableIn - Available water of the top 60 in when full, inches; 0 or more
 * @returns Class in words
 * @throws RangeError if `availableIn` is negative
 * @source nrcs-awc-1998, classes for a 60-in profile
 * @example profileClass(7.5) //=> 'moderate'
 */
export function profileClass(availableIn: number): ProfileClass {
  need('profileClass', 'availableIn', availableIn, { atLeast: 0 });
  const found = profileClasses.classes.find(({ toIn }) => availableIn <= toIn);
  if (!found) throw new RangeError(`profileClass needs a table without an upper end, found no class for ${availableIn}`);
  return found.name;
}
