import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import carryingCapacity from '../../calculators/catalog/carrying-capacity/definition.ts';
import coverCount from '../../calculators/catalog/cover-count/definition.ts';
import packedSoil from '../../calculators/catalog/packed-soil/definition.ts';
import rainDemonstration from '../../calculators/catalog/rain-demonstration/definition.ts';
import ringTest from '../../calculators/catalog/ring-test/definition.ts';
import slakeTest from '../../calculators/catalog/slake-test/definition.ts';
import soilLoss from '../../calculators/catalog/soil-loss/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { fetchWhole } from '../../calculators/kit/fetchWhole.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { canCompare, type Form, startTexts } from '../../calculators/kit/state.ts';
import { figureBetween, rangeBetween } from '../../calculators/ui/between.ts';
import { resultNames } from '../../calculators/ui/paper/Results.tsx';
import { otherTexts } from '../../calculators/ui/sides.ts';
import { compareResults } from '../../src/place/visit/compare.ts';
import { aResult, aVisit } from '../place/aVisit.ts';
import { calculators } from '../support/catalog.ts';
import { formsOf } from '../support/randomForms.ts';

/** The figure and the range under it, as the page tells them; nothing where a side has no answer. */
function told(calculator: Calculator, form: Form, system: 'us' | 'si' = 'us') {
  const theirs = otherTexts(calculator, form);
  const [mine, other] = [runTexts(calculator, form.this, system), theirs && runTexts(calculator, theirs, system)];
  if (!('outcome' in mine) || !other || !('outcome' in other)) return undefined;
  const sides = { calculator, outcome: mine.outcome, other: other.outcome, system };
  return { figure: figureBetween(sides), range: rangeBetween(sides), other: other.outcome };
}
const numbersIn = (text: string): readonly number[] =>
  [...text.matchAll(/\d[\d,]*(?:\.\d+)?/g)].map(([digits]) => Number(digits.replaceAll(',', '')));

/** The example with other management beside it, and any two forms of one place. */
const formsBeside = (calculator: Calculator): fc.Arbitrary<Form> => {
  const start = startTexts(calculator.inputs);
  const forms = formsOf(calculator);
  return fc.oneof(
    forms.map((form) => ({ ...form, that: form.that ?? start })),
    forms.map((form) => ({ this: start, that: form.that ?? form.this })),
  );
};

describe('a gap between two counts', () => {
  const between = (query: string) => told(coverCount, fromLink(coverCount, query).form);
  // 48 of 80 and 56 of 70: 0.0524 to 0.3339 by newcombe-1998-difference, table II, example (a), method 10.
  it('has the chance of both: 60 and 80 percent', () => {
    const pair = between('plant=48&litter=0&rock=0&bare=32&that.plant=56&that.bare=14');
    expect(pair?.figure).toMatchObject({ figure: '20', what: 'more of that ground covered' });
    expect(pair?.range).toBe('5 to 33 %, 95 times in 100');
    expect(between('plant=56&litter=0&rock=0&bare=14&that.plant=48&that.bare=32')?.range).toBe(pair?.range);
  });
  it('can be chance where an end of it only rounds to none, and is a hint from few steps', () => {
    // 6 of 30 and 13 of 30: -0.2 % at the low end.
    expect(between('plant=6&litter=0&rock=0&bare=24&that.plant=13&that.bare=17')?.range).toMatch(/^it can be chance: 0 less/);
    expect(between('plant=2&litter=0&rock=0&bare=18&that.plant=19&that.bare=1')?.range).toMatch(/^a hint, no more: .*; under 30 steps$/);
  });
  it('can be chance where the range holds both signs', () => {
    expect(between('plant=29&litter=8&rock=1&bare=62&that.plant=34&that.litter=10&that.bare=55')?.range).toMatch(
      /^it can be chance: \d+ less to \d+ % more$/,
    );
  });
  it('is no chance where none is told: the same tells how far it can be off', () => {
    // The same 48 of 80 twice.
    const pair = between('plant=48&litter=0&rock=0&bare=32&that.plant=48&that.bare=32');
    expect(pair?.figure).toMatchObject({ figure: 'The same', what: 'for both' });
    expect(pair?.range).toMatch(/^(\d+) less to \1 % more, 95 times in 100$/);
  });
  it.each([
    [71, 29, 78, 22],
    [48, 32, 56, 14],
    [30, 0, 20, 10],
  ])('is told as two visits side by side tell it: %i on cover and %i bare, then %i and %i', (plants, bare, plantsNow, bareNow) => {
    const links = [`plant=${plants}&litter=0&rock=0&bare=${bare}`, `plant=${plantsNow}&litter=0&rock=0&bare=${bareNow}`] as const;
    const [earlier, later] = links.map((link, index) => [aResult({ slug: 'cover-count', link }), aVisit({ id: `v${index}` })] as const);
    const { change } = (earlier && later && compareResults(coverCount, earlier, later, 'us')) ?? {};
    const range = between(`${links[0]}&that.plant=${plantsNow}&that.bare=${bareNow}`)?.range ?? '';
    const ends = (text: string): readonly number[] => numbersIn(text).toSorted((one, two) => one - two);
    expect(ends(range.split(',')[0] ?? '')).toEqual(ends(`${change?.lowWords} to ${change?.highWords}`));
    expect(range.startsWith('it can be chance')).toBe(change?.isMore === false);
  });
});

