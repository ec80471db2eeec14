import type { Belongings } from '../model/belongings.ts';
import type { Place } from '../model/place.ts';
import { readFrame } from '../model/readFrame.ts';
import { type Read, readPlace } from '../model/readRecord.ts';
import { readRow } from '../model/readRow.ts';
import { readNote, readResult, readVisit } from '../model/readVisit.ts';
import { faultOfContent, faultOfSize } from './limits.ts';

export type FileRead =
  /** In one sentence: why, and that nothing was changed by it. */
  | { readonly is: 'refused'; readonly say: string }
  | (Belongings & {
      readonly is: 'read';
      readonly edition: string;
      readonly savedAt: string;
      readonly places: readonly Place[];
      /** What cannot be read, with the reason. The rest can. */
      readonly aside: readonly NotRead[];
    });
interface NotRead {
  readonly name: string;
  readonly why: string;
  readonly raw: unknown;
}

const refused = (say: string): FileRead => ({ is: 'refused', say });
const noFile = 'This is not a file of a place. Files of a place are saved on the page “Your place”.';

const nameIn = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'name' in raw && typeof raw.name === 'string' && raw.name !== ''
    ? raw.name.slice(0, 200)
    : 'A place without a name';

/** Each that can be read, once; the others go aside. */
function readEach<T extends { readonly id: string }>(raws: readonly unknown[], read: (raw: unknown) => Read<T>, name: (raw: unknown) => string) {
  const records: T[] = [];
  const aside: NotRead[] = [];
  const ids = new Set<string>();
  for (const raw of raws) {
    const found = read(raw);
    if (found.is === 'newer') aside.push({ name: name(raw), why: 'It was made by a newer copy of these pages.', raw });
    else if (found.is === 'damaged') aside.push({ name: name(raw), why: found.why, raw });
    else if (ids.has(found.value.id)) aside.push({ name: name(raw), why: 'It stands in this file twice.', raw });
    else {
      ids.add(found.value.id);
      records.push(found.value);
    }
  }
  return { records, aside };
}

/** Reads the text of a file. Nothing is written anywhere; what it holds is only ever data. */
export function readFile(text: string): FileRead {
  const tooLarge = faultOfSize(text.length);
  if (tooLarge !== undefined) return refused(tooLarge);
  let raw: unknown;
  try {
    // Some editors put a mark before the first letter.
    raw = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return refused(noFile);
  }
  const fault = faultOfContent(raw);
  if (fault !== undefined) return refused(fault);
  const frame = readFrame(raw);
  if (frame.is === 'newer') return refused('This file was saved by a newer copy of these pages. Open it there, or bring this copy up to date.');
  if (frame.is === 'damaged') return refused(noFile);
  const { edition, savedAt } = frame.value;
  const places = readEach(frame.value.places, readPlace, nameIn);
  const ids = new Set(places.records.map(({ id }) => id));
  const aside: NotRead[] = [];
  /** What belongs to places of the file. */
  const belonging = <T extends { readonly id: string; readonly placeId: string }>(
    raws: readonly unknown[] = [],
    readOne: (raw: unknown) => Read<T>,
    name: string,
  ): readonly T[] => {
    const each = readEach(raws, readOne, () => name);
    const lost = each.records.filter(({ placeId }) => !ids.has(placeId));
    aside.push(...each.aside, ...lost.map((raw) => ({ name, why: 'Its place is not in this file, or could not be read.', raw })));
    return each.records.filter(({ placeId }) => ids.has(placeId));
  };
  return {
    is: 'read',
    edition,
    savedAt,
    places: places.records,
    rows: belonging(frame.value.rows, readRow, 'A line of the record'),
    visits: belonging(frame.value.visits, readVisit, 'A visit'),
    results: belonging(frame.value.results, readResult, 'A kept calculation'),
    notes: belonging(frame.value.notes, readNote, 'A follow-up note'),
    aside: [...places.aside, ...aside],
  };
}
