import { beforeAll, describe, expect, it, vi } from 'vitest';
import { failing } from '../../calculators/math/checks.ts';
import { fittedRate, median, ungrazedYears } from '../../calculators/season/fit.ts';
import { numberAt, SUM, TRACE } from '../../calculators/season/flat.ts';
import { runKernel } from '../../calculators/season/kernel.ts';
import { memoryOf } from '../../calculators/season/memory.ts';
import { planOf } from '../../calculators/season/plan.ts';
import { run } from '../../calculators/season/run.ts';
import type { Sky } from '../../calculators/season/sky.ts';
import { type HayYear, hayYearsOf, overGrazed } from '../../calculators/season/years.ts';
import {
  changedWeather,
  demoWeather,
  fewPaddocks,
  manyPaddocks,
  type PlaceOptions,
  type Rates,
  ratesFor,
  sideOf,
  skyWith,
  usualGrass,
} from '../support/seasonPlace.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
const weather = demoWeather();
const sky = skyWith(weather);
let rates: Rates;
beforeAll(() => {
  rates = ratesFor(sky);
});
const yearsWith = (options: PlaceOptions): readonly HayYear[] => hayYearsOf(run(sky, sideOf(rates, options)), weather);
const meanOf = (years: readonly HayYear[], of: (year: HayYear) => number): number => years.reduce((sum, year) => sum + of(year), 0) / years.length;

/** Growth of a paddock left to itself, by month, over all days; and its mean year. */
function ungrazed(on: Sky): { readonly byMonth: readonly number[]; readonly grownLbPerAc: number } {
  const [paddock] = sideOf(rates).paddocks;
  if (!paddock) throw new RangeError('a side has a paddock');
  const place = { sky: on, paddock, grass: usualGrass, midwinter: 101 };
  const years = ungrazedYears(place)(rates.grazed);
  const alone = { ...sideOf(rates, { paddocks: 1, meadowAc: 0, stock: [] }) };
  const cleared = { ...alone.management, cutOn: [1231], cutLeavesLbPerAc: 300, cutWorthLbPerAc: 300, hayKeptShare: 1 };
  const plan = planOf(on, { ...alone, paddocks: [{ ...paddock, isMeadow: true }], management: cleared });
  const memory = memoryOf(plan, 1, { tracedDays: on.days });
  runKernel(plan, on, new Int32Array(on.days), memory, 0, on.days);
  const byMonth = Array.from({ length: 12 }, () => 0);
  on.monthDay.forEach((date, day) => {
    const month = Math.floor(date / 100) - 1;
    byMonth[month] = (byMonth[month] ?? Number.NaN) + numberAt(memory.trace, day * TRACE.width + TRACE.grown);
  });
  return { byMonth, grownLbPerAc: years.reduce((sum, year) => sum + year.grownLbPerAc, 0) / years.length };
}
const drySummers = (share: number): Sky => skyWith(changedWeather(weather, { rain: (mm, date) => (date >= 401 && date < 1001 ? share * mm : mm) }));

describe('the demo place', () => {
  it('does what another program did with the same parameters, within 2 %', () => {
    // A program written apart, from the same equations; it stands on the same handful of made-up years.
    const within = (what: string, ours: number, printed: string): string | undefined =>
      failing({
        what,
        ours: () => ours,
        printed,
        source: 'our own',
        where: '',
        seen: 'computed',
        differs: { by: String(0.02 * Number(printed) + 0.05), because: '2 % and its last digit' },
      });
    const told = (years: readonly HayYear[]): readonly number[] => {
      const need = years.map(({ needTons }) => needTons).sort((one, other) => other - one);
      return [
        meanOf(years, ({ grownLbPerAc }) => grownLbPerAc),
        meanOf(years, ({ eatenLbPerAc }) => eatenLbPerAc),
        meanOf(years, ({ runoffMm }) => runoffMm / 25.4),
        meanOf(years, ({ drainageMm }) => drainageMm / 25.4),
        meanOf(years, ({ evaporationMm }) => evaporationMm / 25.4),
        meanOf(years, ({ transpirationMm }) => transpirationMm / 25.4),
        meanOf(years, ({ driedMm }) => driedMm / 25.4),
        meanOf(years, ({ coverShare }) => coverShare),
        meanOf(years, ({ soilLostTonPerAc }) => soilLostTonPerAc),
        meanOf(years, ({ grazedDays }) => grazedDays),
        median(need),
        need[2] ?? Number.NaN,
        need[0] ?? Number.NaN,
        median(years.map(({ cropTons }) => cropTons)),
      ];
    };
    const problems = (options: PlaceOptions, printed: string): readonly string[] =>
      told(yearsWith(options)).flatMap((ours, index) => within(`figure ${index + 1}`, ours, printed.split(' ')[index] ?? '') ?? []);
    expect(problems(fewPaddocks, '2113 917 2.2 13.5 3.2 15.6 3.9 0.84 0.7 191 178 183 187 116')).toEqual([]);
    expect(problems(manyPaddocks, '2125 883 2.0 13.5 2.8 16.0 4.0 0.85 0.6 183 181 223 240 118')).toEqual([]);
  });
  it('peaks in the median year at the yield that it was fitted to, and refuses a yield that no rate reaches', () => {
    const [paddock] = sideOf(rates).paddocks;
    if (!paddock) throw new RangeError('a side has a paddock');
    const place = { sky, paddock, grass: usualGrass, midwinter: 101 };
    expect(Math.abs(median(ungrazedYears(place)(rates.grazed).map(({ peakLbPerAc }) => peakLbPerAc)) - 2400)).toBeLessThan(0.01);
    expect(fittedRate({ ...place, paddock: { ...paddock, ceilingLbPerAc: 2500 } }, 2499)).toEqual({ kind: 'too-high' });
  });
});

