import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import type { Bars, DaySpans, Lines, PlainPicture, RowSpans, Shares } from '../../calculators/kit/pictures.ts';
import type { NumberQuantity } from '../../calculators/kit/quantities.ts';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import { curveOf, type Point, wordsAt } from '../../calculators/ui/pictures/placeWords.ts';
import { boxOf, linesWithin, meet, textPx, type Word } from '../../calculators/ui/pictures/words.ts';
import { otherTexts, runSide, sideTitles } from '../../calculators/ui/sides.ts';
import type { UnitName, UnitSystem } from '../../calculators/units/units.ts';
import { calculators } from '../support/catalog.ts';

const amount = (label: string, unit: UnitName, digits: number): NumberQuantity => ({ kind: 'number', label, symbol: 'x', unit, digits });
const calculator: Calculator = {
  slug: 'made-up',
  version: 1,
  title: 'Made up',
  question: '',
  lead: '',
  searchWords: [],
  inputs: {},
  quantities: {
    boughtTon: amount('Hay to buy', 'ton', 0),
    eatenTon: amount('They eat', 'ton', 0),
    storedTon: amount('Lost in storage outside on bare ground', 'ton', 0),
    fedTon: amount('Lost in feeding', 'ton', 0),
    lowDays: amount('At the least', 'd', 0),
    likelyDays: amount('Likely', 'd', 0),
    highDays: amount('At the most', 'd', 0),
    backDay: { kind: 'day', label: 'Back' },
    atDay: { kind: 'day', label: 'Yours' },
    thereLbPerAc: amount('Yours', 'lb/ac', 0),
    verdict: { kind: 'word', label: 'Grows', words: { yes: 'Yes', no: 'No' } },
    moves: {
      kind: 'rows',
      label: 'Moves',
      columns: {
        paddock: amount('Paddock', 'count', 0),
        inDay: { kind: 'day', label: 'In' },
        outDay: { kind: 'day', label: 'Out' },
        goesIn: { kind: 'word', label: 'Go in', words: { ready: 'ready', 'not-back': 'not back' } },
      },
    },
    season: {
      kind: 'rows',
      label: 'Season',
      columns: {
        day: { kind: 'day', label: 'Day' },
        grassLbPerAc: amount('Grass standing', 'lb/ac', -1),
        eatenLbPerAc: amount('Eaten so far', 'lb/ac', -1),
      },
    },
    byMonth: {
      kind: 'rows',
      label: 'Months',
      columns: { monthDay: { kind: 'day', label: 'Up to' }, rainIn: amount('Rain', 'in', 1), usualIn: amount('Median', 'in', 1) },
    },
  },
  results: [],
  steps: [],
  cautions: [],
  refusals: [],
  limits: [],
  layout: { first: [], groups: [] },
  handout: [],
  weighsOnPeople: false,
  picture: undefined,
  morePictures: [],
  wholes: [],
  hasCalendar: false,
  leadsTo: [],
  sources: [],
  topic: 'rain',
  order: 10,
  guides: [],
  changes: [],
  run: () => ({ refusals: [] }),
};
const outcome = (values: Outcome['values']): Outcome => ({
  values,
  computed: {},
  shown: [],
  ranges: {},
  shorts: {},
  cautions: [],
  uses: [],
  note: '',
  calendar: [],
});
interface Drawing {
  readonly other?: Outcome;
  readonly widthPx?: number;
  readonly system?: UnitSystem;
}
const draw = (picture: PlainPicture, one: Outcome, { other, widthPx = 376, system = 'us' }: Drawing = {}): string =>
  render(
    <Picture
      calculator={calculator}
      picture={picture}
      outcome={one}
      other={other ?? null}
      titles={other ? ['Grazed short', 'Rested'] : ['', '']}
      system={system}
      id="p"
      widthPx={widthPx}
    />,
  );

const shares: Shares = {
  kind: 'shares',
  whole: 'boughtTon',
  parts: [
    { of: 'eatenTon', tone: 'kept' },
    { of: 'storedTon', tone: 'lost' },
    { of: 'fedTon', tone: 'lost' },
  ],
};
const hay = (eatenTon: number, storedTon: number, fedTon: number): Outcome =>
  outcome({ boughtTon: eatenTon + storedTon + fedTon, eatenTon, storedTon, fedTon });
