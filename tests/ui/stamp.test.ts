import { describe, expect, it } from 'vitest';
import { isShown, startTexts, type Texts } from '../../calculators/kit/state.ts';
import { theirAnswers } from '../../calculators/ui/apart.ts';
import { stampOf } from '../../calculators/ui/stamp.ts';
import { pathsOf, touchedBy } from '../../calculators/ui/touched.ts';
import kitchenSink from '../kit/kitchenSink.ts';
import { calculators } from '../support/catalog.ts';

const start = startTexts(kitchenSink.inputs);
const nobody: ReadonlySet<string> = new Set();
const stamp = (touched: Iterable<string>, linked: Iterable<string> = [], waiting = 0, texts: Texts = start) =>
  stampOf(kitchenSink, texts, { touched: new Set(touched), linked: new Set(linked), waiting });
const asked = ['rainIn', 'herd.0.countHead', 'herd.1.countHead', 'startDay'];
const everything = Object.keys(kitchenSink.inputs);
const but = (...keys: readonly string[]) => everything.filter((key) => !keys.includes(key));
/** Answers of the form that apply, each cell and month as one. */
const all = everything.flatMap((key) => (key === 'lossPercent' ? [] : pathsOf(kitchenSink.inputs, start, key))).length;

describe('whose numbers an answer stands on', () => {
  it('says example until something is changed', () => {
    expect(stamp([])).toEqual({ is: 'example', text: 'Example, not your numbers', short: 'example' });
  });
  it('counts every answer, folded or not, and each cell of a table', () => {
    expect(stamp(['rainIn']).text).toBe(`1 of ${all} yours; the rest from the example`);
    expect(stamp(['rainIn', 'herd.0.countHead']).text).toBe(`2 of ${all} yours; the rest from the example`);
    expect(stamp(['rainIn', 'herd.0.countHead']).short).toBe(`2 of ${all} yours`);
    expect(stamp(['fieldAc']).text).toBe(`1 of ${all} yours; the rest from the example`);
    // Rows came or went: the table is one's own. Its row of two has four cells that apply, and the bull is not asked whether it nurses.
    expect(stamp(['herd']).text).toBe(`9 of ${all} yours; the rest from the example`);
    expect(stamp(['lossPercent']).text, 'hidden').toBe('Example, not your numbers');
  });
  it('says once all that stand open are one’s own how many answers are not', () => {
    expect(stamp(asked)).toEqual({ is: 'partly', text: `Your answers; ${all - 4} more from the example`, short: `${all - 4} not yours` });
    expect(stamp(everything)).toEqual({ is: 'yours', text: 'Your numbers', short: '' });
  });
  it('tells figures of a link as such, and what the link did not name', () => {
    expect(stamp([], everything).text).toBe('Figures of a link');
    expect(stamp([], but('rainIn')).text).toBe('Figures of a link; 1 from the example');
    expect(stamp(['rainIn'], everything).text).toBe(`1 of ${all} yours; the rest from the link`);
    expect(stamp(['rainIn'], but('rainIn')).text).toBe(`1 of ${all} yours; the rest from the link`);
    expect(stamp(['rainIn'], but('fieldAc')).text).toBe(`1 of ${all} yours; the rest from link and example`);
    expect(stamp(['rainIn'], ['rainIn']).text).toBe(`1 of ${all} yours; the rest from the example`);
  });
  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))('is true of any one answer: %s', (_, calculator) => {
    const { inputs } = calculator;
    const texts = startTexts(inputs);
    const paths = Object.entries(inputs).flatMap(([key, input]) => (isShown(input, texts) ? pathsOf(inputs, texts, key) : []));
    const of = (touched: readonly string[]) => stampOf(calculator, texts, { touched: new Set(touched), linked: nobody, waiting: 0 });
    for (const path of paths)
      expect(of([path]).text, path).toMatch(
        new RegExp(`^(?:1 of ${paths.length} yours; the rest|Your answers; ${paths.length - 1} more) from the example$`),
      );
    expect(of(paths).text).toBe('Your numbers');
    // The line at the bottom of a phone has room for so much beside its figure.
    expect(of(paths.slice(1)).short.length).toBeLessThanOrEqual('waits for 17 answers'.length);
  });
  it('waits for wrong and missing answers', () => {
    expect(stamp(['rainIn'], [], 1).text).toBe('Waits for one answer');
    expect(stamp([], [], 6).text).toBe('Waits for 6 answers');
  });
});

describe('whose numbers two sides stand on', () => {
  const both = (touched: Iterable<string>, linked: Iterable<string> = [], waiting = 0) => {
    const own = new Set(touched);
    const theirs = theirAnswers(kitchenSink, start, ['counting', 'herd', 'lossPercent'], own);
    return stampOf(kitchenSink, start, { touched: own, linked: new Set(linked), waiting, theirs });
  };
  const side = ['counting', ...pathsOf(kitchenSink.inputs, start, 'herd').filter((path) => !path.endsWith('readyDay'))];
  const that = side.map((path) => `that.${path}`);
  const count = all + side.length;
  it('says example until something is changed, and link where a link brought them', () => {
    expect(both([]).is).toBe('example');
    expect(both([], everything)).toEqual({ is: 'link', text: 'Figures of a link', short: 'from a link' });
    expect(both([], but('rainIn')).text).toBe('Figures of a link; 1 from the example');
    expect(both(everything, [], 2).text).toBe('Waits for 2 answers');
  });
  it('counts what that side answers for itself beside all of this', () => {
    expect(both(['rainIn']).text).toBe(`1 of ${count} yours; the rest from the example`);
    expect(both(['that.counting', 'that.herd.0.countHead'], everything).text).toBe(`2 of ${count} yours; the rest from the link`);
    expect(both(['counting', 'that.herd.0.countHead']).text, 'a cell is not its table').toBe(`2 of ${count} yours; the rest from the example`);
  });
  it('takes neither side for the other: the first is still the example’s, or the second came along', () => {
    expect(both(that).text).toBe(`${side.length} of ${count} yours; the rest from the example`);
    expect(both(asked).text, 'all of this that stands open').toBe(`4 of ${count} yours; the rest from the example`);
    expect(both(everything).text).toBe(`${all} of ${count} yours; the rest from the example`);
  });
  it('calls them one’s own once both are', () => {
    expect(both([...asked, ...that]).text).toBe(`Your answers; ${all - 4} more from the example`);
    expect(both([...everything, ...that])).toEqual({ is: 'yours', text: 'Your numbers', short: '' });
    expect(both([...everything, 'that.herd', 'that.counting']).is).toBe('yours');
  });
});

describe('what somebody touched', () => {
  const herd = start['herd'] ?? '';
  it('names a cell, a month, an answer by its path', () => {
    const rows = Array.isArray(herd) ? herd.map((row, at) => (at === 1 && typeof row === 'object' ? { ...row, countHead: '3' } : row)) : herd;
    expect([...touchedBy(nobody, start, { ...start, herd: rows, rainIn: '9' })]).toEqual(['rainIn', 'herd.1.countHead']);
  });
  it('keeps it one’s own when it is set back to what the example has', () => {
    const once = touchedBy(nobody, start, { ...start, rainIn: '9' });
    expect([...touchedBy(once, { ...start, rainIn: '9' }, start)]).toEqual(['rainIn']);
  });
  it('takes a table whose rows came or went as one’s own', () => {
    expect([...touchedBy(nobody, start, { ...start, herd: [] })]).toEqual(['herd']);
  });
});
