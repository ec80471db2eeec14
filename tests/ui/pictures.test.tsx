import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import type { Lines, PlainPicture, Shares, Spans } from '../../calculators/kit/pictures.ts';
import type { NumberQuantity } from '../../calculators/kit/quantities.ts';
import { dayTicks, niceTicks, spreadLabels, wrapLabel } from '../../calculators/ui/pictures/axis.ts';
import { depthMarks } from '../../calculators/ui/pictures/face/tape.ts';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import type { UnitName, UnitSystem } from '../../calculators/units/units.ts';

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
    rainIn: amount('Rain', 'in', 1),
    runoffIn: amount('Ran off', 'in', 1),
    heldIn: amount('Held first', 'in', 1),
    soakedIn: amount('Soaked in', 'in', 1),
    coverPercent: amount('Cover', 'pct', 0),
    rootsIn: amount('Roots to', 'in', 0),
    boughtTon: amount('Hay to buy', 'ton', 0),
    eatenTon: amount('They eat', 'ton', 0),
    storedTon: amount('Lost in storage outside on bare ground', 'ton', 0),
    fedTon: amount('Lost in feeding', 'ton', 0),
    moves: {
      kind: 'rows',
      label: 'Moves',
      columns: { paddock: amount('Paddock', 'count', 0), inDay: { kind: 'day', label: 'In' }, outDay: { kind: 'day', label: 'Out' } },
    },
    layers: {
      kind: 'rows',
      label: 'Layers',
      columns: {
        topIn: amount('Top', 'in', 0),
        thicknessIn: amount('Thickness', 'in', 0),
        footIn: amount('Held in a foot', 'in', 1),
        filledPercent: amount('Full', 'pct', 0),
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
  },
  results: [],
  steps: [],
  cautions: [],
  refusals: [],
  limits: [],
  weighsOnPeople: false,
  picture: undefined,
  morePictures: [],
  wholes: [],
  hasCalendar: false,
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
  cautions: [],
  uses: [],
  note: '',
  calendar: [],
});
const draw = (picture: PlainPicture, one: Outcome, other: Outcome | null = null, system: UnitSystem = 'us'): string =>
  render(
    <Picture
      calculator={calculator}
      picture={picture}
      outcome={one}
      other={other}
      titles={other ? ['Grazed short', 'Rested'] : ['', '']}
      system={system}
      id="p"
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
const spans: Spans = { kind: 'spans', rows: 'moves', lane: 'paddock', from: 'inDay', to: 'outDay', spanSays: 'grazed', gapSays: 'rests' };
/** Day 20514 is March 2, 2026. */
const moves = (paddocks: number, stayDays: number, days: number): Outcome =>
  outcome({
    moves: Array.from({ length: Math.max(1, Math.floor(days / stayDays)) }, (_, index) => ({
      paddock: 1 + (index % paddocks),
      inDay: 20514 + index * stayDays,
      outDay: 20514 + (index + 1) * stayDays,
    })),
  });
const lines: Lines = { kind: 'lines', rows: 'season', x: 'day', ys: ['grassLbPerAc', 'eatenLbPerAc'] };
const season = (rows: readonly (readonly [number, number])[]): Outcome =>
  outcome({ season: rows.map(([grassLbPerAc, eatenLbPerAc], index) => ({ day: 20514 + index * 10, grassLbPerAc, eatenLbPerAc })) });

const numbersOf = (markup: string, pattern: RegExp): readonly number[] => [...markup.matchAll(pattern)].map((found) => Number(found[1]));
const samples: readonly (readonly [string, string])[] = [
  ['one bar', draw(shares, hay(110, 38, 16))],
  ['two bars', draw(shares, hay(110, 38, 16), hay(110, 8, 6))],
  ['lanes', draw(spans, moves(8, 3, 60))],
  ['forty lanes, twice', draw(spans, moves(40, 2, 400), moves(12, 4, 200))],
  [
    'curves',
    draw(
      lines,
      season([
        [800, 0],
        [1300, 200],
        [600, 900],
      ]),
    ),
  ],
  [
    'one curve each',
    draw(
      { ...lines, ys: ['grassLbPerAc'] },
      season([
        [800, 0],
        [600, 0],
      ]),
      season([
        [800, 0],
        [900, 0],
      ]),
    ),
  ],
];

describe.each(samples)('every picture: %s', (_, markup) => {
  it('has a role, a name and a description that stands on the page once', () => {
    const tags = [...markup.matchAll(/<(?:svg|div)[^>]* role="img"[^>]*>/g)].map((found) => found[0]);
    expect(tags.length).toBeGreaterThan(0);
    for (const tag of tags) {
      expect(tag).toMatch(/aria-label="[^"]+"/);
      const described = /aria-describedby="([^"]+)"/.exec(tag)?.[1] ?? '';
      expect(markup.split(` id="${described}"`)).toHaveLength(2);
    }
  });
  it('names nothing twice and points at nothing that is missing', () => {
    const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map((found) => found[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const found of markup.matchAll(/(?:href="#|url\(#)([^")]+)/g)) expect(ids).toContain(found[1]);
  });
  it('has no inline style and no colour of its own', () => {
    expect(markup).not.toMatch(/\bstyle=|#[0-9a-f]{6}\b|rgb\(/i);
  });
});

