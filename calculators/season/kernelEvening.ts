import { add, FLAG, GROUND, HERD, numberAt as numberIn, rowAt as rowIn, STATE, SUM, TRACE, wholeAt as wholeIn, YEAR } from './flat.ts';
import type { Memory } from './memory.ts';
import type { Plan } from './plan.ts';

// Constants of this module are folded into the code when it is compiled; those of another, its functions too, are looked up each time.
const numberAt = numberIn;
const rowAt = rowIn;
const wholeAt = wholeIn;
const { green: greenState, dead: deadState, litter: litterState, lastGrazed: lastGrazedState } = STATE;
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

/** Grazing where the herd is, hay for what it did not get, and the sums of the side. `traced` is where the day goes in the trace, if it does, or `nowhere`. */
export function kernelEvening(plan: Plan, memory: Memory, day: number, year: Float64Array, grazed: number, traced: number): void {
  const { paddocks } = plan;
  const { management: rule } = plan.side;
  const { rows, trace } = memory;
  const keptShare = numberAt(memory.herd, keptShareHerd);
  const demand = numberAt(plan.demandLb, day) * keptShare;
  let eatenLb = 0;
  if (grazed >= 0) {
    const row = rowAt(rows, grazed);
    const green = numberAt(row, greenState);
    const dead = numberAt(row, deadState);
    const mass = green + dead;
    // The divisions of the readable bite, not one over them: on bare ground the last bit decides whether anything still stands.
    const area = numberAt(row, areaGround);
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
    row[greenState] = greenLeft;
    row[deadState] = deadLeft;
    row[litterState] = numberAt(row, litterState) + trampled;
    row[lastGrazedState] = day;
    eatenLb = eaten * area;
    row[eatenSum] = numberAt(row, eatenSum) + eaten;
    row[trampledSum] = numberAt(row, trampledSum) + trampled;
    row[grazedDaysSum] = numberAt(row, grazedDaysSum) + 1;
    if (greenLeft + deadLeft < rule.stubbleLbPerAc) row[stubbleBrokenSum] = numberAt(row, stubbleBrokenSum) + 1;
    year[eatenYear] = numberAt(year, eatenYear) + eatenLb;
    if (demand > 0) year[grazedDaysYear] = numberAt(year, grazedDaysYear) + eatenLb / demand;
    if (traced >= 0) trace[traced + grazed * widthTrace + eatenTrace] = eaten;
  }
  if (demand > 0) {
    const fed = demand > eatenLb ? demand - eatenLb : 0;
    const fromBarn = fed / (1 - rule.feedingLossShare);
    if (rule.feedPaddock !== undefined) {
      const row = rowAt(rows, rule.feedPaddock);
      add(row, litterState, (fromBarn - fed) / numberAt(row, areaGround));
    }
    year[demandYear] = numberAt(year, demandYear) + demand;
    year[fedYear] = numberAt(year, fedYear) + fed;
    year[fromBarnYear] = numberAt(year, fromBarnYear) + fromBarn;
    if ((wholeAt(plan.flags, day) & inSeasonFlag) !== 0) year[fromBarnInSeasonYear] = numberAt(year, fromBarnInSeasonYear) + fromBarn;
  }
  year[daysYear] = numberAt(year, daysYear) + 1;
  if (traced < 0) return;
  memory.kept[day - memory.tracedFrom] = keptShare;
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    for (let field = 0; field < lastGrazedState; field += 1) trace[traced + paddock * widthTrace + field] = numberAt(rowAt(rows, paddock), field);
  }
}
