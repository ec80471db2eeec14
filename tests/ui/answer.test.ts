import { describe, expect, it } from 'vitest';
import stockWater from '../../calculators/catalog/stock-water/definition.ts';
import stormRunoff from '../../calculators/catalog/storm-runoff/definition.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import type { NumberQuantity } from '../../calculators/kit/quantities.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { figureAlone } from '../../calculators/ui/Answer.tsx';
import { figureBetween, rangeBetween } from '../../calculators/ui/between.ts';
import { newLines, sayFigure } from '../../calculators/ui/readAloud.ts';
import { runSide } from '../../calculators/ui/sides.ts';

/** A calculator with one result, for the words alone: nothing of the trade is worked out here. */
const storm = runSide(stormRunoff, startTexts(stormRunoff.inputs), 'us').outcome;
if (!storm) throw new Error('the example does not compute');
const withOutcome = (values: Readonly<Record<string, number | string>>): Outcome => ({ ...storm, values, shown: ['led'], shorts: {} });
const number = (unit: NumberQuantity['unit'], digits: number): NumberQuantity => ({ kind: 'number', label: 'Rain kept', symbol: 'R', unit, digits });
const calculator = (quantity: Calculator['quantities'][string], gap?: readonly [string, string]): Calculator => ({
  ...stormRunoff,
  quantities: { led: quantity, low: quantity, high: quantity },
  results: [{ of: 'led', said: 'kept', ...(gap ? { gap } : {}), range: { low: 'low', high: 'high' } }],
});
const inches = calculator(number('in', 1), ['less stayed there', 'more stayed there']);
const between = (of: Calculator, one: number | string, two: number | string) =>
  figureBetween({ calculator: of, outcome: withOutcome({ led: one }), other: withOutcome({ led: two }), system: 'us' });

describe('the figure of one side', () => {
  it('stands apart from its unit and from what it is', () => {
    expect(figureAlone({ calculator: inches, outcome: withOutcome({ led: 1.24 }), system: 'us' })).toEqual({
      figure: '1.2',
      unit: 'in',
      what: 'kept',
      isWords: false,
    });
  });
  it('has the dollar before it', () => {
    const dollars = figureAlone({ calculator: calculator(number('usd', 0)), outcome: withOutcome({ led: 310 }), system: 'us' });
    expect(dollars?.figure).toBe('$310');
    expect(dollars?.unit).toBe('');
  });
  it('is a word where the result is one', () => {
    const words = calculator({ kind: 'word', label: 'How long', words: { few: 'Too few steps to say' } });
    expect(figureAlone({ calculator: words, outcome: withOutcome({ led: 'few' }), system: 'us' })).toMatchObject({
      figure: 'Too few steps to say',
      isWords: true,
    });
  });
});

describe('the figure read aloud', () => {
  it.each([
    ['3.1', 'in an hour', '3.1 inches an hour soak in'],
    ['45', 'lb/ac', '45 pounds an acre soak in'],
    // No abbreviations, or shorter than the words of a label.
    ['12', 'tons', '12 tons soak in'],
    ['$95', 'a ton', '$95 a ton soak in'],
    ['1', 'in', '1 in soak in'],
    ['7', '', '7 soak in'],
  ] as const)('has its unit in words, where that is an abbreviation: %s %s', (figure, unit, said) => {
    expect(sayFigure(figure, unit, 'soak in')).toBe(said);
  });
});
describe('what is read aloud of an answer', () => {
  const before = { cautions: ['Deep water drowns.'], answer: ['4 inches', 'likely 3 to 5'] };
  it('is nothing where nothing changed', () => {
    expect(newLines(before, { ...before })).toEqual([]);
  });
  it('is the whole answer where part of it changed, and of cautions only what came', () => {
    expect(newLines(before, { ...before, answer: ['4 inches', 'likely 2 to 6'] })).toEqual(['4 inches', 'likely 2 to 6']);
    expect(newLines(before, { ...before, cautions: [...before.cautions, 'Ditches cave in.'] })).toEqual(['Ditches cave in.']);
    expect(newLines(before, { ...before, cautions: [] })).toEqual([]);
  });
});

