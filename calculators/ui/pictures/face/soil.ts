import { noise, strokes, sway } from '../noise.ts';
import { tenth } from '../readings.ts';

// The ground, made of paths in pixels. Each function gives the `d` of a few paths: a handful of elements, whatever is drawn.

const whole = Math.round;
type Point = readonly [number, number];

export interface Stretch {
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly salt: number;
}

/** A line from left to right that wanders around a depth: a path without its first M. */
export function wander(depth: number, width: number, by: number, salt: number, step = 19): string {
  const count = Math.max(2, Math.round(width / step));
  const at = (index: number): number => tenth(depth + sway(index, salt) * by);
  const long = width / count;
  return `${at(0)}${strokes(count, (index) => `S${tenth((index + 0.5) * long)} ${at(index + 1)} ${tenth((index + 1) * long)} ${at(index + 1)}`)}`;
}

/** Crumbs of four sizes, as bent strokes with round ends: a dozen bytes each. Neighbours are of different groups, so that each keeps its dark rim. */
export function crumbs({ width, top, bottom, salt }: Stretch, cell: number): readonly string[] {
  const groups = ['', '', '', ''];
  const tall = cell * 0.84;
  for (let row = 0; row <= (bottom - top) / tall + 1; row++)
    for (let column = 0; column <= width / cell; column++) {
      const index = row * 97 + column;
      const x = (column + (row % 2) / 2 + sway(index, salt) * 0.34) * cell;
      const y = top + cell * 0.42 + (row + sway(index, salt + 1) * 0.3) * tall;
      // The lowest lie scattered between the blocks below.
      const foot = bottom + 5 * Math.sin(x / 29 + salt) + sway(index, salt + 2) * cell * 0.9;
      if (y > foot || x < -2 || x > width + 2) continue;
      const turn = noise(index, salt + 3) * 6.3;
      const size = cell * (0.08 + 0.4 * noise(index, salt + 4));
      const [dx, dy] = [Math.cos(turn) * size, Math.sin(turn) * size];
      groups[(column % 2) + 2 * (row % 2)] +=
        `M${whole(x - dx / 2)} ${whole(y - dy / 2)}l${whole(dx)} ${whole(dy)} ${whole(-dy * 0.7)} ${whole(dx * 0.7)}`;
    }
  return groups;
}

/** The part of a polygon that lies nearer to one point than to another. */
function nearer(polygon: readonly Point[], [ax, ay]: Point, [bx, by]: Point): readonly Point[] {
  const beyond = polygon.map(([x, y]) => (x - (ax + bx) / 2) * (bx - ax) + (y - (ay + by) / 2) * (by - ay));
  const kept: Point[] = [];
  for (const [index, point] of polygon.entries()) {
    const after = (index + 1) % polygon.length;
    const next = polygon[after] ?? point;
    const [here = 0, there = 0] = [beyond[index], beyond[after]];
    const cut = here / (here - there);
    if (here <= 0) kept.push(point);
    if (here < 0 !== there < 0) kept.push([point[0] + (next[0] - point[0]) * cut, point[1] + (next[1] - point[1]) * cut]);
  }
  return kept;
}
/** Steps to the points around one, the nearest first: most of those far off cut nothing more away, and are passed over. */
const around = Array.from({ length: 25 }, (_, index): Point => [(index % 5) - 2, Math.floor(index / 5) - 2])
  .filter(([column, row]) => column !== 0 || row !== 0)
  .sort(([ax, ay], [bx, by]) => ax ** 2 + ay ** 2 - (bx ** 2 + by ** 2));

export interface Grid {
  readonly across: number;
  readonly tall: number;
  /** Width of the crack around each, to its middle. */
  readonly gap: number;
}
/** Blocks with cracks between them, in three tones: the cells nearest to scattered points, each drawn in a little. */
export function blocks({ width, top, bottom, salt }: Stretch, grid: Grid, near = 1): readonly string[] {
  const [across, tall, gap] = [grid.across * near, grid.tall * near, grid.gap];
  // In units of a block, so that plates come out as flat as their grid.
  const at = (column: number, row: number): Point => {
    const index = row * 61 + column;
    return [column + 0.5 + (row % 2 ? 0.4 : 0) + sway(index, salt) * 0.34, row + 0.5 + sway(index, salt + 1) * 0.34];
  };
  // Each is a neighbor of two dozen others.
  const [rows = 0, columns = 0] = [(bottom - top) / tall, width / across].map((count) => Math.floor(count) + 6);
  const points = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => at(column - 3, row - 3)));
  const tones = ['', '', ''];
  for (let row = -1; row <= (bottom - top) / tall; row++)
    for (let column = -1; column <= width / across; column++) {
      const [u, v] = points[row + 3]?.[column + 3] ?? at(column, row);
      if (top + v * tall > bottom + 5) continue;
      let cell: readonly Point[] = [
        [u - 1.5, v - 1.5],
        [u + 1.5, v - 1.5],
        [u + 1.5, v + 1.5],
        [u - 1.5, v + 1.5],
      ];
      for (const [across, down] of around) {
        const other = points[row + down + 3]?.[column + across + 3] ?? at(column + across, row + down);
        const reach = ((other[0] - u) ** 2 + (other[1] - v) ** 2) / 4;
        if (cell.some(([x, y]) => (x - u) ** 2 + (y - v) ** 2 >= reach)) cell = nearer(cell, [u, v], other);
      }
      const corner = ([cu, cv]: Point): string => {
        const [dx, dy] = [(cu - u) * across, (cv - v) * tall];
        const kept = Math.max(0.2, 1 - gap / Math.max(Math.hypot(dx, dy), 1));
        return `${whole(u * across + dx * kept)} ${whole(top + v * tall + dy * kept)}`;
      };
      tones[Math.floor(noise(row * 61 + column, salt + 5) * 3)] += `M${cell.map(corner).join('L')}z`;
    }
  return tones;
}
