import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitsTold } from '../../calculators/kit/quantities.ts';
import { dayOf, digitsIn, isoDay, printAsIs, printClock, printDay, printNumber, printQuantity } from '../../calculators/units/printQuantity.ts';
import { readQuantity } from '../../calculators/units/readQuantity.ts';
import { convert, isUnit, type UnitName, unitIn, units } from '../../calculators/units/units.ts';
import { expectWithin } from '../support/expectWithin.ts';

// Factors printed in NIST Special Publication 811 (2008), appendix B.8 and B.9, and exact by definition there (from memory).
describe('conversions by definition', () => {
  it.each<[number, UnitName, UnitName, number]>([
    [1, 'in', 'mm', 25.4],
    [1, 'ft', 'm', 0.3048],
    [1, 'mi', 'km', 1.609344],
    [1, 'ac', 'sqm', 4046.8564224],
    [1, 'ac', 'sqft', 43560],
    [1, 'ha', 'sqm', 10000],
    [1, 'gal', 'l', 3.785411784],
    [4, 'qt', 'gal', 1],
    [1, 'cuft', 'l', 28.316846592],
    [231, 'gal', 'cuft', 231 * (231 / 1728)],
    [1, 'acft', 'cuft', 43560],
    [12, 'acin', 'acft', 1],
    [1, 'lb', 'kg', 0.45359237],
    [1, 'ton', 'lb', 2000],
    [1, 'tonne', 'kg', 1000],
    [1, 'psi', 'kpa', 6.894757293168],
    [32, 'f', 'c', 0],
    [212, 'f', 'c', 100],
    [-40, 'c', 'f', -40],
    [37, 'c', 'f', 98.6],
    [1, 'lb/ac', 'kg/ha', 0.45359237 / 0.40468564224],
    [1, 'gpm', 'gal/d', 1440],
    [1, 'in/hr', 'in/d', 24],
    [1, 'usd/cwt', 'usd/ton', 20],
    [100, 'usd/ton', 'usd/lb', 0.05],
    [1, 'wk', 'd', 7],
  ])('%d %s in %s', (value, from, to, expected) => {
    const off = Math.abs(convert(value, from, to) - expected);
    expect(off).toBeLessThanOrEqual(4e-15 * Math.max(Math.abs(expected), Math.abs(value)));
  });
  it('refuses to make pounds of acres', () => {
    expect(() => convert(1, 'lb', 'ac')).toThrow(RangeError);
  });
  it('brings each unit to the other system and back to one of its own kind', () => {
    for (const name of Object.keys(units).filter(isUnit)) {
      const there = unitIn('si', name);
      expect(units[there].dimension).toBe(units[name].dimension);
      expect(units[unitIn('us', there)].dimension).toBe(units[name].dimension);
    }
    expect(unitIn('si', 'in')).toBe('mm');
    expect(unitIn('us', 'kg/ha')).toBe('lb/ac');
    expect(unitIn('si', 'pct')).toBe('pct');
  });
});

