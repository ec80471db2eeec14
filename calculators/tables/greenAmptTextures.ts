/**
 * Green-Ampt values by texture: porosity and effective porosity (shares of the volume), wetting-front suction (cm), conductivity (cm per hour, about half of
 * the saturated one because air stays trapped), saturated conductivity of the 1982 list (cm per hour). They know nothing of grazing or cover.
 * `clay-loam` has 0.309 for its effective porosity in most copies, against 0.390 in one and by the middle of its own range, so 0.390 stands here and the
 * other is kept apart. Loam and silt loam may have changed places; where they are used, readers are told.
 */
export const greenAmptTextures = {
  source: 'rawls-1983',
  where: 'table 1, reprinted as table 4.3.1 of chow-1988',
  seen: 'transcription',
  saturatedSource: 'rawls-1982',
  clayLoamAsPrinted: 0.309,
  textures: {
    sand: { porosity: 0.437, effectivePorosity: 0.417, suctionCm: 4.95, conductivityCmPerHr: 11.78, saturatedCmPerHr: 21 },
    'loamy-sand': { porosity: 0.437, effectivePorosity: 0.401, suctionCm: 6.13, conductivityCmPerHr: 2.99, saturatedCmPerHr: 6.11 },
    'sandy-loam': { porosity: 0.453, effectivePorosity: 0.412, suctionCm: 11.01, conductivityCmPerHr: 1.09, saturatedCmPerHr: 2.59 },
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a measured share, not a logarithm
    loam: { porosity: 0.463, effectivePorosity: 0.434, suctionCm: 8.89, conductivityCmPerHr: 0.34, saturatedCmPerHr: 1.32 },
    'silt-loam': { porosity: 0.501, effectivePorosity: 0.486, suctionCm: 16.68, conductivityCmPerHr: 0.65, saturatedCmPerHr: 0.68 },
    'sandy-clay-loam': { porosity: 0.398, effectivePorosity: 0.33, suctionCm: 21.85, conductivityCmPerHr: 0.15, saturatedCmPerHr: 0.43 },
    'clay-loam': { porosity: 0.464, effectivePorosity: 0.39, suctionCm: 20.88, conductivityCmPerHr: 0.1, saturatedCmPerHr: 0.23 },
    'silty-clay-loam': { porosity: 0.471, effectivePorosity: 0.432, suctionCm: 27.3, conductivityCmPerHr: 0.1, saturatedCmPerHr: 0.15 },
    'sandy-clay': { porosity: 0.43, effectivePorosity: 0.321, suctionCm: 23.9, conductivityCmPerHr: 0.06, saturatedCmPerHr: 0.12 },
    'silty-clay': { porosity: 0.479, effectivePorosity: 0.423, suctionCm: 29.22, conductivityCmPerHr: 0.05, saturatedCmPerHr: 0.09 },
    clay: { porosity: 0.475, effectivePorosity: 0.385, suctionCm: 31.63, conductivityCmPerHr: 0.03, saturatedCmPerHr: 0.06 },
  },
} as const;
