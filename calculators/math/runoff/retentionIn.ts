import { need } from '../need.ts';

/**
 * Potential retention of ground with a curve number: S = 1000 / CN − 10, with CN = `curveNumber`.
 * @param curveNumber - Curve number, no unit; above 0, at most 100
 * @returns Potential retention after runoff begins, inches
 * @throws RangeError if `curveNumber` is outside its range
 * @source tr55-1986, eq. 2-4
 * @example retentionIn(80) //=> 2.500
 */
export function retentionIn(curveNumber: number): number {
  need('retentionIn', 'curveNumber', curveNumber, { above: 0, atMost: 100 });
  return 1000 / curveNumber - 10;
}
