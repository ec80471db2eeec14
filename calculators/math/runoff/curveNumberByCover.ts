import { need } from '../need.ts';

/**
 * Curve number that changes smoothly with ground cover, where the tables jump at two cut-points: linear between the middles of the three classes,
 * level outside them, with cover = `groundCoverPercent`. For stepping through days; a single storm takes the class of the table.
 * @param options.groundCoverPercent - Ground covered by plants and litter, percent; 0 to 100
 * @param options.poor - Curve number of the poor class, no unit; above 0, at most 100
 * @param options.fair - Curve number of the fair class, no unit; above 0, at most 100
 * @param options.good - Curve number of the good class, no unit; above 0, at most 100
 * @param options.poorBelowPercent - Cut-point of the cover's own table, percent; above 0, below 100
 * @param options.goodAbovePercent - Cut-point of the cover's own table, percent; above `poorBelowPercent`, below 100
 * @returns Curve number, no unit
 * @throws RangeError if a parameter is outside its range
 * @source our own, so that a day's cover a little to either side of a cut-point does not change the runoff by a cliff
 * @example curveNumberByCover({ groundCoverPercent: 75, poor: 79, fair: 69, good: 61, poorBelowPercent: 50, goodAbovePercent: 75 }) //=> 65.0
 */
export function curveNumberByCover({
  groundCoverPercent,
  poor,
  fair,
  good,
  poorBelowPercent,
  goodAbovePercent,
}: {
  groundCoverPercent: number;
  poor: number;
  fair: number;
  good: number;
  poorBelowPercent: number;
  goodAbovePercent: number;
}): number {
  need('curveNumberByCover', 'groundCoverPercent', groundCoverPercent, { atLeast: 0, atMost: 100 });
  for (const [name, value] of Object.entries({ poor, fair, good })) need('curveNumberByCover', name, value, { above: 0, atMost: 100 });
  need('curveNumberByCover', 'poorBelowPercent', poorBelowPercent, { above: 0, below: 100 });
  need('curveNumberByCover', 'goodAbovePercent', goodAbovePercent, { above: poorBelowPercent, below: 100 });
  const poorMiddle = poorBelowPercent / 2;
  const fairMiddle = (poorBelowPercent + goodAbovePercent) / 2;
  const goodMiddle = (goodAbovePercent + 100) / 2;
  const share = (from: number, to: number) => Math.min(1, Math.max(0, (groundCoverPercent - from) / (to - from)));
  return groundCoverPercent <= fairMiddle
    ? poor + (fair - poor) * share(poorMiddle, fairMiddle)
    : fair + (good - fair) * share(fairMiddle, goodMiddle);
}
