// What the record says of itself where it is read, drawn without a browser.
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import type { Row } from '../../src/place/model/row.ts';
import { aLoad } from '../../src/place/record/loads.ts';
import { staysOf } from '../../src/place/record/stays.ts';
import { RecordPaper } from '../../src/place/ui/RecordPaper.tsx';
import { dayOfNew, hayWords, stayWords } from '../../src/place/ui/RecordRows.tsx';
import { RainTable, SumsDoubted, SumsTable } from '../../src/place/ui/RecordSums.tsx';
import { dryWords, heightWords, stockDaysOn } from '../../src/place/ui/recordWords.ts';
import { aPlace } from './aPlace.ts';
import { counting, lowToHigh, today } from './aRecord.ts';
import { aHay, aMove, aRain } from './aRow.ts';

describe('by the sums of a year', () => {
  const doubts = (rows: readonly Row[], year = 2026): string =>
    render(
      <SumsDoubted
        place={aPlace()}
        rows={{ all: rows }}
        stays={staysOf(aPlace(), rows, counting)}
        ofYear={staysOf(aPlace(), rows, { ...counting, year })}
        year={year}
        todayDay={today}
      />,
    );
  it('nothing is said where all of it can be', () => {
    expect(doubts(lowToHigh)).toBe('');
  });
  it('it is said that a herd in two places at once counts in both, in the year of either', () => {
    const twice = [...lowToHigh.slice(0, 2), aMove({ id: 'm4', inDay: '2026-05-15', outDay: '2026-05-22' })];
    expect(doubts(twice)).toContain(
      'In two places at once, and counted in both: herd 1 on High bench, May 8 to May 20, and on Low bench, May 15 to May 22.',
    );
    expect(doubts(twice, 2025)).toBe('');
    expect(
      doubts([aMove({ inDay: '2025-12-20', outDay: '2026-02-01' }), aMove({ id: 'm2', paddockId: 'high', inDay: '2026-01-10' })], 2025),
    ).toContain('herd 1 on Low bench, Dec 20, 2025 to Feb 1, and on High bench, Jan 10 to now.');
  });
  it('it is said that hay counts in no sum where no stock stood on that day, in its year', () => {
    const rows = [aMove({ outDay: '2026-05-08' }), aHay({ day: '2026-05-20' }), aHay({ id: 'y2', paddockId: 'high' })];
    const said = 'Not in the sums, because this record has no stock there on that day: hay on High bench, May 3; hay on Low bench, May 20.';
    expect(doubts(rows)).toContain(said);
    expect(doubts(rows, 2025)).toBe('');
    expect(doubts([aMove({ outDay: '2026-05-08' }), aHay()])).toBe('');
  });
  it('it is said of hay that nobody weighed that it is not taken off', () => {
    const { baleLb: _, ...unweighed } = aHay();
    expect(doubts([aMove({ outDay: '2026-05-08' }), unweighed])).toContain(
      'Some hay has no weight, so it is not taken off: Low bench, May 1 to May 8.',
    );
  });
  it('it is said that a stay that ends before it begins counts in none', () => {
    const said = doubts([aMove({ outDay: '2026-04-01' })]);
    expect(said).toContain('Not in the sums, because they went out before they came in: Low bench, May 1 to Apr 1.');
    expect(said).not.toContain('In two places');
  });
});

it('hay is told by its bales, and a load of a table by its pounds', () => {
  expect([1, 2, 2.5].map((baleCount) => hayWords({ baleCount }, 'us'))).toEqual(['1 bale', '2 bales', '2.5 bales']);
  expect(hayWords(aLoad(5100), 'us').replace('\u00a0', ' ')).toBe('5,100 lb dry');
});

describe('the rain of a year', () => {
  const table = (...rows: readonly Row[]): string =>
    render(<RainTable rows={{ all: rows }} year={2026} system="us" todayDay={today} />).replaceAll('\u00a0', ' ');
  it('says of a month how many of its days were read, if not all, and of the year to today', () => {
    // The month of May whole, and two days of June up to the 20th: 33 days of the 171 so far.
    const said = table(aRain({ day: '2026-05-31', days: 31, amountIn: 3.1 }), aRain({ id: 'r2', day: '2026-06-10', days: 2, amountIn: 0.35 }));
    expect([...said.matchAll(/<td>(.*?)<\/td>/g)].map(([, cell]) => cell).filter(Boolean)).toEqual([
      '3.10 in',
      '0.35 in (2 of 20 days)',
      '3.45 in (33 of 171 days)',
    ]);
  });
});

