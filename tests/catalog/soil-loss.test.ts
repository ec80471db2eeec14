import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import soilLoss from '../../calculators/catalog/soil-loss/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const lossAt = (query: string): number => Number(resultAt(runQuery(soilLoss, query), 'lossTonPerAc'));

describe('soil-loss', () => {
  it('lets a soil bear more the deeper its roots can go', () => {
    // The five classes of T, one for each depth, where the subsoil can be made into topsoil.
    const bears = (rooting: string): number => Number(resultAt(runQuery(soilLoss, `tolerance-from=depth&rooting=${rooting}`), 'toleratedTonPerAc'));
    expect(['to-10', 'to-20', 'to-40', 'to-60', 'deeper'].map(bears)).toEqual([1, 2, 3, 4, 5]);
  });
  it('draws the loss from bare ground to full cover', () => {
    const { curve } = runQuery(soilLoss, '').values;
    const covers = Array.isArray(curve) ? curve.map((row) => row['atCoverPercent']) : [];
    expect(covers).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100]);
  });
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
  // Both forms worked by hand from the printed equations, sin θ = s / √(10000 + s²): wischmeier-smith-1978, p. 12; renard-1997, eq. 4-4 and 4-5.
  it.each([
    [3, 0.26, 0.35],
    [9, 1.0, 1.01],
    [18, 2.93, 2.48],
    [20, 3.48, 2.79],
    [30, 6.78, 4.33],
    [50, 15.19, 7.01],
  ])('shows both forms of steepness at %d %%', (slope, older, later) => {
    const at = (book: string) => runQuery(soilLoss, `slope-from=known&slope=${slope}&slope-book=${book}`);
    const [old, revised] = [at('handbook-1978'), at('revised-1997')];
    for (const [outcome, own, other] of [
      [old, older, later],
      [revised, later, older],
    ] as const) {
      expectWithin(Number(resultAt(outcome, 'steepnessRatio')), own, 5e-3);
      expectWithin(Number(resultAt(outcome, 'otherSteepnessRatio')), other, 5e-3);
      expect(outcome.shown).toEqual(expect.arrayContaining(['steepnessRatio', 'otherSteepnessRatio']));
    }
    expect(resultAt(old, 'otherTonPerAc')).toBe(resultAt(revised, 'lossTonPerAc'));
    expect(resultAt(revised, 'otherTonPerAc')).toBe(resultAt(old, 'lossTonPerAc'));
  });
  it('warns past 18 percent, whichever form works the slope', () => {
    for (const book of ['handbook-1978', 'revised-1997']) {
      const warns = (slope: string) =>
        runQuery(soilLoss, `slope-from=known&slope=${slope}&slope-book=${book}`).cautions.some(({ say }) => say.includes('past 18 percent'));
      expect([warns('18'), warns('18.1'), warns('20')]).toEqual([false, true, true]);
    }
  });
  it('credits each form to its own book', () => {
    const credited = (query: string, form: RegExp) => {
      const { uses } = runQuery(soilLoss, query);
      return soilLoss.steps.filter(({ says }, index) => uses[index] !== null && form.test(says)).map(({ source }) => source ?? '');
    };
    const own = /steepness does|length counts/;
    const [old, revised] = [credited('slope-book=handbook-1978', own), credited('slope-book=revised-1997', own)];
    expect(old).toHaveLength(3);
    expect(revised).toHaveLength(3);
    for (const source of old) expect(source).toMatch(/^wischmeier-smith-1978/);
    for (const source of revised) expect(source).toMatch(/^renard-1997/);
  });
});
