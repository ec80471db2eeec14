import { deleteDB } from 'idb';
import { type Backend, memoryBackend } from './backend.ts';
import { openChannel } from './channel.ts';
import { databaseName, idbBackend } from './idbBackend.ts';
import { newId, randomMark } from './ids.ts';
import { openJournal, type TextStore } from './journal.ts';
import { type WhyMemory, whyRefused } from './storageState.ts';
import { makeStore, type Store } from './store.ts';

/** How long a browser may take to open its store before the page goes on without. */
const patienceMs = 2000;

export interface Opening {
  /** Which window or device writes: words that a person would know again. */
  readonly by: string;
  readonly texts: TextStore | undefined;
  readonly now?: () => Date;
  readonly windowId?: string;
  readonly patienceMs?: number;
  /** Somebody chose to work from the file and keep nothing here. */
  readonly isMemoryChosen?: boolean;
}
type Opened = { readonly backend: Backend } | { readonly why: WhyMemory };

/** The browser's store, or why there is none. One that opens after all when nobody waits any more is closed again. */
async function openBackend(waitMs: number, onLost: () => void): Promise<Opened> {
  if (typeof indexedDB === 'undefined') return { why: 'refused' };
  let isLate = false;
  const asked = idbBackend(onLost).then(
    (backend): Opened => {
      if (isLate) backend.close();
      return { backend };
    },
    (error: unknown): Opened => ({ why: whyRefused(error) }),
  );
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silent = new Promise<Opened>((done) => {
    timer = setTimeout(() => {
      isLate = true;
      done({ why: 'silent' });
    }, waitMs);
  });
  const opened = await Promise.race([asked, silent]);
  clearTimeout(timer);
  return opened;
}

/** The same screens over a store that keeps nothing: for a browser that refuses, and for who wants it so. */
export const memoryStore = (why: WhyMemory, { by, now = () => new Date() }: Pick<Opening, 'by' | 'now'>): Store =>
  makeStore({
    backend: memoryBackend(),
    writer: { by, now, mark: randomMark },
    journal: openJournal(undefined, ''),
    channel: () => ({ tell: () => {}, close: () => {} }),
    state: { is: 'memory', why },
  });

/** Opens what is kept, with what windows left that ended in mid-write. Where nothing can be kept the same store keeps nothing, and says why. */
export async function openStore(opening: Opening): Promise<Store> {
  const { by, texts, now = () => new Date(), windowId = newId() } = opening;
  if (opening.isMemoryChosen === true) return memoryStore('chosen', opening);
  let lose = (): void => {};
  const opened = await openBackend(opening.patienceMs ?? patienceMs, () => lose());
  if ('why' in opened) return memoryStore(opened.why, opening);
  const store = makeStore({
    backend: opened.backend,
    writer: { by, now, mark: randomMark },
    journal: openJournal(texts, windowId),
    channel: openChannel,
    state: { is: 'kept' },
  });
  lose = store.lose;
  try {
    await store.recover();
  } catch {
    // What is left in the journal stays there for the next opening.
  }
  return store;
}

/** Takes away a database that the browser cannot read. Only ever at a person's word, after what can be saved has been. */
export const startAnew = (): Promise<void> => deleteDB(databaseName);
