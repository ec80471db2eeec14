import { need } from '../need.ts';

/**
 * Above-ground production of one grassland against another by their mean yearly rain: 0.6 (P − 56), with P = `meanRainMm`. A line BETWEEN sites of
 * the central United States. Never use it for good and bad years of one site: there the response is a third of it or less.
 * @param meanRainMm - Mean yearly precipitation of the site, millimeters; 200 to 1200
 * @returns Mean yearly above-ground production, grams of dry matter per square meter
 * @throws RangeError if `meanRainMm` is outside its range
 * @source sala-1988, regional equation (from memory)
 * @example forageBetweenSitesGPerM2(400) //=> 206.4
 */
export function forageBetweenSitesGPerM2(meanRainMm: number): number {
  need('forageBetweenSitesGPerM2', 'meanRainMm', meanRainMm, { atLeast: 200, atMost: 1200 });
  return 0.6 * (meanRainMm - 56);
}

/**
 * Forage of one shortgrass site from year to year: 56 + 0.13 P, with P = `yearRainMm`. The line of 52 years in north-central Colorado; it explains
 * about two fifths of the ups and downs.
 * @param yearRainMm - Precipitation of the year, millimeters; 100 to 600
 * @returns Forage of the year, grams of dry matter per square meter
 * @throws RangeError if `yearRainMm` is outside its range
 * @source lauenroth-sala-1992, annual precipitation (coefficients from memory)
 * @example forageOfYearGPerM2(321) //=> 97.7
 */
export function forageOfYearGPerM2(yearRainMm: number): number {
  need('forageOfYearGPerM2', 'yearRainMm', yearRainMm, { atLeast: 100, atMost: 600 });
  return 56 + 0.13 * yearRainMm;
}
