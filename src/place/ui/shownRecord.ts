import type { yardstickOf } from '../offer/stockToday.ts';
import type { Planned } from '../record/planned.ts';
import type { Stay } from '../record/stays.ts';
import type { Rows } from './rows.ts';
import type { PlaceView } from './view.ts';

/** The record with what was worked out of it, as its parts are drawn from. */
export interface ShownRecord extends PlaceView {
  readonly rows: Rows;
  readonly todayDay: number;
  readonly year: number;
  /** Of all years. */
  readonly stays: readonly Stay[];
  /** Those that had days in the year, each with what fell in it. */
  readonly ofYear: readonly Stay[];
  readonly planned: readonly Planned[];
  readonly yardstick: ReturnType<typeof yardstickOf>;
}
