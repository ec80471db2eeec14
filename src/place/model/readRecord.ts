import * as v from 'valibot';
import { type Migrations, migrate } from './migrations/migrate.ts';
import { placeMigrations, placeVersion } from './migrations/place.ts';
import { type Place, placeSchema } from './place.ts';

export type Read<T> =
  | { readonly is: 'read'; readonly value: T }
  | { readonly is: 'newer'; readonly v: number }
  | { readonly is: 'damaged'; readonly why: string };

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
function whyOf(issues: readonly v.BaseIssue<unknown>[], otherwise: string): string {
  const way = wayTo(issues[0]?.path?.map(({ key }) => key) ?? []);
  return way === '' ? otherwise : `What stands at “${way}” cannot be used.`;
}

/** How records of one kind are read, whatever edition wrote them. */
interface Reading<T> {
  readonly schema: v.GenericSchema<unknown, T>;
  readonly migrations: Migrations;
  readonly version: number;
  /** What is said of one that has nothing of it: `It does not have the shape of a place.` */
  readonly otherwise: string;
}
export function readAs<T>({ schema, migrations, version, otherwise }: Reading<T>, raw: unknown): Read<T> {
  const migrated = migrate(migrations, version, raw);
  if (migrated.is === 'newer') return migrated;
  if (migrated.is === 'unreadable') return { is: 'damaged', why: otherwise };
  const read = v.safeParse(schema, migrated.value);
  return read.success ? { is: 'read', value: read.output } : { is: 'damaged', why: whyOf(read.issues, otherwise) };
}

/** A place as any edition wrote it. */
export const readPlace = (raw: unknown): Read<Place> =>
  readAs({ schema: placeSchema, migrations: placeMigrations, version: placeVersion, otherwise: 'It does not have the shape of a place.' }, raw);
