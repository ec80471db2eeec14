import type { Place } from '../model/place.ts';
import { isFields } from './edit.ts';

/** When a place was last saved as a file, and at which revision; or, without `isFile`, when it was first kept. */
interface Backup {
  readonly at: string;
  readonly rev: number;
  readonly isFile: boolean;
  /** The person said: later. */
  readonly laterUntil?: string;
}
export interface Backups {
  readonly begin: (id: string, now: Date) => void;
  readonly saved: (place: Place, now: Date) => void;
  readonly later: (id: string, now: Date) => void;
  readonly forget: (id: string) => void;
  readonly lastFile: (id: string) => Date | undefined;
  /** Since when changes count, once that is 14 days ago and nobody said later within a week. */
  readonly since: (place: Place, now: Date) => Date | undefined;
  /** Whether it is time to say: then, with 10 changes of the place or of what is kept beside it. */
  readonly isDue: (place: Place, now: Date, changedBeside: number) => boolean;
}
interface Texts {
  readonly read: (key: string) => string | null;
  readonly write: (key: string, text: string) => void;
  readonly remove: (key: string) => void;
}
const dayMs = 86_400_000;
const reminder = { days: 14, changes: 10, laterDays: 7 };

function parsed(text: string | null): Backup | undefined {
  try {
    const raw: unknown = JSON.parse(text ?? 'null');
    if (!isFields(raw)) return undefined;
    const { at, rev, isFile, laterUntil } = raw;
    if (typeof at !== 'string' || typeof rev !== 'number' || Number.isNaN(Date.parse(at))) return undefined;
    return { at, rev, isFile: isFile === true, ...(typeof laterUntil === 'string' ? { laterUntil } : {}) };
  } catch {
    return undefined;
  }
}

export function backupsIn(texts: Texts): Backups {
  const keyOf = (id: string): string => `holdwater-backup:${id}`;
  const of = (id: string): Backup | undefined => parsed(texts.read(keyOf(id)));
  const write = (id: string, backup: Backup): void => texts.write(keyOf(id), JSON.stringify(backup));
  const since = ({ id, isDemo }: Place, now: Date): Date | undefined => {
    const last = of(id);
    if (last === undefined || isDemo === true) return undefined;
    if (last.laterUntil !== undefined && now.getTime() < Date.parse(last.laterUntil)) return undefined;
    return now.getTime() - Date.parse(last.at) >= reminder.days * dayMs ? new Date(last.at) : undefined;
  };
  return {
    begin: (id, now) => {
      if (of(id) === undefined) write(id, { at: now.toISOString(), rev: 1, isFile: false });
    },
    saved: ({ id, rev }, now) => write(id, { at: now.toISOString(), rev, isFile: true }),
    later: (id, now) => {
      const last = of(id);
      if (last) write(id, { ...last, laterUntil: new Date(now.getTime() + reminder.laterDays * dayMs).toISOString() });
    },
    forget: (id) => texts.remove(keyOf(id)),
    lastFile: (id) => {
      const last = of(id);
      return last?.isFile === true ? new Date(last.at) : undefined;
    },
    since,
    isDue: (place, now, changedBeside) => {
      const last = of(place.id);
      return last !== undefined && since(place, now) !== undefined && place.rev - last.rev + changedBeside >= reminder.changes;
    },
  };
}
