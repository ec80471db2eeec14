import { type Answer, openSearcher } from '../search/ask.ts';
import { citationsFile, type SearchIndex } from '../search/records.ts';
import { readData } from './readData.ts';

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

const index = once(() => readData<SearchIndex>('/search/index.json'));
/** Opened at the first letter, not before: the index is the heaviest thing on the site. */
const opened = once(async () => openSearcher(await index()));

export const searchSite = async (question: string): Promise<Answer> => (await opened())(question);
/** The words that things are called by, for who misspells one. */
export const namingWords = async (): Promise<readonly string[]> => (await index()).naming;

const citations = new Map<string, () => Promise<Readonly<Record<string, string>>>>();
/** The whole citation of a source, by its address on this site. */
export async function citationOf(url: string): Promise<string> {
  const file = citationsFile(url);
  const fetchFile = citations.get(file) ?? once(() => readData<Readonly<Record<string, string>>>(`/${file}`));
  citations.set(file, fetchFile);
  return (await fetchFile())[url] ?? '';
}
