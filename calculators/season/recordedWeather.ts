import { need, needThere } from '../math/need.ts';
import { filledWeather } from './filledWeather.ts';
import { numberAt } from './flat.ts';
import { generatedRain, generatedTemperatures } from './generatedWeather.ts';
import { mostDaysWithoutRain } from './hayYears.ts';
import { type UsualMonth, usualStatistics } from './monthlyWeather.ts';
import { calendarFrom, dayBefore, type FirstDay, MADE_UP, type MonthDay, type Weather } from './weather.ts';

/** What somebody read: an amount up to and with its day, over one day or over several; temperatures of that day, if they were read. */
export interface Reading {
  /** Days since 1 January 1970. */
  readonly day: number;
  readonly amountIn: number;
  readonly days?: number;
  readonly highF?: number;
  readonly lowF?: number;
}

/** How a record became days that the season can run on. */
export interface Recorded {
  readonly weather: Weather;
  readonly days: number;
  /** Days that lie in a total over several, such as a month's: their rain is laid out as in a usual year. */
  readonly laidOutDays: number;
  /** Days without a reading of rain. */
  readonly noRainDays: number;
  /** Days whose high or low was made up from the usual months, and days where it was read off a straight line or off other years. */
  readonly madeUpTemperatureDays: number;
  readonly bridgedTemperatureDays: number;
}

const mmPerIn = 25.4;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const dayMs = 86_400_000;
/** Made-up years whose days lend a total their pattern. */
const patternYears = 60;
const patternsFrom = { year: 2001, month: 1, day: 1 };

const dateOf = (day: number): FirstDay => {
  const date = new Date(day * dayMs);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
};

/** Where made-up years have the day of a date: one place a year; 29 February stands for the day before where a year lacks it. */
function placesOf(monthDay: Int32Array): ReadonlyMap<MonthDay, readonly number[]> {
  const places = new Map<MonthDay, number[]>();
  monthDay.forEach((date, at) => {
    const list = places.get(date) ?? [];
    list.push(at);
    places.set(date, list);
  });
  return places;
}

/**
 * Lays a total on its days as rain lay on the same dates of that made-up year whose total comes nearest, all of it scaled to the total. Where no made-up
 * year has rain on those dates, evenly.
 */
function layOut(rainMm: Float64Array, { from, days, totalMm }: Total, patterns: Float64Array, places: readonly number[]): void {
  let [nearest, nearestMm] = [-1, 0];
  for (const place of places) {
    if (place + days > patterns.length) continue;
    let sum = 0;
    for (let at = place; at < place + days; at += 1) sum += numberAt(patterns, at);
    if (sum > 0 && (nearest < 0 || Math.abs(sum - totalMm) < Math.abs(nearestMm - totalMm))) [nearest, nearestMm] = [place, sum];
  }
  for (let at = 0; at < days; at += 1) {
    rainMm[from + at] = nearest < 0 ? totalMm / days : (totalMm * numberAt(patterns, nearest + at)) / nearestMm;
  }
}
interface Total {
  readonly from: number;
  readonly days: number;
  readonly totalMm: number;
}

/** Temperatures that were read, NaN where none was; a day of the calendar that no year read takes what is made up, and so does any high below its low. */
function temperaturesOf(readings: readonly Reading[], firstDay: number, days: number): { readonly high: Float64Array; readonly low: Float64Array } {
  const [high, low] = [new Float64Array(days).fill(Number.NaN), new Float64Array(days).fill(Number.NaN)];
  for (const { day, highF, lowF } of readings) {
    if (highF !== undefined && lowF !== undefined && highF < lowF) continue;
    if (highF !== undefined) high[day - firstDay] = celsius(highF);
    if (lowF !== undefined) low[day - firstDay] = celsius(lowF);
  }
  return { high, low };
}

/** Takes the made-up temperature on dates that were read in no year; gives which days those are. */
function makeUpUnknown(readings: Float64Array, madeUp: Float64Array, monthDay: Int32Array): Uint8Array {
  const known = new Set<MonthDay>();
  readings.forEach((reading, at) => {
    if (!Number.isNaN(reading)) known.add(needThere('recordedWeather', 'date', monthDay[at]));
  });
  return Uint8Array.from(readings, (reading, at) => {
    const date = needThere('recordedWeather', 'date', monthDay[at]);
    // As the gaps are filled, a leap day that was read in no year takes the day before.
    if (!Number.isNaN(reading) || known.has(date) || (date === 229 && known.has(dayBefore(date)))) return 0;
    readings[at] = numberAt(madeUp, at);
    return 1;
  });
}

