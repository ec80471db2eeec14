import { need } from '../need.ts';
import { evaporationEquivalentMm } from './extraterrestrialRadiationMj.ts';

/**
 * Reference evapotranspiration from temperature alone: ETo = 0.0023 (Tmean + 17.8) √(Tmax − Tmin) · 0.408 Ra, 0 at least, with Tmin = `minTempC`,
 * Tmax = `maxTempC`, Tmean = `meanTempC`, Ra = `extraterrestrialMj` in megajoules. It tends to read low on windy plains and high in damp places: a
 * local factor, if known, corrects it.
 * @param options.minTempC - Lowest air temperature of the day, degrees Celsius; at most `maxTempC`
 * @param options.maxTempC - Highest air temperature of the day, degrees Celsius
 * @param options.extraterrestrialMj - Extraterrestrial radiation, megajoules per square meter and day; at least 0
 * @param options.meanTempC - Mean air temperature of the day, degrees Celsius, between the two; their mean if left out
 * @returns Reference evapotranspiration, millimeters per day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 52
 * @example hargreavesMm({ minTempC: 14.8, maxTempC: 26.6, extraterrestrialMj: 40.55 }) //=> 5.03
 */
export function hargreavesMm({
  minTempC,
  maxTempC,
  extraterrestrialMj,
  meanTempC = (minTempC + maxTempC) / 2,
}: {
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly extraterrestrialMj: number;
  readonly meanTempC?: number;
}): number {
  need('hargreavesMm', 'maxTempC', maxTempC);
  need('hargreavesMm', 'minTempC', minTempC, { atMost: maxTempC });
  need('hargreavesMm', 'extraterrestrialMj', extraterrestrialMj, { atLeast: 0 });
  need('hargreavesMm', 'meanTempC', meanTempC, { atLeast: minTempC, atMost: maxTempC });
  return Math.max(0, 0.0023 * (meanTempC + 17.8) * Math.sqrt(maxTempC - minTempC) * evaporationEquivalentMm(extraterrestrialMj));
}
