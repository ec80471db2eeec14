import type { Stage } from '../../../calculators/math/herd/stageFromBirth.ts';
import type { StockKind } from '../model/words.ts';
import { kindNames } from './kindNames.ts';

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
  'doe-dry': ['doe', 'dry'],
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
