import { need } from '../need.ts';
import { retentionIn } from './retentionIn.ts';

/** Lag as a share of the time of concentration. */
const lagShare = 0.6;

/**
 * Lag from the middle of the rain excess to the peak: L = ℓ^0.8 (S + 1)^0.7 / (1900 Y^0.5), with ℓ = `flowLengthFt`, S of `curveNumber`,
 * Y = `slopePercent`. Made from watersheds of 1.3 acres to 9.2 square miles; the curve number should be between 50 and 95.
 * @param options.flowLengthFt - Longest way that water takes to the outlet, feet; above 0
 * @param options.curveNumber - Curve number for average ground, no unit; above 0, at most 100
 * @param options.slopePercent - Mean slope of the land, percent; above 0
 * @returns Lag, hours
 * @throws RangeError if a parameter is outside its range
 * @source nrcs-neh630-15-2010, eq. 15-4a
 * @example lagHours({ flowLengthFt: 5000, curveNumber: 74, slopePercent: 4 }) //=> 0.688
 */
export function lagHours({ flowLengthFt, curveNumber, slopePercent }: { flowLengthFt: number; curveNumber: number; slopePercent: number }): number {
  need('lagHours', 'flowLengthFt', flowLengthFt, { above: 0 });
  need('lagHours', 'slopePercent', slopePercent, { above: 0 });
  return (flowLengthFt ** 0.8 * (retentionIn(curveNumber) + 1) ** 0.7) / (1900 * Math.sqrt(slopePercent));
}

/**
 * Time of concentration that belongs to a lag: Tc = L / 0.6, with L = `lag`.
 * @param lag - Lag, hours; 0 or more
 * @returns Time that water takes from the farthest point to the outlet, hours
 * @throws RangeError if `lag` is negative
 * @source nrcs-neh630-15-2010, eq. 15-3
 * @example concentrationFromLagHours(0.688) //=> 1.147
 */
export function concentrationFromLagHours(lag: number): number {
  need('concentrationFromLagHours', 'lag', lag, { atLeast: 0 });
  return lag / lagShare;
}
