import type { Calculator } from '../../../calculators/kit/define.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { readForm, startTexts, type Texts } from '../../../calculators/kit/state.ts';
import type { Result } from '../model/result.ts';

// Whose the figures of a kept result were: the words are those of `calculators/ui/stamp.ts`.

/** All of it, all that is asked at first sight (a ring's depth or the water in it may stand as the form has it), or all figures of a link that somebody kept on purpose. */
const isOwnStamp = (stamp: string | undefined): boolean => stamp === undefined || stamp === 'Figures of a link' || stamp.startsWith('Your answers; ');
const isExampleStamp = (stamp: string | undefined): boolean => stamp === 'Example, not your numbers';

/** What was read, row by row: the tables that no place fills. */
function rowsRead({ inputs }: Calculator, texts: Texts): readonly string[] {
  const { values } = readForm(inputs, texts);
  return Object.entries(inputs).flatMap(([key, input]) => {
    const rows = input.kind === 'rows' && input.offeredBy === undefined ? values[key] : undefined;
    return Array.isArray(rows) ? rows.map((row) => JSON.stringify(row)) : [];
  });
}
/**
 * Whether what somebody measured is their own in a kept result: by its stamp; else where every reading is another than the example's, for who timed three
 * rings and left the moisture as it stood has measured all the same. An older calculator had another example, so there the stamp alone decides.
 */
export function areOwnReadings(calculator: Calculator, { stamp, link, version }: Pick<Result, 'stamp' | 'link' | 'version'>): boolean {
  if (isOwnStamp(stamp)) return true;
  if (isExampleStamp(stamp) || version !== calculator.version) return false;
  const examples = new Set(rowsRead(calculator, startTexts(calculator.inputs)));
  const read = rowsRead(calculator, fromLink(calculator, link).form.this);
  return read.length > 0 && !read.some((row) => examples.has(row));
}
