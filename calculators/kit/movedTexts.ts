import { type Text, type Texts, withMoved } from './state.ts';

const isSame = (one: Text | undefined, other: Text | undefined): boolean => JSON.stringify(one) === JSON.stringify(other);
export const hasSameRows = (one: Text | undefined, other: Text | undefined): boolean =>
  typeof one !== 'object' || typeof other !== 'object' || one.length === other.length;

/** Another choice at the place: what stands as the choice before had it, stands as this one has it. What somebody typed stays. */
export function movedTexts(texts: Texts, before: Texts, after: Texts): Texts {
  const finer = withMoved(texts, before, after);
  return Object.fromEntries(
    Object.entries(texts).map(([key, text]): [string, Text] => [key, (isSame(text, before[key]) ? after[key] : finer[key]) ?? text]),
  );
}
