import type { Stage } from '../../../calculators/math/herd/stageFromBirth.ts';
import type { StockKind, Texture } from '../model/words.ts';

// A place's word, then what stands in for it in a list that lacks it, the nearest first.

/** What people call each kind, when a form has none such. */
export const kindNames: Readonly<Record<StockKind, string>> = {
  cow: 'Cows',
  heifer: 'Heifers',
  bull: 'Bulls',
  stocker: 'Stockers',
  calf: 'Calves',
  ewe: 'Ewes',
  lamb: 'Lambs',
  doe: 'Does',
  horse: 'Horses',
};

/** Growing cattle as lists of water have them, lb. */
const growingLb = [400, 600, 800] as const;
const growing = (weightLb: number): readonly string[] =>
  growingLb.toSorted((one, other) => Math.abs(one - weightLb) - Math.abs(other - weightLb)).map((each) => `growing-${each}`);
/** A stocker of which no weight is told stands in the middle. */
const middleLb = 600;

export function stockWords(kind: StockKind, stage: Stage, weightLb: number = middleLb): readonly [string, ...string[]] {
  switch (kind) {
    case 'cow':
      return stage === 'nursing' ? ['cow-nursing', 'cow'] : ['cow-dry', 'cow'];
    case 'heifer':
      return ['heifer', 'heifer-pregnant-750', 'other'];
    case 'stocker':
      return ['stocker', 'growing', ...growing(weightLb), 'other'];
    case 'calf':
      return ['calf', 'calf-500', 'other'];
    case 'ewe':
      if (stage === 'nursing') return ['ewe-nursing', 'ewe', 'other'];
      return stage === 'late' ? ['ewe-late', 'ewe-dry', 'ewe'] : ['ewe-dry', 'ewe'];
    case 'doe':
      return stage === 'nursing' ? ['doe', 'goat-nursing', 'goat', 'other'] : ['doe', 'goat', 'other'];
    default:
      return [kind, 'other'];
  }
}
/** What eats and drinks it, as a form about poisons has it. */
export const animalsOf: Readonly<Record<StockKind, 'adult-cattle' | 'calves' | 'sheep-or-goats' | 'horses'>> = {
  cow: 'adult-cattle',
  heifer: 'adult-cattle',
  bull: 'adult-cattle',
  stocker: 'adult-cattle',
  calf: 'calves',
  ewe: 'sheep-or-goats',
  lamb: 'sheep-or-goats',
  doe: 'sheep-or-goats',
  horse: 'horses',
};

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

/** Forms that only tell dry range from the rest. */
export const rainWords = (rainClass: 'dry' | 'middle' | 'wet'): readonly [string, ...string[]] =>
  rainClass === 'dry' ? ['dry'] : [rainClass, 'humid'];

/** Kinds that forms call otherwise than a place does, and the stage that such a word tells. */
const otherKinds: Readonly<Record<string, readonly [StockKind, Stage?]>> = {
  'cow-nursing': ['cow', 'nursing'],
  'cow-dry': ['cow', 'dry'],
  'cow-dry-cured': ['cow', 'dry'],
  'heifer-pregnant-750': ['heifer'],
  growing: ['stocker'],
  'growing-400': ['stocker'],
  'growing-600': ['stocker'],
  'growing-800': ['stocker'],
  'calf-500': ['calf'],
  'ewe-nursing': ['ewe', 'nursing'],
  'ewe-late': ['ewe', 'late'],
  'ewe-dry': ['ewe', 'dry'],
  goat: ['doe'],
  'goat-nursing': ['doe', 'nursing'],
};
const isKind = (word: string): word is StockKind => Object.hasOwn(kindNames, word);
/** A form's word for stock as a place has it; nothing for `other`, of which nobody knows what it is. */
export function kindOfWord(word: string): { readonly kind: StockKind; readonly stage?: Stage } | undefined {
  if (isKind(word)) return { kind: word };
  const found = Object.hasOwn(otherKinds, word) ? otherKinds[word] : undefined;
  if (!found) return undefined;
  const [kind, stage] = found;
  return { kind, ...(stage === undefined ? {} : { stage }) };
}
