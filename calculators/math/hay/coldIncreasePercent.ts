import { dryCoatPercentPerF, lowerCriticalTemperatureF, type WetCoatRule, wetCoatRules } from '../../tables/coldStress.ts';
import { need } from '../need.ts';

export type Coat = keyof typeof lowerCriticalTemperatureF;

/**
 * More energy that cattle need in the cold: 1 percent for each degree Fahrenheit below the coat's critical temperature, nothing above it.
 * For a wet coat sources print 1 or 2 percent a degree, so the rule must be named.
 * @param options.temperatureF - Effective temperature, wind counted, degrees Fahrenheit; from -80 to 140
 * @param options.coat - Coat: wet or muddy (59 F), dry-fall (45), dry-winter (32), dry-heavy-winter (18)
 * @param options.wetCoatRule - Percent a degree for a wet coat: `one` or `two`; dry coats always take 1
 * @returns Increase of the energy need, percent
 * @throws RangeError if `temperatureF` is outside its range
 * @source rusche-2020, general rule; oklahoma-cold-feeding, wet hair coat
 * @example coldIncreasePercent({ temperatureF: 4, coat: 'wet', wetCoatRule: 'two' }) //=> 110
 */
export function coldIncreasePercent({
  temperatureF,
  coat,
  wetCoatRule,
}: {
  readonly temperatureF: number;
  readonly coat: Coat;
  readonly wetCoatRule: WetCoatRule;
}): number {
  need('coldIncreasePercent', 'temperatureF', temperatureF, { atLeast: -80, atMost: 140 });
  const printed = wetCoatRules.find(({ rule }) => rule === wetCoatRule);
  if (!printed) throw new RangeError(`coldIncreasePercent needs a rule of the table, got ${wetCoatRule}`);
  const percentPerF = coat === 'wet' ? printed.percentPerF : dryCoatPercentPerF;
  return percentPerF * Math.max(0, lowerCriticalTemperatureF[coat] - temperatureF);
}
