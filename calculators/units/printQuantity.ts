import { dayMs } from './days.ts';
import { shortMonthName } from './months.ts';
import { convert, type UnitName, type UnitSystem, unitIn, units } from './units.ts';

/**
 * Fixed places, halves away from zero, by the digits that people see: 1.005 is 1.01. `Intl` prints the same, as a test holds, but making its first format
 * takes a slow phone a tenth of a second or two, before which no form can answer.
 */
function fixed(value: number, places: number): string {
  const scaled = Math.abs(value) * 10 ** places;
  // Anywhere but at a half the platform's own rounding says the same, and sooner.
  if (Math.abs((scaled % 1) - 0.5) > 1e-4) return value.toFixed(places);
  const text = String(Math.abs(value));
  // Where digits are so small or large that they come with an exponent, nobody looks for a half.
  const rounded = text.includes('e') ? value : Math.sign(value) * Number(`${Math.round(Number(`${text}e${places}`))}e-${places}`);
  return rounded.toFixed(places);
}

/** `1,234.5` for `1234.5`. */
export function withCommas(number: string): string {
  if (number.length < 4) return number;
  const [whole = '', part] = number.split('.');
  const grouped = whole.replace(/\d(?=(?:\d{3})+$)/g, '$&,');
  return part === undefined ? grouped : `${grouped}.${part}`;
}

/** A number with the digits that it has, thousandths at most: `1,234.5`. */
export const printAsIs = (value: number): string => withCommas(String(Number(fixed(value, 3))));

/** A number as it is told with so many digits, still a number. */
export function roundedTo(value: number, digits: number): number {
  const step = 10 ** -digits;
  const rounded = digits < 0 ? Math.round(value / step) * step : value;
  return Number(fixed(rounded, Math.max(0, digits)));
}

/** How a number is told: `digits` after the point, or before it when negative (−2: to hundreds). */
export function printNumber(value: number, digits: number): string {
  const step = 10 ** -digits;
  const rounded = digits < 0 ? Math.round(value / step) * step : value;
  const text = withCommas(fixed(Math.abs(rounded), Math.max(0, digits)));
  return rounded < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

/** Digits that say as much in another unit: a tenth of an inch is about two millimeters, so one digit less. A gallon is not: 14,000 of them are 53,000 L, not 50,000. */
export function digitsIn(digits: number, from: UnitName, to: UnitName): number {
  if (from === to) return digits;
  const size = Math.abs(convert(1, from, to) - convert(0, from, to));
  return digits - Math.floor(Math.log10(size) + 0.41);
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

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

/** A day number (days since 1970-01-01) as people write it: `Mon, Mar 2, 2026`. */
export function printDay(day: number, weekday = false): string {
  const date = new Date(day * dayMs);
  const told = `${shortMonthName(date.getUTCMonth())} ${date.getUTCDate()}, ${date.getUTCFullYear()}`;
  return weekday ? `${weekdays[date.getUTCDay()]}, ${told}` : told;
}

/** The time of the device's day: `3:05 PM`. */
export function printClock(now: Date): string {
  const hour = now.getHours();
  return `${hour % 12 || 12}:${String(now.getMinutes()).padStart(2, '0')} ${hour < 12 ? 'AM' : 'PM'}`;
}

export const isoDay = (day: number): string => new Date(day * dayMs).toISOString().slice(0, 10);

/** `2026-03-02` as a day number, or nothing when there is no such day. */
export function dayOf(iso: string): number | undefined {
  const found = /^(\d{4})-(\d\d)-(\d\d)$/.exec(iso.trim());
  if (!found) return undefined;
  const at = Date.UTC(Number(found[1]), Number(found[2]) - 1, Number(found[3]));
  const day = new Date(at);
  // What is no day of its month falls into another one.
  return day.getUTCMonth() + 1 === Number(found[2]) && day.getUTCFullYear() === Number(found[1]) ? at / dayMs : undefined;
}
