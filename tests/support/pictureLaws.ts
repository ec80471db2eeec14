import { expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';

type Values = Outcome['values'];
const numberOf = (values: Values, name: string): number => {
  const value = values[name];
  if (typeof value !== 'number') throw new RangeError(`the picture needs a number named ${name}`);
  return value;
};
function columnOf(values: Values, rows: string, name: string): readonly number[] {
  const list = values[rows];
  return (Array.isArray(list) ? list : []).map((row: unknown) => {
    const cell: unknown = typeof row === 'object' && row !== null ? new Map(Object.entries(row)).get(name) : undefined;
    if (typeof cell !== 'number') throw new RangeError(`the picture needs a number named ${rows}.${name}`);
    return cell;
  });
}
const expectSum = (parts: readonly number[], whole: number): void =>
  expect(Math.abs(parts.reduce((sum, part) => sum + part, 0) - whole)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(whole)));

/** Every result that is a day, those in rows too. */
function daysIn({ quantities }: Calculator, values: Values): readonly (readonly [string, unknown])[] {
  return Object.entries(quantities).flatMap(([name, quantity]): readonly (readonly [string, unknown])[] => {
    const value = values[name];
    if (quantity.kind === 'day') return [[name, value]];
    if (quantity.kind !== 'rows' || !Array.isArray(value)) return [];
    const days = Object.entries(quantity.columns).flatMap(([column, { kind }]) => (kind === 'day' ? [column] : []));
    return days.flatMap((column) =>
      value.map((row: unknown) => [`${name}.${column}`, typeof row === 'object' && row !== null ? Reflect.get(row, column) : row] as const),
    );
  });
}

/** What a picture draws in its example must fit together, so that no two of its names can be exchanged. */
export function itDrawsWhatFits(calculator: Calculator): void {
  const { picture } = calculator;
  it('tells days that are on the calendar', () => {
    const { values } = runQuery(calculator, '');
    for (const [name, value] of daysIn(calculator, values)) expect(Number.isInteger(value), `${name}: ${String(value)}`).toBe(true);
  });
  it('draws parts that fit together, and tells ranges upward', () => {
    const { values, ranges } = runQuery(calculator, '');
    for (const [of, says] of Object.entries(ranges)) {
      const [, low, high] = /^(-?[\d,.]*\d)(?: \S+)? to (-?[\d,.]*\d)/.exec(says.replaceAll('−', '-')) ?? [];
      const [one, other] = [low, high].map((text) => Number(text?.replaceAll(',', '')));
      if (low !== undefined && high !== undefined) expect(one, `${of}: ${says}`).toBeLessThanOrEqual(other ?? Number.NaN);
    }
    const of = (name: string): number => numberOf(values, name);
    switch (picture?.kind) {
      case 'soilFace':
        expectSum([of(picture.runsOff), of(picture.heldFirst), of(picture.soaksIn)], of(picture.rain));
        break;
      case 'shares':
        for (const { whole, parts } of [picture, ...(picture.beside ?? [])])
          expectSum(
            parts.map((part) => of(part.of)),
            whole === undefined ? 100 : of(whole),
          );
        break;
      case 'groundProfile': {
        expectSum([of(picture.has), of(picture.missing)], of(picture.holds));
        expect(of(picture.mostRoots)).toBeLessThanOrEqual(of(picture.deepestRoot));
        const thickness = columnOf(values, picture.rows, picture.thickness);
        for (const [at, top] of columnOf(values, picture.rows, picture.top).entries()) expectSum(thickness.slice(0, at), top);
        // No fuller than its fullest layer, no drier than its driest.
        const filled = columnOf(values, picture.rows, picture.filledPercent);
        const hasPercent = (100 * of(picture.has)) / of(picture.holds);
        expect(hasPercent).toBeGreaterThanOrEqual(Math.min(...filled));
        expect(hasPercent).toBeLessThanOrEqual(Math.max(...filled));
        break;
      }
      case 'lines': {
        const { you } = picture;
        if (!you) break;
        // The reader's own place lies on the axis, and what stands there lies on the curve, as near as a curve of points can tell it.
        const [across, up] = [columnOf(values, picture.rows, picture.x), columnOf(values, picture.rows, picture.ys[0] ?? '')];
        expect(of(you.at)).toBeGreaterThanOrEqual(Math.min(...across));
        expect(of(you.at)).toBeLessThanOrEqual(Math.max(...across));
        const after = across.findIndex((at) => at >= of(you.at));
        const near = up.slice(Math.max(0, after - 1), after + 1);
        expect(of(you.value)).toBeGreaterThanOrEqual(Math.min(...near));
        expect(of(you.value)).toBeLessThanOrEqual(Math.max(...near));
        break;
      }
      case 'bars': {
        const [bars, usual] = [picture.y, picture.usual].map((name) => columnOf(values, picture.rows, name));
        expect(Math.min(...(bars ?? []), ...(usual ?? []))).toBeGreaterThanOrEqual(0);
        const days = columnOf(values, picture.rows, picture.x);
        expect(days).toEqual(days.toSorted((one, other) => one - other));
        break;
      }
      case 'spans': {
        if ('lanes' in picture) {
          // From the shortest to the longest.
          const ends = picture.lanes.map((lane) => of(lane.of));
          expect(ends).toEqual(ends.toSorted((one, other) => one - other));
          break;
        }
        const { from } = picture;
        const ends = columnOf(values, picture.rows, picture.to);
        // From one day on, some lanes may lie behind it: they end in order, and one at least lies ahead.
        if (typeof from !== 'string') {
          expect(ends).toEqual(ends.toSorted((one, other) => one - other));
          expect(Math.max(...ends)).toBeGreaterThan(of(from.of));
          break;
        }
        for (const [at, start] of columnOf(values, picture.rows, from).entries()) expect(start).toBeLessThan(ends[at] ?? Number.NaN);
        break;
      }
      default:
    }
  });
}
