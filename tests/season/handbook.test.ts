import { describe, expect, it } from 'vitest';
import { failing } from '../../calculators/math/checks.ts';
import { numberAt, SKY, SUM, TRACE, YEAR } from '../../calculators/season/flat.ts';
import { runKernel } from '../../calculators/season/kernel.ts';
import { memoryOf, sumAt } from '../../calculators/season/memory.ts';
import { planOf } from '../../calculators/season/plan.ts';
import { run } from '../../calculators/season/run.ts';
import { type Grass, type Paddock, type Side, type Start, usualStart } from '../../calculators/season/side.ts';
import type { Sky } from '../../calculators/season/sky.ts';
import { ofPeriod } from '../../calculators/season/years.ts';
import { openSeasonWeather, sideOf, skyWith, usualGrass, wholeWeather } from '../support/seasonPlace.ts';

/** Days without rain, snow, growth or rot, at one reference use. */
function dryDays(days: number, referenceMm: number): Sky {
  const sky = skyWith(
    wholeWeather(
      { year: 2001, month: 7, day: 1 },
      { rainMm: new Float64Array(days), maxTempC: new Float64Array(days).fill(30), minTempC: new Float64Array(days).fill(20) },
    ),
  );
  return withoutGrowth({ ...sky, daily: sky.daily.map((value, at) => (at % SKY.width === SKY.reference ? referenceMm : value)) });
}
const withoutGrowth = (sky: Sky): Sky => ({
  ...sky,
  daily: sky.daily.map((value, at) => ([SKY.response, SKY.rot].some((field) => at % SKY.width === field) ? 0 : value)),
});
/** Grass that neither grows, dies nor holds water, on one paddock without stock. */
function still(ground: Partial<Paddock>, grass: Partial<Grass>): Side {
  const { paddocks, management } = sideOf({ grazed: 0, meadow: 0 }, { paddocks: 1, meadowAc: 0 });
  const [first] = paddocks;
  if (!first) throw new RangeError('a side has a paddock');
  return {
    paddocks: [{ ...first, ...ground }],
    grass: { ...usualGrass, dyingByAge: 0, dyingByDrought: 0, dyingByFrost: 0, fallingShare: 0, leafStoreMm: 0, ...grass },
    stock: [],
    management,
  };
}
function traceOf(sky: Sky, side: Side, start: Start, field: number): readonly number[] {
  const memory = memoryOf(planOf(sky, side), 1, { start, tracedDays: sky.days });
  runKernel(planOf(sky, side), sky, new Int32Array(sky.days), memory, 0, sky.days);
  return Array.from({ length: sky.days }, (_, day) => numberAt(memory.trace, day * TRACE.width + field));
}
const wrong = (ours: readonly number[], printed: string, where: string): readonly string[] =>
  printed
    .split(' ')
    .flatMap(
      (each, index) =>
        failing({ what: `day ${index + 1}`, ours: () => ours[index] ?? Number.NaN, printed: each, source: 'allen-1998', where, seen: 'print' }) ?? [],
    );

describe('the kernel does the handbook’s days', () => {
  it('drying bare ground, example 31', () => {
    // Kcb 0.15, Kc max 1.20, all ground exposed, ETo 4.5 mm; the depletion at the end of each day.
    const ground = { evaporableMm: 20, readilyEvaporableMm: 9, availableMm: 1e6, topAvailableMm: 1e5 };
    const bare = { baseShare: 0, fullCoefficient: 0.15, bareCoefficient: 0.15, maximumCoefficient: 1.2 };
    const nothing = { greenLbPerAc: 0, deadLbPerAc: 0, litterLbPerAc: 0, depletedShare: 0 };
    const surface = traceOf(dryDays(10, 4.5), still(ground, bare), nothing, TRACE.surface);
    expect(wrong(surface, '4.73 9.45 13.98 16.57 18.04 18.88 19.36 19.64 19.79 19.88', 'example 31')).toEqual([]);
  });
  it('tomatoes running dry, example 37', () => {
    // ETo 5 mm, Kcb 1.2, TAW 160 mm, p 0.40, 55 mm gone at the start. The engine fits p to the day’s use of 6 mm, so the table’s p is 0.44 here.
    const ground = { availableMm: 160, topAvailableMm: 60, evaporableMm: 1e-9, readilyEvaporableMm: 0 };
    const crop = { fullCoefficient: 1.2, bareCoefficient: 1.2, maximumCoefficient: 1.2, depletionFraction: 0.44 };
    const depletion = traceOf(dryDays(10, 5), still(ground, crop), { ...usualStart, depletedShare: 55 / 160 }, TRACE.depletion);
    expect(wrong(depletion, '61.0 67.0 72.8 78.3 83.4 88.2 92.6 96.9 100.8 104.5', 'example 37')).toEqual([]);
  });
});

describe('the kernel does years of open weather', () => {
  // Totals of another program: one coefficient of 0.85, 78 mm, p 0.60 fitted to the day, no runoff, no snow, rain before use. The same as the root zone’s own test.
  it.each([
    ['Seattle', 47.45, 2012, '397.354', '829.457'],
    ['Seattle', 47.45, 2014, '421.549', '810.096'],
    ['Seattle', 47.45, 2015, '381.136', '758.203'],
    ['New York', 40.78, 2015, '617.177', '353.981'],
  ] as const)('%s, latitude %d, %d', (place, latitudeDeg, year, used, drained) => {
    const sky = withoutGrowth(skyWith(openSeasonWeather(place), { latitudeDeg, snowAtC: -99 }));
    const ground = { availableMm: 78, topAvailableMm: 40, evaporableMm: 1e-9, readilyEvaporableMm: 0, poor: 1, fair: 1, good: 1 };
    // So much grass that no ground is bare.
    const start = { ...usualStart, greenLbPerAc: 1e5, depletedShare: 0 };
    const outcome = run(sky, still(ground, { fullCoefficient: 0.85, bareCoefficient: 0.85 }), { from: 101, hasRunUp: false, start });
    const period = year - 2011;
    const of = (field: number): number => numberAt(outcome.memory.sums, sumAt(outcome.plan, period, 0, field));
    const check = (what: string, ours: number, printed: string) =>
      failing({
        what,
        ours: () => ours,
        printed,
        source: 'vega-datasets',
        where: 'weather.csv',
        seen: 'computed',
        differs: { by: '0.001', because: 'a last digit' },
      });
    expect([check('used', of(SUM.transpiration) + of(SUM.evaporation), used), check('drained', of(SUM.drainage), drained)]).toEqual([
      undefined,
      undefined,
    ]);
    expect(ofPeriod(outcome, period, YEAR.days)).toBe(year === 2012 ? 366 : 365);
  });
});
