import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as pagefind from 'pagefind';
import { type Kind, kindNames, type Line, type SearchRecord } from '../search/records.ts';
import { canonicalWords, tellingWords, wholeName } from '../search/words.ts';
import { builtFiles } from './builtFiles.ts';
import { searchRecords } from './searchRecords.ts';

/** A word in the running text of more records than this tells none of them apart; leaving it out makes the index half as heavy. */
const mostRecordsOfWord = { source: 8, other: 6 } as const;

const groupOf = ({ kind }: SearchRecord): keyof typeof mostRecordsOfWord => (kind === 'source' ? kind : 'other');
/** Short enough to be kept whole: they have no other words to be found by. */
const isShort = ({ kind }: SearchRecord): boolean => kind === 'term' || kind === 'table';

function rareWords(records: readonly SearchRecord[]): (record: SearchRecord, word: string) => boolean {
  const counts = new Map<string, number>();
  const keyOf = (record: SearchRecord, word: string): string => `${groupOf(record)} ${word}`;
  for (const record of records.filter((each) => !isShort(each))) {
    const words = new Set(record.parts.flatMap(({ text }) => tellingWords(text)));
    for (const word of words) counts.set(keyOf(record, word), (counts.get(keyOf(record, word)) ?? 0) + 1);
  }
  return (record, word) => isShort(record) || (counts.get(keyOf(record, word)) ?? 0) <= mostRecordsOfWord[groupOf(record)];
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
const weighed = (weight: number, words: readonly string[]): string =>
  words.length > 0 ? `<p data-pagefind-weight="${weight}">${escaped(words.join(' '))}</p>` : '';

/** A record as the index takes it: its names in full, its running text as bare words, each once. */
function pageOf(record: SearchRecord, isRare: (record: SearchRecord, word: string) => boolean): string {
  const { kind, title, lead, question = '', words, names = [], parts } = record;
  const told = new Set<string>();
  const sections = parts.map(({ anchor, title: heading, text }) => {
    const fresh = tellingWords(text).filter((word) => isRare(record, word) && !told.has(word));
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
    kind === 'source' ? '' : weighed(3, tellingWords(lead)),
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
const linesOf = (records: readonly SearchRecord[], kind: Kind): Readonly<Record<string, Line>> =>
  Object.fromEntries(
    records
      .filter((record) => record.kind === kind)
      .map(({ url, title, lead, question }) => [url, question === undefined ? { title, lead } : { title, lead, question }]),
  );

/** Writes the search index into the built site; returns the number of entries. */
export async function indexPages(root: string): Promise<number> {
  const { index, errors } = await pagefind.createIndex({ forceLanguage: 'en' });
  if (!index) throw new Error(errors.join('\n'));
  const records = searchRecords(root);
  const isRare = rareWords(records);
  const problems: string[] = [];
  for (const record of records) problems.push(...(await index.addHTMLFile({ url: record.url, content: pageOf(record, isRare) })).errors);
  if (problems.length > 0) throw new Error(problems.join('\n'));
  await index.writeFiles({ outputPath: join(root, 'pagefind') });
  await pagefind.close();
  mkdirSync(join(root, 'pagefind/lines'));
  for (const kind of Object.keys(kindNames) as readonly Kind[])
    writeFileSync(join(root, `pagefind/lines/${kind}.json`), JSON.stringify(linesOf(records, kind)));
  writeFileSync(join(root, 'pagefind/words.json'), JSON.stringify(namingWords(records)));
  // Search screens that it brings along, a second thread that we do without, and a reader for languages that this site is not written in.
  for (const file of builtFiles(root)) {
    if (/^pagefind\/(pagefind-(ui|modular-ui|component-ui|highlight|worker)\.(js|css)|wasm\.unknown\.pagefind)$/.test(file)) rmSync(join(root, file));
  }
  return records.length;
}
