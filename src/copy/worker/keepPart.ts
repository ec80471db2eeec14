import type { CopyPart } from '../copyIndex.ts';
import { editionsHere, markOf, setMark } from './editions.ts';
import { fetchPart } from './fetchPart.ts';
import { type Here, pathIn } from './here.ts';

const markFor = (part: CopyPart): string => part.file.replace(/^.*\//, '');

export const isKept = async (here: Here, cache: Cache, part: CopyPart): Promise<boolean> => (await markOf(here, cache, markFor(part))) !== undefined;

/** Puts a part together from an edition that has the very same one; its name ends in its hash. Says whether that could be done. */
async function takeOver(here: Here, own: string, cache: Cache, part: CopyPart): Promise<boolean> {
  for (const { name } of await editionsHere(here, own)) {
    if (name === own) continue;
    const other = await here.caches.open(name);
    const listed = await markOf(here, other, markFor(part));
    if (listed === undefined) continue;
    const paths: readonly string[] = JSON.parse(listed);
    const found = await Promise.all(paths.map((path) => other.match(pathIn(here, path))));
    const whole = found.filter((each) => each !== undefined);
    if (whole.length < paths.length) continue;
    await Promise.all(whole.map((response, index) => cache.put(pathIn(here, paths[index] ?? ''), response)));
    await setMark(here, cache, markFor(part), listed);
    return true;
  }
  return false;
}

/**
 * Brings a part of an edition into its cache, and marks it once every file of it is there.
 * @throws Error if it does not come or is something else; `QuotaExceededError` if the disk is full
 */
export async function keepPart(here: Here, own: string, cache: Cache, part: CopyPart): Promise<void> {
  if (await takeOver(here, own, cache, part)) return;
  const files = await fetchPart(here, part);
  await Promise.all(
    files.map(({ path, type, content }) =>
      cache.put(
        pathIn(here, path),
        new Response(content, { headers: { 'content-type': type, 'content-length': String(content.length), 'x-content-type-options': 'nosniff' } }),
      ),
    ),
  );
  await setMark(here, cache, markFor(part), JSON.stringify(files.map(({ path }) => path)));
}
