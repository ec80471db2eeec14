import type { Calculator } from '../kit/define.ts';
import { inputNameOf, isManaged } from '../kit/screen.ts';
import { isShown, type Texts } from '../kit/state.ts';
import { nobody } from './formState.ts';
import { pathsOf, type Touched, touchedBy } from './touched.ts';

// What stands side by side where two managements are compared.

/**
 * The questions that each side answers for itself, in the order of the form: those of the management that stand open, or the first of all; readings; what
 * differs; and what somebody lets differ.
 */
export function setApart({ inputs, layout, readings = [] }: Calculator, mine: Texts, theirs: Texts, differs: readonly string[]): readonly string[] {
  const managed = Object.entries(inputs).flatMap(([key, input]) => (isManaged(input) ? [key] : []));
  const open = layout.first.map(([first = '']) => inputNameOf(first)).filter((key) => managed.includes(key));
  const unequal = [...touchedBy(nobody, mine, theirs)].map(inputNameOf).filter((key) => isShown(inputs[key] ?? {}, mine));
  const apart = [...(open.length > 0 ? open : managed.slice(0, 1)), ...readings, ...unequal, ...differs];
  return Object.keys(inputs).filter((key) => apart.includes(key));
}

/** What that side answers for itself, by path; of a table that both share, its columns of the management. What came along from this side nobody typed. */
export function theirAnswers({ inputs }: Calculator, theirs: Texts, apart: readonly string[], touched: Touched) {
  const paths = apart.flatMap((key) => {
    const input = inputs[key];
    if (!input || !isShown(input, theirs)) return [];
    return pathsOf(inputs, theirs, key).filter(
      (path) => input.kind !== 'rows' || input.columns[path.split('.')[2] ?? '']?.belongsTo === 'management',
    );
  });
  return { count: paths.length, left: paths.filter((path) => ![path, inputNameOf(path)].some((each) => touched.has(`that.${each}`))) };
}
