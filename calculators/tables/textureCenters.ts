/** A sand and clay content that stands for each texture class, percent of the fine earth by weight; silt is the rest. */
export const textureCenters = {
  source: 'saxton-rawls-2006',
  where: 'table 3',
  seen: 'transcription',
  /** Organic matter that the table's results hold for, percent by weight. */
  organicMatterPercent: 2.5,
  centers: {
    sand: { sandPercent: 88, clayPercent: 5 },
    'loamy-sand': { sandPercent: 80, clayPercent: 5 },
    'sandy-loam': { sandPercent: 65, clayPercent: 10 },
    loam: { sandPercent: 40, clayPercent: 20 },
    'silt-loam': { sandPercent: 20, clayPercent: 15 },
    silt: { sandPercent: 10, clayPercent: 5 },
    'sandy-clay-loam': { sandPercent: 60, clayPercent: 25 },
    'clay-loam': { sandPercent: 30, clayPercent: 35 },
    'silty-clay-loam': { sandPercent: 10, clayPercent: 35 },
    'silty-clay': { sandPercent: 10, clayPercent: 45 },
    'sandy-clay': { sandPercent: 50, clayPercent: 40 },
    clay: { sandPercent: 25, clayPercent: 50 },
  },
} as const;
