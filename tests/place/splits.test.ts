import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/place/model/place.ts';
import type { Row } from '../../src/place/model/row.ts';
import { splitsOf, stockLeft } from '../../src/place/record/splits.ts';
import { staysOf, twicePlaced } from '../../src/place/record/stays.ts';
import { groundYears } from '../../src/place/record/years.ts';
import { stayedWords } from '../../src/place/ui/recordWords.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { aPlace } from './aPlace.ts';
import { counting, today } from './aRecord.ts';
import { aMove } from './aRow.ts';

// Head times days were counted by hand on a calendar, each animal once: common practice.

const cows = (countHead: number) => ({ stock: [{ kind: 'cow' as const, countHead, weightLb: 1250, lbPerDay: 30 }] });
const creek = { id: 'creek', name: 'Creek flat', areaAc: 40, isCounted: true, paddocks: [] };
/** So many cows in herd 1, and so many in herd 2. */
const having = (one: number, two = 0): Place =>
  aPlace({
    pastures: [...aPlace().pastures, creek],
    herd: [
      { id: 'cows', kind: 'cow', countHead: one },
      ...(two === 0 ? [] : [{ id: 'others', kind: 'cow' as const, countHead: two, herdNumber: 2 }]),
    ],
  });
/** 60 cows on Low bench since May 1, and 20 of them, or others, on High bench since Jun 12. Today is Jun 20. */
const old = aMove(cows(60));
const part = aMove({ id: 'm2', paddockId: 'high', inDay: '2026-06-12', ...cows(20) });
const ofHerdTwo = { ...part, herdNumber: 2 };
/** Cow-days of the year by ground: of one kind that all is counted in, stock-days an acre times acres. */
const cowDays = (place: Place, rows: readonly Row[], year = 2026): Readonly<Record<string, number>> =>
  Object.fromEntries(
    groundYears(staysOf(place, rows, { ...counting, year })).map(({ name, stockDaysPerAc = Number.NaN, areaAc = Number.NaN }) => [
      name,
      stockDaysPerAc * areaAc,
    ]),
  );
function expectDays(found: Readonly<Record<string, number>>, wanted: Readonly<Record<string, number>>): void {
  expect(Object.keys(found)).toEqual(Object.keys(wanted));
  for (const [name, days] of Object.entries(wanted)) expectWithin(found[name] ?? Number.NaN, days, 1e-9);
}
// 42 days of 60 cows to Jun 12, then 8 of 40; beside it 8 days of 20: 3,000 in all, as 50 days of 60.
const once = { 'Low bench': 42 * 60 + 8 * 40, 'High bench': 8 * 20 };

describe('a herd of 60 that was split to 40 and 20', () => {
  it('counts each animal once from that day on, while its old line is open', () => {
    expectDays(cowDays(having(40, 20), [old, ofHerdTwo]), once);
    // The part keeps the number of the herd.
    expectDays(cowDays(having(60), [old, part]), once);
  });
  it('counts none on the old ground where both parts left it', () => {
    const other = aMove({ id: 'm3', paddockId: 'creek', inDay: '2026-06-12', ...cows(40) });
    const wanted = { 'Low bench': 42 * 60, 'High bench': 8 * 20, 'Creek flat': 8 * 40 };
    expectDays(cowDays(having(60), [old, part, other]), wanted);
  });
  it('counts the same once the old line is closed and the rest went on', () => {
    const [closed, rest] = [{ ...old, outDay: '2026-06-16' }, aMove({ id: 'm3', paddockId: 'creek', inDay: '2026-06-16', ...cows(40) })];
    const wanted = { 'Low bench': 42 * 60 + 4 * 40, 'High bench': 8 * 20, 'Creek flat': 4 * 40 };
    expectDays(cowDays(having(40, 20), [closed, ofHerdTwo, rest]), wanted);
    expectDays(cowDays(having(60), [closed, part, rest]), wanted);
    // Later on some are sold: what was counted of the days before stays.
    expectDays(cowDays(having(30, 5), [closed, ofHerdTwo, rest]), wanted);
    // Both parts came together again.
    const again = [closed, { ...part, outDay: '2026-06-16' }, { ...rest, ...cows(60) }];
    expectDays(cowDays(having(60), again), { 'Low bench': 42 * 60 + 4 * 40, 'High bench': 4 * 20, 'Creek flat': 4 * 60 });
  });
  it('loses a part that moves on only once', () => {
    const rows = [
      old,
      { ...part, outDay: '2026-06-16' },
      aMove({ id: 'm3', paddockId: 'creek', inDay: '2026-06-16', ...cows(12) }),
      aMove({ id: 'm4', paddockId: 'creek', inDay: '2026-06-17', ...cows(8) }),
    ];
    expectDays(cowDays(having(60), rows), { 'Low bench': 42 * 60 + 8 * 40, 'High bench': 4 * 20, 'Creek flat': 4 * 12 + 3 * 8 });
  });
  it('has the days of each year in that year', () => {
    const rows = [
      { ...old, inDay: '2025-12-01' },
      { ...ofHerdTwo, inDay: '2025-12-22' },
    ];
    // 21 days of 60 and 10 of 40 before New Year, 170 of 40 from then to Jun 20.
    expectDays(cowDays(having(40, 20), rows, 2025), { 'Low bench': 21 * 60 + 10 * 40, 'High bench': 10 * 20 });
    expectDays(cowDays(having(40, 20), rows), { 'Low bench': 170 * 40, 'High bench': 170 * 20 });
  });
});