it('a line that is added to a year is of today, else of the last day that has a line there, else of its end next to this year', () => {
  const rows = [aMove({ inDay: '2024-10-31', outDay: '2025-03-01' }), aRain({ day: '2024-05-01' })];
  expect([2026, 2024, 2025, 2027].map((year) => isoDay(dayOfNew(rows, year, today)))).toEqual([
    '2026-06-20',
    '2024-10-31',
    '2025-12-31',
    '2027-01-01',
  ]);
});

describe('in metric', () => {
  const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('&nbsp;', ' ');
  const rows = [aMove({ outDay: '2026-05-08', heightInIn: 8, heightOutIn: 4 }), aHay()];
  const shown = (system: UnitSystem) => {
    const place = aPlace();
    const ofYear = staysOf(place, rows, { ...counting, year: 2026 });
    return {
      place,
      rows: { all: rows },
      stays: ofYear,
      ofYear,
      year: 2026,
      system,
      todayDay: today,
      yardstick: { lbPerDay: 27.48, isSet: false, of: 'cows' },
    };
  };
  const cellsUnder = (html: string, head: RegExp): readonly (string | undefined)[] => {
    const [, table = ''] = /<table>([\s\S]*?)<\/table>/.exec(html) ?? [];
    const at = [...table.matchAll(/<th scope="col">(.*?)<\/th>/g)].findIndex(([, name = '']) => head.test(name));
    return [...table.matchAll(/<tr><th scope="row">.*?<\/tr>/g)].map(([row]) => [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)][at]?.[1]);
  };
  // 45 cows for 7 days on 85 acres are 3.706 stock-days an acre, 3.353 without the 900 lb of hay at 30 lb. 85 acres are 34.40 ha: 9.157 and 8.285 a hectare.
  // A hectare is 2.471 054 acres: NIST Special Publication 811, appendix B.
  it('stock-days count on a hectare, which is 2.471 acres', () => {
    expect([stockDaysOn(100, 'us'), stockDaysOn(100, 'si'), stockDaysOn(3.706, 'si')]).toEqual(['100.0', '247.1', '9.2']);
  });
  it('the sums, the moves and the sheet tell them so', () => {
    const sums = plain(render(<SumsTable {...shown('si')} />));
    expect(cellsUnder(sums, /^Stock-days a hectare, off grass$/)).toEqual(['8.3']);
    expect(cellsUnder(sums, /^With hay$/)).toEqual(['9.2']);
    const [stay] = shown('si').ofYear;
    if (stay === undefined) throw new RangeError('no stay');
    expect(stayWords(stay, 2026, 'si')).toContain('8.3 stock-days a hectare, 9.2 with hay');
    expect(stayWords(stay, 2026, 'us')).toContain('3.4 stock-days an acre, 3.7 with hay');
    const paper = plain(render(<RecordPaper {...shown('si')} />));
    expect(cellsUnder(paper, /^Stock-days a hectare$/)).toEqual(['8.3 (9.2 with hay)']);
    expect(paper).toContain('times days, over hectares');
    expect(paper).not.toMatch(/acre|pound|\blb\b|inch/i);
    expect(plain(render(<RecordPaper {...shown('us')} />))).toContain('times days, over acres');
  });
  it('heights stand in millimeters under a head of millimeters, as at the gate: 8 inches are 203.2, told as coarsely as whole inches are read', () => {
    const paper = plain(render(<RecordPaper {...shown('si')} />));
    expect(heightWords(8, 'si').replace('\u00a0', ' ')).toBe('200 mm');
    expect([/^Millimeters going in$/, /^Millimeters coming out$/].map((head) => cellsUnder(paper, head))).toEqual([['200 mm'], ['100 mm']]);
  });
  it('what one eats is told in kilograms: 27.48 lb are 12.46 kg', () => {
    expect([dryWords(27.48, 'us'), dryWords(27.48, 'si')].map(plain)).toEqual(['27.48 lb', '12.5 kg']);
    expect(plain(render(<RecordPaper {...shown('si')} />))).toContain('Counted in cows that eat 12.5 kg a day');
  });
});
