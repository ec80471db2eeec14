import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, splitAnswers, withAnswers, withBody } from '../../calculators/kit/record/answers.ts';
import { record } from '../../calculators/kit/record/record.ts';
import { understandRecord } from '../../calculators/kit/record/understandRecord.ts';
import { dayOf, isoDay } from '../../calculators/units/printQuantity.ts';

const gauge = record({ label: 'Gauge', belongsTo: 'place', unit: 'in', min: 0, max: 40, maxRows: 60_000, default: '' });
const read = (text: string) => understandRecord(gauge, text);
/** Lines as `2026-03-02 0.45`, with the days they cover where it is more than one. */
const lines = (text: string): readonly string[] =>
  read(text).lines.map(({ day, amount, days = 1 }) => `${isoDay(day)} ${Number(amount.toFixed(3))}${days > 1 ? ` over ${days}` : ''}`);
const asks = (text: string) => Object.fromEntries(read(text).questions.map(({ name, answer }) => [name, answer]));

describe('the same three days, as people write them', () => {
  const expected = ['2024-01-30 0.5', '2024-01-31 0', '2024-02-01 1.25'];
  it.each([
    ['commas and a head', 'date,rain (in)\n2024-01-30,0.5\n2024-01-31,0\n2024-02-01,1.25'],
    ['semicolons and decimal commas', 'Date;Rain in\n30.01.2024;0,5\n31.01.2024;0\n01.02.2024;1,25'],
    ['tabs', '1/30/2024\t.5\n1/31/2024\t0\n2/1/2024\t1 1/4'],
    ['spaces', '2024-01-30 0.5\n2024-01-31 0.00\n2024-02-01 1.25'],
    ['year, month and day apart', 'year,month,day,prcp_in\n2024,1,30,0.5\n2024,1,31,0\n2024,2,1,1.25'],
    ['months by name', '30 Jan 2024,0.5\n31 January 2024,0\n1-Feb-2024,1.25'],
    ['day first', '30/1/2024,0.5\n31/1/2024,0\n1/2/2024,1.25'],
    ['without marks', '20240130,0.5\n20240131,0\n20240201,1.25'],
    ['hundredths', 'DATE,PRCP (hundredths of an inch)\n2024-01-30,50\n2024-01-31,0\n2024-02-01,125'],
    ['millimetres', 'day,rain_mm\n2024-01-30,12.7\n2024-01-31,0\n2024-02-01,31.75'],
    ['tenths of a millimetre', 'day,"precipitation, tenths of mm"\n2024-01-30,127\n2024-01-31,0\n2024-02-01,317.5'],
    ['centimetres', 'day,rain cm\n2024-01-30,1.27\n2024-01-31,0\n2024-02-01,3.175'],
    ['each with its unit', '2024-01-30,12.7 mm\n2024-01-31,0\n2024-02-01,1.25"'],
    ['two-digit years', '1/30/24,0.5\n1/31/24,0\n2/1/24,1.25'],
    ['with an hour', 'time,rain (in)\n2024-01-30T07:00,0.5\n2024-01-31T07:00,0\n2024-02-01T07:00,1.25'],
    ['other columns beside it', 'day,high,rainIn,low\n2024-01-30,50,0.5,20\n2024-01-31,51,0,21\n2024-02-01,52,1.25,22'],
    ['lines above the head', 'Gauge on the low bench\nread at 7\ndate,rain in\n2024-01-30,0.5\n2024-01-31,0\n2024-02-01,1.25'],
    ['out of order, with empty lines', '2024-02-01,1.25\n\n2024-01-30,0.5\r\n2024-01-31,0\n'],
  ])('%s', (_, text) => {
    expect(lines(text)).toEqual(expected);
    expect(read(text).problem).toBeUndefined();
    expect(read(text).isMonthly).toBe(false);
  });
});

