import { springFlush } from '../math/growth/springFlush.ts';
import { temperatureResponse } from '../math/growth/temperatureResponse.ts';
import { need } from '../math/need.ts';
import { dayOfYear } from '../math/weather/dayOfYear.ts';
import { extraterrestrialRadiationMj } from '../math/weather/extraterrestrialRadiationMj.ts';
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

/** Degree days at which the flush begins, and between which it is at its best: as in `springFlush`. */
const flushStartsC = 200;
const flushBest = (firstC: number): readonly [from: number, to: number] => [firstC - 200, firstC - 100];

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
function degreeDaysSinceMidwinter({ monthDay }: Weather, means: Float64Array, start: MonthDay): Float64Array {
  const sums = new Float64Array(monthDay.length);
  // Sums and years of each date.
  const [knownSum, knownYears] = [new Float64Array(wholeYear.to), new Float64Array(wholeYear.to)];
  let sum = Number.NaN;
  for (let at = 0; at < sums.length; at += 1) {
    const date = wholeAt(monthDay, at);
    if (date === start) sum = 0;
    sum += Math.max(0, numberAt(means, at));
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

/** Stops at a climate or a day that the laws of a day would refuse: asked once, not by each law of each day. */
function needClimate(climate: Climate): void {
  const { snowAtC, meltMmPerC, startF, bestFromF, bestToF, stopF, flushLow, flushHigh, flushFirstC, flushSecondC } = climate;
  need('skyOf', 'latitudeDeg', climate.latitudeDeg, { atLeast: -66, atMost: 66 });
  need('skyOf', 'meanOverDays', climate.meanOverDays, { atLeast: 1, whole: true });
  snowDay({ lyingMm: 0, precipitationMm: 0, meanTempC: 0, snowAtC, meltMmPerC });
  temperatureResponse({ meanF: 0, startF, bestFromF, bestToF, stopF });
  springFlush({ degreeDaysC: 0, low: flushLow, high: flushHigh, firstC: flushFirstC, secondC: flushSecondC });
}
function needDays({ days, rainMm, maxTempC, minTempC }: Weather): void {
  for (let at = 0; at < days; at += 1) {
    const [rain, high, low] = [numberAt(rainMm, at), numberAt(maxTempC, at), numberAt(minTempC, at)];
    if (rain >= 0 && low <= high && Number.isFinite(rain + high - low)) continue;
    need('skyOf', `rain of day ${at}`, rain, { atLeast: 0 });
    need('skyOf', `high of day ${at}`, high);
    need('skyOf', `low of day ${at}`, low, { atMost: high });
  }
}

/*
 * The laws of a day (`snowDay`, `hargreavesMm`, `temperatureResponse`, `springFlush`, `rainErosivity`, `degreeDays`) stand in this loop as they stand in `math`,
 * in their order of operations: asked one by one they took two thirds of all that is worked out of the weather of a thousand years, to see that a number is
 * one. A property test holds the two together to the last bit.
 */
export function skyOf(weather: Weather, climate: Climate): Sky {
  needClimate(climate);
  needDays(weather);
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
    flushLow,
    flushHigh,
    flushSecondC,
    meanOverDays,
    frostC,
    rotPerC,
    referenceFactor,
  } = climate;
  const [flushFrom, flushTo] = flushBest(climate.flushFirstC);
  const means = new Float64Array(days);
  for (let at = 0; at < days; at += 1) means[at] = (numberAt(maxTempC, at) + numberAt(minTempC, at)) / 2;
  const degreeDaysC = degreeDaysSinceMidwinter(weather, means, midwinter(climate.latitudeDeg));
  let lyingMm = 0;
  let erosive = 0;
  for (let at = 0; at < days; at += 1) {
    const [rain, mean, minimum] = [numberAt(rainMm, at), numberAt(means, at), numberAt(minTempC, at)];
    const day = at * SKY.width;
    // Snow and melt, and what rain beats on the ground.
    const isSnow = mean <= snowAtC;
    const lying = lyingMm + (isSnow ? rain : 0);
    const melt = Math.min(lying, Math.max(0, meltMmPerC * mean));
    const isUnderSnow = lying - melt > 0 || lyingMm > 0;
    lyingMm = lying - melt;
    const fallen = isSnow ? 0 : rain;
    const erosivity = fallen > 0 ? fallen ** 1.81 : 0;
    erosive += erosivity;
    daily[day + SKY.rain] = fallen;
    daily[day + SKY.melt] = melt;
    daily[day + SKY.erosivity] = erosivity;
    daily[day + SKY.frost] = minimum <= frostC ? 1 : 0;
    daily[day + SKY.rot] = Math.max(0, rotPerC * mean);
    lyingSnowMm[at] = lyingMm;
    if (isUnderSnow) continue;
    // What sun and heat could take.
    const extraterrestrialMj = numberAt(isLeapYear(wholeAt(year, at)) ? inLeapYear : inOther, wholeAt(monthDay, at));
    const heat = 0.0023 * (mean + 17.8) * Math.sqrt(numberAt(maxTempC, at) - minimum);
    daily[day + SKY.reference] = referenceFactor * Math.max(0, heat * (0.408 * extraterrestrialMj));
    // Growth that warmth, light and season allow.
    const meanF = fahrenheit(meanOfLast(means, at, meanOverDays));
    const warmth = Math.max(0, Math.min(1, (meanF - startF) / (bestFromF - startF), (stopF - meanF) / (stopF - bestToF)));
    const sinceMidwinter = numberAt(degreeDaysC, at);
    let flush = 1;
    if (sinceMidwinter <= flushStartsC || sinceMidwinter >= flushSecondC) flush = flushLow;
    else if (sinceMidwinter < flushFrom) flush = flushLow + ((flushHigh - flushLow) * (sinceMidwinter - flushStartsC)) / (flushFrom - flushStartsC);
    else if (sinceMidwinter <= flushTo) flush = flushHigh;
    // Where nothing tells how far the year is, there is none.
    else if (sinceMidwinter > flushTo) flush = flushHigh + ((flushLow - flushHigh) * (sinceMidwinter - flushTo)) / (flushSecondC - flushTo);
    daily[day + SKY.response] = warmth * (extraterrestrialMj / strongestMj) * flush;
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
