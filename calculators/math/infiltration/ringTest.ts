import { need } from '../need.ts';

/** Milliliters in a cubic inch, by definition. */
const millilitersPerCubicInch = 2.54 ** 3;

/**
 * Depth that a volume of water makes in a ring: d = V / (π b² / 4), with V = `volumeMl` in cubic inches, b = `boreIn`. The usual 444 mL is an inch only
 * in a bore of 5.87 in; in a true 6-inch bore it is 0.96 in.
 * @param volumeMl - Water poured, mL; 0 or more
 * @param boreIn - Inside diameter of the ring, inches; above 0
 * @returns Depth of water, inches
 * @throws RangeError if a parameter is outside its range
 * @source our own, a volume over the area of a circle
 * @example ringDepthIn(444, 6) //=> 0.958
 */
export function ringDepthIn(volumeMl: number, boreIn: number): number {
  need('ringDepthIn', 'volumeMl', volumeMl, { atLeast: 0 });
  need('ringDepthIn', 'boreIn', boreIn, { above: 0 });
  return volumeMl / millilitersPerCubicInch / ((Math.PI / 4) * boreIn ** 2);
}

/**
 * Bore of a ring from the water that fills it: b = √(4 V / (π d)), with V = `volumeMl` in cubic inches, d = `depthIn`. The inverse of `ringDepthIn`.
 * @param volumeMl - Water that fills it, mL; above 0
 * @param depthIn - Depth of that water, inches; above 0
 * @returns Inside diameter of the ring, inches
 * @throws RangeError if a parameter is not above 0
 * @source our own, a volume over the area of a circle
 * @example boreFromFillIn(1390, 3) //=> 6.00
 */
export function boreFromFillIn(volumeMl: number, depthIn: number): number {
  need('boreFromFillIn', 'volumeMl', volumeMl, { above: 0 });
  need('boreFromFillIn', 'depthIn', depthIn, { above: 0 });
  return Math.sqrt((4 * volumeMl) / millilitersPerCubicInch / (Math.PI * depthIn));
}

/**
 * Rate of one pouring: r = 60 d / t, with d = `depthIn`, t = `minutes`.
 * @param depthIn - Depth that soaked in, inches; above 0
 * @param minutes - Time that it took, minutes; above 0
 * @returns Rate, inches per hour
 * @throws RangeError if a parameter is not above 0
 * @source soil-quality-test-kit-2001, chapter 3 (from memory)
 * @example pouringRateInPerHr(1, 30) //=> 2
 */
export function pouringRateInPerHr(depthIn: number, minutes: number): number {
  need('pouringRateInPerHr', 'depthIn', depthIn, { above: 0 });
  need('pouringRateInPerHr', 'minutes', minutes, { above: 0 });
  return (60 * depthIn) / minutes;
}

/** Water poured at once, and the time until it was gone. */
export interface Pouring {
  readonly volumeMl: number;
  readonly minutes: number;
}

export interface RingRow {
  readonly depthIn: number;
  readonly cumulativeIn: number;
  readonly elapsedMinutes: number;
  readonly rateInPerHr: number;
}

export interface RingResult {
  readonly rows: readonly RingRow[];
  /** Depth of all pourings. */
  readonly totalIn: number;
  readonly firstRateInPerHr: number;
  /** Rate of the last pouring, inches per hour: dry ground drinks the first one faster than it can go on doing. */
  readonly leadingRateInPerHr: number;
  /** Whether a second pouring bears the leading rate out. */
  readonly repeated: boolean;
}

/**
 * A ring test of any bore with any number of pourings: depth, running sum, time and rate r = 60 d / t of each; the last pouring leads.
 * @param options.boreIn - Inside diameter of the ring, inches; above 0
 * @param options.pourings - Pourings in order: water in mL (above 0) and minutes until it was gone (above 0); at least one
 * @returns Rows in inches, minutes and inches per hour, their sum, the first rate and the leading one
 * @throws RangeError if there is no pouring or a number is not above 0
 * @source soil-quality-test-kit-2001, chapter 3 (from memory)
 * @example ringTest({ boreIn: 6, pourings: [{ volumeMl: 463.3, minutes: 6 }, { volumeMl: 463.3, minutes: 20 }] }).leadingRateInPerHr //=> 3.00
 */
export function ringTest({ boreIn, pourings }: { boreIn: number; pourings: readonly Pouring[] }): RingResult {
  need('ringTest', 'the number of pourings', pourings.length, { atLeast: 1 });
  const rows: RingRow[] = [];
  let cumulativeIn = 0;
  let elapsedMinutes = 0;
  let firstRateInPerHr = 0;
  let leadingRateInPerHr = 0;
  for (const { volumeMl, minutes } of pourings) {
    const depthIn = ringDepthIn(volumeMl, boreIn);
    leadingRateInPerHr = pouringRateInPerHr(depthIn, minutes);
    if (rows.length === 0) firstRateInPerHr = leadingRateInPerHr;
    cumulativeIn += depthIn;
    elapsedMinutes += minutes;
    rows.push({ depthIn, cumulativeIn, elapsedMinutes, rateInPerHr: leadingRateInPerHr });
  }
  return { rows, totalIn: cumulativeIn, firstRateInPerHr, leadingRateInPerHr, repeated: pourings.length > 1 };
}
