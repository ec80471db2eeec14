import { afterEach, expect, it, vi } from 'vitest';
import storm from '../../calculators/catalog/storm-runoff/definition.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { runTexts } from '../../calculators/ui/sides.ts';

afterEach(() => {
  vi.restoreAllMocks();
});

it('says so when a calculation fails, and shows no result', () => {
  const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const texts = startTexts(storm.inputs);
  expect(runTexts(storm, texts, 'us').outcome).not.toBeNull();
  const failing = {
    ...storm,
    run: () => {
      throw new RangeError('a fault of ours');
    },
  };
  const { outcome, problems } = runTexts(failing, texts, 'us');
  expect(outcome).toBeNull();
  expect(problems.map(({ say }) => say)).toEqual([expect.stringContaining('The fault is in this page')]);
  expect(told).toHaveBeenCalledOnce();
});
