// Keeps the site on the device. The build puts what the copy is made of above this file.
import type { CopyIndex } from '../copyIndex.ts';
import { isGoOn } from '../copyState.ts';
import { answer } from './answer.ts';
import { cacheNameOf } from './editions.ts';
import type { Here } from './here.ts';
import { copying } from './keepCopy.ts';
import { askOffice, office, officePath } from './office.ts';

declare const copyIndex: CopyIndex;

/** What a worker of this kind has and the types of a page do not know. */
interface Later extends Event {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface Fetched extends Later {
  readonly request: Request;
  readonly clientId: string;
  readonly resultingClientId: string;
  readonly respondWith: (response: Promise<Response>) => void;
}
interface Said extends Later {
  readonly data: unknown;
  readonly source: Client | null;
}
interface Client {
  readonly id: string;
  readonly postMessage: (message: unknown) => void;
}
interface Scope {
  readonly caches: CacheStorage;
  readonly location: Location;
  readonly navigator: { readonly connection?: { readonly saveData?: boolean } };
  readonly clients: {
    readonly claim: () => Promise<void>;
    readonly get: (id: string) => Promise<Client | undefined>;
    readonly matchAll: (options: { readonly includeUncontrolled: boolean }) => Promise<readonly Client[]>;
  };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: {
    (type: 'install' | 'activate', listener: (event: Later) => void): void;
    (type: 'fetch', listener: (event: Fetched) => void): void;
    (type: 'message', listener: (event: Said) => void): void;
  };
}
declare const self: Scope;

const here: Here = {
  caches: self.caches,
  fetch: (request) => fetch(request),
  folder: new URL('./', self.location.href).href,
  isOpen: async (clientId) => (await self.clients.get(clientId)) !== undefined,
  tell: async (message) => {
    for (const client of await self.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
  },
  pause: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
};
const own = cacheNameOf(here, copyIndex.edition);
const copy = copying(here, copyIndex);

// A new worker takes over at once, because it opens the edition that was in use until its own is here.
self.addEventListener('install', (event) => event.waitUntil(self.skipWaiting()));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('message', (event) => {
  const { data, source } = event;
  if (!isGoOn(data) || source === null) return;
  const savesData = data.savesData || self.navigator.connection?.saveData === true;
  event.waitUntil(Promise.all([askOffice(here).catch(() => undefined), copy.goOn({ ...data, savesData }, source.id)]));
});
self.addEventListener('fetch', (event) => {
  const { request, clientId, resultingClientId } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) return;
  event.respondWith(
    pathname === officePath(here) ? office(here, (work) => event.waitUntil(work)) : answer(here, own, { request, clientId, resultingClientId }),
  );
});
