import { readQuantity } from '../../units/readQuantity.ts';
import { convert, type UnitName } from '../../units/units.ts';
import { longestRead } from './limits.ts';

/** How a gauge's numbers may be counted. */
export type Counting = 'in' | 'hundredths' | 'mm' | 'tenths' | 'cm';
export const countings: Readonly<Record<Counting, string>> = {
  in: 'inches',
  hundredths: 'hundredths of an inch',
  mm: 'millimeters',
  tenths: 'tenths of a millimeter',
  cm: 'centimeters',
};
export const isCounting = (text: string | undefined): text is Counting => text !== undefined && Object.hasOwn(countings, text);
/** What one of them is in the unit of the input. */
export function sizeOf(counting: Counting, unit: UnitName): number {
  if (counting === 'hundredths') return convert(0.01, 'in', unit);
  return counting === 'tenths' ? convert(0.1, 'mm', unit) : convert(1, counting, unit);
}

/** The unit that a column's head or a line above it names. */
export function countingIn(words: string): Counting | undefined {
  const plain = words
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replaceAll('_', ' ')
    .toLowerCase();
  if (/hundredths?|(?:0?\.01|1\/100)\s*(?:in|")/.test(plain)) return 'hundredths';
  if (/tenths?.*(?:mm|mill)|(?:0?\.1|1\/10)\s*mm/.test(plain)) return 'tenths';
  if (/\bmm\b|millimet/.test(plain)) return 'mm';
  if (/\bcm\b|centimet/.test(plain)) return 'cm';
  return /\bin\.?(?=\W|$)|\binch|["”]/.test(plain) ? 'in' : undefined;
}

export type AmountCell =
  | { readonly is: 'amount'; readonly amount: number; readonly isTotal: boolean }
  | { readonly is: 'trace' | 'blank' | 'missing' }
  | { readonly is: 'bad' };

const plain = /^\d+(?:\.\d*)?$|^\.\d+$/;
const words = /^(?:m|msg|miss(?:ing)?|n\/?a|nan|null|none read|not read|-+|–|—|x|\?)$/i;
const low = /^-(?:99+(?:\.9+)?|888+)(?:\.0+)?$/;
const high = /^999+(?:\.9+)?$|^99\.9+$|^888+$/;

/** Reads the amount cells of one column. */
export function amountReader(unit: UnitName, counting: Counting, hasDecimalComma: boolean): (cell: string, flag: string) => AmountCell {
  const size = sizeOf(counting, unit);
  // No gauge catches this in a day: there a row of nines is a code.
  const codeFrom = convert(15, 'in', unit);
  const amountOf = (text: string, flag: string): AmountCell => {
    const amount = Number(text) * size;
    return high.test(text) && amount > codeFrom ? { is: 'missing' } : { is: 'amount', amount, isTotal: flag === 'A' };
  };
  return (cell, flagCell) => {
    const flag = flagCell.trim().toUpperCase();
    const text = cell.trim();
    if (text.length > longestRead) return { is: 'bad' };
    if (flag === 'T') return { is: 'trace' };
    if (flag === 'M' || flag === 'S') return { is: 'missing' };
    if (plain.test(text)) return amountOf(text, flag);
    if (text === '') return { is: 'blank' };
    if (words.test(text) || low.test(text)) return { is: 'missing' };
    if (/^(?:0?\.?0*\s*)?t(?:r(?:ace)?)?\.?$/i.test(text)) return { is: 'trace' };
    const [, number = '', letter = ''] = /^([\d.,]+)\s*([a-z*])$/i.exec(text) ?? [];
    const bare = number === '' ? text : number;
    const withPoint = hasDecimalComma ? bare.replace(',', '.') : bare;
    const mark = letter.toUpperCase();
    if (mark === 'M') return { is: 'missing' };
    if (plain.test(withPoint) && (number === '' || mark === 'A' || mark === 'E' || mark === '*'))
      return amountOf(withPoint, mark === '' ? flag : mark);
    const reading = readQuantity(withPoint, unit);
    if (reading.is !== 'value' || reading.value < 0) return { is: 'bad' };
    // A number that carries no unit of its own, such as 1/2, is counted like the rest of the column.
    return { is: 'amount', amount: /[a-z"”]/i.test(text) ? reading.value : reading.value * size, isTotal: flag === 'A' };
  };
}
