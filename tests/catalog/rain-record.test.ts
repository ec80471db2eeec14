import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvParse } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleRain } from '../../calculators/asks/exampleRain.ts';
import definition from '../../calculators/catalog/rain-record/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';
import { readForm } from '../../calculators/kit/state.ts';
import { inverseNormal } from '../../calculators/math/special/inverseNormal.ts';
import { dayMs } from '../../calculators/units/days.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { root } from '../support/files.ts';
import { between } from '../support/numbers.ts';

const fileText = (path: string): string => readFileSync(join(root, path), 'utf8');
const seattle = fileText('node_modules/vega-datasets/data/seattle-weather.csv');
const run = (query: string, rainRecord: string) => runQuery(definition, query, { rainRecord }).values;

it('gives the index two errors either way', () => {
  const { index, indexError, lowIndex, highIndex } = runQuery(definition, '').values;
  expectWithin(Number(index) - Number(lowIndex), 2 * Number(indexError), 1e-12);
  expectWithin(Number(highIndex) - Number(index), 2 * Number(indexError), 1e-12);
});

describe('the open daily record of Seattle, as its file stands', () => {
  // Totals of the file as another program counts them: source vega-datasets, worked out apart (see tests/math/weather.openData.test.ts).
  const totalsMm: readonly (readonly [string, number])[] = [
    ['window=12&until=2012-12-31', 1226.0],
    ['window=12&until=2013-12-31', 828.0],
    ['window=1&until=2012-07-31', 26.3],
    ['window=1&until=2012-08-31', 0],
    ['window=1&until=2012-11-30', 210.5],
    ['window=1&until=2013-07-31', 0],
    ['window=1&until=2013-09-30', 156.8],
    ['window=2&until=2012-02-29', 265.6],
  ];
  it.each(totalsMm)('%s: %d mm', (query, mm) => {
    expectWithin(Number(run(query, `#= unit=mm\n${seattle}`)['totalIn']) * 25.4, mm, 0.05);
  });
  it('is not taken for inches, and says what is the matter', () => {
    expect(() => run('', seattle)).toThrow('nothing says what its numbers are in');
  });
  it('counts years and gives no index under thirty', () => {
    const { outcome } = { outcome: runQuery(definition, 'window=12&until=2013-12-31', { rainRecord: `#= unit=mm\n${seattle}` }) };
    expect(outcome.values).toMatchObject({ basis: 'ranks', recordCount: 4, yearsCount: 3, drierCount: 0 });
    expect(outcome.shown).not.toContain('index');
    expect(outcome.shown).not.toContain('decile');
    expect(outcome.cautions.map(({ source }) => source)).toContain('kite-1977, standard error of a normal quantile');
  });
});

describe('the example record', () => {
  it('stands month by month as it was typed, each beside the middle of the other twenty-nine', () => {
    const rows = csvParse(exampleRain.replaceAll(' (in)', ''));
    const names = ['Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep'];
    const { byMonth, totalIn } = runQuery(definition, '').values;
    if (!Array.isArray(byMonth)) throw new RangeError('no months');
    const own = rows.find(({ year }) => year === '2025');
    expect(byMonth).toHaveLength(6);
    for (const [index, name] of names.entries()) {
      const others = rows.filter(({ year }) => year !== '2025').map((row) => Number(row[name]));
      expectWithin(Number(byMonth[index].monthIn), Number(own?.[name]), 1e-9);
      expectWithin(Number(byMonth[index].usualIn), Number(others.toSorted((one, other) => one - other)[14]), 1e-9);
    }
    expectWithin(
      byMonth.reduce((sum: number, { monthIn }: { readonly monthIn: number }) => sum + monthIn, 0),
      Number(totalIn),
      1e-9,
    );
  });
  it('has as many months as the time looked back over, and one in part at each end where it ends within one', () => {
    const monthsOf = (query: string) => runQuery(definition, query).values['byMonth'];
    expect(monthsOf('window=1')).toHaveLength(1);
    expect(monthsOf('window=24')).toHaveLength(24);
    const daily = `#= unit=mm\n${seattle}`;
    const { byMonth, totalIn } = run('window=2&until=2013-03-15', daily);
    if (!Array.isArray(byMonth)) throw new RangeError('no months');
    expect(byMonth).toHaveLength(3);
    expectWithin(
      byMonth.reduce((sum: number, { monthIn }: { readonly monthIn: number }) => sum + monthIn, 0),
      Number(totalIn),
      1e-9,
    );
  });
  it('is the demo place’s days, added up by month', () => {
    const byMonth = new Map<string, number>();
    for (const { day = '', rainIn = '' } of csvParse(fileText('content/place/weather.csv')))
      byMonth.set(day.slice(0, 7), (byMonth.get(day.slice(0, 7)) ?? 0) + Number(rainIn));
    const rows = exampleRain.trim().split('\n').slice(1);
    const found = rows.flatMap((row) =>
      row
        .split(',')
        .slice(1)
        .map((amount, month) => [`${row.slice(0, 4)}-${String(month + 1).padStart(2, '0')}`, amount]),
    );
    expect(found).toEqual([...byMonth].map(([month, sum]) => [month, sum.toFixed(2)]));
  });
  it('gives the same totals by days and by months', () => {
    const days = fileText('content/place/weather.csv');
    for (const query of ['window=6&until=2025-09-30', 'window=1&until=2012-02-29', 'window=24&until=2008-12-31']) {
      const [byDay, byMonth] = [run(query, days), run(query, exampleRain)];
      for (const name of ['totalIn', 'medianIn', 'index', 'yearsCount', 'drierCount']) expectWithin(Number(byDay[name]), Number(byMonth[name]), 1e-9);
    }
  });
});

