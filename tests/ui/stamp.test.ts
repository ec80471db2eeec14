import { describe, expect, it } from 'vitest';
import { startTexts, type Texts } from '../../calculators/kit/state.ts';
import { stampOf } from '../../calculators/ui/stamp.ts';
import { touchedBy } from '../../calculators/ui/touched.ts';
import kitchenSink from '../kit/kitchenSink.ts';

const start = startTexts(kitchenSink.inputs);
const nobody: ReadonlySet<string> = new Set();
const stamp = (touched: Iterable<string>, linked: Iterable<string> = [], waiting = 0, texts: Texts = start) =>
  stampOf(kitchenSink, texts, { touched: new Set(touched), linked: new Set(linked), waiting });
const asked = ['rainIn', 'herd.0.countHead', 'herd.1.countHead', 'startDay'];
const everything = Object.keys(kitchenSink.inputs);

describe('whose numbers an answer stands on', () => {
  it('says example until something is changed', () => {
    expect(stamp([])).toEqual({ is: 'example', text: 'Example, not your numbers', short: 'example' });
  });
  it('counts the questions that stand open; a column is one’s own when each of its rows is', () => {
    expect(stamp(['rainIn']).text).toBe('1 of 3 yours; the rest from the example');
    expect(stamp(['rainIn', 'herd.0.countHead']).text).toBe('1 of 3 yours; the rest from the example');
    expect(stamp(['rainIn', 'herd.0.countHead', 'herd.1.countHead']).short).toBe('2 of 3 yours');
    expect(stamp(['fieldAc']).text).toBe('0 of 3 yours; the rest from the example');
  });
  it('then counts what the groups still hold of the example', () => {
    expect(stamp(asked).text).toMatch(/^Your answers; \d+ more from the example$/);
    expect(stamp([...asked, ...everything])).toEqual({ is: 'yours', text: 'Your numbers', short: '' });
  });
  it('tells figures of a link as such, and what the link did not name', () => {
    expect(stamp([], everything).text).toBe('Figures of a link');
    expect(
      stamp(
        [],
        everything.filter((key) => key !== 'rainIn'),
      ).text,
    ).toBe('Figures of a link; 1 from the example');
    expect(stamp(['rainIn'], everything).text).toBe('1 of 3 yours; the rest from the link');
  });
  it('waits for wrong and missing answers', () => {
    expect(stamp(['rainIn'], [], 1).text).toBe('Waits for one answer');
    expect(stamp([], [], 6).text).toBe('Waits for 6 answers');
  });
});

describe('whose numbers two sides stand on', () => {
  const both = (touched: Iterable<string>, linked: Iterable<string> = []) =>
    stampOf(kitchenSink, start, { touched: new Set(touched), linked: new Set(linked), waiting: 0, unlike: ['counting', 'herd'] });
  it('says example until something is changed, and link where a link brought them', () => {
    expect(both([]).is).toBe('example');
    expect(both([], everything)).toEqual({ is: 'link', text: 'Figures of a link', short: 'from a link' });
    expect(
      both(
        [],
        everything.filter((key) => key !== 'rainIn'),
      ).text,
    ).toBe('Figures of a link; 1 from the example');
  });
  it('then counts only what differs, typed on either side', () => {
    expect(both(['rainIn']).text).toBe('0 of 2 differences yours');
    expect(both(['that.counting'], everything).text).toBe('1 of 2 differences yours');
    expect(both(['counting', 'that.herd.0.countHead']).text).toBe('Your two ways');
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
