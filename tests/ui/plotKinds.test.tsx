import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf } from '../../calculators/ui/pictures/words.ts';
import {
  attribute,
  bars,
  crowded,
  draw,
  firstDay,
  hay,
  lasting,
  lasts,
  lines,
  months,
  moves,
  numbersOf,
  outcome,
  season,
  shares,
  spans,
  widthsPx,
  wordsIn,
} from './drawnPlots.tsx';

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
  it('marks rows by a shape where the curve stands at them, on both sides, and says which', () => {
    const picture = { ...lines, rowMarks: [{ of: 'barn', is: 'short', as: 'wedge', says: 'not enough' }] } as const;
    const grass = [800, 700, 600, 650];
    const withBarn = (barns: readonly string[]) =>
      outcome({
        season: grass.map((grassLbPerAc, index) => ({ day: firstDay + index * 10, grassLbPerAc, eatenLbPerAc: 0, barn: barns[index] ?? '' })),
      });
    const marks = (markup: string, is: string): readonly (readonly [number, number])[] =>
      [...markup.matchAll(new RegExp(`class="row-mark is-wedge is-${is}" transform="translate\\(([\\d.]+) ([\\d.]+)\\)"`, 'g'))].map((found) => [
        Number(found[1]),
        Number(found[2]),
      ]);
    const one = withBarn(['enough', 'short', 'enough', 'short']);
    const markup = draw(picture, one, { other: withBarn(['enough', 'enough', 'short', 'enough']) });
    const [, second, third, last] = pointsOf(markup, 'this');
    // The last of each is the key below the picture.
    expect(marks(markup, 'this')).toEqual([second, last, [0, 0]]);
    expect(marks(markup, 'that')).toEqual([third, [0, 0]]);
    expect(markup).toMatch(/aria-label="[^"]*; this: not enough: Mar 12, Apr 1; that: not enough: Mar 22\./);
    expect(markup).toMatch(/<figcaption[^>]*>.*not enough<\/span><\/figcaption>/);
    expect(draw(picture, withBarn([]))).not.toContain('figcaption');
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
  it('tells of each curve, on either side, the day on which it first came to its end, not the last day drawn', () => {
    const grass = (lbs: readonly number[]) => season(lbs.map((lb) => [lb, 0]));
    const markup = draw({ ...lines, ys: ['grassLbPerAc'] }, grass([800, 0, 0, 0, 0]), { other: grass([800, 400, 600, 0, 0]) });
    expect(attribute(markup, 'aria-label')).toContain('Grazed short from 800 lb/ac at Mon, Mar 2, 2026 to 0 lb/ac at Thu, Mar 12, 2026; ');
    expect(attribute(markup, 'aria-label')).toContain('Rested from 800 lb/ac at Mon, Mar 2, 2026 to 0 lb/ac at Wed, Apr 1, 2026.');
    // One that is level all along has its end at its end.
    expect(attribute(draw(lines, grass([500, 500, 500])), 'aria-label')).toContain('to 500 lb/ac at Sun, Mar 22, 2026');
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