const rows = (times: number, text: string): string => Array.from({ length: times }, () => text).join(',');

describe('a gap between the crumbs of two places', () => {
  const between = (query: string) => {
    const pair = told(slakeTest, fromLink(slakeTest, query).form);
    return [`${pair?.figure?.figure} ${pair?.figure?.what}`.trim(), pair?.range];
  };
  const beside = (here: string, there: string, more = '') => between(`samples.seen=${here}&that.samples.seen=${there}${more}`);
  it('is told by the mean class, whatever the words of the two are', () => {
    // Classes 3, 3, 3, 4, 4, 3 beside 5, 6, 5, 4, 5, 5: 5/3 give or take 2.2281 √(16/3 / 10 × 1/3), worked by hand with t of ten degrees from nist-sematech-handbook.
    const pair = beside('by-300,by-300,by-300,some,some,by-300', 'half,most,half,some,half,half');
    expect(pair).toEqual(['1.7 classes higher on that side', '0.9 to 2.4, 95 times in 100']);
    expect(beside('half,most,half,some,half,half', 'by-300,by-300,by-300,some,some,by-300')).toEqual([
      '1.7 classes lower on that side',
      '0.9 to 2.4, 95 times in 100',
    ]);
  });
  it('can be chance, though the words of the two differ at their limit', () => {
    const [figure, range] = beside('by-300,some,by-30,by-300,some,by-30', 'by-300,by-300,by-30,by-300,some,by-30');
    expect(figure).toBe('0.2 classes lower on that side');
    expect(range).toMatch(/^it can be chance: 1\.\d less to 0\.\d more$/);
  });
  it('is a hint under one class, and from fewer than six crumbs', () => {
    const [half, most] = [`${rows(17, 'half')},some`, `${rows(12, 'most')},${rows(6, 'half')}`];
    expect(beside(half, most)[1]).toMatch(/^a hint, no more: 0\.\d to 1\.\d; under one class$/);
    expect(beside('by-30,by-30,by-300,by-30,by-5', 'most,half,most,most,half')[1]).toMatch(/^a hint, no more: .*; so few crumbs$/);
    expect(beside('by-30,by-30,by-300,by-30,by-5,by-30', 'most,half,most,most,half,most')[1]).toMatch(/, 95 times in 100$/);
  });
  it('has no range of two crumbs, nor where all are alike', () => {
    expect(beside('by-30,by-300', 'most,half,most')[1]).toBe('too few crumbs to tell it from chance');
    expect(beside(rows(8, 'by-300'), rows(8, 'half'))).toEqual([
      '2.0 classes higher on that side',
      'no range: the crumbs of each side were all alike',
    ]);
  });
  it.each([
    ['&that.dried=damp', 'damp crumbs hold together whatever they are worth'],
    ['&soil=differs', 'the two soils feel different, so it may be texture'],
    ['&that.spot=mixed', 'crumbs from plants and bare spots are mixed'],
  ])('is none where one tells nothing beside the other: %s', (more, because) => {
    expect(beside(rows(6, 'by-300'), rows(6, 'half'), more)).toEqual(['Can’t be compared', because]);
  });
});

