import { useEffect, useRef, useState } from 'preact/hooks';
import type { Saved } from '../store/decide.ts';
import { type Editing, editing } from '../store/editing.ts';
import type { Kind } from '../store/kind.ts';
import type { Kept } from '../store/records.ts';
import type { Session, Trouble } from './session.ts';

// Records beside the place, for the views that draw them: read when a view is shown, and again when another window changes them.

/** All of a kind that are wanted; nothing until they are read. */
export function useKept<T extends Kept>(
  session: Session,
  kind: Kind<T>,
  isWanted: (each: T) => boolean,
  ids?: readonly string[],
): readonly T[] | undefined {
  const [records, setRecords] = useState<readonly T[] | undefined>(undefined);
  const asked = ids?.join(' ');
  useEffect(() => {
    let isGone = false;
    const read = async () => {
      const found = await (ids === undefined ? session.store.read(kind) : session.store.pick(kind, ids));
      if (!isGone) setRecords(found.records.filter(isWanted));
    };
    void read();
    const leave = session.store.listen((told) => {
      if ('store' in told && told.store === kind.store) void read();
    });
    return () => {
      isGone = true;
      leave();
    };
  }, [session, kind, asked]);
  return records;
}

export interface Work<T> {
  readonly value: T;
  /** As it stands at that moment: what a change that waited for something is made from. */
  readonly now: () => T;
  readonly trouble: Trouble | undefined;
  readonly set: (next: T) => void;
}
/** One record at work in this window, or why there is none. */
export type Working<T> = { readonly is: 'coming' } | { readonly is: 'none' } | ({ readonly is: 'there' } & Work<T>);

/** A record by its id. `make` gives it where it is not kept yet: it is written with its first change. */
export function useRecord<T extends Kept>(session: Session, kind: Kind<T>, id: string, make?: () => T): Working<T> {
  const [, redraw] = useState(0);
  const [trouble, setTrouble] = useState<Trouble | undefined>(undefined);
  const work = useRef<Editing<T> | 'none' | undefined>(undefined);
  useEffect(() => {
    let isGone = false;
    const draw = (): void => {
      if (!isGone) redraw((count) => count + 1);
    };
    const heard = (saved: Saved<T>): void => {
      if (saved.is === 'gone' || saved.is === 'newer' || saved.is === 'damaged') setTrouble(saved.is);
      draw();
    };
    const read = async () => {
      const open = work.current === 'none' ? undefined : work.current;
      await open?.flush();
      const before = open?.value();
      const [found] = (await session.store.pick(kind, [id])).records;
      // Typed meanwhile: what is typed joins what is stored at its own write.
      if (isGone || open?.value() !== before) return;
      if (found !== undefined) work.current = editing(session.store, kind, found, false, heard);
      else if (open !== undefined) setTrouble('gone');
      else {
        const made = make?.();
        work.current = made === undefined ? 'none' : lazyNew(made, heard);
      }
      draw();
    };
    /** Nothing is written for who only looks. */
    const lazyNew = (made: T, onSaved: (saved: Saved<T>) => void): Editing<T> => {
      let real: Editing<T> | undefined;
      return {
        value: () => real?.value() ?? made,
        set: (next) => {
          real ??= editing(session.store, kind, made, true, onSaved);
          real.set(next);
        },
        flush: async () => real?.flush(),
      };
    };
    void read();
    const stopFlush = session.alsoFlush(async () => (work.current === 'none' ? undefined : work.current?.flush()));
    const leave = session.store.listen((told) => {
      if ('store' in told && told.store === kind.store && told.ids.includes(id)) void read();
    });
    return () => {
      isGone = true;
      if (work.current !== 'none') void work.current?.flush();
      stopFlush();
      leave();
    };
  }, [session, kind, id]);
  const { current } = work;
  if (current === undefined) return { is: 'coming' };
  if (current === 'none') return { is: 'none' };
  // What is read from the store again is another one at work than that of the last drawing.
  const open = (): Editing<T> => (work.current === 'none' ? current : (work.current ?? current));
  return {
    is: 'there',
    value: current.value(),
    now: () => open().value(),
    trouble,
    set: (next) => {
      open().set(next);
      redraw((count) => count + 1);
    },
  };
}
