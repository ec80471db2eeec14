import { spawnSync } from 'node:child_process';
import { csvParse } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../support/expectWithin.ts';
import { root } from '../support/files.ts';
import { calc, ownFolder, tablesIn, wideBytes } from './calcHere.ts';

const folder = ownFolder();
const table = tablesIn(folder);

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