describe('a gap between the cores of two places', () => {
  const between = (query: string, system: 'us' | 'si' = 'us') => {
    const pair = told(packedSoil, fromLink(packedSoil, `volume-from=known&ring=100ml&${query}`).form, system);
    return [`${pair?.figure?.figure} ${pair?.figure?.unit} ${pair?.figure?.what}`, pair?.range];
  };
  it('is that of the mean, with how far these cores scatter', () => {
    // 1.30, 1.34, 1.38 beside 1.50, 1.54, 1.58: 0.20 give or take 2.7764 × 0.04 × √(2/3), by hand with t of four degrees from nist-sematech-handbook.
    const pair = ['0.20 g/cm³ denser on that side', '0.11 to 0.29 g/cm³, 95 times in 100'];
    const query = 'cores.core=130g,134g,138g&that.cores.core=150g,154g,158g';
    expect(between(query)).toEqual(pair);
    expect(between(query, 'si')).toEqual(pair);
  });
  it('can be chance across the limit of a list, and has no range of two cores', () => {
    expect(between('cores.core=135g,139g,143g&that.cores.core=137g,141g,145g')).toEqual([
      '0.02 g/cm³ denser on that side',
      'it can be chance: 0.07 less to 0.11 g/cm³ more',
    ]);
    expect(between('cores.core=130g,134g&that.cores.core=150g,154g,158g')[1]).toBe('too few cores to tell it from chance');
  });
});

describe('a gap between the rings of two places', () => {
  const rings = (minutes: string) =>
    `rings.first=${minutes}&rings.pours=${minutes.replaceAll(/[^,]+/g, 'once')}&rings.end=${minutes.replaceAll(/[^,]+/g, 'gone')}`;
  const inch = 'bore=6in&water=463.333ml&moisture=wet';
  const between = (here: string, there: string, more = '') =>
    told(ringTest, fromLink(ringTest, `${inch}&${rings(here)}&that.${rings(there).replaceAll('&', '&that.')}${more}`).form);
  const ratesOf = (minutes: string) =>
    minutes
      .split(',')
      .map((each) => `${60 / Number(each)}in/hr`)
      .join(',');
  it.each([
    ['20,14,32', '75,40,28.6'],
    ['80,84,86', '18,18,19'],
    ['18,18,19', '80,84,86'],
    ['300,310,320', '4,4.1,4.2'],
    ['1,30,600', '3,60,2'],
    ['20', '40'],
  ])('has the verdict that another place on the same day gets: %s and %s minutes an inch', (here, there) => {
    const range = between(here, there)?.range ?? '';
    const beside = runQuery(ringTest, `${inch}&${rings(there)}&beside=place&others.then=${ratesOf(here)}`);
    const starts = {
      chance: 'it can be chance',
      'too-few': 'too few rings',
      faster: /^\d/,
      slower: /^\d/,
      'perhaps-faster': 'a hint',
      'perhaps-slower': 'a hint',
    };
    const verdict = String(beside.values['verdict']);
    const told = beside.ranges['ratioTimes'] ?? '';
    expect(range).toMatch(told.includes('scatter too much') ? /scatter too much/ : new RegExp(starts[verdict as keyof typeof starts]));
    if (/^\d/.test(told)) expect(numbersIn(range).slice(0, 2)).toEqual(numbersIn(told).slice(0, 2));
  });
  it('is a hint where the ground was wetter on one side, and none where a test can’t be judged', () => {
    expect(between('300,310,320', '4,4.1,4.2', '&that.moisture=moist')?.range).toMatch(/^a hint, no more: .*not as wet on both$/);
    expect(between('300,310,320', '4,4.1,4.2', '&that.site=cracks')).toMatchObject({
      figure: { figure: 'Can’t be compared' },
      range: 'one of the two tests can’t be judged',
    });
  });
});

