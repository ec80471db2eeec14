import { folderPath, type Here, pathIn } from './here.ts';

// The office's file outlives every edition: it is changed by putting another in its place.

const cacheName = (here: Here): string => `holdwater-office ${folderPath(here)}`;
export const officePath = (here: Here): string => pathIn(here, 'office.css');

/** A page that came by way of a redirect may not answer for an address; its content may. */
const withoutRedirect = (response: Response): Response =>
  response.redirected ? new Response(response.body, { headers: response.headers }) : response;

/** What the network says of it. A page that stands in its place, of a network that wants a name first, is no such file. */
export async function askOffice(here: Here): Promise<Response> {
  const path = officePath(here);
  const response = await here.fetch(new Request(new URL(path, here.folder), { cache: 'no-cache' }));
  const cache = await here.caches.open(cacheName(here));
  const isSheet = response.headers.get('content-type')?.includes('css') === true;
  if (response.ok && isSheet) await cache.put(path, withoutRedirect(response.clone()));
  else if (response.status === 404 || response.status === 410) await cache.delete(path);
  return response;
}

/** The last one at once, and the network behind it: a new one holds from the next page on. */
export async function office(here: Here, later: (work: Promise<unknown>) => void): Promise<Response> {
  const last = await (await here.caches.open(cacheName(here))).match(officePath(here));
  if (last === undefined) return askOffice(here);
  later(askOffice(here).catch(() => undefined));
  return last;
}