describe('months', () => {
  const expected = ['2024-01-31 1 over 31', '2024-02-29 0 over 29', '2024-03-31 2.5 over 31'];
  it.each([
    ['year and month', 'year,month,rain in\n2024,1,1\n2024,2,T\n2024,3,2.5'],
    ['the month as a date', 'month,rain in\n2024-01,1\n2024-02,0\n2024-03,2.5'],
    ['the month by name', 'Jan 2024,1\nFeb 2024,0\nMar 2024,2.5'],
    ['twelve across, the rest of the year still to come', 'year,Jan (in),Feb,Mar,Apr,May,Jun,Jul,Aug,Sep,Oct,Nov,Dec\n2024,1,0,2.5,,,,,,,,,'],
    ['twelve across and their sum', '2024,1,0,2.5,,,,,,,,,,3.5'],
  ])('%s', (_, text) => {
    expect(lines(text)).toEqual(expected);
    expect(read(text).isMonthly).toBe(true);
    expect(read(text).missing).toEqual([]);
  });
  it('keeps a gap between them a gap', () => {
    const text = '2024,1,M,2.5,1,1,1,1,1,1,1,1,1';
    expect(lines(text)).toHaveLength(11);
    expect(read(text).missing).toEqual([{ year: 2024, days: 29 }]);
  });
});

describe('what the text leaves open', () => {
  it('asks for the order of dates only where none settles it', () => {
    const both = '3/4/2024,0.5\n5/6/2024,0.7';
    expect(read(both).problem).toBe('Gauge: “3/4/2024” can be two days. Say below which one it is.');
    expect(read(both).lines).toEqual([]);
    expect(lines(answered(both, 'order', 'month-first'))).toEqual(['2024-03-04 0.5', '2024-05-06 0.7']);
    expect(lines(answered(both, 'order', 'day-first'))).toEqual(['2024-04-03 0.5', '2024-06-05 0.7']);
    expect(asks('13/4/2024,0.5\n5/6/2024,0.7')).not.toHaveProperty('order');
  });
  it('asks what empty cells and missing lines mean, and takes neither for dry until told', () => {
    const text = 'day,rain in\n2024-03-01,1\n2024-03-02,\n2024-03-05,2';
    expect(asks(text)).toMatchObject({ blank: 'not-read', unlisted: 'not-read' });
    expect(lines(text)).toEqual(['2024-03-01 1', '2024-03-05 2']);
    expect(read(text).missing).toEqual([{ year: 2024, days: 3 }]);
    expect(lines(answered(text, 'blank', 'none'))).toEqual(['2024-03-01 1', '2024-03-02 0', '2024-03-05 2']);
    const dry = answered(answered(text, 'blank', 'none'), 'unlisted', 'none');
    expect(lines(dry)).toEqual(['2024-03-01 1', '2024-03-02 0', '2024-03-03 0', '2024-03-04 0', '2024-03-05 2']);
    expect(read(dry).missing).toEqual([]);
  });
  it('take a total over the days that a column of days tells, and count each of them as read', () => {
    const text = 'day,rain_in,days\n2024-05-01,0.4,1\n2024-06-01,3.1,31\n2024-06-02,0,\n2024-06-04,T,2\n';
    expect(lines(text)).toEqual(['2024-05-01 0.4', '2024-06-01 3.1 over 31', '2024-06-02 0', '2024-06-04 0 over 2']);
    expect(read(text)).toMatchObject({ isMonthly: false, missing: [], rainColumn: '“rain_in”', largest: { day: dayOf('2024-05-01'), amount: 0.4 } });
    expect(read(text).told).toContain('Totals over several days, shared evenly among them: 2.');
    // The place's own table for who reads in metric.
    expect(read('day,rain_mm,days\n2024-05-01,12.7,1\n2024-05-02,25.4,1')).toMatchObject({ rainColumn: '“rain_mm”', counting: 'mm' });
    // Totals alone are no months, and where one column is all that there is, months stay months.
    expect(read('day,rain_in,days\n2024-06-01,3.1,31').isMonthly).toBe(false);
    expect(lines('month,rain in,days\n2024-01,1,3\n2024-02,0,0')).toEqual(['2024-01-31 1 over 31', '2024-02-29 0 over 29']);
  });
  it.each([
    ['2024-05-01,0.4,0', 'Gauge, line 2: “0” is no count of days, 1 to 366.'],
    ['2024-05-01,0.4,some', 'Gauge, line 2: “some” is no count of days, 1 to 366.'],
    ['2024-05-01,0.4,1\n2024-05-03,0.9,3', 'A total covers days that have lines of their own: line 3. Leave one of them in the text.'],
  ])('refuse a count of days that cannot be: %s', (table, problem) => {
    expect(read(`day,rain_in,days\n${table}`).problem).toBe(problem);
  });
  it('asks whether an amount behind empty days is the total of them', () => {
    const text = 'day,rain in\n2024-03-01,1\n2024-03-02,\n2024-03-03,\n2024-03-04,1.5';
    expect(asks(text)).toMatchObject({ 'after-blanks': 'day' });
    expect(lines(answered(text, 'after-blanks', 'total'))).toEqual(['2024-03-01 1', '2024-03-04 1.5 over 3']);
    // Its own flag says it without being asked.
    const flagged = 'day,rain in,flag\n2024-03-01,1,\n2024-03-04,1.5,A';
    expect(lines(flagged)).toEqual(['2024-03-01 1', '2024-03-04 1.5 over 3']);
    expect(asks(flagged)).not.toHaveProperty('after-blanks');
  });
  it('asks for the unit where inches would be a flood', () => {
    const text = 'day,rain\n2024-03-01,12.7\n2024-03-02,25.4\n2024-03-03,0';
    expect(read(text).problem).toContain('nothing says what its numbers are in');
    expect(lines(answered(text, 'unit', 'mm'))).toEqual(['2024-03-01 0.5', '2024-03-02 1', '2024-03-03 0']);
    expect(read('2024-03-01,0.5').told.join()).toContain('taken as inches');
  });
  it('asks which column is the rain where no name tells', () => {
    const text = 'day,a,b\n2024-03-01,1,2\n2024-03-02,1,2';
    expect(read(text).problem).toContain('several columns of numbers');
    expect(lines(answered(text, 'rain', '3'))).toEqual(['2024-03-01 2', '2024-03-02 2']);
  });
  it('asks what two amounts of one day mean, and names the line', () => {
    const text = 'day,rain in\n2024-03-01,1\n2024-03-02,0.5\n2024-03-02,0.2';
    expect(read(text).problem).toContain('line 4');
    expect(lines(answered(text, 'twice', 'add'))).toEqual(['2024-03-01 1', '2024-03-02 0.7']);
    expect(lines(answered(text, 'twice', 'last'))).toEqual(['2024-03-01 1', '2024-03-02 0.2']);
    expect(lines('day,rain in\n2024-03-01,1\n2024-03-01,1')).toEqual(['2024-03-01 1']);
  });
});

