import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { printName, printScalar } from '../../calculators/kit/print.ts';
import { boxOf, layLabels } from '../../calculators/ui/pictures/face/labels.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { calculatorOf } from '../support/catalog.ts';
import { type Drawn, draw, textsOf } from '../support/drawnFace.tsx';
import { faceCases, faceWidths } from '../support/faceCases.ts';
import { root } from '../support/files.ts';

const all = Object.entries(faceCases).flatMap(([slug, cases]) =>
  cases.flatMap(([query, other]) =>
    faceWidths.flatMap((widthPx) =>
      (widthPx === 376 ? (['us', 'si'] as const) : (['us'] as const)).map((system): Drawn & { readonly widthPx: number } => ({
        slug,
        query,
        other,
        widthPx,
        system,
      })),
    ),
  ),
);

describe.each(Object.keys(faceCases))('the face of %s', (slug) => {
  const drawn = all.filter((each) => each.slug === slug).map((each) => ({ ...each, named: JSON.stringify(each), markup: draw(each) }));
  it('is one that its definition has', () => {
    expect(calculatorOf(slug).picture?.kind).toBe('face');
    expect(drawn.length).toBeGreaterThan(5);
  });
  it('lays no two texts over each other and none outside, at any width', () => {
    for (const { named, markup, widthPx } of drawn) {
      const height = Number(/viewBox="0 0 \d+ ([\d.]+)"/.exec(markup)?.[1]);
      const boxes = textsOf(markup).map((label) => ({ ...boxOf(label), words: label.words }));
      expect(boxes.length, named).toBeGreaterThan(0);
      for (const [index, one] of boxes.entries()) {
        expect(one.left >= 0 && one.right <= widthPx && one.top >= 0 && one.bottom <= height, `${named}: ${one.words} leaves the picture`).toBe(true);
        for (const other of boxes.slice(index + 1)) {
          const isOver = one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
          expect(isOver, `${named}: ${one.words} and ${other.words}`).toBe(false);
        }
      }
    }
  });
  it('sets figures at 18 px and nothing under 15', () => {
    for (const { named, markup } of drawn) {
      expect(markup.match(/<text/g)?.length, named).toBe(textsOf(markup).length);
      // Only the tape's own marks and the depth that names a line are smaller.
      for (const { size, words } of textsOf(markup))
        if (size < 18 && /\d/.test(words)) expect(words, named).toMatch(/^\d+( in| cm)?$|^(most roots|hard from|from|25 mm in)/);
    }
  });
  it('tells no figure that is not an input or a result', () => {
    for (const { named, markup, query, other, system = 'us' } of drawn) {
      const calculator = calculatorOf(slug);
      const told = [query, ...(other === undefined ? [] : [other])].flatMap((each) => toldBy(calculator, runQuery(calculator, each), system));
      const numbers = new Set(told.flatMap((text) => text.match(/\d[\d,.]*\d|\d/g) ?? []));
      for (const { size, words } of textsOf(markup))
        if (size > 15)
          for (const number of words.replace('25 mm in', '').match(/\d[\d,.]*\d|\d/g) ?? []) expect(numbers, `${named}: ${words}`).toContain(number);
    }
  });
  it('has a name that says its figures, says that it is drawn, and moves in nothing', () => {
    for (const { named, markup } of drawn) {
      expect(/<svg viewBox="[^"]+" width="\d+" height="\d+" role="img" aria-label="[^"]*(?:\d|past a foot)[^"]*\."/.test(markup), named).toBe(true);
      expect(/<figcaption>[^<]*(?:draw|dug|scale)[^<]*<\/figcaption>/.test(markup), named).toBe(true);
      // Neither a number that is none, nor a color of its own.
      expect(/<animate|NaN|Infinity|undefined|\de-\d|(?:width|height|r)="-|\bstyle=|#[0-9a-f]{6}\b|rgb\(/i.exec(markup)?.[0], named).toBeUndefined();
      const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map((found) => found[1]);
      expect(new Set(ids).size, named).toBe(ids.length);
      for (const found of markup.matchAll(/(?:href="#|url\(#)([^")]+)/g)) expect(ids, named).toContain(found[1]);
    }
  });
  it('is the same drawing twice, and light', () => {
    for (const { named, markup, query, other, widthPx, system } of drawn) {
      if (widthPx !== 376 || system === 'si') continue;
      expect(draw({ slug, query, other }) === markup, named).toBe(true);
      const isPair = /class="picture face pair"/.test(markup);
      expect(gzipSync(markup, { level: 9 }).length, named).toBeLessThanOrEqual(isPair ? 20_000 : 14_000);
    }
  });
  it('tells parts that sum as printed', () => {
    for (const { named, markup } of drawn)
      for (const [, line = ''] of markup.matchAll(/<p class="sum">(.*?)<\/p>/g)) {
        const [parts = '', total = ''] = line.replace(/<[^>]+>/g, '').split('=');
        const digits = /\.(\d+)/.exec(total)?.[1]?.length ?? 0;
        const figures = parts.split('+').map((part) => Number(/[\d,.]+/.exec(part)?.[0].replaceAll(',', '')));
        const sum = figures.reduce((whole, figure) => whole + Math.round(figure * 10 ** digits), 0);
        expect(sum, `${named}: ${line}`).toBe(Math.round(Number(/[\d,.]+/.exec(total)?.[0].replaceAll(',', '')) * 10 ** digits));
      }
  });
});
function toldBy(calculator: Calculator, outcome: Outcome, system: UnitSystem): readonly string[] {
  return Object.entries(outcome.values).flatMap(([name, value]) => {
    const quantity = calculator.quantities[name];
    if (quantity?.kind === 'rows' && Array.isArray(value))
      return value.flatMap((row: unknown) =>
        Object.entries(quantity.columns).flatMap(([column, each]) => {
          const cell: unknown = typeof row === 'object' && row !== null ? Reflect.get(row, column) : undefined;
          return typeof cell === 'number' || typeof cell === 'string' ? [printScalar(cell, each, system)] : [];
        }),
      );
    return typeof value === 'number' ? [printName(calculator, outcome.values, name, system)] : [];
  });
}

