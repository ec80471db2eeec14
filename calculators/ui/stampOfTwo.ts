import type { Calculator } from '../kit/define.ts';
import { isManaged } from '../kit/screen.ts';
import { isShown, type Texts } from '../kit/state.ts';
import { answersOf, type Givers, type Stamp, stampOf } from './stamp.ts';
import { isTouched, pathsOf, type Touched } from './touched.ts';

/** The answers to a question that one side gives for itself; of a table that both share, its columns of the management. */
function ownPaths({ inputs }: Calculator, texts: Texts, key: string): readonly string[] {
  const input = inputs[key];
  if (!input || !isManaged(input) || !isShown(input, texts)) return [];
  if (input.kind !== 'rows') return pathsOf(inputs, texts, key);
  return Object.entries(input.columns).flatMap(([name, { belongsTo }]) =>
    belongsTo === 'management' ? pathsOf(inputs, texts, `${key}.${name}`) : [],
  );
}

/**
 * Whose figures two sides stand on, in one line: each side’s answers count where they stand side by side. What only came along from the other side, or from
 * the example, is nobody’s.
 */
export function stampOfTwo(calculator: Calculator, mine: Texts, theirs: Texts, unlike: readonly string[], givers: Givers): Stamp {
  const { touched, waiting } = givers;
  const alone = stampOf(calculator, mine, givers);
  const count = (texts: Texts, by: Touched) => {
    const paths = unlike.flatMap((key) => ownPaths(calculator, texts, key));
    return { all: paths.length, own: paths.filter((path) => isTouched(by, path)).length };
  };
  const here = count(mine, touched);
  const there = count(theirs, new Set([...touched].flatMap((path) => (path.startsWith('that.') ? [path.slice(5)] : []))));
  const { left, origin } = answersOf(calculator, mine, givers);
  const [own, all] = [here.own + there.own, here.all + there.all];
  if (waiting > 0 || touched.size === 0 || all === 0) return alone;
  if (own === all)
    return left.length === 0
      ? { is: 'yours', text: 'Your two ways', short: '' }
      : { is: 'partly', text: `Your two ways; ${left.length} more from ${origin}`, short: `${left.length} not yours` };
  const [short, is] = [`${own} of ${all} yours`, 'partly'] as const;
  if (here.own === 0 && there.own === there.all) return { is, text: `That side yours; this side from ${origin}`, short };
  if (there.own === 0 && here.own === here.all) return { is, text: 'This side yours, that side not', short };
  return { is, text: `What differs: ${own} of ${all} yours`, short };
}