describe('the figure between two sides', () => {
  it('says which way that side differs, in the words of the result', () => {
    expect(between(inches, 1.2, 0.4)).toEqual({ figure: '0.8', unit: 'in', what: 'less stayed there', isWords: false });
    expect(between(inches, 0.4, 1.2)?.what).toBe('more stayed there');
    expect(between(calculator(number('in', 1)), 0.4, 1.2)?.what).toBe('more kept on that side');
  });
  it('is the gap of what is printed: 1.24 and 1.16 read 1.2 both', () => {
    expect(between(inches, 1.24, 1.16)).toMatchObject({ figure: 'The same', what: 'for both' });
  });
  it('has the dollar before it', () => {
    expect(between(calculator(number('usd', 0)), 400, 710)?.figure).toBe('$310');
  });
  it('tells days as earlier and later, and one of them as one', () => {
    const day = calculator({ kind: 'day', label: 'The day' });
    expect(between(day, 20_000, 20_012)).toMatchObject({ figure: '12', unit: 'days', what: 'later on that side' });
    expect(between(day, 20_001, 20_000)).toMatchObject({ figure: '1', unit: 'day', what: 'earlier on that side' });
    expect(between(day, 20_000, 20_000)?.figure).toBe('The same day');
  });
  it('sets words against each other', () => {
    const words = calculator({ kind: 'word', label: 'Class', words: { poor: 'Poor', good: 'Good' } });
    expect(between(words, 'poor', 'good')).toMatchObject({ figure: 'Poor; on that side good', isWords: true });
    expect(between(words, 'good', 'good')).toMatchObject({ figure: 'The same', what: 'for both' });
  });
});

describe('where the first result is the same for both', () => {
  const quantity = number('in', 1);
  const three = (gap?: readonly [string, string]): Calculator => ({
    ...stormRunoff,
    quantities: { led: quantity, inner: quantity, next: quantity },
    results: [{ of: 'led', said: 'poured' }, { of: 'inner' }, { of: 'next', ...(gap ? { gap } : {}) }],
  });
  const side = (led: number, inner: number, next: number, shown = ['led', 'inner', 'next']) => ({ ...withOutcome({ led, inner, next }), shown });
  const figure = (one: Outcome, other: Outcome, of = three(['less ran off', 'more ran off'])) =>
    figureBetween({ calculator: of, outcome: one, other, system: 'us' });
  it('the first that has words for its gap leads', () => {
    expect(figure(side(1, 2, 3), side(1, 5, 7))).toEqual({ figure: '4.0', unit: 'in', what: 'more ran off', isWords: false });
    expect(figure(side(1, 2, 3), side(2, 5, 7))?.what, 'the first differs').toBe('more poured on that side');
  });
  it('it stays the same where nothing has such words, or that is the same too, or is of one side only', () => {
    expect(figure(side(1, 2, 3), side(1, 5, 7), three())?.figure).toBe('The same');
    expect(figure(side(1, 2, 3), side(1, 5, 3))?.figure).toBe('The same');
    expect(figure(side(1, 2, 3), side(1, 5, 7, ['led']))?.figure).toBe('The same');
  });
});

describe('the range of a gap', () => {
  type Side = readonly [low: number, led: number, high: number];
  const side = ([low, led, high]: Side) => withOutcome({ led, low, high });
  const range = (one: Side, two: Side, of = inches) => rangeBetween({ calculator: of, outcome: side(one), other: side(two), system: 'us' });
  it('takes both sides at the same end, the lesser gap first', () => {
    expect(range([1, 1.5, 2], [0.5, 0.8, 1])).toBe('0.5 to 1.0 in, both at the same end');
    expect(range([1, 1.5, 2], [0, 0.7, 1.5])).toBe('0.5 to 1.0 in, both at the same end');
  });
  it('says the unit once, and the dollar of both', () => {
    expect(range([2000, 2500, 3000], [2300, 3000, 3700], calculator(number('usd', 0)))).toBe('$300 to $700, both at the same end');
  });
  it('says so where either side can be ahead', () => {
    expect(range([1, 1.5, 2], [0.5, 1.6, 3])).toBe('the ranges cross: it can go either way');
  });
  it('tells one gap once, and none not at all', () => {
    expect(range([1, 1.5, 2], [0.5, 1, 1.5])).toBe('0.5 in at either end of both ranges');
    expect(range([1, 1.5, 2], [1, 1.5, 2])).toBeUndefined();
  });
  it('is silent where the gap that is told lies outside: an end of one side is capped', () => {
    expect(range([0, 4, 5], [0, 8, 7])).toBeUndefined();
    expect(range([0, 4, 9], [1, 3, 9])).toBeUndefined();
    expect(range([1, 1.5, 2], [1.5, 1.5, 2.5])).toBeUndefined();
  });
  it('is silent where the other side has no such result', () => {
    const outcome = withOutcome({ led: 1, low: 1, high: 2 });
    expect(rangeBetween({ calculator: inches, outcome, other: { ...outcome, shown: [] }, system: 'us' })).toBeUndefined();
  });
});

describe('what comes first', () => {
  it('is the first result that applies, on every side of the example', () => {
    for (const each of [stormRunoff, stockWater]) {
      const { outcome } = runSide(each, startTexts(each.inputs), 'us');
      expect(outcome && figureAlone({ calculator: each, outcome, system: 'us' })?.figure).toMatch(/\S/);
    }
  });
});
