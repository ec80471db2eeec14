import { type Aside, asideWrites, idOf, isAside } from './aside.ts';
import type { Backend, Write } from './backend.ts';
import type { Channel, Told } from './channel.ts';
import { changesOf, decideEdit, decideEntry, type Edit, type Saved } from './decide.ts';
import type { Entry, Journal } from './journal.ts';
import { type Kind, kindIn } from './kinds.ts';
import type { Kept, Writer } from './records.ts';
import { isFull, type StorageState } from './storageState.ts';

export interface ReadAll<T> {
  readonly records: readonly T[];
  /** Made by a newer copy: said, never opened or written, and exportable as they are. */
  readonly newer: readonly unknown[];
}
export interface Store {
  readonly state: () => StorageState;
  /** Called when the state changes, and when another window has changed something. */
  readonly listen: (hear: (told: Told | StorageState) => void) => () => void;
  /** All of a kind. One that cannot be read is set aside; the rest opens. */
  readonly read: <T extends Kept>(kind: Kind<T>) => Promise<ReadAll<T>>;
  /** All edits or none, in one transaction. */
  readonly save: <T extends Kept>(kind: Kind<T>, edits: readonly Edit<T>[]) => Promise<readonly Saved<T>[]>;
  readonly remove: (kind: Kind<Kept>, id: string) => Promise<void>;
  readonly aside: () => Promise<readonly Aside[]>;
  /** Only once it has been saved elsewhere. */
  readonly dropAside: (id: string) => Promise<void>;
  /** Brings in what windows left that ended in mid-write. */
  readonly recover: () => Promise<void>;
  readonly close: () => void;
}
export interface StoreParts {
  readonly backend: Backend;
  readonly writer: Writer;
  readonly journal: Journal;
  readonly channel: (hear: (told: Told) => void) => Channel;
  readonly state: StorageState;
}

const isSaved = (saved: Saved<Kept>): boolean => saved.is === 'saved';

