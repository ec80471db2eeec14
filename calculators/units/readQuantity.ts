import { readDuration } from './readDuration.ts';
import { convert, isUnit, type UnitName, units } from './units.ts';

/** `2½` as `2 1/2`: phones offer such signs. */
const withoutSigns = (text: string): string => text.replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize('NFKD').replace('⁄', '/')}`).trim();

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
  | {
      readonly is: 'unit';
      readonly tail: string;
      /** What it would be in small letters, where its capital makes it another unit. */
      readonly small?: string;
    };

/** Every unit of a dimension by each way to type it: token, print, words, of one or many, other spellings. What stands behind `$95` leaves the sign out: `a ton`, `/ton`. */
const spellings = new Map<string, Map<string, UnitName>>();
for (const name of Object.keys(units).filter(isUnit)) {
  const { dimension, print, words, typed } = units[name];
  const names = spellings.get(dimension) ?? new Map<string, UnitName>();
  spellings.set(dimension, names);
  for (const spelling of [name, print, words, words.replace(/s$/, ''), ...typed]) {
    const plain = spelling.toLowerCase();
    for (const each of plain.startsWith('$') ? [plain, plain.slice(1).trim()] : [plain]) if (each !== '' && !names.has(each)) names.set(each, name);
  }
}

const spelled = (text: string, dimension: string): UnitName | undefined =>
  spellings.get(dimension)?.get(text.trim().toLowerCase().replace(/\.$/, ''));
/** A capital M before liters, meters or grams means a million of them, a small one a thousandth. `MM` and `MG/L` name nothing else. */
const isMillions = (text: string): boolean => /^M(?:[Ll]|m|g)(?![A-Za-z])/.test(text);

/** The unit that a text names, by token, by print or by any other way to type it. Capitals matter only where they make it another unit. */
export const unitOf = (text: string, dimension: string): UnitName | undefined => (isMillions(text.trim()) ? undefined : spelled(text, dimension));

/** A unit that was typed by its first word, with the whole of it that its field put behind: `mm mm/tonne/ha`. */
function cutShort(tail: string, dimension: string): UnitName | undefined {
  const at = tail.lastIndexOf(' ');
  const whole = tail.slice(at + 1);
  return at > 0 && isUnit(whole) && units[whole].dimension === dimension && unitOf(tail.slice(0, at), dimension) !== undefined ? whole : undefined;
}

const thousands = /^-?[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/;
/** What stands between thousands: `1,280`, `1 280`. In `1 280/300` it is a whole and a part. */
const betweenThousands = /(?<=^-?\s*[1-9]\d?\d?(?:[,\s]\d{3})*)[,\s](?=\d{3}(?!\d|\s*\/))/g;
/** A number behind the number: `3-4`, `3 to 4`. */
const another = /^(?:[-–—,\s]|to)*\d/;
/** A number whose commas can mean two things, as it might be written without them. */
function openComma(text: string): string | undefined {
  const found = (text.match(/-?[\d.]*\d,\d[\d.,]*/g) ?? []).find((each) => !thousands.test(each));
  if (found === undefined) return undefined;
  const isDecimal = found.indexOf(',') === found.lastIndexOf(',') && found.lastIndexOf('.') < found.indexOf(',');
  return isDecimal ? found.replaceAll('.', '').replace(',', '.') : found.replaceAll(',', '');
}

/** No number with its unit is longer; links carry no more of a text either. */
export const longestText = 60;

/** A conversion leaves dust in the last digits: 101.6 mm is 4 in, on the same side of every limit as 4 in typed. */
const convertedTo = (declared: UnitName, value: number, unit: UnitName): number =>
  unit === declared ? value : Number(convert(value, unit, declared).toPrecision(14));

/** A form is read whole at each key, and all but one of its texts are those of the key before. */
const readings = new Map<string, QuantityReading>();
const mostReadings = 500;

/**
 * Reads a quantity as people type it. Nothing is guessed: a decimal comma, a word or a unit of another kind comes back as what it is.
 * @param text - As typed
 * @param declared - Unit that is asked for, and that of a number typed alone
 */
export function readQuantity(text: string, declared: UnitName): QuantityReading {
  const key = `${declared} ${text}`;
  const before = readings.get(key);
  if (before) return before;
  if (readings.size >= mostReadings) readings.clear();
  const reading = readAnew(text, declared);
  readings.set(key, reading);
  return reading;
}

function readAnew(text: string, declared: UnitName): QuantityReading {
  const typed = text.replaceAll('\u00a0', ' ').trim().replace('−', '-');
  if (typed === '') return { is: 'empty' };
  if (typed.length > longestText) return { is: 'words' };
  const whole = withoutSigns(typed);
  const plain = whole.replace(/^(-?)\s*\$\s*/, '$1');
  const { dimension, print } = units[declared];
  if (plain !== whole && !print.startsWith('$')) return { is: 'unit', tail: '$' };
  const duration = readDuration(plain, declared);
  if (duration.is === 'off') return { is: 'off watch', instead: duration.instead };
  if (duration.is === 'seconds') return { is: 'duration', value: convertedTo(declared, duration.seconds, 's') };
  const instead = openComma(plain);
  if (instead !== undefined) return { is: 'comma', instead };
  const digits = plain.replaceAll(betweenThousands, '');
  const found = shape.exec(digits);
  if (!found) return { is: 'words' };
  const [, minus, wholes, top, bottom, topAlone, bottomAlone, decimal, tail = ''] = found;
  const size = decimal !== undefined ? Number(decimal) : Number(wholes ?? 0) + Number(top ?? topAlone) / Number(bottom ?? bottomAlone);
  if (!Number.isFinite(size)) return { is: 'words' };
  const unit = tail === '' ? declared : (unitOf(tail, dimension) ?? cutShort(tail, dimension));
  if (unit === undefined) {
    if (another.test(tail)) return { is: 'words' };
    const meant = isMillions(tail) ? spelled(tail, dimension) : undefined;
    return meant === undefined ? { is: 'unit', tail } : { is: 'unit', tail, small: units[meant].print };
  }
  const amount = digits
    .slice(0, digits.length - tail.length)
    .trim()
    .replace(/\s*\/\s*/, '/')
    .replace(/\s+/g, ' ');
  const value = minus === undefined ? size : -size;
  return { is: 'value', value: convertedTo(declared, value, unit), unit, amount };
}
