import { intake } from '../../tables/intake.ts';

export type Stock = 'cow' | 'heifer' | 'bull' | 'growing' | 'calf' | 'ewe' | 'lamb' | 'doe' | 'horse';
export type Stage = 'dry' | 'late' | 'nursing';
export type Quality = 'poor' | 'fair' | 'good';
/** Kinds whose appetite hangs on whether they carry or nurse young. */
export const breeding = ['cow', 'heifer', 'ewe', 'doe', 'horse'] as const;

export interface Percents {
  readonly lowPercent: number;
  readonly likelyPercent: number;
  readonly highPercent: number;
}
type Line = (typeof intake)[number];

function printed(animal: Line['animal'], stage: Line['stage'], quality: Line['quality'] = 'any'): Percents {
  const found = intake.find((each) => each.animal === animal && each.stage === stage && each.quality === quality);
  if (!found) throw new RangeError(`printed needs a line of the table, got ${animal}, ${stage}, ${quality}`);
  const { lowPercent, likelyPercent, highPercent } = found;
  return { lowPercent, likelyPercent, highPercent };
}
const named = { poor: 'low', fair: 'average', good: 'high' } as const;
const ewe: Readonly<Record<Stage, Percents>> = {
  dry: printed('sheep', 'ewe, maintenance'),
  late: printed('sheep', 'ewe, late gestation'),
  nursing: printed('sheep', 'ewe, nursing twins'),
};

/** What the printed guides say of one kind. A bull eats as a dry cow of his weight; cows and mares near birth as dry ones. */
export function guidePercents(stock: Stock, stage: Stage, quality: Quality): Percents {
  switch (stock) {
    case 'cow':
    case 'heifer':
      return printed('beef-cow', stage === 'nursing' ? 'lactating' : 'dry', named[quality]);
    case 'bull':
      return printed('beef-cow', 'dry', named[quality]);
    case 'growing':
      return printed('growing-cattle', 'stocker');
    case 'calf':
      return printed('nursing-calf', 'forage beside milk');
    case 'ewe':
      return ewe[stage];
    case 'lamb':
      return printed('sheep', 'lamb, growing');
    case 'doe':
      // The line for ewes at rest is printed for does too.
      return stage === 'dry' ? ewe.dry : printed('goat', 'doe');
    case 'horse':
      return printed('horse', stage === 'nursing' ? 'nursing mare' : 'maintenance');
  }
}

/** Months that the young suckle, and months before birth in which she eats for it, by kind. */
const suckling = { cow: 7, heifer: 7, horse: 6, ewe: 3, doe: 3 } as const;
const heavy = { cow: 3, heifer: 3, horse: 3, ewe: 2, doe: 2 } as const;

/** Stage from the month in which most of them give birth, 1 to 12. */
export function stageFromBirth(stock: keyof typeof suckling, birthMonth: number, nowMonth: number): Stage {
  const since = (nowMonth - birthMonth + 12) % 12;
  if (since < suckling[stock]) return 'nursing';
  return 12 - since <= heavy[stock] ? 'late' : 'dry';
}
export const isBreeding = (stock: Stock): stock is keyof typeof suckling => breeding.some((each) => each === stock);
