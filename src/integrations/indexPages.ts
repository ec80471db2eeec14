import { rmSync } from 'node:fs';
import { join } from 'node:path';
import * as pagefind from 'pagefind';
import { builtFiles, readText } from './builtFiles.ts';

const plain = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ')
    .trim();

/** Each entry of the page of sources is found by its citation. The page writes an entry as one list item, the citation first. */
const sourceRecords = (root: string) =>
  [...readText(root, 'sources/index.html').matchAll(/<li id="([^"]+)" data-source="([^"]*)">(.*?)<\/li>/gs)].map(
    ([, key = '', title = '', entry = '']) => ({
      url: `/sources/#${key}`,
      content: plain(entry.replace(/<a\b.*/s, '').replace(/<\/p>.*/s, '')),
      language: 'en',
      meta: { title: plain(title), kind: 'source' },
      filters: { kind: ['source'] },
    }),
  );

/** Writes the search index into the built site; returns the number of entries. */
export async function indexPages(root: string): Promise<number> {
  const { index, errors } = await pagefind.createIndex({ excludeSelectors: ['.katex', '.no-search', '.cite', '.references'], forceLanguage: 'en' });
  if (!index) throw new Error(errors.join('\n'));
  const added = await index.addDirectory({ path: root });
  const records = sourceRecords(root);
  const problems = [...added.errors];
  for (const record of records) problems.push(...(await index.addCustomRecord(record)).errors);
  if (problems.length > 0) throw new Error(problems.join('\n'));
  await index.writeFiles({ outputPath: join(root, 'pagefind') });
  await pagefind.close();
  // Search screens that it brings along, a second thread that we do without, and a reader for languages that this site is not written in.
  for (const file of builtFiles(root)) {
    if (/^pagefind\/(pagefind-(ui|modular-ui|component-ui|highlight|worker)\.(js|css)|wasm\.unknown\.pagefind)$/.test(file)) rmSync(join(root, file));
  }
  return records.length + added.page_count;
}
