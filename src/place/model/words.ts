// Words that a place is told in. Where a form has the same word in its list they are the same; what stands in for a word elsewhere is in src/place/offer.

export const stockKinds = ['cow', 'heifer', 'bull', 'stocker', 'calf', 'ewe', 'lamb', 'doe', 'horse'] as const;
export type StockKind = (typeof stockKinds)[number];

export const stages = ['dry', 'late', 'nursing'] as const;

export const textures = [
  'sand',
  'loamy-sand',
  'sandy-loam',
  'loam',
  'silt-loam',
  'silt',
  'sandy-clay-loam',
  'clay-loam',
  'silty-clay-loam',
  'sandy-clay',
  'silty-clay',
  'clay',
] as const;
export type Texture = (typeof textures)[number];

export const soilGroups = ['a', 'b', 'c', 'd'] as const;
export const uses = ['grazed', 'hay', 'woods', 'yards'] as const;
/** Ground that no plow turns; a field of crops is no part of a place's pastures. */
export const covers = [
  'pasture',
  'meadow',
  'brush',
  'woods-grass',
  'woods',
  'farmstead',
  'herbaceous',
  'oak-aspen',
  'pinyon-juniper',
  'sagebrush',
  'desert-shrub',
] as const;
export const grazings = ['heavy', 'moderate', 'light', 'rested'] as const;
export const forages = [
  'cool-season-mix',
  'tall-fescue',
  'orchardgrass',
  'kentucky-bluegrass',
  'low-cool-season',
  'smooth-brome',
  'reed-canarygrass',
  'perennial-ryegrass',
  'bermudagrass',
  'bahiagrass',
  'kleingrass',
  'old-world-bluestem',
  'crabgrass',
  'native-tall-grass',
  'switchgrass',
  'little-bluestem',
  'sideoats-grama',
  'blue-grama',
  'alfalfa',
  'white-clover',
  'other-clovers',
  'annual-ryegrass',
  'small-grains',
  'pearl-millet',
  'sorghum-sudan',
  'annual-range',
] as const;
export const stands = [
  'mixed-pasture',
  'tall-fescue',
  'orchardgrass-legume',
  'bluegrass-clover',
  'perennial-ryegrass-clover',
  'timothy-legume',
  'bermudagrass',
  'alfalfa',
  'red-clover',
] as const;
export const conditions = ['fair', 'good', 'excellent'] as const;
export const storages = ['ground-uncovered', 'raised-uncovered', 'ground-covered', 'raised-covered', 'roof', 'barn'] as const;
export const feeders = [
  'cone',
  'ring-sheeted',
  'ring-open',
  'ring-poly',
  'trailer',
  'cradle',
  'square-rack',
  'round-rack',
  'no-rack',
  'unrolled',
] as const;
export const rainClasses = ['dry', 'middle', 'wet'] as const;
export const curves = ['answers', 'nd0002', 'smooth-brome-kansas', 'co6707', 'mlra69-fine-a'] as const;
export const fallFlushes = ['none', 'some', 'much'] as const;
export const frames = ['hoop-around', 'hoop-across', 'rectangle'] as const;
export const supplies = ['pond', 'flow', 'hauled'] as const;
export const tankShapes = ['round', 'square', 'round-end'] as const;
/** What a family calls a piece of fenced ground. */
export const groundWords = ['paddock', 'pasture', 'trap'] as const;
