import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { actualRestDays } from '../../calculators/math/rotation/actualRestDays.ts';
import { grazedDays } from '../../calculators/math/rotation/grazedDays.ts';
import { growthFromHeights } from '../../calculators/math/rotation/growthFromHeights.ts';
import { moveDays } from '../../calculators/math/rotation/moveDays.ts';
import { paddockAcres } from '../../calculators/math/rotation/paddockAcres.ts';
import { paddocksNeeded, wholePaddocks } from '../../calculators/math/rotation/paddocksNeeded.ts';
import { readyDay } from '../../calculators/math/rotation/readyDay.ts';
import { restDaysFromGrowth } from '../../calculators/math/rotation/restDaysFromGrowth.ts';
import { restDaysGiven } from '../../calculators/math/rotation/restDaysGiven.ts';
import { restingShare } from '../../calculators/math/rotation/restingShare.ts';
import { stockDaysPerAc } from '../../calculators/math/rotation/stockDaysPerAc.ts';
import { stripDepthFt } from '../../calculators/math/rotation/stripDepthFt.ts';
import { forageHeights } from '../../calculators/tables/forageHeights.ts';
import { restByGrowth } from '../../calculators/tables/restByGrowth.ts';
import { between } from '../support/numbers.ts';

const herds = fc.integer({ min: 1, max: 4 });
const near = (value: number, other: number) => expect(Math.abs(value - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));

describe('rest', () => {
  it('is undone by the growth that it was reckoned from', () => {
    fc.assert(
      fc.property(
        between(0, 10),
        between(0.1, 20),
        between(40, 500),
        between(0.5, 150),
        (stopHeightIn, gain, poundsPerAcreInch, growthLbPerAcDay) => {
          const startHeightIn = stopHeightIn + gain;
          const daysBetween = restDaysFromGrowth({ startHeightIn, stopHeightIn, poundsPerAcreInch, growthLbPerAcDay });
          near(growthFromHeights({ firstHeightIn: stopHeightIn, secondHeightIn: startHeightIn, daysBetween, poundsPerAcreInch }), growthLbPerAcDay);
        },
      ),
    );
  });
  it('at 70 lb a day is half of that at 35, as an article on rotation says', () => {
    const rest = (growthLbPerAcDay: number) => restDaysFromGrowth({ startHeightIn: 8, stopHeightIn: 4, poundsPerAcreInch: 250, growthLbPerAcDay });
    near(rest(70), rest(35) / 2);
  });
  it('refuses growth of zero, which has no answer', () => {
    expect(() => restDaysFromGrowth({ startHeightIn: 8, stopHeightIn: 4, poundsPerAcreInch: 250, growthLbPerAcDay: 0 })).toThrow(
      'restDaysFromGrowth needs growthLbPerAcDay above 0, got 0',
    );
  });
});

