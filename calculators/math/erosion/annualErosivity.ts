import { need } from '../need.ts';

/**
 * Rain factor R from a year's rain alone: R = 0.0483 P^1.610 below 850 mm, 587.8 − 1.219 P + 0.004105 P² from there, with P = `rainMm`. A last resort where
 * there is no local R: one fit for the whole continental United States, poor where rain falls in winter or in violent storms.
 * @param rainMm - Mean rain of a year, mm; 0 to 3,000
 * @returns R, MJ mm/(ha h yr)
 * @throws RangeError if `rainMm` is outside its range
 * @source renard-freimund-1994, eq. for annual precipitation
 * @example annualErosivity(600) //=> 1434.7
 */
export function annualErosivity(rainMm: number): number {
  need('annualErosivity', 'rainMm', rainMm, { atLeast: 0, atMost: 3000 });
  return rainMm < 850 ? 0.0483 * rainMm ** 1.61 : 587.8 - 1.219 * rainMm + 0.004_105 * rainMm ** 2;
}

/**
 * Rain factor R from monthly rain by the modified Fournier index: F = Σ p_i²/P, R = 0.7397 F^1.847 below 55 mm, 95.77 − 6.081 F + 0.4770 F² from there,
 * with p_i each of `monthsMm`, P their sum. Copies that print 0.07397 fall by a factor of ten at F = 55. The same limits as for a year's rain alone.
 * @param monthsMm - Mean rain of each month, mm; twelve of them, 0 or more, not all 0
 * @returns Index F, mm; R, MJ mm/(ha h yr)
 * @throws RangeError if there are not twelve months, one is negative or the year is dry
 * @source renard-freimund-1994, eq. for the modified Fournier index (coefficients from memory)
 * @example monthlyErosivity([50, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50]).fournierMm //=> 50
 */
export function monthlyErosivity(monthsMm: readonly number[]): { readonly fournierMm: number; readonly erosivity: number } {
  need('monthlyErosivity', 'months', monthsMm.length, { atLeast: 12, atMost: 12 });
  for (const rainMm of monthsMm) need('monthlyErosivity', 'monthsMm', rainMm, { atLeast: 0 });
  const yearMm = monthsMm.reduce((sum, rainMm) => sum + rainMm, 0);
  need('monthlyErosivity', 'rain of the year', yearMm, { above: 0, atMost: 3000 });
  const fournierMm = monthsMm.reduce((sum, rainMm) => sum + rainMm ** 2, 0) / yearMm;
  return { fournierMm, erosivity: fournierMm < 55 ? 0.7397 * fournierMm ** 1.847 : 95.77 - 6.081 * fournierMm + 0.477 * fournierMm ** 2 };
}
