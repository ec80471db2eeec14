import type { Place } from '../model/place.ts';
import { readFrame, readPlace } from '../model/readRecord.ts';
import { faultOfContent, faultOfSize } from './limits.ts';

export type FileRead =
  /** In one sentence: why, and that nothing was changed by it. */
  | { readonly is: 'refused'; readonly say: string }
  | {
      readonly is: 'read';
      readonly edition: string;
      readonly savedAt: string;
      readonly places: readonly Place[];
      /** Places that cannot be read, with the reason. The others can. */
      readonly aside: readonly { readonly name: string; readonly why: string; readonly raw: unknown }[];
    };

const refused = (say: string): FileRead => ({ is: 'refused', say });
const noFile = 'This is not a file of a place. Files of a place are saved on the page “Your place”.';

const nameIn = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'name' in raw && typeof raw.name === 'string' && raw.name !== ''
    ? raw.name.slice(0, 200)
    : 'A place without a name';

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
  const places: Place[] = [];
  const aside: { readonly name: string; readonly why: string; readonly raw: unknown }[] = [];
  const ids = new Set<string>();
  for (const each of frame.value.places) {
    const read = readPlace(each);
    if (read.is === 'newer') aside.push({ name: nameIn(each), why: 'It was made by a newer copy of these pages.', raw: each });
    else if (read.is === 'damaged') aside.push({ name: nameIn(each), why: read.why, raw: each });
    else if (ids.has(read.value.id)) aside.push({ name: nameIn(each), why: 'It stands in this file twice.', raw: each });
    else {
      ids.add(read.value.id);
      places.push(read.value);
    }
  }
  return { is: 'read', edition: frame.value.edition, savedAt: frame.value.savedAt, places, aside };
}
