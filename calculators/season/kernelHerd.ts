import { add, FLAG, GROUND, HERD, numberAt, STATE, wholeAt, YEAR } from './flat.ts';
import { type Memory, nowhere } from './memory.ts';
import type { Plan } from './plan.ts';
import type { Sky } from './sky.ts';
import { isWithin } from './weather.ts';

/** `isOpen` of the readable herd. */
function isOpenAt({ ground, side }: Plan, paddock: number, monthDay: number): boolean {
  const g = paddock * GROUND.width;
  if (numberAt(ground, g + GROUND.isMeadow) === 0) return true;
  const from = numberAt(ground, g + GROUND.grazedFrom);
  return from > 0 && isWithin(monthDay, from, side.management.pull);
}
const standingAt = (state: Float64Array, paddock: number): number =>
  numberAt(state, paddock * STATE.width + STATE.green) + numberAt(state, paddock * STATE.width + STATE.dead);

function daysAheadAt(plan: Plan, state: Float64Array, monthDay: number, demandLb: number): number {
  const { stubbleLbPerAc, usableShare } = plan.side.management;
  let feedLb = 0;
  for (let paddock = 0; paddock < plan.paddocks; paddock += 1) {
    if (!isOpenAt(plan, paddock, monthDay)) continue;
    feedLb += Math.max(0, standingAt(state, paddock) - stubbleLbPerAc) * numberAt(plan.ground, paddock * GROUND.width + GROUND.area);
  }
  return (usableShare * feedLb) / demandLb;
}

function readyAt(plan: Plan, state: Float64Array, monthDay: number, here: number): number {
  const { management } = plan.side;
  const entry = management.stubbleLbPerAc + management.entryAboveLbPerAc;
  let best = nowhere;
  let most = -1;
  let paddock = here;
  for (let step = 1; step <= plan.paddocks; step += 1) {
    paddock += 1;
    if (paddock >= plan.paddocks) paddock = 0;
    if (paddock === here || !isOpenAt(plan, paddock, monthDay)) continue;
    const mass = standingAt(state, paddock);
    if (numberAt(state, paddock * STATE.width + STATE.rest) < management.leastRestDays || mass < entry) continue;
    if (management.next === 'in-order') return paddock;
    if (mass > most) {
      most = mass;
      best = paddock;
    }
  }
  return best;
}

function tallestAt(plan: Plan, state: Float64Array, monthDay: number): number {
  let best = nowhere;
  let most = -1;
  for (let paddock = 0; paddock < plan.paddocks; paddock += 1) {
    const mass = standingAt(state, paddock);
    if (mass > most && isOpenAt(plan, paddock, monthDay)) {
      most = mass;
      best = paddock;
    }
  }
  return best;
}

/** Where the herd goes from `here` on a day in season: stays, moves, or goes where most stands. */
function goesTo(plan: Plan, memory: Memory, monthDay: number, here: number, year: number): number {
  const { herd, state, years } = memory;
  const { management } = plan.side;
  const standing = here < 0 ? 0 : standingAt(state, here);
  const isOpenHere = here >= 0 && isOpenAt(plan, here, monthDay);
  const isAbove = standing > management.stubbleLbPerAc;
  const isStaying = management.whenShort === 'stay';
  if (isOpenHere && isAbove && numberAt(herd, HERD.daysIn) < management.mostDaysIn) {
    add(herd, HERD.daysIn, 1);
    return here;
  }
  let next = readyAt(plan, state, monthDay, here);
  if (next < 0 && isOpenHere && (isAbove || isStaying)) {
    add(herd, HERD.daysIn, 1);
    return here;
  }
  if (next < 0 && isStaying) next = tallestAt(plan, state, monthDay);
  herd[HERD.daysIn] = 1;
  if (next >= 0) add(years, year + YEAR.moves, 1);
  return next;
}

/** `herdMorning` over flat arrays. Gives the paddock grazed today, or `nowhere`; `year` is where the sums of the day's period begin. */
export function kernelHerd(plan: Plan, sky: Sky, memory: Memory, day: number, year: number): number {
  const { herd, state, years } = memory;
  const { pullBelowDays, sale } = plan.side.management;
  const flag = wholeAt(plan.flags, day);
  const monthDay = wholeAt(sky.monthDay, day);
  const fullDemand = numberAt(plan.demandLb, day);
  if (flag & FLAG.turnOut) {
    herd[HERD.paddock] = nowhere;
    herd[HERD.daysIn] = 0;
    herd[HERD.isPulled] = 0;
    herd[HERD.keptShare] = 1;
  }
  if (flag & FLAG.sell && sale !== undefined && fullDemand > 0) {
    if (daysAheadAt(plan, state, monthDay, fullDemand * numberAt(herd, HERD.keptShare)) < sale.belowDays) herd[HERD.keptShare] = 1 - sale.share;
  }
  const demand = fullDemand * numberAt(herd, HERD.keptShare);
  const isGrazing = (flag & FLAG.inSeason) !== 0 && numberAt(herd, HERD.isPulled) === 0 && demand > 0;
  if (isGrazing && pullBelowDays > 0 && daysAheadAt(plan, state, monthDay, demand) < pullBelowDays) {
    herd[HERD.isPulled] = 1;
    years[year + YEAR.pulledOn] = monthDay;
    herd[HERD.paddock] = nowhere;
    return nowhere;
  }
  const goes = isGrazing ? goesTo(plan, memory, monthDay, numberAt(herd, HERD.paddock), year) : nowhere;
  herd[HERD.paddock] = goes;
  return goes;
}
