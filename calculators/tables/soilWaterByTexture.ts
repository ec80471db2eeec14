/** Water held by a soil, shares of its volume, and what evaporation can take from its top 0.1 m, millimeters. */
export interface SoilWater {
  readonly fieldCapacityShare: readonly [low: number, high: number];
  readonly wiltingPointShare: readonly [low: number, high: number];
  readonly readilyEvaporableMm: readonly [low: number, high: number];
  readonly evaporableMm: readonly [low: number, high: number];
}

/** The table has no sandy clay loam, clay loam or sandy clay. */
export const soilWaterByTexture = {
  source: 'allen-1998',
  where: 'table 19',
  seen: 'print',
  textures: {
    sand: water([0.07, 0.17], [0.02, 0.07], [2, 7], [6, 12]),
    'loamy-sand': water([0.11, 0.19], [0.03, 0.1], [4, 8], [9, 14]),
    'sandy-loam': water([0.18, 0.28], [0.06, 0.16], [6, 10], [15, 20]),
    loam: water([0.2, 0.3], [0.07, 0.17], [8, 10], [16, 22]),
    'silt-loam': water([0.22, 0.36], [0.09, 0.21], [8, 11], [18, 25]),
    silt: water([0.28, 0.36], [0.12, 0.22], [8, 11], [22, 26]),
    'silty-clay-loam': water([0.3, 0.37], [0.17, 0.24], [8, 11], [22, 27]),
    'silty-clay': water([0.3, 0.42], [0.17, 0.29], [8, 12], [22, 28]),
    clay: water([0.32, 0.4], [0.2, 0.24], [8, 12], [22, 29]),
  },
} as const satisfies { readonly textures: Readonly<Record<string, SoilWater>> } & Record<string, unknown>;

type Pair = readonly [low: number, high: number];
function water(fieldCapacityShare: Pair, wiltingPointShare: Pair, readilyEvaporableMm: Pair, evaporableMm: Pair): SoilWater {
  return { fieldCapacityShare, wiltingPointShare, readilyEvaporableMm, evaporableMm };
}
