import { href } from '../href.ts';
import { type Answer, ask, type Index, openSearcher, ranking, type Searcher } from '../search/ask.ts';
import { type Kind, type Line, linesFile } from '../search/records.ts';

interface Opening extends Index {
  readonly options: (options: { readonly baseUrl: string; readonly noWorker: boolean; readonly ranking: typeof ranking }) => Promise<void>;
}

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

/** Opened at the first letter, not before: the index is the heaviest thing on the site. */
const opened = once(async (): Promise<Searcher> => {
  const index: Opening = await import(/* @vite-ignore */ href('/pagefind/pagefind.js'));
  // A search takes a few milliseconds; its own thread would cost another 12 kB before the first result.
  await index.options({ baseUrl: href('/'), noWorker: true, ranking });
  return openSearcher(index, namingWords);
});

export const searchSite = async (question: string): Promise<Answer> => ask(await opened(), question);

const lines = new Map<string, () => Promise<Readonly<Record<string, Line>>>>();
/** What is shown of a find; `path` is that of the index. */
export async function lineOf(kind: Kind, path: string): Promise<Line> {
  const file = linesFile(kind, path);
  const fetchLines = lines.get(file) ?? once(() => fetched<Readonly<Record<string, Line>>>(`/pagefind/lines/${file}.json`));
  lines.set(file, fetchLines);
  return (await fetchLines())[path] ?? { title: path, lead: '' };
}
