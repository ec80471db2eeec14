import { rainErosivity } from '../math/erosion/rainErosivity.ts';
import { springFlush } from '../math/growth/springFlush.ts';
import { temperatureResponse } from '../math/growth/temperatureResponse.ts';
import { need, needThere } from '../math/need.ts';
import { dayOfYear } from '../math/weather/dayOfYear.ts';
import { degreeDays } from '../math/weather/degreeDays.ts';
import { extraterrestrialRadiationMj } from '../math/weather/extraterrestrialRadiationMj.ts';
import { hargreavesMm } from '../math/weather/hargreavesMm.ts';
import { snowDay } from '../math/weather/snowDay.ts';
import { numberAt, SKY } from './flat.ts';
import type { climateDefaults } from './parameters.ts';
import { dayOf, isLeapYear, type MonthDay, monthOf, type Weather } from './weather.ts';

/** A place's climate beside its weather. */
export type Climate = typeof climateDefaults & { readonly latitudeDeg: number };

/** What grass and soil feel of the weather, day by day: worked out once, for both managements. */
export interface Sky {
  readonly days: number;
  /** `SKY.width` numbers a day. */
  readonly daily: Float64Array;
  readonly lyingSnowMm: Float64Array;
  readonly year: Int32Array;
  readonly monthDay: Int32Array;
}

/** The day from which degree days count: midwinter. Pastures are cleared then to fit their growth. */
export const midwinter = (latitudeDeg: number): MonthDay => (latitudeDeg >= 0 ? 101 : 701);

const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;

/** Radiation above the air by day of the year, and the strongest of it. Made once: its cosines cost more than all the rest of a day. */
function radiation(latitudeDeg: number): { readonly byDay: Float64Array; readonly strongestMj: number } {
  const byDay = Float64Array.from({ length: 367 }, (_, day) => (day === 0 ? 0 : extraterrestrialRadiationMj(latitudeDeg, day)));
  return { byDay, strongestMj: Math.max(...byDay) };
}

/**
 * Degree days since midwinter, evening by evening. A record that begins in mid-year takes for its first days what the same days of its other years had by
 * then, on average; where no other year tells, nothing (NaN), and there is then no flush.
 */
function degreeDaysSinceMidwinter({ monthDay }: Weather, minC: Float64Array, maxC: Float64Array, start: MonthDay): Float64Array {
  const sums = new Float64Array(monthDay.length);
  const known = new Map<MonthDay, { sum: number; count: number }>();
  let sum = Number.NaN;
  monthDay.forEach((day, at) => {
    if (day === start) sum = 0;
    sum += degreeDays({ minDegrees: numberAt(minC, at), maxDegrees: numberAt(maxC, at), baseDegrees: 0 });
    sums[at] = sum;
    if (Number.isNaN(sum)) return;
    const before = known.get(day) ?? { sum: 0, count: 0 };
    known.set(day, { sum: before.sum + sum, count: before.count + 1 });
  });
  return sums.map((each, at) => {
    if (!Number.isNaN(each)) return each;
    const others = known.get(needThere('degreeDaysSinceMidwinter', 'day', monthDay[at]));
    return others === undefined ? Number.NaN : others.sum / others.count;
  });
}

/** The mean of the last days up to this one, or of as many as there are. */
function meanOfLast(means: Float64Array, at: number, days: number): number {
  const from = Math.max(0, at - days + 1);
  let sum = 0;
  for (let back = from; back <= at; back += 1) sum += numberAt(means, back);
  return sum / (at - from + 1);
}

export function skyOf(weather: Weather, climate: Climate): Sky {
  need('skyOf', 'latitudeDeg', climate.latitudeDeg, { atLeast: -66, atMost: 66 });
  need('skyOf', 'meanOverDays', climate.meanOverDays, { atLeast: 1, whole: true });
  const { days, year, monthDay, rainMm, maxTempC, minTempC } = weather;
  const daily = new Float64Array(days * SKY.width);
  const lyingSnowMm = new Float64Array(days);
  const { byDay, strongestMj } = radiation(climate.latitudeDeg);
  const degreeDaysC = degreeDaysSinceMidwinter(weather, minTempC, maxTempC, midwinter(climate.latitudeDeg));
  const means = maxTempC.map((high, at) => (high + numberAt(minTempC, at)) / 2);
  let lyingMm = 0;
  let erosive = 0;
  for (let at = 0; at < days; at += 1) {
    const date = needThere('skyOf', `day ${at}`, monthDay[at]);
    const extraterrestrialMj = numberAt(byDay, dayOfYear(monthOf(date), dayOf(date), isLeapYear(needThere('skyOf', `year of day ${at}`, year[at]))));
    const meanTempC = numberAt(means, at);
    const snow = snowDay({ ...climate, lyingMm, precipitationMm: numberAt(rainMm, at), meanTempC });
    const isUnderSnow = snow.lyingMm > 0 || lyingMm > 0;
    lyingMm = snow.lyingMm;
    const sinceMidwinter = numberAt(degreeDaysC, at);
    const flush = Number.isNaN(sinceMidwinter)
      ? 1
      : springFlush({
          degreeDaysC: sinceMidwinter,
          low: climate.flushLow,
          high: climate.flushHigh,
          firstC: climate.flushFirstC,
          secondC: climate.flushSecondC,
        });
    const warmth = temperatureResponse({ ...climate, meanF: fahrenheit(meanOfLast(means, at, climate.meanOverDays)) });
    const erosivity = rainErosivity(snow.rainMm);
    erosive += erosivity;
    const minimum = numberAt(minTempC, at);
    const day = at * SKY.width;
    daily[day + SKY.rain] = snow.rainMm;
    daily[day + SKY.melt] = snow.meltMm;
    daily[day + SKY.reference] = isUnderSnow
      ? 0
      : climate.referenceFactor * hargreavesMm({ minTempC: minimum, maxTempC: numberAt(maxTempC, at), extraterrestrialMj });
    daily[day + SKY.response] = isUnderSnow ? 0 : warmth * (extraterrestrialMj / strongestMj) * flush;
    daily[day + SKY.frost] = minimum <= climate.frostC ? 1 : 0;
    daily[day + SKY.rot] = Math.max(0, climate.rotPerC * meanTempC);
    daily[day + SKY.erosivity] = erosivity;
    lyingSnowMm[at] = lyingMm;
  }
  // Each day's share of a mean year of this record; a record without rain has nothing to share out.
  const ofYear = (erosive * 365.25) / days;
  if (ofYear > 0) for (let at = SKY.erosivity; at < daily.length; at += SKY.width) daily[at] = numberAt(daily, at) / ofYear;
  return { days, daily, lyingSnowMm, year, monthDay };
}

/** One day of the sky by its names. */
export interface SkyDay {
  readonly rainMm: number;
  readonly meltMm: number;
  readonly referenceMm: number;
  readonly response: number;
  readonly isHardFrost: boolean;
  readonly rotShare: number;
  readonly erosivityShare: number;
}
export function skyDay({ daily }: Sky, day: number): SkyDay {
  const of = (field: number): number => numberAt(daily, day * SKY.width + field);
  return {
    rainMm: of(SKY.rain),
    meltMm: of(SKY.melt),
    referenceMm: of(SKY.reference),
    response: of(SKY.response),
    isHardFrost: of(SKY.frost) === 1,
    rotShare: of(SKY.rot),
    erosivityShare: of(SKY.erosivity),
  };
}
