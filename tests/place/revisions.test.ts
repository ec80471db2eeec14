import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contentOf, joinCopies, standingOf, type Writer } from '../../src/place/store/records.ts';
import { changesBetween, isSame, type Json, join } from '../../src/place/store/revisions.ts';
import { aPlace, withPasture } from './aPlace.ts';

const writer: Writer = { by: 'second window', now: () => new Date('2026-06-02T08:00:00Z'), mark: () => 'bbbbbb' };

/** Things as records hold them: fields, things in them, and lists of things with ids. */
const leaf = fc.oneof(fc.integer({ min: 0, max: 3 }), fc.constantFrom('a', 'b'), fc.boolean(), fc.constant(null));
const key = fc.constantFrom('k', 'l', 'm', 'n');
const fields = fc.dictionary(key, fc.oneof(leaf, fc.dictionary(key, leaf, { noNullPrototype: true })), { noNullPrototype: true });
const list = fc.uniqueArray(fc.tuple(fc.constantFrom('x', 'y', 'z'), fields), { selector: ([id]) => id });
const record: fc.Arbitrary<Json> = fc
  .tuple(fields, fc.option(list))
  .map(([each, items]) => ({ ...each, ...(items === null || items.length === 0 ? {} : { items: items.map(([id, more]) => ({ ...more, id })) }) }));
/** Lists in the order of their ids. */
const idIn = (value: Json): string => (typeof value === 'object' && value !== null && 'id' in value ? String(value.id) : '');
const byId = (value: Json): Json => {
  if (Array.isArray(value)) return value.map(byId).toSorted((one, other) => idIn(one).localeCompare(idIn(other)));
  return typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).map(([name, each]) => [name, byId(each)])) : value;
};

describe('changes', () => {
  it('come out as the other record, from any to any', () => {
    fc.assert(
      fc.property(record, record, (before, after) => {
        const { value, clashes } = join(before, changesBetween(before, after));
        expect(clashes).toEqual([]);
        expect(isSame(byId(value), byId(after))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
  it('of two windows lose nothing: each is in, or is told', () => {
    fc.assert(
      fc.property(record, record, record, (before, mine, theirs) => {
        const changes = changesBetween(before, mine);
        const { value, clashes } = join(theirs, changes);
        // What only they changed stands, and all of mine that is no clash does.
        const left = changesBetween(value, join(value, changes).value);
        expect(left).toEqual([]);
        expect(
          join(
            value,
            changes.filter((each) => !clashes.includes(each)),
          ).clashes,
        ).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
  it('are told by the ids of things', () => {
    expect(changesBetween(contentOf(aPlace()), contentOf(withPasture(aPlace(), 'low', { areaAc: 80 })))).toEqual([
      { path: ['pastures', 'low', 'areaAc'], from: 85, to: 80 },
    ]);
  });
  it('to a thing that was taken away meanwhile are clashes', () => {
    const changes = changesBetween(contentOf(aPlace()), contentOf(withPasture(aPlace(), 'low', { areaAc: 80 })));
    const { clashes } = join(contentOf(aPlace({ pastures: [] })), changes);
    expect(clashes).toEqual(changes);
  });
});

describe('copies', () => {
  const here = aPlace({ rev: 3, past: ['1-aaaaaa', '2-aaaaab', '3-aaaaac'], name: 'Ours' });
  it.each([
    ['new', undefined, here],
    ['same', here, { ...here, rev: 9, past: ['9-zzzzzz'] }],
    ['later', here, { ...here, rev: 4, past: [...here.past, '4-cccccc'], name: 'Theirs' }],
    ['earlier', here, { ...here, rev: 2, past: ['1-aaaaaa', '2-aaaaab'], name: 'Old' }],
    ['both', here, { ...here, rev: 3, past: ['1-aaaaaa', '2-aaaaab', '3-dddddd'], name: 'Theirs' }],
  ] as const)('are %s', (standing, ours, theirs) => {
    expect(standingOf(ours, theirs)).toBe(standing);
  });
  it('are told by their past and never by a clock', () => {
    const wrong = { ...here, rev: 4, past: [...here.past, '4-cccccc'], name: 'Theirs', changedAt: '1999-01-01T00:00:00.000Z' };
    expect(standingOf(here, wrong)).toBe('later');
  });
  it('that went apart are joined: what one lacks comes in, where they differ ours stands and theirs is beside it', () => {
    const theirs = aPlace({ past: ['1-eeeeee'], name: 'Theirs', changedBy: 'the phone', hotF: 99 });
    const joined = joinCopies(here, theirs, writer);
    expect(joined).toMatchObject({
      name: 'Ours',
      hotF: 99,
      rev: 4,
      clash: [{ path: 'name', other: '"Theirs"', otherBy: 'the phone', otherAt: '2026-06-01T08:00:00.000Z' }],
    });
  });
});
