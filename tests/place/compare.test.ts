import { describe, expect, it } from 'vitest';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import type { Visit } from '../../src/place/model/visit.ts';
import { compareResults, differences } from '../../src/place/visit/compare.ts';
import { readingsOf } from '../../src/place/visit/readings.ts';
import { calculatorOf, calculators } from '../support/catalog.ts';
import { aResult, aVisit } from './aVisit.ts';

const then = aVisit({ id: 'v0', day: '2025-06-18' });
const now = aVisit();
const both = (slug: string, links: readonly [string, string], visits: readonly [Visit, Visit] = [then, now]) =>
  compareResults(
    calculatorOf(slug),
    [aResult({ id: 'a', slug, link: links[0] }), visits[0]],
    [aResult({ id: 'b', slug, link: links[1] }), visits[1]],
    'us',
  );
const rings = (...seconds: readonly number[]): string =>
  `rings.first=${seconds.map(() => '4min').join()}&rings.second=${seconds.map((each) => `${each}min`).join()}&rings.end=${seconds.map(() => 'gone').join()}&rings.pours=${seconds.map(() => 'twice').join()}&v=2`;
/** Crumbs that fall apart, and crumbs that hold. */
const crumbs = (more: string): string => `samples.seen=by-30,by-30,by-300,by-30&${more}`;
const firm = (more: string): string => `samples.seen=most,most,half,most&${more}`;
const cores = (more: string, ...grams: readonly number[]): string =>
  `cores.core=${grams.map((each) => `${each}g`).join()}&cores.hole=${grams.map(() => '350ml').join()}&${more}`;
const steps = (covered: number, bare: number): string => `plant=${covered}&litter=0&rock=0&bare=${bare}`;

it('names what there is, in every definition that compares', () => {
  const comparing = calculators.filter(({ compares }) => compares !== undefined);
  expect(comparing.map(({ slug }) => slug).toSorted()).toEqual(['cover-count', 'packed-soil', 'ring-test', 'slake-test']);
  for (const calculator of comparing) {
    const { compares, quantities, inputs, slug } = calculator;
    const ran = runTexts(calculator, fromLink(calculator, '').form.this, 'us');
    if (!('outcome' in ran) || compares === undefined) throw new RangeError(slug);
    if (compares.as === 'share')
      for (const name of [compares.points, compares.misses]) expect(typeof ran.outcome.values[name], `${slug} ${name}`).toBe('number');
    else {
      const rows = quantities[compares.rows];
      expect(rows?.kind === 'rows' && rows.columns[compares.column]?.kind, slug).toBe('number');
    }
    for (const name of compares.alike ?? []) {
      const [key = '', column] = name.split('.');
      const input = inputs[key];
      expect(column === undefined ? input : input?.kind === 'rows' && input.columns[column], `${slug} ${name}`).toBeTruthy();
    }
    for (const name of Object.keys(compares.same ?? {})) expect(inputs[name]?.kind, `${slug} ${name}`).toBe('choice');
    for (const [name, bars] of Object.entries(compares.bars ?? {})) {
      const [input, told] = [inputs[name], quantities[name]];
      const words = input?.kind === 'choice' ? input.options : told?.kind === 'word' ? told.words : {};
      expect(Object.keys(words), `${slug} ${name}`).toEqual(expect.arrayContaining(Object.keys(bars)));
    }
  }
});

