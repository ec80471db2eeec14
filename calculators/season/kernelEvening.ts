import { add, FLAG, GROUND, HERD, numberAt, rowAt, STATE, SUM, TRACE, wholeAt, YEAR } from './flat.ts';
import type { Memory } from './memory.ts';
import type { Plan } from './plan.ts';

// Constants of this module are folded into the code when it is compiled; those of another are looked up each time.
const { green: greenState, dead: deadState, litter: litterState, rest: restState } = STATE;
const { area: areaGround } = GROUND;
const { eaten: eatenSum, trampled: trampledSum, grazedDays: grazedDaysSum, stubbleBroken: stubbleBrokenSum } = SUM;
const { width: widthTrace, eaten: eatenTrace } = TRACE;
const {
  demand: demandYear,
  eaten: eatenYear,
  grazedDays: grazedDaysYear,
  fed: fedYear,
  fromBarn: fromBarnYear,
  fromBarnInSeason: fromBarnInSeasonYear,
  days: daysYear,
} = YEAR;
const { keptShare: keptShareHerd } = HERD;
const { inSeason: inSeasonFlag } = FLAG;

/** Grazing where the herd is, hay for what it did not get, and the sums of the side. */
export function kernelEvening(plan: Plan, memory: Memory, day: number, ofPeriod: number, year: Float64Array, grazed: number): void {
  const { paddocks, grounds } = plan;
  const { management: rule } = plan.side;
  const { states, trace } = memory;
  const traced = (day - memory.tracedFrom) * paddocks * widthTrace;
  const isTraced = trace !== undefined && traced >= 0 && traced < trace.length;
  const demand = numberAt(plan.demandLb, day) * numberAt(memory.herd, keptShareHerd);
  let eatenLb = 0;
  if (grazed >= 0) {
    const state = rowAt(states, grazed);
    const ground = rowAt(grounds, grazed);
    const sums = rowAt(memory.sumRows, ofPeriod * paddocks + grazed);
    const green = numberAt(state, greenState);
    const dead = numberAt(state, deadState);
    const mass = green + dead;
    // The divisions of the readable bite, not one over them: on bare ground the last bit decides whether anything still stands.
    const area = numberAt(ground, areaGround);
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
    state[greenState] = greenLeft;
    state[deadState] = deadLeft;
    state[litterState] = numberAt(state, litterState) + trampled;
    state[restState] = 0;
    eatenLb = eaten * area;
    sums[eatenSum] = numberAt(sums, eatenSum) + eaten;
    sums[trampledSum] = numberAt(sums, trampledSum) + trampled;
    sums[grazedDaysSum] = numberAt(sums, grazedDaysSum) + 1;
    if (greenLeft + deadLeft < rule.stubbleLbPerAc) sums[stubbleBrokenSum] = numberAt(sums, stubbleBrokenSum) + 1;
    year[eatenYear] = numberAt(year, eatenYear) + eatenLb;
    if (demand > 0) year[grazedDaysYear] = numberAt(year, grazedDaysYear) + eatenLb / demand;
    if (isTraced) trace[traced + grazed * widthTrace + eatenTrace] = eaten;
  }
  const fed = demand > eatenLb ? demand - eatenLb : 0;
  const fromBarn = fed / (1 - rule.feedingLossShare);
  if (rule.feedPaddock !== undefined) {
    add(rowAt(states, rule.feedPaddock), litterState, (fromBarn - fed) / numberAt(rowAt(grounds, rule.feedPaddock), areaGround));
  }
  year[demandYear] = numberAt(year, demandYear) + demand;
  year[fedYear] = numberAt(year, fedYear) + fed;
  year[fromBarnYear] = numberAt(year, fromBarnYear) + fromBarn;
  if ((wholeAt(plan.flags, day) & inSeasonFlag) !== 0) year[fromBarnInSeasonYear] = numberAt(year, fromBarnInSeasonYear) + fromBarn;
  year[daysYear] = numberAt(year, daysYear) + 1;
  if (!isTraced) return;
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    for (let field = 0; field < restState; field += 1) trace[traced + paddock * widthTrace + field] = numberAt(rowAt(states, paddock), field);
  }
}
