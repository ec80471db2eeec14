import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { chainTotal, wetDayCounts, wetDayShare } from '../../calculators/math/weather/wetDayChain.ts';
import { dayMs } from '../../calculators/units/days.ts';
import { place } from '../../content/place/place.ts';
import { readWeather, weatherCsv, weatherRecord } from '../../content/place/weatherRecord.ts';
import { weatherSettingsSchema } from '../../content/place/weatherSchema.ts';
import settingsData from '../../content/place/weatherSettings.json' with { type: 'json' };
import { root } from '../support/files.ts';

const settings = v.parse(weatherSettingsSchema, settingsData);
const text = readFileSync(join(root, 'content/place/weather.csv'), 'utf8');
const record = readWeather(text);
const mmPerIn = 25.4;
/** Two-sided normal limit for one chance in a thousand. Each month is tried by several figures, so a tighter limit would cry wolf. */
const limit = 3.29;

// Chain and curve are written out here once more, from the settings and what the README says of them, so that a slip in the generator shows.
const chainOf = (month: (typeof settings.months)[number]) => ({
  wetAfterWet: month.wetAfterWetChance,
  wetAfterDry: month.wetAfterDryChance,
  shape: month.amountShape,
  scaleMm: month.amountScaleIn * mmPerIn,
});
const { highMeanF, highSwingF, lowMeanF, lowSwingF, warmestDayOfYear, dayToDayCorrelation } = settings.temperature;
const cosineOn = (day: string): number => {
  const daysFromWarmest = (Date.parse(day) - Date.parse(`${day.slice(0, 4)}-01-01`)) / dayMs + 1 - warmestDayOfYear;
  return Math.cos((2 * Math.PI * daysFromWarmest) / 365.25);
};
const monthOf = (day: string): number => Number(day.slice(5, 7));
const daysIn = (month: number) => record.filter(({ day }) => monthOf(day) === month);
const meanOf = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;
/** How much more the mean of n days strays when each day leans on the one before, as variance. */
const leaning = (r: number): number => (1 + r) / (1 - r);

