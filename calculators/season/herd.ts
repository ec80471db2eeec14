import { neverGrazed } from './plan.ts';
import type { Management, Paddock, Side } from './side.ts';
import { isWithin, type MonthDay } from './weather.ts';

/** Where the herd is, and what was decided for the season. */
export interface HerdState {
  /** Paddock grazed, counted from 0; nothing: on hay. */
  paddock: number | undefined;
  daysIn: number;
  isPulled: boolean;
  /** Share of the stock that was not sold. */
  keptShare: number;
}
export const herdAtStart = (): HerdState => ({ paddock: undefined, daysIn: 0, isPulled: false, keptShare: 1 });

/** What the herd finds in a paddock in the morning. */
export interface Stand {
  readonly standingLbPerAc: number;
  readonly restDays: number;
}
export interface HerdDay {
  readonly monthDay: MonthDay;
  readonly isTurnOut: boolean;
  readonly isInSeason: boolean;
  readonly isSaleDay: boolean;
  /** What all stock would eat today if none were sold, pounds. */
  readonly fullDemandLb: number;
}

/** Whether stock may graze there today: a meadow only after its hay. */
export const isOpen = ({ isMeadow, grazedFrom = neverGrazed }: Paddock, monthDay: MonthDay, pull: MonthDay): boolean =>
  !isMeadow || (grazedFrom !== neverGrazed && isWithin(monthDay, grazedFrom, pull));

/** Days that what stands above the stubble would last, by the share of it that stock get. */
function daysAhead(stands: readonly Stand[], { paddocks, management }: Side, monthDay: MonthDay, demandLb: number): number {
  let feedLb = 0;
  for (const [index, paddock] of paddocks.entries()) {
    const stand = stands[index];
    if (stand === undefined || !isOpen(paddock, monthDay, management.pull)) continue;
    feedLb += Math.max(0, stand.standingLbPerAc - management.stubbleLbPerAc) * paddock.areaAc;
  }
  return (management.usableShare * feedLb) / demandLb;
}

/** The next paddock that is open, rested and tall enough: the next in order, or the one where most stands. Nothing if none is. */
function readyPaddock(stands: readonly Stand[], { paddocks, management }: Side, monthDay: MonthDay, here: number | undefined): number | undefined {
  let best: { readonly index: number; readonly mass: number } | undefined;
  for (let step = 1; step <= paddocks.length; step += 1) {
    const index = ((here ?? -1) + step) % paddocks.length;
    const [paddock, stand] = [paddocks[index], stands[index]];
    if (paddock === undefined || stand === undefined || index === here || !isOpen(paddock, monthDay, management.pull)) continue;
    if (stand.restDays < management.leastRestDays || stand.standingLbPerAc < management.stubbleLbPerAc + management.entryAboveLbPerAc) continue;
    if (management.next === 'in-order') return index;
    if (best === undefined || stand.standingLbPerAc > best.mass) best = { index, mass: stand.standingLbPerAc };
  }
  return best?.index;
}

/** Where most stands, whether it is ready or not. */
function tallestOpen(stands: readonly Stand[], { paddocks, management }: Side, monthDay: MonthDay): number | undefined {
  let best: { readonly index: number; readonly mass: number } | undefined;
  for (const [index, paddock] of paddocks.entries()) {
    const stand = stands[index];
    if (stand === undefined || !isOpen(paddock, monthDay, management.pull)) continue;
    if (best === undefined || stand.standingLbPerAc > best.mass) best = { index, mass: stand.standingLbPerAc };
  }
  return best?.index;
}

const isBelow = (days: number, least: number): boolean => least > 0 && days < least;

/** Changes what was decided for the season: turn-out begins anew, a sale and a pull wait for their conditions. */
function decideSeason(herd: HerdState, stands: readonly Stand[], side: Side, day: HerdDay): void {
  const { sale, pullBelowDays } = side.management;
  if (day.isTurnOut) Object.assign(herd, herdAtStart());
  const ahead = (demandLb: number): number => daysAhead(stands, side, day.monthDay, demandLb);
  if (sale && day.isSaleDay && day.fullDemandLb > 0 && ahead(day.fullDemandLb * herd.keptShare) < sale.belowDays) herd.keptShare = 1 - sale.share;
  const demandLb = day.fullDemandLb * herd.keptShare;
  if (day.isInSeason && !herd.isPulled && demandLb > 0 && isBelow(ahead(demandLb), pullBelowDays)) herd.isPulled = true;
}

/** Stock that graze to the stubble leave it to the last bit of the arithmetic, which must not decide whether they stay: so much above it is nothing. */
export const nothingLbPerAc = 1e-6;
const isAboveStubble = (standingLbPerAc: number, stubbleLbPerAc: number): boolean => standingLbPerAc - stubbleLbPerAc > nothingLbPerAc;

function staysIn(herd: HerdState, here: Stand, { mostDaysIn, stubbleLbPerAc }: Management): boolean {
  return herd.daysIn < mostDaysIn && isAboveStubble(here.standingLbPerAc, stubbleLbPerAc);
}

/**
 * The herd's morning on last evening's stand: begin the season, sell, pull, stay or move. Gives the paddock grazed today; nothing: hay today.
 */
export function herdMorning(herd: HerdState, stands: readonly Stand[], side: Side, day: HerdDay): number | undefined {
  const { management, paddocks } = side;
  decideSeason(herd, stands, side, day);
  if (!day.isInSeason || herd.isPulled || day.fullDemandLb * herd.keptShare <= 0) {
    herd.paddock = undefined;
    return undefined;
  }
  const here = herd.paddock;
  const [paddock, stand] = here === undefined ? [] : [paddocks[here], stands[here]];
  const open = paddock !== undefined && stand !== undefined && isOpen(paddock, day.monthDay, management.pull) ? stand : undefined;
  const stay = (): number | undefined => {
    herd.daysIn += 1;
    return here;
  };
  if (open && staysIn(herd, open, management)) return stay();
  const isStaying = management.whenShort === 'stay';
  const ready = readyPaddock(stands, side, day.monthDay, here);
  if (ready === undefined && open && (isAboveStubble(open.standingLbPerAc, management.stubbleLbPerAc) || isStaying)) return stay();
  herd.paddock = ready ?? (isStaying ? tallestOpen(stands, side, day.monthDay) : undefined);
  herd.daysIn = 1;
  return herd.paddock;
}
