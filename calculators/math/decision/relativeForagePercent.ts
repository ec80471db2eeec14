import { need } from '../need.ts';

/**
 * Forage relative to normal from rain relative to normal, in proportion and no more than normal: y = min(100, x), with x = `relativeRainPercent`.
 * Rain above normal is not counted: the response levels off there.
 * @param relativeRainPercent - Rain of the months that make the forage, percent of normal; 0 or more
 * @returns Forage, percent of normal; at most 100
 * @throws RangeError if the rain is negative
 * @source wiles-2011, abstract: in a line up to the average, level above it
 * @example relativeForagePercent(75) //=> 75
 */
export function relativeForagePercent(relativeRainPercent: number): number {
  need('relativeForagePercent', 'relativeRainPercent', relativeRainPercent, { atLeast: 0 });
  return Math.min(100, relativeRainPercent);
}

/**
 * The same by the line of the Great Basin: y = 1.11 x − 10.6, held between 0 and 100, with x = `relativeRainPercent`, September to June rain over its median.
 * @param relativeRainPercent - Rain from September to June, percent of the median; 0 or more
 * @returns Forage, percent of normal; 0 to 100
 * @throws RangeError if the rain is negative
 * @source sneva-hyder-1962, regression of herbage on crop-year rain
 * @example relativeForageGreatBasinPercent(75) //=> 72.65
 */
export function relativeForageGreatBasinPercent(relativeRainPercent: number): number {
  need('relativeForageGreatBasinPercent', 'relativeRainPercent', relativeRainPercent, { atLeast: 0 });
  return Math.min(100, Math.max(0, 1.11 * relativeRainPercent - 10.6));
}
