import { needThere } from '../math/need.ts';
import { generatedRainMm } from '../math/weather/generatedRainMm.ts';
import { seededRandom } from '../math/weather/seededRandom.ts';
import { temperatureDepartures } from '../math/weather/temperatureDepartures.ts';
import { type WetDayChain, wetDayShare } from '../math/weather/wetDayChain.ts';
import { numberAt, wholeAt } from './flat.ts';
import { calendarFrom, type Days, dayOf, monthOf, type Weather, wholeYear } from './weather.ts';

/** A month of the year as statistics give it. */
export interface MonthStatistics {
  readonly rain: WetDayChain;
  readonly meanMaxTempC: number;
  readonly meanMinTempC: number;
  /** Standard deviation of a day's high and low from their usual. */
  readonly spreadMaxTempC: number;
  readonly spreadMinTempC: number;
}
export interface WeatherStatistics {
  /** January to December. */
  readonly months: readonly MonthStatistics[];
  readonly dayToDayCorrelation: number;
  readonly highToLowCorrelation: number;
  /** How much cooler the high, and how much warmer the low, of a wet day is than of a dry one. */
  readonly wetDayHighDropC: number;
  readonly wetDayLowRiseC: number;
  /** Least that the high lies above the low. */
  readonly leastDailyRangeC: number;
}

const daysInYears = (firstYear: number, years: number): number => (Date.UTC(firstYear + years, 0, 1) - Date.UTC(firstYear, 0, 1)) / 86_400_000;

/**
 * A month's number on a given day, straight between the middles of the months, so that no month begins with a jump. The middle of each month then keeps its
 * own mean, and the mean over the month stays within a few tenths of it.
 */
function between(months: readonly MonthStatistics[], of: (month: MonthStatistics) => number, month: number, day: number): number {
  const at = (index: number): number => of(needThere('generatedWeather', 'month', months[(index + 12) % 12]));
  const past = (day - 15.5) / 30.4;
  const [here, beside] = [at(month - 1), at(month - 1 + Math.sign(past))];
  return here + (beside - here) * Math.abs(past);
}

/** The same on each day of the calendar, worked out once for all years. */
const byDate = ({ months }: WeatherStatistics, of: (month: MonthStatistics) => number): Float64Array =>
  Float64Array.from({ length: wholeYear.to }, (_, date) => between(months, of, monthOf(date), dayOf(date)));

/** Rain of each of these days by the chain of its month, mm. The same seed gives the same rain. */
export function generatedRain({ months }: WeatherStatistics, monthDay: Int32Array, seed: number): Float64Array {
  return new Float64Array(generatedRainMm({ months: monthDay.map(monthOf), chains: months.map((month) => month.rain), random: seededRandom(seed) }));
}

/** Temperatures about their usual for the day, cooler by day when it rains. */
export function generatedTemperatures(
  statistics: WeatherStatistics,
  { monthDay, rainMm, seed }: { readonly monthDay: Int32Array; readonly rainMm: Float64Array; readonly seed: number },
): Pick<Days, 'maxTempC' | 'minTempC'> {
  // From a source of their own, so that a change to them leaves the rain as it was.
  const departures = temperatureDepartures({ ...statistics, random: seededRandom(seed + 1) });
  const [maxTempC, minTempC] = [new Float64Array(monthDay.length), new Float64Array(monthDay.length)];
  const wetShare = Float64Array.from(statistics.months, ({ rain }) => wetDayShare(rain.wetAfterWet, rain.wetAfterDry));
  const [meanMax, meanMin] = [byDate(statistics, (each) => each.meanMaxTempC), byDate(statistics, (each) => each.meanMinTempC)];
  const [spreadMax, spreadMin] = [byDate(statistics, (each) => each.spreadMaxTempC), byDate(statistics, (each) => each.spreadMinTempC)];
  for (let at = 0; at < monthDay.length; at += 1) {
    const date = wholeAt(monthDay, at);
    const { high, low } = departures();
    // Measured from the month's share of wet days, the shift of wet days leaves the month's mean where it is.
    const wetter = (numberAt(rainMm, at) > 0 ? 1 : 0) - numberAt(wetShare, monthOf(date) - 1);
    const maximum = numberAt(meanMax, date) - statistics.wetDayHighDropC * wetter + numberAt(spreadMax, date) * high;
    const minimum = numberAt(meanMin, date) + statistics.wetDayLowRiseC * wetter + numberAt(spreadMin, date) * low;
    maxTempC[at] = maximum;
    minTempC[at] = Math.min(minimum, maximum - statistics.leastDailyRangeC);
  }
  return { maxTempC, minTempC };
}

/**
 * Weather made up from monthly statistics: wet and dry days by the month's chain, and temperatures that go with them. The same seed gives the same days.
 * Such weather has no long droughts, so odds from it are too kind.
 */
export function generatedWeather(
  statistics: WeatherStatistics,
  { firstYear, years, seed }: { readonly firstYear: number; readonly years: number; readonly seed: number },
): Weather {
  const days = daysInYears(firstYear, years);
  const { year, monthDay } = calendarFrom({ year: firstYear, month: 1, day: 1 }, days);
  const rainMm = generatedRain(statistics, monthDay, seed);
  return { days, year, monthDay, rainMm, ...generatedTemperatures(statistics, { monthDay, rainMm, seed }), madeUp: new Uint8Array(days) };
}
