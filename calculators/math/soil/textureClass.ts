import type { Texture } from '../../tables/soilGroups.ts';
import { need } from '../need.ts';

/** Sums such as 100 - 45.1 - 34.9 come out a hair off a class limit; a millionth of a percent settles them. */
const settled = (percent: number): number => Math.round(percent * 1e6) / 1e6;

/**
 * Texture class of the fine earth, by the twelve classes of the textural triangle. Every mixture falls in exactly one class; which side of a limit is closed
 * follows the national soil survey database. Silt is what `sandPercent` and `clayPercent` leave.
 * @param sandPercent - Sand, 0.05 to 2 mm, percent of the fine earth by weight; 0 to 100
 * @param clayPercent - Clay, finer than 0.002 mm, percent of the fine earth by weight; 0 to 100 less the sand
 * @returns One of the twelve texture classes
 * @throws RangeError if a share is outside 0 to 100 or the two together pass 100
 * @source usda-soil-survey-manual, chapter 3; ncss-aqp, closed sides
 * @example textureClass(40, 20) //=> 'loam'
 * @example textureClass(45, 40) //=> 'clay'
 */
export function textureClass(sandPercent: number, clayPercent: number): Texture {
  need('textureClass', 'sandPercent', sandPercent, { atLeast: 0, atMost: 100 });
  need('textureClass', 'clayPercent', clayPercent, { atLeast: 0, atMost: settled(100 - sandPercent) });
  const sand = sandPercent;
  const clay = clayPercent;
  const silt = settled(100 - sand - clay);
  if (settled(silt + 1.5 * clay) < 15) return 'sand';
  if (settled(silt + 2 * clay) < 30) return 'loamy-sand';
  if (clay >= 40) return sand > 45 ? 'sandy-clay' : silt >= 40 ? 'silty-clay' : 'clay';
  if (clay >= 35 && sand > 45) return 'sandy-clay';
  if (clay >= 27) return sand > 45 ? 'sandy-clay-loam' : sand > 20 ? 'clay-loam' : 'silty-clay-loam';
  if (silt >= 50) return silt >= 80 && clay < 12 ? 'silt' : 'silt-loam';
  if (clay >= 20 && silt < 28 && sand > 45) return 'sandy-clay-loam';
  if (clay >= 7 && silt >= 28 && sand <= 52) return 'loam';
  return 'sandy-loam';
}
