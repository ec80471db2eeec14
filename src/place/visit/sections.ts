import type { Place } from '../model/place.ts';
import type { Result } from '../model/result.ts';
import { pastureNames } from './visitWords.ts';

/** Results of one ground, in their own order. */
export interface OfGround {
  /** `High bench`; empty where no pasture was chosen. */
  readonly names: string;
  readonly results: readonly Result[];
}
/** Results by the ground that they share; grounds in the order in which they first come. */
export function byGround(place: Place, results: readonly Result[]): readonly OfGround[] {
  const grounds = new Map<string, Result[]>();
  for (const result of results) {
    const names = pastureNames(place, result.pastureIds);
    grounds.set(names, [...(grounds.get(names) ?? []), result]);
  }
  return [...grounds].map(([names, of]) => ({ names, results: of }));
}

/** A piece of a note: one part of it, or neighbors that share a heading. */
export interface Section<T> {
  /** None over a part that stands alone. */
  readonly heading?: string;
  readonly parts: readonly T[];
}
/** Neighbors on one ground come under its name, each with its own short title; a part that is alone there keeps its whole one. */
export function sectionsOf<T extends { readonly title: string; readonly ground?: string; readonly shortTitle?: string }>(
  blocks: readonly T[],
): readonly Section<T>[] {
  const runs: T[][] = [];
  for (const block of blocks) {
    const before = runs.at(-1);
    if (before !== undefined && block.ground !== undefined && before[0]?.ground === block.ground) before.push(block);
    else runs.push([block]);
  }
  return runs.map((parts): Section<T> => {
    const heading = parts[0]?.ground;
    return parts.length < 2 || heading === undefined
      ? { parts }
      : { heading, parts: parts.map((each) => ({ ...each, title: each.shortTitle ?? each.title })) };
  });
}