describe('shares', () => {
  const heights = (markup: string): readonly number[] => numbersOf(markup, /<rect class="(?:kept|lost|water|other)"[^>]* height="([\d.]+)"/g);
  it('draws parts in proportion, both bars to one scale', () => {
    const [eaten = 0, stored = 0, fed = 0, eatenThat = 0, storedThat = 0] = heights(draw(shares, hay(120, 60, 20), hay(120, 30, 10)));
    // Heights are rounded to a tenth of a unit.
    expect(Math.abs(eaten - 2 * stored)).toBeLessThan(0.2);
    expect(Math.abs(stored - 3 * fed)).toBeLessThan(0.3);
    expect(eatenThat).toBe(eaten);
    expect(Math.abs(stored - 2 * storedThat)).toBeLessThan(0.2);
    expect(eaten).toBeGreaterThan(100);
  });
  it('keeps labels apart whatever the parts', () => {
    const size = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (one, two, three) => {
        const markup = draw(shares, hay(one, two, three));
        expect(markup).not.toMatch(/NaN|Infinity|height="-/);
        const baselines = numbersOf(markup, /<tspan x="26" y="([\d.-]+)"/g).toSorted((first, second) => first - second);
        for (const [index, baseline] of baselines.entries()) if (index > 0) expect(baseline - (baselines[index - 1] ?? 0)).toBeGreaterThan(17.9);
      }),
      { numRuns: 60 },
    );
  });
  it('tells every part', () => {
    expect(draw(shares, hay(110, 38, 16))).toContain(
      'Hay to buy 164 tons; of it They eat 110 tons, Lost in storage outside on bare ground 38 tons, Lost in feeding 16 tons.',
    );
  });
});

describe('spans', () => {
  it('puts bars where their days are', () => {
    const markup = draw(spans, moves(4, 10, 40));
    const at = numbersOf(markup, /<rect class="span" x="([\d.]+)%"/g);
    expect(at).toEqual([0, 25, 50, 75]);
    expect(markup).toContain('Mar 2, 2026');
    expect(markup).toContain('Paddock 1: grazed');
  });
  it('draws hollow what is planned and should not come to pass, and says so in words and in the key', () => {
    const hollow = { of: 'goesIn', is: 'not-back', says: 'not grown back' };
    const planned = (second: string): Outcome =>
      outcome({
        moves: [
          { paddock: 1, inDay: 20514, outDay: 20524, goesIn: 'ready' },
          { paddock: 1, inDay: 20534, outDay: 20544, goesIn: second },
        ],
      });
    const short = draw({ ...spans, hollow }, planned('not-back'));
    // The second stay, and its key.
    expect(short.match(/class="span hollow"/g)).toHaveLength(2);
    expect(short).toContain('Paddock 1: grazed');
    expect(short).toContain(', rests, not grown back');
    const back = draw({ ...spans, hollow }, planned('if-back'));
    expect(back).not.toContain('hollow');
    expect(back).not.toContain('not grown back');
  });
  it('scrolls in its own box when the plan is long', () => {
    const widths = numbersOf(draw(spans, moves(40, 2, 400)), /class="lanes" width="(\d+)"/g);
    expect(widths[0]).toBeGreaterThanOrEqual(400);
    expect(widths[0]).toBeLessThanOrEqual(1600);
  });
  it('draws nothing where there is nothing', () => {
    expect(draw(spans, outcome({ moves: [] }))).toBe('');
  });
});

