import { render } from 'preact';
import type { Calculator, Outcome } from '../kit/define.ts';
import { fillWords, printName, printScalar, printWorking } from '../kit/print.ts';
import { digitsTold, type Scalar } from '../kit/quantities.ts';
import type { Texts } from '../kit/state.ts';
import { printIn } from '../units/printQuantity.ts';
import { WorkingInputs, WorkingRows } from './WorkingParts.tsx';

const scalarOf = (outcome: Outcome, name: string): Scalar | undefined => {
  const value = outcome.values[name];
  return typeof value === 'object' ? undefined : value;
};

/** A step's sentence with its numbers in, in the equation's own units. */
export const sayStep = (calculator: Calculator, outcome: Outcome, says: string): string =>
  fillWords(says, (name) => printName(calculator, outcome.values, name, 'us'));

/** What a step comes to, with its unit. */
export function stepResult(calculator: Calculator, outcome: Outcome, name: string): string {
  const quantity = calculator.quantities[name];
  const value = scalarOf(outcome, name);
  if (!quantity || quantity.kind === 'rows' || value === undefined) return '';
  return quantity.kind === 'number' && typeof value === 'number'
    ? printIn(value, quantity.unit, Math.max(digitsTold(value, quantity) + 1, 0))
    : printScalar(value, quantity, 'us');
}

/** Puts the numbers into the formulas that were drawn at build, and shows the ways that were used. Looks only inside `box`: names repeat on a page with two calculators. */
export function fillWorking(box: Element, calculator: Calculator, texts: Texts, outcome: Outcome): void {
  const putIn = box.querySelector('[data-put-in]');
  if (putIn) render(<WorkingInputs calculator={calculator} texts={texts} outcome={outcome} />, putIn);
  for (const [index, step] of calculator.steps.entries()) {
    const item = box.querySelector<HTMLElement>(`[data-step="${index}"]`);
    const use = outcome.uses[index];
    if (!item || use === undefined) continue;
    item.hidden = use === null;
    if (use === null) continue;
    // Its words came with the drawn step: a definition in a browser has none of them.
    const sentence = item.querySelector<HTMLElement>('[data-says]');
    if (sentence) sentence.textContent = sayStep(calculator, outcome, sentence.dataset['says'] ?? '');
    for (const way of item.querySelectorAll<HTMLElement>('[data-way]')) way.hidden = way.dataset['way'] !== String(use);
    for (const hole of item.querySelectorAll<HTMLElement>('[data-q]')) {
      const name = hole.dataset['q'] ?? '';
      hole.textContent = printWorking(calculator, name, scalarOf(outcome, name));
    }
    for (const result of item.querySelectorAll<HTMLElement>('[data-result]'))
      result.textContent = stepResult(calculator, outcome, result.dataset['result'] ?? '');
    const table = item.querySelector('[data-rows]');
    if (table && step.kind === 'rows') render(<WorkingRows calculator={calculator} step={step} index={index} outcome={outcome} />, table);
  }
}
