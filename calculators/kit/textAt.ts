import type { Text, Texts } from './state.ts';

/** The text at a path: `areaAc`, `herd.0.countHead`, `stationIn.3`. */
export function textAt(texts: Texts, at: string): string | undefined {
  const [key = '', index = '', column = ''] = at.split('.');
  const text = texts[key];
  if (typeof text !== 'object') return text;
  const row = text[Number(index)];
  return typeof row === 'object' ? row[column] : row;
}
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
