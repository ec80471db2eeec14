import type { StoreName } from './backend.ts';
import type { Change } from './revisions.ts';

/** A change that is on its way into the store. Written before it, at once, so that a browser that ends in between loses nothing. */
export interface Entry {
  readonly store: StoreName;
  readonly id: string;
  /** Of the record as it was changed; 0 for a new one. */
  readonly rev: number;
  readonly changes: readonly Change[];
  readonly by: string;
  readonly at: string;
}
export type TextStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const prefix = 'holdwater-journal:';
/** What a journal may weigh: more would slow the keys, and is kept by the store alone. */
export const mostBytes = 64 * 1024;

const isChange = (value: unknown): boolean => typeof value === 'object' && value !== null && 'path' in value && Array.isArray(value.path);
const isEntry = (value: unknown): value is Entry =>
  typeof value === 'object' &&
  value !== null &&
  'store' in value &&
  'id' in value &&
  typeof value.id === 'string' &&
  'rev' in value &&
  typeof value.rev === 'number' &&
  'changes' in value &&
  Array.isArray(value.changes) &&
  value.changes.every(isChange) &&
  'by' in value &&
  typeof value.by === 'string' &&
  'at' in value &&
  typeof value.at === 'string';

export interface Journal {
  /** Says whether it could. */
  readonly write: (entries: readonly Entry[]) => boolean;
  readonly clear: () => void;
  /** What windows left behind that ended in mid-write, this one's too. Reading takes nothing away. */
  readonly left: () => readonly { readonly key: string; readonly entries: readonly Entry[] }[];
  readonly forget: (key: string) => void;
}

/** A window's journal. Without storage it keeps nothing, and nothing breaks. */
export function openJournal(storage: TextStore | undefined, windowId: string): Journal {
  const own = `${prefix}${windowId}`;
  const safely = <T>(act: (store: TextStore) => T, otherwise: T): T => {
    try {
      return storage === undefined ? otherwise : act(storage);
    } catch {
      return otherwise;
    }
  };
  const forget = (key: string): void => safely((store) => store.removeItem(key), undefined);
  return {
    write: (entries) =>
      safely((store) => {
        const text = JSON.stringify(entries);
        if (text.length > mostBytes) return false;
        store.setItem(own, text);
        return true;
      }, false),
    clear: () => forget(own),
    left: () =>
      safely(
        (store) =>
          Array.from({ length: store.length }, (_, index) => store.key(index))
            .filter((key) => key?.startsWith(prefix) === true)
            .flatMap((key) => {
              if (key === null) return [];
              const entries = parsed(store.getItem(key));
              return entries === undefined ? [] : [{ key, entries }];
            }),
        [],
      ),
    forget,
  };
}
function parsed(text: string | null): readonly Entry[] | undefined {
  try {
    const found: unknown = JSON.parse(text ?? 'null');
    return Array.isArray(found) && found.every(isEntry) ? found : undefined;
  } catch {
    return undefined;
  }
}
