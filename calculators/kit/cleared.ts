import type { Cell, Input, Inputs } from './inputs.ts';
import { type RowTexts, startRows, type Text, type Texts } from './state.ts';

/**
 * A form with nothing of the example in it: one's own, still empty. Ways of counting and settings stay as they were, and so does a choice that decides which questions are asked, without
 * which no form could stand. But where another answer would ask the same, what tells the two apart is a fact of the place, as a feeder is by what it wastes: that goes. A table keeps one row.
 */
export function cleared(inputs: Inputs, texts: Texts): Texts {
  const every = Object.entries(inputs).flatMap(([key, input]): readonly (readonly [string, Input | Cell])[] =>
    input.kind === 'rows' ? [[key, input], ...Object.entries(input.columns)] : [[key, input]],
  );
  const askedBy = (name: string, answer: string): string =>
    every
      .filter(([, { shownWhen }]) => [shownWhen?.[name] ?? []].flat().includes(answer))
      .map(([key]) => key)
      .join();
  const left = (name: string, cell: Cell, text: string): string => {
    if (cell.isSetting === true || ('convention' in cell && cell.convention === true)) return text;
    if (cell.kind !== 'choice' && cell.kind !== 'yesNo') return '';
    const answers = cell.kind === 'choice' ? Object.keys(cell.options) : ['yes', 'no'];
    return answers.some((other) => other !== text && askedBy(name, other) === askedBy(name, text)) ? '' : text;
  };
  return Object.fromEntries(
    Object.entries(inputs).map(([key, input]): [string, Text] => {
      if (input.kind === 'rows') {
        const [row = {}] = startRows(input);
        const empty: RowTexts = Object.fromEntries(Object.entries(input.columns).map(([name, cell]) => [name, left(name, cell, row[name] ?? '')]));
        return [key, [empty]];
      }
      if (input.kind === 'months') return [key, input.default.map(() => '')];
      if (input.kind === 'record') return [key, ''];
      const text = texts[key];
      return [key, left(key, input, typeof text === 'string' ? text : '')];
    }),
  );
}
