import { pondFactors, type RainType, unitPeakCoefficients } from '../../tables/peakFlow.ts';
import { need, needThere } from '../need.ts';

type Row = readonly [ratio: number, c0: number, c1: number, c2: number];

const onCurve = ([, c0, c1, c2]: Row, logHours: number): number => 10 ** (c0 + c1 * logHours + c2 * logHours ** 2);

/**
 * Peak per square mile and inch of runoff: log qu = C0 + C1 log Tc + C2 (log Tc)², with Tc = `concentrationHours` and the coefficients of
 * `rainType`; linear between the curves for `abstractionShare`, the outermost curve beyond them.
 * @param options.rainType - 24-hour rain distribution; `i`, `ia`, `ii` or `iii`
 * @param options.abstractionShare - Initial abstraction as a share of the rain, no unit; 0 to 1
 * @param options.concentrationHours - Time of concentration, hours; 0.1 to 10
 * @returns Unit peak discharge, cubic feet per second per square mile and inch
 * @throws RangeError if a parameter is outside its range
 * @source tr55-1986, appendix F, exhibit 4
 * @example unitPeakCsmPerIn({ rainType: 'ii', abstractionShare: 0.1, concentrationHours: 1.53 }) //=> 271.7
 */
export function unitPeakCsmPerIn({
  rainType,
  abstractionShare,
  concentrationHours,
}: {
  rainType: RainType;
  abstractionShare: number;
  concentrationHours: number;
}): number {
  need('unitPeakCsmPerIn', 'abstractionShare', abstractionShare, { atLeast: 0, atMost: 1 });
  need('unitPeakCsmPerIn', 'concentrationHours', concentrationHours, { atLeast: 0.1, atMost: 10 });
  const rows: readonly Row[] = unitPeakCoefficients.types[rainType];
  const first = needThere('unitPeakCsmPerIn', 'first row', rows[0]);
  const last = needThere('unitPeakCsmPerIn', 'last row', rows.at(-1));
  const ratio = Math.min(last[0], Math.max(first[0], abstractionShare));
  const above = rows.find(([each]) => each >= ratio) ?? last;
  const below = rows.findLast(([each]) => each <= ratio) ?? first;
  const logHours = Math.log10(concentrationHours);
  const [lowPeak, highPeak] = [onCurve(below, logHours), onCurve(above, logHours)];
  return above[0] === below[0] ? lowPeak : lowPeak + ((highPeak - lowPeak) * (ratio - below[0])) / (above[0] - below[0]);
}

/**
 * Share of the peak that is left where ponds and swamps are spread over the area, linear between the rows of the table.
 * @param pondPercent - Share of the area that is pond or swamp, percent; 0 to 5
 * @returns Factor, no unit
 * @throws RangeError if `pondPercent` is outside 0 to 5
 * @source tr55-1986, table 4-2
 * @example pondFactor(2) //=> 0.81
 */
export function pondFactor(pondPercent: number): number {
  need('pondFactor', 'pondPercent', pondPercent, { atLeast: 0, atMost: 5 });
  const rows: readonly (readonly [number, number])[] = pondFactors.rows;
  const [abovePercent, aboveFactor] = needThere(
    'pondFactor',
    `row from ${pondPercent}`,
    rows.find(([percent]) => percent >= pondPercent),
  );
  const [belowPercent, belowFactor] = needThere(
    'pondFactor',
    `row to ${pondPercent}`,
    rows.findLast(([percent]) => percent <= pondPercent),
  );
  return abovePercent === belowPercent
    ? aboveFactor
    : belowFactor + ((aboveFactor - belowFactor) * (pondPercent - belowPercent)) / (abovePercent - belowPercent);
}

/**
 * Peak flow at the outlet: qp = qu A Q Fp, with qu = `unitPeak`, A = `areaAc` / 640 in square miles, Q = `runoffIn`, Fp = `pondShareFactor`.
 * @param options.unitPeak - Unit peak discharge, cubic feet per second per square mile and inch; 0 or more
 * @param options.areaAc - Area that drains to the outlet, acres; 0 or more
 * @param options.runoffIn - Runoff of the storm, inches; 0 or more
 * @param options.pondShareFactor - Factor for ponds and swamps, no unit; above 0, at most 1
 * @returns Peak flow, cubic feet per second
 * @throws RangeError if a parameter is outside its range
 * @source tr55-1986, eq. 4-1
 * @example peakFlowCfs({ unitPeak: 270, areaAc: 250, runoffIn: 3.28, pondShareFactor: 1 }) //=> 346
 */
export function peakFlowCfs({
  unitPeak,
  areaAc,
  runoffIn,
  pondShareFactor,
}: {
  unitPeak: number;
  areaAc: number;
  runoffIn: number;
  pondShareFactor: number;
}): number {
  need('peakFlowCfs', 'unitPeak', unitPeak, { atLeast: 0 });
  need('peakFlowCfs', 'areaAc', areaAc, { atLeast: 0 });
  need('peakFlowCfs', 'runoffIn', runoffIn, { atLeast: 0 });
  need('peakFlowCfs', 'pondShareFactor', pondShareFactor, { above: 0, atMost: 1 });
  return unitPeak * (areaAc / 640) * runoffIn * pondShareFactor;
}
