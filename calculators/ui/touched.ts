import type { Inputs } from '../kit/inputs.ts';
import { inputNameOf } from '../kit/screen.ts';
import { isShown, rowsIn, type Text, type Texts } from '../kit/state.ts';

// What somebody has put in themselves, by path: `rainIn`, `herd.0.countHead`, `monthsIn.3`; a table whose rows came or went, by its name. Set back to the
// example's, an answer stays one's own.

export type Touched = ReadonlySet<string>;

function* changedIn(key: string, before: Text | undefined, after: Text | undefined): Generator<string> {
  if (before === after) return;
  if (typeof before !== 'object' || typeof after !== 'object' || before.length !== after.length) {
    yield key;
    return;
  }
  for (const [index, each] of after.entries()) {
    const old = before[index];
    if (typeof each === 'string' || typeof old === 'string' || old === undefined) {
      if (each !== old) yield `${key}.${index}`;
    } else for (const [name, text] of Object.entries(each)) if (text !== old[name]) yield `${key}.${index}.${name}`;
  }
}
/** With all that a change has changed. */
export function touchedBy(touched: Touched, before: Texts, after: Texts): Touched {
  const all = new Set(touched);
  for (const key of Object.keys(after)) for (const path of changedIn(key, before[key], after[key])) all.add(path);
  return all.size === touched.size ? touched : all;
}

export const isTouched = (touched: Touched, path: string): boolean => touched.has(path) || touched.has(inputNameOf(path));

/** Cells of a table, or its column, or an input that is one answer, each by its path. */
export function pathsOf(inputs: Inputs, texts: Texts, asked: string): readonly string[] {
  const [key = '', column] = asked.split('.');
  const input = inputs[key];
  if (input?.kind === 'rows')
    return rowsIn(texts[key]).flatMap((row, index) =>
      Object.entries(input.columns)
        .filter(([name, cell]) => (column === undefined || name === column) && isShown(cell, { ...texts, ...row }))
        .map(([name]) => `${key}.${index}.${name}`),
    );
  const text = texts[key];
  return input?.kind === 'months' && typeof text === 'object' ? text.map((_, index) => `${key}.${index}`) : [key];
}
/** Is every part of a question answered by the reader? */
export const isAllTouched = (inputs: Inputs, texts: Texts, touched: Touched, asked: string): boolean =>
  pathsOf(inputs, texts, asked).every((path) => isTouched(touched, path));

/** Every path that holds no text: of all inputs, or of those by these names. */
export function blankIn(texts: Texts, names: Iterable<string> = Object.keys(texts)): Touched {
  const blank = new Set<string>();
  for (const key of names) {
    const text = texts[key];
    if (text === '') blank.add(key);
    else if (typeof text === 'object')
      for (const [index, each] of text.entries()) {
        if (each === '') blank.add(`${key}.${index}`);
        else if (typeof each === 'object') for (const [name, cell] of Object.entries(each)) if (cell === '') blank.add(`${key}.${index}.${name}`);
      }
  }
  return blank;
}
