import { need } from '../need.ts';
import { cubicInchesPerGallon } from '../water/waterVolume.ts';

/** Milliliters in a cubic inch: 2.54³, by definition. */
export const millilitersPerCubicInch = 2.54 ** 3;

/** One amount of water in the units of the kitchen. */
export interface KitchenWater {
  readonly gallons: number;
  readonly quarts: number;
  readonly pints: number;
  readonly milliliters: number;
}

/**
 * Water to pour over a tray for a depth of rain: V = l w d / 231 gallons, with l = `lengthIn`, w = `widthIn`, d = `rainIn`.
 * @param lengthIn - Inside length of the tray, inches; above 0
 * @param widthIn - Inside width of the tray, inches; above 0
 * @param rainIn - Depth of rain, inches; 0 or more
 * @returns Water, US gallons, quarts, pints, and milliliters
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example trayWater(24, 12, 1).quarts //=> 4.99
 */
export function trayWater(lengthIn: number, widthIn: number, rainIn: number): KitchenWater {
  need('trayWater', 'lengthIn', lengthIn, { above: 0 });
  need('trayWater', 'widthIn', widthIn, { above: 0 });
  need('trayWater', 'rainIn', rainIn, { atLeast: 0 });
  const cubicIn = lengthIn * widthIn * rainIn;
  const gallons = cubicIn / cubicInchesPerGallon;
  return { gallons, quarts: 4 * gallons, pints: 8 * gallons, milliliters: cubicIn * millilitersPerCubicInch };
}

/**
 * Depth that an amount of water makes over a tray: d = V / (16.387 l w), with V = `milliliters`, l = `lengthIn`, w = `widthIn`.
 * @param milliliters - Water, milliliters; 0 or more
 * @param lengthIn - Inside length of the tray, inches; above 0
 * @param widthIn - Inside width of the tray, inches; above 0
 * @returns Depth, inches
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example trayDepthIn(4719.5, 24, 12) //=> 1.0000
 */
export function trayDepthIn(milliliters: number, lengthIn: number, widthIn: number): number {
  need('trayDepthIn', 'milliliters', milliliters, { atLeast: 0 });
  need('trayDepthIn', 'lengthIn', lengthIn, { above: 0 });
  need('trayDepthIn', 'widthIn', widthIn, { above: 0 });
  return milliliters / millilitersPerCubicInch / (lengthIn * widthIn);
}
