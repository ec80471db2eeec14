import { add, ROW, rowAt, STATE, wholeAt } from './flat.ts';
import { type Periods, yearsFrom } from './hayYears.ts';
import { runKernel } from './kernel.ts';
import { type Memory, memoryOf } from './memory.ts';
import { type Plan, planOf } from './plan.ts';
import type { Side, Start } from './side.ts';
import type { Sky } from './sky.ts';
import type { MonthDay } from './weather.ts';

/** Days of the run-up: the record's first two years, run once before anything counts, so that the made-up start wears off. */
const runUpDays = 731;
const sliceDays = 365;

/** What a run leaves behind. */
export interface Outcome {
  readonly plan: Plan;
  readonly periods: Periods;
  readonly memory: Memory;
}

export interface RunOptions {
  /** The date from which years are summed; the turn-out if left out. */
  readonly from?: MonthDay;
  /** Whether the first two years are run once before; yes if left out. */
  readonly hasRunUp?: boolean;
  readonly start?: Start;
  /** Days to be drawn. */
  readonly tracedFrom?: number;
  readonly tracedDays?: number;
}

/**
 * One management over one record, a year at a time: yields the share that is done after each, so that whoever runs it can show it, or stop, between two
 * years. The same sky and side give the same numbers to the last bit.
 */
export const runBySteps = (sky: Sky, side: Side, options: RunOptions = {}): Generator<number, Outcome> =>
  planBySteps(sky, planOf(sky, side), yearsFrom(sky, options.from ?? side.management.turnOut), options);

function* planBySteps(sky: Sky, plan: Plan, periods: Periods, options: Omit<RunOptions, 'from'>): Generator<number, Outcome> {
  const upTo = options.hasRunUp === false ? 0 : Math.min(sky.days, runUpDays);
  const all = upTo + sky.days;
  const memory = memoryOf(plan, periods.count, options);
  if (upTo > 0) {
    const runUp = memoryOf(plan, wholeAt(periods.period, upTo - 1) + 1, { ...options, tracedDays: 0 });
    for (let from = 0; from < upTo; from += sliceDays) {
      const to = Math.min(upTo, from + sliceDays);
      runKernel(plan, sky, periods.period, runUp, from, to);
      yield to / all;
    }
    // The stand and the water go on; the herd begins anew.
    for (const [paddock, row] of memory.rows.entries()) {
      row.set(rowAt(runUp.rows, paddock).subarray(ROW.state, ROW.ground));
      // Days are counted from 0 again.
      add(row, STATE.lastGrazed, -upTo);
    }
  }
  for (let from = 0; from < sky.days; from += sliceDays) {
    const to = Math.min(sky.days, from + sliceDays);
    runKernel(plan, sky, periods.period, memory, from, to);
    yield (upTo + to) / all;
  }
  return { plan, periods, memory };
}

/** The same at one go. */
export const run = (sky: Sky, side: Side, options?: RunOptions): Outcome => lastOf(runBySteps(sky, side, options));
/** The same of a plan that is there already, with the years into which it is summed. */
export const runPlan = (sky: Sky, plan: Plan, periods: Periods, options: Omit<RunOptions, 'from'>): Outcome =>
  lastOf(planBySteps(sky, plan, periods, options));

function lastOf<Last>(steps: Generator<number, Last>): Last {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
