import { need } from '../need.ts';

/** Curve number of roofs, pavement and other hard surfaces. */
const hardNumber = 98;
/** Hard share up to which water that crosses open ground first is counted as partly taken up there, percent. */
const unconnectedLimitPercent = 30;

/**
 * Curve number of ground that is partly roofed, paved or packed hard: CN = CNp + (H / 100) (98 − CNp) (1 − R / 2), with CNp = `groundCurveNumber`,
 * H = `hardPercent`, R = `unconnectedShare`. Above 30 % hard surface the published method gives nothing for unconnected water, and R counts as 0.
 * @param options.groundCurveNumber - Curve number of the open ground, no unit; above 0, at most 98
 * @param options.hardPercent - Share of the area that is hard, percent; 0 to 100
 * @param options.unconnectedShare - Share of the hard surface that drains onto open ground first, no unit; 0 to 1
 * @returns Curve number of the whole, no unit
 * @throws RangeError if a parameter is outside its range
 * @source tr55-1986, figures 2-3 and 2-4 (as equations in appendix F, from memory)
 * @example hardSurfaceCurveNumber({ groundCurveNumber: 74, hardPercent: 25, unconnectedShare: 0 }) //=> 80.0
 */
export function hardSurfaceCurveNumber({
  groundCurveNumber,
  hardPercent,
  unconnectedShare,
}: {
  groundCurveNumber: number;
  hardPercent: number;
  unconnectedShare: number;
}): number {
  need('hardSurfaceCurveNumber', 'groundCurveNumber', groundCurveNumber, { above: 0, atMost: hardNumber });
  need('hardSurfaceCurveNumber', 'hardPercent', hardPercent, { atLeast: 0, atMost: 100 });
  need('hardSurfaceCurveNumber', 'unconnectedShare', unconnectedShare, { atLeast: 0, atMost: 1 });
  const relief = hardPercent <= unconnectedLimitPercent ? 1 - unconnectedShare / 2 : 1;
  return groundCurveNumber + (hardPercent / 100) * (hardNumber - groundCurveNumber) * relief;
}
