import { describe, expect, it } from 'vitest';
import { cleared } from '../../calculators/kit/cleared.ts';
import { choice, number, rows, yesNo } from '../../calculators/kit/inputs.ts';
import { record } from '../../calculators/kit/record/record.ts';
import { askedNow, layoutOf } from '../../calculators/kit/screen.ts';
import { startTexts, type Text } from '../../calculators/kit/state.ts';
import { summaryOf, tellInput } from '../../calculators/kit/summary.ts';

const inputs = {
  areaAc: number('Area', 'A', 'ac', [0, 1000], 40),
  way: choice('Way', 'list', { options: { list: 'From the list', own: { label: 'My own', short: 'own number' } } }),
  ownLb: number('Own', 'o', 'lb', [0, 9000], 300, { shownWhen: { way: 'own' } }),
  listLb: number('Listed', 'l', 'lb', [0, 9000], 250, { shownWhen: { way: 'list' } }),
  isCold: yesNo('Count the cold', false, { short: ['cold counted', 'cold not counted'] }),
  counting: choice('Counting', 'a', { options: { a: 'By a', b: 'By b' }, convention: true }),
  herd: rows({
    label: 'The herd',
    rowName: 'kind of stock',
    each: '{#countHead} {stock} of {weightLb}',
    maxRows: 8,
    columns: {
      stock: choice('Kind', 'cow', {
        options: { cow: { label: 'Beef cow', short: ['cow', 'cows'] }, bull: { label: 'Bull', short: ['bull', 'bulls'] } },
      }),
      countHead: number('Head', 'n', 'head', [1, 1000], 45, { whole: true, belongsTo: 'management' }),
      weightLb: number('Weight', 'w', 'lb', [20, 3000], 1250),
    },
    default: [
      { stock: 'cow', countHead: 45, weightLb: 1250 },
      { stock: 'bull', countHead: 1, weightLb: 1900 },
    ],
  }),
};
const texts = startTexts(inputs);
const layout = layoutOf(inputs, ['areaAc', ['listLb', 'ownLb'], 'herd'], [{ title: 'How', inputs: ['way'], summary: 'by {way}' }]);

describe('a record in a line', () => {
  const gauge = record({ label: 'Gauge', belongsTo: 'place', unit: 'in', min: 0, max: 40, maxRows: 400, default: '2026-03-01, 0.5' });
  const told = (text: string) => tellInput(gauge, text, {}, 'us');
  it('counts the days that were read of it, not its lines', () => {
    expect(told('day,rain (in)\n2026-03-01,0.5\n\n2026-03-02,0\n')).toBe('2 days');
    expect(told('2026-03-02,0.5 in')).toBe('1 day');
  });
  it('says so where there is none, where it is the stand-in, and where it cannot be read yet', () => {
    expect([told(''), told(gauge.default), told('I like cows')]).toEqual(['?', 'a stand-in record', 'not read yet']);
  });
});

