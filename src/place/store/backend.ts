/** Where records lie. Another one is added here, and the database's version raised with it, so that older ones get it. */
export const storeNames = ['places', 'rows', 'results', 'visits', 'notes', 'photos', 'recent', 'aside'] as const;
export type StoreName = (typeof storeNames)[number];
export interface Key {
  readonly store: StoreName;
  readonly id: string;
}
export type Write = { readonly store: StoreName; readonly put: { readonly id: string } } | { readonly store: StoreName; readonly remove: string };

/** What the rest needs of a store. Both that there are, one that keeps and one that does not, do just this. */
export interface Backend {
  readonly all: (store: StoreName) => Promise<readonly unknown[]>;
  /** Those of them that are there. */
  readonly some: (store: StoreName, ids: readonly string[]) => Promise<readonly unknown[]>;
  /** One transaction: reads these, asks what to write, and writes all of it or nothing. */
  readonly change: (reads: readonly Key[], decide: (stored: readonly unknown[]) => readonly Write[]) => Promise<void>;
  readonly close: () => void;
}

/** Keeps nothing past this window. */
export function memoryBackend(): Backend {
  const stores = new Map(storeNames.map((name) => [name, new Map<string, unknown>()]));
  const of = (name: StoreName): Map<string, unknown> => {
    const found = stores.get(name);
    if (!found) throw new RangeError(`no store ${name}`);
    return found;
  };
  return {
    all: async (store) => structuredClone([...of(store).values()]),
    some: async (store, ids) => structuredClone(ids.flatMap((id) => of(store).get(id) ?? [])),
    change: async (reads, decide) => {
      for (const write of decide(structuredClone(reads.map(({ store, id }) => of(store).get(id))))) {
        if ('put' in write) of(write.store).set(write.put.id, structuredClone(write.put));
        else of(write.store).delete(write.remove);
      }
    },
    close: () => {},
  };
}
