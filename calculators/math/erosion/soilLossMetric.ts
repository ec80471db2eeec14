import { need } from '../need.ts';

/** From definitions: 2,000 lb of 0.45359237 kg on 4,046.8564224 m2, in t/ha. */
const tonnesPerHaFromTonsPerAc = 0.907_184_74 / 0.404_685_642_24;
/** From definitions: 100 feet of 0.3048 m times 2,000 pounds-force of 4.4482216152605 N, times 25.4 mm, on an acre, in MJ mm/ha. */
const metricFromUsErosivity = (100 * 0.3048 * 2000 * 4.448_221_615_260_5 * 1e-6 * 25.4) / 0.404_685_642_24;

/**
 * Soil loss in metric units: 1 ton/acre = 2.2417 t/ha.
 * @param tonPerAc - Soil loss, tons an acre; 0 or more
 * @returns Soil loss, tonnes a hectare
 * @throws RangeError if `tonPerAc` is negative
 * @source foster-1981, table 2
 * @example soilLossMetric(5) //=> 11.21
 */
export function soilLossMetric(tonPerAc: number): number {
  need('soilLossMetric', 'tonPerAc', tonPerAc, { atLeast: 0 });
  return tonPerAc * tonnesPerHaFromTonsPerAc;
}

/**
 * Rain factor R in US units: 1 hundred ft tonf in/(acre h yr) = 17.02 MJ mm/(ha h yr).
 * @param erosivity - R, MJ mm/(ha h yr); 0 or more
 * @returns R, hundred foot-tons inch per acre hour year
 * @throws RangeError if `erosivity` is negative
 * @source foster-1981, table 2
 * @example erosivityUs(1434.7) //=> 84.3
 */
export function erosivityUs(erosivity: number): number {
  need('erosivityUs', 'erosivity', erosivity, { atLeast: 0 });
  return erosivity / metricFromUsErosivity;
}

/**
 * Rain factor R in metric units: 1 hundred ft tonf in/(acre h yr) = 17.02 MJ mm/(ha h yr).
 * @param erosivity - R, hundred foot-tons inch per acre hour year; 0 or more
 * @returns R, MJ mm/(ha h yr)
 * @throws RangeError if `erosivity` is negative
 * @source foster-1981, table 2
 * @example erosivityMetric(100) //=> 1702
 */
export function erosivityMetric(erosivity: number): number {
  need('erosivityMetric', 'erosivity', erosivity, { atLeast: 0 });
  return erosivity * metricFromUsErosivity;
}

/**
 * Soil factor K in metric units: K times 0.1317, which is 2.2417 / 17.02. Not the K times 2.24 that some tables print as tonnes a hectare.
 * @param erodibility - K, ton acre hour per hundred acre foot-ton inch; 0 or more
 * @returns K, t ha h/(ha MJ mm)
 * @throws RangeError if `erodibility` is negative
 * @source foster-1981, table 2
 * @example erodibilityMetric(0.32) //=> 0.0421
 */
export function erodibilityMetric(erodibility: number): number {
  need('erodibilityMetric', 'erodibility', erodibility, { atLeast: 0 });
  return (erodibility * tonnesPerHaFromTonsPerAc) / metricFromUsErosivity;
}
