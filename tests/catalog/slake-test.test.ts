import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/slake-test/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';

const result = (query: string, name: string) => resultAt(runQuery(definition, query), name);
const ladder = ['dry', 'by-5', 'by-30', 'by-300', 'crumbs', 'some', 'half', 'most'];

describe('slake-test', () => {
  it('never gives soil that lasted longer or kept more a lower class', () => {
    const classes = ladder.map((seen) => Number(result(`samples.seen=${seen}`, 'meanClass')));
    for (const [index, each] of classes.entries()) if (index > 0) expect(each).toBeGreaterThanOrEqual(classes[index - 1] ?? 0);
    expect(classes.at(0)).toBe(0);
    expect(classes.at(-1)).toBe(6);
  });
  it('gives each answer the class that the method gives it', () => {
    // Half lost within 5, 30 and 300 seconds: 1, 2 and 3. After five dips under 10 percent left: 3; under 25: 4; under 75: 5; more: 6.
    expect(ladder.map((seen) => result(`samples.seen=${seen}`, 'meanClass'))).toEqual([0, 1, 2, 3, 3, 4, 5, 6]);
  });
  it('tells the span of the classes, and of samples that are alike their one class', () => {
    const note = (seen: string) => runQuery(definition, `samples.seen=${seen}`).note;
    expect(note('most,most,most')).toContain('0 (falls apart) to 6 (stays whole), all of class 6, 100 % in the top class');
    expect(note('dry,dry')).toContain(', all of class 0, 0 % in');
    expect(note('most,half')).toContain(', samples 5 to 6, 50 % in');
    expect(note('most')).toContain('(stays whole), 100 % in');
  });
  it('numbers the samples from one', () => {
    expect([result('samples.seen=most,half', 'lines.0.number'), result('samples.seen=most,half', 'lines.1.number')]).toEqual([1, 2]);
  });
  it('does not praise damp crumbs', () => {
    expect(result('dried=dry&samples.seen=most', 'holds')).toBe('well');
    expect(result('dried=damp&samples.seen=most', 'holds')).toBe('damp');
  });
  it('counts every sample once in the bar', () => {
    const { values } = runQuery(definition, '');
    const parts = ['topCount', 'middleCount', 'lowCount', 'goneCount'].reduce((sum, name) => sum + Number(values[name]), 0);
    expect(parts).toBe(values['count']);
  });
  it('calls the clock at the three times that decide the class', () => {
    const { samples } = definition.inputs;
    expect(samples?.kind === 'rows' ? samples.tool?.atS : undefined).toEqual([5, 30, 300]);
  });
});
