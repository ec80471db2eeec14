/**
 * How the season's numbers lie in flat arrays, and how they are read there. A run steps through millions of days; objects would cost ten times the time and
 * the memory. Each name is a place within one day, paddock or year; `width` is how far it is to the next.
 */

/** One day of the sky, the same for both managements. */
export const SKY = { rain: 0, melt: 1, reference: 2, response: 3, frost: 4, rot: 5, erosivity: 6, width: 8 } as const;

/**
 * What a paddock is: its size, soil, curve numbers, grass; and what follows from them, worked out once. `perPoorer` and `perBetter` say how far the curve
 * number moves for a percent of cover below and above the fair middle.
 */
export const GROUND = {
  area: 0,
  available: 1,
  topAvailable: 2,
  belowAvailable: 3,
  evaporable: 4,
  perSlowing: 5,
  perTop: 6,
  perBelow: 7,
  fair: 8,
  poorMiddle: 9,
  fairMiddle: 10,
  goodMiddle: 11,
  perPoorer: 12,
  perBetter: 13,
  perCeiling: 14,
  rate: 15,
  bareLoss: 16,
  isMeadow: 17,
  grazedFrom: 18,
  width: 20,
} as const;

/** How a paddock stands in the evening. */
export const STATE = { held: 0, surface: 1, depletion: 2, top: 3, green: 4, dead: 5, litter: 6, rest: 7, width: 8 } as const;

/** Where the herd is, and what was decided for the season. */
export const HERD = { paddock: 0, daysIn: 1, isPulled: 2, keptShare: 3, width: 4 } as const;

/** Sums of a paddock over one hay year. */
export const SUM = {
  runoff: 0,
  drainage: 1,
  evaporation: 2,
  transpiration: 3,
  dried: 4,
  stressDays: 5,
  grown: 6,
  soilLost: 7,
  eaten: 8,
  trampled: 9,
  cut: 10,
  stubbleBroken: 11,
  grazedDays: 12,
  cover: 13,
  peak: 14,
  width: 16,
} as const;

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
  width: 10,
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
