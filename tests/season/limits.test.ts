import { beforeAll, describe, expect, it, vi } from 'vitest';
import { run } from '../../calculators/season/run.ts';
import type { Side } from '../../calculators/season/side.ts';
import type { Sky } from '../../calculators/season/sky.ts';
import type { Weather } from '../../calculators/season/weather.ts';
import { type HayYear, hayYearsOf } from '../../calculators/season/years.ts';
import { bothWays } from '../support/seasonDays.ts';
import {
  changedWeather,
  demoStock,
  demoWeather,
  manyPaddocks,
  type PlaceOptions,
  type Rates,
  ratesFor,
  sideOf,
  skyWith,
  wholeWeather,
} from '../support/seasonPlace.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
const weather = demoWeather();
const sky = skyWith(weather);
let rates: Rates;
beforeAll(() => {
  rates = ratesFor(sky);
});
const rotated: PlaceOptions = { ...manyPaddocks, management: { ...manyPaddocks.management, stubbleLbPerAc: 800, pullBelowDays: 10 } };
const fiveYears = { from: 0, to: 5 * 365 + 2 };

/** Means over the whole calendar years of a run. */
function meansOf(on: Sky, of: Weather, side: Side) {
  const years = hayYearsOf(run(on, side, { from: 101, hasRunUp: false }), of);
  const mean = (pick: (year: HayYear) => number): number => years.reduce((sum, each) => sum + pick(each), 0) / years.length;
  return {
    count: years.length,
    grownLbPerAc: mean((year) => year.grownLbPerAc),
    transpirationMm: mean((year) => year.transpirationMm),
    runoffMm: mean((year) => year.runoffMm),
    drainageMm: mean((year) => year.drainageMm),
    needTons: mean((year) => year.needTons),
    eatenLbPerAc: mean((year) => year.eatenLbPerAc),
    coverShare: mean((year) => year.coverShare),
    isFinite: years.every((year) => Object.values(year).every((value) => typeof value !== 'number' || Number.isFinite(value))),
  };
}
/** Runs it both ways for a while, too: nothing may leave its limits. */
function sound(on: Sky, side: Side): void {
  const worst = bothWays(on, side);
  expect(worst.outside).toEqual([]);
  expect(Math.max(worst.waterMm, worst.matterLbPerAc)).toBeLessThan(1e-9);
}

describe('weather at its limits', () => {
  it('no rain: nothing runs off, and growth stops when the soil is dry', () => {
    const dry = changedWeather(weather, { ...fiveYears, rain: () => 0 });
    const side = sideOf(rates, rotated);
    const after = changedWeather(dry, { from: 366 });
    const means = meansOf(skyWith(dry), dry, side);
    expect(means.runoffMm).toBe(0);
    const years = hayYearsOf(run(skyWith(dry), side, { from: 101, hasRunUp: false }), dry);
    expect(years.slice(1).map(({ grownLbPerAc }) => Math.round(grownLbPerAc))).toEqual(years.slice(1).map(() => 0));
    sound(skyWith(changedWeather(after, { to: 300 })), side);
  });
  it('four inches every day: nearly all of it runs off or drains', () => {
    const wet = changedWeather(weather, { ...fiveYears, rain: () => 100 });
    const means = meansOf(skyWith(wet, { snowAtC: -99 }), wet, sideOf(rates, rotated));
    expect((means.runoffMm + means.drainageMm) / (100 * 365.25)).toBeGreaterThan(0.95);
    sound(skyWith(changedWeather(wet, { to: 300 })), sideOf(rates, rotated));
  });
  it('a day, two months, and a record that begins in any month', () => {
    const side = sideOf(rates, rotated);
    for (const [from, days] of [
      [0, 1],
      [700, 1],
      [31, 59],
      [121, 200],
      [213, 400],
      [334, 366],
    ] as const) {
      const part = changedWeather(weather, { from, to: from + days });
      sound(skyWith(part), side);
      expect(hayYearsOf(run(skyWith(part), side), part).every((year) => year.needTons >= 0)).toBe(true);
    }
  });
  it('120 years', () => {
    const rounds = [0, 28, 56, 84];
    const join = (of: (each: Weather) => Float64Array): Float64Array =>
      Float64Array.from(rounds.flatMap(() => [...of(changedWeather(weather, { to: 10_957 }))]));
    const long = wholeWeather(
      { year: 1904, month: 1, day: 1 },
      { rainMm: join((each) => each.rainMm), maxTempC: join((each) => each.maxTempC), minTempC: join((each) => each.minTempC) },
    );
    const means = meansOf(skyWith(long), long, sideOf(rates, rotated));
    expect([means.count, means.isFinite]).toEqual([119, true]);
  });
  it('leap days come and go, and every hay year is whole', () => {
    expect([...weather.monthDay].filter((day) => day === 229)).toHaveLength(8);
    const years = hayYearsOf(run(sky, sideOf(rates, rotated)), weather);
    expect(years.map(({ year }) => year)).toEqual(Array.from({ length: 29 }, (_, index) => 1996 + index));
  });
  it('south of the equator with the seasons turned, grass grows and drinks as in the north', () => {
    const ten = changedWeather(weather, { to: 3653 });
    const turn = (numbers: Float64Array): Float64Array => numbers.map((_, at) => numbers[(at + 182) % numbers.length] ?? Number.NaN);
    const turned: Weather = { ...ten, rainMm: turn(ten.rainMm), maxTempC: turn(ten.maxTempC), minTempC: turn(ten.minTempC) };
    const north = meansOf(skyWith(ten), ten, sideOf(rates));
    const southSide = sideOf(rates, { management: { turnOut: 1020, pull: 501, cutOn: [1210, 220] }, stock: demoStock });
    const south = meansOf(skyWith(turned, { latitudeDeg: -38 }), turned, southSide);
    expect(Math.abs(south.grownLbPerAc / north.grownLbPerAc - 1)).toBeLessThan(0.1);
    expect(Math.abs(south.transpirationMm / north.transpirationMm - 1)).toBeLessThan(0.1);
    sound(skyWith(changedWeather(turned, { from: 200, to: 500 }), { latitudeDeg: -38 }), southSide);
  });
});

