import { GROUND, HERD, numberAt, ROW, rowAt, rowsOf, STATE, TRACE, YEAR } from './flat.ts';
import type { Plan } from './plan.ts';
import { type Start, usualStart } from './side.ts';

/** All that a run changes. */
export interface Memory {
  /** The row of each paddock. */
  readonly rows: readonly Float64Array[];
  readonly herd: Float64Array;
  /** The sums of each paddock's row, by period and paddock. */
  readonly sums: Float64Array;
  /** `YEAR.width` numbers a period, and their rows. */
  readonly years: Float64Array;
  readonly yearRows: readonly Float64Array[];
  /** `TRACE.width` numbers a paddock and day, from `tracedFrom` on; empty where no day is drawn. */
  readonly trace: Float64Array;
  /** Share of the stock that was there on each of these days. */
  readonly kept: Float64Array;
  readonly tracedFrom: number;
}

const longRested = 1000;
/** No paddock, as the flat herd writes it. */
export const nowhere = -1;

function rowsAtStart({ paddocks, grounds }: Plan, start: Start): readonly Float64Array[] {
  const rows = rowsOf(new Float64Array(paddocks * ROW.width), ROW.width);
  for (const [paddock, row] of rows.entries()) {
    row.set(rowAt(grounds, paddock));
    row[STATE.depletion] = start.depletedShare * numberAt(row, GROUND.available);
    row[STATE.top] = start.depletedShare * numberAt(row, GROUND.topAvailable);
    row[STATE.green] = start.greenLbPerAc;
    row[STATE.dead] = start.deadLbPerAc;
    row[STATE.litter] = start.litterLbPerAc;
    row[STATE.lastGrazed] = -1 - longRested;
  }
  return rows;
}

const { sums: sumsFrom, width: rowWidth } = ROW;
const sumsWidth = rowWidth - sumsFrom;
/** Where a sum of a paddock over a period lies. */
export const sumAt = ({ paddocks }: Plan, period: number, paddock: number, field: number): number =>
  (period * paddocks + paddock) * sumsWidth + field - sumsFrom;
/** Lays the sums of a period into the rows, to be gone on with. */
export function takeSums({ rows, sums }: Memory, { paddocks }: Plan, period: number): void {
  let at = period * paddocks * sumsWidth;
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    const row = rowAt(rows, paddock);
    for (let field = sumsFrom; field < rowWidth; field += 1, at += 1) row[field] = numberAt(sums, at);
  }
}
/** Keeps the sums in the rows as those of a period. */
export function keepSums({ rows, sums }: Memory, { paddocks }: Plan, period: number): void {
  let at = period * paddocks * sumsWidth;
  for (let paddock = 0; paddock < paddocks; paddock += 1) {
    const row = rowAt(rows, paddock);
    for (let field = sumsFrom; field < rowWidth; field += 1, at += 1) sums[at] = numberAt(row, field);
  }
}
const restingHerd = (): Float64Array =>
  Float64Array.from({ length: HERD.width }, (_, field) => (field === HERD.paddock ? nowhere : field === HERD.keptShare ? 1 : 0));

export function memoryOf(
  plan: Plan,
  periods: number,
  { start = usualStart, tracedFrom = 0, tracedDays = 0 }: { readonly start?: Start; readonly tracedFrom?: number; readonly tracedDays?: number } = {},
): Memory {
  const years = new Float64Array(periods * YEAR.width);
  return {
    rows: rowsAtStart(plan, start),
    herd: restingHerd(),
    sums: new Float64Array(periods * plan.paddocks * sumsWidth),
    years,
    yearRows: rowsOf(years, YEAR.width),
    trace: new Float64Array(tracedDays * plan.paddocks * TRACE.width),
    kept: new Float64Array(tracedDays),
    tracedFrom,
  };
}
