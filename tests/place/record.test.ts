import { describe, expect, it } from 'vitest';
import { rainGauge } from '../../calculators/asks/rainGauge.ts';
import { understandRecord } from '../../calculators/kit/record/understandRecord.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import type { Row } from '../../src/place/model/row.ts';
import { stockToday, yardstickOf } from '../../src/place/offer/stockToday.ts';
import { dayIn } from '../../src/place/record/days.ts';
import { groundsById, groundsOf } from '../../src/place/record/grounds.ts';
import { herdsOf } from '../../src/place/record/herds.ts';
import { heightGap, plannedOf } from '../../src/place/record/planned.ts';
import { sameWeek, shortestRest } from '../../src/place/record/pointed.ts';
import { lastReading, rainText, unreadDays } from '../../src/place/record/rainText.ts';
import { alsoThen, hayOutside, staysOf, twicePlaced } from '../../src/place/record/stays.ts';
import { groundYears } from '../../src/place/record/years.ts';
import { near } from '../support/near.ts';
import { aPlace, withPasture } from './aPlace.ts';
import { counting, lowToHigh, today } from './aRecord.ts';
import { aHay, aMove, aPlan, aRain } from './aRow.ts';

// What is expected was worked out by hand on a calendar and with a pencil: common practice.

describe('where herds stand', () => {
  it('is where the last move without an end took them, and is not known before one', () => {
    expect(herdsOf(aPlace(), [], today)).toEqual([{ number: 1, parts: [] }]);
    expect(herdsOf(aPlace(), lowToHigh, today)).toMatchObject([{ number: 1, parts: [{ id: 'm3' }] }]);
  });
  it('is where they are until the day that was told as out has come', () => {
    const [leavesLater, leavesToday] = [aMove({ outDay: '2026-06-21' }), aMove({ outDay: '2026-06-20' })];
    expect(herdsOf(aPlace(), [leavesLater], today)).toMatchObject([{ parts: [{ id: 'm1' }] }]);
    expect(herdsOf(aPlace(), [leavesToday], today)).toEqual([{ number: 1, parts: [] }]);
  });
  it('is told of each herd, in the order of their numbers', () => {
    const place = aPlace({
      herd: [
        { id: 'ewes', kind: 'ewe', countHead: 60, herdNumber: 2 },
        { id: 'cows', kind: 'cow', countHead: 45, herdNumber: 1 },
      ],
    });
    const rows = [aMove(), aMove({ id: 'm9', herdNumber: 3, paddockId: 'high' })];
    expect(herdsOf(place, rows, today).map(({ number, parts }) => [number, ...parts.map(({ id }) => id)])).toEqual([[1, 'm1'], [2], [3, 'm9']]);
  });
});

