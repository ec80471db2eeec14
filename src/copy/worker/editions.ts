import type { Opening, Standing } from '../copyState.ts';
import { folderPath, type Here, pathIn } from './here.ts';

// Each edition has a cache of its own, with marks in it that say what of it is here for certain.

const family = (here: Here): string => `holdwater ${folderPath(here)} `;
export const cacheNameOf = (here: Here, edition: string): string => `${family(here)}${edition}`;

const markPath = (here: Here, mark: string): string => pathIn(here, `copy/mark/${mark}`);
export const markOf = async (here: Here, cache: Cache, mark: string): Promise<string | undefined> =>
  (await cache.match(markPath(here, mark)))?.text();
/** Says of an edition what is true of it from now on. */
export async function setMark(here: Here, cache: Cache, mark: string, text = ''): Promise<void> {
  if ((await markOf(here, cache, mark)) === undefined) await cache.put(markPath(here, mark), new Response(text));
}

async function standingOf(here: Here, name: string): Promise<Standing> {
  const cache = await here.caches.open(name);
  if ((await markOf(here, cache, 'whole')) !== undefined) return 'whole';
  return (await markOf(here, cache, 'core')) === undefined ? 'begun' : 'core';
}

/** The caches of all editions on this device. That of the worker's own is the newest; the others stand in the order in which they came. */
export async function editionsHere(here: Here, own: string): Promise<readonly { readonly name: string; readonly standing: Standing }[]> {
  const names = (await here.caches.keys()).filter((name) => name.startsWith(family(here)));
  const newestFirst = [...names.filter((name) => name === own), ...names.filter((name) => name !== own).reverse()];
  return Promise.all(newestFirst.map(async (name) => ({ name, standing: await standingOf(here, name) })));
}

/** The cache of the one edition whose pages open: the newest that is whole; while there is none, the newest of which the core is here. */
export async function editionInUse(here: Here, own: string): Promise<{ readonly name: string; readonly standing: Opening } | undefined> {
  const editions = await editionsHere(here, own);
  for (const standing of ['whole', 'core'] as const) {
    const found = editions.find((edition) => edition.standing === standing);
    if (found !== undefined) return { name: found.name, standing };
  }
  return undefined;
}

/** What is older than the last whole edition goes, unless a page of it is still open and may ask for its parts. */
export async function dropOlder(here: Here, own: string, openOnes: ReadonlySet<string>): Promise<void> {
  const editions = await editionsHere(here, own);
  const whole = editions.findIndex(({ standing }) => standing === 'whole');
  const older = whole < 0 ? [] : editions.slice(whole + 1).filter(({ name }) => !openOnes.has(name));
  await Promise.all(older.map(({ name }) => here.caches.delete(name)));
}
