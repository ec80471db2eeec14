import { describe, expect, it } from 'vitest';
import season from '../../calculators/catalog/season/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';
import { leavesRecord, linkName, toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { readForm, rowsIn, startTexts, type Text, type Texts, textIn } from '../../calculators/kit/state.ts';
import { expectWithin } from '../support/expectWithin.ts';
import kitchenSink from './kitchenSink.ts';

const open = (query: string) => fromLink(kitchenSink, query);
const first = (query: string): Texts => open(query).form.this;
const plain = (text: Text | undefined): string => textIn(text).replaceAll('\u00a0', '');
const column = (texts: Texts, key: string, name: string): readonly (string | undefined)[] =>
  rowsIn(texts[key]).map((row) => row[name]?.replaceAll('\u00a0', ''));
const link = (query: string): string => toLink(kitchenSink, open(query).form);

describe('names', () => {
  it.each([
    ['rainIn', 'rain'],
    ['fieldAc', 'field'],
    ['isShaded', 'shaded'],
    ['startDay', 'start'],
    ['lossPercent', 'loss'],
    ['monthlyIn', 'monthly'],
    ['counting', 'counting'],
  ])('%s goes as %s', (key, name) => {
    const input = kitchenSink.inputs[key];
    expect(input && linkName(key, input)).toBe(name);
  });
  it('does not leave an empty name', () => {
    const [rain, started] = [kitchenSink.inputs['rainIn'], kitchenSink.inputs['startDay']];
    expect(rain && linkName('In', rain)).toBe('in');
    expect(started && linkName('Day', started)).toBe('day');
  });
});

describe('what a link says', () => {
  it('is every input that shows, in order, the version last, no unit in a name', () => {
    expect(toLink(kitchenSink, { this: startTexts(kitchenSink.inputs), that: null })).toBe(
      'rain=3in&field=40ac&mean=59f&soil=loam&shaded=yes&start=2026-05-01&counting=multiply' +
        '&herd.stock=cow,bull&herd.count=45,2&herd.weight=1250lb,1900lb&herd.nursing=yes,&herd.ready=2026-06-01,2026-06-10' +
        '&shares.feed=100lb&monthly=1in,1in,2in,3in,4in,4in,3in,3in,2in,2in,1in,1in&soak=4min&held=long&bare=12&plant=8&v=2',
    );
  });
  it.each([
    ['rain=75 mm', 'rain=75mm'],
    ['rain=3 1/2 in', 'rain=3+1/2in'],
    ['rain=3"', 'rain=3in'],
    ['field=1,200', 'field=1200ac'],
    ['mean=-5c', 'mean=-5c'],
    ['soil=own&loss=25 %25', 'loss=25pct'],
    ['rain=0012.50', 'rain=0012.50in'],
    ['rain=a %26 b', 'rain=a+%26+b'],
    ['herd.weight=1,5', 'herd.weight=1lb,5lb'],
    ['herd.weight=big bull', 'herd.weight=big+bull'],
  ])('%s is written as %s', (typed, written) => {
    expect(`${link(typed)}&`).toContain(`${written}&`);
  });
  it('leaves out what does not apply, whole or in one row', () => {
    expect(link('soil=loam&loss=50pct')).not.toContain('loss');
    expect(link('shaded=no&shares.feed=5lb')).not.toContain('shares');
    expect(link('herd.stock=bull,cow&herd.nursing=yes,yes')).toContain('herd.nursing=,yes&');
  });
  it('never ends in punctuation, which mailers cut off', () => {
    for (const query of ['rain=3.', 'rain=what?', 'rain=)', '']) expect(link(query)).toMatch(/&v=2$/);
  });
  it('survives half a character', () => {
    const texts = { ...startTexts(kitchenSink.inputs), rainIn: `${'x'.repeat(59)}\u{1f33e}` };
    expect(() => toLink(kitchenSink, { this: texts, that: null })).not.toThrow();
  });
});

describe('what a link opens', () => {
  it('takes a blank cell of a table for blank', () => {
    const texts = first('herd.stock=+,bull&herd.count=45,+');
    expect(column(texts, 'herd', 'stock')).toEqual(['', 'bull']);
    expect(column(texts, 'herd', 'countHead')).toEqual(['45', '']);
  });
  it('takes a cell with nothing in it for blank where it is asked, and for its default where it is not', () => {
    const texts = first('herd.stock=cow,bull&herd.count=,3&herd.nursing=yes,');
    expect(column(texts, 'herd', 'countHead')).toEqual(['', '3']);
    expect(column(texts, 'herd', 'isNursing')).toEqual(['yes', column(startTexts(kitchenSink.inputs), 'herd', 'isNursing')[1]]);
    expect(column(first('herd.count='), 'herd', 'countHead')).toEqual(['']);
    expect(link('herd.count=')).toContain('herd.count=+&');
  });
  it('tells of a name that is given twice', () => {
    expect(plain(first('rain=3in&rain=4in')['rainIn'])).toBe('4in');
    expect(open('rain=3in&rain=4in').notices).toEqual(['Given more than once, only the last is used: rain.']);
  });
  it('takes former names of inputs and of options', () => {
    expect(plain(first('plot=12ac')['fieldAc'])).toBe('12ac');
    expect(first('soil=heavy')['soil']).toBe('clay');
    expect(link('plot=12ac&soil=heavy')).toContain('field=12ac&mean=59f&soil=clay');
    expect(open('plot=12ac&soil=heavy').notices).toEqual([]);
  });
  it('gives a later input the value from before it existed, to links of that time only', () => {
    expect(first('rain=2in&v=1')['isShaded']).toBe('no');
    expect(first('rain=2in&v=2')['isShaded']).toBe('yes');
    expect(first('rain=2in')['isShaded']).toBe('yes');
    expect(first('rain=2in&shaded=yes&v=1')['isShaded']).toBe('yes');
  });
  it('tells an older link what changed, and a newer one that it is newer', () => {
    expect(open('v=1').notices).toEqual(['Since this link was written: shade is asked for.']);
    expect(open('v=2').notices).toEqual([]);
    expect(open('v=3').notices.join(' ')).toContain('newer edition');
    expect(plain(open('rain=2in&v=99').form.this['rainIn'])).toBe('2in');
    for (const odd of ['v=', 'v=x', 'v=-1', 'v=1.5', 'v=__proto__']) expect(first(odd)).toEqual(first(''));
  });
  it('keeps the second management to what management can change', () => {
    const { form, notices } = open('rain=2in&counting=multiply&that.counting=divide&that.rain=9in');
    expect(form.that?.['counting']).toBe('divide');
    expect(plain(form.that?.['rainIn'])).toBe('2in');
    expect(notices.join(' ')).toContain('that.rain');
  });
  it('writes only what differs, and says so when nothing does', () => {
    expect(link('that.counting=divide')).toContain('&that.counting=divide&v=2');
    expect(link('that.counting=divide').match(/that\./g)).toHaveLength(1);
    expect(link('that=same')).toContain('&that=same&v=2');
    expect(open('that=same').form.that).toEqual(open('').form.this);
    expect(open('rain=2in').form.that).toBeNull();
  });
  it('gives the second management the same rows where the place decides them', () => {
    const { form, notices } = open('herd.stock=cow,bull,own&herd.count=10,1,5&that.herd.count=8,1,5');
    expect(form.that && column(form.that, 'herd', 'countHead')).toEqual(['8', '1', '5']);
    expect(form.that && column(form.that, 'herd', 'stock')).toEqual(['cow', 'bull', 'own']);
    expect(notices).toEqual([]);
    const longer = open('herd.count=10,1&that.herd.count=8,1,5');
    expect(longer.form.that && rowsIn(longer.form.that['herd'])).toHaveLength(2);
    expect(longer.notices).toHaveLength(1);
  });
  it('lets a table of management alone have rows of its own', () => {
    const { form } = open('shares.feed=1lb,2lb&that.shares.feed=3lb');
    expect(form.that && column(form.that, 'shares', 'feedLb')).toEqual(['3lb']);
    expect(column(form.this, 'shares', 'feedLb')).toEqual(['1lb', '2lb']);
  });
  it('fills ragged lists with the default and says so; no more rows than fit', () => {
    const ragged = open('herd.count=1,2,3&herd.weight=500lb');
    expect(column(ragged.form.this, 'herd', 'weightLb')).toEqual(['500lb', '1200lb', '1200lb']);
    expect(ragged.notices.join(' ')).toContain('differ in length');
    const many = open(`shares.feed=${Array(9).fill('1lb').join(',')}`);
    expect(rowsIn(many.form.this['shares'])).toHaveLength(3);
    expect(many.notices.join(' ')).toContain('3 fit');
  });
  it('reads twelve months, and tells when there are more or fewer', () => {
    const months = '1in,2in,3in,4in,5in,6in,7in,8in,9in,10in,11in,300mm';
    const { form, notices } = open(`monthly=${months}`);
    expect(notices).toEqual([]);
    expect(readForm(kitchenSink.inputs, form.this).values['monthlyIn']).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 11.811023622047]);
    expect(link(`monthly=${months}`)).toContain(`monthly=${months}&`);
    expect(open('monthly=1in,2in').notices.join(' ')).toContain('2 months');
    expect(readForm(kitchenSink.inputs, first('monthly=1in,2in')).problems.map(({ at }) => at)).toContain('monthlyIn.11');
  });
  it('never carries a record', () => {
    expect(link('gauge=2026-01-01')).not.toContain('gauge');
    expect(open('gauge=2026-01-01').notices.join(' ')).toContain('gauge');
  });
  it('opens a stored link to the same result for ever', () => {
    // By hand: 2.5 in, clay keeps 65 of 100, so 1.625 in.
    expectWithin(Number(runQuery(kitchenSink, 'rain=2+1/2in&plot=40ac&soil=heavy&v=1').computed['keptIn']), 1.625, 5e-13);
    expect(() => runQuery(kitchenSink, 'rain=1,5')).toThrow('kitchen-sink, rainIn: Rain: a comma');
  });
});

it('leaves a record behind where one is asked for, and only there', () => {
  expect(leavesRecord(kitchenSink.inputs, startTexts(kitchenSink.inputs))).toBe(true);
  const [madeUp, own] = ['made-up', 'record'].map((weatherFrom) => ({ ...startTexts(season.inputs), weatherFrom }));
  expect([madeUp, own].map((texts) => texts && leavesRecord(season.inputs, texts))).toEqual([false, true]);
});
