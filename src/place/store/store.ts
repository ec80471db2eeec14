import { type Aside, asideWrites, idOf, isAside } from './aside.ts';
import { type Backend, type Key, storeNames, type Write } from './backend.ts';
import type { Channel, Told } from './channel.ts';
import { changesOf, decideEdit, decideEntry, type Edit, type Saved } from './decide.ts';
import type { Entry, Journal } from './journal.ts';
import type { Kind } from './kind.ts';
import { kindIn } from './kinds.ts';
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
  /** Those of a kind with these ids; one that is not there is left out. */
  readonly pick: <T extends Kept>(kind: Kind<T>, ids: readonly string[]) => Promise<ReadAll<T>>;
  /** All edits or none, in one transaction. */
  readonly save: <T extends Kept>(kind: Kind<T>, edits: readonly Edit<T>[]) => Promise<readonly Saved<T>[]>;
  /** The same of several kinds together. */
  readonly saveAll: (batches: readonly Batch[]) => Promise<readonly Saved<Kept>[]>;
  /** All of them or none, in one transaction. */
  readonly remove: (kind: Kind<Kept>, id: string, others?: readonly Key[]) => Promise<void>;
  readonly aside: () => Promise<readonly Aside[]>;
  /** Only once it has been saved elsewhere. */
  readonly dropAside: (id: string) => Promise<void>;
  /** Brings in what windows left that ended in mid-write. */
  readonly recover: () => Promise<void>;
  readonly close: () => void;
}
/** Edits of one kind. */
export interface Batch {
  readonly kind: Kind<Kept>;
  readonly edits: readonly Edit<Kept>[];
}
/** One edit on its way into the store. */
interface Task {
  readonly kind: Kind<Kept>;
  readonly edit: Edit<Kept>;
  readonly decide: (stored: unknown) => readonly Write[];
}
interface Tasked<T extends Kept> {
  readonly task: Task;
  readonly after: T;
  readonly decided: () => Saved<T> | undefined;
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
  /** What found no room, by where it lies, with the record that each began from. */
  const held = new Map<string, Pick<Task, 'kind' | 'edit'>>();
  const keyOf = (kind: Kind<Kept>, id: string): string => `${kind.store}/${id}`;
  const heldOf = (kind: Kind<Kept>): readonly Edit<Kept>[] =>
    [...held.values()].flatMap((each) => (each.kind.store === kind.store ? [each.edit] : []));
  const entryOf = ({ kind, edit }: Pick<Task, 'kind' | 'edit'>): Entry => ({
    store: kind.store,
    id: edit.after.id,
    rev: edit.before === null ? 0 : edit.before.rev,
    changes: changesOf(edit),
    by: writer.by,
    at: writer.now().toISOString(),
  });
  const idsByStore = (keys: readonly Key[]): readonly Told[] =>
    storeNames.flatMap((store) => {
      const ids = keys.filter((each) => each.store === store).map(({ id }) => id);
      return ids.length === 0 ? [] : [{ store, ids }];
    });
  // One write after another, so that each is told from what the one before has left.
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(act: () => Promise<T>): Promise<T> => {
    const next = last.then(act);
    last = next.catch(() => undefined);
    return next;
  };

  /** An edit of what is held begins where the held one began. */
  function sinceHeld<T extends Kept>(kind: Kind<T>, edit: Edit<T>): Edit<T> {
    const first = held.get(keyOf(kind, edit.after.id))?.edit;
    if (first === undefined) return edit;
    if (first.before === null) return { ...edit, before: null };
    const read = kind.read(first.before);
    return read.is === 'read' ? { before: read.value, after: edit.after } : edit;
  }
  function tasked<T extends Kept>(kind: Kind<T>, asked: Edit<T>): Tasked<T> {
    const edit = sinceHeld(kind, asked);
    let saved: Saved<T> | undefined;
    const decide = (stored: unknown): readonly Write[] => {
      const decided = decideEdit(kind, edit, stored, writer);
      saved = decided.saved;
      return decided.writes;
    };
    return { task: { kind, edit, decide }, after: asked.after, decided: () => saved };
  }