describe('reading a quantity', () => {
  it.each<[string, UnitName, number, UnitName]>([
    ['3', 'in', 3, 'in'],
    ['1,200', 'ac', 1200, 'ac'],
    ['1,234,567.5', 'ac', 1234567.5, 'ac'],
    ['1/2', 'in', 0.5, 'in'],
    ['½', 'in', 0.5, 'in'],
    ['2½', 'in', 2.5, 'in'],
    ['6 ¼ in', 'in', 6.25, 'in'],
    ['3 1/2', 'in', 3.5, 'in'],
    ['3 1/2 in', 'in', 3.5, 'in'],
    ['.5', 'in', 0.5, 'in'],
    ['5.', 'in', 5, 'in'],
    ['75 mm', 'in', 75 / 25.4, 'mm'],
    ['75mm', 'in', 75 / 25.4, 'mm'],
    ['101.6 mm', 'in', 4, 'mm'],
    ['3"', 'in', 3, 'in'],
    ['3”', 'in', 3, 'in'],
    ["6'", 'in', 72, 'ft'],
    ['3 Inches', 'in', 3, 'in'],
    ['3 in.', 'in', 3, 'in'],
    ['-5', 'f', -5, 'f'],
    ['−5 °C', 'f', 23, 'c'],
    ['20 %', 'pct', 20, 'pct'],
    ['$95', 'usd/ton', 95, 'usd/ton'],
    ['$ 1,200', 'usd', 1200, 'usd'],
    ['$95/ton', 'usd/ton', 95, 'usd/ton'],
    ['$95 a ton', 'usd/ton', 95, 'usd/ton'],
    ['12 sq ft', 'sqft', 12, 'sqft'],
    ['2 short tons', 'lb', 4000, 'ton'],
    ['40\u00a0ac', 'ac', 40, 'ac'],
    ['2 hr', 'min', 120, 'hr'],
    ['-$5', 'usd', -5, 'usd'],
    ['75 MM', 'in', 75 / 25.4, 'mm'],
    ['40 AC', 'ac', 40, 'ac'],
    ['5 mL', 'l', 0.005, 'ml'],
    ['3 PPM', 'mg/l', 3, 'mg/l'],
    ['1 280', 'ac', 1280, 'ac'],
    ['- 1,280 1/2', 'ac', -1280.5, 'ac'],
    ['-1 234 567.5', 'ac', -1234567.5, 'ac'],
    ['12\u202f000 ac', 'ac', 12_000, 'ac'],
    ['1 100/200', 'ac', 1.5, 'ac'],
  ])('“%s” asked in %s', (text, declared, value, unit) => {
    const reading = readQuantity(text, declared);
    expect(reading.is).toBe('value');
    if (reading.is !== 'value') return;
    expectWithin(reading.value, value, 5e-11);
    expect(reading.unit).toBe(unit);
  });
  it('takes a number typed in another unit as the very number that it stands for', () => {
    expect(readQuantity('101.6 mm', 'in')).toMatchObject({ value: 4 });
    expect(readQuantity('0.40468564224 ha', 'ac')).toMatchObject({ value: 1 });
    expect(readQuantity('37 c', 'f')).toMatchObject({ value: 98.6 });
  });
  it.each<[string, UnitName, object]>([
    ['', 'in', { is: 'empty' }],
    ['   ', 'in', { is: 'empty' }],
    ['1,5', 'in', { is: 'comma', instead: '1.5' }],
    ['1,5 mm', 'in', { is: 'comma', instead: '1.5' }],
    ['12,34', 'in', { is: 'comma', instead: '12.34' }],
    ['0,1234', 'in', { is: 'comma', instead: '0.1234' }],
    ['0,500', 'ac', { is: 'comma', instead: '0.500' }],
    ['-0,500', 'f', { is: 'comma', instead: '-0.500' }],
    ['1,234.5,678', 'ac', { is: 'comma', instead: '1234.5678' }],
    ['1.234,5', 'ac', { is: 'comma', instead: '1234.5' }],
    ['1234,567', 'ac', { is: 'comma', instead: '1234.567' }],
    ['1,23,456', 'ac', { is: 'comma', instead: '123456' }],
    ['$5', 'in', { is: 'unit', tail: '$' }],
    ['-$5', 'lb', { is: 'unit', tail: '$' }],
    ['5 ML', 'l', { is: 'unit', tail: 'ML', small: 'mL' }],
    ['5 Mm', 'in', { is: 'unit', tail: 'Mm', small: 'mm' }],
    ['5 Mg/L', 'mg/l', { is: 'unit', tail: 'Mg/L', small: 'mg/L' }],
    ['5 ML', 'in', { is: 'unit', tail: 'ML' }],
    ['1'.repeat(61), 'in', { is: 'words' }],
    ['a lot', 'in', { is: 'words' }],
    ['1/0', 'in', { is: 'words' }],
    ['NaN', 'in', { is: 'words' }],
    ['Infinity', 'in', { is: 'words' }],
    ['5 t', 'lb', { is: 'unit', tail: 't' }],
    ['5 lb', 'in', { is: 'unit', tail: 'lb' }],
    ['1e999', 'in', { is: 'unit', tail: 'e999' }],
    ['3 __proto__', 'in', { is: 'unit', tail: '__proto__' }],
    ['3 constructor', 'in', { is: 'unit', tail: 'constructor' }],
    ['1.2.3', 'in', { is: 'unit', tail: '.3' }],
    ['0.5 280', 'in', { is: 'words' }],
    ['2024 100', 'ac', { is: 'words' }],
    ['0 250', 'ac', { is: 'words' }],
    ['1 28', 'ac', { is: 'words' }],
    ['12 3456', 'ac', { is: 'words' }],
    ['3-4', 'd', { is: 'words' }],
    ['3 – 4 days', 'd', { is: 'words' }],
    ['3 to 4', 'd', { is: 'words' }],
    ['3, 4', 'd', { is: 'words' }],
    ['3 ft 4 in', 'in', { is: 'unit', tail: 'ft 4 in' }],
  ])('says why “%s” is not read', (text, declared, reading) => {
    expect(readQuantity(text, declared)).toEqual(reading);
  });
  it.each<[string, UnitName, number]>([
    ['25.4 millimetres', 'in', 1],
    ['2.54 centimetres', 'in', 1],
    ['1 metre', 'm', 1],
    ['2 square metres', 'sqm', 2],
    ['500 millilitres', 'l', 0.5],
    ['1 litre', 'l', 1],
    ['3 cubic metres', 'cum', 3],
  ])('reads %s, and the same as Americans spell it', (text, declared, value) => {
    for (const spelling of [text, text.replace(/(met|lit)re/, '$1er')]) {
      const reading = readQuantity(spelling, declared);
      expectWithin(reading.is === 'value' ? reading.value : Number.NaN, value, 1e-12);
    }
  });
  it('reads every unit by its token, its print, its words and each other spelling', () => {
    for (const name of Object.keys(units).filter(isUnit)) {
      for (const spelling of [name, units[name].print, units[name].words, units[name].words.replace(/s$/, ''), ...units[name].typed].filter(
        (each) => each !== '' && each !== '$',
      )) {
        const reading = readQuantity(`7 ${spelling}`, name);
        expect(reading, `7 ${spelling} as ${name}`).toMatchObject({ is: 'value', unit: name, value: 7 });
      }
    }
  });
});

