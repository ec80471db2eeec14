import { rainErosivity } from '../math/erosion/rainErosivity.ts';
import { springFlush } from '../math/growth/springFlush.ts';
import { temperatureResponse } from '../math/growth/temperatureResponse.ts';
import { need } from '../math/need.ts';
import { dayOfYear } from '../math/weather/dayOfYear.ts';
import { degreeDays } from '../math/weather/degreeDays.ts';
import { extraterrestrialRadiationMj } from '../math/weather/extraterrestrialRadiationMj.ts';
import { hargreavesMm } from '../math/weather/hargreavesMm.ts';
import { snowDay } from '../math/weather/snowDay.ts';
import { add, numberAt, SKY, wholeAt } from './flat.ts';
import type { climateDefaults } from './parameters.ts';
import { calendarFrom, dayOf, isLeapYear, type MonthDay, monthOf, type Weather, wholeYear } from './weather.ts';

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

/** Radiation above the air by date, in leap years and in others, and the strongest of it. Made once: its cosines cost more than all the rest of a day. */
function radiation(latitudeDeg: number): { readonly inLeapYear: Float64Array; readonly inOther: Float64Array; readonly strongestMj: number } {
  const byDay = Float64Array.from({ length: 367 }, (_, day) => (day === 0 ? 0 : extraterrestrialRadiationMj(latitudeDeg, day)));
  const byDate = (year: number): Float64Array => {
    const on = new Float64Array(wholeYear.to).fill(Number.NaN);
    const isLeap = isLeapYear(year);
    for (const date of calendarFrom({ year, month: 1, day: 1 }, isLeap ? 366 : 365).monthDay)
      on[date] = numberAt(byDay, dayOfYear(monthOf(date), dayOf(date), isLeap));
    return on;
  };
  return { inLeapYear: byDate(2000), inOther: byDate(2001), strongestMj: Math.max(...byDay) };
}

/**
 * Degree days since midwinter, evening by evening. A record that begins in mid-year takes for its first days what the same days of its other years had by
 * then, on average; where no other year tells, nothing (NaN), and there is then no flush.
 */
function degreeDaysSinceMidwinter({ monthDay }: Weather, minC: Float64Array, maxC: Float64Array, start: MonthDay): Float64Array {
  const sums = new Float64Array(monthDay.length);
  // Sums and years of each date.
  const [knownSum, knownYears] = [new Float64Array(wholeYear.to), new Float64Array(wholeYear.to)];
  let sum = Number.NaN;
  for (let at = 0; at < sums.length; at += 1) {
    const date = wholeAt(monthDay, at);
    if (date === start) sum = 0;
    sum += degreeDays({ minDegrees: numberAt(minC, at), maxDegrees: numberAt(maxC, at), baseDegrees: 0 });
    sums[at] = sum;
    if (Number.isNaN(sum)) continue;
    add(knownSum, date, sum);
    add(knownYears, date, 1);
  }
  // Where no other year tells, 0 / 0.
  for (let at = 0; at < sums.length && Number.isNaN(sums[at]); at += 1) {
    const date = wholeAt(monthDay, at);
    sums[at] = numberAt(knownSum, date) / numberAt(knownYears, date);
  }
  return sums;
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
  const { inLeapYear, inOther, strongestMj } = radiation(climate.latitudeDeg);
  const {
    snowAtC,
    meltMmPerC,
    startF,
    bestFromF,
    bestToF,
    stopF,
    flushLow: low,
    flushHigh: high,
    flushFirstC: firstC,
    flushSecondC: secondC,
  } = climate;
  const degreeDaysC = degreeDaysSinceMidwinter(weather, minTempC, maxTempC, midwinter(climate.latitudeDeg));
  const means = maxTempC.map((high, at) => (high + numberAt(minTempC, at)) / 2);
  const flushOn = (at: number): number => {
    const sinceMidwinter = numberAt(degreeDaysC, at);
    return Number.isNaN(sinceMidwinter) ? 1 : springFlush({ degreeDaysC: sinceMidwinter, low, high, firstC, secondC });
  };
  const warmthOn = (at: number): number =>
    temperatureResponse({ meanF: fahrenheit(meanOfLast(means, at, climate.meanOverDays)), startF, bestFromF, bestToF, stopF });
  let lyingMm = 0;
  let erosive = 0;
  for (let at = 0; at < days; at += 1) {
    const extraterrestrialMj = numberAt(isLeapYear(wholeAt(year, at)) ? inLeapYear : inOther, wholeAt(monthDay, at));
    const meanTempC = numberAt(means, at);
    const snow = snowDay({ lyingMm, precipitationMm: numberAt(rainMm, at), meanTempC, snowAtC, meltMmPerC });
    const isUnderSnow = snow.lyingMm > 0 || lyingMm > 0;
    lyingMm = snow.lyingMm;
    const erosivity = snow.rainMm > 0 ? rainErosivity(snow.rainMm) : 0;
    erosive += erosivity;
    const minimum = numberAt(minTempC, at);
    const day = at * SKY.width;
    daily[day + SKY.rain] = snow.rainMm;
    daily[day + SKY.melt] = snow.meltMm;
    daily[day + SKY.reference] = isUnderSnow
      ? 0
      : climate.referenceFactor * hargreavesMm({ minTempC: minimum, maxTempC: numberAt(maxTempC, at), extraterrestrialMj });
    daily[day + SKY.response] = isUnderSnow ? 0 : warmthOn(at) * (extraterrestrialMj / strongestMj) * flushOn(at);
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
