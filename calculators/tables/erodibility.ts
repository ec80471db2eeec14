/**
 * Soil erodibility K by texture, US units: ton acre hour per hundred acre foot-ton inch. The soil survey's own K goes before either list.
 * Some copies print K times 2.24 as tonnes a hectare: that is for use with the US rain factor and is not the metric K.
 */
export const erodibilityByTextureLists = {
  /**
   * Three levels of organic matter, percent by weight. Sand, sandy clay loam, loam, silt and sandy clay were read in one copy only. The list's clay is a
   * range, .13 to .29, and is left out.
   */
  'stewart-1975': {
    source: 'stewart-1975',
    where: 'soil erodibility by texture and organic matter',
    seen: 'transcription',
    organicMatterPercent: [0.5, 2, 4],
    erodibility: {
      sand: [0.05, 0.03, 0.02],
      'loamy-sand': [0.12, 0.1, 0.08],
      'sandy-loam': [0.27, 0.24, 0.19],
      loam: [0.38, 0.34, 0.29],
      'silt-loam': [0.48, 0.42, 0.33],
      silt: [0.6, 0.52, 0.42],
      'sandy-clay-loam': [0.27, 0.25, 0.21],
      'clay-loam': [0.28, 0.25, 0.21],
      'silty-clay-loam': [0.37, 0.32, 0.26],
      'sandy-clay': [0.14, 0.13, 0.12],
      'silty-clay': [0.25, 0.23, 0.19],
    },
  },
  /** Two classes of organic matter, below and above 2 percent. No silt and no sandy clay. */
  'stone-hilborn-2012': {
    source: 'stone-hilborn-2012',
    where: 'table 2',
    seen: 'transcription',
    erodibility: {
      sand: { below: 0.03, above: 0.01 },
      'loamy-sand': { below: 0.05, above: 0.04 },
      'sandy-loam': { below: 0.14, above: 0.12 },
      loam: { below: 0.34, above: 0.26 },
      'silt-loam': { below: 0.41, above: 0.37 },
      'sandy-clay-loam': { below: 0.2, above: 0.2 },
      'clay-loam': { below: 0.33, above: 0.28 },
      'silty-clay-loam': { below: 0.35, above: 0.3 },
      'silty-clay': { below: 0.27, above: 0.26 },
      clay: { below: 0.24, above: 0.21 },
    },
  },
} as const;

/** Slowest water intake of each permeability class of the nomograph, in/h, class 1 first; class 6 is slower than the last. The two handbooks disagree. */
export const permeabilityScales = {
  '1978': { source: 'wischmeier-smith-1978', where: 'figure 3', seen: 'transcription', slowestInPerH: [6, 2, 0.6, 0.2, 0.06] },
  '1997': { source: 'renard-1997', where: 'table 3-3', seen: 'memory', slowestInPerH: [2.4, 0.8, 0.2, 0.08, 0.04] },
} as const;
