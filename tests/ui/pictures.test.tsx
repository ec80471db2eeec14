import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import type { GroundProfile, PlainPicture, SoilFace } from '../../calculators/kit/pictures.ts';
import type { NumberQuantity } from '../../calculators/kit/quantities.ts';
import { dayTicks, depthMarks, niceTicks, spreadLabels, wrapLabel } from '../../calculators/ui/pictures/axis.ts';
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
  shorts: {},
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

const soilFace: SoilFace = {
  kind: 'soilFace',
  rain: 'rainIn',
  runsOff: 'runoffIn',
  heldFirst: 'heldIn',
  soaksIn: 'soakedIn',
  coverPercent: 'coverPercent',
  rootsIn: 'rootsIn',
};
const storm = (rainIn: number, runoffIn: number, heldIn: number, coverPercent = 60, rootsIn = 12): Outcome =>
  outcome({ rainIn, runoffIn, heldIn, soakedIn: rainIn - runoffIn - heldIn, coverPercent, rootsIn });
const numbersOf = (markup: string, pattern: RegExp): readonly number[] => [...markup.matchAll(pattern)].map((found) => Number(found[1]));
/** The arrows' shafts, left face first. */
const runoffWidths = (markup: string): readonly number[] => numbersOf(markup, /class="runs-off" d="M[\d.-]+ [\d.-]+v([\d.]+)H/g);
const soakWidths = (markup: string): readonly number[] => numbersOf(markup, /class="soaks" d="M[\d.-]+ 0h([\d.]+)V/g);

const samples: readonly (readonly [string, string])[] = [
  ['one face', draw(soilFace, storm(3, 0.7, 1))],
  ['two faces', draw(soilFace, storm(3, 1.6, 0.5, 35, 7), storm(3, 0.7, 1, 92, 26))],
  ['two faces, metric', draw(soilFace, storm(3, 1.6, 0.5, 35, 7), storm(3, 0.7, 1, 92, 26), 'si')],
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

describe('the cut through the ground', () => {
  it('draws arrows as wide as the water is deep, within a face and between faces', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 0.1, max: 0.8, noNaN: true }),
        fc.double({ min: 0.1, max: 0.8, noNaN: true }),
        (rainIn, one, other) => {
          const [first, second] = [storm(rainIn, rainIn * one, rainIn * 0.1), storm(rainIn, rainIn * other, rainIn * 0.1)];
          const markup = draw(soilFace, first, second);
          const [left = 0, right = 0] = runoffWidths(markup);
          const [leftSoak = 0, rightSoak = 0] = soakWidths(markup);
          const scale = (left + right + leftSoak + rightSoak) / (rainIn * 1.8);
          expect(Math.abs(left - rainIn * one * scale)).toBeLessThan(0.02);
          expect(Math.abs(right - rainIn * other * scale)).toBeLessThan(0.02);
          expect(Math.abs(leftSoak - rainIn * (0.9 - one) * scale)).toBeLessThan(0.02);
          expect(Math.abs(rightSoak - rainIn * (0.9 - other) * scale)).toBeLessThan(0.02);
        },
      ),
      { numRuns: 60 },
    );
  });
  it('draws no arrow where nothing flows', () => {
    expect(runoffWidths(draw(soilFace, storm(0.4, 0, 0.4)))).toEqual([]);
    expect(soakWidths(draw(soilFace, storm(0.4, 0, 0.4)))).toEqual([]);
    expect(soakWidths(draw(soilFace, storm(0.4, 0.4, 0)))).toEqual([]);
  });
  it('draws twice the strokes for twice the rain', () => {
    const strokes = (rainIn: number): number => /-rain" d="([^"]*)"/.exec(draw(soilFace, storm(rainIn, 0, 0)))?.[1]?.split('M').length ?? 0;
    expect(strokes(6) - 1).toBe(2 * (strokes(3) - 1));
  });
  it.each([0, 0.1, 1, 3, 12, 30, 40])('holds at %s in of rain', (rainIn) => {
    for (const runs of [0, 0.02, 0.5, 1])
      for (const cover of [0, 35, 100])
        for (const rootsIn of [0, 4, 90]) {
          const face = storm(rainIn, rainIn * runs, rainIn * (1 - runs) * 0.3, cover, rootsIn);
          const markup = draw(soilFace, face, cover === 35 ? face : null, rootsIn === 4 ? 'si' : 'us');
          expect(markup).not.toMatch(/NaN|Infinity|undefined|e-\d/);
          expect(markup).not.toMatch(/(?:width|height)="-/);
          for (const width of [...runoffWidths(markup), ...soakWidths(markup)]) expect(width).toBeLessThanOrEqual(56.01);
          // The sky is 104 units high: the widest arrow with its head stays in it.
          for (const top of numbersOf(markup, /class="runs-off" d="M[\d.-]+ ([\d.-]+)v/g)) expect(top - 9).toBeGreaterThan(0);
        }
  });
  it('claims no root depth that nobody gave', () => {
    const { rootsIn: _, ...bare } = soilFace;
    expect(draw(bare, storm(3, 1, 1))).not.toMatch(/root/i);
    expect(draw(soilFace, storm(3, 1, 1))).toMatch(/class="rooted"/);
  });
  it('says its numbers in words, in the units of the reader', () => {
    const said = (system: UnitSystem): string =>
      /<desc[^>]*>([^<]*)</.exec(draw(soilFace, storm(3, 1.6, 0.5, 35, 7), storm(3, 0.7, 1, 92, 26), system))?.[1] ?? '';
    expect(said('us')).toBe(
      'Grazed short: Rain 3.0 in, Ran off 1.6 in, Held first 0.5 in, Soaked in 0.9 in, Roots to 7 in. Rested: Rain 3.0 in, Ran off 0.7 in, Held first 1.0 in, Soaked in 1.3 in, Roots to 26 in.',
    );
    // An inch is 25.4 mm exactly.
    expect(said('si')).toMatch(/Rain 76 mm, Ran off 41 mm/);
  });
  it('is the same drawing twice, and light', () => {
    for (const rainIn of [0.5, 3, 30]) {
      const markup = draw(soilFace, storm(rainIn, rainIn / 4, rainIn / 10, 90, 26));
      expect(draw(soilFace, storm(rainIn, rainIn / 4, rainIn / 10, 90, 26))).toBe(markup);
      expect(markup.length).toBeLessThan(12_000);
      expect(gzipSync(markup, { level: 9 }).length).toBeLessThan(3_700);
    }
  });
});

const profile: GroundProfile = {
  kind: 'groundProfile',
  rows: 'layers',
  top: 'topIn',
  thickness: 'thicknessIn',
  holdsInPerFt: 'footIn',
  filledPercent: 'filledPercent',
  mostRoots: 'rootsIn',
  deepestRoot: 'rainIn',
  holds: 'heldIn',
  has: 'soakedIn',
  missing: 'runoffIn',
};
const ground = (...filled: readonly number[]): Outcome =>
  outcome({
    layers: filled.map((filledPercent, index) => ({ topIn: index * 12, thicknessIn: 12, footIn: 2, filledPercent })),
    rootsIn: 14,
    rainIn: 30,
    heldIn: 3,
    soakedIn: 2,
    runoffIn: 1,
  });

describe('ground profile', () => {
  const dots = (html: string, part: 'full' | 'empty'): number[] =>
    [...html.matchAll(new RegExp(`pore is-${part}"><path id="[^"]*" d="([^"]*)"`, 'g'))].map(([, d = '']) => (d.match(/M/g) ?? []).length);
  it('fills as many pores as the layer is full, and none of a dry one', () => {
    const html = draw(profile, ground(25, 100));
    const [first = 0] = dots(html, 'full');
    expect(first / (first + (dots(html, 'empty')[0] ?? 0))).toBe(0.25);
    expect(dots(draw(profile, ground(0)), 'full')).toEqual([]);
  });
  it('draws each side with its own words, to one scale', () => {
    const html = draw(profile, ground(50, 50), ground(50, 50, 50));
    expect(html).toContain('Grazed short: Held first 3.0 in');
    expect(html).toContain('Rested: Held first 3.0 in');
    const depths = [...html.matchAll(/<path class="rooted" d="M0 ([\d.]+)/g)].map(([, depth]) => depth);
    expect(depths).toHaveLength(2);
    expect(new Set(depths).size).toBe(1);
  });
  it('never draws what is not finite, whatever it is handed', () => {
    expect(draw(profile, ground())).not.toMatch(/NaN|Infinity/);
    expect(draw(profile, ground(1e9, Number.NaN, -5))).not.toMatch(/NaN|Infinity/);
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
  it('names days so far apart that names of 56 px stand free, the last one inside', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 800 }), fc.integer({ min: 190, max: 1600 }), (days, widthPx) => {
        const at = dayTicks(0, days, widthPx).map((day) => (day * widthPx) / days);
        for (const [index, x] of at.entries()) if (index > 0) expect(x - (at[index - 1] ?? 0)).toBeGreaterThan(56);
        expect((at.at(-1) ?? 0) + 56).toBeLessThanOrEqual(widthPx);
      }),
    );
  });
  it('marks the tape so that its numbers stand free', () => {
    for (const system of ['us', 'si'] as const)
      for (let deepIn = 36; deepIn <= 200; deepIn += 1) {
        const marks = depthMarks(deepIn, system);
        const unitsApart = (186 / deepIn) * (system === 'us' ? (marks[1] ?? 0) : (marks[1] ?? 0) / 25.4);
        expect(unitsApart).toBeGreaterThan(16);
        expect(marks.length).toBeGreaterThan(2);
      }
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
