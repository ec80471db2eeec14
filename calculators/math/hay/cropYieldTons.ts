import { need } from '../need.ts';

/**
 * Likely yield of a sown feed crop from the water it can use: the lesser of w / q and y, with w = `waterIn`, q = `inchesPerTon`, y =
 * `mostTonsPerAc`.
 * @param options.waterIn - Water for the crop, inches: what the root zone holds plus likely rain; at least 0
 * @param options.inchesPerTon - Water for a ton of dry matter, inches; above 0
 * @param options.mostTonsPerAc - Yield that the crop does not pass with all the water it wants, tons of dry matter per acre; above 0
 * @returns Yield, tons of dry matter per acre
 * @throws RangeError if a value is outside its range
 * @source volesky-g2012, water-use efficiency of forages
 * @example cropYieldTons({ waterIn: 9, inchesPerTon: 3, mostTonsPerAc: 5.3 }) //=> 3
 */
export function cropYieldTons({
  waterIn,
  inchesPerTon,
  mostTonsPerAc,
}: {
  readonly waterIn: number;
  readonly inchesPerTon: number;
  readonly mostTonsPerAc: number;
}): number {
  need('cropYieldTons', 'waterIn', waterIn, { atLeast: 0 });
  need('cropYieldTons', 'inchesPerTon', inchesPerTon, { above: 0 });
  need('cropYieldTons', 'mostTonsPerAc', mostTonsPerAc, { above: 0 });
  return Math.min(waterIn / inchesPerTon, mostTonsPerAc);
}