describe('paddocks', () => {
  it('give the rest that they were counted for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), between(0.5, 14), herds, (resting, stayDays, herdCount) => {
        const paddocks = resting + herdCount;
        const restDays = restDaysGiven({ paddocks, stayDays, herds: herdCount });
        near(paddocksNeeded({ restDays, stayDays, herds: herdCount }), paddocks);
        expect(wholePaddocks({ restDays, stayDays, herds: herdCount })).toBe(paddocks);
      }),
    );
  });
  it('rounded up give at least the rest, and one fewer would not', () => {
    fc.assert(
      fc.property(between(1, 120), between(0.5, 14), herds, (restDays, stayDays, herdCount) => {
        const paddocks = wholePaddocks({ restDays, stayDays, herds: herdCount });
        expect(restDaysGiven({ paddocks, stayDays, herds: herdCount })).toBeGreaterThanOrEqual(restDays * (1 - 1e-6));
        if (paddocks > herdCount) expect(restDaysGiven({ paddocks: paddocks - 1, stayDays, herds: herdCount })).toBeLessThan(restDays);
      }),
    );
  });
  it('rest and stay share the cycle as the paddocks do', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), between(0.5, 14), herds, (resting, stayDays, herdCount) => {
        const paddocks = resting + herdCount;
        const rest = restDaysGiven({ paddocks, stayDays, herds: herdCount });
        near(restingShare({ paddocks, herds: herdCount }), rest / (rest + herdCount * stayDays));
      }),
    );
  });
  it('of the reckoned size hold what the herd eats in its stay', () => {
    fc.assert(
      fc.property(
        between(10, 9000),
        between(0.5, 14),
        between(100, 4000),
        between(0.1, 1),
        (dailyDemandLb, stayDays, availableLbPerAc, grazedShare) => {
          const acres = paddockAcres({ dailyDemandLb, stayDays, availableLbPerAc, grazedShare });
          near((acres * availableLbPerAc * grazedShare) / stayDays, dailyDemandLb);
        },
      ),
    );
  });
  it('cut into strips add up to the field', () => {
    fc.assert(
      fc.property(between(0.1, 50), between(50, 3000), (areaAc, fenceLengthFt) => {
        near((stripDepthFt({ areaAc, fenceLengthFt }) * fenceLengthFt) / 43_560, areaAc);
      }),
    );
  });
});

describe('moves', () => {
  const plan = fc.record({
    startDay: fc.integer({ min: 1, max: 365 }),
    resting: fc.integer({ min: 0, max: 20 }),
    stayDays: fc.integer({ min: 1, max: 10 }),
    herds,
    leadDays: fc.integer({ min: 0, max: 5 }),
  });
  it('keep every herd always on one paddock, and no two herds on the same', () => {
    fc.assert(
      fc.property(plan, ({ resting, ...rest }) => {
        const moves = moveDays({ ...rest, paddocks: resting + rest.herds, moves: 12 });
        for (let herd = 1; herd <= rest.herds; herd += 1) {
          const own = moves.filter((move) => move.herd === herd);
          for (const [index, { outDay }] of own.entries()) expect(own[index + 1]?.inDay ?? outDay).toBe(outDay);
        }
        for (const move of moves) {
          const together = moves.filter(({ inDay, paddock }) => inDay === move.inDay && paddock === move.paddock);
          expect(together).toHaveLength(1);
        }
      }),
    );
  });
  it('rest each paddock as many days as the arithmetic says', () => {
    fc.assert(
      fc.property(plan, ({ resting, ...rest }) => {
        const paddocks = resting + rest.herds;
        const moves = moveDays({ ...rest, paddocks, moves: 3 * paddocks });
        const last = moves.filter(({ herd, paddock }) => herd === rest.herds && paddock === 1);
        const lead = moves.filter(({ herd, paddock }) => herd === 1 && paddock === 1);
        const left = last[0]?.outDay ?? Number.NaN;
        const back = lead.find(({ inDay }) => inDay >= left)?.inDay ?? Number.NaN;
        expect(back - left).toBe(restDaysGiven({ paddocks, stayDays: rest.stayDays, herds: rest.herds }));
      }),
    );
  });
  it('takes one herd, once through the paddocks and looked for three days ahead, unless told otherwise', () => {
    const moves = moveDays({ startDay: 100, paddocks: 3, stayDays: 4 });
    expect(moves.map(({ herd, paddock, inDay, lookDay }) => [herd, paddock, inDay, lookDay])).toEqual([
      [1, 1, 100, 97],
      [1, 2, 104, 101],
      [1, 3, 108, 105],
    ]);
  });
  it('say to look before going in, by the lead', () => {
    fc.assert(
      fc.property(plan, ({ resting, ...rest }) => {
        for (const { inDay, lookDay } of moveDays({ ...rest, paddocks: resting + rest.herds })) expect(inDay - lookDay).toBe(rest.leadDays);
      }),
    );
  });
});

