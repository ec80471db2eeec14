/** What people call the twelve textures; the keys stand in links for ever. */
export const textureNames = {
  sand: 'Sand',
  'loamy-sand': 'Loamy sand',
  'sandy-loam': 'Sandy loam',
  loam: 'Loam',
  'silt-loam': 'Silt loam',
  silt: 'Silt',
  'sandy-clay-loam': 'Sandy clay loam',
  'clay-loam': 'Clay loam',
  'silty-clay-loam': 'Silty clay loam',
  'sandy-clay': 'Sandy clay',
  'silty-clay': 'Silty clay',
  clay: 'Clay',
} as const;

/** Texture by a ribbon squeezed between thumb and finger; the keys stand in links for ever. */
export const allRibbons = {
  sand: 'No ribbon, gritty, falls apart: sand',
  'loamy-sand': 'Hardly a ribbon, gritty: loamy sand',
  'sandy-loam': 'Ribbon under 1 in, gritty: sandy loam',
  loam: 'Ribbon under 1 in, a little gritty: loam',
  'silt-loam': 'Ribbon under 1 in, smooth like flour: silt loam',
  silt: 'Ribbon under 1 in, all silk and no grit at all: silt',
  'sandy-clay-loam': 'Ribbon 1 to 2 in, gritty: sandy clay loam',
  'clay-loam': 'Ribbon 1 to 2 in, a little gritty: clay loam',
  'silty-clay-loam': 'Ribbon 1 to 2 in, smooth: silty clay loam',
  'sandy-clay': 'Ribbon over 2 in, gritty: sandy clay',
  'silty-clay': 'Ribbon over 2 in, smooth: silty clay',
  clay: 'Ribbon over 2 in, neither: clay',
} as const;
const { silt, ...withoutSilt } = allRibbons;
/** The same for published lists that have no row for silt. */
export const ribbons = withoutSilt;
