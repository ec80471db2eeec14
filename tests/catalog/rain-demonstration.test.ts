import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import rainDemonstration from '../../calculators/catalog/rain-demonstration/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const numberAt = (query: string, path: string): number => Number(resultAt(runQuery(rainDemonstration, query), path));

describe('rain-demonstration', () => {
  it('finds all the water again: off the top, out below, or in the tray', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 0, max: 1700 }), (runoff, through) => {
        const query = `runoff=${runoff}&through=${through}`;
        const parts = ['runoffPercent', 'throughPercent', 'heldPercent'].map((name) => numberAt(query, name));
        expectWithin(
          parts.reduce((sum, part) => sum + part, 0),
          100,
          1e-9,
        );
      }),
    );
  });
  it('rains half as hard when the jar takes twice as long, and needs twice the holes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 400 }), (seconds) => {
        const slow = `fill=${2 * seconds}s`;
        expectWithin(numberAt(slow, 'rateInPerHr'), numberAt(`fill=${seconds}s`, 'rateInPerHr') / 2, 1e-9);
        expectWithin(numberAt(slow, 'holesExactCount'), numberAt(`fill=${seconds}s`, 'holesExactCount') * 2, 1e-9);
      }),
    );
  });
  it('lets trays that differ in more than the cover tell nothing', () => {
    const outcome = runQuery(rainDemonstration, 'alike=no');
    expect(outcome.values['tells']).toBe('unlike');
    expect(outcome.note).toContain('tells nothing');
  });
  it('refuses jars that hold more than was poured, but for the error of the eye', () => {
    expect(() => runQuery(rainDemonstration, 'runoff=4000&through=1000')).toThrow('more than was put on');
    expect(runQuery(rainDemonstration, 'runoff=4000&through=760').cautions.some(({ say }) => say.includes('reading error'))).toBe(true);
  });
});
