/** Published span of the cover factor C of each use of land, a yearly ratio to clean-tilled fallow. */
export const landUseCover = {
  source: 'weiner-matthews-2003',
  where: 'table 11-3, after USEPA 1976',
  seen: 'transcription',
  uses: {
    'permanent-vegetation': { low: 0.0001, high: 0.45 },
    'established-meadow': { low: 0.0004, high: 0.3 },
    'small-grains': { low: 0.07, high: 0.5 },
    'large-seeded-legumes': { low: 0.1, high: 0.65 },
    'row-crops': { low: 0.1, high: 0.7 },
    'tilled-fallow': { low: 1, high: 1 },
  },
} as const;

export type LandUse = keyof typeof landUseCover.uses;

/**
 * Cover factors of single crops and ways of growing them, yearly, for the ploughed side of a comparison. A local rotation's own factor goes before any of
 * these; bare fallow is not a crop.
 */
export const cropCover = {
  'tilled-fallow': { low: 1, high: 1, source: 'wischmeier-smith-1978', where: 'definition of C', seen: 'transcription' },
  'corn-conventional': {
    low: 0.37,
    high: 0.49,
    source: 'weiner-matthews-2003',
    where: 'example 11.1 (.49) and a class exercise (.37)',
    seen: 'transcription',
  },
  'corn-residue-left-fall-plow': { low: 0.42, high: 0.52, source: 'stewart-1975', where: 'generalized C values', seen: 'memory' },
  'corn-residue-left-spring-plow': { low: 0.38, high: 0.48, source: 'stewart-1975', where: 'generalized C values', seen: 'memory' },
  'corn-no-till-in-sod': { low: 0.017, high: 0.053, source: 'stewart-1975', where: 'generalized C values', seen: 'memory' },
  'soybeans-spring-plow': { low: 0.48, high: 0.54, source: 'stewart-1975', where: 'generalized C values', seen: 'memory' },
  'wheat-fallow-fall-plow': { low: 0.38, high: 0.38, source: 'stewart-1975', where: 'generalized C values', seen: 'memory' },
  'wheat-fallow-stubble-mulch': { low: 0.21, high: 0.21, source: 'stewart-1975', where: 'generalized C values', seen: 'memory' },
  'grass-legume-meadow': { low: 0.004, high: 0.01, source: 'stewart-1975', where: 'generalized C values', seen: 'memory' },
} as const;
