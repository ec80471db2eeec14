import type { Calculator } from '../kit/define.ts';
import { askedNow } from '../kit/screen.ts';
import { isShown, type Texts } from '../kit/state.ts';
import { isAllTouched, isTouched, pathsOf, type Touched } from './touched.ts';

export interface Stamp {
  readonly is: 'example' | 'link' | 'partly' | 'yours' | 'waiting';
  readonly text: string;
  /** For the line at the bottom of a phone; empty where the figure is all one’s own. */
  readonly short: string;
}

const answers = (count: number): string => (count === 1 ? 'one answer' : `${count} answers`);

/** Whose figures the answer stands on, in one line: every answer counts, folded or not, of a table each cell, and of two sides those that either gives for itself. */
export function stampOf(
  { inputs, layout }: Calculator,
  texts: Texts,
  {
    touched,
    linked,
    waiting,
    theirs = { count: 0, left: [] },
  }: {
    readonly touched: Touched;
    readonly linked: Touched;
    readonly waiting: number;
    readonly theirs?: { readonly count: number; readonly left: readonly string[] } | undefined;
  },
): Stamp {
  if (waiting > 0) return { is: 'waiting', text: `Waits for ${answers(waiting)}`, short: `waits for ${answers(waiting)}` };
  const paths = Object.entries(inputs).flatMap(([key, input]) => (isShown(input, texts) ? pathsOf(inputs, texts, key) : []));
  const left = [...paths.filter((path) => !isTouched(touched, path)), ...theirs.left];
  const unnamed = left.filter((path) => !isTouched(linked, path)).length;
  const all = paths.length + theirs.count;
  const own = all - left.length;
  if (own === 0)
    return linked.size > 0
      ? { is: 'link', text: unnamed > 0 ? `Figures of a link; ${unnamed} from the example` : 'Figures of a link', short: 'from a link' }
      : { is: 'example', text: 'Example, not your numbers', short: 'example' };
  if (left.length === 0) return { is: 'yours', text: 'Your numbers', short: '' };
  const origin = unnamed === 0 ? 'the link' : unnamed === left.length ? 'the example' : 'link and example';
  if (theirs.left.length === 0 && askedNow(inputs, layout, texts).every((each) => isAllTouched(inputs, texts, touched, each)))
    return { is: 'partly', text: `Your answers; ${left.length} more from ${origin}`, short: `${left.length} not yours` };
  return { is: 'partly', text: `${own} of ${all} yours; the rest from ${origin}`, short: `${own} of ${all} yours` };
}