describe('what is told of a split', () => {
  it('is who went on elsewhere, and from which day; then no head is doubted to count twice', () => {
    const [stay, later] = staysOf(having(40, 20), [old, ofHerdTwo], counting);
    if (stay === undefined || later === undefined) throw new Error('no stays');
    expect(stayedWords(stay)).toBe('60 cows, 20 cows of them elsewhere from Jun 12');
    expect(stayedWords(later)).toBe('20 cows');
    expect(twicePlaced(staysOf(having(60), [old, part], counting))).toEqual([]);
    // 20 were sold, the other 40 went on, and nobody closed the old line: of that one hears.
    expect(twicePlaced(staysOf(having(40), [old, { ...part, ...cows(40) }], counting))).toHaveLength(1);
    // Those stand on two grounds.
    const both = staysOf(having(60), [old, { ...part, ...cows(60) }], counting);
    expect(twicePlaced(both)).toHaveLength(1);
  });
  it('is what stands in each line still, which is moved from there', () => {
    const moves = [old, part];
    const left = stockLeft(old.stock, splitsOf(having(60), moves, today).get(old) ?? []);
    expect(left).toEqual(cows(40).stock);
    const two = [...cows(15).stock, { kind: 'bull' as const, countHead: 2 }, ...cows(45).stock];
    const off = { kind: 'cow' as const, countHead: 20 };
    expect(stockLeft(two, [off]).map(({ kind, countHead }) => [kind, countHead])).toEqual([
      ['bull', 2],
      ['cow', 40],
    ]);
  });
});

describe('a herd that was not split counts whole', () => {
  const all = { 'Low bench': 50 * 60, 'High bench': 8 * 20 };
  it('where others came to it', () => {
    expectDays(cowDays(having(80), [old, part]), all);
    expectDays(cowDays(having(60, 20), [old, ofHerdTwo]), all);
  });
  it('where nobody tells how many it is now, or went on with', () => {
    expectDays(cowDays(aPlace({ herd: [] }), [old, part]), all);
    expectDays(cowDays(having(40, 20), [{ ...old, outDay: '2026-06-19' }, ofHerdTwo]), { 'Low bench': 49 * 60, 'High bench': 8 * 20 });
  });
  it('where some were sold, whatever another herd does that was elsewhere', () => {
    const rows = [old, aMove({ id: 'm3', paddockId: 'creek', inDay: '2026-04-20', outDay: '2026-06-12', herdNumber: 2, ...cows(20) }), ofHerdTwo];
    expectDays(cowDays(having(45, 20), rows), { 'Creek flat': 53 * 20, 'Low bench': 50 * 60, 'High bench': 8 * 20 });
    expectDays(cowDays(having(45), [old]), { 'Low bench': 50 * 60 });
  });
  it('where it stands whole on two grounds: that is told as a doubt', () => {
    const both = [aMove(cows(60)), { ...part, ...cows(60) }];
    expectDays(cowDays(having(60), both), { 'Low bench': 50 * 60, 'High bench': 8 * 60 });
  });
  it('where the other line is of another kind, or of a day to come', () => {
    const ewes = { ...ofHerdTwo, stock: [{ kind: 'ewe' as const, countHead: 20, lbPerDay: 30 }] };
    expectDays(cowDays(having(40), [old, ewes]), all);
    const coming = { ...ofHerdTwo, inDay: '2026-07-01' };
    expect(staysOf(having(40, 20), [old, coming], { ...counting, todayDay: today })[0]?.splitOff).toEqual([]);
  });
});
