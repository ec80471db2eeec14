import { need, needThere } from '../math/need.ts';
import { calendarFrom, type DailyRecord, MADE_UP, type Weather } from './weather.ts';

/** Days of a missing temperature that a straight line may bridge. */
const lineDays = 5;

/** How many days of the record were made up, and how. */
export interface Gaps {
  readonly temperatureByLineDays: number;
  readonly temperatureByOtherYearsDays: number;
  /** Days without a reading of rain. They are run as dry and never filled; a hay year with more than a few of them is not counted. */
  readonly noRainDays: number;
}
/** Why a record cannot be run. */
export type Refusal = 'no-days' | 'no-rain-at-all' | 'rain-below-nothing' | 'high-below-low' | 'temperature-in-no-year';
export type Filled =
  | { readonly kind: 'filled'; readonly weather: Weather; readonly gaps: Gaps }
  /** `at`: the first day to which it applies, counted from 0. */
  | { readonly kind: 'refused'; readonly why: Refusal; readonly at: number };

/** Sums and counts of one reading on each day of the calendar, over all years. */
function byMonthDay(readings: Float64Array, monthDay: Int32Array): ReadonlyMap<number, { sum: number; count: number }> {
  const found = new Map<number, { sum: number; count: number }>();
  readings.forEach((reading, at) => {
    const day = monthDay[at];
    if (day === undefined || Number.isNaN(reading)) return;
    const before = found.get(day) ?? { sum: 0, count: 0 };
    found.set(day, { sum: before.sum + reading, count: before.count + 1 });
  });
  return found;
}

/** Fills one reading in place by the rule; gives the first day that no year can fill, or nothing. */
function fillReading(readings: Float64Array, monthDay: Int32Array, madeUp: Uint8Array): number | undefined {
  if (readings.findIndex(Number.isNaN) < 0) return undefined;
  const usual = byMonthDay(readings, monthDay);
  const mark = (at: number, bit: number): void => {
    madeUp[at] = needThere('filledWeather', `day ${at}`, madeUp[at]) | bit;
  };
  for (let from = 0; from < readings.length; from += 1) {
    if (!Number.isNaN(readings[from])) continue;
    let to = from;
    while (to < readings.length && Number.isNaN(readings[to])) to += 1;
    const [before, after] = [readings[from - 1], readings[to]];
    const isLine = to - from <= lineDays && before !== undefined && after !== undefined;
    for (let at = from; at < to; at += 1) {
      if (isLine) {
        readings[at] = before + ((after - before) * (at - from + 1)) / (to - from + 1);
        mark(at, MADE_UP.byLine);
        continue;
      }
      // A leap day that no other year has takes the day before.
      const day = needThere('filledWeather', `day ${at}`, monthDay[at]);
      const others = usual.get(day) ?? (day === 229 ? usual.get(228) : undefined);
      if (others === undefined) return at;
      readings[at] = others.sum / others.count;
      mark(at, MADE_UP.byOtherYears);
    }
    from = to;
  }
  return undefined;
}

const countOf = (madeUp: Uint8Array, bit: number): number => madeUp.reduce((sum, each) => sum + ((each & bit) === 0 ? 0 : 1), 0);

/**
 * A record made whole by one stated rule, or refused. A temperature missing for up to five days is read off a straight line between the days beside it,
 * a longer gap takes the mean of the same days in the other years; a made-up high never lies below a low that was read, nor a made-up low above a high.
 * Rain is never made up.
 */
export function filledWeather(record: DailyRecord): Filled {
  const days = record.rainMm.length;
  need('filledWeather', 'maxTempC.length', record.maxTempC.length, { atLeast: days, atMost: days });
  need('filledWeather', 'minTempC.length', record.minTempC.length, { atLeast: days, atMost: days });
  if (days === 0) return { kind: 'refused', why: 'no-days', at: 0 };
  if (record.rainMm.every(Number.isNaN)) return { kind: 'refused', why: 'no-rain-at-all', at: 0 };
  const negative = record.rainMm.findIndex((rain) => rain < 0);
  if (negative >= 0) return { kind: 'refused', why: 'rain-below-nothing', at: negative };
  const crossed = record.maxTempC.findIndex((high, at) => high < Number(record.minTempC[at]));
  if (crossed >= 0) return { kind: 'refused', why: 'high-below-low', at: crossed };

  const { year, monthDay } = calendarFrom(record.first, days);
  const madeUp = new Uint8Array(days);
  const [rainMm, maxTempC, minTempC] = [record.rainMm.slice(), record.maxTempC.slice(), record.minTempC.slice()];
  rainMm.forEach((rain, at) => {
    if (!Number.isNaN(rain)) return;
    rainMm[at] = 0;
    madeUp[at] = MADE_UP.noRain;
  });
  for (const readings of [maxTempC, minTempC]) {
    const unknown = fillReading(readings, monthDay, madeUp);
    if (unknown !== undefined) return { kind: 'refused', why: 'temperature-in-no-year', at: unknown };
  }
  maxTempC.forEach((high, at) => {
    const low = minTempC[at];
    if (low === undefined || low <= high) return;
    if (Number.isNaN(record.minTempC[at])) minTempC[at] = high;
    else maxTempC[at] = low;
  });
  return {
    kind: 'filled',
    weather: { days, year, monthDay, rainMm, maxTempC, minTempC, madeUp },
    gaps: {
      temperatureByLineDays: countOf(madeUp, MADE_UP.byLine),
      temperatureByOtherYearsDays: countOf(madeUp, MADE_UP.byOtherYears),
      noRainDays: countOf(madeUp, MADE_UP.noRain),
    },
  };
}
