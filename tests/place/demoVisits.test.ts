import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import placeData from '../../content/place/place.json' with { type: 'json' };
import { demoPlace } from '../../src/place/demo.ts';
import { type Result, resultSchema } from '../../src/place/model/result.ts';
import { type Visit, visitSchema } from '../../src/place/model/visit.ts';
import { demoVisits } from '../../src/place/ui/demoVisits.ts';
import { asText } from '../../src/place/visit/asText.ts';
import { outgoing } from '../../src/place/visit/audience.ts';
import { compareResults } from '../../src/place/visit/compare.ts';
import { calculatorOf } from '../support/catalog.ts';

const place = demoPlace('demo', 'a test', '2026-06-20T08:00:00.000Z');
let count = 0;
const begin = () => {
  count += 1;
  return { id: `n${count}`, rev: 1, past: [`1-${String(count).padStart(6, '0')}`], changedBy: 'a test', changedAt: '2026-06-20T08:00:00.000Z' };
};
const batches = await demoVisits(place, begin, '0.1.0');
const records = batches.flatMap(({ edits }) => edits.map(({ after }): unknown => after));
const visits = records.filter((each): each is Visit => v.is(visitSchema, each));
const results = records.filter((each): each is Result => v.is(resultSchema, each));

describe('the visits of the demo place', () => {
  it('are those of its content, each record as its schema wants it', () => {
    expect(visits.map(({ day }) => day)).toEqual(placeData.visits.map(({ day }) => day));
    expect(visits.length + results.length).toBe(records.length);
    // Rings and steps of each site.
    expect(results.length).toBe(2 * placeData.visits.flatMap(({ sites }) => sites).length);
    expect(results.every(({ placeId }) => placeId === 'demo')).toBe(true);
  });
  it('list their own results, of pastures that the place has', () => {
    for (const visit of visits) {
      expect(visit.results.map(({ id }) => id)).toEqual(results.filter(({ visitId }) => visitId === visit.id).map(({ id }) => id));
      for (const id of visit.pastureIds) expect(place.pastures.map((each) => each.id)).toContain(id);
    }
  });
  it('say of every result and on every note that it is invented', () => {
    expect(new Set(results.map(({ stamp }) => stamp))).toEqual(new Set(['Invented example']));
    const [visit] = visits;
    if (visit === undefined) throw new RangeError('no visit');
    const own = results.filter(({ visitId }) => visitId === visit.id);
    const text = asText(outgoing({ place, visit, results: own, note: undefined, system: 'us', base: undefined, edition: '0.1.0' }, 'producer'));
    expect(text).toContain('Invented example. Nothing here is anybody’s own.');
    expect(text.match(/Invented example$/gm)?.length).toBe(own.length);
  });
  it('hold the readings of the content in their links', () => {
    for (const { day, sites } of placeData.visits)
      for (const { pasture, rings } of sites) {
        const visit = visits.find((each) => each.day === day);
        const result = results.find((each) => each.visitId === visit?.id && each.slug === 'ring-test' && each.pastureIds[0] === pasture);
        expect(result?.link).toContain(`rings.second=${rings.map(({ pourings }) => `${pourings[1]?.minutes}min`).join()}`);
      }
  });
  it('can be set side by side, test by test', () => {
    const [one, other] = visits;
    if (one === undefined || other === undefined) throw new RangeError('two visits are needed');
    const of = (visit: Visit, slug: string) => results.find((each) => each.visitId === visit.id && each.slug === slug);
    for (const slug of ['ring-test', 'cover-count']) {
      const [then, now] = [of(one, slug), of(other, slug)];
      if (then === undefined || now === undefined) throw new RangeError(slug);
      expect(compareResults(calculatorOf(slug), [then, one], [now, other], 'us')?.change, slug).toBeDefined();
    }
  });
});
