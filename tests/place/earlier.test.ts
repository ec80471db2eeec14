import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { toLink } from '../../calculators/kit/link.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { rowsIn, startTexts } from '../../calculators/kit/state.ts';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import { visitsAt } from '../../src/place/form/visitsAt.ts';
import type { Place } from '../../src/place/model/place.ts';
import type { Result } from '../../src/place/model/result.ts';
import type { Visit } from '../../src/place/model/visit.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { openStore } from '../../src/place/store/openStore.ts';
import { resultKind, visitKind } from '../../src/place/store/visitKinds.ts';
import { calculatorOf } from '../support/catalog.ts';
import { near } from '../support/near.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { aPlace } from './aPlace.ts';
import { aResult, aVisit } from './aVisit.ts';

const ringTest = calculatorOf('ring-test');
const today = dayOf('2026-06-20') ?? Number.NaN;
/** An inch poured twice into each ring; the second time counts. */
const rings = (...minutes: readonly number[]): string =>
  `v=2&bore=6in&rings.first=${minutes.map(() => '4min').join()}&rings.pours=${minutes.map(() => 'twice').join()}&rings.second=${minutes.map((each) => `${each}min`).join()}&rings.end=${minutes.map(() => 'gone').join()}`;

/** The example’s rings, but for the first. */
const exampleRings = (() => {
  const [first, ...others] = rowsIn(startTexts(ringTest.inputs)['rings']);
  return toLink(ringTest, { this: { ...startTexts(ringTest.inputs), rings: [{ ...first, secondMin: '77 min' }, ...others] }, that: null });
})();

interface Kept {
  readonly day: string;
  readonly result?: Partial<Result>;
  readonly visit?: Partial<Visit>;
}
/** The form as it opens at the place after these visits. */
async function formAfter(
  kept: readonly Kept[],
  { place = aPlace(), pastureIds = ['high'], on = today }: { place?: Place; pastureIds?: readonly string[]; on?: number } = {},
) {
  const store = await openStore({ by: 'this window', texts: undefined });
  await store.save(placeKind, [{ before: null, after: place }]);
  for (const [index, { day, result, visit }] of kept.entries()) {
    const made = aResult({ id: `r${index}`, visitId: `v${index}`, link: rings(30, 40, 50), ...result });
    await store.save(visitKind, [
      { before: null, after: aVisit({ id: `v${index}`, day, results: [{ id: made.id, slug: made.slug, title: made.title }], ...visit }) },
    ]);
    await store.save(resultKind, [{ before: null, after: made }]);
  }
  store.close();
  const visits = (await visitsAt(ringTest, place))(on);
  return fillTexts(ringTest, allOffers(place, on, { ids: pastureIds, ...visits }), on);
}
const ratesIn = (form: ReturnType<typeof fillTexts>): readonly string[] => {
  const rows = form.texts['others'];
  return Array.isArray(rows) ? rows.flatMap((row) => (typeof row === 'object' ? (row['thenInPerHr'] ?? '') : [])) : [];
};
const isBeside = (form: ReturnType<typeof fillTexts>): boolean => form.texts['beside'] === 'visit';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  session.clear();
  const storage = { getItem: (key: string) => session.get(key) ?? null };
  vi.stubGlobal('window', { sessionStorage: storage, localStorage: storage });
});
afterEach(() => {
  vi.unstubAllGlobals();
});
const session = new Map<string, string>();

describe('how wet the ground felt', () => {
  const wetnessOf = (form: ReturnType<typeof fillTexts>) => [form.texts['moisture'], form.marks.find(({ at }) => at === 'moisture')?.says];
  const felt = (moistureFeel: 'dry' | 'moist' | 'wet', more: Partial<Visit> = {}): Kept => ({
    day: '2026-06-18',
    visit: { ground: { moistureFeel }, pastureIds: ['high'], ...more },
  });
  it.each(['dry', 'moist', 'wet'] as const)('at the visit that the form was opened from: %s', async (feel) => {
    session.set('holdwater-visit', 'v0');
    expect(wetnessOf(await formAfter([felt(feel)]))).toEqual([feel, 'felt at your visit of Jun 18, 2026']);
  });
  it.each<{ what: string; visit?: Partial<Visit>; opened?: string; on?: string }>([
    { what: 'a visit that nobody has opened', opened: '' },
    { what: 'a visit of another pasture', visit: { pastureIds: ['low'] } },
    { what: 'a visit that noted none', visit: { ground: { daysSinceRain: 3 } } },
    { what: 'a visit that is still to come', on: '2026-06-17' },
  ])('is not taken from $what', async ({ visit = {}, opened = 'v0', on = '2026-06-20' }) => {
    session.set('holdwater-visit', opened);
    expect(wetnessOf(await formAfter([felt('wet', visit)], { on: dayOf(on) ?? Number.NaN }))).toEqual(['moist', undefined]);
  });
  it('is of the whole visit where no pasture was told', async () => {
    session.set('holdwater-visit', 'v0');
    expect(wetnessOf(await formAfter([felt('wet', { pastureIds: [] })]))[0]).toBe('wet');
  });
});

