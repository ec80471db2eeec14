import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SideDay, seasonDay, stateAtStart } from '../../calculators/season/day.ts';
import { numberAt, TRACE } from '../../calculators/season/flat.ts';
import { type HerdState, herdAtStart } from '../../calculators/season/herd.ts';
import { planOf } from '../../calculators/season/plan.ts';
import { run, runBySteps } from '../../calculators/season/run.ts';
import { usualStart } from '../../calculators/season/side.ts';
import { hayYearsOf } from '../../calculators/season/years.ts';
import { anySeason, anySide, anyWeather, bothWays } from '../support/seasonDays.ts';
import { changedWeather, demoWeather, fewPaddocks, manyPaddocks, sideOf, skyWith } from '../support/seasonPlace.ts';

const aYearAndAHalf = changedWeather(demoWeather(), { from: 500, to: 1050 });
const rates = { grazed: 0.045, meadow: 0.061 };

describe('the season day by day', () => {
  it('closes water and dry matter, feeds the herd, stays within its limits, and the flat kernel does the same', () => {
    fc.assert(
      fc.property(anySeason, ({ sky, side, start }) => {
        const worst = bothWays(sky, side, start);
        expect(worst.outside).toEqual([]);
        expect(worst.waterMm).toBeLessThan(1e-9);
        expect(worst.matterLbPerAc).toBeLessThan(1e-9);
        expect(worst.apart).toBeLessThan(1e-12);
        expect(worst.hungry).toBeLessThan(1e-12);
      }),
      { numRuns: 400 },
    );
  }, 120_000);
  it('does so where stock graze to the bare ground', () => {
    // Of thousands of pounds a few ounces are left: what the two ways differ by in the last digits of thousands is then more of what is left.
    fc.assert(
      fc.property(anySeason, ({ sky, side, start }) => {
        const worst = bothWays(sky, { ...side, management: { ...side.management, outOfReachLbPerAc: 0 } }, start, 1e-10);
        expect(worst.outside).toEqual([]);
        expect(Math.max(worst.waterMm, worst.matterLbPerAc)).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  }, 60_000);
  it.each([
    ['few paddocks', fewPaddocks],
    ['many', manyPaddocks],
  ])('does so on the demo place with %s', (_, options) => {
    const worst = bothWays(skyWith(aYearAndAHalf), sideOf(rates, options));
    expect(worst.outside).toEqual([]);
    expect(Math.max(worst.waterMm, worst.matterLbPerAc)).toBeLessThan(1e-9);
  });
});

describe('the run-up', () => {
  it('hands over how each paddock stands, and how long it rested, as the readable days do', () => {
    const side = sideOf(rates, { ...manyPaddocks, paddocks: 5 });
    // Ends amid the season, so that some paddocks have just been grazed.
    const sky = skyWith(changedWeather(demoWeather(), { from: 20, to: 220 }));
    const { trace = new Float64Array() } = run(sky, side, { tracedDays: sky.days }).memory;
    const plan = planOf(sky, side);
    const { paddocks: states } = stateAtStart(side, usualStart);
    const daysWith = (herd: HerdState): readonly SideDay[] => Array.from({ length: sky.days }, (_, day) => seasonDay(states, herd, plan, sky, day));
    daysWith(herdAtStart());
    const rested = states.map(({ restDays }) => restDays);
    const eaten = daysWith(herdAtStart()).flatMap(({ paddocks }) => paddocks.map(({ eatenLbPerAc }) => eatenLbPerAc));
    expect(Math.min(...rested)).toBeLessThan(side.management.leastRestDays);
    expect(eaten.some((lb) => lb > 0)).toBe(true);
    const apart = eaten.map((lb, at) => Math.abs(numberAt(trace, at * TRACE.width + TRACE.eaten) - lb) / Math.max(1, lb));
    expect(Math.max(...apart)).toBeLessThan(1e-12);
  });
});

describe('days that are drawn', () => {
  it('are the same in a window as in the whole, by years as at one go', () => {
    const side = sideOf(rates, manyPaddocks);
    const sky = skyWith(aYearAndAHalf);
    const traceOf = (tracedFrom: number, tracedDays: number) => run(sky, side, { tracedFrom, tracedDays }).memory.trace ?? new Float64Array();
    const perDay = side.paddocks.length * TRACE.width;
    const whole = traceOf(0, sky.days);
    expect(whole).toHaveLength(sky.days * perDay);
    expect(traceOf(350, 30)).toEqual(whole.slice(350 * perDay, 380 * perDay));
    expect(run(sky, side).memory.trace).toHaveLength(0);
  });
  it('come with the share that is done, which only rises, to the whole', () => {
    const shares = [...runBySteps(skyWith(aYearAndAHalf), sideOf(rates, fewPaddocks))];
    expect(shares.at(-1)).toBe(1);
    expect(shares).toEqual(shares.toSorted((one, other) => one - other));
    expect(shares.length).toBeGreaterThanOrEqual(4);
  });
});

describe('two managements', () => {
  it('that are alike differ by exactly nothing', () => {
    fc.assert(
      fc.property(anyWeather, anySide, (weather, side) => {
        const sky = skyWith(weather);
        const [first, second] = [run(sky, side), run(sky, structuredClone(side))];
        expect(hayYearsOf(second, weather)).toEqual(hayYearsOf(first, weather));
        expect(second.memory.sums).toEqual(first.memory.sums);
        expect(second.memory.years).toEqual(first.memory.years);
      }),
      { numRuns: 30 },
    );
  });
  it('are seen to differ where one thing differs', () => {
    const side = sideOf(rates, fewPaddocks);
    const sky = skyWith(aYearAndAHalf);
    const sums = ({ management, ...rest }: typeof side, stubbleLbPerAc: number) =>
      run(sky, { ...rest, management: { ...management, stubbleLbPerAc } }).memory.sums;
    expect(sums(side, 501)).not.toEqual(sums(side, 500));
  });
});
