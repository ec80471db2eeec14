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

/** Who gave the answers of a form, by path. */
export interface Givers {
  readonly touched: Touched;
  readonly linked: Touched;
  /** How many answers are missing or wrong. */
  readonly waiting: number;
}
/** The answers that apply, and of them those that are not one’s own, with where these are from: each counts, folded or not, and of a table each cell. */
export function answersOf({ inputs }: Calculator, texts: Texts, { touched, linked }: Givers) {
  const paths = Object.entries(inputs).flatMap(([key, input]) => (isShown(input, texts) ? pathsOf(inputs, texts, key) : []));
  const left = paths.filter((path) => !isTouched(touched, path));
  const unnamed = left.filter((path) => !isTouched(linked, path)).length;
  return { paths, left, unnamed, origin: unnamed === 0 ? 'the link' : unnamed === left.length ? 'the example' : 'link and example' };
}

/** Whose figures the answer of one side stands on, in one line. */
export function stampOf(calculator: Calculator, texts: Texts, givers: Givers): Stamp {
  const { inputs, layout } = calculator;
  const { touched, linked, waiting } = givers;
  if (waiting > 0) return { is: 'waiting', text: `Waits for ${answers(waiting)}`, short: `waits for ${answers(waiting)}` };
  const { paths, left, unnamed, origin } = answersOf(calculator, texts, givers);
  const own = paths.length - left.length;
  if (own === 0)
    return linked.size > 0
      ? { is: 'link', text: unnamed > 0 ? `Figures of a link; ${unnamed} from the example` : 'Figures of a link', short: 'from a link' }
      : { is: 'example', text: 'Example, not your numbers', short: 'example' };
  if (left.length === 0) return { is: 'yours', text: 'Your numbers', short: '' };
  if (askedNow(inputs, layout, texts).every((each) => isAllTouched(inputs, texts, touched, each)))
    return { is: 'partly', text: `Your answers; ${left.length} more from ${origin}`, short: `${left.length} not yours` };
  return { is: 'partly', text: `${own} of ${paths.length} yours; the rest from ${origin}`, short: `${own} of ${paths.length} yours` };
}
