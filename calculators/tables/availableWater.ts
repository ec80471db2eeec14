/** Water that a soil holds for plants by the feel of its texture, inches in a foot of soil without stones. The list has no silt. */
export const availableWaterByTexture = {
  source: 'ucdavis-drought-awc',
  where: 'available water by texture',
  seen: 'print',
  inPerFt: {
    sand: { low: 0.75, high: 1.25 },
    'loamy-sand': { low: 0.75, high: 1.25 },
    'sandy-loam': { low: 1.25, high: 1.75 },
    loam: { low: 1.5, high: 2.3 },
    'silt-loam': { low: 1.5, high: 2.3 },
    'clay-loam': { low: 1.75, high: 2.5 },
    'silty-clay-loam': { low: 1.75, high: 2.5 },
    'sandy-clay-loam': { low: 1.75, high: 2.5 },
    'sandy-clay': { low: 1.6, high: 2.5 },
    'silty-clay': { low: 1.6, high: 2.5 },
    clay: { low: 1.6, high: 2.5 },
  },
} as const;

/** Part of the available water that salt takes away, percent, by the conductivity of the saturation extract, dS/m (the sheet's mmho/cm). */
export const availableWaterLostToSalt = {
  source: 'nrcs-mo6-2002',
  where: 'reduction for soluble salts',
  seen: 'transcription',
  conductivityDsPerM: [0, 4, 8, 12, 15, 20, 25, 30, 35],
  lostPercent: [0, 10, 20, 30, 40, 60, 80, 90, 95],
} as const;

/** Classes of the water that the top 60 in hold for plants; each class reaches up to its own upper bound. */
export const profileClasses = {
  source: 'nrcs-awc-1998',
  where: 'available water capacity classes, 60-in profile',
  seen: 'transcription',
  classes: [
    { name: 'very low', toIn: 3 },
    { name: 'low', toIn: 6 },
    { name: 'moderate', toIn: 9 },
    { name: 'high', toIn: 12 },
    { name: 'very high', toIn: Infinity },
  ],
} as const;
