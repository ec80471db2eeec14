import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import type { Texts } from '../../calculators/kit/state.ts';
import { otherTexts, runSide } from '../../calculators/ui/sides.ts';
import placeExamples from '../../content/place/examples.json';
import { guides } from '../guides/guides.ts';
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

interface Example {
  readonly slug: string;
  readonly query: string;
  readonly says: string;
}

/** The examples of the place and of every guide's head, by name. Of two with one name neither could be meant, so the build stops. */
function allExamples(): ReadonlyMap<string, Example> {
  const lists = [
    { where: 'content/place/examples.json', examples: placeExamples },
    ...guides.map(({ id, data }) => ({ where: `content/guides/${id}.mdx`, examples: data.examples })),
  ];
  const found = new Map<string, Example & { readonly where: string }>();
  for (const { where, examples } of lists) {
    for (const [name, example] of Object.entries(examples)) {
      const earlier = found.get(name);
      if (earlier) throw new Error(`two examples are called "${name}": in ${earlier.where} and in ${where}`);
      found.set(name, { ...example, where });
    }
  }
  return found;
}
const examples = allExamples();

/**
 * A worked example of the demo place, computed as the page itself computes it.
 * @throws Error if there is no such example, or it does not compute: the build must not go on with a hole in a guide
 */
export function workedExample(name: string): Worked {
  const found = examples.get(name);
  if (!found) throw new Error(`no example "${name}" in the head of a guide or in content/place/examples.json`);
  const calculator = calculatorOf(found.slug);
  const { form, notices } = fromLink(calculator, found.query);
  const others = otherTexts(calculator, form);
  const mine = runSide(calculator, form.this, 'us');
  const theirs = others && runSide(calculator, others, 'us');
  const problems = [...mine.problems, ...(theirs?.problems ?? [])].map(({ say }) => say);
  if (!mine.outcome || problems.length > 0 || notices.length > 0) throw new Error(`example "${name}": ${[...problems, ...notices].join(' ')}`);
  return { calculator, query: found.query, says: found.says, texts: form.this, others, outcome: mine.outcome, other: theirs?.outcome ?? null };
}
