import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { printName, printScalar } from '../../calculators/kit/print.ts';
import { type Anchor, boxOf, layLabels } from '../../calculators/ui/pictures/face/labels.ts';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { calculatorOf } from '../support/catalog.ts';
import { faceCases, faceWidths } from '../support/faceCases.ts';
import { root } from '../support/files.ts';

interface Drawn {
  readonly slug: string;
  readonly query: string;
  readonly other?: string | undefined;
  readonly widthPx?: number;
  readonly system?: UnitSystem;
}
function draw({ slug, query, other, widthPx = 376, system = 'us' }: Drawn): string {
  const calculator = calculatorOf(slug);
  if (!calculator.picture) throw new RangeError(`${slug} has no picture`);
  const outcome = runQuery(calculator, query);
  return render(
    <Picture
      calculator={calculator}
      picture={calculator.picture}
      outcome={outcome}
      other={other === undefined ? null : runQuery(calculator, other)}
      titles={other === undefined ? ['', ''] : ['Grazed short', 'Rested']}
      system={system}
      id="p"
      widthPx={widthPx}
    />,
  );
}
const isAnchor = (text: string): text is Anchor => ['start', 'middle', 'end'].includes(text);
const sizeOf = (text: string): 15 | 16 | 18 => (text === '18' ? 18 : text === '16' ? 16 : 15);
const textsOf = (markup: string) =>
  [...markup.matchAll(/<text class="type-(\d+) ([\w-]+)" x="([\d.-]+)" y="([\d.-]+)" text-anchor="(\w+)">([^<]*)</g)].map(
    ([, size = '', on = '', x, y, anchor = '', words = '']) => ({
      size: sizeOf(size),
      on,
      x: Number(x),
      y: Number(y),
      anchor: isAnchor(anchor) ? anchor : 'start',
      words: words.replaceAll('&amp;', '&'),
    }),
  );
const numbersIn = (markup: string, pattern: RegExp): readonly number[] => [...markup.matchAll(pattern)].map((found) => Number(found[1]));
const sumOf = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0);
const pathsOf = (markup: string, name: string): readonly string[] =>
  [...markup.matchAll(new RegExp(`<path class="${name}"[^>]* d="([^"]*)"`, 'g'))].map(([, d = '']) => d);
const countOf = (markup: string, name: string): number => sumOf(pathsOf(markup, name).map((d) => d.split('M').length - 1));
/** Width of a band: from its left edge level to its right. */
const bandWidth = (markup: string, kind: string): readonly number[] =>
  pathsOf(markup, kind)
    .filter((d) => /^M[\d.]+ [\d.]+H/.test(d))
    .map((d) => {
      const [, left, right] = /^M([\d.]+) [\d.]+H([\d.]+)/.exec(d) ?? [];
      return Number(right) - Number(left);
    });
const curtains = (markup: string): readonly number[] =>
  numbersIn(markup, /<svg x="[\d.]+" width="([\d.]+)" height="[\d.]+" aria-hidden="true"><rect class="curtain"/g);

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