const spans: RowSpans = {
  kind: 'spans',
  rows: 'moves',
  lane: 'paddock',
  from: 'inDay',
  to: 'outDay',
  spanSays: 'grazed',
  gapSays: 'rests',
  hollow: { of: 'goesIn', is: 'not-back', says: 'not grown back' },
  mark: { at: 'backDay', says: 'paddock 1 is back', shownWhen: { verdict: 'yes' } },
};
/** Day 20514 is March 2, 2026. */
const firstDay = 20514;
const moves = (paddocks: number, stayDays: number, days: number, verdict: 'yes' | 'no' = 'yes', goesIn = 'ready'): Outcome =>
  outcome({
    backDay: firstDay + 30,
    verdict,
    moves: Array.from({ length: Math.max(1, Math.floor(days / stayDays)) }, (_, index) => ({
      paddock: 1 + (index % paddocks),
      inDay: firstDay + index * stayDays,
      outDay: firstDay + (index + 1) * stayDays,
      goesIn: index < paddocks ? 'ready' : goesIn,
    })),
  });
const lasting: DaySpans = {
  kind: 'spans',
  lanes: [
    { of: 'lowDays', says: 'at the least' },
    { of: 'likelyDays', says: 'likely' },
    { of: 'highDays', says: 'at the most' },
  ],
  spanSays: 'grazed',
  mark: { at: 'likelyDays', says: 'down to the stubble' },
};
const lasts = (likelyDays: number): Outcome => outcome({ lowDays: likelyDays * 0.8, likelyDays, highDays: likelyDays * 1.3 });
const lines: Lines = { kind: 'lines', rows: 'season', x: 'day', ys: ['grassLbPerAc', 'eatenLbPerAc'], you: { at: 'atDay', value: 'thereLbPerAc' } };
const season = (rows: readonly (readonly [number, number])[], you?: readonly [number, number]): Outcome =>
  outcome({
    season: rows.map(([grassLbPerAc, eatenLbPerAc], index) => ({ day: firstDay + index * 10, grassLbPerAc, eatenLbPerAc })),
    ...(you ? { atDay: firstDay + you[0], thereLbPerAc: you[1] } : {}),
  });
const bars: Bars = {
  kind: 'bars',
  rows: 'byMonth',
  x: 'monthDay',
  y: 'rainIn',
  usual: 'usualIn',
  usualSays: 'the usual month',
  shortSays: 'short of it',
};
const months = (list: readonly (readonly [number, number])[]): Outcome =>
  outcome({ byMonth: list.map(([rainIn, usualIn], index) => ({ monthDay: firstDay + 29 + 30 * index, rainIn, usualIn })) });

const numbersOf = (markup: string, pattern: RegExp): readonly number[] => [...markup.matchAll(pattern)].map((found) => Number(found[1]));
const attribute = (tag: string, name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
const unescaped = (text: string): string => text.replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>');
/** The words of a drawing as they were placed. */
const wordsIn = (markup: string): readonly Word[] =>
  [...markup.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, tag = '', text = '']) => {
    const anchor = attribute(tag, 'text-anchor');
    return {
      text: unescaped(text),
      x: Number(attribute(tag, 'x')),
      y: Number(attribute(tag, 'y')),
      size: attribute(tag, 'class').split(' ').includes('plot-figure') ? 'figure' : 'name',
      ...(anchor === 'middle' || anchor === 'end' ? { anchor } : {}),
    };
  });
/** Words that cover each other or leave the drawing. Widths are estimated, a little too wide, so a hair is let pass. */
function crowded(markup: string): readonly string[] {
  const [wide, tall] = [numbersOf(markup, /<svg width="([\d.]+)"/g)[0] ?? 0, numbersOf(markup, /<svg width="[\d.]+" height="([\d.]+)"/g)[0] ?? 0];
  const words = wordsIn(markup);
  return words.flatMap((word, index) => {
    const box = boxOf(word);
    const over = words.slice(index + 1).filter((other) => meet(box, boxOf(other), -0.5));
    const isOut = box.left < -1 || box.right > wide + 1 || box.top < -1 || box.bottom > tall + 1.5;
    return [...over.map((other) => `${word.text} | ${other.text}`), ...(isOut ? [`${word.text} leaves`] : [])];
  });
}
const widthsPx = [306, 376, 608];

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

