import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as pagefind from 'pagefind';
import { type Line, linesFile, type SearchRecord } from '../search/records.ts';
import { canonicalWords, tellingWords, wholeName } from '../search/words.ts';
import { builtFiles } from './builtFiles.ts';
import { searchRecords } from './searchRecords.ts';

/** A word of the running text leads to the records that use it most. Leading to all that ever use it would tell none of them apart and make the index twice as heavy. */
const mostRecordsOfWord = 2;

/** A place on a page is short enough to be kept whole: it has no other words to be found by. */
const isShort = ({ url }: SearchRecord): boolean => url.includes('#');

/** For each record the words of its running text that lead to it. */
function leadingWords(records: readonly SearchRecord[]): ReadonlyMap<SearchRecord, ReadonlySet<string>> {
  const words = new Map(records.map((record) => [record, new Set<string>()]));
  const uses = records
    .filter((record) => !isShort(record))
    .flatMap((record) => {
      const all = record.parts.flatMap(({ text }) => canonicalWords(text));
      return [...Map.groupBy(all, (word) => word)].map(([word, { length: count }]) => ({ record, word, count }));
    });
  for (const [word, users] of Map.groupBy(uses, (use) => use.word)) {
    for (const { record } of users.toSorted((one, other) => other.count - one.count).slice(0, mostRecordsOfWord)) words.get(record)?.add(word);
  }
  return words;
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
const weighed = (weight: number, words: readonly string[]): string =>
  words.length > 0 ? `<p data-pagefind-weight="${weight}">${escaped(words.join(' '))}</p>` : '';

/** A record as the index takes it: its names in full, its running text as bare words, each once. */
function pageOf(record: SearchRecord, leading: ReadonlySet<string> = new Set()): string {
  const { kind, title, lead, question = '', words, names = [], parts } = record;
  const told = new Set(canonicalWords([title, question, words].join('. ')));
  const leadWords = kind === 'source' ? [] : tellingWords(lead).filter((word) => !told.has(word));
  for (const word of leadWords) told.add(word);
  const sections = parts.map(({ anchor, title: heading, text }) => {
    const fresh = tellingWords(text).filter((word) => (isShort(record) || leading.has(word)) && !told.has(word));
    for (const word of fresh) told.add(word);
    // A link into the page is called by the heading as it reads; what it is also called by comes after.
    const read = new Set(heading.toLowerCase().split(/[^\p{L}\p{N}]+/u));
    const others = canonicalWords(heading).filter((word) => !read.has(word));
    const head = anchor === undefined ? '' : `<h2 id="${anchor}" data-pagefind-weight="4">${escaped(heading)}</h2>`;
    return `${head}${weighed(4, others)}<p>${escaped(fresh.join(' '))}</p>`;
  });
  return [
    '<!doctype html><html lang="en"><body data-pagefind-body>',
    `<i data-pagefind-filter="kind[data-is]" data-is="${kind}"></i>`,
    weighed(10, canonicalWords(title)),
    weighed(8, canonicalWords(`${question}. ${words}`)),
    weighed(1, [...new Set(names.map(wholeName))]),
    weighed(3, leadWords),
    ...sections,
    '</body></html>',
  ].join('\n');
}

/** The words that things are called by: what a misspelled word is held against. */
const namingWords = (records: readonly SearchRecord[]): readonly string[] => {
  const names = records
    .filter(({ kind }) => kind !== 'source')
    .flatMap(({ title, question = '', words, parts }) => [title, question, words, ...parts.map((part) => part.title)]);
  return [...new Set(tellingWords(names.join('. ')))].sort();
};

/** What stands in a line of the results, apart from the index: it would index these texts a second time. */
function writeLines(folder: string, records: readonly SearchRecord[]): void {
  mkdirSync(folder);
  for (const [name, group] of Map.groupBy(records, ({ kind, url }) => linesFile(kind, url))) {
    const lines = group.map(({ url, title, lead, question }): readonly [string, Line] => [
      url,
      question === undefined ? { title, lead } : { title, lead, question },
    ]);
    writeFileSync(join(folder, `${name}.json`), JSON.stringify(Object.fromEntries(lines)));
  }
}

/** Writes the search index into the built site; returns the number of entries. */
export async function indexPages(root: string): Promise<number> {
  const { index, errors } = await pagefind.createIndex({ forceLanguage: 'en' });
  if (!index) throw new Error(errors.join('\n'));
  const records = searchRecords(root);
  const leading = leadingWords(records);
  const problems: string[] = [];
  for (const record of records) problems.push(...(await index.addHTMLFile({ url: record.url, content: pageOf(record, leading.get(record)) })).errors);
  if (problems.length > 0) throw new Error(problems.join('\n'));
  await index.writeFiles({ outputPath: join(root, 'pagefind') });
  await pagefind.close();
  writeLines(join(root, 'pagefind/lines'), records);
  writeFileSync(join(root, 'pagefind/words.json'), JSON.stringify(namingWords(records)));
  // Search screens that it brings along, a second thread that we do without, and a reader for languages that this site is not written in.
  for (const file of builtFiles(root)) {
    if (/^pagefind\/(pagefind-(ui|modular-ui|component-ui|highlight|worker)\.(js|css)|wasm\.unknown\.pagefind)$/.test(file)) rmSync(join(root, file));
  }
  return records.length;
}
