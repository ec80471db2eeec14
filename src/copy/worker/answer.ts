import { editionInUse, editionsHere } from './editions.ts';
import { type Here, pathIn } from './here.ts';
import { editionOfPage, fromServer, rememberPage } from './openPages.ts';

export interface Asked {
  readonly request: Request;
  /** The page that asks. */
  readonly clientId: string;
  /** The page that there will be, where one is opened. */
  readonly resultingClientId: string;
}

/** A file of an edition; a page also by its address without the last slash. */
async function fileOf(here: Here, edition: string | undefined, path: string, isPage = false): Promise<Response | undefined> {
  if (edition === undefined || !(await here.caches.has(edition))) return undefined;
  const cache = await here.caches.open(edition);
  return (await cache.match(path)) ?? (isPage && !path.endsWith('/') ? cache.match(`${path}/`) : undefined);
}

/** A page: of the one edition in use, else from the server, else of what has come of the worker's own edition so far. */
async function page(here: Here, own: string, { request, resultingClientId }: Asked): Promise<Response> {
  const path = new URL(request.url).pathname;
  // Before the page is there, and asks for its parts. A full disk is no reason to keep it from opening.
  const openedFrom = (edition: string): Promise<void> => rememberPage(here, resultingClientId, edition).catch(() => undefined);
  const used = await editionInUse(here, own);
  const edition = used?.name ?? own;
  const kept = used && (await fileOf(here, edition, path, true));
  if (kept !== undefined) {
    await openedFrom(edition);
    return kept;
  }
  try {
    const response = await here.fetch(request);
    await openedFrom(fromServer + own);
    return response;
  } catch (error) {
    await openedFrom(edition);
    const begun = await fileOf(here, edition, path, true);
    if (begun !== undefined) return begun;
    // Only what is whole tells that there is no such page.
    const [instead, status] = used?.standing === 'whole' ? ['404.html', 404] : ['no-signal/', 503];
    const told = await fileOf(here, edition, pathIn(here, instead));
    if (told === undefined) throw error;
    return new Response(told.body, { status, headers: told.headers });
  }
}

/** A part of a page: of the edition that the page is of, so that no page is half old and half new. */
async function part(here: Here, own: string, { request, clientId }: Asked): Promise<Response> {
  const path = new URL(request.url).pathname;
  const edition = await editionOfPage(here, clientId);
  const kept = await fileOf(here, edition ?? (await editionInUse(here, own))?.name, path);
  if (kept !== undefined) return kept;
  // Its name tells its content: whichever edition has it has the same.
  if (path.startsWith(pathIn(here, '_astro/')))
    for (const { name } of await editionsHere(here, own)) {
      const same = await fileOf(here, name, path);
      if (same !== undefined) return same;
    }
  return here.fetch(request);
}

export const answer = (here: Here, own: string, asked: Asked): Promise<Response> =>
  asked.request.mode === 'navigate' ? page(here, own, asked) : part(here, own, asked);
