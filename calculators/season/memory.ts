import { GROUND, HERD, numberAt, rowAt, rowsOf, STATE, SUM, TRACE, YEAR } from './flat.ts';
import type { Plan } from './plan.ts';
import { type Start, usualStart } from './side.ts';

/** All that a run changes. */
export interface Memory {
  /** A row of `STATE.width` numbers a paddock. */
  readonly states: readonly Float64Array[];
  readonly herd: Float64Array;
  /** `SUM.width` numbers a paddock and period, and their rows. */
  readonly sums: Float64Array;
  readonly sumRows: readonly Float64Array[];
  /** `YEAR.width` numbers a period, and their rows. */
  readonly years: Float64Array;
  readonly yearRows: readonly Float64Array[];
  /** `TRACE.width` numbers a paddock and day, from `tracedFrom` on; nothing where no day is drawn. */
  readonly trace: Float64Array | undefined;
  readonly tracedFrom: number;
}

const longRested = 1000;
/** No paddock, as the flat herd writes it. */
export const nowhere = -1;

function statesOf({ paddocks, grounds }: Plan, start: Start): readonly Float64Array[] {
  const states = rowsOf(new Float64Array(paddocks * STATE.width), STATE.width);
  for (const [paddock, state] of states.entries()) {
    const ground = rowAt(grounds, paddock);
    state[STATE.depletion] = start.depletedShare * numberAt(ground, GROUND.available);
    state[STATE.top] = start.depletedShare * numberAt(ground, GROUND.topAvailable);
    state[STATE.green] = start.greenLbPerAc;
    state[STATE.dead] = start.deadLbPerAc;
    state[STATE.litter] = start.litterLbPerAc;
    state[STATE.rest] = longRested;
  }
  return states;
}
export const restingHerd = (): Float64Array =>
  Float64Array.from({ length: HERD.width }, (_, field) => (field === HERD.paddock ? nowhere : field === HERD.keptShare ? 1 : 0));

export function memoryOf(
  plan: Plan,
  periods: number,
  { start = usualStart, tracedFrom = 0, tracedDays = 0 }: { readonly start?: Start; readonly tracedFrom?: number; readonly tracedDays?: number } = {},
): Memory {
  const sums = new Float64Array(periods * plan.paddocks * SUM.width);
  const years = new Float64Array(periods * YEAR.width);
  return {
    states: statesOf(plan, start),
    herd: restingHerd(),
    sums,
    sumRows: rowsOf(sums, SUM.width),
    years,
    yearRows: rowsOf(years, YEAR.width),
    trace: tracedDays > 0 ? new Float64Array(tracedDays * plan.paddocks * TRACE.width) : undefined,
    tracedFrom,
  };
}
