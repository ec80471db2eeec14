/**
 * Curve numbers for average antecedent condition and an initial abstraction of 0.2 S, by cover, hydrologic condition and hydrologic soil group.
 * `null` where the table has no number. Covers that the table doesn't split by condition have the one entry `only`.
 */
export type SoilGroup = 'a' | 'b' | 'c' | 'd';
export type NumbersByGroup = { readonly [group in SoilGroup]: number | null };
export type CoverCondition = 'poor' | 'fair' | 'good' | 'only';

/**
 * What the table's notes judge the condition by. `cover-and-grazing` and `cover` have cut-points in percent; `litter`: poor where heavy grazing or
 * regular burning destroyed litter, small trees and brush, fair where grazed but not burned with some litter, good where protected from grazing;
 * `infiltration`: poor where density, residue, roughness and rotation impair it, good where they help it.
 */
export type ConditionFrom = 'cover-and-grazing' | 'cover' | 'litter' | 'infiltration' | 'none';
export interface Cover {
  readonly conditionFrom: ConditionFrom;
  readonly conditions: { readonly [condition in CoverCondition]?: NumbersByGroup };
}
export interface CoverTable {
  readonly source: string;
  readonly where: string;
  readonly seen: 'transcription';
  /** Ground cover below this is poor, percent. */
  readonly poorBelowPercent: number;
  /** Ground cover above this is good, percent. */
  readonly goodAbovePercent: number;
  readonly covers: Readonly<Record<string, Cover>>;
}

/** Pasture, meadow, brush and woods where it is humid. The two A numbers of 30 stand for true ones below 30, which the method doesn't run. */
export const agriculturalCovers = {
  source: 'tr55-1986',
  where: 'table 2-2c',
  seen: 'transcription',
  poorBelowPercent: 50,
  goodAbovePercent: 75,
  covers: {
    pasture: {
      conditionFrom: 'cover-and-grazing',
      conditions: { poor: { a: 68, b: 79, c: 86, d: 89 }, fair: { a: 49, b: 69, c: 79, d: 84 }, good: { a: 39, b: 61, c: 74, d: 80 } },
    },
    meadow: { conditionFrom: 'none', conditions: { only: { a: 30, b: 58, c: 71, d: 78 } } },
    brush: {
      conditionFrom: 'cover',
      conditions: { poor: { a: 48, b: 67, c: 77, d: 83 }, fair: { a: 35, b: 56, c: 70, d: 77 }, good: { a: 30, b: 48, c: 65, d: 73 } },
    },
    'woods-grass': {
      conditionFrom: 'cover-and-grazing',
      conditions: { poor: { a: 57, b: 73, c: 82, d: 86 }, fair: { a: 43, b: 65, c: 76, d: 82 }, good: { a: 32, b: 58, c: 72, d: 79 } },
    },
    woods: {
      conditionFrom: 'litter',
      conditions: { poor: { a: 45, b: 66, c: 77, d: 83 }, fair: { a: 36, b: 60, c: 73, d: 79 }, good: { a: 30, b: 55, c: 70, d: 77 } },
    },
    farmstead: { conditionFrom: 'none', conditions: { only: { a: 59, b: 74, c: 82, d: 86 } } },
  },
} as const satisfies CoverTable;

/** Range where it is dry. Only desert shrub has numbers for soil group A. */
export const rangeCovers = {
  source: 'tr55-1986',
  where: 'table 2-2d',
  seen: 'transcription',
  poorBelowPercent: 30,
  goodAbovePercent: 70,
  covers: {
    herbaceous: {
      conditionFrom: 'cover',
      conditions: { poor: { a: null, b: 80, c: 87, d: 93 }, fair: { a: null, b: 71, c: 81, d: 89 }, good: { a: null, b: 62, c: 74, d: 85 } },
    },
    'oak-aspen': {
      conditionFrom: 'cover',
      conditions: { poor: { a: null, b: 66, c: 74, d: 79 }, fair: { a: null, b: 48, c: 57, d: 63 }, good: { a: null, b: 30, c: 41, d: 48 } },
    },
    'pinyon-juniper': {
      conditionFrom: 'cover',
      conditions: { poor: { a: null, b: 75, c: 85, d: 89 }, fair: { a: null, b: 58, c: 73, d: 80 }, good: { a: null, b: 41, c: 61, d: 71 } },
    },
    sagebrush: {
      conditionFrom: 'cover',
      conditions: { poor: { a: null, b: 67, c: 80, d: 85 }, fair: { a: null, b: 51, c: 63, d: 70 }, good: { a: null, b: 35, c: 47, d: 55 } },
    },
    'desert-shrub': {
      conditionFrom: 'cover',
      conditions: { poor: { a: 63, b: 77, c: 85, d: 88 }, fair: { a: 55, b: 72, c: 81, d: 86 }, good: { a: 49, b: 68, c: 79, d: 84 } },
    },
  },
} as const satisfies CoverTable;

