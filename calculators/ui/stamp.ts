import type { Calculator } from '../kit/define.ts';
import { askedNow } from '../kit/screen.ts';
import { isShown, type Texts } from '../kit/state.ts';
import { isAllTouched, isAnyTouched, type Touched } from './touched.ts';

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
  const asked = askedNow(inputs, layout, texts);
  const rest = Object.entries(inputs).flatMap(([key, input]) => (isShown(input, texts) && !asked.includes(key) ? [key] : []));
  const own = asked.filter((each) => isAllTouched(inputs, texts, touched, each)).length;
  const left = rest.filter((each) => !isAllTouched(inputs, texts, touched, each)).length;
  const isAny = [...asked, ...rest].some((each) => isAnyTouched(inputs, texts, touched, each));
  const origin = linked.size > 0 ? 'link' : 'example';
  const unnamed = origin === 'link' ? [...asked, ...rest].filter((each) => !isAllTouched(inputs, texts, linked, each)).length : 0;
  const nobodys: Stamp =
    origin === 'link'
      ? { is: 'link', text: unnamed > 0 ? `Figures of a link; ${unnamed} from the example` : 'Figures of a link', short: 'from a link' }
      : { is: 'example', text: 'Example, not your numbers', short: 'example' };
  if (unlike.length > 0) return touched.size > 0 ? stampOfTwo(unlike, touched) : nobodys;
  if (!isAny) return nobodys;
  if (own === asked.length && left === 0) return { is: 'yours', text: 'Your numbers', short: '' };
  if (own === asked.length) return { is: 'partly', text: `Your answers; ${left} more from the ${origin}`, short: `${left} from the ${origin}` };
  return { is: 'partly', text: `${own} of ${asked.length} yours; the rest from the ${origin}`, short: `${own} of ${asked.length} yours` };
}

/** Of two sides only what differs counts: typed on either side, it is one’s own. */
function stampOfTwo(unlike: readonly string[], touched: Touched): Stamp {
  const isOwn = (key: string): boolean =>
    [...touched].some((path) => [key, `that.${key}`].some((each) => path === each || path.startsWith(`${each}.`)));
  const own = unlike.filter(isOwn).length;
  if (own < unlike.length) return { is: 'partly', text: `${own} of ${unlike.length} differences yours`, short: `${own} of ${unlike.length} yours` };
  return { is: 'yours', text: 'Your two ways', short: '' };
}
