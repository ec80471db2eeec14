import { need, needThere } from '../math/need.ts';
import { chainFromMonth } from '../math/weather/chainFromMonth.ts';
import { generatedWeather, type WeatherStatistics } from './generatedWeather.ts';
import type { Weather } from './weather.ts';

/** A usual year in twelve lines, as stations print it: rain, days with rain, high and low. */
export interface UsualMonth {
  readonly rainIn: number;
  readonly wetDays: number;
  readonly highF: number;
  readonly lowF: number;
}

const mmPerIn = 25.4;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const perF = 1 / 1.8;
const lengths = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** How temperatures scatter about their usual, where nobody knows it of the place: wider in winter. Our own, of the size that stations in mid-latitudes show. */
const spreadF = { winter: 11, summer: 6 };
const scatter = { dayToDayCorrelation: 0.65, highToLowCorrelation: 0.8, wetDayHighDropC: 6 * perF, wetDayLowRiseC: perF, leastDailyRangeC: 2 * perF };
const firstYear = 2001;

/** A wave through the year between what the coldest and the hottest month have, January first. The hottest is July in the north, January in the south. */
export function usualByMonth({
  coldest,
  hottest,
  isSouth,
}: {
  readonly coldest: number;
  readonly hottest: number;
  readonly isSouth: boolean;
}): number[] {
  const warmest = isSouth ? 0 : 6;
  return lengths.map((_, month) => (hottest + coldest) / 2 + ((hottest - coldest) / 2) * Math.cos((2 * Math.PI * (month - warmest)) / 12));
}

/** What a usual year says of days. Coldest and warmest month set when temperatures scatter most and least. */
export function usualStatistics(months: readonly UsualMonth[]): WeatherStatistics {
  need('usualStatistics', 'months.length', months.length, { atLeast: 12, atMost: 12 });
  const highs = months.map(({ highF }) => highF);
  const [coldest, warmest] = [Math.min(...highs), Math.max(...highs)];
  return {
    ...scatter,
    months: months.map(({ rainIn, wetDays, highF, lowF }, index) => {
      const days = needThere('usualStatistics', `month ${index + 1}`, lengths[index]);
      const warm = warmest > coldest ? (highF - coldest) / (warmest - coldest) : 1;
      const spread = (spreadF.winter + (spreadF.summer - spreadF.winter) * warm) * perF;
      return {
        rain: chainFromMonth({ rainMm: rainIn * mmPerIn, wetDays, days }),
        meanMaxTempC: celsius(highF),
        meanMinTempC: celsius(lowF),
        spreadMaxTempC: spread,
        spreadMinTempC: spread * 0.9,
      };
    }),
  };
}

/** Years made up from a usual year. The same throw gives the same years. */
export const monthlyWeather = (months: readonly UsualMonth[], { years, seed }: { readonly years: number; readonly seed: number }): Weather =>
  generatedWeather(usualStatistics(months), { firstYear, years, seed });