export interface CultivatedTable {
  readonly source: string;
  readonly where: string;
  readonly seen: 'transcription';
  /** A treatment counts as with residue only if residue lies on at least this share of the ground all year, percent. */
  readonly residueAtLeastPercent: number;
  /** Residue cover from which the condition can be good, percent. */
  readonly goodResiduePercent: number;
  readonly covers: Readonly<Record<string, { readonly treatments: Readonly<Record<string, Cover>> }>>;
}

/** Crop ground, by crop and by how it is worked. */
export const cultivatedCovers = {
  source: 'tr55-1986',
  where: 'table 2-2b',
  seen: 'transcription',
  residueAtLeastPercent: 5,
  goodResiduePercent: 20,
  covers: {
    fallow: {
      treatments: {
        bare: { conditionFrom: 'none', conditions: { only: { a: 77, b: 86, c: 91, d: 94 } } },
        residue: { conditionFrom: 'infiltration', conditions: { poor: { a: 76, b: 85, c: 90, d: 93 }, good: { a: 74, b: 83, c: 88, d: 90 } } },
      },
    },
    'row-crops': {
      treatments: {
        'straight-row': { conditionFrom: 'infiltration', conditions: { poor: { a: 72, b: 81, c: 88, d: 91 }, good: { a: 67, b: 78, c: 85, d: 89 } } },
        'straight-row-residue': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 71, b: 80, c: 87, d: 90 }, good: { a: 64, b: 75, c: 82, d: 85 } },
        },
        contoured: { conditionFrom: 'infiltration', conditions: { poor: { a: 70, b: 79, c: 84, d: 88 }, good: { a: 65, b: 75, c: 82, d: 86 } } },
        'contoured-residue': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 69, b: 78, c: 83, d: 87 }, good: { a: 64, b: 74, c: 81, d: 85 } },
        },
        'contoured-terraced': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 66, b: 74, c: 80, d: 82 }, good: { a: 62, b: 71, c: 78, d: 81 } },
        },
        'contoured-terraced-residue': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 65, b: 73, c: 79, d: 81 }, good: { a: 61, b: 70, c: 77, d: 80 } },
        },
      },
    },
    'small-grain': {
      treatments: {
        'straight-row': { conditionFrom: 'infiltration', conditions: { poor: { a: 65, b: 76, c: 84, d: 88 }, good: { a: 63, b: 75, c: 83, d: 87 } } },
        'straight-row-residue': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 64, b: 75, c: 83, d: 86 }, good: { a: 60, b: 72, c: 80, d: 84 } },
        },
        contoured: { conditionFrom: 'infiltration', conditions: { poor: { a: 63, b: 74, c: 82, d: 85 }, good: { a: 61, b: 73, c: 81, d: 84 } } },
        'contoured-residue': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 62, b: 73, c: 81, d: 84 }, good: { a: 60, b: 72, c: 80, d: 83 } },
        },
        'contoured-terraced': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 61, b: 72, c: 79, d: 82 }, good: { a: 59, b: 70, c: 78, d: 81 } },
        },
        'contoured-terraced-residue': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 60, b: 71, c: 78, d: 81 }, good: { a: 58, b: 69, c: 77, d: 80 } },
        },
      },
    },
    'close-seeded': {
      treatments: {
        'straight-row': { conditionFrom: 'infiltration', conditions: { poor: { a: 66, b: 77, c: 85, d: 89 }, good: { a: 58, b: 72, c: 81, d: 85 } } },
        contoured: { conditionFrom: 'infiltration', conditions: { poor: { a: 64, b: 75, c: 83, d: 85 }, good: { a: 55, b: 69, c: 78, d: 83 } } },
        'contoured-terraced': {
          conditionFrom: 'infiltration',
          conditions: { poor: { a: 63, b: 73, c: 80, d: 83 }, good: { a: 51, b: 67, c: 76, d: 80 } },
        },
      },
    },
  },
} as const satisfies CultivatedTable;
