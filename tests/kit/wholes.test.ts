import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Outcome } from '../../calculators/kit/define.ts';
import { printColumn, printName, printScalar, toldNumber } from '../../calculators/kit/print.ts';
import { amount } from '../../calculators/kit/quantities.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { add, roundTogether } from '../../calculators/kit/wholes.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { calculatorOf, calculators } from '../support/catalog.ts';
import { textsOf } from '../support/randomForms.ts';

/** What a reader would make of a printed number. */
const readBack = (text: string): number => Number(/^−?\$?[\d,]*\.?\d+/.exec(text)?.[0].replace(/[,$]/g, '').replace('−', '-'));
const numbersOf = ({ values }: Outcome, names: readonly string[]): readonly number[] => names.map((name) => Number(values[name]));

describe('parts rounded together', () => {
  const digits = fc.integer({ min: -2, max: 3 });
  const step = (each: number): number => 10 ** -each;
  it('add up to their whole and stay within one unit of their last digit', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 5000, noNaN: true }), { minLength: 1, maxLength: 6 }), digits, (parts, each) => {
        const sum = Math.round(add(parts) / step(each)) * step(each);
        const rounded = roundTogether(parts, sum, each);
        expect(Math.round(add(rounded) / step(each))).toBe(Math.round(sum / step(each)));
        for (const [index, part] of parts.entries()) expect(Math.abs((rounded[index] ?? Number.NaN) - part)).toBeLessThan(step(each) * (1 + 1e-9));
      }),
    );
  });
  it('leave a part alone that is whole already, nothing above all', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(4000), { minLength: 1, maxLength: 6 }), fc.double({ min: 0, max: 50, noNaN: true }), digits, (whole, odd, each) => {
        const parts = [...whole.map((units) => units * step(each)), odd * step(each)];
        const rounded = roundTogether(parts, Math.round(add(parts) / step(each)) * step(each), each);
        for (const [index, units] of whole.entries()) expect(Math.round((rounded[index] ?? Number.NaN) / step(each))).toBe(units);
      }),
    );
  });
  it('are rounded one by one where they are no division of the whole', () => {
    expect(roundTogether([1.26, 2.24], 9, 1)).toEqual([1.3, 2.2]);
    expect(roundTogether([], 3, 1)).toEqual([]);
  });
  it.each([
    // Seats by largest remainder, worked by hand: 47, 16, 15.8, 12, 6.1, 3.1 of 100.
    [[47, 16, 15.8, 12, 6.1, 3.1], 100, 0, [47, 16, 16, 12, 6, 3]],
    [[100 / 3, 100 / 3, 100 / 3], 100, 0, [34, 33, 33]],
    [[0.372, 1.28, 1.348], 3, 1, [0.4, 1.3, 1.3]],
    [[4, 4, 4], 10, -1, [10, 0, 0]],
  ] as const)('%j of %s to %s digits', (parts, sum, each, expected) => {
    expect(roundTogether(parts, sum, each)).toEqual(expected);
  });
});

describe('what there must be at least', () => {
  const told = (value: number, system: UnitSystem): string =>
    printName(
      { inputs: {}, quantities: { needTon: { ...amount('Hay to have', 'B', 'ton', 0), isLeast: true } } },
      { needTon: value },
      'needTon',
      system,
    );
  it('is told as the next larger number, in either unit', () => {
    expect([told(219.05, 'us'), told(219, 'us'), told(0, 'us')]).toEqual(['220 tons', '219 tons', '0 tons']);
    // A short ton is 0.90718474 t (NIST SP 811): 220.5 are 200.03.
    expect(told(220.5, 'si')).toBe('201 tonnes');
  });
  it('is not pushed up by the last bit of the arithmetic', () => {
    expect(told(366 + 1e-10, 'us')).toBe('366 tons');
  });
});

describe.each(calculators.filter(({ wholes }) => wholes.length > 0).map((calculator) => [calculator.slug, calculator] as const))(
  'wholes of %s',
  (_, calculator) => {
    it('add up as printed wherever they add up at all', () => {
      let added = 0;
      fc.assert(
        fc.property(textsOf(calculator.inputs), fc.constantFrom<UnitSystem>('us', 'si'), (texts, system) => {
          const run = runTexts(calculator, texts);
          if ('refusals' in run) return;
          for (const { whole, parts } of calculator.wholes) {
            const sum = whole === undefined ? 100 : Number(run.outcome.values[whole]);
            if (Math.abs(add(numbersOf(run.outcome, parts)) - sum) > 1e-9 * Math.max(1, Math.abs(sum))) continue;
            // Typed numbers that a converted unit rounds one by one may miss each other; what was typed stands as it is.
            if (system === 'si' && parts.some((name) => calculator.quantities[name] === undefined)) continue;
            const told = parts.map((name) => readBack(printName(calculator, run.outcome.values, name, system)));
            const toldSum = whole === undefined ? 100 : readBack(printName(calculator, run.outcome.values, whole, system));
            expect(Math.abs(add(told) - toldSum), `${parts.join(', ')}: ${told.join(' + ')}, not ${toldSum}`).toBeLessThan(1e-6);
            added += 1;
          }
        }),
        { numRuns: 200 },
      );
      expect(added).toBeGreaterThan(4);
    });
  },
);

