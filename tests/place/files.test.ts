import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv, type AnySchema } from 'ajv';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { getStaticPaths, GET as schemaPage } from '../../src/pages/place/schema-[version].json.ts';
import { mostLetters } from '../../src/place/files/limits.ts';
import { bringIn } from '../../src/place/files/merge.ts';
import { nameOfFile } from '../../src/place/files/nameOfFile.ts';
import { previewOf } from '../../src/place/files/preview.ts';
import { type FileRead, readFile } from '../../src/place/files/read.ts';
import { textOfPlaces } from '../../src/place/files/save.ts';
import { textOfRaw } from '../../src/place/files/textOfRaw.ts';
import { placeFileSchema } from '../../src/place/model/file.ts';
import { type Migrations, migrate } from '../../src/place/model/migrations/migrate.ts';
import { placeVersion } from '../../src/place/model/migrations/place.ts';
import { type Place, placeSchema } from '../../src/place/model/place.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { memoryStore } from '../../src/place/store/openStore.ts';
import { filesBelow, root } from '../support/files.ts';
import { aPlace } from './aPlace.ts';

const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');
const newest = `tests/place/fixtures/v${placeVersion}`;
const fixtures = filesBelow(newest, /\.json$/).map((path): readonly [string, string] => [path, textOf(path)]);
/** What older copies wrote, with its file of today. */
const older = filesBelow('tests/place/fixtures', /\.json$/)
  .filter((path) => /\/v\d+\//.test(path) && !path.startsWith(newest))
  .map((path): readonly [string, string] => [path, path.replace(/\/v\d+\//, `/v${placeVersion}/`)]);
const everything = textOf(`${newest}/everything.json`);
const read = (text: string): Extract<FileRead, { is: 'read' }> => {
  const found = readFile(text);
  if (found.is !== 'read') throw new RangeError(found.say);
  return found;
};
const said = (text: string): string => {
  const found = readFile(text);
  if (found.is === 'read') throw new RangeError('it was opened');
  return found.say;
};
const nothing = { places: [], rows: [] };
const only = (...places: readonly Place[]) => ({ places, rows: [] });
const fileOf = (...places: readonly unknown[]): string =>
  JSON.stringify({ file: 'holdwater-place', v: 1, edition: '0.1.0', savedAt: '2026-06-20T12:00:00.000Z', places });

describe('a file', () => {
  it.each(fixtures)('%s opens, and comes out again the same to the last byte', (_, text) => {
    const { places, aside, edition, savedAt, ...kept } = read(text);
    expect(aside).toEqual([]);
    expect(textOfPlaces(places, edition, savedAt, kept)).toBe(text);
  });
  it('is among the fixtures for each version that ever was', () => {
    const versions = new Set([...older, ...fixtures].map(([path]) => /\/v(\d+)\//.exec(path)?.[1]));
    expect([...versions].toSorted()).toEqual(Array.from({ length: placeVersion }, (_, index) => String(index + 1)));
  });
  it.each(older)('%s of an older copy opens, and comes out as %s', (path, today) => {
    const { places, aside, edition, savedAt, ...kept } = read(textOf(path));
    expect(aside).toEqual([]);
    expect(textOfPlaces(places, edition, savedAt, kept)).toBe(textOf(today));
  });
  it('in which every field of a place is used is among the fixtures', () => {
    const [place] = read(everything).places;
    const used = new Set(fixtures.flatMap(([, text]) => read(text).places.flatMap((each) => Object.keys(each))));
    expect(Object.keys(placeSchema.entries).filter((key) => !used.has(key))).toEqual([]);
    // Every part too: what stands in the first of each list.
    const parts = { ...placeSchema.entries.pastures.pipe[0].item.entries };
    expect(Object.keys(parts).filter((key) => !Object.hasOwn(place?.pastures[0] ?? {}, key))).toEqual([]);
  });
  it('comes out the same through a store and back, whatever the order in which its fields stood', async () => {
    const { places, edition, savedAt } = read(everything);
    const store = memoryStore('chosen', { by: 'x' });
    const shuffled: readonly unknown[] = places.map((place) => Object.fromEntries(Object.entries(place).toReversed()));
    await bringIn(
      store,
      previewOf(read(fileOf(...shuffled)), nothing).map((coming) => ({ coming })),
    );
    expect(textOfPlaces((await store.read(placeKind)).records, edition, savedAt)).toBe(everything);
  });
  it('has a name that any device takes', () => {
    expect(nameOfFile('Two Bench place', '2026-06-20')).toBe('holdwater-two-bench-place-2026-06-20.json');
    expect(nameOfFile('Grün’s lease / “east”: CON?', '2026-06-20')).toBe('holdwater-gru-n-s-lease-east-con-2026-06-20.json');
    expect(nameOfFile('牧场', '2026-06-20')).toBe('holdwater-place-2026-06-20.json');
  });
  it('of another edition opens, and keeps words that this one does not know', () => {
    const other = fileOf(aPlace({ name: 'A place of theirs' })).replace('0.1.0', 'another office, 2031');
    expect(read(other)).toMatchObject({ edition: 'another office, 2031', places: [{ name: 'A place of theirs' }], aside: [] });
  });
  it('of a record that cannot be opened holds it as it is', () => {
    expect(JSON.parse(textOfRaw({ v: 99, moon: 'full' }))).toEqual({ v: 99, moon: 'full' });
  });
});

const schemaOf = async (version: number): Promise<AnySchema> => schemaPage({ props: { version } }).json();
const published = await schemaOf(placeVersion);
describe('the published schema', () => {
  const validate = new Ajv({ validateFormats: false, strict: false }).compile(published);
  it('has the version of places in its address, and those of older ones answer with the same and say so', async () => {
    const versions = Array.from({ length: placeVersion }, (_, index) => index + 1);
    expect(getStaticPaths().map(({ params, props }) => [params.version, props.version])).toEqual(
      versions.map((version) => [String(version), version]),
    );
    const bare = (schema: AnySchema): unknown => ({ ...Object(schema), $comment: '' });
    for (const version of versions) {
      const schema = await schemaOf(version);
      expect(bare(schema)).toEqual(bare(published));
      expect(JSON.stringify(schema)).toContain(
        version === placeVersion ? `Places are of version ${placeVersion}. ` : `the same as schema-${placeVersion}.json`,
      );
    }
  });
  it.each(fixtures)('takes %s', (_, text) => {
    expect(validate(JSON.parse(text))).toBe(true);
  });
  it('refuses what is refused here', () => {
    for (const wrong of [
      { ...aPlace(), name: '' },
      { ...aPlace(), moon: 'full' },
      { ...aPlace(), v: placeVersion + 1 },
      { ...aPlace(), hotF: 'hot' },
      { ...aPlace(), season: { turnInDay: '04-31' } },
      { ...aPlace(), herd: [{ id: 'x', kind: 'llama' }] },
    ]) {
      const file: unknown = JSON.parse(fileOf(wrong));
      expect(validate(file)).toBe(false);
      expect(v.safeParse(placeFileSchema, file).success).toBe(false);
      expect(read(fileOf(wrong)).places).toEqual([]);
    }
  });
});

describe('a file that is not ours, or means harm', () => {
  it.each([
    ['no letters', ''],
    ['words', 'Low bench, 85 acres'],
    ['a page', '<!doctype html><script>alert(1)</script>'],
    ['another list', '[1, 2, 3]'],
    ['half a file', everything.slice(0, everything.length / 2)],
    ['another kind of file', '{"file":"something-else","v":1}'],
    ['nothing', 'null'],
    ['a number', '7'],
  ])('with %s in it is refused in a sentence', (_, text) => {
    expect(said(text)).toBe('This is not a file of a place. Files of a place are saved on the page “Your place”.');
  });
  it('is refused by its size before anything is read of it', () => {
    expect(said(' '.repeat(mostLetters + 1))).toBe('This file is larger than any place can be. It was not opened.');
  });
  it('is refused where it nests too deep, even so deep that no reader could follow', () => {
    for (const depth of [20, 100_000])
      expect(said(`{"file":"holdwater-place","v":1,"places":${'['.repeat(depth)}${']'.repeat(depth)}}`)).toMatch(/\.$/);
  });
  it('is refused for a list or a text that no place has', () => {
    expect(said(fileOf(...Array.from({ length: 50_001 }, () => 0)))).toBe(
      'A list in this file is longer than any that a place can hold. It was not opened.',
    );
    expect(said(fileOf({ ...aPlace(), name: 'x'.repeat(20_001) }))).toBe(
      'A text in this file is longer than any that a place can hold. It was not opened.',
    );
  });
  it('of a newer copy is told as such, whole or place by place', () => {
    expect(said('{"file":"holdwater-place","v":2}')).toBe(
      'This file was saved by a newer copy of these pages. Open it there, or bring this copy up to date.',
    );
    expect(read(fileOf({ ...aPlace(), v: placeVersion + 1 }, aPlace({ id: 'p2' })))).toMatchObject({
      places: [{ id: 'p2' }],
      aside: [{ name: 'Home place', why: 'It was made by a newer copy of these pages.' }],
    });
  });
  it('reaches no prototype, and keeps markup and script links as the texts that they are', () => {
    const hostile = fileOf(aPlace({ name: '<img src=x onerror=alert(1)>' })).replace('"soils"', '"__proto__":{"isAdmin":true},"soils"');
    expect(read(hostile).aside).toMatchObject([{ why: 'What stands at “__proto__” cannot be used.' }]);
    expect(Reflect.get({}, 'isAdmin')).toBeUndefined();
    expect(read(fileOf(aPlace({ name: '<img src=x onerror=alert(1)>' }))).places[0]?.name).toBe('<img src=x onerror=alert(1)>');
    expect(read(fileOf({ ...aPlace(), linkBase: 'javascript:alert(1)' })).aside).toMatchObject([
      { why: 'What stands at “link base” cannot be used.' },
    ]);
  });
  it('breaks no line and ends no quote with the name of a field', () => {
    expect(read(fileOf({ ...aPlace(), 'moon” is\n\u2028 full': 1 })).aside).toMatchObject([{ why: 'What stands at “moon is full” cannot be used.' }]);
  });
  it('with one place twice opens it once', () => {
    expect(read(fileOf(aPlace(), aPlace())).aside).toMatchObject([{ why: 'It stands in this file twice.' }]);
  });
});

describe('1,000 fuzzed files', () => {
  // What only a programmer understands; words in the quotes are the file's own.
  const programmers =
    /\b(?:JSON|undefined|null|NaN|object|array|string|schema|parse|token|prototype|type|error|exception|invalid|regex)\b|\[object|Unexpected/i;
  const isPlain = (say: string): boolean => /^[A-Z].*\.$/.test(say) && !programmers.test(say.replaceAll(/“[^”]*”/g, ''));
  const odd = fc.oneof(
    fc.jsonValue({ maxDepth: 4 }),
    fc.constantFrom(
      '__proto__',
      '<script>alert(1)</script>',
      'javascript:alert(1)',
      '../../etc',
      '\u0000',
      '\ud800',
      '=1+1',
      '2026-02-30',
      -0,
      1e308,
      3,
      'loam',
    ),
  );
  /** One thing in it put in another's place. */
  const mutate = (value: unknown, pick: () => number, put: unknown, key: string): unknown => {
    // Half of the numbers only move a little: a file that somebody wrote by hand.
    if (typeof value === 'number' && pick() < 0.5) return value * 0.99;
    if (typeof value !== 'object' || value === null || pick() < 0.15) return put;
    const parts = Object.entries(value);
    const at = Math.floor(pick() * (parts.length + 1));
    const next = parts.map(([name, each], index) => [name, index === at ? mutate(each, pick, put, key) : each] as const);
    if (Array.isArray(value)) return at === parts.length ? [...value, put] : next.map(([, each]) => each);
    // JSON.parse makes own fields of any name; a computed one does the same.
    return at === parts.length ? { ...value, [key]: put } : Object.fromEntries(next);
  };

  it('throw nothing, say nothing that only a programmer understands, and let in only what fits', { timeout: 60_000 }, async () => {
    const seen = { refused: 0, aside: 0, opened: 0 };
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.noBias(fc.nat(9999)), { minLength: 12, maxLength: 12 }),
        odd,
        fc.oneof(fc.string(), fc.constantFrom('__proto__', 'constructor', 'toString', 'areaAc')),
        fc.oneof({ weight: 5, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: fc.tuple(fc.nat(), fc.string({ maxLength: 5 })) }),
        async (numbers, put, key, scratch) => {
          let next = 0;
          const pick = (): number => (numbers[next++ % numbers.length] ?? 0) / 10_000;
          // Most hits go into a place, the rest into the frame around it.
          const parsed: { readonly places: readonly unknown[] } = JSON.parse(everything);
          const [place, ...others] = parsed.places;
          const hit = pick() < 0.8 ? { ...parsed, places: [mutate(place, pick, put, key), ...others] } : mutate(parsed, pick, put, key);
          const whole = JSON.stringify(hit) ?? '';
          const at = scratch === null ? 0 : scratch[0] % (whole.length + 1);
          const found = readFile(scratch === null ? whole : `${whole.slice(0, at)}${scratch[1]}${whole.slice(at)}`);
          if (found.is === 'refused') {
            seen.refused += 1;
            expect(isPlain(found.say), found.say).toBe(true);
            return;
          }
          seen[found.aside.length > 0 ? 'aside' : 'opened'] += 1;
          for (const { why } of found.aside) expect(isPlain(why), why).toBe(true);
          for (const place of found.places) expect(v.safeParse(placeSchema, place).success).toBe(true);
          const store = memoryStore('chosen', { by: 'x' });
          const coming = previewOf(found, only(aPlace()));
          expect((await store.read(placeKind)).records).toEqual([]);
          await bringIn(
            store,
            coming.map((each) => ({ coming: each })),
          );
          expect((await store.read(placeKind)).records).toHaveLength(found.places.length);
          expect(Object.keys(Object.prototype)).toEqual([]);
        },
      ),
      { numRuns: 1000 },
    );
    // The fuzzing reaches all three ends.
    expect(Math.min(seen.refused, seen.aside, seen.opened), JSON.stringify(seen)).toBeGreaterThan(20);
  });
});

describe('older data', () => {
  // Files of older copies stand above; here the way is tried with steps that stand in no edition.
  const steps: Migrations = { 1: ({ acres, ...rest }) => ({ ...rest, areaAc: acres }), 2: (record) => ({ ...record, isCounted: true }) };
  it('goes through every step to the version of today, and is not changed itself', () => {
    const old = Object.freeze({ v: 1, acres: 85 });
    expect(migrate(steps, 3, old)).toEqual({ is: 'current', value: { v: 3, areaAc: 85, isCounted: true } });
    expect(migrate(steps, 3, { v: 2, areaAc: 85 })).toEqual({ is: 'current', value: { v: 3, areaAc: 85, isCounted: true } });
    expect(old).toEqual({ v: 1, acres: 85 });
  });
  it.each([
    [{ v: 4 }, { is: 'newer', v: 4 }],
    [{ v: 0 }, { is: 'unreadable' }],
    [{ v: '1' }, { is: 'unreadable' }],
    [{}, { is: 'unreadable' }],
    [null, { is: 'unreadable' }],
    [[1], { is: 'unreadable' }],
  ])('%j is told apart', (raw, told) => {
    expect(migrate(steps, 3, raw)).toEqual(told);
  });
  it('lacks no step', () => {
    expect(() => migrate({ 2: (record) => record }, 3, { v: 1 })).toThrow('no migration from version 1');
  });
});