describe('printing', () => {
  it.each<[number, number, string]>([
    [1234.5, 0, '1,235'],
    [1234.5, 2, '1,234.50'],
    [1253488, -3, '1,253,000'],
    [-3.25, 1, '−3.3'],
    [-0.01, 1, '0.0'],
    [0, 2, '0.00'],
  ])('%d to %d digits', (value, digits, text) => {
    expect(printNumber(value, digits)).toBe(text);
  });
  it('prints units as people write them, in either system', () => {
    expect(printQuantity(1.6, 'in', 1, 'us')).toBe('1.6 in');
    expect(printQuantity(1.6, 'in', 1, 'si')).toBe('41 mm');
    expect(printQuantity(40, 'ac', 0, 'si')).toBe('16 ha');
    expect(printQuantity(50, 'f', 0, 'si')).toBe('10 °C');
    expect(printQuantity(-1200, 'usd', 0, 'us')).toBe('−$1,200');
    expect(printQuantity(95, 'usd/ton', 0, 'us')).toBe('$95 a ton');
    expect(printQuantity(20, 'pct', 0, 'si')).toBe('20 %');
    expect(printQuantity(70, 'cn', 0, 'us')).toBe('70');
  });
  it.each([
    [1_290_879, { digits: 0, significant: 2 }, '1,300,000'],
    [14.37, { digits: 3, significant: 2 }, '14'],
    [0.0399, { digits: 3, significant: 2 }, '0.040'],
    [136, { digits: 0, significant: 4 }, '136'],
    [-2_695, { digits: 1, significant: 2 }, '−2,700'],
    [0, { digits: 1, significant: 2 }, '0.0'],
    [27_154.29, { digits: 2 }, '27,154.29'],
    // Acres of a small paddock or strip: two figures, and no zeros behind them that say nothing.
    [0.0539, { digits: 1, unit: 'ac' }, '0.054'],
    [0.5, { digits: 1, unit: 'ac' }, '0.5'],
    [0.0309, { digits: 2, unit: 'ac' }, '0.031'],
    [7.756, { digits: 0, unit: 'ac' }, '7.8'],
    [62.05, { digits: 0, unit: 'ac' }, '62'],
    [0, { digits: 1, unit: 'ac' }, '0.0'],
    [0.0539, { digits: 1, unit: 'in' }, '0.1'],
  ] as const)('%d told with %j', (value, fineness, text) => {
    expect(printNumber(value, digitsTold(value, fineness))).toBe(text);
  });
  it('keeps about as many digits that matter', () => {
    expect(digitsIn(1, 'in', 'mm')).toBe(0);
    // A gallon is 3.785 liters: as many digits count.
    expect(printQuantity(1_967_000, 'gal', -5, 'si')).toBe('7,400,000 L');
    expect(printQuantity(14_000, 'gal', -3, 'si')).toBe('53,000 L');
    for (const [from, to, less] of [
      ['in', 'mm', 1],
      ['ft', 'm', -1],
      ['ac', 'ha', 0],
      ['lb', 'kg', 0],
      ['f', 'c', 0],
      ['gal', 'l', 0],
      ['psi', 'kpa', 1],
      ['mm', 'in', -1],
    ] as const)
      expect(2 - digitsIn(2, from, to), `${from} to ${to}`).toBe(less);
    expect(digitsIn(0, 'f', 'c')).toBe(0);
    expect(digitsIn(2, 'ton', 'tonne')).toBe(2);
  });
  it('rounds and groups as the platform’s own formats do', () => {
    const formats = Array.from(
      { length: 7 },
      (_, places) => new Intl.NumberFormat('en-US', { minimumFractionDigits: places, maximumFractionDigits: places }),
    );
    const halves = fc
      .tuple(fc.integer({ min: 0, max: 2e9 }), fc.integer({ min: 1, max: 7 }))
      .map(([whole, places]) => Number(`${whole}5e-${places}`));
    const any = fc.oneof(halves, fc.double({ min: 0, max: 1e12, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }), fc.constant(1.005));
    fc.assert(
      fc.property(any, fc.integer({ min: 0, max: 6 }), (value, places) => {
        // Nobody is told eleven digits, or millionths; of more than that a double holds no half.
        fc.pre(value * 10 ** places < 1e10 && (value === 0 || value > 1e-6));
        expect(printNumber(value, places)).toBe(formats[places]?.format(value));
        expect(printAsIs(value)).toBe(value.toLocaleString('en-US'));
      }),
      { numRuns: 20_000 },
    );
  });
  it('reads back what it prints', () => {
    for (const name of Object.keys(units)
      .filter(isUnit)
      .filter((each) => unitIn('us', each) === each)) {
      expect(readQuantity(printQuantity(1234.5, name, 1, 'us'), name), name).toMatchObject({ is: 'value', value: 1234.5 });
    }
  });
});