describe('two visits side by side', () => {
  it('tell a change from scatter by the range of the ratio of rings', () => {
    expect(both('ring-test', [rings(60, 62, 64), rings(10, 11, 10)])).toMatchObject({
      verdict: 'The change is more than these readings scatter.',
      differs: [],
      isRatio: true,
    });
    expect(both('ring-test', [rings(30, 31, 32), rings(10, 80, 30)])?.verdict).toBe('The change cannot be told from chance.');
  });
  it('give rings that scatter wildly no range of figures', () => {
    const found = both('ring-test', [rings(1, 40, 600), rings(2, 30, 500)])?.change;
    expect(found?.words).toMatch(/^[\d.]+ times what it was \(these rings scatter too much to bound it\)$/);
    expect(found?.isBoundless).toBe(true);
    expect(both('ring-test', [rings(30, 31, 32), rings(10, 80, 30)])?.change?.isBoundless).toBeUndefined();
  });
  // The same rings beside each other in the form: `edges.ts` of the ring test holds where its verdict turns.
  it.each([
    [rings(30, 31, 32), rings(10, 11, 10), '3.0 times'],
    [rings(10, 11, 10), rings(30, 31, 32), '0.33 times'],
    [rings(60, 62, 64), rings(10, 11, 10), '6.0 times'],
    [rings(10, 11, 10), rings(60, 62, 64), '0.17 times'],
    [rings(30, 31, 32), rings(10, 80, 30), '1.1 times'],
  ])('call a change of rings what the form calls it: %#', (earlier, later, words) => {
    const found = both('ring-test', [earlier, later]);
    const ringTest = calculatorOf('ring-test');
    const then = readingsOf(ringTest, earlier)?.readings.map((rate) => `${rate}in/hr`);
    const ran = runTexts(ringTest, fromLink(ringTest, `${later}&beside=visit&others.then=${then?.join()}`).form.this, 'us');
    if (!('outcome' in ran) || found?.change === undefined) throw new RangeError('refused');
    const { values, shown } = ran.outcome;
    const said = { chance: 'told from chance', faster: 'more than', slower: 'more than', 'perhaps-faster': 'A hint', 'perhaps-slower': 'A hint' };
    expect(found.verdict).toContain(said[String(values['verdict']) as keyof typeof said]);
    expect(found.change.words).toContain(words);
    // From a handbook's t for four degrees of freedom, 2.776: exp(2.776 × √(ln 1.64) × √(2/3)) = 4.9.
    expect(found.change.usual).toBe(
      shown.includes('scatterTimes') ? 'Two such tests of one ground can come out 4.9 times apart by chance.' : undefined,
    );
  });
  // Classes 5, 5, 5, 5, 6 against 6, 6, 6, 6, 6: by hand 5.2 and 6.0, pooled deviation √(0.8/8), times 2.306 × √(2/5): 0.8 ± 0.46.
  it('tell the means of both days and a difference of classes in tenths', () => {
    const seen = (...list: readonly string[]) => `samples.seen=${list.join()}`;
    const found = both('slake-test', [seen('half', 'half', 'half', 'half', 'most'), seen('most', 'most', 'most', 'most', 'most')]);
    expect(found?.sides).toBe('5.2 then, 6.0 now');
    expect(found?.change?.words).toBe('+0.8 (+0.3 to +1.3, 19 times in 20)');
    expect(found?.verdict).toBe('The change is more than these readings scatter.');
    expect(found?.earlier.map(found.tell)).toEqual(['5', '5', '5', '5', '6']);
    expect(both('ring-test', [rings(30, 30, 30), rings(10, 10, 10)])?.sides).toBe('1.9 in an hour then, 5.7 in an hour now');
    expect(both('cover-count', [steps(48, 32), steps(56, 14)])?.sides).toBe('60 % then, 80 % now');
  });
  it('tell no end of a real change as no change', () => {
    // By hand: 5 ± 4.6 g (√10 × 2.306 × √(2/5)) in a can of 347.5 mL, so from 0.001 g/cm³.
    const [light, dense] = [cores('', 480, 482, 484, 486, 488), cores('', 485, 487, 489, 491, 493)];
    const found = both('packed-soil', [light, dense]);
    expect(found?.change?.low).toBeGreaterThan(0);
    expect(found?.change?.lowWords).not.toMatch(/^\+0(?:\.0*)?(?: |$)/);
  });
  it('say nothing of fewer than three readings, or thirty steps', () => {
    const few = both('ring-test', [rings(30, 31), rings(10, 11, 10)]);
    expect(few?.verdict).toBe('Too few readings to say anything.');
    expect(few?.change).toBeUndefined();
    expect(both('cover-count', [steps(20, 9), steps(60, 40)])?.verdict).toBe('Too few readings to say anything.');
    expect(both('cover-count', [steps(20, 10), steps(60, 40)])?.verdict).not.toBe('Too few readings to say anything.');
  });
  // Newcombe 1998, table II: 56 of 70 against 48 of 80 gives 0.0524 to 0.3339.
  it('tell the change of a count with the interval that is printed for it', () => {
    expect(both('cover-count', [steps(48, 32), steps(56, 14)])?.change).toMatchObject({
      low: expect.closeTo(0.0524, 4),
      high: expect.closeTo(0.3339, 4),
      words: '+20 points of a hundred (+5 to +33, 19 times in 20)',
      lowWords: '+5',
      highWords: '+33',
    });
  });
  it.each([
    ['wetness', { ground: { moistureFeel: 'wet', daysSinceRain: 3 } }, 'the ground felt moist then and wet now'],
    ['rain', { ground: { moistureFeel: 'moist', daysSinceRain: 5 } }, 'it was 3 days since rain then and 5 now'],
    ['nothing told', { ground: undefined }, 'how wet the ground felt and how long ago it rained were not noted on both days'],
    ['frost', { ground: { moistureFeel: 'moist', daysSinceRain: 3, isFrozen: true } }, 'the ground was frozen'],
    ['the month', { day: '2026-09-20' }, 'it was another time of the year'],
    ['hands', { by: 'Lou' }, 'Ana Reyes wrote it then and Lou now'],
    ['hands of which nobody tells', { by: undefined }, 'who did it was not noted on both days'],
  ] as const)('never call it a change where the days differ, and say in what alone: %s', (_, more, words) => {
    const visits = [then, aVisit(more)] as const;
    const found = both('ring-test', [rings(60, 62, 64), rings(10, 11, 10)], visits);
    expect(found?.verdict).toBe(`The readings differ by more than they scatter, but that need not be the ground’s doing: ${words}.`);
    expect(found?.besides).toEqual(['Compare the same spots, as wet, in the same month, with the same hands and tool.']);
    const hint = both('ring-test', [rings(30, 31, 32), rings(10, 11, 10)], visits);
    expect(hint?.verdict).toBe(`A hint at most, and that need not be the ground’s doing: ${words}.`);
  });
  it.each([
    ['slake-test', crumbs('soil=loamy'), firm('soil=loamy')],
    ['cover-count', steps(48, 32), steps(70, 10)],
  ])('blame nothing on wetness where it plays no part: %s', (slug, earlier, later) => {
    for (const ground of [undefined, { moistureFeel: 'wet', daysSinceRain: 9, isFrozen: true }] as const)
      expect(both(slug, [earlier, later], [then, aVisit({ ground })])?.verdict).toBe('The change is more than these readings scatter.');
    const others = both(slug, [earlier, later], [then, aVisit({ by: 'Lou', ground: undefined })]);
    expect(others?.verdict).toContain('doing: Ana Reyes wrote it then and Lou now.');
    expect(others?.besides.join(' ')).not.toContain('wet');
  });
  it('say what was not alike beside a change that chance can make, too', () => {
    const found = both('ring-test', [rings(30, 31, 32), rings(10, 80, 30)], [then, aVisit({ by: 'Lou', ground: { moistureFeel: 'moist' } })]);
    expect(found?.verdict).toBe('The change cannot be told from chance.');
    expect(found?.besides.slice(0, 2)).toEqual([
      'Not alike on the two days: Ana Reyes wrote it then and Lou now.',
      'Not noted on both days: how long ago it rained.',
    ]);
  });
  it('take a month to either side, December and January too, and a day of rain', () => {
    const on = (day: string, daysSinceRain: number) => aVisit({ day, ground: { moistureFeel: 'moist', daysSinceRain } });
    const says = (one: Visit, other: Visit) => differences(one, other).map(({ say }) => say);
    expect(differences(on('2025-12-30', 3), on('2027-01-02', 4))).toEqual([]);
    expect(says(on('2025-06-20', 1), on('2026-06-20', 4))).toEqual(['it was 1 day since rain then and 4 now']);
    expect(says(on('2025-04-30', 3), on('2026-06-02', 3))).toEqual(['it was another time of the year']);
  });
  it('see another tool', () => {
    const unlike = (slug: string, links: readonly [string, string]) => both(slug, links)?.differs.map(({ say }) => say);
    expect(unlike('ring-test', [`${rings(30, 31, 32)}&bore=6in`, `${rings(10, 11, 10)}&bore=12in`])).toEqual([
      'Inside width (bore): “6 in” then, “12 in” now',
    ]);
    const odd = rings(10, 11, 10).replace('rings.pours=twice', 'rings.pours=once');
    expect(unlike('ring-test', [rings(30, 31, 32), odd])).toEqual(['Poured again into the same ring? “Once more” then, “No, Once more” now']);
    expect(unlike('ring-test', [rings(30, 31, 32), `${rings(10, 11, 10)}&moisture=wet`])).toEqual([
      'Last soaking rain: “One to four days ago: moist, drained” then, “Within a day: wet” now',
    ]);
    expect(unlike('packed-soil', [cores('volume-from=hole', 480, 485, 490), cores('volume-from=known', 520, 522, 524)])).toHaveLength(1);
  });
  it.each([
    ['ring-test', `${rings(30, 31, 32)}&site=cracks`, rings(10, 11, 10), 'on the earlier day water ran down cracks'],
    ['ring-test', rings(30, 31, 32), `${rings(10, 11, 10).replaceAll('twice', 'once')}&moisture=dry`, 'on the later day only the first pouring'],
    ['slake-test', crumbs('soil=loamy&dried=damp'), firm('soil=loamy&dried=damp'), 'on both days the crumbs were not air-dry'],
    ['slake-test', crumbs('soil=loamy'), firm('soil=clayey'), 'the soil did not feel the same'],
    ['slake-test', crumbs('soil=differs'), firm('soil=differs'), 'on both days two places that feel different'],
    ['slake-test', crumbs('spot=bare'), firm('spot=plants'), 'one day’s crumbs are from under plants'],
    ['slake-test', crumbs('spot=mixed'), firm('spot=mixed'), 'on both days crumbs from under plants and from bare spots were mixed'],
    ['packed-soil', cores('texture=loam', 480, 485, 490), cores('texture=clay', 380, 382, 384), 'the ribbon did not tell the same soil'],
  ])('say nothing, and why, where a test cannot stand against another: %s', (slug, earlier, later, why) => {
    const found = both(slug, [earlier, later]);
    expect(found?.verdict).toContain(`Nothing can be said: ${why}`);
    expect(found?.change).toBeUndefined();
  });
  it('do not hold soil against itself', () => {
    expect(both('slake-test', [crumbs('soil=clayey'), firm('soil=clayey')])?.change).toBeDefined();
    expect(both('packed-soil', [cores('texture=clay', 380, 385, 390), cores('texture=clay', 420, 422, 424)])?.change).toBeDefined();
  });
  it('leave out what is no test', () => {
    expect(both('feed-or-sell', ['', ''])).toBeUndefined();
  });
});
