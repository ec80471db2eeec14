import { describe, expect, it } from 'vitest';
import { paths, sayMonths } from '../../src/guides/paths.ts';
import { calculators } from '../support/catalog.ts';
import { guideTexts } from '../support/guideHeads.ts';

const all = [...paths.readers, ...paths.seasons];
const slugs = all.flatMap(({ guides }) => guides);

describe('the ways through the guides', () => {
  const ids = all.map(({ id }) => id);
  it.each(guideTexts)('$slug stands on one of them, by the list or by its own head', ({ slug, head }) => {
    expect(head.paths.filter((id) => !ids.includes(id))).toEqual([]);
    expect(slugs.includes(slug) || head.paths.length > 0).toBe(true);
  });

  it('lead only to guides that are there', () => {
    const there = new Set(guideTexts.map(({ slug }) => slug));
    expect(slugs.filter((slug) => !there.has(slug))).toEqual([]);
  });

  it('have an anchor each, and no guide twice', () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    for (const { id, guides } of all) expect(new Set(guides).size, id).toBe(guides.length);
  });

  it('ask first what can be asked: how long the grass lasts, where it is dry now', () => {
    const first = paths.readers.flatMap(({ id, asksFirst }) => (asksFirst === undefined ? [] : [[id, asksFirst]]));
    expect(first).toEqual([['drought-now', 'days-of-grass']]);
    expect(first.filter(([, slug]) => !calculators.some((each) => each.slug === slug))).toEqual([]);
  });

  it('are there for every reader', () => {
    expect(paths.readers.map(({ id }) => id)).toEqual(['no-time', 'drought-now', 'new-to-grazing', 'visit', 'office', 'field-day']);
  });
});

describe('the times of the grass', () => {
  it('share out the whole year, each month once', () => {
    const months = paths.seasons.flatMap(({ northMonths }) => northMonths);
    expect(months.toSorted((one, other) => one - other)).toEqual(Array.from({ length: 12 }, (_, index) => index + 1));
  });

  it('follow one another', () => {
    const months = paths.seasons.flatMap(({ northMonths }) => northMonths);
    for (const [index, month] of months.slice(1).entries()) expect(month % 12).toBe(((months[index] ?? 0) + 1) % 12);
  });

  it('are six months apart on the two halves of the earth', () => {
    expect(sayMonths([3, 4], 'march')).toBe('March and April');
    expect(sayMonths([3, 4], 'september')).toBe('September and October');
    expect(sayMonths([11, 12, 1, 2], 'march')).toBe('November to February');
    expect(sayMonths([11, 12, 1, 2], 'september')).toBe('May to August');
    expect(sayMonths([7], 'september')).toBe('January');
  });
});
