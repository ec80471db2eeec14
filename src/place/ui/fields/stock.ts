import { stockKinds } from '../../model/words.ts';
import { amount, count, kind, monthDay, text } from './field.ts';

export const stockFields = [
  kind('kind', 'Kind', stockKinds, {
    cow: 'Cows',
    heifer: 'Bred heifers',
    bull: 'Bulls',
    stocker: 'Stockers, weaned calves',
    calf: 'Calves on their mothers',
    ewe: 'Ewes',
    lamb: 'Lambs',
    doe: 'Does (goats)',
    horse: 'Horses, donkeys, mules',
  }),
  count('countHead', 'Head', 'head', [0, 100_000], 45),
  amount('weightLb', 'Weight of one', 'lb', [20, 3000], 1250),
  monthDay('birthsDay', 'Half are born by', { help: 'Leave it empty where they give no birth. Dry, late or nursing is worked out from it.' }),
  amount('ownIntakePercent', 'Eats a day, share of its weight', 'pct', [0.5, 6], 2.5, {
    help: 'Only where you know better than the guides: they work it out from kind and stage.',
  }),
  text('name', 'What you call them'),
  count('herdNumber', 'Goes with herd number', 'count', [1, 50], 1),
];