const plots = calculators.filter(({ picture }) => picture && ['shares', 'spans', 'bars', 'lines'].includes(picture.kind));
const pictureOf = ({ picture }: Calculator): PlainPicture => {
  if (!picture) throw new RangeError('no picture');
  return picture;
};
const drawReal = (each: Calculator, query: string, widthPx: number, system: UnitSystem = 'us'): string => {
  const { form } = fromLink(each, query);
  const others = otherTexts(each, form);
  const [mine, theirs] = [runSide(each, form.this, 'us').outcome, others && runSide(each, others, 'us').outcome];
  if (!mine) throw new RangeError(`${each.slug}: ${query} does not compute`);
  return render(
    <Picture
      calculator={each}
      picture={pictureOf(each)}
      outcome={mine}
      other={theirs}
      titles={sideTitles(each, form.this, others, 'us')}
      system={system}
      id="p"
      widthPx={widthPx}
    />,
  );
};
/** Queries that strain a drawing: the example, its other ends, and a pair. */
const strained: Readonly<Record<string, readonly string[]>> = {
  'carrying-capacity': ['that.go=2026-08-20'],
  'rest-and-moves': ['paddock=40&stay=2d', 'paddock=60&stay=1d', 'paddock=2', 'that.paddock=14&that.stay=4d'],
  'rain-record': ['window=1mo', 'window=12mo', 'window=24mo', 'until=2025-08-12&window=3mo'],
  'hay-to-grass': ['on-hand=none', 'that.feeder=cone'],
  'early-weaning': ['calf-goes=bought-feed', 'that.calf-goes=own-feed'],
  'feed-hazards': ['other-feed=tested', 'other-feed=tested&that.pregnant=no'],
  'feed-or-sell': ['that.calf-sold=no'],
  'standing-feed': ['that.strip=14d'],
};

describe.each(plots)('$slug', (each) => {
  it.each(widthsPx)('lets no words meet or leave its plot at %s px', (widthPx) => {
    for (const query of ['', ...(strained[each.slug] ?? [])])
      for (const system of ['us', 'si'] as const) {
        const markup = drawReal(each, query, widthPx, system);
        expect(markup).not.toMatch(/NaN|Infinity|undefined|height="-|width="-/);
        expect(crowded(markup), query).toEqual([]);
      }
  });
  it('tells in its name each figure that is drawn', () => {
    const markup = drawReal(each, '', 376);
    const said = unescaped(attribute(/<svg[^>]* role="img"[^>]*>/.exec(markup)?.[0] ?? '', 'aria-label'));
    const figures = wordsIn(markup).filter(({ size }) => size === 'figure');
    const amounts = figures.flatMap(({ text }) => text.match(/[\d,]*\d(?:\.\d+)?/g) ?? []);
    for (const told of amounts) expect(said, told).toContain(told);
  });
});
it('draws the first pictures that fourteen calculators have', () => {
  const kinds = Object.fromEntries(plots.map(({ slug, picture }) => [slug, picture?.kind]));
  expect(kinds).toMatchObject({
    'slake-test': 'shares',
    'forage-on-hand': 'spans',
    'herd-intake': 'shares',
    'carrying-capacity': 'lines',
    'rest-and-moves': 'spans',
    'standing-feed': 'lines',
    'sown-feed': 'shares',
    'rain-record': 'bars',
    'decision-dates': 'spans',
    'hay-to-grass': 'shares',
    'hay-value': 'shares',
    'feed-or-sell': 'lines',
    'early-weaning': 'shares',
    'feed-hazards': 'shares',
  });
});
it('draws no share of a feed where none is allowed to be named', () => {
  const hazards = plots.find(({ slug }) => slug === 'feed-hazards');
  if (!hazards) throw new RangeError('no feed-hazards');
  for (const query of [
    '',
    'other-feed=tested',
    'other-feed=tested&forage-nitrate=no3-n&nitrate-ppm=20000',
    'other-feed=tested&forage-nitrate=no3-n&nitrate-ppm=5',
  ]) {
    const { values } = runQuery(hazards, query);
    expect(drawReal(hazards, query, 376) !== '', query).toBe(values['mixing'] === 'share');
  }
});

