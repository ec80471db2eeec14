import { expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { PlainStep } from '../../calculators/kit/steps.ts';
import { failingSteps, type Hits, waysNeverUsed } from '../support/evaluateSteps.ts';
import kitchenSink from './kitchenSink.ts';

// The law that holds the working against `compute` must itself be able to fail.
const outcome = runQuery(kitchenSink, 'rain=3in&mean=20f');
const wrongWhen = (change: (step: PlainStep) => PlainStep): readonly string[] =>
  failingSteps({ steps: kitchenSink.steps.map(change) }, outcome, new Map());

it('finds nothing wrong with the definition as it stands', () => {
  expect(wrongWhen((step) => step)).toEqual([]);
});
it('catches a formula that is a millionth off', () => {
  const wrong = wrongWhen((step) =>
    step.kind === 'formula' ? { ...step, ways: step.ways.map(({ formula }) => ({ formula: `(${formula}) \\times 1.000001` })) } : step,
  );
  expect(wrong.map((each) => each.split(':')[0])).toEqual(['keptIn', 'rootIn']);
});
it('catches a row formula, a sum and a check that do not hold', () => {
  const wrong = wrongWhen((step) => {
    if (step.kind === 'check') return { ...step, right: `${step.right} + 0.001` };
    if (step.kind !== 'rows') return step;
    return {
      ...step,
      formulas: { lineLb: [{ formula: String.raw`\q{eachLb}` }, { formula: String.raw`\q{eachLb}` }] },
      sums: { herdLb: 'headCount' },
    };
  });
  expect(wrong.map((each) => each.split(':')[0])).toEqual(['check 3', 'lines.0.lineLb', 'lines.1.lineLb', 'herdLb']);
});
it('does not take a word or a table for a number', () => {
  expect(() => wrongWhen((step) => (step.kind === 'formula' ? { ...step, ways: [{ formula: String.raw`\q{verdict}` }] } : step))).toThrow('verdict');
});
it('names the ways that nothing led to', () => {
  const hits: Hits = new Map();
  failingSteps(kitchenSink, outcome, hits);
  expect(waysNeverUsed(kitchenSink, hits)).toEqual(['step 2, keptIn, way 2', 'step 6, loadLbPerAc, way 1']);
});