describe('days', () => {
  it('counts them from 1970, leap years by the calendar', () => {
    expect(dayOf('1970-01-01')).toBe(0);
    expect(dayOf('2000-03-01')).toBe(11017);
    expect(isoDay(11017)).toBe('2000-03-01');
    expect(dayOf('2028-02-29')).toBeDefined();
    // A Sunday: the day on which this calendar day fell, by any almanac.
    expect(printDay(dayOf('2000-12-31') ?? 0, true)).toBe('Sun, Dec 31, 2000');
    expect(printDay(dayOf('2026-11-01') ?? 0)).toBe('Nov 1, 2026');
  });
  it('writes them as the platform’s own formats do', () => {
    const parts = { timeZone: 'UTC', year: 'numeric', month: 'short', day: 'numeric' } as const;
    const [plain, named] = [new Intl.DateTimeFormat('en-US', parts), new Intl.DateTimeFormat('en-US', { ...parts, weekday: 'short' })];
    for (let day = -40_000; day < 60_000; day += 17) {
      const date = new Date(day * 86_400_000);
      expect([printDay(day), printDay(day, true)]).toEqual([plain.format(date), named.format(date)]);
    }
  });
  it('tells the time of day as the platform’s own format does', () => {
    const format = new Intl.DateTimeFormat('en-US', { timeStyle: 'short' });
    for (let minute = 0; minute < 24 * 60; minute += 7) {
      const now = new Date(2026, 5, 20, 0, minute);
      expect(printClock(now)).toBe(format.format(now).replace('\u202f', ' '));
    }
  });
  it.each(['2026-02-30', '2027-02-29', '2026-13-01', '2026-1-1', '11/01/2026', '', 'today', '20260101'])('knows no day “%s”', (text) => {
    expect(dayOf(text)).toBeUndefined();
  });
});
