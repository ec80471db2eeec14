// Hay on hand as forms are offered it: counted on a day, and what the record has fed since taken off once. The sums were done by hand: common practice.
import { describe, expect, it } from 'vitest';
import { textIn } from '../../calculators/kit/state.ts';
import type { HayStack } from '../../src/place/model/hay.ts';
import type { Place } from '../../src/place/model/place.ts';
import type { HayRow, Row } from '../../src/place/model/row.ts';
import { recordOffers } from '../../src/place/offer/recordOffers.ts';
import { aLoad } from '../../src/place/record/loads.ts';
import { withDay } from '../../src/place/ui/Feed.tsx';
import { aHay, aMove } from './aRow.ts';
import { day, fill, plain, with_ } from './filled.ts';

const today = '2026-12-20';
const stack: HayStack = {
  id: 'a',
  baleCount: 60,
  baleLb: 1000,
  moisturePercent: 15,
  baledDay: '2026-06-20',
  storedAs: 'barn',
  countedDay: '2026-11-01',
};
const { countedDay: _, ...undated } = stack;
const fed = (id: string, on: string, baleCount: number, more: Partial<HayRow> = {}): HayRow =>
  aHay({ id, day: on, baleCount, baleLb: 1000, moisturePercent: 15, ...more });
/** Twelve bales since it was counted, two on that day and five before it. */
const winter: readonly Row[] = [fed('y0', '2026-10-20', 5), fed('y1', '2026-11-01', 2), fed('y2', '2026-11-02', 8), fed('y3', '2026-12-20', 4)];

function offered(slug: string, at: string, stacks: readonly HayStack[], rows: readonly Row[]) {
  const place: Place = with_({ hay: { stacks: [...stacks] } });
  const filled = fill(slug, { place, today, chosen: { record: recordOffers(place, [aMove(), ...rows], day(today)) } });
  const says = (path: string) => filled.marks.find((mark) => mark.at === path)?.says;
  return { text: plain(textIn(filled.texts[at])), says: says(at), onHand: filled.texts['onHand'], whySome: says('onHand'), said: filled.said };
}
const bales = (stacks: readonly HayStack[], rows: readonly Row[]) => offered('hay-to-grass', 'ownCount', stacks, rows);
const pounds = (stacks: readonly HayStack[], rows: readonly Row[]) => offered('feed-or-sell', 'hayOnHandLb', stacks, rows);

describe('hay that was fed at the gate', () => {
  it('is taken off the stack from the day after its count, and of nothing else', () => {
    expect(bales([stack], winter)).toMatchObject({ text: '48', says: '60 counted Nov 1, 2026, 12 fed since' });
    expect(pounds([stack], winter)).toMatchObject({ text: '48000 lb', says: 'bales: 60 counted Nov 1, 2026, 12 fed since' });
    expect(bales([stack], winter.slice(0, 2))).toMatchObject({ text: '60', says: undefined });
    expect(bales([stack], [])).toMatchObject({ text: '60', says: undefined });
    // A day that has not come has fed nothing.
    expect(bales([stack], [fed('y9', '2026-12-21', 4)])).toMatchObject({ text: '60', says: undefined });
  });
  it('stays in the count of a stack that nobody counted on a day, and that is said', () => {
    const says = 'hay that your record has fed is not taken off: tell under Feed on which day you counted the bales';
    expect(bales([undated], winter)).toMatchObject({ text: '60', says });
    expect(pounds([undated], winter)).toMatchObject({ text: '60000 lb', says });
    // What was fed before it was baled came from another.
    expect(bales([undated], [fed('y0', '2026-03-01', 5)])).toMatchObject({ text: '60', says: undefined });
  });
  it('leaves none where all of it was fed, and asks for a new count where more was', () => {
    const all = bales([stack], [fed('y2', '2026-11-02', 60)]);
    expect([all.onHand, all.whySome]).toEqual(['none', '60 counted Nov 1, 2026, 60 fed since']);
    const more = bales([stack], [fed('y2', '2026-11-02', 61)]);
    expect([more.onHand, more.whySome]).toEqual(['none', '60 counted Nov 1, 2026, and more fed since: count again']);
    expect(pounds([stack], [fed('y2', '2026-11-02', 61)]).text).toBe('0 lb');
  });
  it('of which a table tells the dry pounds alone is so many of its bales', () => {
    // 8,500 lb dry are 10 bales of 1,000 lb with 15 % of water.
    const load = { ...aHay({ id: 'l', day: '2026-11-05' }), ...aLoad(8500) };
    expect(bales([stack], [load])).toMatchObject({ text: '50', says: '60 counted Nov 1, 2026, 10 fed since' });
    const { baleLb: __, ...unweighed } = stack;
    expect(bales([unweighed], [load]).says).toBe(
      'hay that your record has fed is not taken off: some of it is in pounds, and nobody told what a bale weighs',
    );
  });
  it('of several stacks is taken off their pounds together, and of no one of them', () => {
    const other = { ...stack, id: 'b', baleCount: 20 };
    expect(bales([stack, other], winter)).toMatchObject({
      text: '60',
      says: 'hay that your record has fed is not taken off: it does not tell from which stack',
    });
    expect(pounds([stack, other], winter)).toMatchObject({ text: '68000 lb', says: 'counted Nov 1, 2026, what was fed since is taken off' });
    // Fed between two counts, it may be in one of them or in none.
    const later = { ...other, countedDay: '2026-12-01' };
    const says = 'hay that your record has fed is not taken off: count all stacks on one day, and tell it under Feed';
    expect(pounds([stack, later], winter)).toMatchObject({ text: '80000 lb', says });
    expect(pounds([stack, later], winter.slice(3))).toMatchObject({ text: '76000 lb', says: 'counted Dec 1, 2026, what was fed since is taken off' });
    const { countedDay: ___, ...never } = other;
    expect(pounds([stack, never], winter)).toMatchObject({ text: '80000 lb', says });
    expect(pounds([stack, other], [fed('y2', '2026-11-02', 81)])).toMatchObject({
      text: '0 lb',
      says: 'more was fed than was counted Nov 1, 2026: count again',
    });
    const { baleLb: ____, ...unknown } = fed('y2', '2026-11-02', 8);
    expect(pounds([stack, other], [unknown]).says).toBe('hay that your record has fed is not taken off: nobody told what some of it weighs');
  });
});

it('a number of bales that is typed has its day, so that nothing is taken off it that was fed before', () => {
  const path = ['hay', 'stacks', 'a'];
  const typed = { path: [...path, 'typed', 'baleCount'], to: '48 bales' };
  expect(withDay([{ path: [...path, 'baleCount'], to: 48 }, typed], today)).toEqual([
    { path: [...path, 'baleCount'], to: 48 },
    { path: [...path, 'countedDay'], to: today },
    typed,
  ]);
  expect(withDay([{ path: [...path, 'baleCount'], to: undefined }], today)[1]).toEqual({ path: [...path, 'countedDay'], to: undefined });
  expect(withDay([{ path: [...path, 'baleLb'], to: 900 }], today)).toHaveLength(1);
});
