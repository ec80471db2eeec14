import { add, FLAG, GROUND, HERD, numberAt as numberIn, rowAt as rowIn, STATE, wholeAt as wholeIn, YEAR } from './flat.ts';
import { nothingLbPerAc } from './herd.ts';
import { type Memory, nowhere } from './memory.ts';
import type { Plan } from './plan.ts';
import type { Sky } from './sky.ts';
import { isWithin } from './weather.ts';

// Constants of this module are folded into the code when it is compiled; those of another, its functions too, are looked up each time.
const numberAt = numberIn;
const rowAt = rowIn;
const wholeAt = wholeIn;
const { green: greenState, dead: deadState, lastGrazed: lastGrazedState } = STATE;
const { area: areaGround, isMeadow: isMeadowGround, grazedFrom: grazedFromGround } = GROUND;
const { paddock: paddockHerd, daysIn: daysInHerd, isPulled: isPulledHerd, keptShare: keptShareHerd } = HERD;
const { moves: movesYear, pulledOn: pulledOnYear, soldOn: soldOnYear } = YEAR;
const nothing = nothingLbPerAc;
const { inSeason: inSeasonFlag, turnOut: turnOutFlag, sell: sellFlag } = FLAG;

/** `isOpen` of the readable herd. */
function isOpenAt(row: Float64Array, monthDay: number, pull: number): boolean {
  if (numberAt(row, isMeadowGround) === 0) return true;
  const from = numberAt(row, grazedFromGround);
  return from > 0 && isWithin(monthDay, from, pull);
}
const standingIn = (row: Float64Array): number => numberAt(row, greenState) + numberAt(row, deadState);

/** Whether the feed ahead lasts less than so many days. Only whole numbers and arrays cross between these functions: a fraction would be made an object. */
function isShortOfFeed(plan: Plan, { rows, herd }: Memory, day: number, monthDay: number, belowDays: number): boolean {
  const { paddocks } = plan;
  const { stubbleLbPerAc, usableShare, pull } = plan.side.management;
  const demandLb = numberAt(plan.demandLb, day) * numberAt(herd, keptShareHerd);
  // More feed than this is enough whatever the last bits say, and the other paddocks need no look; near it, the readable herd's own comparison decides.
  const amplyLb = (1.001 * belowDays * demandLb) / usableShare;
  let feedLb = 0;
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    const row = rowAt(rows, paddock);
    const above = standingIn(row) - stubbleLbPerAc;
    if (above <= 0 || !isOpenAt(row, monthDay, pull)) continue;
    feedLb += above * numberAt(row, areaGround);
    if (feedLb > amplyLb) return false;
  }
  return (usableShare * feedLb) / demandLb < belowDays;
}

function readyAt(plan: Plan, rows: readonly Float64Array[], day: number, monthDay: number, here: number): number {
  const { paddocks } = plan;
  const { stubbleLbPerAc, entryAboveLbPerAc, leastRestDays, pull, next } = plan.side.management;
  const entry = stubbleLbPerAc + entryAboveLbPerAc;
  const yesterday = day - 1;
  let best = nowhere;
  let most = -1;
  let paddock = here;
  for (let step = 1; step <= paddocks; step += 1) {
    paddock += 1;
    if (paddock >= paddocks) paddock = 0;
    const row = rowAt(rows, paddock);
    if (paddock === here || yesterday - numberAt(row, lastGrazedState) < leastRestDays) continue;
    const mass = standingIn(row);
    if (mass < entry || !isOpenAt(row, monthDay, pull)) continue;
    if (next === 'in-order') return paddock;
    if (mass > most) {
      most = mass;
      best = paddock;
    }
  }
  return best;
}

function tallestAt({ paddocks, side }: Plan, rows: readonly Float64Array[], monthDay: number): number {
  let best = nowhere;
  let most = -1;
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    const row = rowAt(rows, paddock);
    const mass = standingIn(row);
    if (mass > most && isOpenAt(row, monthDay, side.management.pull)) {
      most = mass;
      best = paddock;
    }
  }
  return best;
}

/** Where the herd goes from `here` on a day in season: stays, moves, or goes where most stands. */
function goesTo(plan: Plan, memory: Memory, day: number, monthDay: number, here: number, year: Float64Array): number {
  const { herd, rows } = memory;
  const { stubbleLbPerAc, whenShort, mostDaysIn, pull } = plan.side.management;
  const isOpenHere = here >= 0 && isOpenAt(rowAt(rows, here), monthDay, pull);
  const isAbove = here >= 0 && standingIn(rowAt(rows, here)) - stubbleLbPerAc > nothing;
  const isStaying = whenShort === 'stay';
  const daysIn = numberAt(herd, daysInHerd);
  if (isOpenHere && isAbove && daysIn < mostDaysIn) {
    herd[daysInHerd] = daysIn + 1;
    return here;
  }
  let next = readyAt(plan, rows, day, monthDay, here);
  if (next < 0 && isOpenHere && (isAbove || isStaying)) {
    herd[daysInHerd] = daysIn + 1;
    return here;
  }
  if (next < 0 && isStaying) next = tallestAt(plan, rows, monthDay);
  herd[daysInHerd] = 1;
  if (next >= 0) add(year, movesYear, 1);
  return next;
}

/** `herdMorning` over flat arrays. Gives the paddock grazed today, or `nowhere`; `year` holds the sums of the day's period. */
export function kernelHerd(plan: Plan, sky: Sky, memory: Memory, day: number, year: Float64Array): number {
  const { herd } = memory;
  const { pullBelowDays, sale } = plan.side.management;
  const flag = wholeAt(plan.flags, day);
  const monthDay = wholeAt(sky.monthDay, day);
  if (flag & turnOutFlag) {
    herd[paddockHerd] = nowhere;
    herd[daysInHerd] = 0;
    herd[isPulledHerd] = 0;
    herd[keptShareHerd] = 1;
  }
  // Most days of winter end here, and all days of a growth rate's fit.
  if ((flag & (inSeasonFlag | sellFlag)) === 0) {
    herd[paddockHerd] = nowhere;
    return nowhere;
  }
  const isWanting = numberAt(plan.demandLb, day) > 0;
  if (flag & sellFlag && sale !== undefined && isWanting) {
    if (isShortOfFeed(plan, memory, day, monthDay, sale.belowDays)) {
      herd[keptShareHerd] = 1 - sale.share;
      year[soldOnYear] = monthDay;
    }
  }
  const isGrazing = (flag & inSeasonFlag) !== 0 && numberAt(herd, isPulledHerd) === 0 && isWanting && numberAt(herd, keptShareHerd) > 0;
  if (isGrazing && pullBelowDays > 0 && isShortOfFeed(plan, memory, day, monthDay, pullBelowDays)) {
    herd[isPulledHerd] = 1;
    year[pulledOnYear] = monthDay;
    herd[paddockHerd] = nowhere;
    return nowhere;
  }
  const goes = isGrazing ? goesTo(plan, memory, day, monthDay, numberAt(herd, paddockHerd), year) : nowhere;
  herd[paddockHerd] = goes;
  return goes;
}