describe('a gap between two sides', () => {
  it.each(calculators.filter(({ inputs }) => canCompare(inputs)).map((calculator) => [calculator.slug, calculator] as const))(
    'lies in the range that is told under it: %s',
    async (_, calculator) => {
      await fetchWhole(calculator);
      fc.assert(
        fc.property(formsBeside(calculator), fc.constantFrom('us', 'si'), (form, system) => {
          const { figure, range } = told(calculator, form, system) ?? {};
          // Words, and a ratio, are no range of that gap.
          if (range === undefined || !/^[$\d]|^a hint/.test(range) || range.includes('times as')) return;
          const [gap = 0] = figure?.isWords ? [] : numbersIn(figure?.figure ?? '');
          // An end that lies on the other side of nothing is told as so much less.
          const ends = numbersIn(range.split(/;|, 95/)[0] ?? '').map((end, at) => (at === 0 && range.includes(' less to ') ? -end : end));
          const says = `${figure?.figure} ${figure?.unit} ${figure?.what}: ${range}`;
          expect(figure?.isWords === true && !figure.figure.startsWith('The same'), says).toBe(false);
          expect(gap, says).toBeGreaterThanOrEqual(Math.min(...ends));
          expect(gap, says).toBeLessThanOrEqual(Math.max(...ends));
          expect(Math.max(...ends.map(Math.abs)), says).toBeGreaterThan(0);
        }),
        { seed: 7, numRuns: calculator.runs === 'long' ? 20 : 300 },
      );
    },
    60_000,
  );
});

describe('two sides of which one is told in words', () => {
  it.each(calculators.filter(({ inputs }) => canCompare(inputs)).map((calculator) => [calculator.slug, calculator] as const))(
    'read as one sentence: %s',
    async (_, calculator) => {
      await fetchWhole(calculator);
      fc.assert(
        fc.property(formsBeside(calculator), fc.constantFrom('us', 'si'), (form, system) => {
          const { figure } = told(calculator, form, system) ?? {};
          const [, theirs] = figure?.isWords === true ? figure.figure.split('; on that side ') : [];
          if (theirs === undefined) return;
          expect(theirs, 'no capital in the middle of a sentence').not.toMatch(/^\p{Lu}\p{Ll}/u);
          expect(figure?.figure, 'no unit of the other system').not.toMatch(system === 'us' ? /tonne|hectare/ : /\bton\b|\bacre\b/);
        }),
        { seed: 11, numRuns: calculator.runs === 'long' ? 20 : 200 },
      );
    },
    60_000,
  );
  it('tells a loss too small for a figure beside one that has it, in the units of the reader', () => {
    const loss = (query: string, system: 'us' | 'si') => told(soilLoss, fromLink(soilLoss, query).form, system)?.figure?.figure;
    expect(loss('ground-cover=45pct&that.ground-cover=95pct', 'us')).toBe('5 tons/ac of soil a year; on that side under 1 ton an acre');
    expect(loss('ground-cover=45pct&that.ground-cover=95pct', 'si')).toMatch(/; on that side under 2 tonnes a hectare$/);
    expect(loss('ground-cover=95pct&that.ground-cover=45pct', 'us')).toBe('Under 1 ton an acre; on that side 5 tons/ac of soil a year');
  });
});

