import type { Texts } from './state.ts';

/** The text at a path: `areaAc`, `herd.0.countHead`, `stationIn.3`. */
export function textAt(texts: Texts, at: string): string | undefined {
  const [key = '', index = '', column = ''] = at.split('.');
  const text = texts[key];
  if (typeof text !== 'object') return text;
  const row = text[Number(index)];
  return typeof row === 'object' ? row[column] : row;
}
