/**
 * Cover factor C for permanent pasture, range and idle land, a yearly ratio to clean-tilled fallow, for land that nobody tilled for three years or more.
 * `grass`: grass, grasslike plants, compacted duff or litter at the surface. `weeds`: mostly broadleaf plants with few roots near the surface, or undecayed
 * residue. Columns are ground cover; the last is 95 percent and more. At no ground cover at all the factor is .45: 1.0 is tilled fallow.
 *
 * The 1982 print. The 1978 handbook differs by .001 or .002 in some cells, by .005 in one (from memory). One cell, short brush 75 %, weeds, 40 % cover, is
 * printed .07, next to .067 at 60 % cover; .09 is taken here, which is the 1978 handbook's value (from memory) and the run of the row.
 */
export const pastureCover = {
  source: 'scs-agronomy-note-50-1982',
  where: 'table 1',
  seen: 'transcription',
  coverPercent: [0, 20, 40, 60, 80, 95],
  canopyPercent: [0, 25, 50, 75],
  /** Rows by canopy percent; the first row has no canopy and is the same under every height. */
  factors: {
    /** Tall weeds or short brush, drops fall about 20 in. */
    'short-brush': {
      grass: [
        [0.45, 0.2, 0.1, 0.042, 0.013, 0.003],
        [0.36, 0.17, 0.09, 0.038, 0.012, 0.003],
        [0.26, 0.13, 0.07, 0.035, 0.012, 0.003],
        [0.17, 0.1, 0.06, 0.031, 0.011, 0.003],
      ],
      weeds: [
        [0.45, 0.24, 0.15, 0.09, 0.043, 0.011],
        [0.36, 0.2, 0.13, 0.082, 0.041, 0.011],
        [0.26, 0.16, 0.11, 0.075, 0.039, 0.011],
        [0.17, 0.12, 0.09, 0.067, 0.038, 0.011],
      ],
    },
    /** Brush or bushes, drops fall about 6.5 ft. */
    'tall-brush': {
      grass: [
        [0.45, 0.2, 0.1, 0.042, 0.013, 0.003],
        [0.4, 0.18, 0.09, 0.04, 0.013, 0.003],
        [0.34, 0.16, 0.085, 0.038, 0.012, 0.003],
        [0.28, 0.14, 0.08, 0.036, 0.012, 0.003],
      ],
      weeds: [
        [0.45, 0.24, 0.15, 0.09, 0.043, 0.011],
        [0.4, 0.22, 0.14, 0.085, 0.042, 0.011],
        [0.34, 0.19, 0.13, 0.081, 0.041, 0.011],
        [0.28, 0.17, 0.12, 0.077, 0.04, 0.011],
      ],
    },
    /** Trees without low brush, drops fall about 13 ft. */
    trees: {
      grass: [
        [0.45, 0.2, 0.1, 0.042, 0.013, 0.003],
        [0.42, 0.19, 0.1, 0.041, 0.013, 0.003],
        [0.39, 0.18, 0.09, 0.04, 0.013, 0.003],
        [0.36, 0.17, 0.09, 0.039, 0.012, 0.003],
      ],
      weeds: [
        [0.45, 0.24, 0.15, 0.09, 0.043, 0.011],
        [0.42, 0.23, 0.14, 0.087, 0.042, 0.011],
        [0.39, 0.21, 0.14, 0.085, 0.042, 0.011],
        [0.36, 0.2, 0.13, 0.083, 0.041, 0.011],
      ],
    },
  },
} as const;

export type CanopyHeight = keyof typeof pastureCover.factors;
export type CoverKind = keyof (typeof pastureCover.factors)['trees'];
