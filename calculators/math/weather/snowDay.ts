import { need } from '../need.ts';

/**
 * Snow and melt of one day by one stated rule: all of a day's water is snow where the day's mean is at or below `snowAtC`; snow melts by f · T, at most
 * what lies, with f = `meltMmPerC`, T = `meanTempC` above freezing. Open ground in Finland melted 3.5 mm for each degree on average, under trees 2.4.
 * @param options.lyingMm - Snow lying last evening, millimeters of water; at least 0
 * @param options.precipitationMm - Rain or snow of the day, millimeters of water; at least 0
 * @param options.meanTempC - Mean air temperature of the day, degrees Celsius; any finite number
 * @param options.snowAtC - Mean temperature at or below which a day's water is snow, degrees Celsius; any finite number
 * @param options.meltMmPerC - Melt of a day for each degree above freezing, millimeters; at least 0
 * @returns Rain, melt, and snow lying this evening, millimeters of water
 * @throws RangeError if a parameter is outside its range
 * @source kuusisto-1980, abstract: mean factor of open sites; the threshold is our own
 * @example snowDay({ lyingMm: 10, precipitationMm: 4, meanTempC: 2, snowAtC: 1, meltMmPerC: 3.5 }) //=> ({ rainMm: 4, meltMm: 7, lyingMm: 3 })
 */
export function snowDay({
  lyingMm,
  precipitationMm,
  meanTempC,
  snowAtC,
  meltMmPerC,
}: {
  readonly lyingMm: number;
  readonly precipitationMm: number;
  readonly meanTempC: number;
  readonly snowAtC: number;
  readonly meltMmPerC: number;
}): { readonly rainMm: number; readonly meltMm: number; readonly lyingMm: number } {
  need('snowDay', 'lyingMm', lyingMm, { atLeast: 0 });
  need('snowDay', 'precipitationMm', precipitationMm, { atLeast: 0 });
  need('snowDay', 'meanTempC', meanTempC);
  need('snowDay', 'snowAtC', snowAtC);
  need('snowDay', 'meltMmPerC', meltMmPerC, { atLeast: 0 });
  const isSnow = meanTempC <= snowAtC;
  const lying = lyingMm + (isSnow ? precipitationMm : 0);
  const meltMm = Math.min(lying, Math.max(0, meltMmPerC * meanTempC));
  return { rainMm: isSnow ? 0 : precipitationMm, meltMm, lyingMm: lying - meltMm };
}
