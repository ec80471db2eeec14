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
  texture === 'own' ? 'the soil as measured' : (ribbons[texture].label.split(': ')[1] ?? texture);
