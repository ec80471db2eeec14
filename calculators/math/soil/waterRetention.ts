import { need } from '../need.ts';

/** Density of the solid particles, quartz and its like, g/cm3. */
export const particleDensityGPerCm3 = 2.65;

/** What a soil does with water, by its texture and organic matter. Water contents are inches of water in an inch of soil. */
export interface WaterRetention {
  /** Held at 1,500 kPa, too tight for plants. */
  readonly wiltingPointInPerIn: number;
  /** Held at 33 kPa, after the fast water has drained. */
  readonly fieldCapacityInPerIn: number;
  readonly saturationInPerIn: number;
  /** Field capacity less wilting point, in a foot of soil. */
  readonly availableInPerFt: number;
  readonly densityGPerCm3: number;
  /** Tension up to which the soil stays full, kPa; 0 where the equation falls below it. */
  readonly airEntryKPa: number;
  /** B of ψ = A θ^−B between 33 and 1,500 kPa. */
  readonly tensionExponent: number;
  /** Conductivity when full, mm/h. */
  readonly conductivityMmPerH: number;
}

/**
 * Water retention of the fine earth by texture and organic matter: θ₁₅₀₀, θ₃₃, θ_S₋₃₃ and ψ_e by regression, θ_S = θ₃₃ + θ_S₋₃₃ − 0.097 S + 0.043,
 * K_S = 1930 (θ_S − θ₃₃)^(3 − 1/B), with S = `sandPercent` / 100, C = `clayPercent` / 100, organic matter in percent. Made from soils with less than
 * 8 % organic matter and 60 % clay, of any land use: it knows nothing of grazing. For silt loam it holds more than handbook lists do.
 * A density factor other than 1 is compaction: θ_S = 1 − ρ/2.65, θ₃₃ falls by a fifth of what θ_S falls.
 * @param options.sandPercent - Sand, percent of the fine earth by weight; 0 to 100
 * @param options.clayPercent - Clay, percent of the fine earth by weight; 0 to 60
 * @param options.organicMatterPercent - Organic matter, percent by weight; 0 to 8
 * @param options.densityFactor - Bulk density over the equation's own; 0.9 to 1.3; 1 if left out
 * @returns Water contents, inches an inch; available water, inches a foot; density; air entry, kPa; exponent; conductivity, mm/h
 * @throws RangeError if a parameter is outside its range, or where the equations fail: field capacity not above wilting point, or saturation not above it
 * @source saxton-rawls-2006, eq. 1 to 18
 * @example waterRetention({ sandPercent: 40, clayPercent: 20, organicMatterPercent: 2.5 }).availableInPerFt //=> 1.71
 */
export function waterRetention({
  sandPercent,
  clayPercent,
  organicMatterPercent,
  densityFactor = 1,
}: {
  readonly sandPercent: number;
  readonly clayPercent: number;
  readonly organicMatterPercent: number;
  readonly densityFactor?: number;
}): WaterRetention {
  need('waterRetention', 'sandPercent', sandPercent, { atLeast: 0, atMost: 100 });
  need('waterRetention', 'clayPercent', clayPercent, { atLeast: 0, atMost: Math.min(60, 100 - sandPercent) });
  need('waterRetention', 'organicMatterPercent', organicMatterPercent, { atLeast: 0, atMost: 8 });
  need('waterRetention', 'densityFactor', densityFactor, { atLeast: 0.9, atMost: 1.3 });
  // The paper's text reads as if all three were percent; its own table comes out only with shares for sand and clay and percent for organic matter.
  const sand = sandPercent / 100;
  const clay = clayPercent / 100;
  const organic = organicMatterPercent;

  const dry = -0.024 * sand + 0.487 * clay + 0.006 * organic + 0.005 * sand * organic - 0.013 * clay * organic + 0.068 * sand * clay + 0.031;
  const wiltingPoint = dry + 0.14 * dry - 0.02;
  const moist = -0.251 * sand + 0.195 * clay + 0.011 * organic + 0.006 * sand * organic - 0.027 * clay * organic + 0.452 * sand * clay + 0.299;
  const looseFieldCapacity = moist + 1.283 * moist ** 2 - 0.374 * moist - 0.015;
  const draining = 0.278 * sand + 0.034 * clay + 0.022 * organic - 0.018 * sand * organic - 0.027 * clay * organic - 0.584 * sand * clay + 0.078;
  const drained = draining + 0.636 * draining - 0.107;
  const entry = -21.67 * sand - 27.93 * clay - 81.97 * drained + 71.12 * sand * drained + 8.29 * clay * drained + 14.05 * sand * clay + 27.16;
  const airEntryKPa = Math.max(0, entry + 0.02 * entry ** 2 - 0.113 * entry - 0.7);

  const looseSaturation = looseFieldCapacity + drained - 0.097 * sand + 0.043;
  const densityGPerCm3 = (1 - looseSaturation) * particleDensityGPerCm3 * densityFactor;
  const saturation = 1 - densityGPerCm3 / particleDensityGPerCm3;
  const fieldCapacity = looseFieldCapacity - 0.2 * (looseSaturation - saturation);

  need('waterRetention', 'the wilting point that follows', wiltingPoint, { above: 0 });
  need('waterRetention', 'the field capacity that follows', fieldCapacity, { above: wiltingPoint });
  need('waterRetention', 'the saturation that follows', saturation, { above: fieldCapacity, below: 1 });
  const tensionExponent = Math.log(1500 / 33) / Math.log(fieldCapacity / wiltingPoint);
  return {
    wiltingPointInPerIn: wiltingPoint,
    fieldCapacityInPerIn: fieldCapacity,
    saturationInPerIn: saturation,
    availableInPerFt: (fieldCapacity - wiltingPoint) * 12,
    densityGPerCm3,
    airEntryKPa,
    tensionExponent,
    conductivityMmPerH: 1930 * (saturation - fieldCapacity) ** (3 - 1 / tensionExponent),
  };
}
