import { describe, expect, it } from 'vitest';
import { defineCases, resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { months, number } from '../../calculators/kit/inputs.ts';
import { readCell, readMonth } from '../../calculators/kit/read.ts';
import { record } from '../../calculators/kit/record/record.ts';
import { canCompare, changeSystem, isShown, readForm, rowsIn, startTexts, type Texts, withMoved, withPlaceOf } from '../../calculators/kit/state.ts';
import { failing } from '../../calculators/math/checks.ts';
import kitchenSink from './kitchenSink.ts';

const { inputs } = kitchenSink;
const start = startTexts(inputs);
const problemsOf = (change: Texts) => readForm(inputs, { ...start, ...change }).problems;
const herd = (cells: Readonly<Record<string, string>>) => ({
  stock: 'cow',
  countHead: '1',
  weightLb: '1200',
  isNursing: 'yes',
  readyDay: '2026-06-01',
  ...cells,
});

describe('reading a form', () => {
  it('finds nothing wrong with the defaults, in either system', () => {
    expect(problemsOf({})).toEqual([]);
    expect(readForm(inputs, startTexts(inputs, 'si'), 'si').problems).toEqual([]);
  });
  it('gives a hidden input its default, whatever stands in it', () => {
    const { values, problems } = readForm(inputs, {
      ...start,
      soil: 'loam',
      lossPercent: 'rubbish',
      isShaded: 'no',
      shares: [{ feedLb: 'rubbish' }],
    });
    expect(problems).toEqual([]);
    expect(values['lossPercent']).toBe(20);
    expect(values['shares']).toEqual([{ feedLb: 100 }]);
  });
  it('hides one cell of one row', () => {
    expect(problemsOf({ herd: [herd({ stock: 'bull', isNursing: 'perhaps' })] })).toEqual([]);
    expect(problemsOf({ herd: [herd({}), herd({ isNursing: 'perhaps' })] }).map(({ at }) => at)).toEqual(['herd.1.isNursing']);
  });
  it.each<[Texts, string, string]>([
    [{ rainIn: '' }, 'rainIn', 'Rain is missing. Type a number from 0.01 to 40 in.'],
    [{ rainIn: '41' }, 'rainIn', 'Rain must be from 0.01 to 40 in. This is 41.'],
    [{ rainIn: '1100 mm' }, 'rainIn', 'Rain must be from 0.01 to 40 in. This is 43.31.'],
    [{ rainIn: '1,5' }, 'rainIn', 'Rain: a comma here can mean two things. Write 1.5, if that is meant.'],
    [{ rainIn: '1,2,3' }, 'rainIn', 'Rain: a comma here can mean two things. Write 123, if that is meant.'],
    [{ rainIn: '3-4\u00a0in' }, 'rainIn', 'Rain must be one number, such as 3. It can be from 0.01 to 40 in.'],
    [{ rainIn: 'much' }, 'rainIn', 'Rain must be one number, such as 3. It can be from 0.01 to 40 in.'],
    [{ rainIn: '3 lb' }, 'rainIn', 'Rain can’t be in “lb”. Use inches.'],
    [{ soil: 'mud' }, 'soil', 'Soil: choose one of the list.'],
    [{ isShaded: 'true' }, 'isShaded', 'Shaded: answer yes or no.'],
    [{ startDay: '2026-02-30' }, 'startDay', 'First day must be a day of the calendar, such as 2026-11-01.'],
    [{ herd: [] }, 'herd', 'The herd: add at least one kind of stock.'],
    [{ herd: Array.from({ length: 13 }, () => herd({})) }, 'herd', 'The herd: at most 12 fit here.'],
    [{ herd: [herd({ countHead: '2.5' })] }, 'herd.0.countHead', 'Number must be a whole number, such as 3.'],
    [{ herd: [herd({ countHead: '3 lb' })] }, 'herd.0.countHead', 'Number can’t be in “lb”. Use head.'],
    [{ gauge: '2026-03-01, 0.5\n2026-03-02, 0.1\nMarch, 1' }, 'gauge', 'Gauge, line 3: “March” is not a day such as 2026-03-02.'],
    [{ gauge: '2026-03-01, wet' }, 'gauge', 'Gauge, line 1: “wet” is no amount of rain. Write a number, such as 0.45.'],
  ])('says what is wrong and what would be right: %j', (change, at, say) => {
    expect(problemsOf(change)).toEqual([{ at, say }]);
  });
  it('tells limits in the units of the reader', () => {
    const { problems } = readForm(inputs, { ...start, rainIn: '2000 mm', meanF: 'warm' }, 'si');
    expect(problems.map(({ say }) => say)).toEqual([
      'Rain must be from 0.254 to 1,016 mm. This is 2,000.',
      'Mean temperature must be one number, such as 15. It can be from -40 to 48.88 °C.',
    ]);
  });
  it('takes a limit that was typed in the other units', () => {
    expect(problemsOf({ rainIn: '1016 mm' })).toEqual([]);
    expect(problemsOf({ rainIn: '0.254 mm' })).toEqual([]);
    expect(problemsOf({ rainIn: '1016.1 mm' })).toHaveLength(1);
  });
  it('tells limits that it takes, and a number past them as past them', () => {
    const area = number('Area', 'A', 'ac', [0.1, 100_000], 40);
    const told = readCell(area, '40470 ha', 'si');
    // An acre is 0.40468564224 ha (NIST SP 811): 100,000 are 40,468.6 ha.
    expect(told).toEqual({ problem: 'Area must be from 0.04047 to 40,460 ha. This is 40,470.' });
    for (const limit of ['0.04047 ha', '40460 ha']) expect(readCell(area, limit, 'si')).toHaveProperty('value');
    expect(readCell(number('Rain', 'P', 'in', [0.01, 40], 1), '1016.1 mm', 'si')).toEqual({
      problem: 'Rain must be from 0.254 to 1,016 mm. This is 1,016.1.',
    });
  });
  it('stops at a refusal, in a row too, before anything is computed', () => {
    const run = (change: Texts) => kitchenSink.run(readForm(inputs, { ...start, ...change }).values);
    expect(run({ herd: [herd({}), herd({ stock: 'bull', weightLb: '50' })] })).toEqual({
      refusals: [{ at: 'herd.1.weightLb', say: 'No bull is that light. Type 100 lb or more.' }],
    });
    expect(run({ startDay: '2029-01-01' })).toEqual({ refusals: [{ at: 'startDay', say: 'Too long before. Type a later day.' }] });
    expect(() => kitchenSink.run({ rainIn: 'three' })).toThrow(TypeError);
  });
});

describe('single readings', () => {
  it('knows option keys from what every object has', () => {
    for (const text of ['__proto__', 'constructor', 'toString', '']) {
      const soil = inputs['soil'];
      expect(soil?.kind === 'choice' && 'problem' in readCell(soil, text), text).toBe(true);
    }
  });
  it('names the month', () => {
    const rain = months('Rain', 'M', 'in', [0, 40], Array(12).fill(1));
    expect(readMonth(rain, 6, 'x', 'us')).toEqual({ problem: 'Rain, July must be one number, such as 1. It can be from 0 to 40 in.' });
  });
  it('reads a pasted record with commas, tabs or semicolons, and drops no line in silence', () => {
    const gauge = record({ label: 'Gauge', belongsTo: 'place', unit: 'in', min: 0, max: 40, maxRows: 3, default: '' });
    const lines = [
      { day: 0, amount: 0.5 },
      { day: 1, amount: 1 },
    ];
    for (const mark of [',', '\t', ';', ', ']) expect(gauge.read(`1970-01-01${mark}0.5\r\n\n1970-01-02${mark}25.4 mm\n`).lines).toEqual(lines);
    expect(gauge.read(Array(4).fill('1970-01-01,1').join('\n')).problem).toBe('Gauge has 4 lines; 3 is the most.');
  });
  it('does not let a tiny default out of its limits', () => {
    const share = number('Share', 's', 'pct', [0, 100], 0);
    expect(readCell(share, '-0.00000001')).toEqual({ value: 0 });
    expect(readCell(share, '-0.001')).toHaveProperty('problem');
  });
});

describe('the other unit system', () => {
  it('changes what nobody touched and leaves what was typed', () => {
    const typed: Texts = { ...start, rainIn: '3 1/2 in', fieldAc: '40', herd: [herd({ weightLb: '1000 lb' }), ...rowsIn(start['herd']).slice(1)] };
    const metric = changeSystem(inputs, typed, 'us', 'si');
    expect(metric['rainIn']).toBe('3 1/2 in');
    expect(metric['fieldAc']).toBe('40');
    expect(metric['meanF']).toBe('15\u00a0c');
    expect(rowsIn(metric['herd']).map(({ weightLb }) => weightLb)).toEqual(['1000 lb', '861.8\u00a0kg']);
    expect(metric['monthlyIn']).toHaveLength(12);
    expect(metric['monthlyIn']).toContain('25.4\u00a0mm');
    expect(changeSystem(inputs, metric, 'si', 'us')).toEqual(typed);
  });
});

describe('an example seen from another day', () => {
  it('moves what is still as the example had it, in tables as well, and nothing that was typed', () => {
    const other: Texts = { ...start, startDay: '2028-05-01', herd: rowsIn(start['herd']).map((row) => ({ ...row, readyDay: '2028-06-01' })) };
    const [first = {}, second = {}] = rowsIn(start['herd']);
    const typed: Texts = { ...start, rainIn: '9', herd: [{ ...first, readyDay: '2026-07-04' }, { ...second, countHead: '3' }, herd({})] };
    const moved = withMoved(typed, start, other);
    expect([moved['rainIn'], moved['startDay']]).toEqual(['9', '2028-05-01']);
    expect(rowsIn(moved['herd']).map(({ readyDay, countHead }) => [readyDay, countHead])).toEqual([
      ['2026-07-04', '45'],
      ['2028-06-01', '3'],
      ['2026-06-01', '1'],
    ]);
  });
});

describe('two managements on one place', () => {
  const own: Texts = { ...start, rainIn: '9 in', counting: 'divide', herd: [herd({ countHead: '7', readyDay: '2030-01-01' })], shares: [] };
  const shared = withPlaceOf(inputs, start, own);

  it('share rain and days, not choices', () => {
    expect(shared['rainIn']).toBe(start['rainIn']);
    expect(shared['counting']).toBe('divide');
    expect(shared['monthlyIn']).toEqual(start['monthlyIn']);
    expect(shared['shares']).toEqual([]);
  });
  it('share the rows of a table in which the place has a column', () => {
    const rows = rowsIn(shared['herd']);
    expect(rows.map(({ readyDay }) => readyDay)).toEqual(['2026-06-01', '2026-06-10']);
    expect(rows.map(({ countHead }) => countHead)).toEqual(['7', '2']);
  });
  it('need something that management decides', () => {
    expect(canCompare(inputs)).toBe(true);
    const { rainIn, fieldAc } = inputs;
    expect(rainIn && fieldAc && canCompare({ rainIn, fieldAc })).toBe(false);
  });
  it('show by words, yes and no', () => {
    expect(isShown({ shownWhen: { isShaded: 'yes', soil: ['own', 'clay'] } }, { isShaded: true, soil: 'clay' })).toBe(true);
    expect(isShown({ shownWhen: { isShaded: 'yes' } }, { isShaded: 'no' })).toBe(false);
    expect(isShown({}, {})).toBe(true);
  });
});

describe('worked examples as data', () => {
  const cases = (expected: string) =>
    defineCases(kitchenSink, [
      {
        name: 'ten inches, a fifth lost',
        query: 'rain=10in&soil=loam',
        expect: { keptIn: expected, 'lines.1.lineLb': '3,800' },
        source: 'our own',
        where: 'by hand',
        seen: 'computed',
      },
    ]).checks.map(failing);

  it('agree, or say by how much they do not', () => {
    expect(cases('8.00')).toEqual([undefined, undefined]);
    expect(cases('8.01')[0]).toContain('printed 8.01, ours 8');
  });
  it('find no result where there is none', () => {
    const outcome = runQuery(kitchenSink, '');
    expect(resultAt(outcome, 'verdict')).toBe('mild');
    for (const path of ['nothing', 'lines', 'lines.9.lineLb', '__proto__']) expect(() => resultAt(outcome, path), path).toThrow(RangeError);
  });
  it('tell the run as plain data: shown results, note, range, calendar', () => {
    const { shown, note, ranges, calendar, cautions } = runQuery(kitchenSink, 'rain=10in&mean=100f&shaded=no');
    expect(shown).toEqual(['keptIn', 'verdict', 'begins', 'lines']);
    expect(note).toBe('8.00 in kept of 10 in from May 1, 2026, too hot.');
    // The root of 8² + 10² is 12.806.
    expect(ranges['keptIn']).toBe('8.00 to 12.806 in in too hot weather');
    expect(calendar.map(({ title, text }) => `${title} ${text}`)).toEqual(['Ready 61875 lb', 'Ready 3800 lb']);
    expect(cautions).toEqual([{ lead: 'It is hot.', life: false, say: 'Shade and water.', source: 'common practice' }]);
  });
});
