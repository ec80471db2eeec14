/** Words in a drawing, and about how much room they take: SVG places text where it is told, over whatever stands there. */
export interface Word {
  readonly text: string;
  readonly x: number;
  /** The line that they stand on. */
  readonly y: number;
  readonly size: 'name' | 'figure';
  readonly anchor?: 'middle' | 'end';
  readonly is?: string;
}
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
/** Names at 16 px; figures at 18 px, bold. Each line as tall as the face's own box of it. */
export const sizes = { name: { px: 16, line: 21, bold: 1, spare: 1.02 }, figure: { px: 18, line: 24, bold: 1.06, spare: 1.07 } } as const;
type Size = keyof typeof sizes;

// Widths of the site's face, measured, in hundredths of its size; signs that are not named are like an 8. Its bold is wider.
const widths: readonly (readonly [string, number])[] = [
  ["',.:;ij|", 24],
  [' !()fl', 27],
  ['"-/rt', 34],
  ['1I', 39],
  ['7*?Tcosvyz', 46],
  ['239<>EFJLVYabdeghknpqux', 53],
  ['0ACKX', 62],
  ['#DGHNUw', 67],
  ['&@OQ', 71],
  ['MWm', 85],
  ['%', 93],
];
const each = new Map(widths.flatMap(([signs, width]) => [...signs].map((sign) => [sign, width] as const)));
const widthOf = (sign: string): number => each.get(sign) ?? 59;

/** How wide words stand, rather too wide: some screens set each sign on whole pixels, and two words too far apart are better than two that touch. */
export function textPx(text: string, size: Size): number {
  const { px, bold, spare } = sizes[size];
  return spare * [...text].reduce((sum, sign) => sum + Math.round((px * bold * widthOf(sign)) / 100 + 0.3), 0);
}

export function boxOf({ text, x, y, size, anchor }: Word): Box {
  const wide = textPx(text, size);
  const left = anchor === 'end' ? x - wide : anchor === 'middle' ? x - wide / 2 : x;
  return { left, right: left + wide, top: y - sizes[size].px, bottom: y - sizes[size].px + sizes[size].line };
}
export const meet = (one: Box, other: Box, gap = 0): boolean =>
  one.left < other.right + gap && other.left < one.right + gap && one.top < other.bottom && other.top < one.bottom;

/** Breaks words into lines no wider than that, at their spaces. */
export function linesWithin(text: string, size: Size, widthPx: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textPx(`${last} ${word}`, size) <= widthPx) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
/** One line under the other, the first one's top at `top`. */
export const linesAt = (lines: readonly string[], { top, ...rest }: Omit<Word, 'text' | 'y'> & { readonly top: number }): readonly Word[] =>
  lines.map((text, index) => ({ ...rest, text, y: top + sizes[rest.size].px + index * sizes[rest.size].line }));
