import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { vi } from 'vitest';
import { ask, type Index, openSearcher, ranking } from '../../src/search/ask.ts';

/** Asks the index of a built site as the page of search does; answers with the addresses found, best first, without outer slashes. */
export async function openBuiltSearch(folder: string): Promise<(question: string, most: number) => Promise<readonly string[]>> {
  const read = (path: string): Buffer => readFileSync(join(folder, path));
  // The index's script is made for a browser: it fetches its parts and looks for the page's language.
  vi.stubGlobal('fetch', async (url: string) => new Response(new Uint8Array(read(url.replace(/\?.*/, '')))));
  vi.stubGlobal('document', { querySelector: () => null });
  vi.stubGlobal('window', globalThis);
  vi.stubGlobal('location', new URL('http://127.0.0.1/'));
  const index: Index & { readonly options: (options: object) => Promise<void> } = await import(
    /* @vite-ignore */ pathToFileURL(join(folder, 'pagefind/pagefind.js')).href
  );
  await index.options({ baseUrl: '/', basePath: '/pagefind/', noWorker: true, ranking });
  const searcher = await openSearcher(index, async () => JSON.parse(read('pagefind/words.json').toString()));
  return async (question, most) => {
    const { hits } = await ask(searcher, question);
    return Promise.all(hits.slice(0, most).map(async ({ hit }) => (await hit.data()).raw_url.replace(/^\/|\/(?=#|$)/g, '')));
  };
}
