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
/** A yield so near the one wanted, or rates so near each other, tell nothing apart: a share of what is sought. */
const nearEnough = 1e-13;
/** Where the search begins, how far its first step goes at most, and below which no rate is looked for. */
const usualRatePerDay = 0.05;
const widestStep = 3;
const leastRatePerDay = 1e-6;

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

/** A rate, and how far the median whole year there lies above what is wanted. */
interface End {
  readonly ratePerDay: number;
  readonly beyond: number;
}
type BeyondAt = (ratePerDay: number) => End;

/**
 * Two rates of which one gives too little and the other enough, or the one end of all rates past which no other lies. Growth answers a rate more than in
 * proportion as long as there is room, so a rate changed by the share that is missing goes past the one sought; where it does not, the next goes further.
 */
function around(wanted: number, beyondAt: BeyondAt): { readonly low?: End; readonly high?: End } {
  let [low, high]: (End | undefined)[] = [];
  let end = beyondAt(usualRatePerDay);
  for (let power = 1; ; power *= 2) {
    if (end.beyond < 0) low = end;
    else high = end;
    if ((low && high) || (low && end.ratePerDay === 1) || (high && end.ratePerDay === 0)) return { ...(low && { low }), ...(high && { high }) };
    const step = Math.min(widestStep, Math.max(1 / widestStep, wanted / (wanted + end.beyond))) ** power;
    const next = Math.min(1, end.ratePerDay * step);
    end = beyondAt(next < leastRatePerDay ? 0 : next);
  }
}

/**
 * Rate up to 1 a day at which the median whole year gives what is wanted: between two rates of which one gives too little and the other enough, first where
 * the straight line between them meets it, then where the curve through the last three rates does, as far as they lie on one (the rule of Chandrupatla, 1997,
 * from memory); else in their middle, as where hay is cut only if enough stands.
 */
function rateFor(wanted: number, yearsAt: (ratePerDay: number) => readonly number[]): Fit {
  need('rateFor', 'wanted', wanted, { above: 0 });
  const beyondAt: BeyondAt = (ratePerDay) => {
    const years = yearsAt(ratePerDay);
    return { ratePerDay, beyond: years.length === 0 ? -wanted : median(years) - wanted };
  };
  const { low, high } = around(wanted, beyondAt);
  if (!high) return { kind: 'too-high' };
  if (!low) return { kind: 'fits', ratePerDay: 0 };
  let [last, other] = [high, low];
  for (let share = last.beyond / (last.beyond - other.beyond); ; ) {
    const found = beyondAt(last.ratePerDay + share * (other.ratePerDay - last.ratePerDay));
    const isSame = found.beyond < 0 === last.beyond < 0;
    const before = isSame ? last : other;
    [last, other] = [found, isSame ? other : last];
    if (Math.abs(last.beyond) <= nearEnough * wanted) return { kind: 'fits', ratePerDay: last.ratePerDay };
    const enough = last.beyond < 0 ? other : last;
    if (Math.abs(last.ratePerDay - other.ratePerDay) <= nearEnough * enough.ratePerDay) return { kind: 'fits', ratePerDay: enough.ratePerDay };
    const way = (last.ratePerDay - other.ratePerDay) / (before.ratePerDay - other.ratePerDay);
    const rise = (last.beyond - other.beyond) / (before.beyond - other.beyond);
    share = 0.5;
    if (rise ** 2 < way && (1 - rise) ** 2 < 1 - way) {
      share =
        (last.beyond / (other.beyond - last.beyond)) * (before.beyond / (other.beyond - before.beyond)) +
        ((before.ratePerDay - last.ratePerDay) / (other.ratePerDay - last.ratePerDay)) *
          (last.beyond / (before.beyond - last.beyond)) *
          (other.beyond / (before.beyond - other.beyond));
    }
  }
}

/** Where a pasture's growth is fitted: the paddock on the place's main soil, and the day from which its years run. */
export interface FitPlace {
  readonly sky: Sky;
  readonly paddock: Paddock;
  readonly grass: Grass;
  readonly midwinter: MonthDay;
}

/**
 * A paddock by itself under one management, to be run at one growth rate after another. All but the rate is made ready once. Its first day is drawn as days of
 * a side may be: a loop that was compiled without ever having gone that way is thrown away where it first does, and the first side began at a crawl.
 */
function alone({ sky, paddock, grass, midwinter }: FitPlace, management: Management): (ratePerDay: number) => Outcome {
  const plan = planOf(sky, { paddocks: [{ ...paddock, areaAc: 1, isMeadow: true }], grass, stock: [], management });
  const periods = yearsFrom(sky, midwinter);
  return (ratePerDay) => runPlan(sky, planAtRate(plan, ratePerDay), periods, { hasRunUp: false, start: cleared, tracedDays: 1 });
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
