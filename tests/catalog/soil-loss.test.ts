import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import soilLoss from '../../calculators/catalog/soil-loss/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';

const lossAt = (query: string): number => Number(resultAt(runQuery(soilLoss, query), 'lossTonPerAc'));

describe('soil-loss', () => {
  it('loses no more when more ground is covered', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 94 }), fc.constantFrom('grass', 'weeds'), (cover, kind) => {
        const query = (percent: number) => `ground-cover=${percent}&cover-kind=${kind}`;
        expect(lossAt(query(cover + 1))).toBeLessThanOrEqual(lossAt(query(cover)));
      }),
    );
  });
  it('loses more on steeper ground and on a longer slope', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 58 }), fc.integer({ min: 20, max: 900 }), (slope, length) => {
        const query = (percent: number, feet: number) => `slope-from=known&slope=${percent}&length-from=known&length=${feet}ft`;
        expect(lossAt(query(slope + 1, length))).toBeGreaterThan(lossAt(query(slope, length)));
        expect(lossAt(query(slope, length + 50))).toBeGreaterThan(lossAt(query(slope, length)));
      }),
    );
  });
  it('never tells a loss under a ton as a number', () => {
    const { shown, note } = runQuery(soilLoss, 'ground-cover=90');
    expect(shown).toContain('lossSize');
    expect(shown).not.toContain('lossTonPerAc');
    expect(note).toContain('under 1 ton an acre');
  });
  it('names bare fallow as bare fallow, and only then', () => {
    const bare = runQuery(soilLoss, 'ploughed=bare-fallow').shown;
    expect(bare).toContain('fallowTonPerAc');
    for (const name of ['ploughedTonPerAc', 'timesRatio', 'ploughedStanding', 'ploughedLoadsCount']) expect(bare).not.toContain(name);
    expect(runQuery(soilLoss, '').shown).not.toContain('fallowTonPerAc');
  });
});
