import { describe, expect, it } from 'vitest';
import { expectWithin } from '../support/expectWithin.ts';
import { calc, ownFolder, tablesIn, wideBytes } from './calcHere.ts';

const folder = ownFolder();
const table = tablesIn(folder);

describe('one calculation', () => {
  // TR-55 (1986), table 2-1: 4 in of rain on curve number 70 leave 1.33 in as runoff (seen in a transcription).
  const query = 'rain=4in&cover=own&curve-number=70';

  it('prints inputs as read, results with units and words, cautions, link and note', () => {
    const { out, err, status } = calc('storm-runoff', query);
    expect([err, status]).toEqual(['', 0]);
    const printed = JSON.parse(out);
    expect(printed.inputs.rain).toEqual({ value: 4, unit: 'in' });
    expectWithin(printed.results.runoffIn.value, 1.33, 5e-3);
    expect(printed.results.runoffIn).toMatchObject({ unit: 'in', text: '1.3 in' });
    expect(printed.note).toContain('4 in of rain');
    expect(printed.cautions.every((each: object) => 'say' in each && 'source' in each)).toBe(true);
    expect(printed.link).toMatch(/^\/calculators\/storm-runoff\/\?rain=4in&.*curve-number=70.*&v=\d+$/);
    expect(printed).not.toHaveProperty('that');
    const again = JSON.parse(calc('storm-runoff', printed.link.split('?')[1]).out);
    expect(again).toEqual(printed);
  });
  it('compares two managements: 4 in on 70 and on 90, 1.33 and 2.92 in by the same table', () => {
    const { results, that, differences } = JSON.parse(calc('storm-runoff', `${query}&that.curve-number=90`).out);
    expectWithin(results.runoffIn.value, 1.33, 5e-3);
    expectWithin(that.results.runoffIn.value, 2.92, 5e-3);
    expectWithin(differences.runoffIn.value, 2.92 - 1.33, 5e-2);
    expect(differences.runoffIn.unit).toBe('in');
  });
  it('refuses a query that is too long to be read', () => {
    expect(calc('storm-runoff', `rain=${'3'.repeat(4100)}`)).toMatchObject({ out: '', status: 2, err: expect.stringContaining('too long') });
  });
  it('takes a number that looks wrong and asks about it', () => {
    const { out, status } = calc('storm-runoff', 'rain=25in');
    expect(status).toBe(0);
    expect(JSON.parse(out).doubts).toEqual(['rain: Is 25 in right? Rain in the storm: seldom above 12 in. Look at the decimal point and the unit.']);
    expect(JSON.parse(calc('storm-runoff', query).out)).not.toHaveProperty('doubts');
  });
  it.each([
    ['rain=1,5', 'a comma here can mean two things'],
    ['rain=', 'is missing'],
    ['rain=lots', 'must be one number'],
    ['rain=3 lb', 'can’t be in “lb”'],
    ['rain=-3in', 'must be from'],
    ['cover=__proto__', 'choose one of the list. The list: '],
    ['grazing=hevy', 'choose one of the list. Did you mean “heavy”? The list: heavy, moderate, light, rested.\n'],
    [
      'ground=parts&parts.grazing=light,hevy',
      'parts.grazing, row 2: How it is grazed: choose one of the list. Did you mean “heavy”? The list: heavy,',
    ],
    ['ground=parts&parts.area=40ac,x', 'parts.area, row 2'],
    ['that.curve-number=400&that.cover=own', 'must be from'],
    ['rian=3', '“rian” is no input of storm-runoff. Did you mean “rain”?'],
    ['that.grazng=heavy', 'Did you mean “grazing”?'],
    ['that.rain=3in', '“that.rain” cannot differ'],
    ['rain=3&rain=4', 'Given more than once, only the last is used: rain.'],
    ['ground=parts&parts.area=', 'parts.area, row 1'],
    ['ground=parts&parts.area=40ac,', 'parts.area, row 2'],
  ])('%s: status 2 and the message of the form', (bad, message) => {
    const { out, err, status } = calc('storm-runoff', bad);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(message);
    expect(err, 'no stack').not.toMatch(/\n\s+at |file:\/\//);
  });
});

describe('a record from a file', () => {
  it('takes the place of the example, and says so where none is asked or none can be read', () => {
    const day = (index: number): string => new Date(Date.UTC(2010, 0, 1) + index * 86_400_000).toISOString().slice(0, 10);
    const path = table(
      'rain.csv',
      `date,rain\n${Array.from({ length: 10 * 365 + 3 }, (_, index) => `${day(index)},${index % 4 === 0 ? 0.3 : 0}`).join('\n')}\n`,
    );
    const { out, err, status } = calc('rain-record', 'until=2019-12-31', '--record', path);
    expect([err, status]).toEqual(['', 0]);
    const { inputs, cautions } = JSON.parse(out);
    expect(Object.values(inputs)).toContainEqual({ lines: 10 * 365 + 3, unit: 'in' });
    // Nobody has looked over what was understood, as on the page.
    expect(JSON.stringify(cautions)).toContain('look over what was understood');
    expect(calc('storm-runoff', '--record', path)).toMatchObject({
      out: '',
      status: 2,
      err: 'storm-runoff asks for no record, so --record cannot be used with it.\n',
    });
    expect(calc('rain-record', '--record', table('no.csv', 'nothing here\n'))).toMatchObject({ out: '', status: 2 });
    expect(calc('rain-record', '--record', '/no/such/rain.csv').err).toContain('/no/such/rain.csv');
  });
});

describe('a record that does not say all', () => {
  const days = (dayOf: (day: number) => string): string =>
    Array.from({ length: 12 }, (_, index) => `${dayOf(index + 1)},${(index * 13) % 60}`).join('\n');
  it.each([
    [
      'units.csv',
      `date,rain\n${days((day) => `2020-02-${day}`)}\n`,
      'Say it in the first line of the file.',
      '#= unit=mm   millimeters',
      '#= unit=mm\n',
    ],
    [
      'order.csv',
      `date,rain mm\n${days((day) => `3/${day}/2020`)}\n`,
      'in the first line of the file which one',
      '#= order=month-first   Mar 1, 2020',
      '#= order=month-first\n',
    ],
  ])('%s: what the form would ask below, with the line that answers it', (name, text, asked, line, first) => {
    const { out, err, status } = calc('rain-record', '--record', table(name, text));
    expect([out, status]).toEqual(['', 2]);
    expect(err).toContain(asked);
    expect(err.split('\n')).toContain(line);
    expect(err).not.toContain('below');
    expect(calc('rain-record', '--record', table(name, `${first}${text}`)).err).not.toContain('first line');
  });
  it('reads UTF-16 as the form does, and names a spreadsheet', () => {
    const text = `date,rain mm\n${days((day) => `2020-02-${day}`)}\n`;
    const [plain, wide] = [
      calc('rain-record', '--record', table('plain.csv', text)),
      calc('rain-record', '--record', table('wide.csv', wideBytes(text))),
    ];
    expect(wide).toEqual(plain);
    expect(calc('rain-record', '--record', table('packed.csv', 'PK\u0003\u0004'))).toMatchObject({
      out: '',
      status: 2,
      err: expect.stringContaining('is a spreadsheet'),
    });
  });
});

describe('the rest of the command', () => {
  it('lists every definition as data', () => {
    const { out, status } = calc('--list');
    expect(status).toBe(0);
    const list: readonly { readonly slug: string; readonly inputs: readonly Record<string, unknown>[]; readonly results: readonly unknown[] }[] =
      JSON.parse(out);
    const storm = list.find(({ slug }) => slug === 'storm-runoff');
    expect(storm?.inputs.find(({ name }) => name === 'rain')).toMatchObject({ kind: 'number', unit: 'in' });
    expect(storm?.inputs.find(({ name }) => name === 'soil-group')).toMatchObject({ kind: 'choice', default: 'b' });
    expect(storm?.results).toContainEqual(expect.objectContaining({ name: 'runoffIn', unit: 'in' }));
    for (const { inputs, results } of list) expect(Math.min(inputs.length, results.length)).toBeGreaterThan(0);
  });
  it('prints its usage when asked nothing', () => {
    const { out, status } = calc();
    expect(status).toBe(0);
    expect(out).toContain('--csv FILE');
  });
  it.each([
    [['no-such-thing'], 'storm-runoff'],
    [['storm-rnoff'], 'There is no calculator “storm-rnoff”. Did you mean “storm-runoff”?\n'],
    [['__proto__'], 'storm-runoff'],
    [['../kit'], 'There is no calculator'],
    [['storm-runoff', 'rain=3in', 'area=40ac'], 'between quotes'],
    [['--no-such-option'], '--no-such-option'],
    [['storm-runoff', '--csv', '/no/such/file.csv'], '/no/such/file.csv'],
  ])('%s: status 2 and one line', (args, message) => {
    const { err, status } = calc(...args);
    expect(status).toBe(2);
    expect(err).toContain(message);
    expect(err).not.toMatch(/\n\s+at /);
  });
});
