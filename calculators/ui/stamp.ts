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

/** Whose figures the answer stands on, in one line. */
export function stampOf(
  { inputs, layout }: Calculator,
  texts: Texts,
  {
    touched,
    linked,
    waiting,
    unlike = [],
  }: { readonly touched: Touched; readonly linked: Touched; readonly waiting: number; readonly unlike?: readonly string[] },
): Stamp {
  if (waiting > 0) return { is: 'waiting', text: `Waits for ${answers(waiting)}`, short: `waits for ${answers(waiting)}` };
  // Every answer counts, folded or not, and of a table each cell: one ring of three is one's own though the others are not.
  const paths = Object.entries(inputs).flatMap(([key, input]) => (isShown(input, texts) ? pathsOf(inputs, texts, key) : []));
  const left = paths.filter((path) => !isTouched(touched, path));
  const unnamed = left.filter((path) => !isTouched(linked, path)).length;
  const nobodys: Stamp =
    linked.size > 0
      ? { is: 'link', text: unnamed > 0 ? `Figures of a link; ${unnamed} from the example` : 'Figures of a link', short: 'from a link' }
      : { is: 'example', text: 'Example, not your numbers', short: 'example' };
  if (unlike.length > 0) return touched.size > 0 ? stampOfTwo(unlike, touched) : nobodys;
  const own = paths.length - left.length;
  if (own === 0) return nobodys;
  if (left.length === 0) return { is: 'yours', text: 'Your numbers', short: '' };
  const origin = unnamed === 0 ? 'the link' : unnamed === left.length ? 'the example' : 'link and example';
  if (askedNow(inputs, layout, texts).every((each) => isAllTouched(inputs, texts, touched, each)))
    return { is: 'partly', text: `Your answers; ${left.length} more from ${origin}`, short: `${left.length} not yours` };
  return { is: 'partly', text: `${own} of ${paths.length} yours; the rest from ${origin}`, short: `${own} of ${paths.length} yours` };
}

/** Of two sides only what differs counts: typed on either side, it is one’s own. */
function stampOfTwo(unlike: readonly string[], touched: Touched): Stamp {
  const isOwn = (key: string): boolean =>
    [...touched].some((path) => [key, `that.${key}`].some((each) => path === each || path.startsWith(`${each}.`)));
  const own = unlike.filter(isOwn).length;
  if (own < unlike.length) return { is: 'partly', text: `${own} of ${unlike.length} differences yours`, short: `${own} of ${unlike.length} yours` };
  return { is: 'yours', text: 'Your two ways', short: '' };
}
