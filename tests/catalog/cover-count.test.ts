import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/cover-count/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';

const counted = (plant: number, bare: number): string => `plant=${plant}&litter=0&rock=0&bare=${bare}`;

describe('cover-count', () => {
  it('gives no share of the ground as its answer after a handful of steps', () => {
    const outcome = runQuery(definition, counted(3, 0));
    expect(outcome.shown[0]).toBe('enough');
    // Three of three by the exact interval: its low end is 0.025 to the power of a third, 29 percent.
    expect(outcome.ranges['enough']).toBe('100 % of 3 steps so far met cover; the ground itself may be 29 % to 100 % covered (95 in 100)');
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
