import { describe, expect, it } from 'vitest';
import { curveOf, type Point, wordsAt } from '../../calculators/ui/pictures/placeWords.ts';
import { boxOf, linesWithin, textPx } from '../../calculators/ui/pictures/words.ts';
import {
  attribute,
  bars,
  crowded,
  type Drawing,
  draw,
  hay,
  lasting,
  lasts,
  lines,
  months,
  moves,
  season,
  shares,
  spans,
  widthsPx,
} from './drawnPlots.tsx';

describe('the room that words take', () => {
  // Measured in a browser with the face of the site: https://www.w3.org/TR/SVG2/text.html, getComputedTextLength; signs set on whole pixels.
  it.each([
    ['6 tons spoiled', 'figure', 121],
    ['down to the stubble', 'figure', 170],
    ['1,870 lb a day', 'figure', 121],
    ['Above the stubble, not yet grazed, lb/ac', 'name', 296],
    ['the dry cow eats less', 'name', 157],
    ['if nothing more grows', 'name', 160],
  ] as const)('is not estimated too small, nor far too large: %s', (text, size, px) => {
    expect(textPx(text, size)).toBeGreaterThanOrEqual(px);
    expect(textPx(text, size)).toBeLessThan(1.12 * px);
  });
  it('breaks lines at spaces only, none wider than the room but for a single word', () => {
    const some = 'Lost in storage outside on bare ground';
    expect(linesWithin(some, 'name', 130).join(' ')).toBe(some);
    for (const line of linesWithin(some, 'name', 130)) expect(textPx(line, 'name')).toBeLessThanOrEqual(130);
    expect(linesWithin('antidisestablishment', 'name', 20)).toEqual(['antidisestablishment']);
  });
  it('is kept free of curves where there is a place without', () => {
    const curve: readonly Point[] = [
      [0, 100],
      [300, 100],
    ];
    const found = wordsAt([150, 100], 'you: 24 head', 'figure', {
      left: 0,
      right: 300,
      top: 0,
      bottom: 200,
      curves: [curveOf(curve, 300)],
      taken: [],
    });
    for (const box of (found?.words ?? []).map(boxOf)) expect(box.top > 100 || box.bottom < 100).toBe(true);
  });
});

const samples: readonly (readonly [string, (drawing: Drawing) => string])[] = [
  ['one bar', (drawing) => draw(shares, hay(110, 38, 16), drawing)],
  ['two bars', (drawing) => draw(shares, hay(110, 38, 16), { ...drawing, other: hay(110, 8, 6) })],
  ['lanes', (drawing) => draw(spans, moves(8, 3, 60), drawing)],
  ['forty lanes, twice', (drawing) => draw(spans, moves(40, 2, 400), { ...drawing, other: moves(12, 4, 200, 'no', 'not-back') })],
  ['days', (drawing) => draw(lasting, lasts(40), { ...drawing, other: lasts(3) })],
  [
    'months',
    (drawing) =>
      draw(
        bars,
        months([
          [4.8, 3.5],
          [0, 4.9],
          [2.6, 2.6],
          [0.1, 0.2],
          [1.7, 2.9],
          [3, 2.4],
        ]),
        drawing,
      ),
  ],
  [
    'two years of months',
    (drawing) => draw(bars, months(Array.from({ length: 24 }, (_, index) => [index % 5, 3])), { ...drawing, other: months([[1, 2]]) }),
  ],
  [
    'curves',
    (drawing) =>
      draw(
        lines,
        season(
          [
            [800, 0],
            [1300, 200],
            [600, 900],
          ],
          [10, 1300],
        ),
        drawing,
      ),
  ],
  [
    'one curve each',
    (drawing) =>
      draw(
        { ...lines, ys: ['grassLbPerAc'] },
        season(
          [
            [800, 0],
            [600, 0],
          ],
          [3, 740],
        ),
        {
          ...drawing,
          other: season(
            [
              [800, 0],
              [900, 0],
            ],
            [8, 880],
          ),
        },
      ),
  ],
];

describe.each(samples)('every plot: %s', (_, drawn) => {
  it('has a role and tells its figures in its name', () => {
    const tag = /<svg[^>]* role="img"[^>]*>/.exec(drawn({}))?.[0] ?? '';
    expect(attribute(tag, 'aria-label')).toMatch(/^Made up.*\d.*[^.]\.$/);
  });
  it('names nothing twice and points at nothing that is missing', () => {
    const markup = drawn({});
    const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map((found) => found[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const found of markup.matchAll(/(?:href="#|url\(#)([^")]+)/g)) expect(ids).toContain(found[1]);
  });
  it('has no inline style and no colour of its own', () => {
    expect(drawn({})).not.toMatch(/\bstyle=|#[0-9a-f]{6}\b|rgb\(/i);
  });
  it.each(widthsPx)('lets no words meet or leave it at %s px, and is as wide as that', (widthPx) => {
    for (const system of ['us', 'si'] as const) {
      const markup = drawn({ widthPx, system });
      expect(markup).toContain(`<svg width="${widthPx}"`);
      expect(markup).toContain(`viewBox="0 0 ${widthPx} `);
      expect(crowded(markup)).toEqual([]);
    }
  });
});