describe('against what was measured elsewhere', () => {
  it('a dry summer', () => {
    // Mixtures in Missouri made 57 to 78 % of their usual at 0.4 of the rain, New York pastures 79 % in 1988. Less rain, less grass.
    const usual = ungrazed(sky).grownLbPerAc;
    const shares = [0.6, 0.4, 0.2].map((share) => ungrazed(drySummers(share)).grownLbPerAc / usual);
    expect(shares[1]).toBeGreaterThan(0.57);
    expect(shares[1]).toBeLessThan(0.78);
    expect(shares).toEqual(shares.toSorted((one, other) => other - one));
  });
  it('more than half of the growth comes by the end of June', () => {
    // Ohio pastures: about 60 percent by June. Fescue: two thirds by late June or early July.
    const { byMonth } = ungrazed(sky);
    const share = byMonth.slice(0, 6).reduce((sum, each) => sum + each) / byMonth.reduce((sum, each) => sum + each);
    expect(share).toBeGreaterThan(0.55);
    expect(share).toBeLessThan(0.7);
  });
  it('grazing costs little growth while it is light and much while it is hard', () => {
    // Colorado: 75, 71, 68 and 57 g/m2 at 0, 20, 40 and 60 % taken, no loss up to 35 %.
    const on = (stockFactor: number): readonly HayYear[] =>
      yearsWith({ paddocks: 1, stockFactor, management: { mostDaysIn: 999, whenShort: 'stay', stubbleLbPerAc: 400 } });
    const grown = (years: readonly HayYear[]): number => meanOf(years, ({ grownLbPerAc }) => grownLbPerAc);
    const levels = [0.5, 1, 1.5, 2, 3, 5, 20].map((factor) => on(factor));
    const best = Math.max(...levels.map(grown));
    // The usual herd eats 43 % of the growth, so half as much again would ask for 64 %; what it does not get there is hay.
    const taken = meanOf(levels[1] ?? [], ({ eatenLbPerAc }) => eatenLbPerAc) / best;
    expect(1.25 * taken).toBeLessThan(0.6);
    expect(1 - grown(levels[1] ?? []) / best).toBeLessThan(0.08);
    expect(1 - grown(on(1.25)) / best).toBeLessThan(0.08);
    const thrice = 1 - grown(levels[4] ?? []) / best;
    expect(thrice).toBeGreaterThan(0.1);
    expect(thrice).toBeLessThan(0.4);
    const runoff = levels.map((years) => meanOf(years, ({ runoffMm }) => runoffMm));
    expect(runoff).toEqual(runoff.toSorted((one, other) => one - other));
  });
  it('twelve paddocks grow about what one does at the usual stocking', () => {
    // 20 of 23 trials: no more with rotation (Briske 2008). The herd stays on both sides.
    const rule = { whenShort: 'stay', stubbleLbPerAc: 500 } as const;
    const one = yearsWith({ paddocks: 1, management: { ...rule, mostDaysIn: 999 } });
    const twelve = yearsWith({ paddocks: 12, management: { ...rule, mostDaysIn: 4, leastRestDays: 25, next: 'most-grass' } });
    for (const of of [(year: HayYear) => year.grownLbPerAc, (year: HayYear) => year.needTons]) {
      expect(Math.abs(meanOf(twelve, of) / meanOf(one, of) - 1)).toBeLessThan(0.03);
    }
  });
  it('runoff falls with cover, without a cliff', () => {
    const some = skyWith(changedWeather(weather, { to: 6 * 365 }));
    const runoff = Array.from({ length: 100 }, (_, percent) => {
      const side = sideOf(rates, { ...fewPaddocks, paddocks: 1, meadowAc: 0, stock: [], grass: { fixedCoverPercent: percent + 0.5 } });
      const outcome = run(some, side, { hasRunUp: false });
      return outcome.periods.whole.reduce((sum, period) => sum + overGrazed(outcome, period, SUM.runoff), 0);
    });
    const steps = runoff.slice(1).map((each, index) => each / (runoff[index] ?? Number.NaN) - 1);
    expect(steps.filter((step) => !(step <= 0 && step > -0.03))).toEqual([]);
  });
});

describe('what a year owes to others', () => {
  const needs = (years: readonly HayYear[]): ReadonlyMap<number, number> => new Map(years.map(({ year, needTons }) => [year, needTons]));
  it('a start 500 days later is forgotten by the fourth hay year', () => {
    const later = changedWeather(weather, { from: 500 });
    const short = hayYearsOf(run(skyWith(later), sideOf(rates, manyPaddocks)), later);
    const whole = needs(yearsWith(manyPaddocks));
    const compared = short.slice(3);
    expect(compared.length).toBeGreaterThan(20);
    expect(compared.filter(({ year, needTons }) => !(Math.abs(needTons - (whole.get(year) ?? Number.NaN)) < 0.01))).toEqual([]);
    expect(short.map(({ remembersStart }) => remembersStart).slice(0, 4)).toEqual([true, true, true, false]);
  });
  it('cutting the record’s end changes no year before it', () => {
    const cut = changedWeather(weather, { to: 20 * 365 });
    const short = hayYearsOf(run(skyWith(cut), sideOf(rates, manyPaddocks)), cut);
    const whole = needs(yearsWith(manyPaddocks));
    expect(short.length).toBeGreaterThan(15);
    expect(short.filter(({ year, needTons }) => needTons !== whole.get(year))).toEqual([]);
  });
});
