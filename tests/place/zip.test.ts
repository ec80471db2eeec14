import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { photosIn } from '../../src/place/files/pictures.ts';
import { readZip, zipOf } from '../../src/place/files/zip.ts';
import type { Photo } from '../../src/place/model/photo.ts';
import { aVisit } from './aVisit.ts';

const photo: Photo = {
  id: 'f1',
  rev: 1,
  past: ['1-photo0'],
  changedBy: 'a file',
  changedAt: '2026-06-20T08:00:00.000Z',
  v: 1,
  placeId: 'p1',
  visitId: 'v1',
  type: 'image/webp',
  data: btoa('picture'),
};
const text = '{"file":"holdwater-place"}\n';
const said = (bytes: Uint8Array): string => {
  const read = readZip(bytes);
  if (read.is === 'read') throw new RangeError('it was opened');
  return read.say;
};

describe('a zip of a place', () => {
  it('holds the file and its photos, comes out as it went in, and is the same bytes each time', () => {
    const zip = zipOf(text, [photo]);
    expect(zipOf(text, [photo])).toEqual(zip);
    const read = readZip(zip);
    if (read.is !== 'read') throw new RangeError(read.say);
    expect(read.text).toBe(text);
    expect(photosIn(read.pictures, [aVisit()])).toEqual([photo]);
  });
  it('lets in no picture that no visit names, and none that is not one', () => {
    expect(photosIn(new Map([['f2', { type: 'image/webp', data: 'AAAA' }]]), [aVisit()])).toEqual([]);
    expect(photosIn(new Map([['f1', { type: 'image/webp', data: '<svg>' }]]), [aVisit()])).toEqual([]);
  });
  it.each([
    ['another folder', { 'place.json': strToU8(text), '../evil.json': strToU8('x') }],
    ['a script', { 'place.json': strToU8(text), 'photos/a.js': strToU8('x') }],
    ['no file of a place', { 'photos/a.webp': strToU8('x') }],
  ])('with %s is refused', (_, entries) => {
    expect(said(zipSync(entries))).toMatch(/not a file of a place/);
  });
  it('that unpacks to more than any place is, or to too many things, is refused before it is unpacked', () => {
    const blown = zipSync({ 'place.json': strToU8(text), 'photos/a.webp': new Uint8Array(201 * 1024 * 1024) });
    expect(blown.length).toBeLessThan(2_000_000);
    expect(said(blown)).toMatch(/more than any place/);
    const many = Object.fromEntries(Array.from({ length: 2001 }, (_, index) => [`photos/p${index}.webp`, strToU8('x')]));
    expect(said(zipSync({ 'place.json': strToU8(text), ...many }))).toMatch(/more than any place/);
  });
  it('that is damaged is refused', () => {
    expect(said(zipOf(text, [photo]).subarray(0, 60))).toMatch(/damaged/);
    expect(said(strToU8('PK and nothing else'))).toMatch(/damaged/);
  });
});
