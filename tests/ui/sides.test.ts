import { afterEach, expect, it, vi } from 'vitest';
import carryingCapacity from '../../calculators/catalog/carrying-capacity/definition.ts';
import restAndMoves from '../../calculators/catalog/rest-and-moves/definition.ts';
import storm from '../../calculators/catalog/storm-runoff/definition.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { runSide } from '../../calculators/ui/sides.ts';
import { sideTitles } from '../../calculators/ui/sideTitles.ts';

afterEach(() => {
  vi.restoreAllMocks();
});

it('says so when a calculation fails, and shows no result', () => {
  const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const texts = startTexts(storm.inputs);
  expect(runSide(storm, texts, 'us').outcome).not.toBeNull();
  const failing = {
    ...storm,
    run: () => {
      throw new RangeError('a fault of ours');
    },
  };
  const { outcome, problems } = runSide(failing, texts, 'us');
  expect(outcome).toBeNull();
  expect(problems.map(({ say }) => say)).toEqual([expect.stringContaining('The fault is in this page')]);
  expect(told).toHaveBeenCalledOnce();
});

const titlesOf = (query: string): readonly [string, string] => {
  const { form } = fromLink(restAndMoves, query);
  return sideTitles(restAndMoves, form.this, form.that, 'us');
};

it('names two things that differ, and counts the rest', () => {
  expect(titlesOf('paddock=8&that.paddock=16')).toEqual(['paddocks today 8', 'paddocks today 16']);
  expect(titlesOf('paddock=8&stay=4d&that.paddock=16&that.stay=2d')).toEqual([
    'paddocks today 8, days a herd stays in one 4 days',
    'paddocks today 16, days a herd stays in one 2 days',
  ]);
  expect(titlesOf('paddock=8&stay=4d&herd=1&that.paddock=16&that.stay=2d&that.herd=2')[1]).toMatch(/, and 1 more$/);
  expect(titlesOf('paddock=8&that=same')).toEqual(['', '']);
  const { form } = fromLink(carryingCapacity, 'go=2026-07-10&that.go=2026-08-10');
  expect(sideTitles(carryingCapacity, form.this, form.that, 'us')[1]).toBe('day by which they could go Aug 10, 2026');
});
