import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { csvParse } from 'd3-dsv';
import { afterAll, describe, expect, it } from 'vitest';
import { expectWithin } from '../support/expectWithin.ts';
import { root } from '../support/files.ts';

const folder = mkdtempSync(join(tmpdir(), 'calc-'));
afterAll(() => rmSync(folder, { recursive: true }));

function calc(...args: string[]): { readonly out: string; readonly err: string; readonly status: number | null } {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['calculators/command.ts', ...args], { cwd: root, encoding: 'utf8' });
  return { out: stdout, err: stderr, status };
}
const wideBytes = (text: string): Buffer => Buffer.from(`\ufeff${text}`, 'utf16le');
function table(name: string, text: string | Buffer): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

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

describe('a table of pastures', () => {
  it('runs row by row, carries other columns along, leaves out nothing that is not asked for', () => {
    const path = table('good.csv', '\ufeffpasture,rain,area,cover,curve-number\n"North, upper",4in,"1,200 ac",own,70\n\nBench,101.6 mm,40,own,90\n');
    const { out, err, status } = calc('storm-runoff', '--csv', path, '--carry', 'pasture');
    expect(status).toBe(0);
    expect(err.trim().split('\n'), 'what stands at a default, and nothing else').toEqual([
      expect.stringMatching(/^No column, so at its default wherever it counts: .*\bground \(one\)/),
    ]);
    expect(err, 'not asked for with a curve number of one’s own').not.toMatch(/ground-cover|grazing/);
    const [north, bench, ...more] = csvParse(out.trim());
    expect(more).toEqual([]);
    expect(north?.['pasture']).toBe('North, upper');
    expect(north?.['area']).toBe('1,200 ac');
    // TR-55 (1986), table 2-1, as above.
    expectWithin(Number(north?.['runoffIn (in)']), 1.33, 5e-3);
    expectWithin(Number(bench?.['runoffIn (in)']), 2.92, 5e-3);
  });
  it('works nothing out where a cell that is asked for is empty: the example’s count is not that place’s', () => {
    const rows = ['A,40,20,1,39', 'S,,,,', 'T, ,,,', 'U,1,1,1,', 'B,27,18,3,52', 'V,,1,1,1'];
    const { out, err, status } = calc(
      'cover-count',
      '--csv',
      table('empty.csv', `pasture,plant,litter,rock,bare\n${rows.join('\n')}\n`),
      '--carry',
      'pasture',
    );
    expect(status).toBe(0);
    const told = csvParse(out);
    expect(told.map((row) => [row['pasture'], row['coveredPercent (pct)'], row['stepsCount (count)'], row['condition']])).toEqual([
      ['A', '61', '100', 'Fair'],
      ['S', '', '', ''],
      ['T', '', '', ''],
      ['U', '', '', ''],
      ['B', '48', '100', expect.any(String)],
      ['V', '', '', ''],
    ]);
    expect(told[3]?.cautions).toBe('Not worked out, empty: bare');
    expect(err.split('\n')).toContain('Not worked out, for a cell that is asked for stands empty (plant, litter, rock, bare): rows 3-5, 7.');
  });
  it('does not miss a cell that the row does not ask for, also in a table inside a cell', () => {
    const text =
      'rain,ground,cover,curve-number,parts.area,parts.cover,parts.curve-number\n4in,one,own,70,,,\n4in,one,pasture,,,,\n4in,parts,,,10ac,own,70\n4in,parts,,,10ac,own,\n';
    const told = csvParse(calc('storm-runoff', '--csv', table('asked.csv', text)).out);
    expect(told.map(({ cautions }) => cautions?.replace(/^(?!Not).*/, ''))).toEqual(['', '', '', 'Not worked out, empty: parts.curve-number']);
    // TR-55 (1986), table 2-1, as above.
    for (const at of [0, 2]) expectWithin(Number(told[at]?.['runoffIn (in)']), 1.33, 5e-3);
  });
  it('gives the ends of a range and the cautions of the same calculation told alone', () => {
    const query = 'plant=4&litter=2&rock=0&bare=2';
    const [row] = csvParse(calc('cover-count', '--csv', table('ranges.csv', 'plant,litter,rock,bare\n4,2,0,2\n')).out);
    const alone: { readonly cautions: readonly { readonly lead: string }[] } = JSON.parse(calc('cover-count', query).out);
    expect(alone.cautions.length).toBeGreaterThan(1);
    expect(row?.cautions).toBe(alone.cautions.map(({ lead }) => lead).join(' / '));
    // Clopper and Pearson (1934): six of eight, 95 in 100, is 34.9 to 96.8 % (from memory of printed tables).
    expectWithin(Number(row?.['coveredLowPercent (pct)']), 34.9, 0.05);
    expectWithin(Number(row?.['coveredHighPercent (pct)']), 96.8, 0.05);
  });
  it('reads UTF-16 that is marked as such', () => {
    const text = 'pasture,rain\nCañada,4in\n';
    const [wide, plain] = [table('wide.csv', wideBytes(text)), table('narrow.csv', text)].map((path) =>
      calc('storm-runoff', '--csv', path, '--carry', 'pasture'),
    );
    expect(wide).toEqual(plain);
    expect(csvParse(wide?.out ?? '')[0]?.['pasture']).toBe('Cañada');
  });
  it('asks about numbers that look wrong, about each of the first and then how many more', () => {
    const { err, status } = calc('storm-runoff', '--csv', table('doubts.csv', `rain\n${'25in\n'.repeat(8)}`));
    expect(status).toBe(0);
    const lines = err.split('\n');
    expect(lines[0]).toBe('Row 2, rain: Is 25 in right? Rain in the storm: seldom above 12 in. Look at the decimal point and the unit.');
    expect(lines.filter((line) => line.includes('Is 25 in right?'))).toHaveLength(5);
    expect(lines[5]).toBe('And 3 more numbers that look wrong.');
  });
  it('takes a table inside a cell', () => {
    const path = table('parts.csv', 'rain,ground,parts.area,parts.cover,parts.curve-number\n4in,parts,"10ac,10ac","own,own","70,90"\n');
    const [row] = csvParse(calc('storm-runoff', '--csv', path).out.trim());
    // The mean of the two cells of the table, acre for acre.
    expectWithin(Number(row?.['runoffIn (in)']), (1.33 + 2.92) / 2, 5e-3);
  });
  it.each([
    ['rain\n3in\nlots\n', 'Row 3, rain'],
    ['rain,Area\n3in,40ac\n', '“Area” is no input of storm-runoff. Did you mean “area”?'],
    ['rain,area (ac)\n3in,40\n', '“area (ac)” is no input of storm-runoff. Did you mean “area”?'],
    ['rain,ground_cover\n3in,40\n', 'Did you mean “ground-cover”?'],
    ['rain,groundCover\n3in,40\n', 'Did you mean “ground-cover”?'],
    ['rain,grzing\n3in,heavy\n', 'Did you mean “grazing”?'],
    ['rain,pasture\n3in,North\n', 'say --carry "pasture"'],
    ['', 'is empty'],
    [`rain,area\n3in,"${'4'.repeat(1_100_000)}`, 'Row 2 is longer than 1 MB'],
    ['pasture,owner\na,b\n', 'No column'],
    ['rain,rain\n1in,2in\n', 'Two columns'],
    ['rain,area\n1in,40\n1,5,40\n', 'Row 3 has 3 cells, the header has 2. A decimal comma?'],
    ['rain,area\n1in,40\n5,40,\n', 'Row 3 has 3 cells, the header has 2.'],
    ['rain,area\n1in\n', 'Row 2 has 1 cell, the header has 2.'],
    ['rain,area\n1in,40\n1in,"40\n2in,40\n3in,40\n', 'Row 3: a quote opens a cell there, and none closes it.'],
    ['rain,area\n1in,40\n"1in,40\n"2in",40\n', 'Row 3: a cell goes on behind its closing quote.'],
    ['area;rain\n40;1,5\n', 'Semicolons part the cells of this table.'],
    ['"area";"rain"\n40;1,5\n', 'Semicolons part the cells of this table.'],
    ['area\train\n40\t1.5\n', 'Tabs part the cells of this table.'],
    [Buffer.from('rain,area\n1in,40\n1in,Ca\xf1ada\n', 'latin1'), 'Row 3, “Ca\ufffdada”: a letter there is not in UTF-8.'],
    [Buffer.from('rain\n1in\n1in\xc3', 'latin1'), 'Row 3, “1in\ufffd”'],
    [wideBytes('rain\n1in\n').subarray(2), 'is no text in UTF-8'],
    ['PK\u0003\u0004', 'is a spreadsheet'],
  ])('%j: status 2 and where it is', (text, message) => {
    const { out, err, status } = calc('storm-runoff', '--csv', table('bad.csv', text));
    expect([out, status]).toEqual(['', 2]);
    expect(err).toContain(message);
    expect(err, 'no stack').not.toMatch(/\n\s+at |file:\/\//);
  });
  it('runs some rows alone, so that parts put together are the whole', () => {
    const path = table('rows.csv', `rain\n${Array.from({ length: 3000 }, (_, index) => `${1 + (index % 50) / 10}in`).join('\n')}\n`);
    const part = (rows: string): readonly string[] => calc('rain-on-ground', '--csv', path, '--rows', rows).out.trim().split('\n');
    const whole = calc('rain-on-ground', '--csv', path).out.trim().split('\n');
    const [header, ...first] = part('2-2000');
    expect([header, ...first, ...part('2001-9000').slice(1)]).toEqual(whole);
    expect(whole).toHaveLength(3001);
    for (const bad of ['1-5', '5-4', '7', 'x-y', '9000-9001'])
      expect(calc('rain-on-ground', '--csv', path, '--rows', bad)).toMatchObject({ out: '', status: 2 });
    expect(calc('rain-on-ground', 'rain=1in', '--rows', '2-3').status).toBe(2);
  });
  it.each([
    [['--carry', 'pastrue'], 'no column “pastrue”'],
    [['--carry', 'rain'], '“rain” is an input'],
  ])('%j: status 2 and why', (args, message) => {
    const { err, status } = calc('storm-runoff', '--csv', table('carried.csv', 'pasture,rain\nNorth,3in\n'), ...args);
    expect(status).toBe(2);
    expect(err).toContain(message);
  });

  // What starts so is taken for a formula by spreadsheets (OWASP, "CSV Injection": = + - @ tab, carriage return; from memory).
  it('gives back no cell that a spreadsheet would run, and leaves negative numbers alone', () => {
    const cells = ['=1+2', '+1+2', '-1+2', '@SUM(A1)', '\t=1', '\r=1', ' =1', '-5', '-0.25', '-1e-7', 'North -5', "it's"];
    const rows = cells.map((cell) => `"${cell}",3in`).join('\n');
    const { out, status } = calc('storm-runoff', '--csv', table('formula.csv', `note,rain\n${rows}\n`), '--carry', 'note');
    expect(status).toBe(0);
    expect(csvParse(out.trim()).map(({ note }) => note)).toEqual([
      ...cells.slice(0, 7).map((cell) => `'${cell}`),
      '-5',
      '-0.25',
      '-1e-7',
      'North -5',
      "it's",
    ]);
  });
  it('reads a file in pieces as it reads it whole: quotes, line ends and long cells fall between them', () => {
    const long = 'x'.repeat(50_000);
    const notes = ['plain', 'with "" quotes', 'two\r\nlines', '3"" of rain, or so', long, 'a\rb', '', long];
    const rows = Array.from({ length: 40 }, (_, index) => `"${notes[index % notes.length]}",${1 + (index % 5)}in`).join('\r\n');
    const text = `note,rain\r\n${rows}`;
    const { out, status } = calc('storm-runoff', '--csv', table('pieces.csv', text), '--carry', 'note');
    expect(status).toBe(0);
    const [expected, found] = [csvParse(text), csvParse(out)];
    expect(found.map(({ note, rain }) => [note, rain])).toEqual(expected.map(({ note, rain }) => [note, rain]));
  });
  it('ends quietly when nobody reads on', () => {
    const script = 'set -o pipefail; "$0" calculators/command.ts --list | head -n 1';
    const { stdout, stderr, status } = spawnSync('bash', ['-c', script, process.execPath], { cwd: root, encoding: 'utf8' });
    expect([stdout, stderr, status]).toEqual(['[\n', '', 0]);
  });
});
