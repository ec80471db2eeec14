/** Texture by a ribbon squeezed between thumb and finger; the keys stand in links for ever. */
export const ribbons = {
  sand: { label: 'No ribbon, gritty, falls apart: sand' },
  'loamy-sand': { label: 'Hardly a ribbon, gritty: loamy sand' },
  'sandy-loam': { label: 'Ribbon under 1 in, gritty: sandy loam' },
  loam: { label: 'Ribbon under 1 in, a little gritty: loam' },
  'silt-loam': { label: 'Ribbon under 1 in, smooth like flour: silt loam' },
  'sandy-clay-loam': { label: 'Ribbon 1 to 2 in, gritty: sandy clay loam' },
  'clay-loam': { label: 'Ribbon 1 to 2 in, a little gritty: clay loam' },
  'silty-clay-loam': { label: 'Ribbon 1 to 2 in, smooth: silty clay loam' },
  'sandy-clay': { label: 'Ribbon over 2 in, gritty: sandy clay' },
  'silty-clay': { label: 'Ribbon over 2 in, smooth: silty clay' },
  clay: { label: 'Ribbon over 2 in, neither: clay' },
} as const;
export type RibbonTexture = keyof typeof ribbons;

export const isRibbon = (texture: string): texture is RibbonTexture => Object.hasOwn(ribbons, texture);
/** What a line of text calls it: the words after the colon. */
export const soilName = (texture: RibbonTexture | 'own'): string =>
  texture === 'own' ? 'the soil as measured' : ribbons[texture].label.replace(/^.*: /, '');

/**
 * Loam and silt loam may have changed places in the list of 1983: its other conductivities are a third to two thirds of the saturated ones printed a year
 * before, and these two are a quarter of it and nearly all of it; exchanged, each is half. 0.34 and 0.65 cm per hour are what every copy prints, so they
 * stand, and readers are told of the doubt. The inference is our own.
 */
export const exchangedTextures = { loam: 'silt-loam', 'silt-loam': 'loam' } as const;
/** The two soils whose rates may have changed places in the table. */
export const isExchanged = (texture: string): texture is keyof typeof exchangedTextures => Object.hasOwn(exchangedTextures, texture);
