import type { Calculator, Outcome } from './define.ts';
import { shortHelpText } from './helpLines.ts';

/** The note to take along, of one side or of both, each by its name or by what it does differently, with whom to call where the calculation weighs on people. */
export const noteOf = (
  { weighsOnPeople }: Calculator,
  outcome: Outcome,
  other: Outcome | null = null,
  titles: readonly [string, string] = ['', ''],
): string =>
  [
    ...(other ? [`${titles[0] || 'This'}: ${outcome.note}`, `${titles[1] || 'That'}: ${other.note}`] : [outcome.note]),
    ...(weighsOnPeople ? [shortHelpText] : []),
  ].join('\n');