describe('a stay', () => {
  // 45 cows of 30 lb, 7 days on 85 ac: 45 x 7 / 85 = 3.706 cow-days an acre, 111.2 lb.
  it('counts its days, its rest before, and stock-days an acre', () => {
    const [first, second, third] = staysOf(aPlace(), lowToHigh, counting);
    expect(first).toMatchObject({ days: 7, isOpen: false, name: 'Low bench' });
    expect(first?.restDays).toBeUndefined();
    near(first?.stockDaysPerAc, 3.706, 0.0005);
    near(first?.lbPerAc, 111.18, 0.005);
    expect(second?.days).toBe(12);
    // May 8 to June 12: 23 days of May and 12 of June.
    expect(third).toMatchObject({ restDays: 35, days: 8, isOpen: true });
  });
  it('that ends before it begins is told as it was typed, and counts in no sum', () => {
    const rows = [aMove({ inDay: '2026-04-05', outDay: '2026-04-01' }), aMove({ id: 'm2', inDay: '2026-05-01', outDay: '2026-05-08' })];
    const stays = staysOf(aPlace(), rows, counting);
    expect(stays[0]).toMatchObject({ isImpossible: true, inDay: dayIn('2026-04-05'), outDay: dayIn('2026-04-01'), days: 0 });
    expect(stays[0]?.stockDaysPerAc).toBeUndefined();
    expect(stays[1]?.restDays).toBeUndefined();
    expect(groundYears(stays)).toMatchObject([{ stays: 1, days: 7 }]);
  });
  it('counts to today where the day that was told as out has not come', () => {
    const [stay] = staysOf(aPlace(), [aMove({ inDay: '2026-06-12', outDay: '2026-07-30' })], counting);
    // June 12 to June 20, not the 48 days to July 30.
    expect(stay).toMatchObject({ days: 8, isOpen: true, outDay: today });
  });
  it('tells another one of its herd on the same days, and none that only touches it', () => {
    const [low, high] = [aMove({ outDay: '2026-05-08' }), aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-08', outDay: '2026-05-20' })];
    expect(alsoThen(staysOf(aPlace(), [low, high], counting), low)).toBeUndefined();
    const longer = { ...low, outDay: '2026-05-09' };
    expect(alsoThen(staysOf(aPlace(), [longer, high], counting), longer)?.move.id).toBe('m2');
    expect(alsoThen(staysOf(aPlace(), [longer, { ...high, herdNumber: 2 }], counting), longer)).toBeUndefined();
    expect(alsoThen(staysOf(aPlace(), [{ ...longer, outDay: '2026-04-01' }, high], counting), high)).toBeUndefined();
    // A long stay over two short ones, and a herd of another number among them.
    const [long, short, later] = [aMove({ outDay: '2026-05-30' }), { ...high, outDay: '2026-05-10' }, { ...high, id: 'm3', inDay: '2026-05-12' }];
    const pairs = twicePlaced(staysOf(aPlace(), [long, short, { ...later, herdNumber: 2, id: 'm4' }, later], counting));
    expect(pairs.map((pair) => pair.map(({ move }) => move.id))).toEqual([
      ['m1', 'm2'],
      ['m1', 'm3'],
    ]);
  });
  // A bale of 1,000 lb with a tenth of water is 900 lb dry: 30 cow-days, 0.353 an acre.
  it('takes off what hay covers, and says both', () => {
    const [stay] = staysOf(aPlace(), [aMove({ outDay: '2026-05-08' }), aHay()], counting);
    near(stay?.hayLb, 900, 1e-9);
    near(stay?.withHayPerAc, 3.706, 0.0005);
    near(stay?.stockDaysPerAc, 3.353, 0.0005);
    expect(stay?.isHayUnweighed).toBe(false);
  });
  it('says of hay that nobody weighed that it is not taken off', () => {
    const unweighed = { ...aHay() };
    delete unweighed.baleLb;
    expect(staysOf(aPlace(), [aMove({ outDay: '2026-05-08' }), unweighed], counting)[0]).toMatchObject({ hayLb: 0, isHayUnweighed: true });
  });
  it('gives hay of the day of a move to who came, and none to who was never there', () => {
    const stays = staysOf(
      aPlace(),
      [
        aMove({ outDay: '2026-05-08' }),
        aMove({ id: 'm2', inDay: '2026-05-08', outDay: '2026-05-12', herdNumber: 2 }),
        aHay({ day: '2026-05-08' }),
        aHay({ id: 'y2', day: '2026-06-01' }),
      ],
      counting,
    );
    expect(stays.map(({ hayLb }) => Math.round(hayLb))).toEqual([0, 900]);
  });
  it('that no hay belongs to leaves that hay told', () => {
    const rows = [aMove({ outDay: '2026-05-08' }), aHay(), aHay({ id: 'y2', day: '2026-05-09' }), aHay({ id: 'y3', paddockId: 'high' })];
    expect(hayOutside(rows, today).map(({ id }) => id)).toEqual(['y3', 'y2']);
  });
  it('begun and ended on one day counts half a day', () => {
    expect(staysOf(aPlace(), [aMove({ outDay: '2026-05-01' })], counting)[0]?.days).toBe(0.5);
  });
  it('has no stock-days where acres, what they eat or the yardstick are not known', () => {
    const move = aMove({ outDay: '2026-05-08' });
    const noIntake = aMove({ outDay: '2026-05-08', stock: [{ kind: 'cow', countHead: 45 }] });
    for (const stay of [
      ...staysOf(withPasture(aPlace(), 'low', { areaAc: undefined }), [move], counting),
      ...staysOf(aPlace(), [noIntake], counting),
      ...staysOf(aPlace(), [move], { todayDay: today }),
    ])
      expect(stay.stockDaysPerAc).toBeUndefined();
  });
  it('is counted in another yardstick as soon as that is changed', () => {
    const [stay] = staysOf(aPlace(), [aMove({ outDay: '2026-05-08' })], { todayDay: today, yardstickLbPerDay: 15 });
    near(stay?.stockDaysPerAc, 7.412, 0.0005);
    near(stay?.lbPerAc, 111.18, 0.005);
  });
  it('of the kind that all is counted in counts its head times its days over its acres to the last digit, where no yardstick is set', () => {
    // A cow of 1,250 lb at 2.5 percent eats 31.25 lb, which to the tenth would be 31.3.
    const place = aPlace({ herd: [{ id: 'cows', kind: 'cow', countHead: 45, weightLb: 1250, ownIntakePercent: 2.5 }] });
    const yardstick = yardstickOf(place, today);
    expect(yardstick).toMatchObject({ lbPerDay: 31.25, isSet: false });
    const move = aMove({ outDay: '2026-05-08', stock: stockToday(place, 1, today) });
    const [stay] = staysOf(place, [move], { todayDay: today, ...(yardstick && { yardstickLbPerDay: yardstick.lbPerDay }) });
    near(stay?.stockDaysPerAc, (45 * 7) / 85, 1e-12);
  });
  it('keeps the stock of its day, whatever the herd is now, and its name where the paddock was taken away', () => {
    const place = aPlace({ herd: [], pastures: [] });
    const [stay] = staysOf(place, [aMove({ outDay: '2026-05-08', paddockName: 'Low bench' })], counting);
    expect(stay).toMatchObject({ name: 'Low bench', eatenLbPerDay: 1350 });
    expect(stay?.stockDaysPerAc).toBeUndefined();
  });
  it('has the rain of its days, and none where nobody read', () => {
    const rows = [
      aMove({ outDay: '2026-05-08' }),
      aRain(),
      aRain({ id: 'r2', day: '2026-05-08', amountIn: 0.25 }),
      aRain({ id: 'r3', day: '2026-05-09' }),
    ];
    near(staysOf(aPlace(), rows, counting)[0]?.rainIn, 0.75, 1e-12);
    expect(staysOf(aPlace(), lowToHigh, counting)[0]?.rainIn).toBeUndefined();
  });
  it('has its days of rain that was read over several, and none where none of them was covered', () => {
    // Three inches in 30 days to May 25, April 26 to May 25: a tenth of an inch a day, 7 days on the one and 12 on the other.
    const total = aRain({ day: '2026-05-25', days: 30, amountIn: 3 });
    const rainIn = (...rows: readonly Row[]) => staysOf(aPlace(), [...lowToHigh, ...rows], counting).map((stay) => stay.rainIn);
    const [low, high, after] = rainIn(total);
    near(low, 0.7, 1e-12);
    near(high, 1.2, 1e-12);
    expect(after).toBeUndefined();
    // Read in the stay, and fallen before it but for a day: what fell in two days to May 2, when they came on May 1.
    near(rainIn(aRain({ day: '2026-05-02', days: 2, amountIn: 1 }))[0], 0.5, 1e-12);
    // A day read twice adds up.
    near(rainIn(aRain(), aRain({ id: 'r2', amountIn: 0.25 }))[0], 0.75, 1e-12);
  });
  it('in a paddock without acres of its own has its even share of what the others leave of 85', () => {
    const acres = (...own: readonly (number | undefined)[]) => {
      const paddocks = own.map((areaAc, index) => ({ id: `a${index}`, name: `Low ${index}`, ...(areaAc === undefined ? {} : { areaAc }) }));
      return groundsOf(withPasture(aPlace(), 'low', { paddocks })).map(({ areaAc }) => areaAc);
    };
    expect(acres(50, undefined, undefined)).toEqual([50, 17.5, 17.5, 120]);
    expect(acres(undefined, undefined)).toEqual([42.5, 42.5, 120]);
    expect(acres(85, undefined)).toEqual([85, undefined, 120]);
  });
  it('of a paddock is told with its pasture where two have a paddock of that name, and a divided pasture as all of it', () => {
    const paddocks = (...ids: readonly string[]) => ids.map((id) => ({ id, name: id.slice(-1) }));
    const place = withPasture(withPasture(aPlace(), 'low', { paddocks: paddocks('a1', 'a2') }), 'high', { paddocks: paddocks('b1', 'b3') });
    expect([...groundsById(place).values()].map(({ name }) => name)).toEqual([
      '1 (Low bench)',
      '2',
      'Low bench (all of it)',
      '1 (High bench)',
      '3',
      'High bench (all of it)',
    ]);
  });
  it('on a whole pasture ends the rest of each of its paddocks, and one on a paddock that of the whole', () => {
    const place = withPasture(aPlace(), 'low', {
      paddocks: [
        { id: 'a', name: 'A' },
        { id: 'b', name: 'B' },
      ],
    });
    const rows = [
      aMove({ outDay: '2026-05-08' }),
      aMove({ id: 'm2', paddockId: 'a', inDay: '2026-05-20', outDay: '2026-05-25' }),
      aMove({ id: 'm3', paddockId: 'b', inDay: '2026-05-28', outDay: '2026-06-01' }),
      aMove({ id: 'm4', inDay: '2026-06-11' }),
    ];
    // May 8 to 20, May 8 to 28 and June 1 to 11.
    expect(staysOf(place, rows, counting).map(({ restDays }) => restDays)).toEqual([undefined, 12, 20, 10]);
  });
});

describe('planned against done', () => {
  it('tells days late, days longer, and heights against those meant', () => {
    const rows = [aPlan(), aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-10', outDay: '2026-05-20' })];
    const [done] = plannedOf(rows, staysOf(aPlace(), rows, counting));
    expect(done).toMatchObject({ plannedDays: 7, lateDays: 2, longerDays: 3, stay: { move: { id: 'm2' } } });
    expect(heightGap(3.5, 4)).toBe(-0.5);
    expect(heightGap(undefined, 4)).toBeUndefined();
  });
  it('takes a stay for one plan only, and none of another herd, ground or month', () => {
    const stays = [aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-10', outDay: '2026-05-20' })];
    const again = aPlan({ id: 'n2', inDay: '2026-05-12', outDay: '2026-05-14' });
    const rows = [aPlan(), again, aPlan({ id: 'n3', herdNumber: 2 }), aPlan({ id: 'n4', inDay: '2026-09-01', outDay: '2026-09-04' }), ...stays];
    expect(plannedOf(rows, staysOf(aPlace(), rows, counting)).map(({ plan, stay }) => [plan.id, stay?.move.id])).toEqual([
      ['n1', 'm2'],
      ['n3', undefined],
      ['n2', undefined],
      ['n4', undefined],
    ]);
  });
});

describe('what is pointed out', () => {
  const springs = (first: string, second: string) =>
    staysOf(aPlace(), [aMove({ inDay: first, outDay: first }), aMove({ id: 'm2', inDay: second })], counting);
  it('is the shortest rest of the year', () => {
    const rows = [...lowToHigh.slice(0, 2), aMove({ id: 'm4', paddockId: 'high', inDay: '2026-06-01', outDay: '2026-06-12' }), ...lowToHigh.slice(2)];
    expect(shortestRest(staysOf(aPlace(), rows, counting), 2026)).toMatchObject({ name: 'High bench', restDays: 12 });
    expect(shortestRest(staysOf(aPlace(), rows, counting), 2025)).toBeUndefined();
  });
  it('is a paddock grazed first in the same week of two springs', () => {
    expect(sameWeek(springs('2025-05-01', '2026-05-04'), 2026)).toMatchObject([
      { now: { name: 'Low bench' }, before: { inDay: dayIn('2025-05-01') } },
    ]);
    expect(sameWeek(springs('2025-05-01', '2026-05-05'), 2026)).toEqual([]);
    expect(sameWeek(springs('2025-08-01', '2026-08-01'), 2026)).toEqual([]);
    expect(sameWeek(springs('2024-05-01', '2026-05-01'), 2026)).toEqual([]);
  });
});

describe('rain', () => {
  it('goes into forms as they read it: every day of it, and a day without a line was not read', () => {
    const rows = [
      aRain(),
      aRain({ id: 'r2', day: '2026-05-08', days: 2, amountIn: 0.5 }),
      aRain({ id: 'r3', day: '2026-05-10', amountIn: 0, isTrace: true }),
    ];
    const understood = understandRecord({ ...rainGauge, maxRows: 1000 }, rainText(rows) ?? '');
    expect(understood.problem).toBeUndefined();
    expect(understood.isConfirmed).toBe(true);
    expect(understood.lines.map(({ day, amount }) => [isoDay(day), amount])).toEqual([
      ['2026-05-04', 0.5],
      ['2026-05-07', 0.25],
      ['2026-05-08', 0.25],
      ['2026-05-10', 0],
    ]);
    expect(understood.missing).toEqual([{ year: 2026, days: 3 }]);
    expect(rainText([])).toBeUndefined();
  });
  it('is not read on days without a line, which are never dry by themselves', () => {
    expect(unreadDays([aRain({ day: '2026-06-17' })], today).map(isoDay)).toEqual(['2026-06-18', '2026-06-19']);
    expect(unreadDays([aRain({ day: '2026-06-17' }), aRain({ id: 'r2', day: '2026-06-20' })], today).map(isoDay)).toEqual([
      '2026-06-18',
      '2026-06-19',
    ]);
    expect(unreadDays([], today)).toEqual([]);
    expect(lastReading([aRain(), aRain({ id: 'r2', day: '2026-07-01' })], today)?.id).toBe('r1');
  });
});