describe('what is no amount of rain', () => {
  it.each(['M', 'm', '-', '—', '-99', '-9999', '-99.9', '999', '99.99', 'NA', 'missing'])('%s was not read', (code) => {
    expect(lines(`day,rain in\n2024-03-01,1\n2024-03-02,${code}\n2024-03-03,1`)).toEqual(['2024-03-01 1', '2024-03-03 1']);
  });
  it.each(['T', 't', 'trace', '0.00T', 'Tr'])('%s is a trace: read, and too little to measure', (trace) => {
    expect(lines(`day,rain in\n2024-03-01,1\n2024-03-02,${trace}`)).toEqual(['2024-03-01 1', '2024-03-02 0']);
  });
  const many = Array.from({ length: 9 }, (_, day) => `2024-03-1${day},0.1`).join('\n');
  it.each([
    ['2024-03-02,wet', 'Gauge, line 2: “wet” is no amount of rain.'],
    ['2024-03-02,-0.4', 'Gauge, line 2: “-0.4” is no amount of rain.'],
    ['2024-03-02,41', 'Gauge, line 2: 41 is out of range. It can be from 0 to 40 in.'],
    ['2024-02-30,1', 'Gauge, line 2: “2024-02-30” is not a day such as 2026-03-02.'],
    ['yesterday,1', 'Gauge, line 2: “yesterday” is not a day such as 2026-03-02.'],
  ])('%s stops the reading with its line, until it is mended or left out', (line, say) => {
    const text = `2024-03-01,1\n${line}\n${many}`;
    expect(read(text).problem).toContain(say);
    expect(read(text).lines).toEqual([]);
    const without = read(answered(text, 'bad', 'not-read'));
    expect(without.lines).toHaveLength(10);
    expect(without.told.join(' ')).toContain(say);
  });
  it.each(['', 'hello there\nI like cows', 'a,b,c\n1,2,3', '#= unit=mm\n', '\u0000\u0001', ',,,\n,,,'])('%j is no record', (text) => {
    expect(read(text).problem).toMatch(/^Gauge.*\.$/);
  });
});

