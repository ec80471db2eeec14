import type { CopyIndex } from '../../src/copy/copyIndex.ts';
import { type CopyState, type GoOn, isCopyState } from '../../src/copy/copyState.ts';
import { answer } from '../../src/copy/worker/answer.ts';
import { cacheNameOf } from '../../src/copy/worker/editions.ts';
import type { Here } from '../../src/copy/worker/here.ts';
import { copying } from '../../src/copy/worker/keepCopy.ts';
import { type Copy, copyOf } from '../../src/integrations/copy/copyOf.ts';

export const folder = 'https://site.test/dry/';
const pathOf = (asked: RequestInfo | URL): string => new URL(asked instanceof Request ? asked.url : String(asked), folder).pathname;

/** A site in small, each file of which says its edition. */
export function aSite(
  edition: string,
  more: Readonly<Record<string, string>> = {},
): { readonly texts: ReadonlyMap<string, string>; readonly copy: Copy } {
  const pages = [
    '',
    'about/',
    'no-signal/',
    ...Array.from('abcdefghijklmnop', (name) => `guides/${name}/`),
    ...Array.from('abcdefgh', (name) => `calculators/${name}/`),
  ];
  const others = ['sources/', 'tables/', 'sheets/x/', 'checks/', 'calculators/a/working/', 'calculators/b/working/'];
  const texts = new Map([
    ...[...pages, ...others].map((path): [string, string] => [`${path}index.html`, `<p>${path} of ${edition}</p>`]),
    ['404.html', `<p>lost in ${edition}</p>`],
    ['office.js', `office of ${edition}`],
    ['search/index.json', `{"edition":"${edition}"}`],
    ['_astro/looks.AAAAAAAA.css', 'a{}'],
    [`_astro/form.${edition.padEnd(8, 'x')}.js`, `form of ${edition}`],
    ...Object.entries(more),
  ]);
  const files = [...texts.keys()].sort();
  return { texts, copy: copyOf(files, (file) => new TextEncoder().encode(texts.get(file))) };
}

/** Cache storage as browsers have it, in memory, on a disk of a given size. */
function cacheStorage(disk: { roomBytes: number }): CacheStorage {
  const all = new Map<string, Map<string, Response>>();
  const cacheOf = (kept: Map<string, Response>): Pick<Cache, 'match' | 'put' | 'delete' | 'keys'> => ({
    match: async (asked) => kept.get(pathOf(asked))?.clone(),
    put: async (asked, response) => {
      const bytes = (await response.clone().arrayBuffer()).byteLength;
      if (bytes > disk.roomBytes) throw new DOMException('no room', 'QuotaExceededError');
      disk.roomBytes -= bytes;
      kept.set(pathOf(asked), response);
    },
    delete: async (asked) => kept.delete(pathOf(asked)),
    keys: async () => [...kept.keys()].map((path) => new Request(new URL(path, folder))),
  });
  const storage: Pick<CacheStorage, 'open' | 'keys' | 'has' | 'delete'> = {
    open: async (name) => {
      const kept = all.get(name) ?? new Map<string, Response>();
      all.set(name, kept);
      return cacheOf(kept) as Cache;
    },
    keys: async () => [...all.keys()],
    has: async (name) => all.has(name),
    delete: async (name) => all.delete(name),
  };
  return storage as CacheStorage;
}

export interface Phone {
  readonly here: Here;
  readonly disk: { roomBytes: number };
  /** Paths from the folder that were asked of the server. */
  readonly asked: string[];
  readonly told: CopyState[];
  readonly open: Set<string>;
  /** A visit: a page asks the worker of an edition to go on with its copy, until it can go no further. */
  readonly visit: (index: CopyIndex, how?: Partial<GoOn>, clientId?: string) => Promise<CopyState>;
  /** Opens a page, and says what is read there; null if it does not open. */
  readonly page: (index: CopyIndex, path: string, clientId?: string) => Promise<string | null>;
  /** What an open page gets of a part. */
  readonly part: (index: CopyIndex, path: string, clientId: string) => Promise<string | null>;
  /** The names of the editions that are kept. */
  readonly editions: () => Promise<readonly string[]>;
}

/** A phone that asks `server` for everything. The browser ends the worker after each visit: nothing but caches lasts. */
export function aPhone(server: (path: string, request: Request) => Response | Promise<Response>, roomBytes = Number.POSITIVE_INFINITY): Phone {
  const disk = { roomBytes };
  const asked: string[] = [];
  const told: CopyState[] = [];
  const open = new Set<string>();
  const here: Here = {
    caches: cacheStorage(disk),
    fetch: async (request) => {
      const path = request.url.slice(folder.length);
      asked.push(path);
      return server(path, request);
    },
    folder,
    isOpen: async (clientId) => open.has(clientId),
    tell: async (message) => {
      if (isCopyState(message)) told.push(message);
    },
    pause: async () => undefined,
  };
  const textOf = (response: Promise<Response>): Promise<string | null> => response.then((got) => got.text()).catch(() => null);
  return {
    here,
    disk,
    asked,
    told,
    open,
    visit: async (index, how = {}, clientId = 'visiting') => {
      await copying(here, index).goOn({ kind: 'copy-go-on', savesData: false, isAsked: false, ...how }, clientId);
      const last = told.at(-1);
      if (last === undefined) throw new Error('the worker said nothing');
      return last;
    },
    page: (index, path, clientId = 'a page') => {
      const request = new Request(new URL(path, folder));
      Object.defineProperty(request, 'mode', { value: 'navigate' });
      return textOf(answer(here, cacheNameOf(here, index.edition), { request, clientId: '', resultingClientId: clientId }));
    },
    part: (index, path, clientId) =>
      textOf(answer(here, cacheNameOf(here, index.edition), { request: new Request(new URL(path, folder)), clientId, resultingClientId: '' })),
    editions: async () => (await here.caches.keys()).filter((name) => name.startsWith('holdwater /dry/ ')).map((name) => name.replace(/.* /, '')),
  };
}

/** Serves what a copy is made of. */
export const servesPacks =
  (copy: Copy) =>
  (path: string): Response => {
    const pack = copy.packs.get(path);
    return pack === undefined ? new Response('<h1>Not here</h1>', { status: 404 }) : new Response(new Uint8Array(pack));
  };
/** The line is gone. */
export const nothing = (): Response => {
  throw new TypeError('Failed to fetch');
};
