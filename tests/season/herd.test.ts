import { describe, expect, it } from 'vitest';
import { type HerdDay, herdAtStart, herdMorning, isOpen, type Stand } from '../../calculators/season/herd.ts';
import type { Management, Side } from '../../calculators/season/side.ts';
import { sideOf } from '../support/seasonPlace.ts';

/** Three paddocks of 100 acres and a meadow; a herd that eats 1,000 lb a day; stubble 600, ready from 800 lb. */
function place(change: Partial<Management> = {}): Side {
  return sideOf({ grazed: 0, meadow: 0 }, { paddocks: 3, grazedAc: 300, management: { stubbleLbPerAc: 600, mostDaysIn: 3, ...change } });
}
const stands = (...mass: readonly number[]): Stand[] => mass.map((standingLbPerAc) => ({ standingLbPerAc, restDays: 1000 }));
const day = (change: Partial<HerdDay> = {}): HerdDay => ({
  monthDay: 601,
  isTurnOut: false,
  isInSeason: true,
  isSaleDay: false,
  fullDemandLb: 1000,
  ...change,
});

describe('the herd’s morning', () => {
  it('moves to the next paddock in order after its days, and round again', () => {
    const herd = herdAtStart();
    const where = Array.from({ length: 10 }, () => herdMorning(herd, stands(2000, 2000, 2000, 2000), place(), day()));
    expect(where).toEqual([0, 0, 0, 1, 1, 1, 2, 2, 2, 0]);
  });
  it('leaves sooner at the stubble, for the paddock where most stands if so asked', () => {
    const herd = herdAtStart();
    const side = place({ next: 'most-grass' });
    expect(herdMorning(herd, stands(2000, 1500, 1800, 5000), side, day())).toBe(0);
    expect(herdMorning(herd, stands(601, 1500, 1800, 5000), side, day())).toBe(0);
    // What is above it by the last bit of the arithmetic is no grass.
    expect(herdMorning({ ...herd }, stands(600 + 1e-10, 1500, 1800, 5000), side, day())).toBe(2);
    expect(herdMorning(herd, stands(600, 1500, 1800, 5000), side, day())).toBe(2);
  });
  it('enters only what is rested and 200 lb above the stubble', () => {
    const herd = herdAtStart();
    const rested = (restDays: number): Stand[] => stands(500, 799, 2000, 0).map((stand, index) => (index === 2 ? { ...stand, restDays } : stand));
    expect(herdMorning(herd, rested(24), place({ leastRestDays: 25 }), day())).toBe(undefined);
    expect(herdMorning(herd, rested(25), place({ leastRestDays: 25 }), day())).toBe(2);
    expect(herdMorning(herdAtStart(), stands(500, 800, 0, 0), place(), day())).toBe(1);
  });
  it('goes on hay when none is ready, and back when one is; or stays where most stands', () => {
    const short = stands(600, 700, 500, 0);
    const herd = { ...herdAtStart(), paddock: 0, daysIn: 1 };
    expect(herdMorning(herd, short, place(), day())).toBe(undefined);
    expect(herdMorning(herd, stands(600, 900, 500, 0), place(), day())).toBe(1);
    expect(herdMorning({ ...herdAtStart(), paddock: 0, daysIn: 9 }, short, place({ whenShort: 'stay' }), day())).toBe(0);
    expect(herdMorning(herdAtStart(), short, place({ whenShort: 'stay' }), day())).toBe(1);
  });
  it('is not on grass out of season, nor without stock', () => {
    expect(herdMorning(herdAtStart(), stands(2000, 2000, 2000, 0), place(), day({ isInSeason: false }))).toBe(undefined);
    expect(herdMorning(herdAtStart(), stands(2000, 2000, 2000, 0), place(), day({ fullDemandLb: 0 }))).toBe(undefined);
  });
  it('comes off for the season when feed ahead falls below its days, until turn-out', () => {
    // Half of what stands above 600 lb on 300 acres: 100 lb an acre more are 15 days of 1,000 lb.
    const side = place({ pullBelowDays: 15, whenShort: 'stay' });
    const herd = herdAtStart();
    expect(herdMorning(herd, stands(700, 700, 700, 0), side, day())).toBe(0);
    expect(herdMorning(herd, stands(700, 700, 699, 0), side, day())).toBe(undefined);
    expect([herd.isPulled, herdMorning(herd, stands(3000, 3000, 3000, 0), side, day())]).toEqual([true, undefined]);
    expect(herdMorning(herd, stands(3000, 3000, 3000, 0), side, day({ isTurnOut: true }))).toBe(0);
  });
  it('sells a share on its day if feed ahead is below its days, and buys back at turn-out', () => {
    const side = place({ sale: { on: 715, belowDays: 16, share: 0.25 } });
    const herd = herdAtStart();
    herdMorning(herd, stands(720, 700, 700, 0), side, day({ isSaleDay: true }));
    expect(herd.keptShare).toBe(1);
    herdMorning(herd, stands(700, 700, 700, 0), side, day());
    expect(herd.keptShare).toBe(1);
    herdMorning(herd, stands(700, 700, 700, 0), side, day({ isSaleDay: true }));
    expect(herd.keptShare).toBe(0.75);
    herdMorning(herd, stands(700, 700, 700, 0), side, day({ isTurnOut: true }));
    expect(herd.keptShare).toBe(1);
  });
  it('finds a meadow open only after its hay, up to the pull', () => {
    const [pasture, , , meadow] = place().paddocks;
    if (!pasture || !meadow) throw new RangeError('there are four');
    const open = (date: number): boolean => isOpen(meadow, date, 1101);
    expect([open(601), open(914), open(915), open(1031), open(1101)]).toEqual([false, false, true, true, false]);
    expect(isOpen(pasture, 601, 1101)).toBe(true);
    const { grazedFrom: _, ...never } = meadow;
    expect(isOpen(never, 1001, 1101)).toBe(false);
  });
});
