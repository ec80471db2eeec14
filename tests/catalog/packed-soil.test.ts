import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import packedSoil from '../../calculators/catalog/packed-soil/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const numberAt = (query: string, path: string): number => Number(resultAt(runQuery(packedSoil, query), path));

describe('packed-soil', () => {
  it('finds more density and fewer pores in a heavier core', () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 700 }), (weight) => {
        const query = (grams: number) => `volume-from=known&ring=350&cores.core=${grams}`;
        expect(numberAt(query(weight + 10), 'fineGPerCm3')).toBeGreaterThan(numberAt(query(weight), 'fineGPerCm3'));
        expect(numberAt(query(weight + 10), 'porosityPercent')).toBeLessThan(numberAt(query(weight), 'porosityPercent'));
      }),
    );
  });
  it('does not take stones for tight soil', () => {
    const core = 'volume-from=known&ring=350&stones=weighed&cores.core=560';
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), (stone) => {
        expect(numberAt(`${core}&cores.stone=${stone}`, 'fineGPerCm3')).toBeLessThan(numberAt(`${core}&cores.stone=0`, 'fineGPerCm3'));
      }),
    );
  });
  it('cuts the cores into pores, soil and stones with nothing over', () => {
    const query = 'volume-from=hole&stones=jar&cores.core=520,610&cores.hole=350,390&cores.stone=60,90&cores.jar=23,35';
    const parts = ['allPoreMl', 'allSolidMl', 'allStoneMl'].map((name) => numberAt(query, name));
    expectWithin(
      parts.reduce((sum, part) => sum + part, 0),
      740,
      5e-10,
    );
  });
  it('puts every published limit on the side of it where the core lies', () => {
    const sides = new Set<string>();
    for (let grams = 300; grams <= 700; grams += 5)
      for (const texture of ['sandy-loam', 'loam', 'clay', 'silt-loam']) {
        const { values } = runQuery(packedSoil, `volume-from=known&ring=350&cores.core=${grams}&texture=${texture}`);
        const density = Number(values['fineGPerCm3']);
        for (const row of Array.isArray(values['limits']) ? values['limits'] : []) {
          const limit = Number(row['limitGPerCm3']);
          // Roots suffer from a limit on; they are stopped above one.
          const isPast = row['limit'] === 'stop' ? density > limit : density >= limit;
          expect(row['side'], `${grams} g, ${texture}, ${row['list']}`).toBe(isPast ? 'past' : 'short');
          sides.add(`${row['limit']} ${row['side']}`);
        }
      }
    expect([...sides].sort()).toEqual(['ideal past', 'ideal short', 'stop past', 'stop short', 'suffer past', 'suffer short']);
  });
  it('reads nothing from a probe in dry or wet soil', () => {
    for (const moisture of ['dry', 'wet']) {
      const { shown, note, cautions } = runQuery(packedSoil, `probe=pushed&moisture=${moisture}`);
      expect(shown).not.toContain('stoppedPercent');
      expect(note).toContain(`means nothing, the soil was too ${moisture}`);
      expect(cautions.map(({ say }) => say).join(' ')).toContain('means nothing');
    }
    expect(runQuery(packedSoil, 'probe=pushed&moisture=sponge').shown).toContain('stoppedPercent');
  });
});
