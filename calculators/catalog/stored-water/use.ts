import type { ValuesOf } from '../../kit/inputs.ts';
import { dayOfYear } from '../../math/weather/dayOfYear.ts';
import { extraterrestrialRadiationMj } from '../../math/weather/extraterrestrialRadiationMj.ts';
import { hargreavesMm } from '../../math/weather/hargreavesMm.ts';
import { pastureWaterUse } from '../../tables/pastureWaterUse.ts';
import type { inputs } from './inputs.ts';

export const millimetersPerInch = 25.4;
const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
const months = {
  january: 1,
  february: 2,
  march: 3,
  april: 4,
  may: 5,
  june: 6,
  july: 7,
  august: 8,
  september: 9,
  october: 10,
  november: 11,
  december: 12,
} as const;
const latitudesDeg = { 'north-25': 25, 'north-30': 30, 'north-35': 35, 'north-40': 40, 'north-45': 45, 'north-50': 50, 'north-55': 55 } as const;

type Use = Pick<ValuesOf<typeof inputs>, 'useFrom' | 'useInPerDay' | 'month' | 'latitude' | 'highF' | 'lowF' | 'stand' | 'localPercent'>;

/** The month's middle day stands for it. A night warmer than the day is refused before it comes here. */
export function dailyUse({ useFrom, useInPerDay, month, latitude, highF, lowF, stand, localPercent }: Use) {
  const sunMj = extraterrestrialRadiationMj(latitudesDeg[latitude], dayOfYear(months[month], 15));
  const [highC, lowC] = [celsius(highF), celsius(lowF)];
  const referenceMm = hargreavesMm({ minTempC: lowC, maxTempC: highC, extraterrestrialMj: sunMj });
  const coefficient = pastureWaterUse.coefficient[stand];
  return {
    sunMj,
    highC,
    lowC,
    referenceMm,
    coefficient,
    dayUseIn: useFrom === 'known' ? useInPerDay : (coefficient * referenceMm * (localPercent / 100)) / millimetersPerInch,
  };
}