describe('where words stand', () => {
  const place = (x: number, y: number) => ({ x, y, anchor: 'start' as const, on: 'on-soil' });
  it('gives each its first free place, the shorter words where the longer find none, and leaves out what finds none', () => {
    const laid = layLabels(
      [
        { words: ['1.2 in'], size: 18, places: [place(10, 40)] },
        { words: ['ran off'], size: 16, places: [place(20, 42), place(10, 70)] },
        { words: ['a name that is far too long', 'short'], size: 16, places: [place(10, 100)] },
        { words: ['nowhere'], size: 16, places: [place(10, 40)] },
      ],
      120,
      120,
    );
    expect(laid.map(({ words, y }) => [words, y])).toEqual([
      ['1.2 in', 40],
      ['ran off', 70],
      ['short', 100],
    ]);
  });
});

describe('colors of a face', () => {
  const luminance = (color: string): number => {
    const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
      const share = Number.parseInt(color.slice(at, at + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const contrast = (one = '', other = ''): number => {
    const [dark = 0, light = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
    return (light + 0.05) / (dark + 0.05);
  };
  const colors = (css: string): Readonly<Record<string, string>> =>
    Object.fromEntries([...css.matchAll(/--([\w-]+): (#[\da-f]{6});/g)].map(([, name = '', color = '']) => [name, color]));
  const [tokens, face] = ['tokens', 'face-colors'].map((name) => readFileSync(join(root, `src/styles/${name}.css`), 'utf8'));
  const parts = (css = ''): readonly [string, string] => {
    const at = css.indexOf('prefers-color-scheme: dark');
    return [css.slice(0, at), css.slice(at).split(/@media print|forced-colors/)[0] ?? ''];
  };
  const [lightTokens, darkTokens] = parts(tokens).map(colors);
  const [lightFace, darkFace] = parts(face).map(colors);
  it.each([
    ['light', { ...lightTokens, ...lightFace }],
    ['dark', { ...lightTokens, ...lightFace, ...darkTokens, ...darkFace }],
  ])('%s: figures stand out from their arrows, and arrows from the paper', (_, palette: Readonly<Record<string, string>>) => {
    for (const arrow of ['rain', 'held', 'clay']) {
      expect(contrast(palette['on-dark'], palette[arrow]), `figure on ${arrow}`).toBeGreaterThanOrEqual(4.5);
      expect(contrast(palette['paper'], palette[arrow]), `${arrow} on paper`).toBeGreaterThanOrEqual(3);
    }
    expect(contrast(palette['rain'], palette['curtain'])).toBeGreaterThanOrEqual(4.5);
    expect(contrast(palette['on-soil'], palette['soil-halo'])).toBeGreaterThanOrEqual(6);
    expect(contrast(palette['paper'], palette['muted'])).toBeGreaterThanOrEqual(4.5);
  });
});
