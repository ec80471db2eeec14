import { expect, it } from 'vitest';
import { allChecks, isFromOutside } from '../../src/catalog/checks.ts';

const outside = allChecks().filter(isFromOutside);
const of = (name: string) => outside.filter((each) => each.of === name);

it('tells functions that calculators rest on from those that wait for one', () => {
  expect(of('runoffIn').length).toBeGreaterThan(100);
  expect(of('runoffIn').every(({ isUsed }) => isUsed)).toBe(true);
  expect(of('penmanMonteithMm').length).toBeGreaterThan(0);
  expect(of('penmanMonteithMm').some(({ isUsed }) => isUsed)).toBe(false);
});

it('counts a value once where a calculator repeats what checks its function', () => {
  const printed = (name: string) => of(name).map(({ check }) => `${check.source} ${check.printed}`);
  const ofFunction = new Set(printed('runoffIn'));
  expect(printed('storm-runoff').filter((each) => ofFunction.has(each))).toEqual([]);
});

it('rests on at least 1,400 values that somebody read', () => {
  expect(outside.filter(({ isUsed }) => isUsed).length).toBeGreaterThanOrEqual(1400);
});
