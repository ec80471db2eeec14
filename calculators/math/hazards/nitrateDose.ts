import { need } from '../need.ts';
import { gallonsPerCubicFoot, litersPerCubicFoot, poundsPerKilogram } from '../water/waterVolume.ts';

const litersPerGallon = litersPerCubicFoot / gallonsPerCubicFoot;

/**
 * Nitrate nitrogen that an animal takes in a day with feed and water together: from feed F c / 2,204.6, from water 3.785 G w / 1,000, with F = `feedLb`,
 * c = `feedNitrogenPpm`, G = `waterGal`, w = `waterNitrogenMgPerL`; and the sum for each 100 lb of `weightLb`.
 * @param options.feedLb - Dry matter eaten of this feed, lb a day; above 0
 * @param options.feedNitrogenPpm - Nitrate nitrogen in it, ppm of dry matter; 0 or more
 * @param options.waterGal - Water drunk, US gallons a day; 0 or more
 * @param options.waterNitrogenMgPerL - Nitrate nitrogen in it, mg/L; 0 or more
 * @param options.weightLb - Live weight, lb; above 0
 * @returns Nitrate nitrogen from feed, from water and together, grams a day; together, grams for 100 lb of live weight; and together as if it were all in that feed, ppm of dry matter
 * @throws RangeError if a value is outside its range
 * @source dairyland-nitrate, comment on the first class
 * @example nitrateDose({ feedLb: 20, feedNitrogenPpm: 1000, waterGal: 0, waterNitrogenMgPerL: 0, weightLb: 1000 }).gPerCwt //=> 0.907
 */
export function nitrateDose({
  feedLb,
  feedNitrogenPpm,
  waterGal,
  waterNitrogenMgPerL,
  weightLb,
}: {
  readonly feedLb: number;
  readonly feedNitrogenPpm: number;
  readonly waterGal: number;
  readonly waterNitrogenMgPerL: number;
  readonly weightLb: number;
}): { readonly feedG: number; readonly waterG: number; readonly totalG: number; readonly gPerCwt: number; readonly asFeedPpm: number } {
  need('nitrateDose', 'feedLb', feedLb, { above: 0 });
  need('nitrateDose', 'feedNitrogenPpm', feedNitrogenPpm, { atLeast: 0 });
  need('nitrateDose', 'waterGal', waterGal, { atLeast: 0 });
  need('nitrateDose', 'waterNitrogenMgPerL', waterNitrogenMgPerL, { atLeast: 0 });
  need('nitrateDose', 'weightLb', weightLb, { above: 0 });
  const feedKg = feedLb / poundsPerKilogram;
  const feedG = (feedKg * feedNitrogenPpm) / 1000;
  const waterG = (waterGal * litersPerGallon * waterNitrogenMgPerL) / 1000;
  const totalG = feedG + waterG;
  return { feedG, waterG, totalG, gPerCwt: (100 * totalG) / weightLb, asFeedPpm: (1000 * totalG) / feedKg };
}
