import { createEvents } from 'ics';
import type { CalendarEntry } from '../kit/define.ts';
import { isoDay } from '../units/printQuantity.ts';

/** `2026-03-02` as the three numbers that calendar libraries want. */
function partsOf(day: number): [number, number, number] {
  const [year = 1970, month = 1, date = 1] = isoDay(day).split('-').map(Number);
  return [year, month, date];
}

/**
 * All-day entries as iCalendar (RFC 5545). The same entry keeps its identity, so that a second file moves it and does not double it: by its own `id`,
 * else by its place and day.
 * @param name - What the entries are of: a calculator's slug, a visit
 * @param heading - Whose they are
 * @throws Error if the library refuses an entry
 */
export function calendarFile(name: string, entries: readonly (CalendarEntry & { readonly id?: string })[], heading?: string): string {
  const { error, value } = createEvents(
    entries.map(({ id, day, title, text }, index) => ({
      uid: `${name}-${id ?? `${index + 1}-${isoDay(day)}`}@holdwater`,
      productId: 'holdwater',
      title,
      description: heading === undefined ? text : `${heading}\n${text}`,
      start: partsOf(day),
      end: partsOf(day + 1),
      busyStatus: 'FREE' as const,
    })),
  );
  if (error) throw error;
  return value ?? '';
}
