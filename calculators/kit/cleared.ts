import type { Cell, Input, Inputs } from './inputs.ts';
import { type RowTexts, startRows, type Text, type Texts } from './state.ts';

/** Inputs that decide which others are asked. */
const askersOf = (inputs: Inputs): ReadonlySet<string> => {
  const every: readonly (Input | Cell)[] = Object.values(inputs).flatMap((input): readonly (Input | Cell)[] =>
    input.kind === 'rows' ? [input, ...Object.values(input.columns)] : [input],
  );
  return new Set(every.flatMap(({ shownWhen }) => Object.keys(shownWhen ?? {})));
};

/**
 * A form with nothing of the example in it: one's own, still empty. Ways of counting and settings stay as they were, and so does what decides which questions are asked:
 * those are no figures of a place, and without them no form could stand. A table keeps one row.
 */
export function cleared(inputs: Inputs, texts: Texts): Texts {
  const askers = askersOf(inputs);
  const stays = (name: string, cell: Cell): boolean =>
    cell.isSetting === true ||
    ((cell.kind === 'choice' || cell.kind === 'yesNo') && (askers.has(name) || ('convention' in cell && cell.convention === true)));
  return Object.fromEntries(
    Object.entries(inputs).map(([key, input]): [string, Text] => {
      if (input.kind === 'rows') {
        const [row = {}] = startRows(input);
        const empty: RowTexts = Object.fromEntries(
          Object.entries(input.columns).map(([name, cell]) => [name, stays(name, cell) ? (row[name] ?? '') : '']),
        );
        return [key, [empty]];
      }
      if (input.kind === 'months') return [key, input.default.map(() => '')];
      if (input.kind === 'record') return [key, ''];
      return [key, stays(key, input) ? (texts[key] ?? '') : ''];
    }),
  );
}
