import { type Check, checkList } from '../checks.ts';
import { conditionClass, type Grazing } from './conditionClass.ts';

const humid = { poorBelowPercent: 50, goodAbovePercent: 75 };
const dry = { poorBelowPercent: 30, goodAbovePercent: 70 };

const note = (groundCoverPercent: number, grazing: Grazing, printed: string): Check => ({
  what: `pasture, ${groundCoverPercent} % cover, grazing ${grazing}`,
  ours: () => conditionClass({ groundCoverPercent, grazing, ...humid }),
  printed,
  source: 'tr55-1986',
  where: 'table 2-2c, notes on pasture',
  seen: 'transcription',
});
const range = (groundCoverPercent: number, printed: string): Check => ({
  what: `dry range, ${groundCoverPercent} % cover, lightly grazed`,
  ours: () => conditionClass({ groundCoverPercent, grazing: 'light', ...dry }),
  printed,
  source: 'tr55-1986',
  where: 'table 2-2d, notes',
  seen: 'transcription',
});

export default checkList('conditionClass', [
  note(49, 'rested', 'poor'),
  note(90, 'heavy', 'poor'),
  note(60, 'moderate', 'fair'),
  note(50, 'light', 'fair'),
  note(75, 'light', 'fair'),
  note(76, 'light', 'good'),
  range(29, 'poor'),
  range(30, 'fair'),
  range(70, 'fair'),
  range(71, 'good'),
]);
