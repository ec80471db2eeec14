import type { Tone } from '../../kit/pictures.ts';
import { add } from '../../kit/wholes.ts';
import { linesAt, linesWithin, sizes, textPx, type Word } from './words.ts';

export interface Part {
  readonly size: number;
  readonly tone: Tone;
  readonly name: string;
  /** With its unit, and alone. */
  readonly told: string;
  readonly bare: string;
}
export interface Piece extends Part {
  readonly left: number;
  readonly width: number;
}
export interface Bar {
  readonly pieces: readonly Piece[];
  readonly words: readonly Word[];
  /** Lines from a piece up to its name. */
  readonly leaders: readonly string[];
  readonly barTop: number;
  readonly bottom: number;
}
export const barHeight = 46;
const gap = 10;

/** All orders of a few things. */
const ordersOf = (list: readonly number[]): readonly (readonly number[])[] =>
  list.length < 2 ? [list] : list.flatMap((first) => ordersOf(list.filter((each) => each !== first)).map((rest) => [first, ...rest]));

interface Flag {
  readonly at: number;
  readonly lines: readonly string[];
  readonly size: Word['size'];
  readonly wide: number;
}
interface Placed {
  readonly flag: Flag;
  readonly left: number;
  readonly row: number;
}
/** Names of the pieces between the first and the last stand over the bar: in one row where they fit, else one over the other so that no line to a piece runs through a name. */
function placeFlags(flags: readonly Flag[], widthPx: number): readonly Placed[] {
  const within = (left: number, { wide }: Flag): number => Math.max(0, Math.min(left, widthPx - wide));
  const centred = flags.map((flag) => ({ flag, left: within(flag.at - flag.wide / 2, flag), row: 0 }));
  if (centred.every(({ left }, index) => index === 0 || left >= (centred[index - 1]?.left ?? 0) + (centred[index - 1]?.flag.wide ?? 0) + gap))
    return centred;
  const choices = ({ at, wide }: Flag): readonly number[] => [at - wide / 2, at + 6, at - 6 - wide];
  const isClear = (placed: readonly Placed[]): boolean =>
    placed.every(({ flag: { at }, row }) =>
      placed.every((other) => other.row <= row || at + 4 < other.left || at - 4 > other.left + other.flag.wide),
    );
  const lay = (order: readonly number[], sofar: readonly Placed[]): readonly Placed[] | undefined => {
    const [index, ...rest] = order;
    const flag = index === undefined ? undefined : flags[index];
    if (!flag) return sofar;
    for (const left of choices(flag)) {
      const placed = [...sofar, { flag, left: within(left, flag), row: sofar.length }];
      const all = isClear(placed) ? lay(rest, placed) : undefined;
      if (all) return all;
    }
    return undefined;
  };
  const orders = ordersOf(flags.map((_, index) => index));
  for (const order of orders) {
    const found = lay(order, []);
    if (found) return found;
  }
  return centred.map((placed, row) => ({ ...placed, row }));
}

/** One bar with its title over it and its names around it, from `top` down. */
export function layBar({
  title,
  parts,
  pxPer,
  widthPx,
  top,
}: {
  readonly title: string;
  readonly parts: readonly Part[];
  readonly pxPer: number;
  readonly widthPx: number;
  readonly top: number;
}): Bar {
  const filled = parts.filter(({ size }) => size * pxPer > 0);
  let at = 0;
  const pieces = filled.map((part): Piece => {
    const width = part.size * pxPer;
    at += width;
    return { ...part, left: at - width, width };
  });
  const titled = linesAt(linesWithin(title, 'figure', widthPx), { top, x: 0, size: 'figure' });
  let y = top + titled.length * sizes.figure.line;
  /** On its piece a number stands with its unit, or alone; where it has no room there it goes before the name. */
  const onPiece = ({ told, bare, width }: Piece): string | undefined => [told, bare].find((text) => textPx(text, 'figure') + 12 <= width);
  const labelOf = (piece: Piece): Pick<Flag, 'size'> & { readonly text: string } =>
    onPiece(piece) === undefined ? { text: `${piece.told} ${piece.name}`, size: 'figure' } : { text: piece.name, size: 'name' };
  const flags = pieces.slice(1, -1).map((piece): Flag => {
    const { text, size } = labelOf(piece);
    const lines = linesWithin(text, size, widthPx * 0.55);
    return { at: piece.left + piece.width / 2, lines, size, wide: Math.max(...lines.map((line) => textPx(line, size))) };
  });
  const placed = placeFlags(flags, widthPx).toSorted((one, other) => one.row - other.row);
  const words: Word[] = [...titled];
  const ends: { readonly at: number; readonly from: number }[] = [];
  let rowTop = y;
  for (let row = 0; placed.some((each) => each.row === row); row += 1) {
    const inRow = placed.filter((each) => each.row === row);
    const tall = Math.max(...inRow.map(({ flag }) => flag.lines.length * sizes[flag.size].line));
    for (const { flag, left } of inRow) {
      const flagTop = rowTop + tall - flag.lines.length * sizes[flag.size].line;
      words.push(...linesAt(flag.lines, { top: flagTop, x: left + flag.wide / 2, size: flag.size, anchor: 'middle' }));
      ends.push({ at: flag.at, from: rowTop + tall });
    }
    rowTop += tall;
  }
  y = rowTop + (placed.length > 0 ? 8 : 4);
  const barTop = y;
  for (const piece of pieces) {
    const text = onPiece(piece);
    if (text !== undefined)
      words.push({ text, x: piece.left + piece.width / 2, y: barTop + barHeight / 2 + 6, size: 'figure', anchor: 'middle', is: `on-${piece.tone}` });
  }
  y = barTop + barHeight + 3;
  const outermost = [pieces[0], pieces.length > 1 ? pieces.at(-1) : undefined].flatMap((piece) => (piece ? [labelOf(piece)] : []));
  const linesIn = (widest: number) => outermost.map(({ text, size }) => ({ lines: linesWithin(text, size, widest), size }));
  const wideOf = (label: { readonly lines: readonly string[]; readonly size: Word['size'] }): number =>
    Math.max(...label.lines.map((line) => textPx(line, label.size)));
  const whole = linesIn(widthPx);
  // Beside each other in one line, or each in its half.
  const outer = add(whole.map(wideOf)) + gap <= widthPx ? whole : linesIn((widthPx - gap) / 2);
  for (const [index, label] of outer.entries()) {
    // The last one under the end of the bar, or past it where the bar is shorter than its names.
    const x = index === 0 ? 0 : Math.max(at, add(outer.map(wideOf)) + gap);
    words.push(...linesAt(label.lines, { top: barTop + barHeight + 3, x, size: label.size, ...(index === 0 ? {} : { anchor: 'end' as const }) }));
    y = Math.max(y, barTop + barHeight + 3 + label.lines.length * sizes[label.size].line);
  }
  return { pieces, words, leaders: ends.map(({ at: x, from }) => `M${Math.round(x * 10) / 10} ${from + 1}V${barTop}`), barTop, bottom: y };
}
