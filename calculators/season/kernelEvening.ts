import { add, FLAG, GROUND, numberAt, STATE, SUM, TRACE, wholeAt, YEAR } from './flat.ts';
import type { Memory } from './memory.ts';
import type { Plan } from './plan.ts';

/** Grazing where the herd is, hay for what it did not get, and the sums of the side. */
export function kernelEvening(plan: Plan, memory: Memory, day: number, ofPeriod: number, grazed: number, demand: number, made: number): void {
  const { ground, paddocks } = plan;
  const { management: rule } = plan.side;
  const { state, sums, years, trace } = memory;
  const traced = (day - memory.tracedFrom) * paddocks * TRACE.width;
  const isTraced = trace !== undefined && traced >= 0 && traced < trace.length;
  const y = ofPeriod * YEAR.width;
  let eatenLb = 0;
  if (grazed >= 0) {
    const s = grazed * STATE.width;
    const u = (ofPeriod * paddocks + grazed) * SUM.width;
    const area = numberAt(ground, grazed * GROUND.width + GROUND.area);
    const green = numberAt(state, s + STATE.green);
    const dead = numberAt(state, s + STATE.dead);
    const mass = green + dead;
    const within = Math.max(0, mass - rule.outOfReachLbPerAc);
    const wanted = demand * Math.min(1, mass / rule.fullIntakeFromLbPerAc);
    const eaten = Math.min(wanted / area, within / (1 + rule.trampledPerEaten));
    const trampled = eaten * rule.trampledPerEaten;
    const gone = eaten + trampled;
    const preferred = rule.greenPreference * green;
    const greenShare = preferred + dead > 0 ? preferred / (preferred + dead) : 0;
    const fromGreen = Math.min(green, Math.max(gone - dead, gone * greenShare));
    const greenLeft = green - fromGreen;
    const deadLeft = Math.max(0, dead - (gone - fromGreen));
    state[s + STATE.green] = greenLeft;
    state[s + STATE.dead] = deadLeft;
    add(state, s + STATE.litter, trampled);
    state[s + STATE.rest] = 0;
    eatenLb = eaten * area;
    add(sums, u + SUM.eaten, eaten);
    add(sums, u + SUM.trampled, trampled);
    add(sums, u + SUM.grazedDays, 1);
    if (greenLeft + deadLeft < rule.stubbleLbPerAc) add(sums, u + SUM.stubbleBroken, 1);
    add(years, y + YEAR.eaten, eatenLb);
    if (demand > 0) add(years, y + YEAR.grazedDays, eatenLb / demand);
    if (isTraced) trace[traced + grazed * TRACE.width + TRACE.eaten] = eaten;
  }
  const fed = demand > eatenLb ? demand - eatenLb : 0;
  const fromBarn = fed / (1 - rule.feedingLossShare);
  if (rule.feedPaddock !== undefined) {
    add(state, rule.feedPaddock * STATE.width + STATE.litter, (fromBarn - fed) / numberAt(ground, rule.feedPaddock * GROUND.width + GROUND.area));
  }
  add(years, y + YEAR.demand, demand);
  add(years, y + YEAR.fed, fed);
  add(years, y + YEAR.fromBarn, fromBarn);
  if ((wholeAt(plan.flags, day) & FLAG.inSeason) !== 0) add(years, y + YEAR.fromBarnInSeason, fromBarn);
  add(years, y + YEAR.made, made);
  add(years, y + YEAR.days, 1);
  if (!isTraced) return;
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    for (let field = 0; field < STATE.rest; field += 1)
      trace[traced + paddock * TRACE.width + field] = numberAt(state, paddock * STATE.width + field);
  }
}
