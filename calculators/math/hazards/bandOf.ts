import type { Band, BandList } from '../../tables/feedHazards.ts';
import { need } from '../need.ts';

/**
 * Class that a value falls in: the last one whose lower edge it reaches. A value on an edge belongs to the class above.
 * @param bands - Classes with rising lower edges, the first at 0
 * @param value - Value in the unit of the edges; 0 or more
 * @returns The class
 * @throws RangeError if the value is below the first edge
 * @source our own, the stricter reading of an edge
 * @example bandOf([{ from: 0, printed: 'low', severity: 0 }, { from: 10, printed: 'high', severity: 3 }], 10).printed //=> 'high'
 */
export function bandOf<B extends Band>(bands: readonly B[], value: number): B {
  need('bandOf', 'value', value, { atLeast: 0 });
  const found = bands.findLast(({ from }) => value >= from);
  if (found === undefined) throw new RangeError(`bandOf needs a value that reaches the first edge, got ${value}`);
  return found;
}

/** What one list says of a value: its own word, and our order of strictness. */
export interface Reading {
  readonly list: string;
  readonly source: string;
  readonly seen: 'print' | 'transcription' | 'memory';
  readonly printed: string;
  readonly severity: number;
}

/**
 * What every list says of one value, the strictest first, ties in the order of the lists.
 * @param lists - Published lists for the same thing in the same unit
 * @param value - Value in that unit; 0 or more
 * @param animals - Animals that drink or eat it: 'calves' or 'adult-cattle'; lists for others are left out
 * @returns A reading for each list
 * @throws RangeError if the value is negative
 * @source our own, the strictest leads
 * @example readingsOf([{ list: 'a', source: 's', where: 'w', seen: 'print', bands: [{ from: 0, printed: 'low', severity: 0 }] }], 3, 'calves')[0].printed //=> 'low'
 */
export function readingsOf(lists: readonly BandList[], value: number, animals: 'calves' | 'adult-cattle'): Reading[] {
  return lists
    .filter((list) => list.animals === undefined || list.animals === animals)
    .map(({ list, source, seen, bands }) => {
      const { printed, severity } = bandOf(bands, value);
      return { list, source, seen, printed, severity };
    })
    .sort((one, other) => other.severity - one.severity);
}
