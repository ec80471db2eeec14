import { expect, it } from 'vitest';
import { allChecks, bySubject, checksBehind, isFromOutside } from '../../src/catalog/checks.ts';

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

it('lists every value under one subject', () => {
  const listed = bySubject(allChecks()).flatMap(([, list]) => list);
  expect(listed.length).toBe(allChecks().length);
  expect(new Set(listed).size).toBe(listed.length);
});

it('knows the values behind one calculator, those of its functions among them, and no others', () => {
  const behind = new Set(checksBehind('storm-runoff').map((each) => each.of));
  expect(behind).toContain('runoffIn');
  expect(behind).not.toContain('usableForageLb');
  expect(checksBehind('carrying-capacity').map((each) => each.of)).toContain('usableForageLb');
});
