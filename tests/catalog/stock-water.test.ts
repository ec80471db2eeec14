import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/stock-water/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const numberAt = (query: string, name: string): number => Number(resultAt(runQuery(definition, query), name));
const falls = (queries: readonly string[], name: string): void => {
  const found = queries.map((query) => numberAt(query, name));
  expect(found).toEqual([...found].sort((one, other) => other - one));
  expect(found.at(-1)).toBeLessThan(found[0] ?? 0);
};

describe('stock-water', () => {
  it('draws the level to the day when nothing is left, though only each week is drawn', () => {
    const { levels, lastsDays, verdict } = runQuery(definition, '').values;
    if (!Array.isArray(levels)) throw new TypeError('no levels');
    expect(verdict).toBe('short');
    expect([levels[0]?.['atDays'], levels.at(-1)?.['atDays']]).toEqual([0, Number(lastsDays) + 1]);
    expect(levels.at(-1)?.['leftGal']).toBe(0);
  });
  it('lasts less with more stock, more drying up, and more left in the mud', () => {
    falls(
      [5, 20, 60, 200].map((head) => `herd.stock=cow-nursing&herd.count=${head}`),
      'lastsDays',
    );
    falls(
      [0, 0.1, 0.3, 0.5].map((evaporation) => `evaporation=${evaporation}in/d`),
      'lastsDays',
    );
    falls(
      [0, 1, 2, 4].map((dead) => `dead-depth=${dead}ft`),
      'lastsDays',
    );
  });
  it('speaks of lists and of the heat only where lists were used, and not of a figure of one’s own', () => {
    const lists = runQuery(definition, 'intake-from=lists&hot=95f');
    expect(lists.ranges['needGalPerDay']).toMatch(/by the lowest lists/);
    expect(lists.note).toMatch(/On a day of 95/);
    const own = runQuery(definition, 'intake-from=known&hot=95f');
    expect(own.ranges['needGalPerDay']).toMatch(/your own figure/);
    for (const said of [own.note, ...Object.values(own.ranges)]) expect(said).not.toMatch(/lists|95/);
  });
  it('speaks of no heat on a cold day, and of none that the lists of sheep do not know', () => {
    const leads = (query: string) =>
      runQuery(definition, query)
        .cautions.map(({ lead }) => lead)
        .join(' ');
    expect(leads('supply=flow&hot=40f')).toMatch(/If pump or truck fails, stock can die within days/);
    expect(leads('supply=flow&hot=40f')).not.toMatch(/heat/);
    expect(leads('supply=flow&hot=95f')).toMatch(/in this heat, stock can die/);
    const sheep = 'herd.stock=ewe,goat,cow-dry&herd.count=100,20,0';
    for (const hot of [40, 60, 79]) {
      const { note, values } = runQuery(definition, `${sheep}&hot=${hot}f`);
      expect(values['needGalPerDay']).toBe(280);
      expect(note).toMatch(/^By lists that do not go by heat they drink 280 gal/);
    }
    for (const hot of [80, 95]) {
      const { note, values } = runQuery(definition, `${sheep}&hot=${hot}f`);
      expect([values['needGalPerDay'], values['leastNeedGalPerDay']]).toEqual([420, 230]);
      expect(note).toContain(`On a day of ${hot} °F they drink 420 gal`);
    }
    expect(leads(`${sheep}&hot=95f`)).toMatch(/sheep, goats and horses heat is counted as half as much again/);
    expect(leads(`${sheep}&hot=95f`)).not.toMatch(/lists end at 90/);
    expect(leads(`${sheep}&hot=60f`)).not.toMatch(/half as much again/);
    expect(leads('herd.stock=cow-dry&herd.count=20&hot=95f')).not.toMatch(/half as much again/);
  });
  it('names polio where sulfate is high', () => {
    const at = (mgPerL: number) =>
      runQuery(definition, `slip=tested&sulfate=${mgPerL}mg/l`)
        .cautions.map(({ say }) => say)
        .join(' ');
    expect(at(1000)).toMatch(/polio \(polioencephalomalacia\)/);
    expect(at(3000)).toMatch(/polio \(polioencephalomalacia\)/);
    expect(at(900)).not.toMatch(/polio/);
  });
  it('counts drinking alone where nothing dries up', () => {
    // Whole days of a pond without losses are what it holds over what they drink.
    const query = 'evaporation=0in/d&seepage=0in/d&max-depth=4ft';
    expect(numberAt(query, 'lastsDays')).toBe(Math.floor(numberAt(query, 'drinkOnlyDays')));
    expectWithin(numberAt(query, 'lostGal'), 0, 5e-7);
  });
  it('says in the note that foul water is not to be drunk', () => {
    expect(runQuery(definition, 'scum=yes').note).toContain('Nothing should drink it');
    expect(runQuery(definition, 'slip=tested&sulfate=3000mg/l').note).toContain('Nothing should drink it');
    expect(runQuery(definition, '').note).not.toContain('Nothing should drink it');
  });
});