const storm = (rain: number, cover: number) => `rain=${rain}in&ground-cover=${cover}pct&grazing=${cover < 50 ? 'heavy' : 'light'}`;
describe('water on a face', () => {
  it('draws bands as wide as they are deep, which together are as wide as the rain', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        fc.constantFrom(...faceWidths),
        (hundredths, cover, otherCover, widthPx) => {
          const [query, other] = [storm(hundredths / 100, cover), storm(hundredths / 100, otherCover)];
          const markup = draw({ slug: 'storm-runoff', query, other, widthPx });
          const [left = 0, right = 0] = curtains(markup);
          expect(left).toBe(right);
          const perIn = left / (hundredths / 100);
          expect(left).toBeLessThanOrEqual((42 * hundredths) / 100 + 0.06);
          for (const [index, half] of markup.split('class="curtain"').slice(1).entries()) {
            const { values } = runQuery(calculatorOf('storm-runoff'), [query, other][index] ?? '');
            const bands = ['held', 'soaked', 'ran'].map((kind) => bandWidth(half, kind)[0] ?? 0);
            expect(Math.abs(sumOf(bands) - left), `${query} ${other} ${widthPx}`).toBeLessThanOrEqual(1);
            for (const [at, name] of ['heldFirstIn', 'soakedIn', 'runoffIn'].entries())
              expect(Math.abs((bands[at] ?? 0) - Number(values[name]) * perIn)).toBeLessThanOrEqual(0.35);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
  it('draws no band where nothing flows', () => {
    expect(bandWidth(draw({ slug: 'storm-runoff', query: 'rain=0.3in' }), 'ran')).toEqual([]);
    expect(bandWidth(draw({ slug: 'storm-runoff', query: 'rain=0.3in' }), 'soaked')).toEqual([]);
    expect(bandWidth(draw({ slug: 'storm-runoff', query: '' }), 'ran')).toHaveLength(1);
  });
  it('outlines on each side what leaves the other, and nothing where they are alike', () => {
    const pair = draw({ slug: 'storm-runoff', query: '', other: 'ground-cover=85pct&grazing=light' });
    expect(pair.match(/class="other-ran is-inside"/g)).toHaveLength(1);
    expect(pair.match(/class="other-ran"/g)).toHaveLength(1);
    expect(draw({ slug: 'storm-runoff', query: '', other: '' })).not.toContain('other-ran');
  });
  it('tells the sum in hundredths of an inch', () => {
    // 3 in on a curve number of 79 by the handbook: S = 1000/79 - 10 = 2.658, Ia = 0.532, Q = (3 - 0.532)^2 / (3 + 2.127) = 1.188.
    const line = /<p class="sum">(.*?)<\/p>/.exec(draw({ slug: 'storm-runoff', query: 'cover=own&curve-number=79' }))?.[1]?.replace(/<[^>]+>/g, '');
    expect(line).toBe('1.19 ran off + 0.53 held + 1.28 soaked in = 3.00 in');
  });
  it('stands water only where some runs off', () => {
    expect(draw({ slug: 'ponding', query: '' })).toContain('class="ponded"');
    expect(draw({ slug: 'ponding', query: 'rain=0.05in' })).not.toContain('class="ponded"');
  });
  it('draws a tray before anybody poured without a band', () => {
    const markup = draw({ slug: 'rain-demonstration', query: 'jars=not-yet' });
    expect(bandWidth(markup, 'ran')).toEqual([]);
    expect(curtains(markup)).toHaveLength(1);
  });
});

describe('the ground on a face', () => {
  it.each([0, 1, 5, 37, 45, 50, 85, 99, 100])('carries plants on %s percent of its strips', (cover) => {
    for (const widthPx of faceWidths) {
      const strips = Math.floor(widthPx / 9);
      const markup = draw({ slug: 'storm-runoff', query: storm(1, cover), widthPx });
      expect(Math.abs(countOf(markup, 'crust') - strips * (1 - cover / 100))).toBeLessThanOrEqual(1);
    }
  });
  it('shows each kind of a count on its share of the strips', () => {
    const markup = draw({ slug: 'cover-count', query: 'plant=40&litter=20&rock=10&bare=30', widthPx: 900 });
    expect(countOf(markup, 'crust')).toBe(30);
    expect(countOf(markup, 'stone')).toBe(10);
  });
  /** Pixels to an inch, by the marks of the tape. */
  const perInch = (markup: string): number => {
    const [first, second] = [...(pathsOf(markup, 'tape-on-soil')[0] ?? pathsOf(markup, 'tape')[0] ?? '').matchAll(/M[\d.]+ ([\d.]+)h/g)].map(
      (found) => Number(found[1]),
    );
    const words = textsOf(markup)
      .filter(({ size }) => size === 15)
      .map((label) => Number.parseInt(label.words, 10));
    const marks = words.filter((each) => Number.isFinite(each)).toSorted((one, other) => one - other);
    const isPair = /face pair/.test(markup);
    const [top, next] = isPair
      ? [first, [...(pathsOf(markup, 'tape')[0] ?? '').matchAll(/M[\d.]+ ([\d.]+)h/g)].map((found) => Number(found[1]))[2]]
      : [first, second];
    return ((next ?? 0) - (top ?? 0)) / ((marks[1] ?? 0) - (marks[0] ?? 0));
  };
  it('takes the slice of thirty years off at true depth', () => {
    const markup = draw({ slug: 'soil-loss', query: '' });
    const { values } = runQuery(calculatorOf('soil-loss'), '');
    const slices = [...markup.matchAll(/class="gone" [^>]*d="M0 ([\d.]+)H[\d.]+V([\d.]+)H0z"/g)].map(([, from, to]) => Number(to) - Number(from));
    const expected = [values['thirtyYearsIn'], values['ploughedThirtyYearsIn']].map((inches) => Number(inches) * perInch(markup));
    for (const [index, slice] of slices.entries()) expect(Math.abs(slice - (expected[index] ?? 0))).toBeLessThan(0.6);
    expect(slices).toHaveLength(2);
    // Past a foot no thickness is told.
    expect(textsOf(draw({ slug: 'soil-loss', query: 'ground-cover=0pct&rain-factor=700&rise=72in' })).map(({ words }) => words)).toContain(
      'past a foot',
    );
  });
  it('stands a ring as wide and as deep as it is, by the same tape', () => {
    for (const query of ['', 'bore=12in', 'bore=3in&inserted=2in&water=100ml']) {
      const markup = draw({ slug: 'ring-test', query });
      const { values } = runQuery(calculatorOf('ring-test'), query);
      const [, left, , foot, right] = /class="ring" d="M([\d.]+) ([\d.]+)V([\d.]+)M([\d.]+) /.exec(markup) ?? [];
      const ground = Number(/class="ponded" d="M[\d.]+ [\d.]+H[\d.]+V([\d.]+)/.exec(markup)?.[1]) - 1;
      expect(Math.abs((Number(right) - Number(left)) / perInch(markup) - Number(values['ringIn']))).toBeLessThan(0.05);
      expect(Math.abs((Number(foot) - ground) / perInch(markup) - Number(values['insertedIn']))).toBeLessThan(0.05);
    }
  });
  it('wets as many spots of a layer as it is full', () => {
    const spots = (feel: string): number => {
      const markup = draw({
        slug: 'stored-water',
        query: `layers.thickness=12in&layers.texture=loam&layers.held-from=survey&layers.survey=0.2&layers.stones=0pct&layers.feel=measured&layers.filled=${feel}&roots-most=10in&roots-deepest=10in`,
      });
      return [...markup.matchAll(/id="p-0-water" d(?:="([^"]*)")?/g)].map(([, d = '']) => d.split('M').length - 1)[0] ?? Number.NaN;
    };
    expect(spots('0pct')).toBe(0);
    expect(Math.abs(spots('25pct') * 4 - spots('100pct'))).toBeLessThanOrEqual(2);
  });
  it('hangs the roots of both sides on one scale, and claims none that nobody measured', () => {
    const markup = draw({ slug: 'stored-water', query: '', other: 'roots-most=26in&roots-deepest=40in' });
    const [left = 0, right = 0] = numbersIn(markup, /class="rooted" d="M0 ([\d.]+)/g);
    // 13 in and 26 in, under 46 px of air.
    expect(Math.abs((right - 46) / (left - 46) - 2)).toBeLessThan(0.01);
    expect(draw({ slug: 'storm-runoff', query: '' })).not.toContain('class="rooted"');
  });
  it('shows plates and a tape only where a probe was pushed', () => {
    expect(draw({ slug: 'packed-soil', query: '' })).not.toMatch(/hard-0|tape-on-soil" d="M/);
    expect(draw({ slug: 'packed-soil', query: 'probe=pushed' })).toMatch(/hard-0.*tape-on-soil" d="M/);
  });
  it('stands the water of a pond as its gallons do', () => {
    const markup = draw({ slug: 'stock-water', query: '' });
    const { values } = runQuery(calculatorOf('stock-water'), '');
    const bands = [...markup.matchAll(/class="pond-(?:drunk|left)" d="M0 ([\d.]+)H[\d.]+V([\d.]+)/g)].map(
      ([, from, to]) => [Number(from), Number(to)] as const,
    );
    const bowl =
      /<clipPath id="p-0-bowl"><path d="M([^"]*)z"/
        .exec(markup)?.[1]
        ?.split('L')
        .map((point) => point.split(' ').map(Number)) ?? [];
    const sides = [bowl.slice(0, bowl.length / 2), bowl.slice(bowl.length / 2).toReversed()];
    const at = (y: number, side: readonly (readonly number[])[]): number => {
      const next = side.findIndex((point) => (point[1] ?? 0) >= y);
      const [x0 = 0, y0 = 0, x1 = 0, y1 = 1] = [...(side[next - 1] ?? []), ...(side[next] ?? [])];
      return x0 + ((x1 - x0) * (y - y0)) / (y1 - y0);
    };
    const area = (from: number, to: number): number =>
      sumOf(
        Array.from({ length: 200 }, (_, index) => from + ((index + 0.5) * (to - from)) / 200).map(
          (y) => ((at(y, sides[1] ?? []) - at(y, sides[0] ?? [])) * (to - from)) / 200,
        ),
      );
    const foot = Math.max(...bowl.map((point) => point[1] ?? 0));
    const areas = bands.map(([from, to]) => area(from, Math.min(to, foot - 0.01)));
    for (const [index, name] of ['drunkGal', 'lostGal', 'leftGal'].entries())
      expect(Math.abs((areas[index] ?? 0) / sumOf(areas) - Number(values[name]) / Number(values['pondGal']))).toBeLessThan(0.01);
  });
});

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
