/**
 * Bulk densities that hold roots back, g/cm3 of fine earth. Published lists disagree by up to 0.2, so each stands under its own name.
 * `idealBelow`: good for roots below it; `limitsFrom`: roots may suffer from here; `stopsAbove`: roots are kept out above it.
 * A texture that a list doesn't name, or names twice with different values, is missing from it.
 */
export interface DensityLimits {
  readonly idealBelow?: number;
  readonly limitsFrom?: number;
  readonly stopsAbove?: number;
}
export interface DensityList {
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
  readonly limits: Readonly<Record<string, DensityLimits>>;
}

const sandy = { idealBelow: 1.6, stopsAbove: 1.8 };
const silty = { idealBelow: 1.4, stopsAbove: 1.65 };
const clayey = { idealBelow: 1.1, stopsAbove: 1.47 };
const loamy = { idealBelow: 1.4, limitsFrom: 1.63, stopsAbove: 1.8 };
const clayLoamy = { idealBelow: 1.4, limitsFrom: 1.6, stopsAbove: 1.75 };
const heavy = { idealBelow: 1.1, limitsFrom: 1.49, stopsAbove: 1.58 };

export const rootLimitingDensity = {
  /** Three groups of texture. Which class belongs to which group is left to the reader there; the loams are left out here. */
  'three-groups': {
    source: 'nrcs-bulk-density-sheet',
    where: 'table 1',
    seen: 'transcription',
    limits: { sand: sandy, 'loamy-sand': sandy, silt: silty, 'silt-loam': silty, 'silty-clay': clayey, 'sandy-clay': clayey, clay: clayey },
  },
  /** One density for each class, at which roots begin to have problems. */
  'by-class': {
    source: 'illinois-nres201-2011',
    where: 'lectures 3-4, bulk densities when roots begin to have problems',
    seen: 'print',
    limits: {
      sand: { limitsFrom: 1.8 },
      'loamy-sand': { limitsFrom: 1.8 },
      'sandy-loam': { limitsFrom: 1.75 },
      loam: { limitsFrom: 1.7 },
      'sandy-clay-loam': { limitsFrom: 1.7 },
      'clay-loam': { limitsFrom: 1.65 },
      'sandy-clay': { limitsFrom: 1.6 },
      silt: { limitsFrom: 1.55 },
      'silt-loam': { limitsFrom: 1.55 },
      'silty-clay-loam': { limitsFrom: 1.5 },
      'silty-clay': { limitsFrom: 1.45 },
      clay: { limitsFrom: 1.4 },
    },
  },
  /** A critical range for each class; roots grow below it. */
  'critical-range': {
    source: 'ufl-critical-bulk-density',
    where: 'critical bulk density values',
    seen: 'print',
    limits: {
      clay: { limitsFrom: 1.4, stopsAbove: 1.55 },
      'silt-loam': { limitsFrom: 1.4, stopsAbove: 1.55 },
      'silty-clay': { limitsFrom: 1.4, stopsAbove: 1.45 },
      'silty-clay-loam': { limitsFrom: 1.4, stopsAbove: 1.45 },
      silt: { limitsFrom: 1.4, stopsAbove: 1.45 },
      'clay-loam': { limitsFrom: 1.45, stopsAbove: 1.55 },
      loam: { limitsFrom: 1.45, stopsAbove: 1.6 },
      'sandy-clay': { limitsFrom: 1.55, stopsAbove: 1.65 },
      'sandy-clay-loam': { limitsFrom: 1.55, stopsAbove: 1.75 },
      'sandy-loam': { limitsFrom: 1.55, stopsAbove: 1.75 },
      'loamy-sand': { stopsAbove: 1.75 },
      sand: { stopsAbove: 1.75 },
    },
  },
  /** Seven rows of texture. Silt loam stands in two of them and is left out; clay is the row for more than 45 % clay. */
  'seven-rows': {
    source: 'arshad-1996',
    where: 'table of bulk density and root growth',
    seen: 'memory',
    limits: {
      sand: { idealBelow: 1.6, limitsFrom: 1.69, stopsAbove: 1.8 },
      'loamy-sand': { idealBelow: 1.6, limitsFrom: 1.69, stopsAbove: 1.8 },
      'sandy-loam': loamy,
      loam: loamy,
      'sandy-clay-loam': clayLoamy,
      'clay-loam': clayLoamy,
      silt: { idealBelow: 1.4, limitsFrom: 1.6, stopsAbove: 1.75 },
      'silty-clay-loam': { idealBelow: 1.4, limitsFrom: 1.55, stopsAbove: 1.65 },
      'sandy-clay': heavy,
      'silty-clay': heavy,
      clay: { idealBelow: 1.1, limitsFrom: 1.39, stopsAbove: 1.47 },
    },
  },
} as const satisfies Readonly<Record<string, DensityList>>;

export type DensityListName = keyof typeof rootLimitingDensity;
