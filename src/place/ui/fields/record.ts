import { longestWords } from '../../model/parts.ts';
import { stockKinds } from '../../model/words.ts';
import type { Ground } from '../../record/grounds.ts';
import { amount, count, day, kind, needed, type PlaceField, text, yesNo } from './field.ts';

/** Paddocks to choose from, with the one that a line is of even where it was taken away. */
function paddock(grounds: readonly Pick<Ground, 'id' | 'name'>[], label = 'Paddock'): PlaceField {
  const [first, ...others] = grounds.map(({ id }) => id);
  return first === undefined
    ? text('paddockName', label)
    : needed(kind('paddockId', label, [first, ...others], Object.fromEntries(grounds.map(({ id, name }) => [id, name]))));
}
const herd = needed(count('herdNumber', 'Herd', 'count', [1, 50], 1));

export const moveFields = (grounds: readonly Pick<Ground, 'id' | 'name'>[]): readonly PlaceField[] => [
  paddock(grounds),
  herd,
  needed(day('inDay', 'In')),
  day('outDay', 'Out', { help: 'Empty while they are there.' }),
  amount('heightInIn', 'Height going in', 'in', [0, 120], 8),
  amount('heightOutIn', 'Height coming out', 'in', [0, 120], 4),
  text('word', 'A word', { help: 'What they left, water, weather, trouble.', most: longestWords }),
];
export const stockLineFields: readonly PlaceField[] = [
  kind('kind', 'Kind', stockKinds),
  needed(count('countHead', 'Head', 'head', [0, 100_000], 45)),
  amount('weightLb', 'Weight of one', 'lb', [20, 3000], 1250),
  amount('lbPerDay', 'One eats a day', 'lb/d', [0.2, 200], 31, { help: 'With the water out.' }),
];
export const heightFields = (grounds: readonly Pick<Ground, 'id' | 'name'>[]): readonly PlaceField[] => [
  paddock(grounds),
  needed(day('day', 'Day')),
  needed(amount('heightIn', 'Height', 'in', [0, 120], 6)),
];
/** Of a load all pounds stand where else those of a bale do. */
export const hayFields = (grounds: readonly Pick<Ground, 'id' | 'name'>[], isLoad: boolean): readonly PlaceField[] => [
  paddock(grounds, 'Fed where'),
  needed(day('day', 'Day')),
  needed(amount('baleCount', isLoad ? 'Loads' : 'Bales', 'count', [0, 10_000], 2)),
  amount('baleLb', `Weight of a ${isLoad ? 'load' : 'bale'}`, 'lb', isLoad ? [0, 1e7] : [20, 4000], 1200),
  amount('moisturePercent', 'Water in it', 'pct', [0, 60], 15),
];
export const rainFields: readonly PlaceField[] = [
  needed(day('day', 'Day')),
  needed(amount('amountIn', 'Rain', 'in', [0, 60], 0.4)),
  needed(count('days', 'Days that it fell in', 'd', [1, 366], 1, { help: 'More than one where nobody emptied the gauge before.' })),
  yesNo('isTrace', 'A trace', false),
];
export const planFields = (grounds: readonly Pick<Ground, 'id' | 'name'>[]): readonly PlaceField[] => [
  paddock(grounds),
  herd,
  needed(day('inDay', 'In')),
  needed(day('outDay', 'Out')),
  day('lookDay', 'Look'),
];
