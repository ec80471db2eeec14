import type { Text, Texts } from './state.ts';

/** The same texts with another at one path. */
export function withTextAt(texts: Texts, at: string, to: string): Texts {
  const [key = '', index = '', column = ''] = at.split('.');
  const text = texts[key];
  if (typeof text !== 'object') return { ...texts, [key]: to };
  const rows = text.filter((row) => typeof row === 'object');
  const isHere = (each: number): boolean => each === Number(index);
  const next: Text =
    rows.length > 0
      ? rows.map((row, each) => (isHere(each) ? { ...row, [column]: to } : row))
      : text.filter((each) => typeof each === 'string').map((month, each) => (isHere(each) ? to : month));
  return { ...texts, [key]: next };
}