describe('the rings of an earlier visit', () => {
  it('stand beside today’s with the day of the visit in their mark', async () => {
    const form = await formAfter([{ day: '2025-06-18' }]);
    expect(isBeside(form)).toBe(true);
    // 444 mL in a ring of 6 in: 444 / 16.387 / (pi 9) = 0.9583 in deep; in 30, 40 and 50 minutes 1.917, 1.437 and 1.150 in an hour.
    const rates = ratesIn(form).map(Number.parseFloat);
    expect(rates).toHaveLength(3);
    for (const [index, rate] of [1.917, 1.437, 1.15].entries()) near(rates[index] ?? Number.NaN, rate, 0.001);
    expect(form.marks.filter(({ offer }) => offer === 'earlier.rate')).toMatchObject([0, 1, 2].map(() => ({ says: 'visit of Jun 18, 2025' })));
    expect(form.said.join()).toContain(
      'High bench: the readings of your visit of Jun 18, 2025 stand beside today’s. Then: Inside width (bore): 6 in',
    );
    const ran = runTexts(ringTest, form.texts, 'us');
    expect('outcome' in ran && ran.outcome.values['othersCount']).toBe(3);
    expect('outcome' in ran && ran.outcome.values['alike']).toBe('yes');
  });
  it('are those of the latest visit before, and of none on the same day or after', async () => {
    const form = await formAfter([
      { day: '2025-06-18' },
      { day: '2026-05-30', result: { link: rings(60, 60) } },
      { day: '2026-06-20', result: { link: rings(5) } },
      { day: '2026-07-01', result: { link: rings(6) } },
    ]);
    expect(ratesIn(form)).toHaveLength(2);
    expect(form.said.join()).toContain('May 30, 2026');
  });
  it('are told to be unlike where the season is another', async () => {
    const form = await formAfter([{ day: '2025-09-18' }]);
    expect(form.marks.map(({ offer }) => offer)).toContain('earlier.alike');
    const ran = runTexts(ringTest, form.texts, 'us');
    expect('outcome' in ran && ran.outcome.cautions.map(({ lead }) => lead).join()).toContain('The two tests were not made alike');
  });
  it.each<{ what: string; kept: readonly Kept[]; more?: Parameters<typeof formAfter>[1] }>([
    { what: 'another pasture', kept: [{ day: '2025-06-18', result: { pastureIds: ['low'] } }] },
    { what: 'no pasture told, at a place of two', kept: [{ day: '2025-06-18', result: { pastureIds: [] } }] },
    { what: 'no pasture chosen', kept: [{ day: '2025-06-18' }], more: { pastureIds: [] } },
    { what: 'another test', kept: [{ day: '2025-06-18', result: { slug: 'slake-test', link: '' } }] },
    { what: 'figures of the example', kept: [{ day: '2025-06-18', result: { stamp: 'Example, not your numbers' } }] },
    { what: 'ground with cracks, which is not judged', kept: [{ day: '2025-06-18', result: { link: `${rings(30, 40)}&site=cracks` } }] },
    { what: 'another place', kept: [{ day: '2025-06-18', visit: { placeId: 'p2' } }] },
    { what: 'a link that the form refuses', kept: [{ day: '2025-06-18', result: { link: `${rings(30, 40)}&bore=900in` } }] },
  ])('are not offered: $what', async ({ kept, more }) => {
    const form = await formAfter(kept, more);
    expect(isBeside(form)).toBe(false);
    expect(form.marks.filter(({ offer }) => offer.startsWith('earlier.'))).toEqual([]);
    expect(ratesIn(form).map(Number.parseFloat)).toEqual([0.8, 1.5, 2.1]);
  });
  it.each(['Figures of a link', 'Your answers; 3 more from the example'])('are somebody’s own where they were kept as “%s”', async (stamp) => {
    expect(ratesIn(await formAfter([{ day: '2025-06-18', result: { stamp } }]))).toHaveLength(3);
  });
  // Somebody timed the rings and left how moist the ground was as it stood.
  it.each(['1 of 4 yours; the rest from the example', 'Figures of a link; 4 from the example'])(
    'are where none is the example’s, though they were kept as “%s”',
    async (stamp) => {
      expect(ratesIn(await formAfter([{ day: '2025-06-18', result: { stamp } }]))).toHaveLength(3);
    },
  );
  it.each([
    { what: 'one ring is still the example’s', result: { stamp: '3 of 4 yours; the rest from the example', link: `${exampleRings}&moisture=wet` } },
    { what: 'nothing but the rings was typed, and then it was the example after all', result: { stamp: 'Example, not your numbers' } },
    { what: 'another version had another example', result: { stamp: '3 of 4 yours; the rest from the example', version: 1 } },
  ])('are not where $what', async ({ result }) => {
    expect(isBeside(await formAfter([{ day: '2025-06-18', result }]))).toBe(false);
  });
  it('need no choice at a place of one pasture', async () => {
    const place = aPlace({ pastures: aPlace().pastures.slice(1) });
    const form = await formAfter([{ day: '2025-06-18', result: { pastureIds: [] } }], { place, pastureIds: [] });
    expect(ratesIn(form)).toHaveLength(3);
  });
  it('are those before the visit that the form was opened from', async () => {
    session.set('holdwater-visit', 'v1');
    const form = await formAfter([{ day: '2024-06-18' }, { day: '2025-06-18', result: { link: rings(9) } }]);
    expect(form.said.join()).toContain('Jun 18, 2024');
  });
  it('stay out as a whole, and are said, where no reading fits the form', async () => {
    // An inch in three seconds is 1,150 in an hour; two inches more than the form takes.
    const form = await formAfter([{ day: '2025-06-18', result: { link: `${rings(0.05)}&water=900mL` } }]);
    expect(isBeside(form)).toBe(false);
    expect(form.said.join()).toContain('more or less than this form can take');
  });
});
