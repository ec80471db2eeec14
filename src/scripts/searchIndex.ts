import { type Answer, ask, type Index, openSearcher, ranking, type Searcher } from '../search/ask.ts';
import { type Kind, type Line, linesFile } from '../search/records.ts';
import { href } from '../site/href.ts';

interface Opening extends Index {
  readonly destroy: () => Promise<void>;
  readonly options: (options: { readonly baseUrl: string; readonly noWorker: boolean; readonly ranking: typeof ranking }) => Promise<void>;
}

/**
 * What was asked for on this page and did not come. The index's own script keeps to itself that a part of it is missing and finds nothing in
 * it, so its requests are watched: nothing found must not be said where nothing was looked through.
 */
let missing = 0;
const fetchPlainly = globalThis.fetch.bind(globalThis);
globalThis.fetch = async (...asked) => {
  try {
    const response = await fetchPlainly(...asked);
    // A page in place of a part: a host without it, or a network that wants a sign-in first.
    if (!response.ok || response.headers.get('content-type')?.includes('text/html') === true) missing += 1;
    return response;
  } catch (error) {
    missing += 1;
    throw error;
  }
};

/** Fetches once. A failure is not kept: with the signal back, the next letter tries again. */
const once = <T>(fetchIt: () => Promise<T>): (() => Promise<T>) => {
  let begun: Promise<T> | undefined;
  return () => {
    begun ??= fetchIt().catch((error: unknown) => {
      begun = undefined;
      throw error;
    });
    return begun;
  };
};

async function fetched<T>(path: string): Promise<T> {
  const response = await fetch(href(path));
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response.json() as Promise<T>;
}

/** The words that things are called by, for who misspells one. */
export const namingWords = once(() => fetched<readonly string[]>('/pagefind/words.json'));

let tries = 0;
/** Opened at the first letter, not before: the index is the heaviest thing on the site. */
const opened = once(async (): Promise<Searcher> => {
  const before = missing;
  tries += 1;
  // A browser remembers for good that a script did not come; under another name it asks again.
  const index: Opening = await import(/* @vite-ignore */ `${href('/pagefind/pagefind.js')}${tries > 1 ? `#${tries}` : ''}`);
  // A search takes a few milliseconds; its own thread would cost another 12 kB before the first result.
  await index.options({ baseUrl: href('/'), noWorker: true, ranking });
  const searcher = await openSearcher(index, namingWords).catch(async (error: unknown) => {
    await index.destroy();
    throw error;
  });
  if (missing === before) return searcher;
  await index.destroy();
  throw new Error('search: a part of the index did not load');
});

export interface SearchAnswer extends Answer {
  /** A part of the index did not load: there may be more. */
  readonly isPartial: boolean;
}
/** @throws Error if nothing was found because a part of the index did not load */
export async function searchSite(question: string): Promise<SearchAnswer> {
  const searcher = await opened();
  const before = missing;
  const answer = await ask(searcher, question);
  const isPartial = missing > before;
  if (isPartial && answer.hits.length === 0) throw new Error('search: a part of the index did not load');
  return { ...answer, isPartial };
}

const lines = new Map<string, () => Promise<Readonly<Record<string, Line>>>>();
/** What is shown of a find; `path` is that of the index. */
export async function lineOf(kind: Kind, path: string): Promise<Line> {
  const file = linesFile(kind, path);
  const fetchLines = lines.get(file) ?? once(() => fetched<Readonly<Record<string, Line>>>(`/pagefind/lines/${file}.json`));
  lines.set(file, fetchLines);
  return (await fetchLines())[path] ?? { title: path, lead: '' };
}
