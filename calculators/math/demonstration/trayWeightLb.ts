import { need } from '../need.ts';

/** Wet soil with its sod, pounds a cubic foot: a round figure on the heavy side, since somebody lifts it. */
const wetSoilLbPerFt3 = 110;

/**
 * Weight of a tray of wet soil, without the tray: W = 110 l w z / 1728, with l = `lengthIn`, w = `widthIn`, z = `soilIn`.
 * @param lengthIn - Inside length of the tray, inches; above 0
 * @param widthIn - Inside width of the tray, inches; above 0
 * @param soilIn - Depth of soil in it, inches; 0 or more
 * @returns Weight, lb
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example trayWeightLb(24, 12, 3) //=> 55
 */
export function trayWeightLb(lengthIn: number, widthIn: number, soilIn: number): number {
  need('trayWeightLb', 'lengthIn', lengthIn, { above: 0 });
  need('trayWeightLb', 'widthIn', widthIn, { above: 0 });
  need('trayWeightLb', 'soilIn', soilIn, { atLeast: 0 });
  return (wetSoilLbPerFt3 * lengthIn * widthIn * soilIn) / 1728;
}
