import type { Stage } from '../../../calculators/math/herd/stageFromBirth.ts';
import type { StockKind } from '../model/words.ts';

// A place's word for stock, then what stands in for it in a list that lacks it, the nearest first.

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
      return stage === 'nursing' ? ['doe', 'goat-nursing', 'goat', 'other'] : ['doe-dry', 'doe', 'goat', 'other'];
    default:
      return [kind, 'other'];
  }
}
