import * as fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { daysWithoutRain, yearsFrom, yearsIn } from '../../calculators/season/hayYears.ts';
import { type Reading, recordedWeather } from '../../calculators/season/recordedWeather.ts';
import { isLeapYear, MADE_UP, monthOf } from '../../calculators/season/weather.ts';
import { near } from '../support/near.ts';
import { demoWeather } from '../support/seasonPlace.ts';

vi.setConfig({ testTimeout: 30_000 });
const mmPerIn = 25.4;
/** The demo place's usual year. */
const months = [2.2, 2.1, 3.2, 3.9, 4.9, 4.6, 2.9, 2.5, 3.1, 3.2, 2.9, 2.4].map((rainIn, month) => ({
  rainIn,
  wetDays: 9,
  highF: 65 - 23 * Math.cos((2 * Math.PI * month) / 12),
  lowF: 44 - 22 * Math.cos((2 * Math.PI * month) / 12),
}));
const dayOf = (date: string): number => Date.parse(date) / 86_400_000;
const daily = (from: string, to: string, of: (at: number) => Partial<Reading> = () => ({})): readonly Reading[] =>
  Array.from({ length: dayOf(to) - dayOf(from) + 1 }, (_, at) => ({ day: dayOf(from) + at, amountIn: 0, ...of(at) }));
const without = (readings: readonly Reading[], from: string, to: string): readonly Reading[] =>
  readings.filter(({ day }) => day < dayOf(from) || day > dayOf(to));
const sum = (numbers: Float64Array, from = 0, to = numbers.length): number => numbers.slice(from, to).reduce((all, each) => all + each, 0);
/** Each calendar month of the demo place's thirty years as one total. */
function demoMonths(): readonly Reading[] {
  const { rainMm, year, monthDay } = demoWeather();
  const totals = new Map<string, { day: number; amountIn: number; days: number }>();
  rainMm.forEach((mm, at) => {
    const key = `${year[at]}-${monthOf(Number(monthDay[at]))}`;
    const before = totals.get(key) ?? { day: 0, amountIn: 0, days: 0 };
    totals.set(key, { day: dayOf('1996-01-01') + at, amountIn: before.amountIn + mm / mmPerIn, days: before.days + 1 });
  });
  return [...totals.values()];
}

