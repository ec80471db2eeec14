import { folderPath, type Here } from './here.ts';

/** Before the edition that was the newest when a page came from the server: its parts come from there as well, and that edition stays while it is open. */
export const fromServer = 'server ';

// Which edition each open page is of. The browser ends a worker whenever it likes, so this is written down.
const cacheName = (here: Here): string => `holdwater-pages ${folderPath(here)}`;
const pathOf = (clientId: string): string => `/${encodeURIComponent(clientId)}`;

export async function rememberPage(here: Here, clientId: string, edition: string): Promise<void> {
  const cache = await here.caches.open(cacheName(here));
  await cache.put(pathOf(clientId), new Response(edition));
}

/** A page that was there before any worker is of the edition whose worker it asks first. */
export async function rememberEarlierPage(here: Here, clientId: string, own: string): Promise<void> {
  if ((await editionOfPage(here, clientId)) === undefined) await rememberPage(here, clientId, own);
}

/** The cache of the edition that a page is of, behind `fromServer` where it came from there; undefined if the page was there before the worker. */
export async function editionOfPage(here: Here, clientId: string): Promise<string | undefined> {
  const cache = await here.caches.open(cacheName(here));
  return (await cache.match(pathOf(clientId)))?.text();
}

/** Editions of which a page is open. Pages that were closed are forgotten. */
export async function openEditions(here: Here): Promise<ReadonlySet<string>> {
  const cache = await here.caches.open(cacheName(here));
  const open = new Set<string>();
  for (const { url } of await cache.keys()) {
    const path = new URL(url).pathname;
    const edition = await (await cache.match(path))?.text();
    if (edition !== undefined && (await here.isOpen(decodeURIComponent(path.slice(1))))) open.add(edition.replace(fromServer, ''));
    else await cache.delete(path);
  }
  return open;
}
