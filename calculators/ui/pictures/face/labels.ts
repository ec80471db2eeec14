/**
 * Where words stand in a picture. They are laid out before anything is painted, in the built page too, so their widths come from a short table and not
 * from the screen. A test in a browser holds the table against the font.
 */

/** Widths in parts of the type's size, a little wide: groups of letters, then digits (of one width) and capitals, then the rest. */
const groups: readonly (readonly [string, number])[] = [
  [" !',.:;ijl|’", 0.31],
  ['()-frtI/', 0.4],
  ['mwMW%', 0.9],
];
const letterWidth = (letter: string): number =>
  groups.find(([letters]) => letters.includes(letter))?.[1] ?? (/[\dA-Z+=<>−]/.test(letter) ? 0.665 : 0.575);
export const textWidth = (words: string, size: number): number => [...words].reduce((sum, letter) => sum + letterWidth(letter), 0) * size;

/** Where things may stand on a face, pixels; across is counted from its inner side. */
export interface Room {
  readonly id: string;
  readonly width: number;
  readonly sky: number;
  readonly soil: number;
  /** All of it, with what lies under a tray. */
  readonly height: number;
  /** Pixels to an inch of ground, and to an inch of water across. */
  readonly perIn: number;
  readonly waterPerIn: number;
  /** Where a curtain of rain begins. */
  readonly from: number;
  /** One of two narrow faces: figures only. */
  readonly isNarrow: boolean;
  /** What runs off on the other face of a pair, inches. */
  readonly otherRanIn: number;
  readonly salt: number;
}

export type Anchor = 'start' | 'middle' | 'end';
export interface Place {
  readonly x: number;
  /** Base line. */
  readonly y: number;
  readonly anchor: Anchor;
  /** What it lies on, for its colour: `on-soil`, `on-water`, `on-paper`… */
  readonly on: string;
}
export interface Wanted {
  /** One wording, or several from the longest to the shortest. */
  readonly words: readonly string[];
  /** Figures are 18 px and bold, names 16. */
  readonly size: 18 | 16 | 15;
  /** Places to try, the best first. Where none is free the words are left out: the line under the picture says every figure. */
  readonly places: readonly Place[];
}
export interface Label extends Place {
  readonly words: string;
  readonly size: 18 | 16 | 15;
}
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
export function boxOf({ words, size, x, y, anchor }: Label): Box {
  const wide = textWidth(words, size);
  const left = x - (anchor === 'start' ? 0 : anchor === 'middle' ? wide / 2 : wide);
  return { left, right: left + wide, top: y - size * 0.78, bottom: y + size * 0.24 };
}
const overlap = (one: Box, other: Box): boolean =>
  one.left < other.right + 3 && other.left < one.right + 3 && one.top < other.bottom && other.top < one.bottom;

/** Gives each its first place that is free and inside; the earlier in the list, the sooner it chooses. */
export function layLabels(wanted: readonly Wanted[], width: number, height: number): readonly Label[] {
  const laid: Label[] = [];
  const boxes: Box[] = [];
  for (const { words, size, places } of wanted) {
    const tried = words.flatMap((each) => places.map((place) => ({ words: each, size, ...place })));
    const free = tried.find((label) => {
      const box = boxOf(label);
      return box.left >= 2 && box.right <= width - 2 && box.top >= 0 && box.bottom <= height && !boxes.some((other) => overlap(box, other));
    });
    if (!free) continue;
    laid.push(free);
    boxes.push(boxOf(free));
  }
  return laid;
}
