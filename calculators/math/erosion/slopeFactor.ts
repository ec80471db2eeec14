import { need } from '../need.ts';

/**
 * Which handbook the slope factor follows. One word carries edition and kind of erosion, so that length of one and steepness of the other can't be mixed.
 * Low rill ratio: consolidated soil under grass, pasture, range. Moderate: tilled cropland. High: freshly disturbed ground.
 */
export type SlopeMethod = '1978' | '1997-low-rill' | '1997-moderate-rill' | '1997-high-rill';

/** Length of the plot that slope lengths are compared with, feet. */
const unitPlotFt = 72.6;
const rillFactor = { '1997-low-rill': 0.5, '1997-moderate-rill': 1, '1997-high-rill': 2 } as const;

const sineOf = (slopePercent: number): number => Math.sin(Math.atan(slopePercent / 100));

/**
 * Exponent m of slope length. 1978: 0.2 below 1 %, 0.3 to 3 %, 0.4 below 5 %, 0.5 from 5 %. 1997: m = β/(1 + β), β = (sin θ/0.0896)/(3.0 sin^0.8 θ + 0.56),
 * half of it with little rill erosion, twice with much, tan θ = `slopePercent` / 100.
 * @param slopePercent - Steepness, percent; above 0, at most 60
 * @param method - Edition and rill ratio
 * @returns Exponent, no unit
 * @throws RangeError if `slopePercent` is outside its range
 * @source wischmeier-smith-1978, p. 12 (0.2 from memory; breaks at 3 and 5 % as used in practice); renard-1997, eq. 4-2 and 4-3 (half and double from memory)
 * @example lengthExponent(9, '1997-moderate-rill') //=> 0.50
 */
export function lengthExponent(slopePercent: number, method: SlopeMethod): number {
  need('lengthExponent', 'slopePercent', slopePercent, { above: 0, atMost: 60 });
  if (method === '1978') {
    if (slopePercent < 1) return 0.2;
    if (slopePercent <= 3) return 0.3;
    return slopePercent < 5 ? 0.4 : 0.5;
  }
  const sine = sineOf(slopePercent);
  const rills = (rillFactor[method] * (sine / 0.0896)) / (3 * sine ** 0.8 + 0.56);
  return rills / (1 + rills);
}

/**
 * Steepness factor S. 1978: 65.41 sin² θ + 4.56 sin θ + 0.065. 1997: 10.8 sin θ + 0.03 below 9 %, 16.8 sin θ − 0.50 from 9 %, tan θ = `slopePercent` / 100.
 * @param slopePercent - Steepness, percent; above 0, at most 60; the 1978 form was fitted on 3 to 18 %
 * @param method - Edition and rill ratio
 * @returns Soil loss over that of a 9 % slope, no unit
 * @throws RangeError if `slopePercent` is outside its range
 * @source wischmeier-smith-1978, p. 12; renard-1997, eq. 4-4 and 4-5
 * @example steepness(9, '1978') //=> 1.00
 */
export function steepness(slopePercent: number, method: SlopeMethod): number {
  need('steepness', 'slopePercent', slopePercent, { above: 0, atMost: 60 });
  const sine = sineOf(slopePercent);
  if (method === '1978') return 65.41 * sine ** 2 + 4.56 * sine + 0.065;
  return slopePercent < 9 ? 10.8 * sine + 0.03 : 16.8 * sine - 0.5;
}

/**
 * Slope factor LS of the soil loss equation: LS = (λ/72.6)^m S, with λ = `lengthFt`, m and S by `method`.
 * @param lengthFt - From where water starts to run to where it gathers in a channel or drops its soil, along the level, feet; 15 to 1,000
 * @param slopePercent - Steepness, percent; above 0, at most 60
 * @param method - Edition and rill ratio
 * @returns Soil loss over that of a slope of 72.6 ft and 9 %, no unit
 * @throws RangeError if a parameter is outside its range
 * @source wischmeier-smith-1978, p. 12; renard-1997, chapter 4
 * @example slopeFactor(200, 8, '1997-moderate-rill') //=> 1.45
 */
export function slopeFactor(lengthFt: number, slopePercent: number, method: SlopeMethod): number {
  need('slopeFactor', 'lengthFt', lengthFt, { atLeast: 15, atMost: 1000 });
  return (lengthFt / unitPlotFt) ** lengthExponent(slopePercent, method) * steepness(slopePercent, method);
}

/** A stretch of a slope with one steepness, from the top down. */
export interface SlopeSegment {
  readonly lengthFt: number;
  readonly slopePercent: number;
}

/**
 * Slope factor of an irregular slope and what each stretch adds to it: LS = Σ S_i (x_i^(m_i+1) − x_(i−1)^(m_i+1))/(λ 72.6^m_i), with x the distance from the
 * top, λ the whole length, S_i and m_i of each stretch by `method`. Holds where no stretch is flat enough to drop soil.
 * @param segments - Stretches from the top down, one soil and one cover; each length above 0, together 15 to 1,000 ft; slope above 0, at most 60 %
 * @param method - Edition and rill ratio
 * @returns Slope factor of the whole; share of the loss that comes from each stretch
 * @throws RangeError if a number is outside its range or there is no stretch
 * @source wischmeier-smith-1978, p. 16, irregular slopes (equation from memory)
 * @example irregularSlopeFactor([{ lengthFt: 100, slopePercent: 8 }, { lengthFt: 100, slopePercent: 8 }], '1997-moderate-rill').slopeFactor //=> 1.45
 */
export function irregularSlopeFactor(
  segments: readonly SlopeSegment[],
  method: SlopeMethod,
): { readonly slopeFactor: number; readonly shares: readonly number[] } {
  need('irregularSlopeFactor', 'segments', segments.length, { atLeast: 1 });
  let fromTopFt = 0;
  const parts = segments.map(({ lengthFt, slopePercent }) => {
    need('irregularSlopeFactor', 'lengthFt of a segment', lengthFt, { above: 0 });
    const exponent = lengthExponent(slopePercent, method);
    const aboveFt = fromTopFt;
    fromTopFt += lengthFt;
    return (steepness(slopePercent, method) * (fromTopFt ** (exponent + 1) - aboveFt ** (exponent + 1))) / unitPlotFt ** exponent;
  });
  need('irregularSlopeFactor', 'lengthFt of all segments', fromTopFt, { atLeast: 15, atMost: 1000 });
  const whole = parts.reduce((sum, part) => sum + part, 0);
  return { slopeFactor: whole / fromTopFt, shares: parts.map((part) => part / whole) };
}