describe('the years of a record', () => {
  it('take each day as it was read', () => {
    const { weather, ...told } = recordedWeather(
      daily('2001-02-27', '2001-03-02', (at) => ({ amountIn: at / 4 })),
      months,
      1,
    );
    expect([...weather.rainMm]).toEqual([0, 0.25, 0.5, 0.75].map((inches) => inches * mmPerIn));
    expect([...weather.monthDay]).toEqual([227, 228, 301, 302]);
    expect(told).toEqual({ days: 4, laidOutDays: 0, noRainDays: 0, madeUpTemperatureDays: 4, bridgedTemperatureDays: 0 });
  });
  it('keep every total, whatever its days, and put no rain on the days beside it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.double({ min: 0, max: 30, noNaN: true })), { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 1, max: 999 }),
        fc.integer({ min: 0, max: 1500 }),
        (spans, seed, start) => {
          let day = dayOf('2000-01-01') + start - 1;
          const readings = spans.map(([days, amountIn]) => {
            day += days;
            return { day, amountIn, days };
          });
          const { rainMm } = recordedWeather(readings, months, seed).weather;
          let from = 0;
          for (const { days, amountIn } of readings) {
            near(sum(rainMm, from, from + days), amountIn * mmPerIn, 1e-9 * (1 + amountIn));
            from += days;
          }
          expect(from).toBe(rainMm.length);
          expect(rainMm.every((mm) => mm >= 0)).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });
  it('lay a month out like days of such a month: as many wet ones, and storms as large', () => {
    // The demo place's own days, added up by month and laid out again, are of its kind: its wet days and its heavy rain within a fifth, its large storms within a third.
    const demo = demoWeather().rainMm;
    const usual = [9.1, 8.7, 10.7, 11.2, 11.9, 10.2, 7.6, 6.8, 7.7, 7.6, 8.6, 8.8].map((wetDays, at) => ({ ...months[at], wetDays }));
    const { weather, laidOutDays, days } = recordedWeather(
      demoMonths(),
      months.map((month, at) => ({ ...month, wetDays: Number(usual[at]?.wetDays) })),
      50,
    );
    expect([laidOutDays, days]).toEqual([demo.length, demo.length]);
    const over = (rain: Float64Array, mm: number): number => rain.filter((each) => each > mm).length;
    for (const [mm, within] of [
      [0.25, 0.2],
      [25, 0.2],
      [50, 0.34],
    ] as const) {
      expect(Math.abs(over(weather.rainMm, mm) / over(demo, mm) - 1), `${mm} mm`).toBeLessThan(within);
    }
    near(sum(weather.rainMm), sum(demo), 1e-6);
  });
  it('lay a total evenly where made-up years have no rain', () => {
    const dry = months.map((month) => ({ ...month, rainIn: 0 }));
    expect([...recordedWeather([{ day: dayOf('2001-07-04'), amountIn: 2, days: 4 }], dry, 1).weather.rainMm]).toEqual([12.7, 12.7, 12.7, 12.7]);
  });
  it('lay a February out in a leap year and in another', () => {
    for (const year of [2000, 2001]) {
      const length = isLeapYear(year) ? 29 : 28;
      const { weather } = recordedWeather([{ day: dayOf(`${year}-02-${length}`), amountIn: 3, days: length }], months, 1);
      expect(weather.days).toBe(length);
      near(sum(weather.rainMm), 3 * mmPerIn, 1e-9);
    }
  });
  it('give the same days for the same throw, and others for another', () => {
    const laid = (seed: number) => [...recordedWeather(demoMonths().slice(0, 12), months, seed).weather.rainMm];
    expect(laid(3)).toEqual(laid(3));
    expect(laid(4)).not.toEqual(laid(3));
  });
});