describe('shares', () => {
  const widths = (markup: string): readonly number[] => numbersOf(markup, /<rect class="share [^"]*"[^>]* width="([\d.]+)"/g);
  it('draws parts in proportion, both bars to one scale', () => {
    const [eaten = 0, stored = 0, fed = 0, eatenThat = 0, storedThat = 0] = widths(draw(shares, hay(120, 60, 20), { other: hay(120, 30, 10) }));
    // To a tenth of a pixel.
    expect(Math.abs(eaten - 2 * stored)).toBeLessThan(0.2);
    expect(Math.abs(stored - 3 * fed)).toBeLessThan(0.3);
    expect(eatenThat).toBe(eaten);
    expect(Math.abs(stored - 2 * storedThat)).toBeLessThan(0.2);
    expect(Math.abs(eaten + stored + fed - 374)).toBeLessThan(0.3);
  });
  it('draws a second bar to the scale of the first', () => {
    const beside = { title: 'Half of it', whole: 'storedTon', parts: [{ of: 'storedTon', tone: 'bought' }] } as const;
    const [eaten = 0, stored = 0, , second = 0] = widths(draw({ ...shares, beside: [beside] }, hay(120, 60, 20)));
    expect(second).toBe(stored);
    expect(eaten).toBeGreaterThan(second);
  });
  it('keeps words apart and inside whatever the parts, and names every part that is there', () => {
    const size = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(size, size, size, fc.constantFrom(...widthsPx), (one, two, three, widthPx) => {
        const markup = draw(shares, hay(one, two, three), { widthPx });
        expect(markup).not.toMatch(/NaN|Infinity|height="-|width="-/);
        expect(crowded(markup)).toEqual([]);
        const said = wordsIn(markup)
          .map(({ text }) => text)
          .join(' ');
        if (one > 1) expect(said).toContain('they eat');
        if (three > 1) expect(said).toContain('feeding');
      }),
      { numRuns: 120 },
    );
  });
  it('tells every part', () => {
    expect(draw(shares, hay(110, 38, 16))).toContain(
      'Made up: Hay to buy: 164 tons, 110 tons they eat, 38 tons lost in storage outside on bare ground, 16 tons lost in feeding.',
    );
  });
  it('hatches what is lost and fills what is kept', () => {
    const markup = draw(shares, hay(110, 38, 16));
    expect(markup.match(/fill="url\(#p-lost\)"/g)).toHaveLength(2);
    expect(markup.match(/class="share kept"/g)).toHaveLength(1);
  });
  it('draws nothing where there is nothing', () => {
    expect(draw(shares, hay(0, 0, 0))).toBe('');
    expect(draw({ ...shares, shownWhen: { verdict: 'yes' } }, outcome({ ...hay(1, 1, 1).values, verdict: 'no' }))).toBe('');
  });
});

