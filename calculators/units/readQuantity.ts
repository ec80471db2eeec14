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
  | { readonly is: 'empty' }
  | { readonly is: 'comma'; readonly instead: string }
  | { readonly is: 'words' }
  | { readonly is: 'unit'; readonly tail: string };

/** The unit that a text names, by token, by print or by any other way to type it. */
export function unitOf(text: string, dimension: string): UnitName | undefined {
  const plain = text.trim().toLowerCase().replace(/\.$/, '');
  if (isUnit(plain) && units[plain].dimension === dimension) return plain;
  return Object.keys(units)
    .filter(isUnit)
    .find(
      (name) =>
        units[name].dimension === dimension && (units[name].typed.some((each) => each === plain) || units[name].print.toLowerCase() === plain),
    );
}

const withoutThousands = (text: string): string => text.replace(/(\d),(?=\d{3}(?!\d))/g, '$1');

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
  return { is: 'value', value: convert(minus === undefined ? size : -size, unit, declared), unit, amount };
}
