import type { Calculator, Outcome } from './define.ts';
import { shortHelpText } from './helpLines.ts';

/** The note to take along, of one side or of both, each by its name or by what it does differently, then what lies `between` them in words, with whom to call where the calculation weighs on people. */
export const noteOf = (
  { weighsOnPeople }: Calculator,
  outcome: Outcome,
  other: Outcome | null = null,
  titles: readonly [string, string] = ['', ''],
  between = '',
): string => {
  const [mine, theirs] = [titles[0] || 'This', titles[1] || 'That'];
  return [
    ...(other ? [`${mine}: ${outcome.note}`, `${theirs}: ${other.note}`] : [outcome.note]),
    ...(other && between !== '' ? [`${theirs} beside ${mine}: ${between}.`] : []),
    ...(weighsOnPeople ? [shortHelpText] : []),
  ].join('\n');
};