describe('spans', () => {
  const grazed = (markup: string): readonly number[] => numbersOf(markup, /<rect class="span graze" x="([\d.]+)"/g).slice(0, -1);
  it('puts bars where their days are, with rest between them', () => {
    const markup = draw(spans, moves(4, 10, 80));
    const [first = 0, ...rest] = grazed(markup).toSorted((one, other) => one - other);
    const step = (374 - first) / 8;
    for (const [index, x] of rest.entries()) expect(Math.abs(x - first - (index + 1) * step)).toBeLessThan(0.2);
    // Each paddock rests once between two stays; and the key.
    expect(markup.match(/class="span rest"/g)).toHaveLength(5);
    const [from = 0, width = 0] = [/<rect class="span rest" x="([\d.]+)"/, /<rect class="span rest"[^>]* width="([\d.]+)"/].map(
      (pattern) => numbersOf(markup, new RegExp(pattern, 'g'))[0],
    );
    expect(Math.abs(from - first - step)).toBeLessThan(0.2);
    expect(Math.abs(width - 3 * step)).toBeLessThan(0.3);
  });
  it('draws both sides to one scale', () => {
    const [one = 0, , , , other = 0] = numbersOf(
      draw(spans, moves(4, 10, 40), { other: moves(4, 20, 80) }),
      /<rect class="span graze"[^>]* width="([\d.]+)"/g,
    );
    expect(Math.abs(2 * one - other)).toBeLessThan(0.3);
  });
  it('marks the day that matters on its day, only when it comes', () => {
    const markup = draw(spans, moves(4, 10, 80));
    const [first = 0] = grazed(markup);
    const [at = 0] = numbersOf(markup, /class="day" d="M([\d.]+)/g);
    expect(Math.abs(at - first - (30 * (374 - first)) / 80)).toBeLessThan(0.2);
    expect(markup).toContain('paddock 1 is back');
    const dry = draw(spans, moves(4, 10, 80, 'no'));
    expect(dry).not.toContain('class="day"');
    expect(dry).not.toContain('is back');
  });
  it('draws hollow what is planned and should not come to pass, and says so in words', () => {
    const short = draw(spans, moves(4, 10, 80, 'yes', 'not-back'));
    // The second stays, and the key.
    expect(short.match(/class="span hollow"/g)).toHaveLength(5);
    expect(short).toContain('not grown back');
    const back = draw(spans, moves(4, 10, 80));
    expect(back).not.toContain('hollow');
    expect(back).not.toContain('not grown back');
  });
  it('draws lanes of days as long as they last, the mark at its own', () => {
    const markup = draw(lasting, lasts(40));
    const [low = 0, likely = 0, high = 0] = numbersOf(markup, /<rect class="span graze"[^>]* width="([\d.]+)"/g);
    expect(Math.abs(low / likely - 0.8)).toBeLessThan(0.01);
    expect(Math.abs(high / likely - 1.3)).toBeLessThan(0.01);
    expect(numbersOf(markup, /class="day" d="M([\d.]+)/g)).toEqual([likely]);
    expect(markup).toContain('32 days at the least');
  });
  it('draws nothing where there is nothing', () => {
    expect(draw(spans, outcome({ moves: [] }))).toBe('');
  });
});

describe('months', () => {
  it('draws bars, the usual month and what is short of it to one scale', () => {
    const markup = draw(
      bars,
      months([
        [4, 2],
        [1, 4],
      ]),
    );
    const [four = 0, one = 0] = numbersOf(markup, /<rect class="fell"[^>]* height="([\d.]+)"/g);
    const [short = 0] = numbersOf(markup, /<rect fill="url\(#p-short\)"[^>]* height="([\d.]+)"/g);
    expect(Math.abs(four - 4 * one)).toBeLessThan(0.4);
    expect(Math.abs(short - 3 * one)).toBeLessThan(0.4);
    expect(markup).toContain('4.0 against 2.0');
  });
  it('puts no figure on the line of the usual month', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0, max: 9, noNaN: true }), fc.double({ min: 0, max: 9, noNaN: true })), { minLength: 1, maxLength: 7 }),
        (list) => {
          const markup = draw(bars, months(list), { widthPx: 608 });
          expect(crowded(markup)).toEqual([]);
          const usual = numbersOf(markup, /class="usual" d="M[\d.]+ ([\d.]+)H/g);
          const figures = wordsIn(markup).filter(({ size }) => size === 'figure');
          if (figures.length !== list.length) return;
          for (const [index, word] of figures.entries()) {
            const [box, line] = [boxOf(word), usual[index] ?? 0];
            expect(line <= box.top + 4 || line >= box.bottom - 4, `${word.text} on ${list.join(' | ')}`).toBe(true);
          }
        },
      ),
      { numRuns: 120 },
    );
  });
});

