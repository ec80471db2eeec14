import { dayMs } from './days.ts';
import { convert, type UnitName, type UnitSystem, unitIn, units } from './units.ts';

// Kept, since making one takes longer than using it a hundred times.
const formats = new Map<number, Intl.NumberFormat>();
function formatOf(places: number): Intl.NumberFormat {
  const format = formats.get(places) ?? new Intl.NumberFormat('en-US', { minimumFractionDigits: places, maximumFractionDigits: places });
  formats.set(places, format);
  return format;
}

/** A number as it is told with so many digits, still a number. */
export function roundedTo(value: number, digits: number): number {
  const step = 10 ** -digits;
  const rounded = digits < 0 ? Math.round(value / step) * step : value;
  return Number(formatOf(Math.max(0, digits)).format(rounded).replaceAll(',', ''));
}

/** How a number is told: `digits` after the point, or before it when negative (−2: to hundreds). */
export function printNumber(value: number, digits: number): string {
  const step = 10 ** -digits;
  const rounded = digits < 0 ? Math.round(value / step) * step : value;
  const text = formatOf(Math.max(0, digits)).format(Math.abs(rounded));
  return rounded < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

/** Digits that say as much in another unit: a tenth of an inch is about two millimeters, so one digit less. */
export function digitsIn(digits: number, from: UnitName, to: UnitName): number {
  if (from === to) return digits;
  const size = Math.abs(convert(1, from, to) - convert(0, from, to));
  return digits - Math.round(Math.log10(size));
}

/** A value declared in `unit`, in the reader's system, without its unit. */
export function printValue(value: number, unit: UnitName, digits: number, system: UnitSystem): string {
  const shown = unitIn(system, unit);
  return printNumber(convert(value, unit, shown), digitsIn(digits, unit, shown));
}

/** A unit as it stands behind that number: one day, two days. */
export function unitBehind(number: string, unit: UnitName): string {
  const { print } = units[unit];
  return number === '1' ? print.replace(/^(day|week|month|year|hour|ton|tonne)s\b/, '$1') : print;
}

/** A value with its unit, in that unit: `1.6 in`, `$1,200`, `$95 a ton`. */
export const printIn = (value: number, unit: UnitName, digits: number): string => withUnit(printNumber(value, digits), unit);

/** A printed number with its unit: money before it, all else behind. */
export function withUnit(number: string, unit: UnitName): string {
  const print = unitBehind(number, unit);
  if (print.startsWith('$')) return (number.startsWith('−') ? `−$${number.slice(1)}` : `$${number}`) + print.slice(1);
  return print === '%' ? `${number} %` : `${number} ${print}`.trim();
}

/** A value declared in `unit`, in the reader's system, with its unit. */
export function printQuantity(value: number, unit: UnitName, digits: number, system: UnitSystem): string {
  const shown = unitIn(system, unit);
  return printIn(convert(value, unit, shown), shown, digitsIn(digits, unit, shown));
}

const dayParts = { timeZone: 'UTC', year: 'numeric', month: 'short', day: 'numeric' } as const;
const dayFormat = new Intl.DateTimeFormat('en-US', dayParts);
const weekdayFormat = new Intl.DateTimeFormat('en-US', { ...dayParts, weekday: 'short' });

/** A day number (days since 1970-01-01) as people write it: `Mon, Mar 2, 2026`. */
export const printDay = (day: number, weekday = false): string => (weekday ? weekdayFormat : dayFormat).format(new Date(day * dayMs));

export const isoDay = (day: number): string => new Date(day * dayMs).toISOString().slice(0, 10);

/** `2026-03-02` as a day number, or nothing when there is no such day. */
export function dayOf(iso: string): number | undefined {
  const found = /^(\d{4})-(\d\d)-(\d\d)$/.exec(iso.trim());
  if (!found) return undefined;
  const at = Date.UTC(Number(found[1]), Number(found[2]) - 1, Number(found[3]));
  return new Date(at).toISOString().slice(0, 10) === iso.trim() ? at / dayMs : undefined;
}