describe('curves', () => {
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
    ] as const) {
      expect(draw(lines, season(rows), season(rows))).not.toMatch(/NaN|Infinity|undefined/);
    }
    expect(draw(lines, season([]))).toBe('');
  });
  it('says where each begins and ends', () => {
    expect(
      draw(
        lines,
        season([
          [800, 0],
          [1300, 200],
          [600, 900],
        ]),
      ),
    ).toMatch(/Grass standing: from 800 lb\/ac at Mon, Mar 2, 2026 to 600 lb\/ac at Sun, Mar 22, 2026/);
  });
});

describe('axes', () => {
  it('spreads labels without overlap, inside the room when they fit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ at: fc.double({ min: -50, max: 500, noNaN: true }), height: fc.integer({ min: 1, max: 60 }) }), { maxLength: 9 }),
        (labels) => {
          const room = 320;
          const tops = spreadLabels(labels, room);
          const boxes = labels
            .map((label, index) => ({ top: tops[index] ?? 0, bottom: (tops[index] ?? 0) + label.height }))
            .toSorted((one, other) => one.top - other.top);
          for (const [index, box] of boxes.entries()) if (index > 0) expect(box.top).toBeGreaterThanOrEqual((boxes[index - 1]?.bottom ?? 0) - 1e-6);
          if (labels.reduce((sum, label) => sum + label.height, 0) <= room)
            for (const box of boxes) {
              expect(box.top).toBeGreaterThanOrEqual(-1e-6);
              expect(box.bottom).toBeLessThanOrEqual(room + 1e-6);
            }
        },
      ),
    );
  });
  it('leaves a label alone that has room', () => {
    expect(
      spreadLabels(
        [
          { at: 100, height: 20 },
          { at: 40, height: 20 },
        ],
        320,
      ),
    ).toEqual([90, 30]);
  });
  it('names days so far apart that names of 46 px stand free, the last one inside', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 800 }), fc.integer({ min: 190, max: 1600 }), (days, widthPx) => {
        const at = dayTicks(0, days, widthPx).map((day) => (day * widthPx) / days);
        for (const [index, x] of at.entries()) if (index > 0) expect(x - (at[index - 1] ?? 0)).toBeGreaterThan(46);
        expect((at.at(-1) ?? 0) + 46).toBeLessThanOrEqual(widthPx);
      }),
    );
  });
  it('marks the tape so that its numbers stand free, and none close to the foot of the cut', () => {
    for (const system of ['us', 'si'] as const)
      for (let deepIn = 9; deepIn <= 200; deepIn += 1) {
        const least = deepIn / 7;
        const marks = depthMarks(deepIn, least, system);
        const perIn = system === 'us' ? 1 : 2.54;
        expect(marks.length).toBeGreaterThan(1);
        for (const [index, mark] of marks.entries()) expect((mark - (marks[index - 1] ?? 0)) / perIn).toBeGreaterThanOrEqual(least - 1e-9);
        expect((marks.at(-1) ?? 0) / perIn).toBeLessThan(deepIn - least * 0.39);
      }
    // Threes, sixes and feet as a tape has them; centimeters by fives and tens.
    expect(depthMarks(12, 2, 'us')).toEqual([3, 6, 9]);
    expect(depthMarks(30, 5, 'us')).toEqual([6, 12, 18, 24]);
    expect(depthMarks(12, 1.9, 'si')).toEqual([5, 10, 15, 20, 25]);
  });
  it('cuts an axis at round numbers', () => {
    expect(niceTicks(0, 1600, 4)).toEqual([0, 500, 1000, 1500]);
    expect(niceTicks(0, 0.7, 4)).toEqual([0, 0.2, 0.4, 0.6]);
    expect(niceTicks(-3, 3, 3)).toEqual([-2, 0, 2]);
    expect(niceTicks(5, 5, 4)).toEqual([5]);
  });
  it('breaks labels at spaces only', () => {
    expect(wrapLabel('Lost in storage, hay on hand', 14)).toEqual(['Lost in', 'storage, hay', 'on hand']);
    expect(wrapLabel('antidisestablishment', 5)).toEqual(['antidisestablishment']);
  });
});
