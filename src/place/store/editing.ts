import type { Saved } from './decide.ts';
import type { Kind } from './kind.ts';
import type { Kept } from './records.ts';
import type { Store } from './store.ts';

/** After the last key before it is written. */
const pauseMs = 300;

/** One record while somebody works on it. Every key counts here at once and reaches the store a little behind; on leaving, `flush`. */
export interface Editing<T extends Kept> {
  readonly value: () => T;
  readonly set: (next: T) => void;
  /** Writes what waits, if any does. */
  readonly flush: () => Promise<Saved<T> | undefined>;
}
export function editing<T extends Kept>(store: Store, kind: Kind<T>, start: T, isNew: boolean, onSaved: (saved: Saved<T>) => void): Editing<T> {
  let before: T | null = isNew ? null : start;
  let value = start;
  let isChanged = isNew;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<Saved<T> | undefined> = Promise.resolve(undefined);
  const write = async (): Promise<Saved<T> | undefined> => {
    if (!isChanged) return undefined;
    isChanged = false;
    const after = value;
    const [saved] = await store.save(kind, [{ before, after }]);
    if (saved === undefined) return undefined;
    if (saved.is === 'saved') {
      // Nothing typed meanwhile: what others changed comes in. Else the next write is told from what this one wrote, and joins them.
      before = value === after ? saved.value : after;
      if (value === after) value = saved.value;
    }
    onSaved(saved);
    return saved;
  };
  const flush = (): Promise<Saved<T> | undefined> => {
    clearTimeout(timer);
    writing = writing.then(write);
    return writing;
  };
  return {
    value: () => value,
    set: (next) => {
      value = next;
      isChanged = true;
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), pauseMs);
    },
    flush,
  };
}
