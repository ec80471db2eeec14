import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/cover-count/definition.ts';
import { runLink, runQuery } from '../../calculators/kit/cases.ts';

const counted = (plant: number, bare: number): string => `plant=${plant}&litter=0&rock=0&bare=${bare}`;

describe('cover-count', () => {
  it('refuses nothing but no count at all: every kind adds to it', () => {
    for (const plant of [0, 50])
      for (const litter of [0, 50])
        for (const rock of [0, 50])
          for (const bare of [0, 50]) {
            const run = runLink(definition, `plant=${plant}&litter=${litter}&rock=${rock}&bare=${bare}`);
            expect('refusals' in run, `${plant}, ${litter}, ${rock}, ${bare}`).toBe(plant + litter + rock + bare === 0);
          }
  });
  it('gives no share of the ground as its answer after a handful of steps', () => {
    const outcome = runQuery(definition, counted(3, 0));
    expect(outcome.shown[0]).toBe('enough');
    // Three of three by the exact interval: its low end is 0.025 to the power of a third, 29 percent.
    expect(outcome.ranges['enough']).toBe('100 % of 3 steps so far met cover; the ground itself may be 29 to 100 % covered (95 in 100)');
    expect(outcome.note).toMatch(/^Only 3 steps, too few to go by/);
  });
  it('says of how many steps a share is until there are a hundred', () => {
    expect(runQuery(definition, counted(20, 10)).ranges['coveredPercent']).toMatch(/^of only 30 steps/);
    expect(runQuery(definition, counted(60, 39)).ranges['coveredPercent']).toMatch(/^of only 99 steps/);
    expect(runQuery(definition, counted(60, 40)).ranges['coveredPercent']).toMatch(/^of 100 steps/);
  });
  it('leads with the share from thirty steps on', () => {
    expect(runQuery(definition, counted(20, 9)).shown[0]).toBe('enough');
    expect(runQuery(definition, counted(20, 10)).shown[0]).toBe('coveredPercent');
  });
});
