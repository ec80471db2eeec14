import type { Calculator, Outcome } from '../calculators/kit/define.ts';
import { fromLink } from '../calculators/kit/link.ts';
import type { Texts } from '../calculators/kit/state.ts';
import { otherTexts, runTexts } from '../calculators/ui/sides.ts';
import examples from '../content/place/examples.json';
import { calculatorOf } from './catalog.ts';

export interface Worked {
  readonly calculator: Calculator;
  readonly query: string;
  readonly says: string;
  readonly texts: Texts;
  readonly others: Texts | null;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
}

/**
 * A worked example of the demo place, computed as the page itself computes it.
 * @throws Error if there is no such example, or it does not compute: the build must not go on with a hole in a guide
 */
export function workedExample(name: string): Worked {
  const found = new Map(Object.entries(examples)).get(name);
  if (!found) throw new Error(`no example "${name}" in content/place/examples.json`);
  const calculator = calculatorOf(found.slug);
  const { form, notices } = fromLink(calculator, found.query);
  const others = otherTexts(calculator, form);
  const mine = runTexts(calculator, form.this, 'us');
  const theirs = others && runTexts(calculator, others, 'us');
  const problems = [...mine.problems, ...(theirs?.problems ?? [])].map(({ say }) => say);
  if (!mine.outcome || problems.length > 0 || notices.length > 0) throw new Error(`example "${name}": ${[...problems, ...notices].join(' ')}`);
  return { calculator, query: found.query, says: found.says, texts: form.this, others, outcome: mine.outcome, other: theirs?.outcome ?? null };
}
