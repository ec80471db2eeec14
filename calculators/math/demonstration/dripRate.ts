import { wholeUnits } from '../hay/wholeUnits.ts';
import { need } from '../need.ts';
import { millilitersPerCubicInch } from './trayWater.ts';

/** A tray that is rained on, by its inside measures. */
export interface Tray {
  readonly lengthIn: number;
  readonly widthIn: number;
}

function needTray(name: string, { lengthIn, widthIn }: Tray): void {
  need(name, 'lengthIn', lengthIn, { above: 0 });
  need(name, 'widthIn', widthIn, { above: 0 });
}

/**
 * Water that all drip holes together must give for a rain rate: q = 16.387 l w i / 60, with l = `lengthIn`, w = `widthIn`, i = `rateInPerHr`.
 * @param rateInPerHr - Rain rate wanted, inches an hour; 0 or more
 * @param tray - Inside length and width of the tray, inches; above 0
 * @returns Water, milliliters a minute
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example dripRate(2, { lengthIn: 24, widthIn: 12 }) //=> 157.3
 */
export function dripRate(rateInPerHr: number, tray: Tray): number {
  need('dripRate', 'rateInPerHr', rateInPerHr, { atLeast: 0 });
  needTray('dripRate', tray);
  return (millilitersPerCubicInch * tray.lengthIn * tray.widthIn * rateInPerHr) / 60;
}

/**
 * Drip holes for a rain rate, whole: n = q / h rounded up, with q from `dripRate`, h = `holeMlPerMin` timed at one hole with the head full.
 * @param rateInPerHr - Rain rate wanted, inches an hour; 0 or more
 * @param tray - Inside length and width of the tray, inches; above 0
 * @param holeMlPerMin - Water that one hole gives, milliliters a minute; above 0
 * @returns Holes, whole number
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example dripHoles(2, { lengthIn: 24, widthIn: 12 }, 5) //=> 32
 */
export function dripHoles(rateInPerHr: number, tray: Tray, holeMlPerMin: number): number {
  need('dripHoles', 'holeMlPerMin', holeMlPerMin, { above: 0 });
  return wholeUnits(dripRate(rateInPerHr, tray), holeMlPerMin);
}

/**
 * Rain rate from a jar filled at the drip head: i = 3,600 V / (16.387 l w s), with V = `jarMl`, s = `seconds`, l = `lengthIn`, w = `widthIn`.
 * @param jarMl - Water in the jar, from all holes at once, milliliters; above 0. A US pint is 473
 * @param seconds - Time to fill it, seconds; above 0
 * @param tray - Inside length and width of the tray, inches; above 0
 * @returns Rain rate, inches an hour
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example jarRateInPerHr(473.18, 180, { lengthIn: 24, widthIn: 12 }) //=> 2.01
 */
export function jarRateInPerHr(jarMl: number, seconds: number, tray: Tray): number {
  need('jarRateInPerHr', 'jarMl', jarMl, { above: 0 });
  need('jarRateInPerHr', 'seconds', seconds, { above: 0 });
  needTray('jarRateInPerHr', tray);
  return (3600 * jarMl) / (millilitersPerCubicInch * tray.lengthIn * tray.widthIn * seconds);
}

/**
 * Minutes to put a depth of rain on at a rate: t = 60 d / i, with d = `rainIn`, i = `rateInPerHr`.
 * @param rainIn - Depth of rain, inches; 0 or more
 * @param rateInPerHr - Rain rate, inches an hour; above 0
 * @returns Time, minutes
 * @throws RangeError if a value is outside its range
 * @source irrigation-repair-rate, the measuring can method
 * @example minutesOfRain(1, 0.6) //=> 100
 */
export function minutesOfRain(rainIn: number, rateInPerHr: number): number {
  need('minutesOfRain', 'rainIn', rainIn, { atLeast: 0 });
  need('minutesOfRain', 'rateInPerHr', rateInPerHr, { above: 0 });
  return (60 * rainIn) / rateInPerHr;
}
