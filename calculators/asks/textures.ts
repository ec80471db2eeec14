/** What people call the twelve textures; the keys stand in links for ever. */
export const textureNames = {
  sand: { label: 'Sand', short: 'sand' },
  'loamy-sand': { label: 'Loamy sand', short: 'loamy sand' },
  'sandy-loam': { label: 'Sandy loam', short: 'sandy loam' },
  loam: { label: 'Loam', short: 'loam' },
  'silt-loam': { label: 'Silt loam', short: 'silt loam' },
  silt: { label: 'Silt', short: 'silt' },
  'sandy-clay-loam': { label: 'Sandy clay loam', short: 'sandy clay loam' },
  'clay-loam': { label: 'Clay loam', short: 'clay loam' },
  'silty-clay-loam': { label: 'Silty clay loam', short: 'silty clay loam' },
  'sandy-clay': { label: 'Sandy clay', short: 'sandy clay' },
  'silty-clay': { label: 'Silty clay', short: 'silty clay' },
  clay: { label: 'Clay', short: 'clay' },
} as const;

/** Texture by a ribbon squeezed between thumb and finger; the keys stand in links for ever. */
export const allRibbons = {
  sand: { label: 'No ribbon, gritty, falls apart: sand', short: 'sand' },
  'loamy-sand': { label: 'Hardly a ribbon, gritty: loamy sand', short: 'loamy sand' },
  'sandy-loam': { label: 'Ribbon under 1 in, gritty: sandy loam', short: 'sandy loam' },
  loam: { label: 'Ribbon under 1 in, a little gritty: loam', short: 'loam' },
  'silt-loam': { label: 'Ribbon under 1 in, smooth like flour: silt loam', short: 'silt loam' },
  silt: { label: 'Ribbon under 1 in, all silk and no grit at all: silt', short: 'silt' },
  'sandy-clay-loam': { label: 'Ribbon 1 to 2 in, gritty: sandy clay loam', short: 'sandy clay loam' },
  'clay-loam': { label: 'Ribbon 1 to 2 in, a little gritty: clay loam', short: 'clay loam' },
  'silty-clay-loam': { label: 'Ribbon 1 to 2 in, smooth: silty clay loam', short: 'silty clay loam' },
  'sandy-clay': { label: 'Ribbon over 2 in, gritty: sandy clay', short: 'sandy clay' },
  'silty-clay': { label: 'Ribbon over 2 in, smooth: silty clay', short: 'silty clay' },
  clay: { label: 'Ribbon over 2 in, neither: clay', short: 'clay' },
} as const;
const { silt, ...withoutSilt } = allRibbons;
/** The same for published lists that have no row for silt. */
export const ribbons = withoutSilt;
