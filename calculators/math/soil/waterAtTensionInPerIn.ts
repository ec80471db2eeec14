import { need } from '../need.ts';
import type { WaterRetention } from './waterRetention.ts';

/** What the curve takes from a soil's retention. */
export type RetentionCurve = Pick<WaterRetention, 'fieldCapacityInPerIn' | 'saturationInPerIn' | 'airEntryKPa' | 'tensionExponent'>;

/**
 * Water that the soil holds at a tension: from 33 to 1,500 kPa θ = θ₃₃ (33/ψ)^(1/B); from air entry ψ_e to 33 kPa a straight line
 * θ = θ₃₃ + (θ_S − θ₃₃)(33 − ψ)/(33 − ψ_e); wetter than that θ_S, with ψ = `tensionKPa` and the rest from `retention`.
 * @param retention - The soil, as `waterRetention` gives it
 * @param tensionKPa - Tension, kPa; 0 to 1,500
 * @returns Water, inches in an inch of soil
 * @throws RangeError if `tensionKPa` is outside its range
 * @source saxton-rawls-2006, eq. 11 to 15
 * @example waterAtTensionInPerIn({ fieldCapacityInPerIn: 0.28, saturationInPerIn: 0.46, airEntryKPa: 4, tensionExponent: 5.5 }, 33) //=> 0.28
 */
export function waterAtTensionInPerIn(retention: RetentionCurve, tensionKPa: number): number {
  need('waterAtTensionInPerIn', 'tensionKPa', tensionKPa, { atLeast: 0, atMost: 1500 });
  const { fieldCapacityInPerIn, saturationInPerIn, airEntryKPa, tensionExponent } = retention;
  if (tensionKPa >= 33) return fieldCapacityInPerIn * (33 / tensionKPa) ** (1 / tensionExponent);
  if (tensionKPa <= airEntryKPa) return saturationInPerIn;
  return fieldCapacityInPerIn + ((saturationInPerIn - fieldCapacityInPerIn) * (33 - tensionKPa)) / (33 - airEntryKPa);
}
