import type { StockKind } from '../model/words.ts';

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