describe('curves', () => {
  const dots = (markup: string): readonly (readonly [number, number])[] =>
    [...markup.matchAll(/<circle class="you[^"]*" cx="([\d.]+)" cy="([\d.]+)"/g)].map((found) => [Number(found[1]), Number(found[2])]);
  const pointsOf = (markup: string, is: string): readonly (readonly [number, number])[] =>
    (new RegExp(`class="curve is-${is}" d="M([^"]*)"`).exec(markup)?.[1] ?? '').split('L').map((pair) => {
      const [x = Number.NaN, y = Number.NaN] = pair.split(' ').map(Number);
      return [x, y];
    });
  it('puts the dot at the value of the reader’s own place', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.constantFrom(...widthsPx), (days, widthPx) => {
        // On a straight line from 800 down to 600 in twenty days.
        const markup = draw(
          { ...lines, ys: ['grassLbPerAc'] },
          season(
            [
              [800, 0],
              [700, 0],
              [600, 0],
            ],
            [days, 800 - 10 * days],
          ),
          { widthPx },
        );
        const [[cx, cy] = [0, 0]] = dots(markup);
        const [[x0, y0] = [0, 0], , [x2, y2] = [0, 0]] = pointsOf(markup, 'this');
        expect(Math.abs(cx - x0 - ((x2 - x0) * days) / 20)).toBeLessThan(0.2);
        expect(Math.abs(cy - y0 - ((y2 - y0) * days) / 20)).toBeLessThan(0.2);
        expect(markup).toContain(`you: ${800 - 10 * days} lb/ac`);
        expect(crowded(markup)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
  it('draws both managements in one plot, to one scale, this single and that double', () => {
    const markup = draw(
      { ...lines, ys: ['grassLbPerAc'] },
      season(
        [
          [800, 0],
          [400, 0],
        ],
        [0, 800],
      ),
      {
        other: season(
          [
            [800, 0],
            [600, 0],
          ],
          [10, 600],
        ),
      },
    );
    expect(markup.match(/<svg/g)).toHaveLength(1);
    const [[, foot] = [0, 0]] = [...markup.matchAll(/class="axis" d="M[\d.]+ ([\d.]+)/g)].map((found) => [0, Number(found[1])] as const);
    const [[, start] = [0, 0], [, low] = [0, 0]] = pointsOf(markup, 'this');
    const [[, startThat] = [0, 0], [, lowThat] = [0, 0]] = pointsOf(markup, 'that');
    expect(startThat).toBe(start);
    expect(Math.abs((foot - low) / (foot - start) - 0.5)).toBeLessThan(0.01);
    expect(Math.abs((foot - lowThat) / (foot - start) - 0.75)).toBeLessThan(0.01);
    expect(markup.match(/class="curve-core"/g)).toHaveLength(1);
    expect(dots(markup)).toHaveLength(2);
    for (const words of ['Grazed short', 'Rested', '800 lb/ac', '600 lb/ac']) expect(wordsIn(markup).map(({ text }) => text)).toContain(words);
  });
  it('holds with one point, a flat curve, losses and nothing', () => {
    for (const rows of [
      [[5, 5]],
      [
        [0, 0],
        [0, 0],
      ],
      [
        [-40, 3],
        [20, 1e6],
      ],
      [
        [0.001, 0.002],
        [0.003, 0.001],
      ],
    ] as const)
      expect(draw(lines, season(rows), { other: season(rows) })).not.toMatch(/NaN|Infinity|undefined/);
    expect(draw(lines, season([]))).toBe('');
  });
  it('names every curve, and keeps words apart, whatever the curves', () => {
    const level = fc.integer({ min: 0, max: 3000 });
    fc.assert(
      fc.property(fc.array(fc.tuple(level, level), { minLength: 2, maxLength: 9 }), fc.constantFrom(...widthsPx), (rows, widthPx) => {
        const markup = draw(lines, season(rows, [0, rows[0]?.[0] ?? 0]), { widthPx });
        expect(crowded(markup)).toEqual([]);
        const said = wordsIn(markup)
          .map(({ text }) => text)
          .join(' ');
        for (const words of ['Grass standing', 'Eaten so far', 'you: ']) expect(said).toContain(words);
      }),
      {
        numRuns: 120,
        examples: [
          [
            [
              [2098, 0],
              [1979, 0],
              [2457, 2867],
              [2999, 2993],
              [0, 0],
              [0, 0],
            ],
            376,
          ],
        ],
      },
    );
  });
});
