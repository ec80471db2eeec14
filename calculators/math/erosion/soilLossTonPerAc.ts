import { need } from '../need.ts';

/**
 * Soil that rain and its runoff take off a slope in a middling year, by sheet and rill erosion alone: A = R K LS C P. All factors in US units. What lands
 * lower on the same slope is counted as lost, gullies and wind are not. Made on ploughed plots: on range it runs high, and small losses are its weakest.
 * @param options.rainErosivity - R, hundred foot-tons inch per acre hour year; 0 or more
 * @param options.soilErodibility - K, ton acre hour per hundred acre foot-ton inch; 0 to 1
 * @param options.slopeFactor - LS, no unit; above 0
 * @param options.coverFactor - C, share of clean-tilled fallow; 0 to 1
 * @param options.practiceFactor - P, share of farming up and down the slope; above 0, at most 1
 * @returns Soil loss, tons an acre a year
 * @throws RangeError if a factor is outside its range
 * @source wischmeier-smith-1978, eq. 1
 * @example soilLossTonPerAc({ rainErosivity: 220, soilErodibility: 0.1, slopeFactor: 0.73, coverFactor: 0.29, practiceFactor: 1 }) //=> 4.6574
 */
export function soilLossTonPerAc({
  rainErosivity,
  soilErodibility,
  slopeFactor,
  coverFactor,
  practiceFactor,
}: {
  readonly rainErosivity: number;
  readonly soilErodibility: number;
  readonly slopeFactor: number;
  readonly coverFactor: number;
  readonly practiceFactor: number;
}): number {
  need('soilLossTonPerAc', 'rainErosivity', rainErosivity, { atLeast: 0 });
  need('soilLossTonPerAc', 'soilErodibility', soilErodibility, { atLeast: 0, atMost: 1 });
  need('soilLossTonPerAc', 'slopeFactor', slopeFactor, { above: 0 });
  need('soilLossTonPerAc', 'coverFactor', coverFactor, { atLeast: 0, atMost: 1 });
  need('soilLossTonPerAc', 'practiceFactor', practiceFactor, { above: 0, atMost: 1 });
  return rainErosivity * soilErodibility * slopeFactor * coverFactor * practiceFactor;
}

/**
 * What a computed soil loss is good for: half of it to twice it.
 * @param lossTonPerAc - Soil loss as computed, tons an acre a year; 0 or more
 * @returns Low and high end, tons an acre a year
 * @throws RangeError if `lossTonPerAc` is negative
 * @source our own, after comparisons with measured plots in which single years and small losses strayed further
 * @example soilLossBand(4) //=> { lowTonPerAc: 2, highTonPerAc: 8 }
 */
export function soilLossBand(lossTonPerAc: number): { readonly lowTonPerAc: number; readonly highTonPerAc: number } {
  need('soilLossBand', 'lossTonPerAc', lossTonPerAc, { atLeast: 0 });
  return { lowTonPerAc: lossTonPerAc / 2, highTonPerAc: lossTonPerAc * 2 };
}
