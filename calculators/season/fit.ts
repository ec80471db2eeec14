import { need, needThere } from '../math/need.ts';
import { SUM, YEAR } from './flat.ts';
import { yearsFrom } from './hayYears.ts';
import { grazingDefaults } from './parameters.ts';
import { planAtRate, planOf } from './plan.ts';
import { type Outcome, runPlan } from './run.ts';
import { type Grass, type Management, type Paddock, type Start, usualStart } from './side.ts';
import type { Sky } from './sky.ts';
import { dayBefore, type MonthDay } from './weather.ts';
import { ofPeriod, overGrazed } from './years.ts';

/** A growth rate that gives the yield asked; `too-high` where no rate up to 1 a day does: then yield, rain, soil and season do not go together. */
export type Fit = { readonly kind: 'fits'; readonly ratePerDay: number } | { readonly kind: 'too-high' };

/** What is left of the stand at midwinter when a pasture's growth is fitted. */
const clearedToLbPerAc = 300;
const cleared: Start = { ...usualStart, greenLbPerAc: clearedToLbPerAc / 2, deadLbPerAc: clearedToLbPerAc / 2 };
/** Rates so near each other, or a yield so little over the one wanted, tell nothing apart. */
const closest = 1e-12;
const nearEnough = 1e-10;

/** Nothing grazes, nothing is fed: a paddock left to itself. */
const ungrazed: Management = {
  ...grazingDefaults,
  turnOut: 101,
  pull: 101,
  mostDaysIn: 1,
  leastRestDays: 0,
  next: 'in-order',
  stubbleLbPerAc: 0,
  whenShort: 'pull',
  pullBelowDays: 0,
  cutOn: [],
  feedingLossShare: 0,
};

export function median(values: readonly number[]): number {
  need('median', 'values.length', values.length, { atLeast: 1 });
  const sorted = [...values].sort((one, other) => one - other);
  const at = (index: number): number => needThere('median', 'value', sorted[index]);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? at(middle) : (at(middle - 1) + at(middle)) / 2;
}

/**
 * Rate up to 1 a day at which the median whole year gives what is wanted: between two rates of which one gives too little and the other enough, where the
 * straight line between them meets it (the end that stays counts half, so that both draw near), and in their middle wherever that has not halved the way in
 * three steps, as where hay is cut only if enough stands.
 */
function rateFor(wanted: number, yearsAt: (ratePerDay: number) => readonly number[]): Fit {
  const most = yearsAt(1);
  if (most.length === 0 || median(most) < wanted) return { kind: 'too-high' };
  const beyond = (ratePerDay: number): number => median(yearsAt(ratePerDay)) - wanted;
  let [low, belowAt] = [0, beyond(0)];
  if (belowAt >= 0) return { kind: 'fits', ratePerDay: 0 };
  let high = 1;
  let [aboveAt, over] = [median(most) - wanted, median(most) - wanted];
  let kept = 0;
  let width = 1;
  for (let step = 1; high - low > closest && over > nearEnough * wanted; step += 1) {
    const isSlow = step % 3 === 0 && high - low > width / 2;
    if (step % 3 === 0) width = high - low;
    const line = low + ((high - low) * -belowAt) / (aboveAt - belowAt);
    const rate = isSlow || line <= low || line >= high ? (low + high) / 2 : line;
    const found = beyond(rate);
    if (found >= 0) {
      [high, aboveAt, over] = [rate, found, found];
      if (kept > 0) belowAt /= 2;
      kept = 1;
    } else {
      [low, belowAt] = [rate, found];
      if (kept < 0) aboveAt /= 2;
      kept = -1;
    }
  }
  return { kind: 'fits', ratePerDay: high };
}

/** Where a pasture's growth is fitted: the paddock on the place's main soil, and the day from which its years run. */
export interface FitPlace {
  readonly sky: Sky;
  readonly paddock: Paddock;
  readonly grass: Grass;
  readonly midwinter: MonthDay;
}

/** A paddock by itself under one management, to be run at one growth rate after another. All but the rate is made ready once. */
function alone({ sky, paddock, grass, midwinter }: FitPlace, management: Management): (ratePerDay: number) => Outcome {
  const plan = planOf(sky, { paddocks: [{ ...paddock, areaAc: 1, isMeadow: true }], grass, stock: [], management });
  const periods = yearsFrom(sky, midwinter);
  return (ratePerDay) => runPlan(sky, planAtRate(plan, ratePerDay), periods, { hasRunUp: false, start: cleared });
}

/** The highest stand and the growth of each whole year of a paddock that nothing grazes, cleared on the eve of each midwinter, at any growth rate. */
export function ungrazedYears(place: FitPlace): (ratePerDay: number) => readonly { readonly peakLbPerAc: number; readonly grownLbPerAc: number }[] {
  const cutOn = [dayBefore(place.midwinter)];
  const runAt = alone(place, { ...ungrazed, cutOn, cutLeavesLbPerAc: clearedToLbPerAc, cutWorthLbPerAc: clearedToLbPerAc, hayKeptShare: 1 });
  return (ratePerDay) => {
    const outcome = runAt(ratePerDay);
    return outcome.periods.whole.map((period) => ({
      peakLbPerAc: overGrazed(outcome, period, SUM.peak),
      grownLbPerAc: overGrazed(outcome, period, SUM.grown),
    }));
  };
}

/** Rate at which the median year's ungrazed stand, cleared each midwinter, peaks at the usual yield. Fit it once, for both sides. */
export function fittedRate(place: FitPlace, usualLbPerAc: number): Fit {
  const yearsAt = ungrazedYears(place);
  return rateFor(usualLbPerAc, (ratePerDay) => yearsAt(ratePerDay).map(({ peakLbPerAc }) => peakLbPerAc));
}

/** Rate at which the median year's cuts of a meadow give its usual hay, dry: a meadow is fitted to what goes into the barn, not to a peak. */
export function fittedMeadowRate(
  place: FitPlace,
  management: Pick<Management, 'cutOn' | 'cutLeavesLbPerAc' | 'cutWorthLbPerAc' | 'hayKeptShare'>,
  hayLbPerAc: number,
): Fit {
  const { cutOn, cutLeavesLbPerAc, cutWorthLbPerAc, hayKeptShare } = management;
  const runAt = alone(place, { ...ungrazed, cutOn, cutLeavesLbPerAc, cutWorthLbPerAc, hayKeptShare });
  return rateFor(hayLbPerAc, (ratePerDay) => {
    const outcome = runAt(ratePerDay);
    return outcome.periods.whole.map((period) => ofPeriod(outcome, period, YEAR.made));
  });
}