describe('two trays of one size', () => {
  const toldJars = (query: string) => told(rainDemonstration, fromLink(rainDemonstration, query).form);
  // A tenth of 4,719 mL is 472.
  it('are alike under a tenth of the water', () => {
    const alike = toldJars('jars=read&runoff=2600ml&that.runoff=2129ml');
    expect([alike?.figure?.figure, alike?.range]).toEqual(['Alike', 'what ran off differs by under a tenth of the water']);
    expect(toldJars('jars=read&runoff=2600ml&that.runoff=2128ml')?.figure?.what).toBe('less of the water ran off');
  });
  it('can’t be compared where they were not set up alike', () => {
    expect(toldJars('jars=read&alike=no&runoff=2600ml&that.runoff=300ml')?.figure?.figure).toBe('Can’t be compared');
  });
  it('show what was to be expected only until the jars are read', () => {
    const shown = (query: string) => told(rainDemonstration, fromLink(rainDemonstration, `${query}&that.cover=bare`).form)?.other.shown;
    expect(shown('jars=not-yet&that.jars=not-yet')).toContain('shouldRun');
    expect(shown('jars=read')).not.toContain('shouldRun');
    expect(shown('jars=read')).not.toContain('shouldSoak');
  });
  const jars = (query: string) => told(rainDemonstration, fromLink(rainDemonstration, query).form)?.figure;
  it('are told by what ran off, not by the water that both take', () => {
    const rested = 'cover=grazed-short&jars=read&runoff=2600ml&that.cover=rested-sod&that.runoff=300ml';
    expect(jars(rested)).toEqual({ figure: '49', unit: '%', what: 'less of the water ran off', isWords: false });
    expect(jars('jars=read&runoff=300ml&that.runoff=2600ml')?.what).toBe('more of the water ran off');
  });
  it('are the same before they are poured, and alike where as much ran off', () => {
    expect(jars('jars=not-yet&that.cover=bare')?.figure).toBe('The same');
    expect(jars('jars=read&runoff=2600ml&that.through=700ml')?.figure).toBe('Alike');
    expect(jars('jars=not-yet&that.jars=read')?.figure, 'nothing to hold it against').toBe('The same');
  });
  it('have what differs first on paper, to the last of three shares', () => {
    const { form } = fromLink(rainDemonstration, 'runoff=2600ml&that.cover=rested-sod&that.first-run=600s&that.runoff=300ml');
    const [mine, theirs] = [form.this, form.that ?? form.this].map((texts) => runTexts(rainDemonstration, texts, 'us'));
    if (!mine || !theirs || !('outcome' in mine) || !('outcome' in theirs)) throw new Error('the trays do not compute');
    const held = { calculator: rainDemonstration, outcome: mine.outcome, titles: ['This', 'That'], system: 'us' } as const;
    expect(resultNames({ ...held, other: theirs.outcome }).slice(0, 6)).toEqual([
      ...['runoffPercent', 'firstRunIn', 'heldPercent', 'pourQt', 'rainMin', 'needHolesCount'],
    ]);
    expect(resultNames({ ...held, other: null })[0]).toBe('pourQt');
  });
});

describe('head that must go by two days', () => {
  const by = (query: string) => told(carryingCapacity, fromLink(carryingCapacity, query).form);
  it('has no range where one day is so late that all of them are its end', () => {
    const { figure, range } = by('today=2026-06-20&go=2026-07-10&that.go=2026-07-20') ?? {};
    expect(`${figure?.figure} ${figure?.unit} ${figure?.what}`).toBe('3 head more must go');
    expect(range).toBeUndefined();
  });
  it('is told in words where by one of them no number is enough', () => {
    const { figure, range, other } = by('today=2026-06-20&go=2026-07-10&that.go=2026-08-10') ?? {};
    expect(other?.shown).not.toContain('goHead');
    expect(figure?.figure).toBe('34 head must go; on that side too late by that day: with all of the first kind gone, the grass still ends early');
    expect(range).toBeUndefined();
  });
});
