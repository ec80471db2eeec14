import * as v from 'valibot';
import { fileVersion, type PlaceFile, placeFileSchema } from './file.ts';
import { migrate } from './migrations/migrate.ts';
import { placeMigrations } from './migrations/place.ts';
import { type Place, placeSchema, placeVersion } from './place.ts';

export type Read<T> =
  | { readonly is: 'read'; readonly value: T }
  | { readonly is: 'newer'; readonly v: number }
  | { readonly is: 'damaged'; readonly why: string };

const noPlace = 'It does not have the shape of a place.';
/** A field's name as words. Names in a file may hold anything: no line is broken by one, and no quote ended. */
const wordsOf = (name: unknown): string =>
  String(name)
    .replace(/(?=[A-Z])/g, ' ')
    .toLowerCase()
    .replace(/[\p{C}\p{Z}“”]+/gu, ' ');
/** Where something stands, in words: `pastures 1, area ac`. */
const wayTo = (steps: readonly unknown[]): string =>
  steps
    .map((step) => (typeof step === 'number' ? ` ${step + 1}` : `, ${wordsOf(step)}`))
    .join('')
    .slice(2, 122);
/** In words for a person: where it is wrong. */
function whyOf(issues: readonly v.BaseIssue<unknown>[]): string {
  const way = wayTo(issues[0]?.path?.map(({ key }) => key) ?? []);
  return way === '' ? noPlace : `What stands at “${way}” cannot be used.`;
}

/** A place as any edition wrote it. */
export function readPlace(raw: unknown): Read<Place> {
  const migrated = migrate(placeMigrations, placeVersion, raw);
  if (migrated.is === 'newer') return migrated;
  if (migrated.is === 'unreadable') return { is: 'damaged', why: noPlace };
  const read = v.safeParse(placeSchema, migrated.value);
  return read.success ? { is: 'read', value: read.output } : { is: 'damaged', why: whyOf(read.issues) };
}

/** The frame of a file, without its places: those are read one by one, so that one wrong place does not cost the others. */
const frameSchema = v.object({ ...v.omit(placeFileSchema, ['places']).entries, places: v.array(v.unknown()) });
export type FileFrame = Omit<PlaceFile, 'places'> & { readonly places: readonly unknown[] };
export function readFrame(raw: unknown): Read<FileFrame> {
  const migrated = migrate({}, fileVersion, raw);
  if (migrated.is === 'newer') return migrated;
  if (migrated.is === 'unreadable') return { is: 'damaged', why: 'It is not a file of a place.' };
  const read = v.safeParse(frameSchema, migrated.value);
  return read.success ? { is: 'read', value: read.output } : { is: 'damaged', why: 'It is not a file of a place.' };
}
