import type { UnitSystem } from '../units/units.ts';
import type { Calculator, Run } from './define.ts';
import { type Problem, readForm, type Texts, type Values } from './state.ts';

export type Ran = Run & { readonly values: Values };

/** Reads one side of a form and computes it, for page, command, case and law alike. What must be said of the texts stands before the other cautions. */
export function runTexts(calculator: Calculator, texts: Texts, system: UnitSystem = 'us'): Ran {
  const { problems, remarks, ...read } = readForm(calculator.inputs, texts, system);
  const run: Run = problems.length > 0 ? { refusals: problems } : calculator.run(read.values, system);
  // To copy an outcome is to tell all of it.
  if (remarks.length === 0) return { ...read, ...run };
  return 'outcome' in run ? { ...read, outcome: { ...run.outcome, cautions: [...remarks, ...run.outcome.cautions] } } : { ...read, ...run };
}

/** What a form refuses of these texts, without working them out: one that runs long would be felt. */
export function refusalsIn(calculator: Calculator, texts: Texts, system: UnitSystem = 'us'): readonly Problem[] {
  const { problems, values } = readForm(calculator.inputs, texts, system);
  return problems.length > 0 ? problems : calculator.refuses(values);
}
