import type { Texture } from '../model/words.ts';

/** Nearest textures of shorter lists, and how the soil feels; the classes of the Soil Survey Manual, from coarse to fine (from memory). */
const nearTextures: Readonly<Record<Texture, readonly string[]>> = {
  sand: ['sandy'],
  'loamy-sand': ['sand', 'sandy'],
  'sandy-loam': ['sandy'],
  loam: ['silt-loam', 'loamy'],
  'silt-loam': ['loamy'],
  silt: ['silt-loam', 'loamy'],
  'sandy-clay-loam': ['clay-loam', 'clayey'],
  'clay-loam': ['clayey'],
  'silty-clay-loam': ['clay-loam', 'clayey'],
  'sandy-clay': ['clay', 'clayey'],
  'silty-clay': ['clay', 'clayey'],
  clay: ['clayey'],
};
export const textureWords = (texture: Texture): readonly [string, ...string[]] => [texture, ...nearTextures[texture]];