describe('a group in a line', () => {
  it('tells stock as people say it: one bull, 45 cows', () => {
    expect(tellInput(inputs.herd, texts['herd'], texts, 'us')).toBe('45 cows of 1,250 lb, 1 bull of 1,900 lb');
  });
  it('counts the rows past the fourth', () => {
    const row = { stock: 'cow', countHead: '2', weightLb: '1000' };
    expect(tellInput(inputs.herd, Array(6).fill(row), texts, 'us')).toMatch(/^(?:2 cows of 1,000 lb, ){4}and 2 more$/);
  });
  it('drops what is not asked, with the comma before it', () => {
    const group = {
      title: 'G',
      inputs: ['areaAc', 'ownLb', 'listLb', 'isCold'],
      summary: '{areaAc}, {ownLb} a bale, {listLb} by the list, {isCold}',
    };
    expect(summaryOf(inputs, group, texts, 'us').text).toBe('40 ac, 250 lb by the list, cold not counted');
    expect(summaryOf(inputs, group, { ...texts, way: 'own', isCold: 'yes' }, 'us').text).toBe('40 ac, 300 lb a bale, cold counted');
  });
  it('tells in the reader’s units, and quotes what it cannot read', () => {
    const group = { title: 'G', inputs: ['areaAc'], summary: '{areaAc}' };
    expect(summaryOf(inputs, group, texts, 'si').text).toBe('16.2 ha');
    expect(summaryOf(inputs, group, { ...texts, areaAc: 'many' }, 'us').text).toBe('“many”');
  });
  it('names what is missing by its question', () => {
    const group = { title: 'G', inputs: ['areaAc', 'ownLb', 'listLb'], summary: '{areaAc}' };
    expect(summaryOf(inputs, group, { ...texts, areaAc: '', listLb: ' ' }, 'us').missing).toEqual(['Area', 'Listed']);
  });
  it('names what is missing of a table by the table while nothing is there, then by the cells of its rows', () => {
    const group = { title: 'G', inputs: ['herd'], summary: '{herd}' };
    const told = (herd: Text) => summaryOf(inputs, group, { ...texts, herd }, 'us');
    const blank = { stock: '', countHead: ' ', weightLb: '' };
    expect([told([]).missing, told([blank]).missing]).toEqual([['The herd'], ['The herd']]);
    expect(told([{ ...blank, countHead: '2' }])).toEqual({ text: 'Still wanted: Kind, Weight', missing: [] });
    expect(told(texts['herd'] ?? '').text).not.toContain('wanted');
  });
});

describe('what stands open', () => {
  it('puts every input nobody named into a last group that says how many', () => {
    expect(layout.groups.map(({ title, inputs: keys }) => [title, keys])).toEqual([
      ['How', ['way']],
      ['2 more', ['isCold', 'counting']],
    ]);
  });
  it('shows of two that stand for each other the one that is asked', () => {
    expect(askedNow(inputs, layout, texts)).toEqual(['areaAc', 'listLb', 'herd']);
    expect(askedNow(inputs, layout, { ...texts, way: 'own' })).toEqual(['areaAc', 'ownLb', 'herd']);
  });
  it('puts the choice that hides a question in its place where nothing else stands for it', () => {
    const alone = layoutOf(inputs, ['areaAc', 'listLb'], []);
    expect(askedNow(inputs, alone, { ...texts, way: 'own' })).toEqual(['areaAc', 'way']);
  });
});

it('clears to an empty form of one’s own: figures and kinds go, ways of counting and ways of answering stay', () => {
  expect(cleared(inputs, texts)).toEqual({
    areaAc: '',
    way: 'list',
    ownLb: '',
    listLb: '',
    isCold: '',
    counting: 'a',
    herd: [{ stock: '', countHead: '', weightLb: '' }],
  });
  expect(cleared({ crownLb: number('Crowns', 'c', 'lb', [0, 600], 150, { isSetting: true }) }, { crownLb: '150' }), 'a setting').toEqual({
    crownLb: '150',
  });
});
it('clears a choice that opens questions where another answer would open the same: a feeder, a storage, a soil are facts', () => {
  const opens = {
    feeder: choice('Feeder', 'ring', { options: { ring: 'Ring', cone: 'Cone', known: 'I know what is wasted' } }),
    wastedPercent: number('Wasted', 'w', 'pct', [0, 90], 20, { shownWhen: { feeder: 'known' } }),
    storage: choice('Storage', 'ground', { options: { ground: 'On the ground', roof: 'Under a roof', none: 'None' } }),
    storedMonths: number('Months', 'm', 'd', [0, 24], 6, { shownWhen: { storage: ['ground', 'roof'] } }),
    ran: yesNo('Did it run?', true),
    ranS: number('After', 't', 's', [0, 900], 60, { shownWhen: { ran: 'yes' } }),
  };
  const start = startTexts(opens);
  expect(cleared(opens, start)).toEqual({ feeder: '', wastedPercent: '', storage: '', storedMonths: '', ran: 'yes', ranS: '' });
  expect(cleared(opens, { ...start, feeder: 'known', storage: 'none' })).toMatchObject({ feeder: 'known', storage: 'none' });
});
