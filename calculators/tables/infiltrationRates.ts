/** Classes of infiltration or permeability, slowest first: each begins at its lower limit, inches per hour; only `very-rapid` begins above its own. */
export const infiltrationClasses = {
  source: 'usepa-1981-permeability',
  where: 'NRCS permeability classes for saturated soil',
  seen: 'transcription',
  classes: [
    ['impermeable', 0],
    ['very-slow', 0.0015],
    ['slow', 0.06],
    ['moderately-slow', 0.2],
    ['moderate', 0.6],
    ['moderately-rapid', 2],
    ['rapid', 6],
    ['very-rapid', 20],
  ],
} as const;

/** Steady rate of deeply wetted soil, inches per hour, and the metric twin of the same list, mm per hour; `null` where the list has no limit. */
export const steadyRates = {
  source: 'hillel-1982',
  where: 'steady infiltration rates by soil type',
  seen: 'transcription',
  soils: {
    sand: { inPerHr: [0.8, null], mmPerHr: [20, null] },
    'sandy-and-silty': { inPerHr: [0.4, 0.8], mmPerHr: [10, 20] },
    loam: { inPerHr: [0.2, 0.4], mmPerHr: [5, 10] },
    clay: { inPerHr: [0.04, 0.2], mmPerHr: [1, 5] },
    'sodic-clay': { inPerHr: [null, 0.04], mmPerHr: [null, 1] },
  },
} as const;

/** Basic infiltration rate, mm per hour. The rate of sand is from memory; some copies print "less than" for it, a misprint. */
export const basicRates = {
  source: 'fao-irrigation-manual-5',
  where: 'annex 2',
  seen: 'transcription',
  soils: { sand: [30, null], 'sandy-loam': [20, 30], loam: [10, 20], 'clay-loam': [5, 10], clay: [1, 5] },
} as const;

/** Permeability by texture, inches per hour. */
export const permeabilityByTexture = {
  source: 'soil-farmer-training-manual',
  where: 'unit 2.1, table 6',
  seen: 'transcription',
  soils: {
    'coarse-sand-or-gravel': [20, null],
    'sand-or-loamy-sand': [6, 20],
    'sandy-loam': [2, 6],
    'very-fine-sandy-loam-loam-silt-loam-or-silt': [0.6, 2],
    'clay-loam': [0.2, 0.6],
    'sandy-clay-silty-clay-or-clay': [0.06, 0.2],
    'dense-clay-or-claypan': [null, 0.06],
  },
} as const;

/**
 * Reach of capillary pull sideways and down, the macroscopic capillary length, inches, for the lateral flow under a single ring:
 * 1 / 0.36, 1 / 0.12, 1 / 0.04 and 1 / 0.01 per cm.
 */
export const capillaryLengths = {
  source: 'elrick-reynolds-1992',
  where: 'categories of the sorptive number',
  seen: 'memory',
  soilsIn: {
    'coarse-sand-or-open-cracks': 1 / 0.36 / 2.54,
    'structured-soil': 1 / 0.12 / 2.54,
    'fine-unstructured': 1 / 0.04 / 2.54,
    'compact-clay': 1 / 0.01 / 2.54,
  },
} as const;
