import type { UnitSystem } from '../units/units.ts';
import type { Calculator, Run } from './define.ts';
import { readForm, type Texts, type Values } from './state.ts';

export type Ran = Run & { readonly values: Values };

/** Reads one side of a form and computes it, for page, command, case and law alike. What must be said of the texts stands before the other cautions. */
export function runTexts(calculator: Calculator, texts: Texts, system: UnitSystem = 'us'): Ran {
  const { problems, remarks, ...read } = readForm(calculator.inputs, texts, system);
  const run: Run = problems.length > 0 ? { refusals: problems } : calculator.run(read.values, system);
  return 'outcome' in run ? { ...read, outcome: { ...run.outcome, cautions: [...remarks, ...run.outcome.cautions] } } : { ...read, ...run };
}
