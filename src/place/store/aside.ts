import type { StoreName, Write } from './backend.ts';

/** A record that cannot be read, as it was found. It waits here until somebody has saved it as a file or has had it looked at. */
export interface Aside {
  readonly id: string;
  readonly store: StoreName;
  readonly why: string;
  readonly raw: unknown;
}
export const isAside = (value: unknown): value is Aside =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  typeof value.id === 'string' &&
  'why' in value &&
  typeof value.why === 'string' &&
  'raw' in value;

export const idOf = (raw: unknown): string | undefined =>
  typeof raw === 'object' && raw !== null && 'id' in raw && typeof raw.id === 'string' ? raw.id : undefined;
/** Out of its store and to the others that were set aside, in one step. */
export function asideWrites(store: StoreName, id: string, why: string, raw: unknown): readonly Write[] {
  const aside: Aside = { id: `${store}-${id}`, store, why, raw };
  return [
    { store: 'aside', put: aside },
    { store, remove: id },
  ];
}
