import { readDuration } from './readDuration.ts';
import { convert, isUnit, type UnitName, units } from './units.ts';

/** What stands before a unit: `1,200`, `.5`, `1/2`, `3 1/2`, with or without a sign. */
const shape = /^(-)?\s*(?:(\d+)\s+(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d+(?:\.\d*)?|\.\d+))\s*(.*)$/;

export type QuantityReading =
  | {
      readonly is: 'value';
      readonly value: number;
      readonly unit: UnitName;
      /** The number as typed, without thousands commas. */
      readonly amount: string;
    }
  /** Minutes and seconds together, in the unit that is asked for. Its text stands for itself, with no unit of its own. */
  | { readonly is: 'duration'; readonly value: number }
  | { readonly is: 'off watch'; readonly instead: string }
  | { readonly is: 'empty' }
  | { readonly is: 'comma'; readonly instead: string }
  | { readonly is: 'words' }
  | { readonly is: 'unit'; readonly tail: string };

/** Every unit of a dimension by each way to type it: token, print, other spellings. What stands behind `$95` leaves the sign out: `a ton`, `/ton`. */
const spellings = new Map<string, Map<string, UnitName>>();
for (const name of Object.keys(units).filter(isUnit)) {
  const { dimension, print, typed } = units[name];
  const names = spellings.get(dimension) ?? new Map<string, UnitName>();
  spellings.set(dimension, names);
  for (const spelling of [name, print, ...typed]) {
    const plain = spelling.toLowerCase();
    for (const each of plain.startsWith('$') ? [plain, plain.slice(1).trim()] : [plain]) if (each !== '' && !names.has(each)) names.set(each, name);
  }
}

/** The unit that a text names, by token, by print or by any other way to type it. */
export const unitOf = (text: string, dimension: string): UnitName | undefined =>
  spellings.get(dimension)?.get(text.trim().toLowerCase().replace(/\.$/, ''));

const withoutThousands = (text: string): string => text.replace(/(\d),(?=\d{3}(?!\d))/g, '$1');

/** A conversion leaves dust in the last digits: 101.6 mm is 4 in, on the same side of every limit as 4 in typed. */
const convertedTo = (declared: UnitName, value: number, unit: UnitName): number =>
  unit === declared ? value : Number(convert(value, unit, declared).toPrecision(14));

/**
 * Reads a quantity as people type it. Nothing is guessed: a decimal comma, a word or a unit of another kind comes back as what it is.
 * @param text - As typed
 * @param declared - Unit that is asked for, and that of a number typed alone
 */
export function readQuantity(text: string, declared: UnitName): QuantityReading {
  const plain = text
    .replaceAll('\u00a0', ' ')
    .trim()
    .replace(/^\$\s*/, '')
    .replace('−', '-');
  if (plain === '') return { is: 'empty' };
  const duration = readDuration(plain, declared);
  if (duration.is === 'off') return { is: 'off watch', instead: duration.instead };
  if (duration.is === 'seconds') return { is: 'duration', value: convertedTo(declared, duration.seconds, 's') };
  const comma = /^-?\d+,(?:\d{1,2}|\d{4,})(?!\d)/.exec(plain);
  if (comma) return { is: 'comma', instead: comma[0].replace(',', '.') };
  const digits = withoutThousands(plain);
  const found = shape.exec(digits);
  if (!found) return { is: 'words' };
  const [, minus, whole, top, bottom, topAlone, bottomAlone, decimal, tail = ''] = found;
  const size = decimal !== undefined ? Number(decimal) : Number(whole ?? 0) + Number(top ?? topAlone) / Number(bottom ?? bottomAlone);
  if (!Number.isFinite(size)) return { is: 'words' };
  const unit = tail === '' ? declared : unitOf(tail, units[declared].dimension);
  if (unit === undefined) return { is: 'unit', tail };
  const amount = digits
    .slice(0, digits.length - tail.length)
    .trim()
    .replace(/\s*\/\s*/, '/')
    .replace(/\s+/g, ' ');
  const value = minus === undefined ? size : -size;
  return { is: 'value', value: convertedTo(declared, value, unit), unit, amount };
}
