import { describe, expect, it, vi } from 'vitest';
import { type Fit, type FitPlace, fittedMeadowRate, fittedRate, median } from '../../calculators/season/fit.ts';
import { SUM, YEAR } from '../../calculators/season/flat.ts';
import * as running from '../../calculators/season/run.ts';
import { ofPeriod, overGrazed } from '../../calculators/season/years.ts';
import { near } from '../support/near.ts';
import { changedWeather, demoWeather, sideOf, skyWith, usualGrass, usualRule } from '../support/seasonPlace.ts';

const weather = demoWeather();
const sky = skyWith(weather);
const { paddocks } = sideOf({ grazed: 0, meadow: 0 });
const at = (isMeadow: boolean, over = sky): FitPlace => {
  const paddock = paddocks.find((each) => each.isMeadow === isMeadow);
  if (!paddock) throw new RangeError('paddocks and a meadow');
  return { sky: over, paddock, grass: usualGrass, midwinter: 101 };
};

/** A fit, and each rate that was run for it with what the median year gave. */
function tried(search: () => Fit, field: 'peak' | 'made') {
  const runs = vi.spyOn(running, 'runPlan');
  const found = search();
  const outcomes = runs.mock.results.flatMap((ran) => (ran.type === 'return' ? [ran.value] : []));
  const rates = outcomes.map((outcome) => ({
    ratePerDay: outcome.plan.side.paddocks[0]?.ratePerDay,
    gave: median(
      outcome.periods.whole.map((period) => (field === 'peak' ? overGrazed(outcome, period, SUM.peak) : ofPeriod(outcome, period, YEAR.made))),
    ),
  }));
  runs.mockRestore();
  const ratePerDay = found.kind === 'fits' ? found.ratePerDay : Number.NaN;
  const gives = rates.find((each) => each.ratePerDay === ratePerDay)?.gave ?? Number.NaN;
  return { rates, ratePerDay, gives };
}

describe('the growth rate that gives a yield', () => {
  it.each([320, 900, 2400, 3800, 4700])('%d lb an acre: to the last digits, in few runs over the record', (wanted) => {
    const { rates, gives } = tried(() => fittedRate(at(false), wanted), 'peak');
    expect(Math.abs(gives / wanted - 1)).toBeLessThanOrEqual(1e-13);
    expect(rates.length).toBeLessThanOrEqual(12);
  });
  it('of a meadow: the same', () => {
    const { rates, gives } = tried(() => fittedMeadowRate(at(true), usualRule, 3400), 'made');
    expect(Math.abs(gives / 3400 - 1)).toBeLessThanOrEqual(1e-13);
    expect(rates.length).toBeLessThanOrEqual(12);
  });
  it('is the least that gives enough where hay jumps from none to what a cut is worth', () => {
    // A cut takes at least 1,500 − 600 lb and keeps 85 % of it. Of thirty years the middle two count: where one made none, the median is half of that, or nothing.
    const { rates, ratePerDay, gives } = tried(() => fittedMeadowRate(at(true), { ...usualRule, cutOn: [610] }, 300), 'made');
    near(gives, (0.85 * 900) / 2, 1e-9);
    const tooLow = Math.max(...rates.filter(({ gave }) => gave < 300).map((each) => each.ratePerDay ?? Number.NaN));
    expect(tooLow).toBeLessThan(ratePerDay);
    expect(tooLow / ratePerDay).toBeGreaterThan(1 - 1e-13);
    expect(rates.length).toBeLessThanOrEqual(50);
  });
  it('is none where what stands at the start is enough, and none is found past the ceiling or without a whole year', () => {
    const year = skyWith(changedWeather(weather, { to: 366 }));
    expect(fittedRate(at(false, year), 250)).toEqual({ kind: 'fits', ratePerDay: 0 });
    expect(fittedRate(at(false), 4799)).toEqual({ kind: 'too-high' });
    expect(fittedRate(at(false, skyWith(changedWeather(weather, { to: 365 }))), 2400)).toEqual({ kind: 'too-high' });
    expect(() => fittedRate(at(false), 0)).toThrow('needs wanted above 0');
  });
});
