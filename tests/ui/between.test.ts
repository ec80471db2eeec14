import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import carryingCapacity from '../../calculators/catalog/carrying-capacity/definition.ts';
import coverCount from '../../calculators/catalog/cover-count/definition.ts';
import rainDemonstration from '../../calculators/catalog/rain-demonstration/definition.ts';
import soilLoss from '../../calculators/catalog/soil-loss/definition.ts';
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
  it('can be chance where the range holds both signs', () => {
    expect(between('plant=29&litter=8&rock=1&bare=62&that.plant=34&that.litter=10&that.bare=55')?.range).toMatch(
      /^it can be chance: \d+ less to \d+ % more$/,
    );
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

describe('a gap between two sides', () => {
  it.each(calculators.filter(({ inputs }) => canCompare(inputs)).map((calculator) => [calculator.slug, calculator] as const))(
    'lies in the range that is told under it: %s',
    async (_, calculator) => {
      await fetchWhole(calculator);
      fc.assert(
        fc.property(formsBeside(calculator), fc.constantFrom('us', 'si'), (form, system) => {
          const { figure, range } = told(calculator, form, system) ?? {};
          if (range === undefined || /^(?:the ranges cross|it can be chance)/.test(range)) return;
          const [gap = 0] = figure?.isWords ? [] : numbersIn(figure?.figure ?? '');
          const ends = numbersIn(range);
          const says = `${figure?.figure} ${figure?.unit} ${figure?.what}: ${range}`;
          expect(figure?.isWords === true && !figure.figure.startsWith('The same'), says).toBe(false);
          expect(gap, says).toBeGreaterThanOrEqual(Math.min(...ends));
          expect(gap, says).toBeLessThanOrEqual(Math.max(...ends));
          expect(Math.max(...ends), says).toBeGreaterThan(0);
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
  const jars = (query: string) => told(rainDemonstration, fromLink(rainDemonstration, query).form)?.figure;
  it('are told by what ran off, not by the water that both take', () => {
    const rested = 'cover=grazed-short&jars=read&runoff=2600ml&that.cover=rested-sod&that.runoff=300ml';
    expect(jars(rested)).toEqual({ figure: '49', unit: '%', what: 'less of the water ran off', isWords: false });
    expect(jars('jars=read&runoff=300ml&that.runoff=2600ml')?.what).toBe('more of the water ran off');
  });
  it('are the same before they are poured, and where as much ran off', () => {
    expect(jars('jars=not-yet&that.cover=bare')?.figure).toBe('The same');
    expect(jars('jars=read&runoff=2600ml&that.through=700ml')?.figure).toBe('The same');
    expect(jars('jars=not-yet&that.jars=read')?.figure, 'nothing to hold it against').toBe('The same');
  });
  it('have what differs first on paper, to the last of three shares', () => {
    const { form } = fromLink(rainDemonstration, 'runoff=2600ml&that.cover=rested-sod&that.first-run=600s&that.runoff=300ml');
    const [mine, theirs] = [form.this, form.that ?? form.this].map((texts) => runTexts(rainDemonstration, texts, 'us'));
    if (!mine || !theirs || !('outcome' in mine) || !('outcome' in theirs)) throw new Error('the trays do not compute');
    const held = { calculator: rainDemonstration, outcome: mine.outcome, titles: ['This', 'That'], system: 'us' } as const;
    expect(resultNames({ ...held, other: theirs.outcome }).slice(0, 6)).toEqual([
      ...['shouldRun', 'runoffPercent', 'shouldSoak', 'firstRunIn', 'heldPercent', 'pourQt'],
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
