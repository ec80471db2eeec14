import { expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { type Face, type PlainPicture, picturesOf } from '../../calculators/kit/pictures.ts';

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

/** What a face draws must fit together, so that no two of its names can be exchanged. */
function expectFace({ water, tray, lies, layers, counts, hard, ring, loss, pond }: Face, values: Values): void {
  const of = (name: string): number => numberOf(values, name);
  expect([water, tray, lies, layers, counts, hard, ring, loss, pond].filter((part) => part !== undefined)).toHaveLength(1);
  if (water) expectSum([water.ranOffIn, ...(water.heldIn === undefined ? [] : [water.heldIn]), water.soakedIn].map(of), of(water.fellIn));
  if (tray) {
    expectSum([tray.ranOff, tray.cameThrough, tray.stayed].map(of), of(tray.poured));
    expect(of(tray.rainIn)).toBeLessThan(of(tray.soilIn));
  }
  if (layers) {
    expectSum([of(layers.has), of(layers.missing)], of(layers.holds));
    expect(of(layers.mostRoots)).toBeLessThanOrEqual(of(layers.deepestRoot));
    const thickness = columnOf(values, layers.rows, layers.thickness);
    for (const [at, top] of columnOf(values, layers.rows, layers.top).entries()) expectSum(thickness.slice(0, at), top);
    // No fuller than its fullest layer, no drier than its driest.
    const filled = columnOf(values, layers.rows, layers.filledPercent);
    const hasPercent = (100 * of(layers.has)) / of(layers.holds);
    expect(hasPercent).toBeGreaterThanOrEqual(Math.min(...filled));
    expect(hasPercent).toBeLessThanOrEqual(Math.max(...filled));
  }
  if (counts) {
    const { plant, litter, rock, bare, all, coveredPercent } = counts;
    expectSum([plant, litter, rock, bare].map(of), of(all));
    expectSum([(of(coveredPercent) / 100) * of(all), of(bare)], of(all));
  }
  // Stone is 2.65 g/cm3: what is no pore weighs that.
  if (hard) expectSum([(1 - of(hard.poresPercent) / 100) * 2.65], of(hard.density));
  // An inch at the rate takes as long as is said, and all of a pouring fits above the ground.
  if (ring) {
    expectSum([60 / of(ring.rate)], of(ring.inchMin));
    expect(of(ring.waterIn)).toBeLessThan(of(ring.insertedIn));
    expect(of(ring.insertedIn)).toBeLessThan(of(ring.acrossIn));
  }
  if (loss) for (const { lostIn, inchYears } of [loss, loss.plowed]) expectSum([of(lostIn) * of(inchYears)], 30);
  if (loss) expect(of(loss.lostIn)).toBeLessThan(of(loss.plowed.lostIn));
  if (pond) {
    expectSum([of(pond.drunk), of(pond.lost), of(pond.left)], of(pond.all));
    expect(of(pond.drunk)).toBeLessThan(of(pond.lost));
    expect(of(pond.left)).toBeLessThan(of(pond.drunk));
  }
}

/** What a picture draws in its example must fit together, so that no two of its names can be exchanged. */
export function itDrawsWhatFits(calculator: Calculator): void {
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
    for (const picture of picturesOf(calculator, values)) expectPicture(picture, values);
  });
}
function expectPicture(picture: PlainPicture, values: Values): void {
  const of = (name: string): number => numberOf(values, name);
  switch (picture.kind) {
    case 'face':
      expectFace(picture, values);
      break;
    case 'shares':
      for (const { whole, parts } of [picture, ...(picture.beside ?? [])])
        expectSum(
          parts.map((part) => of(part.of)),
          whole === undefined ? 100 : of(whole),
        );
      break;
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
    case 'strip': {
      const days = columnOf(values, picture.rows, picture.x);
      expect(days).toEqual(days.toSorted((one, other) => one - other));
      const list = values[picture.rows];
      // Each row is a face of its own: what it is cut into adds up.
      for (const row of Array.isArray(list) ? list : [])
        if (typeof row === 'object') expectFace(picture.face, { ...values, ...row, [picture.rows]: [row] });
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
  }
}
