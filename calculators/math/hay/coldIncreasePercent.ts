import { lowerCriticalTemperatureF } from '../../tables/coldStress.ts';
import { need } from '../need.ts';

export type Coat = keyof typeof lowerCriticalTemperatureF;

/**
 * More energy that cattle need in the cold: 1 percent for each degree Fahrenheit below the coat's critical temperature, nothing above it.
 * @param options.temperatureF - Effective temperature, wind counted, degrees Fahrenheit; from -80 to 140
 * @param options.coat - Coat: wet or muddy (59 F), dry-fall (45), dry-winter (32), dry-heavy-winter (18)
 * @returns Increase of the energy need, percent
 * @throws RangeError if `temperatureF` is outside its range
 * @source rusche-2020, general rule
 * @example coldIncreasePercent({ temperatureF: 17, coat: 'dry-winter' }) //=> 15
 */
export function coldIncreasePercent({ temperatureF, coat }: { readonly temperatureF: number; readonly coat: Coat }): number {
  need('coldIncreasePercent', 'temperatureF', temperatureF, { atLeast: -80, atMost: 140 });
  return Math.max(0, lowerCriticalTemperatureF[coat] - temperatureF);
}