describe('the demo place’s weather', () => {
  it('is byte for byte what the generator makes again', () => {
    expect(weatherCsv(weatherRecord(settings)) === text).toBe(true);
  });

  it('hangs on its seed', () => {
    expect(weatherCsv(weatherRecord({ ...settings, seed: settings.seed + 1 })) === text).toBe(false);
  });

  it('has every day of thirty years', () => {
    expect(record).toHaveLength(10_958);
    expect(record[0]?.day).toBe('1996-01-01');
    expect(record.at(-1)?.day).toBe('2025-12-31');
    const gaps = record.filter(({ day }, index) => index > 0 && Date.parse(day) - Date.parse(record[index - 1]?.day ?? '') !== dayMs);
    expect(gaps).toEqual([]);
  });

  it('has 12 months in their order in the settings, and about 38 in a year', () => {
    expect(settings.months.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    // Over four years, so that February counts its leap day.
    const fourYearsMm = settings.months.reduce(
      (sum, month, index) =>
        sum + chainTotal(chainOf(month), ((Date.UTC(1997, index + 1) - Date.UTC(1997, index)) / dayMs) * 4 + (index === 1 ? 1 : 0)).meanMm,
      0,
    );
    const yearIn = fourYearsMm / 4 / mmPerIn;
    expect(Math.abs(yearIn - 38)).toBeLessThan(0.5);
  });

  it.each(settings.months)('has the rain of its settings in month $month, by the variance of a chain’s total (Katz 1977)', (month) => {
    const days = daysIn(month.month);
    const { meanMm, varianceMm2 } = chainTotal(chainOf(month), days.length);
    const totalMm = days.reduce((sum, { rainIn }) => sum + rainIn * mmPerIn, 0);
    expect(Math.abs(totalMm - meanMm) / Math.sqrt(varianceMm2)).toBeLessThan(limit);
  });

  it('has the rain of its settings over 300 years with a seed that nobody picked, where a few percent would show', () => {
    const long = weatherRecord({ ...settings, seed: 101, firstDay: '1800-01-01', lastDay: '2099-12-31' });
    const totals = settings.months.map((month) => chainTotal(chainOf(month), long.filter(({ day }) => monthOf(day) === month.month).length));
    const meanMm = totals.reduce((sum, total) => sum + total.meanMm, 0);
    const errorMm = Math.sqrt(totals.reduce((sum, total) => sum + total.varianceMm2, 0));
    expect((limit * errorMm) / meanMm).toBeLessThan(0.03);
    expect(Math.abs(long.reduce((sum, { rainIn }) => sum + rainIn * mmPerIn, 0) - meanMm) / errorMm).toBeLessThan(limit);
  });

  it.each(settings.months)('has the wet days of its settings in month $month', ({ month, wetAfterWetChance, wetAfterDryChance }) => {
    const days = daysIn(month);
    const share = wetDayShare(wetAfterWetChance, wetAfterDryChance);
    const error = Math.sqrt((share * (1 - share) * leaning(wetAfterWetChance - wetAfterDryChance)) / days.length);
    expect(Math.abs(meanOf(days.map(({ rainIn }) => (rainIn > 0 ? 1 : 0))) - share) / error).toBeLessThan(limit);
  });

  it.each(settings.months)('goes from wet to wet and from dry to wet as often as its settings say in month $month', (month) => {
    const counts = wetDayCounts(
      record.map(({ rainIn }) => rainIn),
      record.map(({ day }) => monthOf(day)),
    )[month.month - 1];
    const chances = [
      [counts?.wetToWet ?? 0, counts?.wetToDry ?? 0, month.wetAfterWetChance],
      [counts?.dryToWet ?? 0, counts?.dryToDry ?? 0, month.wetAfterDryChance],
    ] as const;
    for (const [wet, dry, chance] of chances) {
      const error = Math.sqrt((chance * (1 - chance)) / (wet + dry));
      expect(Math.abs(wet / (wet + dry) - chance) / error).toBeLessThan(limit);
    }
  });

  it.each(settings.months)('lies on the curve of the year in month $month', (month) => {
    const days = daysIn(month.month);
    const error = (spreadF: number): number => spreadF * Math.sqrt(leaning(dayToDayCorrelation) / days.length);
    const highOff = meanOf(days.map(({ day, highF }) => highF - highMeanF - highSwingF * cosineOn(day)));
    const lowOff = meanOf(days.map(({ day, lowF }) => lowF - lowMeanF - lowSwingF * cosineOn(day)));
    expect(Math.abs(highOff) / error(month.highSpreadF)).toBeLessThan(limit);
    // The low is held under the high on a few days, which moves its mean by less than a tenth of a degree.
    expect((Math.abs(lowOff) - 0.1) / error(month.lowSpreadF)).toBeLessThan(limit);
  });

  it('strays from the curve, and keeps its straying, as its settings say', () => {
    const { wetDayHighDropF, wetDayLowRiseF, highToLowCorrelation } = settings.temperature;
    // Dry days alone: the shift of wet ones is then a constant of the month.
    const departures = record.map(({ day, rainIn, highF, lowF }) => {
      const month = settings.months[monthOf(day) - 1];
      if (month === undefined || rainIn > 0) return undefined;
      const share = wetDayShare(month.wetAfterWetChance, month.wetAfterDryChance);
      return {
        high: (highF - highMeanF - highSwingF * cosineOn(day) - wetDayHighDropF * share) / month.highSpreadF,
        low: (lowF - lowMeanF - lowSwingF * cosineOn(day) + wetDayLowRiseF * share) / month.lowSpreadF,
      };
    });
    const dry = departures.filter((each) => each !== undefined);
    const pairs = departures.flatMap((today, index) => {
      const before = departures[index - 1];
      return today && before ? [{ today, before }] : [];
    });
    const error = Math.sqrt((2 * leaning(dayToDayCorrelation ** 2)) / dry.length);
    expect(Math.abs(meanOf(dry.map(({ high }) => high ** 2)) - 1) / error).toBeLessThan(limit);
    expect(Math.abs(meanOf(dry.map(({ low }) => low ** 2)) - 1) / error).toBeLessThan(limit);
    // Products of two departures stray no further than their squares.
    expect(Math.abs(meanOf(pairs.map(({ today, before }) => today.high * before.high)) - dayToDayCorrelation) / error).toBeLessThan(limit);
    expect(Math.abs(meanOf(dry.map(({ high, low }) => high * low)) - highToLowCorrelation) / error).toBeLessThan(limit);
  });

  it('is cooler by day when it rains, and never has a low near its high', () => {
    const july = daysIn(7);
    const highs = (isWet: boolean): number => meanOf(july.filter(({ rainIn }) => rainIn > 0 === isWet).map(({ highF }) => highF));
    expect(highs(true)).toBeLessThan(highs(false) - 3);
    // Both are rounded to whole degrees.
    expect(Math.min(...record.map(({ highF, lowF }) => highF - lowF))).toBeGreaterThanOrEqual(settings.temperature.leastDailyRangeF - 1);
  });

  it('has the years under 30 in that the README names', () => {
    const totals = new Map<string, number>();
    for (const { day, rainIn } of record) totals.set(day.slice(0, 4), (totals.get(day.slice(0, 4)) ?? 0) + rainIn);
    const dry = [...totals].filter(([, totalIn]) => totalIn < 30).map(([year]) => year);
    expect(readFileSync(join(root, 'content/place/README.md'), 'utf8')).toContain(
      `four dry years, ${dry.slice(0, -1).join(', ')} and ${dry.at(-1)}.`,
    );
    expect(dry).toHaveLength(4);
  });

  it('has the rain that the first visit wrote down', () => {
    const [visit] = place.visits;
    const at = record.findIndex(({ day }) => day === visit?.day);
    const before = record.slice(0, at).reverse();
    expect(before.findIndex(({ rainIn }) => rainIn > 0) + 1).toBe(visit?.daysSinceRain);
    const fiveDayRainIn = before.slice(0, 5).reduce((sum, { rainIn }) => sum + rainIn, 0);
    expect(fiveDayRainIn.toFixed(2)).toBe(visit?.fiveDayRainIn.toFixed(2));
  });
});