/** The one store, over whatever keeps or does not keep. */
export function makeStore({ backend, writer, journal, channel: open, state: begins }: StoreParts): Store & { readonly lose: () => void } {
  let state = begins;
  const listeners = new Set<(told: Told | StorageState) => void>();
  const tellHere = (told: Told | StorageState): void => {
    for (const hear of listeners) hear(told);
  };
  const channel = open(tellHere);
  const turn = (to: StorageState): void => {
    if (to.is === state.is) return;
    state = to;
    tellHere(state);
  };
  /** What found no room, by kind and id, with the record that each began from. */
  const held = new Map<Kind<Kept>, Map<string, Edit<Kept>>>();
  const heldOf = (kind: Kind<Kept>): Map<string, Edit<Kept>> => held.get(kind) ?? new Map();
  const entriesOf = (kind: Kind<Kept>, edits: readonly Edit<Kept>[]): readonly Entry[] =>
    edits.map((edit) => ({
      store: kind.store,
      id: edit.after.id,
      rev: edit.before === null ? 0 : edit.before.rev,
      changes: changesOf(edit),
      by: writer.by,
      at: writer.now().toISOString(),
    }));
  // One write after another, so that each is told from what the one before has left.
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(act: () => Promise<T>): Promise<T> => {
    const next = last.then(act);
    last = next.catch(() => undefined);
    return next;
  };

  async function saveNow<T extends Kept>(kind: Kind<T>, edits: readonly Edit<T>[], waiting: readonly Edit<Kept>[]): Promise<readonly Saved<T>[]> {
    const any = kindIn(kind.store);
    if (any === undefined) throw new RangeError(`no kind of record in ${kind.store}`);
    const before = (edit: Edit<T>): Edit<T> => {
      const first = waiting.find(({ after }) => after.id === edit.after.id);
      if (first === undefined || first.before === null) return first === undefined ? edit : { ...edit, before: null };
      const read = kind.read(first.before);
      return read.is === 'read' ? { before: read.value, after: edit.after } : edit;
    };
    const mine = edits.map(before);
    const others = waiting.filter(({ after }) => !edits.some((edit) => edit.after.id === after.id));
    journal.write(entriesOf(any, [...others, ...mine]));
    let saved: readonly Saved<T>[] = [];
    try {
      const reads = [...mine, ...others].map(({ after }) => ({ store: kind.store, id: after.id }));
      await backend.change(reads, (stored) => {
        const decided = mine.map((edit, index) => decideEdit(kind, edit, stored[index], writer));
        const rest = others.map((edit, index) => decideEdit(any, edit, stored[mine.length + index], writer));
        saved = decided.map((each) => each.saved);
        return [...decided, ...rest].flatMap(({ writes }) => writes);
      });
    } catch (error) {
      if (error instanceof TypeError || error instanceof RangeError) {
        journal.clear();
        throw error;
      }
      held.set(any, new Map([...others, ...mine].map((edit) => [edit.after.id, edit])));
      if (state.is !== 'memory') turn(isFull(error) ? { is: 'full' } : { is: 'memory', why: 'lost' });
      return edits.map(({ after }) => ({ is: 'held', value: after }));
    }
    held.delete(any);
    journal.clear();
    if (state.is === 'full') turn({ is: 'kept' });
    if (saved.some(isSaved) || others.length > 0) channel.tell({ store: kind.store, ids: [...edits, ...others].map(({ after }) => after.id) });
    return saved;
  }

  async function readNow<T extends Kept>(kind: Kind<T>): Promise<ReadAll<T>> {
    const raws = await backend.all(kind.store);
    const records: T[] = [];
    const newer: unknown[] = [];
    for (const raw of raws) {
      const read = kind.read(raw);
      const id = idOf(raw);
      if (read.is === 'read') records.push(read.value);
      else if (read.is === 'newer') newer.push(raw);
      else if (id !== undefined) {
        const stillDamaged = ([now]: readonly unknown[]): readonly Write[] =>
          now !== undefined && kind.read(now).is === 'damaged' ? asideWrites(kind.store, id, read.why, now) : [];
        // Where there is no room to set it aside it stays where it is, and is passed over.
        await backend.change([{ store: kind.store, id }], stillDamaged).catch(() => undefined);
      }
    }
    const any = kindIn(kind.store);
    const waiting =
      any === undefined
        ? []
        : [...heldOf(any).values()].flatMap(({ after }) => {
            const read = kind.read(after);
            return read.is === 'read' ? [read.value] : [];
          });
    return { records: [...records.filter(({ id }) => !waiting.some((each) => each.id === id)), ...waiting], newer };
  }

  return {
    state: () => state,
    listen: (hear) => {
      listeners.add(hear);
      return () => listeners.delete(hear);
    },
    read: (kind) => inTurn(() => readNow(kind)),
    save: (kind, edits) =>
      inTurn(() => {
        const any = kindIn(kind.store);
        return saveNow(kind, edits, any === undefined ? [] : [...heldOf(any).values()]);
      }),
    remove: (kind, id) =>
      inTurn(async () => {
        held.get(kind)?.delete(id);
        await backend.change([], () => [{ store: kind.store, remove: id }]);
        channel.tell({ store: kind.store, ids: [id] });
      }),
    aside: () => inTurn(async () => (await backend.all('aside')).filter(isAside)),
    dropAside: (id) => inTurn(() => backend.change([], () => [{ store: 'aside', remove: id }])),
    recover: () =>
      inTurn(async () => {
        for (const { key, entries } of journal.left()) {
          const reads = entries.map(({ store, id }) => ({ store, id }));
          await backend.change(reads, (stored) =>
            entries.flatMap((entry, index) => {
              const kind = kindIn(entry.store);
              return kind === undefined ? [] : decideEntry(kind, entry, stored[index], writer);
            }),
          );
          journal.forget(key);
        }
      }),
    close: () => {
      channel.close();
      backend.close();
    },
    /** The browser has taken the database away. */
    lose: () => turn({ is: 'memory', why: 'lost' }),
  };
}
