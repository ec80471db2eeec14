import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import { picturesOf } from '../../calculators/kit/pictures.ts';
import { calculatorOf } from '../support/catalog.ts';
import { bandWidth, countOf, curtains, draw, numbersIn, pathsOf, sumOf, textsOf } from '../support/drawnFace.tsx';
import { faceWidths } from '../support/faceCases.ts';
import { near } from '../support/near.ts';

/** Pixels to an inch, by the marks of the tape. */
const perInch = (markup: string): number => {
  const ticks = [...(pathsOf(markup, 'tape-on-soil')[0] ?? pathsOf(markup, 'tape')[0] ?? '').matchAll(/M[\d.]+ ([\d.]+)h/g)].map((found) =>
    Number(found[1]),
  );
  const [first = 0, second = 0] = [...new Set(ticks)];
  const marks = textsOf(markup)
    .filter(({ size }) => size === 15)
    .map(({ words }) => Number.parseInt(words, 10))
    .filter((each) => Number.isFinite(each))
    .toSorted((one, other) => one - other);
  return (second - first) / ((marks[1] ?? Number.NaN) - (marks[0] ?? Number.NaN));
};

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
  it('adds up jars that hold no more than was poured, and draws no sum of those that do', () => {
    const sumAt = (runoff: number, through: number) =>
      /<p class="sum">(.*?)<\/p>/
        .exec(draw({ slug: 'rain-demonstration', query: `runoff=${runoff}ml&through=${through}ml` }))?.[1]
        ?.replace(/<[^>]+>/g, '');
    // 1 in on 24 by 12 in is 288 cubic inches of 16.387 mL: 4,719 mL, told in tens.
    expect(sumAt(4000, 700)).toBe('4,000 ran off + 20 stayed in it + 700 came out below = 4,720 mL');
    expect(sumAt(4000, 760)).toBeUndefined();
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
  it('takes the slice of thirty years off at true depth', () => {
    const markup = draw({ slug: 'soil-loss', query: '' });
    const { values } = runQuery(calculatorOf('soil-loss'), '');
    const slices = [...markup.matchAll(/class="gone" [^>]*d="M0 ([\d.]+)H[\d.]+V([\d.]+)H0z"/g)].map(([, from, to]) => Number(to) - Number(from));
    const expected = [values['thirtyYearsIn'], values['ploughedThirtyYearsIn']].map((inches) => Number(inches) * perInch(markup));
    for (const [index, slice] of slices.entries()) expect(Math.abs(slice - (expected[index] ?? 0))).toBeLessThan(0.6);
    expect(slices).toHaveLength(2);
    // Past a foot no thickness is told, and no more is drawn gone.
    const past = draw({ slug: 'soil-loss', query: 'ground-cover=0pct&rain-factor=700&rise=72in' });
    expect(textsOf(past).map(({ words }) => words)).toContain('past a foot');
    const [, from, to] = /class="gone" [^>]*d="M0 ([\d.]+)H[\d.]+V([\d.]+)H0z"/.exec(past) ?? [];
    near((Number(to) - Number(from)) / perInch(past), 12, 0.05);
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
    const points = (feel: string): readonly string[] => {
      const markup = draw({
        slug: 'stored-water',
        query: `layers.thickness=12in&layers.texture=loam&layers.held-from=survey&layers.survey=0.2&layers.stones=0pct&layers.feel=measured&layers.filled=${feel}&roots-most=10in&roots-deepest=10in`,
      });
      return /id="p-0-water" d(?:="([^"]*)")?/.exec(markup)?.[1]?.split('M').slice(1) ?? [];
    };
    expect(points('0pct')).toEqual([]);
    const all = points('100pct');
    expect(Math.abs(points('25pct').length * 4 - all.length)).toBeLessThanOrEqual(2);
    // Full is every spot of every row.
    const rows = [...Map.groupBy(all, (point) => point.split(' ')[1]).values()].map((row) => row.length);
    expect(rows.length).toBeGreaterThan(5);
    expect(new Set(rows).size).toBe(1);
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

describe('limits of a face', () => {
  const curtain = (query: string, widthPx = 376, other?: string): number =>
    curtains(draw({ slug: 'storm-runoff', query, other, widthPx }))[0] ?? Number.NaN;
  it('gives an inch of water 42 px, all of it a third of the width, and what runs off 82 px', () => {
    near(curtain('rain=1in'), 42, 0.05);
    near(curtain('rain=2.9in', 608), 2.9 * 42, 0.05);
    near(curtain('rain=3.1in'), 376 / 3, 0.05);
    near(curtain('rain=4in', 306), 102, 0.05);
    // One of two narrow faces is 172 px wide.
    near(curtain('rain=3in', 376, 'rain=3in&ground-cover=85pct&grazing=light'), 172 * 0.42, 0.05);
    near(Math.max(...bandWidth(draw({ slug: 'storm-runoff', query: 'rain=30in&wetness=wet', widthPx: 608 }), 'ran')), 82, 0.5);
  });
  it('names the bands of a pair where each face has 250 px, and figures alone below that', () => {
    const words = (widthPx: number) =>
      textsOf(draw({ slug: 'storm-runoff', query: '', other: 'ground-cover=85pct&grazing=light', widthPx })).map((label) => label.words);
    expect(words(534)).toContain('ran off');
    expect(words(530)).not.toContain('ran off');
  });
  const soilPx = 186;
  it.each([
    // Roots are drawn to 2.5 in and 6 in more under full cover, and 1.1 times that is less than 9 in.
    ['rain=0.3in', 9],
    // 1.28 in wets 7.7 in, and 1.25 times that is 9.6.
    ['', 12],
    // S = 1000/70 - 10 = 4.29, Ia = 0.86, Q = 1.33 of 4 in: 1.81 in wets 10.9, and 1.25 times that is 13.6.
    ['cover=own&curve-number=70&rain=4in', 15],
    // 60 in at the most, and a quarter more.
    ['cover=own&curve-number=30&rain=30in', 75],
  ])('cuts the ground at whole threes of inches: %s', (query, cutIn) => {
    near(perInch(draw({ slug: 'storm-runoff', query })), soilPx / cutIn, 0.05);
  });
  it('wets six times what soaked in, and by the room for water where that is known', () => {
    const front = (slug: string, query: string): number => {
      const markup = draw({ slug, query });
      const points = [...(/id="p-0-water" d="([^"]*)"/.exec(markup)?.[1]?.matchAll(/S[\d.]+ ([\d.]+) /g) ?? [])].map((found) => Number(found[1]));
      return sumOf(points) / points.length / perInch(markup);
    };
    const stormValues = runQuery(calculatorOf('storm-runoff'), '').values;
    expect(Math.abs(front('storm-runoff', '') / (6 * Number(stormValues['soakedIn'])) - 1)).toBeLessThan(0.04);
    const { soakedIn, roomShare } = runQuery(calculatorOf('ponding'), '').values;
    expect(Math.abs(front('ponding', '') / (Number(soakedIn) / Number(roomShare)) - 1)).toBeLessThan(0.04);
  });
  it('lets no rain that lies on the ground stand higher than 72 px, and less to the scale of the tape', () => {
    const sheet = (query: string) => {
      const markup = draw({ slug: 'rain-on-ground', query });
      const [, top, foot] = /class="ponded" d="M0 ([\d.]+)H[\d.]+V([\d.]+)/.exec(markup) ?? [];
      return { px: Number(foot) - 1 - Number(top), perIn: perInch(markup) };
    };
    near(sheet('rain=30in').px, 72, 0.5);
    near(sheet('').px, sheet('').perIn, 0.5);
  });
  it('draws plates four inches thick, and a ring over no more than 0.52 of the width', () => {
    const hard = draw({ slug: 'packed-soil', query: 'probe=pushed' });
    const [, top, foot] = /class="hard-0" d="M0 ([\d.]+)V([\d.]+)/.exec(hard) ?? [];
    expect(Math.abs((Number(foot) - Number(top)) / perInch(hard) - 4)).toBeLessThan(0.3);
    const ring = /class="ring" d="M([\d.]+) [\d.]+V[\d.]+M([\d.]+) /.exec(
      draw({ slug: 'ring-test', query: 'bore=48in&inserted=12in&water=30000ml' }),
    );
    near(Number(ring?.[2]) - Number(ring?.[1]), 376 * 0.52, 0.5);
  });
  it('does not offer a pond to those without, and takes the next picture in its place', () => {
    const first = (slug: string, query: string) => picturesOf(calculatorOf(slug), runQuery(calculatorOf(slug), query).values)[0]?.kind;
    expect(first('stock-water', '')).toBe('face');
    expect(first('stock-water', 'supply=hauled')).toBe('lines');
    expect(first('rain-on-ground', '')).toBe('face');
    expect(first('rain-on-ground', 'surface=roof')).toBe('shares');
  });
});