describe('what is told together', () => {
  const storm = calculatorOf('storm-runoff');
  const told = (query: string, names: readonly string[], system: UnitSystem = 'us') => {
    const { values } = runQuery(storm, query);
    return names.map((name) => printName(storm, values, name, system));
  };
  it('is as fine as its coarsest result, or as what was typed where that is finer', () => {
    expect(told('rain=3in', ['runoffIn', 'heldFirstIn', 'soakedIn', 'stayedIn']).every((text) => /^\d+\.\d in$/.test(text))).toBe(true);
    expect(told('rain=3.25in', ['runoffIn', 'heldFirstIn', 'soakedIn', 'stayedIn']).every((text) => /^\d+\.\d\d in$/.test(text))).toBe(true);
  });
  it('leaves the whole as fine as it needs to be', () => {
    const ponding = calculatorOf('ponding');
    const note = (query: string): string => runQuery(ponding, query).note;
    expect(note('rain=2in')).toMatch(/^2\.0 in of rain .* about \d\.\d in runs off/);
    expect(note('rain=2.35in')).toMatch(/^2\.35 in of rain .* about \d\.\d\d in runs off .* \d\.\d\d in soaks in/);
  });
  it('stands the same in headline, picture and note', () => {
    const outcome = runQuery(storm, 'rain=3in');
    const lead = toldNumber(storm, outcome.values, 'runoffIn', 'us');
    expect(outcome.note).toContain(`${lead?.value.toFixed(1)} in ran off`);
  });
  it('tells what is bought as it is by itself, and hay on hand takes what rounding leaves', () => {
    const hay = calculatorOf('hay-to-grass');
    const parts = (query: string, names: readonly string[]) => {
      const { values } = runQuery(hay, `from=2026-12-05&to=2027-04-20&baled=2026-06-15${query}`);
      return names.map((name) => readBack(printName(hay, values, name, 'us')));
    };
    // 60 bales of 950 lb are 28.5 tons. Whoever orders by the tons must not order half a ton short.
    const from = ['ownTon', 'ownUsedTon', 'buyTon', 'haveTon'];
    expect(parts('', from)).toEqual([29, 28, 140, 168]);
    expect(parts('&feeder=cone', from)).toEqual([29, 29, 112, 141]);
    for (const query of ['', '&feeder=cone', '&own=37', '&own=100&storage=barn', '&herd.stock=cow&herd.count=20']) {
      const { values } = runQuery(hay, `from=2026-12-05&to=2027-04-20&baled=2026-06-15${query}`);
      expect(parts(query, ['buyTon']), query).toEqual([Math.round(Number(values['buyTon']))]);
    }
    // What they eat, all of it hay, is 111 tons in the words too.
    const to = ['dryMatterTon', 'eatenTon', 'feedingLostTon', 'storageLostTon', 'waterTon', 'haveTon'];
    for (const query of ['', '&feeder=cone', '&feeder=unrolled&storage=barn', '&storage=ground-covered&moisture=12pct']) {
      const [all = Number.NaN, eaten = Number.NaN, ...lost] = parts(query, to);
      expect([all, eaten]).toEqual([111, 111]);
      expect(eaten + add(lost.slice(0, -1))).toBe(lost.at(-1));
    }
  });
  it('has a decimal where it is a few tons, and stays whole where it is many', () => {
    const hay = calculatorOf('hay-to-grass');
    const told = (query: string, names: readonly string[]) => {
      const { values } = runQuery(hay, `from=2026-12-05&to=2027-04-25&baled=2026-06-15&herd.stock=cow&${query}`);
      return names.map((name) => printName(hay, values, name, 'us'));
    };
    // A cow of 1,250 lb and a bale of 950: 95 days at 2.2 % and 46 at 2.5 are 4,050 lb dry, 2.0 tons by hand.
    const names = ['haveTon', 'ownUsedTon', 'buyTon', 'lowHaveTon', 'highHaveTon', 'dryMatterTon', 'ownAtFeedingTon', 'twoWeeksTon'];
    expect(told('herd.count=1&own=1', names)).toEqual([
      '3.1 tons',
      '0.5 tons',
      '2.6 tons',
      '2.5 tons',
      '3.6 tons',
      '2.0 tons',
      '0.5 tons',
      '0.3 tons',
    ]);
    expect(told('herd.count=1&own=0', ['ownTon', 'ownUsedTon'])).toEqual(['0 tons', '0 tons']);
    expect(told('herd.count=45', ['haveTon', 'ownUsedTon', 'buyTon'])).toEqual(['138 tons', '29 tons', '109 tons']);
    // A little to buy beside much that is there is no 1 or 2 tons: then all of them have a decimal.
    const [have = '', own = '', buy = ''] = told('herd.count=10', ['haveTon', 'ownUsedTon', 'buyTon']);
    expect([own, buy].map(readBack)).toEqual([28.5, expect.closeTo(readBack(have) - 28.5, 6)]);
    expect(readBack(buy)).toBeGreaterThan(1.4);
    // No 20.0.
    const quantity = hay.quantities['ownTon'];
    if (quantity?.kind !== 'number') throw new TypeError('no tons on hand');
    const alone = [19.94, 19.96, 20, 350].map((value) => printScalar(value, quantity, 'us'));
    expect(alone).toEqual(['19.9 tons', '20 tons', '20 tons', '350 tons']);
  });
  it('adds up down a column', () => {
    const count = calculatorOf('cover-count');
    const quantity = count.quantities['kinds'];
    const { kinds } = runQuery(count, 'plant=1&litter=1&rock=1&bare=0').computed;
    if (quantity?.kind !== 'rows' || typeof kinds !== 'object') throw new TypeError('no table of kinds');
    expect(printColumn(kinds, quantity, 'sharePercent', 'us')).toEqual(['34', '33', '33', '0']);
    expect(printColumn(kinds, quantity, 'fromPercent', 'us')).toEqual(['1', '1', '1', '0']);
  });
});