describe('days that nobody read', () => {
  /** Two years of days in inches, without those that `keeps` turns away. */
  const days = (keeps: (iso: string) => boolean): string =>
    [
      'day,rain (in)',
      ...Array.from({ length: 730 }, (_, day) => new Date(Date.UTC(2001, 0, 1 + day)).toISOString().slice(0, 10))
        .filter(keeps)
        .map((iso) => `${iso},${iso.endsWith('05') ? '1.5' : '0'}`),
    ].join('\n');
  const query = 'window=3&until=2002-06-30&least=90pct';

  it('are counted and not taken for dry', () => {
    const few = runQuery(definition, query, { rainRecord: days((iso) => iso !== '2002-05-05' && iso !== '2002-05-06') });
    expect(few.values).toMatchObject({ totalIn: 3, unreadDays: 2, basis: 'ranks' });
    expect(few.cautions.some(({ say }) => say.includes('were not read'))).toBe(true);
  });
  it('leave a month out when there are too many of them', () => {
    const gap = days((iso) => !(iso >= '2001-05-01' && iso <= '2001-05-04'));
    expect(run(query, gap)).toMatchObject({ totalIn: 4.5, basis: 'alone', recordCount: 1, yearsCount: 0, leftOutCount: 1 });
    expect(run(query.replace('90', '80'), gap)).toMatchObject({ basis: 'ranks', recordCount: 2, yearsCount: 1, leftOutCount: 0 });
    expect(run('window=3&until=2001-06-30&least=90pct', gap)).toMatchObject({ basis: 'not-read', unreadDays: 4 });
  });
  it('become dry days only when somebody says so', () => {
    const wetOnly = days((iso) => iso.endsWith('05') || iso === '2001-01-01');
    expect(run(query, wetOnly)).toMatchObject({ basis: 'not-read' });
    expect(run(query, `#= unlisted=none\n${wetOnly}`)).toMatchObject({ basis: 'ranks', totalIn: 4.5, unreadDays: 0 });
  });
});