describe('the height and rest tables', () => {
  it('start above where they stop, and give one default for a forage at most', () => {
    const preferred = new Map<string, number>();
    for (const row of forageHeights) {
      expect(row.startIn[0], row.name).toBeGreaterThan(row.stopIn[1]);
      expect(row.startIn[1], row.name).toBeGreaterThanOrEqual(row.startIn[0]);
      if (row.preferred) preferred.set(row.forage, (preferred.get(row.forage) ?? 0) + 1);
    }
    expect([...preferred.values()].filter((count) => count > 1)).toEqual([]);
  });
  it('never ask for less rest when growth is slower', () => {
    for (const place of new Set(restByGrowth.map((row) => row.place))) {
      const rows = restByGrowth.filter((row) => row.place === place);
      for (const [index, row] of rows.entries()) {
        const slower = rows[index + 1];
        if (slower) expect(slower.restDays[0], place).toBeGreaterThan(row.restDays[1]);
      }
    }
  });
});

describe('what a record tells', () => {
  const day = fc.integer({ min: -1000, max: 30_000 });
  it('fills a year with stays and rests that leave no day out', () => {
    fc.assert(
      fc.property(
        day,
        fc.array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 90 })), { minLength: 2, maxLength: 8 }),
        (start, stays) => {
          let [now, sum] = [start, 0];
          for (const [stay, rest] of stays) {
            sum += grazedDays({ inDay: now, outDay: now + stay }) + actualRestDays({ outDay: now + stay, nextInDay: now + stay + rest });
            now += stay + rest;
          }
          expect(sum).toBe(now - start);
        },
      ),
    );
  });
  it('counts half a day where they came and went on one day, and refuses a stay or a rest that ends before it begins', () => {
    expect(grazedDays({ inDay: 7, outDay: 7 })).toBe(0.5);
    expect(() => grazedDays({ inDay: 7, outDay: 6 })).toThrow('grazedDays needs outDay');
    expect(() => actualRestDays({ outDay: 7, nextInDay: 6 })).toThrow('actualRestDays needs nextInDay');
  });
  it('gives the same stock-days an acre in twice the herd for half the days, and none to grass where hay fed all', () => {
    fc.assert(
      fc.property(between(1, 5000), between(1, 40), between(0.5, 500), between(5, 60), (eatenLbPerDay, days, areaAc, yardstickLbPerDay) => {
        const shared = { areaAc, yardstickLbPerDay };
        near(stockDaysPerAc({ eatenLbPerDay, days, ...shared }), stockDaysPerAc({ eatenLbPerDay: eatenLbPerDay * 2, days: days / 2, ...shared }));
        expect(stockDaysPerAc({ eatenLbPerDay, days, ...shared, hayFedLb: eatenLbPerDay * days * 1.01 })).toBe(0);
      }),
    );
  });
  it('says a day on which the height is there at the growth that was read, and not a day sooner', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: 1, max: 60 }), between(1, 8), between(0.1, 5), between(0.5, 12), (firstDay, apart, low, gain, more) => {
        const [first, last] = [
          { day: firstDay, heightIn: low },
          { day: firstDay + apart, heightIn: low + gain },
        ];
        const startHeightIn = low + gain + more;
        const ready = readyDay({ first, last, startHeightIn });
        if (ready === undefined) throw new RangeError('it grew');
        const heightOn = (on: number): number => last.heightIn + ((on - last.day) * gain) / apart;
        expect(heightOn(ready)).toBeGreaterThanOrEqual(startHeightIn - 1e-6);
        expect(heightOn(ready - 1)).toBeLessThan(startHeightIn);
      }),
    );
  });
  it('has it ready on the day when it was read tall enough, and on none where it fell back', () => {
    const first = { day: 100, heightIn: 9 };
    expect(readyDay({ first, last: { day: 110, heightIn: 8 }, startHeightIn: 8 })).toBe(110);
    expect(readyDay({ first, last: { day: 110, heightIn: 7.5 }, startHeightIn: 8 })).toBeUndefined();
  });
});
