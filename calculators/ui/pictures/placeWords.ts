import { type Box, linesAt, linesWithin, meet, sizes, textPx, type Word } from './words.ts';

export type Point = readonly [x: number, y: number];

/** The height of a curve at a place across, between its points; nothing outside. */
export function heightAt(points: readonly Point[], x: number, after = points.findIndex(([at]) => at >= x)): number | undefined {
  const [end, start] = [points[after], points[after - 1]];
  if (!end) return undefined;
  if (!start || end[0] === x) return end[0] === x ? end[1] : undefined;
  return start[1] + ((x - start[0]) / (end[0] - start[0])) * (end[1] - start[1]);
}
/** A curve's heights, read once each few pixels: a word is tried in some hundred places. */
const every = 4;
export interface Curve {
  readonly points: readonly Point[];
  readonly heights: readonly (number | undefined)[];
}
export function curveOf(points: readonly Point[], widthPx: number): Curve {
  let after = 0;
  const heightOf = (x: number): number | undefined => {
    for (let point = points[after]; point && point[0] < x; point = points[after]) after += 1;
    return heightAt(points, x, after);
  };
  return { points, heights: Array.from({ length: Math.ceil(widthPx / every) + 1 }, (_, index) => heightOf(index * every)) };
}
/** How much of a curve runs through a box. */
function runsThrough({ heights }: Curve, box: Box): number {
  let steps = 0;
  for (let at = Math.ceil(box.left / every); at <= box.right / every; at += 1) {
    const y = heights[at];
    if (y !== undefined && y > box.top - 2 && y < box.bottom + 2) steps += 1;
  }
  return steps;
}
export interface Field extends Box {
  readonly curves: readonly Curve[];
  /** What stands there already. */
  readonly taken: readonly Box[];
}
/** Where words may stand by a point: how far from it, and which way they run. */
interface Stand {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** From the point that the words belong to. */
  readonly far?: number;
}
/** Words broken into lines, with the room that they take: measured once, tried in some hundred places. */
interface Measured {
  readonly lines: readonly string[];
  readonly widePx: number;
}
function measured(text: string, size: Word['size'], widest: number): Measured {
  const lines = linesWithin(text, size, widest);
  return { lines, widePx: Math.max(...lines.map((line) => textPx(line, size))) };
}
/** Whole pixels: rounded one by one, two lines could touch. */
const topOf = ({ lines }: Measured, size: Word['size'], { y }: Stand): number => Math.round(y - (lines.length * sizes[size].line) / 2);
function roomOf(words: Measured, size: Word['size'], stand: Stand): Box {
  const top = topOf(words, size, stand);
  const left = stand.anchor === 'end' ? stand.x - words.widePx : stand.anchor === 'middle' ? stand.x - words.widePx / 2 : stand.x;
  return { left, right: left + words.widePx, top, bottom: top + words.lines.length * sizes[size].line };
}
function standing(words: Measured, size: Word['size'], stand: Stand, is: string | undefined): readonly Word[] {
  const { x, anchor } = stand;
  return linesAt(words.lines, {
    top: topOf(words, size, stand),
    x,
    size,
    ...(anchor === 'start' ? {} : { anchor }),
    ...(is === undefined ? {} : { is }),
  });
}

/** Words in their place, and how poor a place it is. */
export interface Found {
  readonly words: readonly Word[];
  readonly cost: number;
}
/** Worse than any place that a plot can grow for. */
const nearAnother = 1000;
/** The best of some places for words: none that leaves the field or covers other words; the fewest curves under it, and none nearer than their own if it can be. Nothing where there is none. */
function best(stands: readonly Stand[], text: string, size: Word['size'], field: Field, is: string | undefined, own?: Curve): Found | undefined {
  let found: { readonly words: Measured; readonly stand: Stand; readonly cost: number } | undefined;
  const whole = measured(text, size, Number.POSITIVE_INFINITY);
  const broken = measured(text, size, Math.max(whole.widePx / 2 + 30, 130));
  for (const stand of stands) {
    for (const words of [whole, broken]) {
      const least = (stand.far ?? 0) / 12 + (words === broken ? 1 : 0);
      if (least >= (found?.cost ?? Number.POSITIVE_INFINITY)) continue;
      const box = roomOf(words, size, stand);
      if (box.left < field.left || box.right > field.right || box.top < field.top || box.bottom > field.bottom) continue;
      if (field.taken.some((each) => meet(each, box, 6))) continue;
      const [middle, level] = [Math.round((box.left + box.right) / 2 / every), (box.top + box.bottom) / 2];
      const away = ({ heights }: Curve): number => Math.abs((heights[middle] ?? Number.POSITIVE_INFINITY) - level);
      const others = own ? field.curves.filter((curve) => curve !== own && away(curve) <= away(own)) : [];
      // It would be read as another's name; where two curves run as one, it is at least not wrong. Where no place is better, its color alone tells whose it is.
      const isNearAnother = own !== undefined && others.some((curve) => away(curve) < away(own));
      const cost =
        field.curves.reduce((sum, curve) => sum + 4 * runsThrough(curve, box), 0) + 8 * others.length + least + (isNearAnother ? nearAnother : 0);
      if (cost < (found?.cost ?? Number.POSITIVE_INFINITY)) found = { words, stand, cost };
    }
  }
  return found && { words: standing(found.words, size, found.stand, is), cost: found.cost };
}

/** Words at one point: over it, under it, at its sides. */
export function wordsAt([x, y]: Point, text: string, size: Word['size'], field: Field, is?: string): Found | undefined {
  const near = sizes[size].line / 2 + 10;
  const stands = [near, 34, 56, 80, 110].flatMap((far): readonly Stand[] => [
    { x: x + 6, y: y - far, anchor: 'start', far },
    { x: x - 6, y: y - far, anchor: 'end', far },
    { x: x + 6, y: y + far, anchor: 'start', far },
    { x: x - 6, y: y + far, anchor: 'end', far },
    { x, y: y - far, anchor: 'middle', far: far + 6 },
    { x, y: y + far, anchor: 'middle', far: far + 6 },
  ]);
  const beside: readonly Stand[] = [
    { x: x + 14, y, anchor: 'start', far: near + 3 },
    { x: x - 14, y, anchor: 'end', far: near + 3 },
  ];
  return best([...stands, ...beside], text, size, field, is);
}
/** Words along a curve, over or under it, rather near its later end. */
export function wordsAlong(curve: Curve, text: string, field: Field, is?: string): Found | undefined {
  const { points } = curve;
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return undefined;
  const shares = [0.97, 0.85, 0.7, 0.5, 0.35, 0.2, 0.03];
  const standsAt = (fars: readonly number[]): readonly Stand[] =>
    shares.flatMap((share, order): readonly Stand[] => {
      const x = first[0] + share * (last[0] - first[0]);
      const y = heightAt(points, x);
      if (y === undefined) return [];
      const anchor = share > 0.8 ? 'end' : share < 0.3 ? 'start' : 'middle';
      return fars.flatMap((far): readonly Stand[] => [
        { x, y: y - far, anchor, far: far + order },
        { x, y: y + far, anchor, far: far + order },
      ]);
    });
  return best(standsAt([17, 30, 46]), text, 'name', field, is, curve) ?? best(standsAt([64, 84, 110]), text, 'name', field, is, curve);
}
