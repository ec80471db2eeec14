import type { UnitName } from './units.ts';

/** Time as a watch shows it and as people write it down. */
export type DurationReading =
  | { readonly is: 'seconds'; readonly seconds: number }
  /** Looks like a time and can't be one; `instead` is how it would be right. */
  | { readonly is: 'off'; readonly instead: string }
  | { readonly is: 'none' };

const none: DurationReading = { is: 'none' };
const two = (part: number): string => String(part).padStart(2, '0');
const clock = /^(\d+):(\d{1,2})(?::(\d{1,2}))?(\.\d+)?$/;
const hours = /(?:hours?|hrs?|h)/.source;
const minutes = /(?:minutes?|mins?|m|['’′])/.source;
const seconds = /(?:seconds?|secs?|s|["”″]|['’′]{2})/.source;
const whole = String.raw`(\d+)\s*`;
const named = new RegExp(String.raw`^(?:${whole}${hours}\.?[\s,]*)?(?:${whole}${minutes}\.?[\s,]*)?(?:(\d+(?:\.\d*)?|\.\d+)\s*${seconds}\.?)?$`, 'i');

/** A sum of parts without dust: tenths and hundredths of a second are all that a watch has. */
const secondsOf = (hour: number, minute: number, second: number): number => Number((3600 * hour + 60 * minute + second).toFixed(6));

/** `14:75` as it would be right: 15:15. */
function asClock(total: number): string {
  const [hour, minute, second] = [Math.floor(total / 3600), Math.floor(total / 60) % 60, total % 60];
  const tail = Number.isInteger(second) ? two(second) : `${second < 10 ? '0' : ''}${Number(second.toFixed(3))}`;
  return hour > 0 ? `${hour}:${two(minute)}:${tail}` : `${minute}:${tail}`;
}

/** Minutes and seconds, or hours, minutes and seconds. Two parts in a field that asks for hours could be either, and are not guessed at. */
function readClock(found: RegExpExecArray, declared: UnitName): DurationReading {
  const [, first = '', second = '', third, fraction = ''] = found;
  const parts = [first, second, ...(third === undefined ? [] : [third])].map(Number);
  if (third === undefined && declared === 'hr') return { is: 'off', instead: `${first}h ${second}min, or ${first}min ${second}s` };
  const [hour = 0, minute = 0, last = 0] = third === undefined ? [0, ...parts] : parts;
  const total = secondsOf(hour, minute, last + Number(`0${fraction}`));
  const isOff = last > 59 || (third !== undefined && minute > 59) || second.length < 2 || (third !== undefined && third.length < 2);
  return isOff ? { is: 'off', instead: asClock(total) } : { is: 'seconds', seconds: total };
}

/**
 * Reads a length of time in more than one unit: `14:30` and `1:02:30` as a watch shows them, `14min 30s`, `1h 5min`, `14' 30"`. A number with one unit or
 * none is left to whoever reads quantities.
 * @param text - As typed, spaces at its ends cut off
 * @param declared - Unit that is asked for; only for hours, minutes and seconds is anything read
 */
export function readDuration(text: string, declared: UnitName): DurationReading {
  if (declared !== 'hr' && declared !== 'min' && declared !== 's') return none;
  const asOnWatch = clock.exec(text);
  if (asOnWatch) return readClock(asOnWatch, declared);
  const found = named.exec(text);
  if (!found) return none;
  const given = found.slice(1).filter((part) => part !== undefined);
  if (given.length < 2) return none;
  const [hour = 0, minute = 0, second = 0] = found.slice(1).map((part) => Number(part ?? 0));
  const total = secondsOf(hour, minute, second);
  const isOff = (found[1] !== undefined && minute > 59) || second >= 60;
  return isOff ? { is: 'off', instead: asClock(total) } : { is: 'seconds', seconds: total };
}
