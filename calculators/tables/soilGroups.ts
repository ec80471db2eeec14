/** The texture classes of the textural triangle. */
export type Texture =
  | 'sand'
  | 'loamy-sand'
  | 'sandy-loam'
  | 'loam'
  | 'silt-loam'
  | 'silt'
  | 'sandy-clay-loam'
  | 'clay-loam'
  | 'silty-clay-loam'
  | 'sandy-clay'
  | 'silty-clay'
  | 'clay';

/**
 * Hydrologic soil group by texture, meant for soils that were disturbed. The list has no silt; it is put beside silt loam here.
 * Sandy loam is A in this list; by conductivity it mostly is not.
 */
export const textureGroups = {
  source: 'tr55-1986',
  where: 'appendix A',
  seen: 'transcription',
  groups: {
    sand: 'a',
    'loamy-sand': 'a',
    'sandy-loam': 'a',
    'silt-loam': 'b',
    loam: 'b',
    silt: 'b',
    'sandy-clay-loam': 'c',
    'clay-loam': 'd',
    'silty-clay-loam': 'd',
    'sandy-clay': 'd',
    'silty-clay': 'd',
    clay: 'd',
  },
} as const satisfies { readonly groups: Readonly<Record<Texture, 'a' | 'b' | 'c' | 'd'>> } & Record<string, unknown>;

/**
 * Upper limits of groups D, C and B, µm/s of the least transmissive layer (each limit belongs to the slower group). `shallow` where rock or another
 * barrier lies at 50 to 100 cm, or water at 60 to 100 cm over a deeper barrier; `deep` where neither is within 100 cm, or where water stands above 60 cm
 * over a deeper barrier. They are an order of magnitude off the rates of 1986 and are never mixed with them.
 */
export const conductivityLimits = {
  source: 'nrcs-neh630-07-2009',
  where: 'table 7-1',
  seen: 'transcription',
  shallowUmPerS: { d: 1, c: 10, b: 40 },
  deepUmPerS: { d: 0.4, c: 4, b: 10 },
} as const;

/** Upper limits of groups D, C and B by the rate of 1986 (Musgrave), inches per hour. */
export const transmissionLimits = { source: 'tr55-1986', where: 'appendix A', seen: 'print', inPerHr: { d: 0.05, c: 0.15, b: 0.3 } } as const;