describe('the year in question', () => {
  const januaries = (amounts: readonly number[]): string =>
    ['year,month,rain (in)', ...amounts.map((amount, index) => `${2001 + index},1,${amount}`)].join('\n');

  // By hand: 2 in against 4, 6, 8 and 10, whose middle and mean are 7; with itself among them the middle is 6.
  it('is judged by the others, and by itself among them only when asked', () => {
    const five = januaries([4, 6, 8, 10, 2]);
    const leftOut = runQuery(definition, 'window=1&until=2005-01-31', { rainRecord: five });
    expect(leftOut.values).toMatchObject({ yearsCount: 4, recordCount: 5, drierCount: 0, rankCount: 1, medianIn: 7, meanIn: 7 });
    expectWithin(Number(leftOut.values['ofMedianPercent']), 200 / 7, 1e-9);
    expectWithin(Number(leftOut.values['otherMedianPercent']), 200 / 6, 1e-9);
    expect(leftOut.note).toContain('Of the 4 other years on record, none was drier');
    const countedIn = runQuery(definition, 'window=1&own-year=counted-in&until=2005-01-31', { rainRecord: five });
    expect(countedIn.values).toMatchObject({ yearsCount: 5, recordCount: 5, drierCount: 0, rankCount: 1, medianIn: 6, meanIn: 6 });
    expectWithin(Number(countedIn.values['otherMedianPercent']), 200 / 7, 1e-9);
    expect(countedIn.note).toContain('Of 5 years on record, this one among them');
  });
  // By hand, place 0.25 (n + 1): nine others, place 2.5; ten with itself, place 2.75.
  it('moves the driest quarter and the decile too', () => {
    const ten = januaries([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(run('window=1&until=2010-01-31', ten)).toMatchObject({ quarterIn: 2.5, quarterBelowIn: 2, quarterAboveIn: 3, medianIn: 5, decile: 10 });
    expect(run('window=1&own-year=counted-in&until=2010-01-31', ten)).toMatchObject({ quarterIn: 2.75, medianIn: 5.5 });
    expect(run('window=1&until=2001-01-31', ten)).toMatchObject({ medianIn: 6, decile: 1, drierCount: 0 });
  });
  it('has an index from thirty years on record, this one among them, and says what the other count gives', () => {
    const years = (count: number): string => januaries(Array.from({ length: count }, (_, year) => 1 + ((7 * year) % 10)));
    expect(run('window=1&until=2003-01-31', years(29))).toMatchObject({ basis: 'ranks', recordCount: 29 });
    const thirty = run('window=1&until=2003-01-31', years(30));
    expect(thirty).toMatchObject({ basis: 'index', recordCount: 30, yearsCount: 29 });
    const counted = run('window=1&own-year=counted-in&until=2003-01-31', years(30));
    expect([thirty['otherIndex'], thirty['index']]).toEqual([counted['index'], counted['otherIndex']]);
  });
  it('is counted in by links made before there was a choice', () => {
    const five = januaries([4, 6, 8, 10, 2]);
    expect(run('window=1&until=2005-01-31&v=1', five)).toMatchObject({ medianIn: 6 });
    expect(run('window=1&until=2005-01-31&v=2', five)).toMatchObject({ medianIn: 7 });
  });
});

it('ranks a year higher the more rain it had', () => {
  const record = (last: number): string =>
    ['year,month,rain (in)', ...Array.from({ length: 31 }, (_, year) => `${1990 + year},1,${year === 30 ? last : 1 + ((7 * year) % 10)}`)].join('\n');
  fc.assert(
    fc.property(between(0.1, 20), between(0, 5), (rain, more) => {
      const [one, two] = [rain, rain + more].map((last) => run('window=1&until=2020-01-31', record(Number(last.toFixed(3)))));
      expect(Number(two?.['drierCount'])).toBeGreaterThanOrEqual(Number(one?.['drierCount']));
      expect(Number(two?.['ofMedianPercent'])).toBeGreaterThanOrEqual(Number(one?.['ofMedianPercent']) - 1e-9);
    }),
    { seed: 1, numRuns: 60 },
  );
});

it('says before every result whose record it is, and whether it was looked over', () => {
  const remarks = (rainRecord: string) => readForm(definition.inputs, { compareWith: 'record', rainRecord }).remarks.map(({ say }) => say);
  expect(remarks(exampleRain)).toEqual([expect.stringContaining('invented Two Bench place')]);
  expect(remarks('2026-03-02, 0.45')).toEqual([expect.stringContaining('look over what was understood')]);
  expect(remarks('#= confirmed=yes\n2026-03-02, 0.45')).toEqual([]);
});

const dayOn = (date: string): number => Date.parse(date) / dayMs;
const rowsOf = (values: Readonly<Record<string, unknown>>, name: string): readonly Readonly<Record<string, unknown>>[] => {
  const rows = values[name];
  return Array.isArray(rows) ? rows : [];
};
describe('the curve of a period', () => {
  const running = (query: string) => {
    const values = run(query, `#= unit=mm\n${seattle}`);
    return {
      values,
      days: rowsOf(values, 'running').map((row) => Number(row['stepDay'])),
      rain: rowsOf(values, 'running').map((row) => Number(row['thisIn'])),
    };
  };
  it('runs from nothing to the total, in even steps, to the very day of a daily record', () => {
    const { values, days, rain } = running('window=1&until=2013-11-15');
    expect(values['endsDay']).toBe(dayOn('2013-11-15'));
    expect([days[0], days.at(-1), rain[0]]).toEqual([dayOn('2013-10-15'), dayOn('2013-11-15'), 0]);
    expectWithin(rain.at(-1) ?? Number.NaN, Number(values['totalIn']), 1e-9);
    expect(days.length).toBeGreaterThan(5);
    const spans = days.slice(1).map((day, at) => day - (days[at] ?? Number.NaN));
    expect(Math.max(...spans) - Math.min(...spans)).toBeLessThanOrEqual(1);
    for (const [at, each] of rain.slice(1).entries()) expect(each).toBeGreaterThanOrEqual(rain[at] ?? Number.NaN);
  });
  it('of a year goes month by month', () => {
    const { days } = running('window=12&until=2013-12-31');
    expect(days.length).toBe(13);
    expect([days[0], days[1], days.at(-1)]).toEqual([dayOn('2012-12-31'), dayOn('2013-01-31'), dayOn('2013-12-31')]);
  });
});
describe('a record with dry months', () => {
  // Forty years by month, every eighth June without rain.
  const [header = ''] = exampleRain.trim().split('\n');
  const junes = Array.from({ length: 40 }, (_, at) => (at % 8 === 0 ? 0 : 1 + ((at * 7) % 11) / 4));
  const years = junes.map((june, at) => [1980 + at, ...Array.from({ length: 12 }, (_, month) => (month === 5 ? june : 2))].join(','));
  const record = [header, ...years].join('\n');
  it('counts them as the share of years without rain, below all that rained', () => {
    const values = run('window=1&until=2010-06-30', record);
    expect(values['basis']).toBe('index');
    expectWithin(Number(values['zeroRatio']), 5 / 39, 0.02);
    const share = Number(values['zeroRatio']) + (1 - Number(values['zeroRatio'])) * Number(values['gammaRatio']);
    expectWithin(Number(values['belowRatio']), share, 1e-12);
    expectWithin(Number(values['index']), inverseNormal(share), 1e-9);
  });
});

describe('a record of more than thirty years', () => {
  /** Thirty-six years of days in inches, without those that `isLost` names. */
  const days = (isLost: (iso: string) => boolean): string =>
    [
      'day,rain (in)',
      ...Array.from({ length: 365 * 36 + 9 }, (_, day) => new Date(dayOn('1980-01-01') * dayMs + day * dayMs).toISOString().slice(0, 10))
        .filter((iso) => !isLost(iso))
        .map((iso, day) => `${iso},${((((day * 7919) % 97) / 400) * (7 + ((Number(iso.slice(0, 4)) * 5) % 7))) / 7}`),
    ].join('\n');
  const told = (query: string, record: string) => {
    const { cautions, shown, values } = runQuery(definition, query, { rainRecord: record });
    return { values, shown, says: cautions.map(({ say }) => say).join(' ') };
  };
  const june = 'window=1&until=2011-06-30&least=90pct';
  it('says when days of these months were not read, and only then', () => {
    const whole = told(
      june,
      days(() => false),
    );
    expect(whole.values).toMatchObject({ basis: 'index', unreadDays: 0, leftOutCount: 0 });
    expect(whole.says).not.toContain('Some days of these months were not read');
    expect(whole.shown).not.toContain('leftOutCount');
    const holed = told(
      june,
      days((iso) => ['2011-06-09', '2011-06-10'].includes(iso)),
    );
    expect(holed.values).toMatchObject({ basis: 'index', unreadDays: 2 });
    expect(holed.says).toContain('Some days of these months were not read');
  });
  it('tells how many years were left out', () => {
    const { values, shown } = told(
      june,
      days((iso) => iso.startsWith('1990-06-1')),
    );
    expect(values['leftOutCount']).toBe(1);
    expect(shown).toContain('leftOutCount');
  });
  it('warns of more than twelve months looked back over, and of no fewer', () => {
    const record = days(() => false);
    expect(told('window=12&until=2015-06-30', record).says).not.toContain('Looking back over more than twelve months');
    const long = told('window=24&until=2015-06-30', record);
    expect(long.values['basis']).toBe('index');
    expect(long.says).toContain('Looking back over more than twelve months');
  });
});
