import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { newId, randomMark } from '../../src/place/store/ids.ts';
import { roomOf } from '../../src/place/store/storageState.ts';
import { filesBelow, root } from '../support/files.ts';

// An office may serve its copy over plain http. Such a page is no "secure context" (W3C Secure Contexts), and browsers leave parts out there.
afterEach(() => vi.unstubAllGlobals());

describe('over plain http', () => {
  it('ids are made all the same: version 4 of RFC 9562, never the same twice', () => {
    const { getRandomValues } = crypto;
    vi.stubGlobal('crypto', { getRandomValues: getRandomValues.bind(crypto) });
    const ids = Array.from({ length: 1000 }, newId);
    expect(new Set(ids).size).toBe(1000);
    for (const id of ids) expect(id).toMatch(/^[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/);
    expect(new Set(Array.from({ length: 50 }, randomMark)).size).toBeGreaterThan(45);
    for (const mark of Array.from({ length: 50 }, randomMark)) expect(mark).toMatch(/^[\da-f]{6}$/);
  });

  it('a browser without a storage manager promises nothing, and nothing breaks', async () => {
    expect(await roomOf(undefined, true)).toEqual({ isPersisted: false });
  });

  // What stands on secure addresses only; what is used with a question first (clipboard, storage, wake lock, worker) is walked in tests/release/hosted.spec.ts.
  it('no script of a page relies on what is not there', () => {
    const files = ['src', 'calculators'].flatMap((folder) => filesBelow(folder, /\.tsx?$/));
    expect(files.length).toBeGreaterThan(500);
    const uses = files
      // What runs while building, and the worker's own rooms: there is a worker on secure addresses only.
      .filter((path) => !/^src\/(?:integrations|copy)\//.test(path))
      .flatMap((path) => {
        const text = readFileSync(join(root, path), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
        return (text.match(/randomUUID|crypto\.subtle|\bcaches\.|navigator\.locks|showSaveFilePicker/g) ?? []).map((use) => `${path}: ${use}`);
      });
    expect(uses).toEqual([]);
  });
});
