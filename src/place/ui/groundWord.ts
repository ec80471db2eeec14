import type { Place } from '../model/place.ts';

/** What the people of a place call a piece of fenced ground: one, and at the head of a line. Files keep “paddock” in every copy. */
export function groundWord({ groundWord: one = 'paddock' }: Pick<Place, 'groundWord'>) {
  const head = `${one.charAt(0).toUpperCase()}${one.slice(1)}`;
  return { one, head, heads: `${head}s` };
}
