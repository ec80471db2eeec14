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
