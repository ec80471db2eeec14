/**
 * How the season's numbers lie in flat arrays, and how they are read there. A run steps through millions of days; objects would cost ten times the time and
 * the memory. Each name is a place within one day, paddock or year; `width` is how far it is to the next.
 */

/** One day of the sky, the same for both managements. */
export const SKY = { rain: 0, melt: 1, reference: 2, response: 3, frost: 4, rot: 5, erosivity: 6, width: 8 } as const;

/*
 * A paddock's row: how it stands, what it is, and its sums of the running year, behind each other in one array, because to find one more array costs the loop
 * as much as ten numbers of it.
 */

/** How a paddock stands in the evening; the last: on which day stock were last in it, which changes on few days, where a count of days changes on each. */
export const STATE = { held: 0, surface: 1, depletion: 2, top: 3, green: 4, dead: 5, litter: 6, lastGrazed: 7 } as const;

/**
 * What a paddock is: its size, soil, curve numbers, grass; and what follows from them, worked out once. `perPoorer` and `perBetter` say how far the curve
 * number moves for a percent of cover below and above the fair middle.
 */
export const GROUND = {
  area: 8,
  available: 9,
  topAvailable: 10,
  belowAvailable: 11,
  evaporable: 12,
  perSlowing: 13,
  perTop: 14,
  perBelow: 15,
  fair: 16,
  poorMiddle: 17,
  fairMiddle: 18,
  goodMiddle: 19,
  perPoorer: 20,
  perBetter: 21,
  perCeiling: 22,
  rate: 23,
  bareLoss: 24,
  isMeadow: 25,
  grazedFrom: 26,
} as const;

/** What a morning leaves in a paddock's row for the rest of its day: ground under green leaves and under all cover; on wet days what ran off and was lost. */
export const MORNING = { greenShare: 27, cover: 28, runoff: 29, soilLost: 30 } as const;

/** Where the herd is, and what was decided for the season. */
export const HERD = { paddock: 0, daysIn: 1, isPulled: 2, keptShare: 3, width: 4 } as const;

/** Sums of a paddock over one hay year. */
export const SUM = {
  runoff: 31,
  drainage: 32,
  evaporation: 33,
  transpiration: 34,
  dried: 35,
  stressDays: 36,
  grown: 37,
  soilLost: 38,
  eaten: 39,
  trampled: 40,
  cut: 41,
  stubbleBroken: 42,
  grazedDays: 43,
  cover: 44,
  peak: 45,
} as const;

/** Where state, ground and sums begin in a paddock's row, and how long it is. */
export const ROW = { state: 0, ground: 8, sums: 31, width: 46 } as const;

/** Sums of a whole side over one hay year. */
export const YEAR = {
  demand: 0,
  eaten: 1,
  fed: 2,
  fromBarn: 3,
  fromBarnInSeason: 4,
  made: 5,
  grazedDays: 6,
  days: 7,
  moves: 8,
  pulledOn: 9,
  soldOn: 10,
  width: 11,
} as const;

/** What is kept of a paddock's day where days are drawn or compared. */
export const TRACE = {
  held: 0,
  surface: 1,
  depletion: 2,
  top: 3,
  green: 4,
  dead: 5,
  litter: 6,
  runoff: 7,
  drainage: 8,
  evaporation: 9,
  transpiration: 10,
  dried: 11,
  grown: 12,
  eaten: 13,
  soilLost: 14,
  cover: 15,
  width: 16,
} as const;

/** Bits of a day: what the calendar of a management says of it. */
export const FLAG = { inSeason: 1, turnOut: 2, cut: 4, sell: 8 } as const;

function missing(index: number): never {
  throw new RangeError(`the season has no number at ${index}`);
}
/** A number that must be there: a missing one stops the run and never counts as nothing. Small enough to vanish when it is compiled. */
export function numberAt(numbers: Float64Array, index: number): number {
  return numbers[index] ?? missing(index);
}
/** The same of whole numbers; apart, so that each of the two meets one kind of array only and stays fast. */
export function wholeAt(numbers: Int32Array, index: number): number {
  return numbers[index] ?? missing(index);
}
/** The rows of a flat array. Within a row each place is a constant, which is found with half the work of a place in the whole. */
export const rowsOf = (numbers: Float64Array, width: number): readonly Float64Array[] =>
  Array.from({ length: numbers.length / width }, (_, row) => numbers.subarray(row * width, (row + 1) * width));
export function rowAt(rows: readonly Float64Array[], index: number): Float64Array {
  return rows[index] ?? missing(index);
}
export function add(numbers: Float64Array, index: number, value: number): void {
  numbers[index] = numberAt(numbers, index) + value;
}
