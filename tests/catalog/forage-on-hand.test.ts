import { expect, it } from 'vitest';
import { airDryPercentOf } from '../../calculators/catalog/forage-on-hand/compute.ts';
import definition from '../../calculators/catalog/forage-on-hand/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';

const result = (query: string, path: string): number => Number(resultAt(runQuery(definition, query), path));

it('takes the stubble off once if the cut was at the ground, and not at all if it was at the stubble', () => {
  const clipped = result('clipped-to=stubble', 'clippedLbPerAc');
  expect(result('clipped-to=stubble', 'availableLbPerAc')).toBe(clipped);
  expect(Math.abs(Number(result('clipped-to=ground&stubble=900lb/ac', 'availableLbPerAc')) - (Number(clipped) - 900))).toBeLessThan(1e-9);
});
it('takes the fewer days where nobody has said where the cut was, and says so with the other figure', () => {
  const days = (query: string): number => result(query, 'grazingForDays');
  expect(days('')).toBe(days('clipped-to=ground'));
  expect(result('', 'cutHighGrazingDays')).toBe(days('clipped-to=stubble'));
  const asked = (query: string): boolean => runQuery(definition, query).cautions.some(({ say }) => say.startsWith('You have not said where you cut'));
  expect(['', 'clipped-to=ground', 'clipped-to=stubble', 'way=height-known', 'way=plate'].map(asked)).toEqual([true, false, false, false, true]);
  expect(runQuery(definition, '').note).toContain('was not said');
});
it('speaks of no stubble that was never measured', () => {
  expect(runQuery(definition, 'clipped-to=stubble').shown).not.toContain('standingLbPerAc');
  expect(runQuery(definition, 'clipped-to=stubble').shown).not.toContain('stubbleKeptLbPerAc');
  for (const query of ['clipped-to=ground', 'way=height-known&clipped-to=stubble'])
    expect(runQuery(definition, query).shown).toContain('stubbleKeptLbPerAc');
});
it('cuts what was found into eaten, trampled and stubble, with nothing over', () => {
  for (const query of ['', 'clipped-to=stubble', 'way=height-clips', 'way=height-stand&stubble-height=30in', 'way=plate']) {
    const [eaten, trampled, stubble, whole] = ['eatenLbPerAc', 'trampledLbPerAc', 'stubbleKeptLbPerAc', 'standingLbPerAc'].map((path) =>
      result(query, path),
    );
    expect(Math.abs(Number(eaten) + Number(trampled) + Number(stubble) - Number(whole)), query).toBeLessThan(1e-6);
  }
});
it('keeps the days inside their range in each way of measuring', () => {
  for (const way of ['clips', 'height-clips', 'height-known', 'height-stand', 'plate']) {
    expect(result(`way=${way}`, 'lowGrazingDays'), way).toBeLessThan(result(`way=${way}`, 'grazingForDays'));
    expect(result(`way=${way}`, 'highGrazingDays'), way).toBeGreaterThan(result(`way=${way}`, 'grazingForDays'));
  }
});
it('asks for more plots where they differ more, and trusts their mean less', () => {
  const [even, uneven] = ['plots.green=280g,300g,320g,300g', 'plots.green=100g,300g,500g,300g'];
  expect(result(uneven, 'neededPlots')).toBeGreaterThan(result(even, 'neededPlots'));
  expect(result(uneven, 'closePercent')).toBeGreaterThan(result(even, 'closePercent'));
  expect(() => runQuery(definition, 'plots.green=300g')).toThrow('at least two');
  expect(() => runQuery(definition, 'way=height-clips&calibration.cut=4in,5in&calibration.green=200g,260g')).toThrow('at least three');
});
it('takes a plate only by ten clips of its own that get heavier as it rises', () => {
  const pairs = (count: number): string =>
    `way=plate&plate-pairs.pair-reading=${Array.from({ length: count }, (_, at) => at + 5).join(',')}&plate-pairs.green=${Array.from({ length: count }, (_, at) => `${100 + 20 * at}g`).join(',')}`;
  expect(() => runQuery(definition, pairs(9))).toThrow('ten clips');
  expect(result(pairs(10), 'lineOffLbPerAc')).toBeLessThan(1e-6);
  expect(() => runQuery(definition, pairs(10).replace('280g', '1g').replace('100g', '900g').replace('260g', '1g'))).toThrow('do not get heavier');
});
it('takes the water out by the kind of grass and its stage', () => {
  // National Range and Pasture Handbook, chapter 4: air-dry weight in a hundred of green weight (from memory).
  const row = (grass: Parameters<typeof airDryPercentOf>[0]) =>
    (['before-heading', 'headed', 'seed-ripe', 'leaves-dry', 'dormant'] as const).map((stage) => airDryPercentOf(grass, stage));
  expect(row('cool-season')).toEqual([35, 45, 60, 85, 95]);
  expect(row('warm-tall')).toEqual([30, 45, 60, 85, 95]);
  expect(row('warm-mid')).toEqual([40, 55, 65, 90, 95]);
  expect(row('warm-short')).toEqual([45, 60, 80, 90, 95]);
});
