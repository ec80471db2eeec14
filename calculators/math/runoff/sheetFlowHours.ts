import { need } from '../need.ts';

/**
 * Time that a thin sheet of water takes over the ground: T = 0.007 (n ℓ)^0.8 / (P2^0.5 s^0.4), with n = `roughness`, ℓ = `lengthFt`,
 * P2 = `twoYearRainIn`, s = `slope`. The 1986 text allows 300 ft; later guidance stops at 100 ft.
 * @param options.roughness - Manning's n for sheet flow, no unit; above 0
 * @param options.lengthFt - Length of the sheet, feet; above 0, at most 300
 * @param options.twoYearRainIn - Rain of 24 hours that comes once in two years, inches; above 0
 * @param options.slope - Slope, feet per foot; above 0
 * @returns Travel time, hours
 * @throws RangeError if a parameter is outside its range
 * @source tr55-1986, eq. 3-3
 * @example sheetFlowHours({ roughness: 0.24, lengthFt: 100, twoYearRainIn: 3.6, slope: 0.01 }) //=> 0.296
 */
export function sheetFlowHours({
  roughness,
  lengthFt,
  twoYearRainIn,
  slope,
}: {
  roughness: number;
  lengthFt: number;
  twoYearRainIn: number;
  slope: number;
}): number {
  need('sheetFlowHours', 'roughness', roughness, { above: 0 });
  need('sheetFlowHours', 'lengthFt', lengthFt, { above: 0, atMost: 300 });
  need('sheetFlowHours', 'twoYearRainIn', twoYearRainIn, { above: 0 });
  need('sheetFlowHours', 'slope', slope, { above: 0 });
  return (0.007 * (roughness * lengthFt) ** 0.8) / (Math.sqrt(twoYearRainIn) * slope ** 0.4);
}