describe('ground and stock at their limits', () => {
  it('no herd: no hay, and the ground is covered', () => {
    const means = meansOf(sky, weather, sideOf(rates, { ...rotated, stock: [] }));
    expect([means.needTons, means.eatenLbPerAc]).toEqual([0, 0]);
    expect(means.coverShare).toBeGreaterThan(0.9);
  });
  it('no soil: nothing grows, nothing drinks, nothing divides', () => {
    const bare = sideOf(rates, { ...rotated, soil: { rootsIn: 0 } });
    const means = meansOf(sky, weather, bare);
    expect(means.isFinite).toBe(true);
    expect(means.grownLbPerAc).toBeLessThan(1);
    expect(means.transpirationMm).toBeLessThan(0.01);
    sound(skyWith(changedWeather(weather, { to: 400 })), bare);
  });
  it('twenty times the herd: hay takes over', () => {
    const crowd = sideOf(rates, { ...rotated, stockFactor: 20, management: { ...rotated.management, whenShort: 'stay', pullBelowDays: 0 } });
    const means = meansOf(sky, weather, crowd);
    // What all of it wants in a year is about 20 times 305 tons.
    expect(means.isFinite).toBe(true);
    expect(means.needTons).toBeGreaterThan(19 * 300);
    sound(skyWith(changedWeather(weather, { to: 400 })), crowd);
  });
  it('one paddock', () => {
    const alone = sideOf(rates, { ...rotated, paddocks: 1, meadowAc: 0 });
    expect(alone.paddocks).toHaveLength(1);
    sound(skyWith(changedWeather(weather, { from: 100, to: 600 })), alone);
  });
  it('ground that takes in nothing', () => {
    const paved = sideOf(rates, { ...rotated, numbers: { poor: 100, fair: 100, good: 100 } });
    const worst = bothWays(skyWith(changedWeather(weather, { to: 400 })), paved, undefined, 1e-9);
    expect(worst.outside).toEqual([]);
    expect(meansOf(sky, weather, paved).drainageMm).toBeLessThan(1);
  });
  it('refuses what no run can begin with', () => {
    const side = sideOf(rates, rotated);
    expect(() => run(sky, { ...side, paddocks: [] })).toThrow('needs paddocks');
    expect(() => run(sky, { ...side, management: { ...side.management, turnOut: 229 } })).toThrow('every year has');
    expect(() => run(sky, { ...side, management: { ...side.management, feedingLossShare: 1 } })).toThrow('needs feedingLossShare');
    expect(() => run(sky, { ...side, management: { ...side.management, feedPaddock: 40 } })).toThrow('needs feedPaddock');
  });
});
