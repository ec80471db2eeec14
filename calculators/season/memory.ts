import { GROUND, HERD, numberAt, STATE, SUM, TRACE, YEAR } from './flat.ts';
import type { Plan } from './plan.ts';
import { type Start, usualStart } from './side.ts';

/** All that a run changes. */
export interface Memory {
  /** `STATE.width` numbers a paddock. */
  readonly state: Float64Array;
  readonly herd: Float64Array;
  /** `SUM.width` numbers a paddock and period. */
  readonly sums: Float64Array;
  /** `YEAR.width` numbers a period. */
  readonly years: Float64Array;
  /** `TRACE.width` numbers a paddock and day, from `tracedFrom` on; nothing where no day is drawn. */
  readonly trace: Float64Array | undefined;
  readonly tracedFrom: number;
}

const longRested = 1000;
/** No paddock, as the flat herd writes it. */
export const nowhere = -1;

function stateOf({ paddocks, ground }: Plan, start: Start): Float64Array {
  const state = new Float64Array(paddocks * STATE.width);
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    const [s, g] = [paddock * STATE.width, paddock * GROUND.width];
    state[s + STATE.depletion] = start.depletedShare * numberAt(ground, g + GROUND.available);
    state[s + STATE.top] = start.depletedShare * numberAt(ground, g + GROUND.topAvailable);
    state[s + STATE.green] = start.greenLbPerAc;
    state[s + STATE.dead] = start.deadLbPerAc;
    state[s + STATE.litter] = start.litterLbPerAc;
    state[s + STATE.rest] = longRested;
  }
  return state;
}
export const restingHerd = (): Float64Array =>
  Float64Array.from({ length: HERD.width }, (_, field) => (field === HERD.paddock ? nowhere : field === HERD.keptShare ? 1 : 0));

export function memoryOf(
  plan: Plan,
  periods: number,
  { start = usualStart, tracedFrom = 0, tracedDays = 0 }: { readonly start?: Start; readonly tracedFrom?: number; readonly tracedDays?: number } = {},
): Memory {
  return {
    state: stateOf(plan, start),
    herd: restingHerd(),
    sums: new Float64Array(periods * plan.paddocks * SUM.width),
    years: new Float64Array(periods * YEAR.width),
    trace: tracedDays > 0 ? new Float64Array(tracedDays * plan.paddocks * TRACE.width) : undefined,
    tracedFrom,
  };
}
