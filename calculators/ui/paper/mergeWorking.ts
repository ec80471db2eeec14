import type { Calculator, Outcome } from '../../kit/define.ts';
import type { Texts } from '../../kit/state.ts';
import { fillWorking } from '../fillWorking.tsx';
import { elementsOf, type Markup } from '../markup.ts';

export interface WorkedSide {
  readonly title: string;
  readonly is: 'this' | 'that';
  readonly texts: Texts;
  readonly outcome: Outcome;
}

/** The drawn steps with the numbers of one side; what was not used is gone. */
function worked(drawn: readonly Markup[], calculator: Calculator, { texts, outcome }: WorkedSide): HTMLElement {
  const box = document.createElement('div');
  box.append(elementsOf(drawn));
  for (const each of box.querySelectorAll('summary, [data-working-sides], .working-title')) each.remove();
  fillWorking(box, calculator, texts, outcome);
  for (const each of box.querySelectorAll('.step [hidden]')) each.remove();
  for (const each of box.querySelectorAll('[tabindex]')) each.removeAttribute('tabindex');
  return box;
}

function titled({ title, is }: WorkedSide, ...parts: readonly Node[]): HTMLElement {
  const box = document.createElement('div');
  const name = document.createElement('b');
  name.className = `word-${is}`;
  name.textContent = title;
  box.className = 'of-side';
  box.append(name, ...parts);
  return box;
}

function listOf(lines: readonly Element[]): HTMLElement {
  const list = document.createElement('ul');
  list.className = 'put-in';
  list.append(...lines);
  return list;
}

/** Sentence and sums of a step, apart. */
const partsOf = (step: Element): { readonly says: string; readonly sums: readonly Element[] } => ({
  says: step.querySelector('[data-says]')?.textContent ?? '',
  sums: [...step.children].filter((each) => !each.classList.contains('step-text')),
});

/** The working of one side, or of both step by step: what reads the same stands once, the rest under each side's name. The list of answers is the first side's; what the other answers differently follows it. */
export function mergeWorking(drawn: readonly Markup[], calculator: Calculator, mine: WorkedSide, theirs: WorkedSide | null): HTMLElement {
  const box = worked(drawn, calculator, mine);
  const other = theirs && worked(drawn, calculator, theirs);
  if (theirs && other) {
    const [here, there] = [box, other].map((side) => [...side.querySelectorAll('.put-in > li')]);
    const unlike = there?.filter(({ textContent }) => !here?.some((each) => each.textContent === textContent)) ?? [];
    if (unlike.length > 0) box.querySelector('[data-put-in]')?.append(titled(theirs, listOf(unlike)));
  }
  for (const step of box.querySelectorAll<HTMLElement>('.step')) {
    const beside = other?.querySelector<HTMLElement>(`[data-step="${step.dataset['step'] ?? ''}"]`);
    if (!theirs || !beside) {
      if (step.hidden) step.remove();
      continue;
    }
    if (step.hidden && beside.hidden) step.remove();
    else if (step.hidden || beside.hidden) {
      const [shown, side] = step.hidden ? [beside, theirs] : [step, mine];
      const { sums } = partsOf(shown);
      shown.append(titled(side, ...sums));
      step.replaceWith(shown);
    } else if (step.textContent !== beside.textContent) {
      const [here, there] = [partsOf(step), partsOf(beside)];
      const sentence = step.querySelector('[data-says]');
      if (here.says !== there.says && sentence) sentence.textContent = `${mine.title}: ${here.says} ${theirs.title}: ${there.says}`;
      // The formula itself stands once; the second side has its numbers.
      const ways = [step, beside].map((each) => each.querySelector<HTMLElement>('[data-way]')?.dataset['way']);
      if (ways[0] === ways[1])
        for (const sum of there.sums)
          for (const formula of sum.querySelectorAll('[data-way] > .formula:not(.is-numbers), .row-formulas')) formula.remove();
      step.append(titled(mine, ...here.sums), titled(theirs, ...there.sums));
    }
  }
  return box;
}