  /** Writes edits with all that waits for room, in one transaction. Says whether it could. */
  async function write(tasks: readonly Task[]): Promise<boolean> {
    const keys = new Set(tasks.map(({ kind, edit }) => keyOf(kind, edit.after.id)));
    const others = [...held].flatMap(([key, { kind, edit }]) => (keys.has(key) ? [] : [tasked(kind, edit).task]));
    const all = [...tasks, ...others];
    const reads = all.map(({ kind, edit }) => ({ store: kind.store, id: edit.after.id }));
    journal.write(all.map(entryOf));
    try {
      await backend.change(reads, (stored) => all.flatMap(({ decide }, index) => decide(stored[index])));
    } catch (error) {
      if (error instanceof TypeError || error instanceof RangeError) {
        if (held.size === 0) journal.clear();
        else journal.write([...held.values()].map(entryOf));
        throw error;
      }
      for (const { kind, edit } of all) held.set(keyOf(kind, edit.after.id), { kind, edit });
      if (state.is !== 'memory') turn(isFull(error) ? { is: 'full' } : { is: 'memory', why: 'lost' });
      return false;
    }
    held.clear();
    journal.clear();
    if (state.is === 'full') turn({ is: 'kept' });
    return true;
  }
  async function saveNow<T extends Kept>(asked: readonly (readonly [Kind<T>, Edit<T>])[]): Promise<readonly Saved<T>[]> {
    const waited = [...held.values()].map(({ kind, edit }) => ({ store: kind.store, id: edit.after.id }));
    const works = asked.map(([kind, edit]) => tasked(kind, edit));
    const isWritten = await write(works.map(({ task }) => task));
    const saved = works.map(({ after, decided }): Saved<T> => (isWritten ? decided() : undefined) ?? { is: 'held', value: after });
    if (isWritten && (saved.some(isSaved) || waited.length > 0))
      for (const told of idsByStore([...asked.map(([kind, { after }]) => ({ store: kind.store, id: after.id })), ...waited])) channel.tell(told);
    return saved;
  }

  async function readNow<T extends Kept>(kind: Kind<T>, ids?: readonly string[]): Promise<ReadAll<T>> {
    const raws = await (ids === undefined ? backend.all(kind.store) : backend.some(kind.store, ids));
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
    const waiting = heldOf(kind).flatMap(({ after }) => {
      if (ids?.includes(after.id) === false) return [];
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
    pick: (kind, ids) => inTurn(() => readNow(kind, ids)),
    save: (kind, edits) => inTurn(() => saveNow(edits.map((edit) => [kind, edit] as const))),
    saveAll: (batches) => inTurn(() => saveNow(batches.flatMap(({ kind, edits }) => edits.map((edit) => [kind, edit] as const)))),
    remove: (kind, id, others = []) =>
      inTurn(async () => {
        const keys: readonly Key[] = [{ store: kind.store, id }, ...others];
        for (const key of keys) held.delete(`${key.store}/${key.id}`);
        await backend.change([], () => keys.map((key) => ({ store: key.store, remove: key.id })));
        for (const told of idsByStore(keys)) channel.tell(told);
      }),
    aside: () => inTurn(async () => (await backend.all('aside')).filter(isAside)),
    dropAside: (id) => inTurn(() => backend.change([], () => [{ store: 'aside', remove: id }])),
    recover: () =>
      inTurn(async () => {
        for (const { key, entries } of journal.left()) {
          const reads = entries.map(({ store, id }) => ({ store, id }));
          const kinds = await Promise.all(entries.map(({ store }) => kindIn(store)));
          await backend.change(reads, (stored) =>
            entries.flatMap((entry, index) => {
              const kind = kinds[index];
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