it('bears any text', { timeout: 30_000 }, () => {
  const cell = fc.oneof(
    fc.constantFrom('2024-03-01', '3/4/2024', '2024', '1', '0.5', 'T', 'M', '', '-9999', 'Jan', 'rain (mm)', '__proto__', '"'),
    fc.string({ maxLength: 8 }),
  );
  const text = fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 12 }).map((rows) => rows.map((row) => row.join(',')).join('\n'));
  fc.assert(
    fc.property(fc.oneof(text, fc.string({ unit: 'binary' })), (each) => {
      const { lines: found, problem } = read(each);
      expect(problem === undefined ? found.length : found.length + 1).toBeGreaterThan(0);
      for (const [index, { day, amount, days = 1 }] of found.entries()) {
        expect(Number.isInteger(day) && Number.isFinite(amount) && amount >= 0).toBe(true);
        // In order, and never over each other.
        expect(day - days).toBeGreaterThanOrEqual(found[index - 1]?.day ?? -Infinity);
      }
    }),
    { seed: 1, numRuns: 400 },
  );
});

it('carries the answers in the first line of the text', () => {
  const text = withAnswers({ unit: 'mm', blank: 'none' }, 'day,rain\n2024-03-01,1');
  expect(text).toBe('#= unit=mm; blank=none\nday,rain\n2024-03-01,1');
  expect(splitAnswers(text)).toEqual({ answers: { unit: 'mm', blank: 'none' }, body: 'day,rain\n2024-03-01,1' });
  const confirmed = answered(text, 'confirmed', 'yes');
  expect(read(confirmed).isConfirmed).toBe(true);
  // Any change asks for a new look; another record for new answers.
  expect(read(answered(confirmed, 'unit', 'in')).isConfirmed).toBe(false);
  expect(splitAnswers(withBody(confirmed, '2024-03-01,2', false, 'us')).answers).toEqual({ unit: 'mm', blank: 'none' });
  expect(splitAnswers(withBody(confirmed, '2024-03-01,2', true, 'us')).answers).toEqual({});
  expect(dayOf('2024-03-01')).toBe(read(text).lines[0]?.day);
});

describe('a record that begins under a reader of metric units', () => {
  const bare = '2024-03-01,12.7\n2024-03-02,0\n2024-03-03,25.4';
  const begun = withBody('', bare, true, 'si');
  it('is in millimeters where nothing in it says otherwise, tells so, and can be changed', () => {
    expect(lines(begun)).toEqual(['2024-03-01 0.5', '2024-03-02 0', '2024-03-03 1']);
    expect(read(begun).told).toContain('Nothing says what the numbers are in: taken as millimeters.');
    expect(asks(begun)).toMatchObject({ unit: 'mm' });
    expect(lines(answered(begun, 'unit', 'tenths'))[0]).toBe('2024-03-01 0.05');
    expect(lines(withBody('', bare.slice(0, 12), false, 'si'))).toEqual(['2024-03-01 0.039']);
  });
  it('goes by what its head or a cell says, and keeps its reading as lines are added', () => {
    expect(lines(withBody('', 'day,rain (in)\n2024-03-01,0.5', true, 'si'))).toEqual(['2024-03-01 0.5']);
    expect(lines(withBody('', '2024-03-01,0.5 in', true, 'si'))).toEqual(['2024-03-01 0.5']);
    for (const system of ['us', 'si'] as const) expect(lines(withBody(begun, `${bare}\n2024-03-04,50.8`, false, system)).at(-1)).toBe('2024-03-04 2');
  });
  it('leaves one that was kept before as it was read', () => {
    expect(lines(withBody('2024-03-01,0.5', '2024-03-01,0.5\n2024-03-02,1', false, 'si'))).toEqual(['2024-03-01 0.5', '2024-03-02 1']);
    expect(withBody('', '#= blank=none\n2024-03-01,0.5', true, 'si')).toBe('#= blank=none\n2024-03-01,0.5');
  });
});