/**
 * The years of a rain record as days that the season can run on. Days that were read are used as they are. A total over several days, a month's for
 * instance, is laid on days as they lie in made-up years of the usual months. Rain that nobody read is never filled in a year that counts: the first and the
 * last three days of a gap run dry. What lies between them takes made-up rain, because dry it would starve the grass of the years after, which are counted.
 * All of it stays marked. Temperatures that were read are used, with gaps filled as `filledWeather`
 * says; where none was read on a date in any year they are made up from the usual months.
 */
export function recordedWeather(readings: readonly Reading[], months: readonly UsualMonth[], seed: number): Recorded {
  need('recordedWeather', 'readings.length', readings.length, { atLeast: 1 });
  const [first, last] = [needThere('recordedWeather', 'first reading', readings[0]), needThere('recordedWeather', 'last', readings.at(-1))];
  const firstDay = first.day - (first.days ?? 1) + 1;
  const days = last.day - firstDay + 1;
  const { monthDay } = calendarFrom(dateOf(firstDay), days);
  const statistics = usualStatistics(months);
  const patternDays = calendarFrom(patternsFrom, 365 * patternYears + Math.floor(patternYears / 4)).monthDay;
  const patterns = generatedRain(statistics, patternDays, seed);
  const places = placesOf(patternDays);
  const placesFrom = (at: number): readonly number[] => {
    const date = needThere('recordedWeather', 'date', monthDay[at]);
    return needThere('recordedWeather', `made-up ${date}`, places.get(date));
  };

  const rainMm = new Float64Array(days).fill(Number.NaN);
  let laidOutDays = 0;
  for (const { day, amountIn, days: over = 1 } of readings) {
    const from = day - firstDay - over + 1;
    if (over === 1) {
      rainMm[from] = amountIn * mmPerIn;
      continue;
    }
    laidOutDays += over;
    layOut(rainMm, { from, days: over, totalMm: amountIn * mmPerIn }, patterns, placesFrom(from));
  }

  const run = rainMm.map((rain) => (Number.isNaN(rain) ? 0 : rain));
  const noRain: number[] = [];
  let gaps = 0;
  for (let from = 0; from < days; from += 1) {
    if (!Number.isNaN(rainMm[from])) continue;
    let to = from;
    while (to < days && Number.isNaN(rainMm[to])) to += 1;
    gaps += 1;
    for (let at = from; at < to; at += 1) {
      noRain.push(at);
      // So many days at either end run dry: a gap may reach over turn-out into a year that counts, and in such a year no rain is filled in.
      if (at - from < mostDaysWithoutRain || to - at <= mostDaysWithoutRain) continue;
      // Each gap, and each year of a long one, by the days of another made-up year, in their order.
      const list = placesFrom(at);
      const year = needThere('recordedWeather', 'made-up year', list[(gaps + Math.floor((at - from) / 366)) % list.length]);
      run[at] = numberAt(patterns, year);
    }
    from = to;
  }

  const made = generatedTemperatures(statistics, { monthDay, rainMm: run, seed });
  const { high, low } = temperaturesOf(readings, firstDay, days);
  const [highs, lows] = [makeUpUnknown(high, made.maxTempC, monthDay), makeUpUnknown(low, made.minTempC, monthDay)];
  // A made-up one gives way to one that was read.
  high.forEach((each, at) => {
    const other = numberAt(low, at);
    if (!(each < other)) return;
    if (highs[at] === 1) high[at] = other;
    else low[at] = each;
  });
  const filled = filledWeather({ first: dateOf(firstDay), rainMm: run, maxTempC: high, minTempC: low });
  if (filled.kind === 'refused') throw new RangeError(`recordedWeather left ${filled.why} at ${filled.at}`);
  const { weather } = filled;
  for (const at of noRain) weather.madeUp[at] = needThere('recordedWeather', 'day', weather.madeUp[at]) | MADE_UP.noRain;
  let [madeUpTemperatureDays, bridgedTemperatureDays] = [0, 0];
  weather.madeUp.forEach((bits, at) => {
    if (highs[at] === 1 || lows[at] === 1) madeUpTemperatureDays += 1;
    else if ((bits & (MADE_UP.byLine | MADE_UP.byOtherYears)) !== 0) bridgedTemperatureDays += 1;
  });
  return { weather, days, laidOutDays, noRainDays: noRain.length, madeUpTemperatureDays, bridgedTemperatureDays };
}