describe('rain that nobody read', () => {
  const eight = daily('2001-04-20', '2009-04-19', () => ({ amountIn: 0.1 }));
  it('runs dry for three days at either end, and with made-up rain between, marked either way', () => {
    const { weather, noRainDays } = recordedWeather(without(eight, '2003-06-10', '2003-06-12'), months, 1);
    const from = dayOf('2003-06-10') - dayOf('2001-04-20');
    expect(noRainDays).toBe(3);
    expect([...weather.rainMm.slice(from - 1, from + 4)]).toEqual([0.1 * mmPerIn, 0, 0, 0, 0.1 * mmPerIn]);
    expect([...weather.madeUp.slice(from - 1, from + 4)].map((bits) => bits & MADE_UP.noRain)).toEqual([0, 4, 4, 4, 0]);
    const long = recordedWeather(without(eight, '2003-05-01', '2004-10-31'), months, 1);
    const [gapFrom, gapTo] = [dayOf('2003-05-01') - dayOf('2001-04-20'), dayOf('2004-10-31') - dayOf('2001-04-20') + 1];
    // 18 months of the usual year take about 57 in.
    expect(sum(long.weather.rainMm, gapFrom, gapTo) / mmPerIn).toBeGreaterThan(35);
    expect(sum(long.weather.rainMm, gapFrom, gapTo) / mmPerIn).toBeLessThan(85);
    expect(long.noRainDays).toBe(gapTo - gapFrom);
  });
  it('is made up where more than three days lie to either end, and nowhere else', () => {
    const wet = months.map((month) => ({ ...month, rainIn: 12, wetDays: 28 }));
    const inGap = (to: string): number => {
      const { weather } = recordedWeather(without(eight, '2003-06-10', to), wet, 1);
      const from = dayOf('2003-06-10') - dayOf('2001-04-20');
      return sum(weather.rainMm, from, from + dayOf(to) - dayOf('2003-06-10') + 1);
    };
    expect(inGap('2003-06-12')).toBe(0);
    expect(inGap('2003-06-15')).toBe(0);
    expect(inGap('2003-06-16')).toBeGreaterThan(0);
  });
  it('is never filled in a hay year that counts, wherever its gaps lie', () => {
    const wet = months.map((month) => ({ ...month, rainIn: 12, wetDays: 28 }));
    const spans = fc.array(fc.tuple(fc.integer({ min: 300, max: 1500 }), fc.integer({ min: 1, max: 12 })), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(spans, (gaps) => {
        const read = eight.filter((_, at) => !gaps.some(([from, days]) => at >= from && at < from + days));
        const { weather } = recordedWeather(read, wet, 1);
        const periods = yearsFrom(weather, 420);
        const unread = daysWithoutRain(weather, periods);
        const filled = [...periods.period].filter(
          (period, at) => Number(unread[period]) <= 3 && (Number(weather.madeUp[at]) & MADE_UP.noRain) !== 0 && Number(weather.rainMm[at]) > 0,
        );
        expect(filled).toEqual([]);
      }),
      // A gap over turn-out, short and long, and one day from it.
      { numRuns: 20, examples: [[[[362, 6]]], [[[363, 7]]], [[[364, 4]]], [[[361, 12]]]] },
    );
  });
  it('leaves its hay years out of those that count', () => {
    const counted = (readings: readonly Reading[]) => yearsIn(recordedWeather(readings, months, 1).weather, 420);
    expect(counted(eight)).toEqual({ whole: 8, counted: 8 });
    expect(counted(without(eight, '2003-06-10', '2003-06-12'))).toEqual({ whole: 8, counted: 8 });
    expect(counted(without(eight, '2003-06-10', '2003-06-13'))).toEqual({ whole: 8, counted: 7 });
    // Over two turn-outs.
    expect(counted(without(eight, '2003-03-01', '2004-06-30'))).toEqual({ whole: 8, counted: 5 });
    expect(yearsFrom(recordedWeather(eight, months, 1).weather, 420).whole).toHaveLength(8);
  });
});

describe('temperatures', () => {
  it('that were read are used; gaps take a straight line or the other years, and are counted', () => {
    const readings = daily('2001-01-01', '2003-12-31', (at) => (at >= 100 && at < 104 ? {} : at >= 500 && at < 510 ? {} : { highF: 77, lowF: 50 }));
    const { weather, madeUpTemperatureDays, bridgedTemperatureDays } = recordedWeather(readings, months, 1);
    expect([madeUpTemperatureDays, bridgedTemperatureDays]).toEqual([0, 14]);
    for (const at of [0, 101, 505]) {
      near(Number(weather.maxTempC[at]), 25, 1e-9);
      near(Number(weather.minTempC[at]), 10, 1e-9);
    }
  });
  it('of dates that no year read are made up, near their usual, with no high below its low', () => {
    const readings = daily('2001-01-01', '2003-12-31', (at) => (at % 365 < 180 ? { highF: 60, lowF: 59 } : {}));
    const { weather, madeUpTemperatureDays } = recordedWeather(readings, months, 1);
    expect(madeUpTemperatureDays).toBe(3 * 185);
    expect(weather.maxTempC.every((high, at) => high >= Number(weather.minTempC[at]))).toBe(true);
    const july = weather.maxTempC.filter((_, at) => monthOf(Number(weather.monthDay[at])) === 7);
    near(sum(july) / july.length, (88 - 32) / 1.8, 2.5);
  });
  it('with a high below its low are not believed', () => {
    const readings = daily('2001-01-01', '2002-12-31', (at) => (at === 40 ? { highF: 40, lowF: 70 } : { highF: 70, lowF: 40 }));
    const { weather, bridgedTemperatureDays } = recordedWeather(readings, months, 1);
    expect(bridgedTemperatureDays).toBe(1);
    near(Number(weather.maxTempC[40]), (70 - 32) / 1.8, 1e-9);
  });
});
