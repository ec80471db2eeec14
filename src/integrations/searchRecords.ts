import { anchorOf, glossary } from '../guides/glossary.ts';
import { isKind, type SearchRecord } from '../search/records.ts';
import { builtFiles, readText } from './builtFiles.ts';

const decoded = (html: string): string =>
  html
    .replaceAll('&#39;', "'")
    .replaceAll('&#x27;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
const plain = (html: string): string =>
  decoded(html.replace(/<[^>]*>/g, ' '))
    .replace(/\s+/g, ' ')
    .trim();

/** A page without the elements that start so: from each opening tag to the end tag that belongs to it. */
function without(html: string, opening: RegExp): string {
  let rest = html;
  for (let start = opening.exec(rest); start; start = opening.exec(rest)) {
    const tags = new RegExp(`<(/?)${start[1]}\\b[^>]*>`, 'g');
    tags.lastIndex = start.index;
    let depth = 0;
    let end = rest.length;
    for (let tag = tags.exec(rest); tag; tag = tags.exec(rest)) {
      depth += tag[1] === '/' ? -1 : 1;
      if (depth > 0) continue;
      end = tags.lastIndex;
      break;
    }
    rest = `${rest.slice(0, start.index)} ${rest.slice(end)}`;
  }
  return rest;
}
/** Forms, folded notes, formulas, citations and lists that only lead elsewhere would find every page for every word. */
const leftOut = [
  /<(\w+)\b[^>]*\sdata-not-searched\b[^>]*>/,
  /<(\w+)\b[^>]*\sclass="(?:katex|cite|references|contents|used|ways|letters|guide-end|reference-files)\b[^>]*>/,
  /<(svg|script|style|noscript)\b[^>]*>/,
];

const attribute = (html: string, name: string): string | undefined => {
  const found = new RegExp(`^<main\\b[^>]*\\sdata-${name}="([^"]*)"`).exec(html)?.[1];
  return found === undefined ? undefined : decoded(found);
};
const required = (text: string | undefined, what: string): string => {
  if (text === undefined || text === '') throw new Error(`search: no ${what}`);
  return text;
};

/** A page cut at the headings that have an anchor; its beginning has no heading. */
const partsOf = (html: string): SearchRecord['parts'] =>
  html.split(/(?=<h2\b[^>]*\sid=")/).map((part) => {
    const [, anchor, title = ''] = /^<h2\b[^>]*\sid="([^"]+)"[^>]*>(.*?)<\/h2>/s.exec(part) ?? [];
    return { anchor, title: plain(title), text: part.replace(/^<h2\b.*?<\/h2>/s, '') };
  });

const cellsOf = (row: string): readonly string[] => [...row.matchAll(/<th\b[^>]*>(.*?)<\/th>/gs)].map(([, cell = '']) => plain(cell));

function recordsOfPage(root: string, file: string): readonly SearchRecord[] {
  const html = readText(root, file);
  const main = /<main\b.*<\/main>/s.exec(html)?.[0] ?? '';
  const kind = attribute(main, 'kind');
  if (!isKind(kind)) return [];
  const url = `/${file.replace(/index\.html$/, '')}`;
  const title = required(plain(/<h1\b[^>]*>(.*?)<\/h1>/s.exec(main)?.[1] ?? ''), `title in ${file}`);
  const question = attribute(main, 'question');
  const body = leftOut.reduce(without, main.replace(/<h1\b.*?<\/h1>/s, ' '));
  const parts = partsOf(body);
  const page: SearchRecord = {
    url,
    kind,
    title,
    lead: required(attribute(main, 'lead'), `lead in ${file}`),
    question,
    words: attribute(main, 'search-words') ?? '',
    names: [title, ...(question === undefined ? [] : [question])],
    // Each word of the trade is a record of its own.
    parts: url === '/glossary/' ? [] : parts.map(({ text, ...part }) => ({ ...part, text: plain(text) })),
  };
  // A published table that a guide shows has a page of its own.
  const tables = parts.flatMap(({ anchor, title: heading, text }) =>
    anchor === undefined
      ? []
      : [...text.matchAll(/<table\b(?![^>]*\breference-table\b).*?<\/table>/gs)]
          .slice(0, 1)
          .map(
            ([table]): SearchRecord => ({
              url: `${url}#${anchor}`,
              kind: 'table',
              title: `${title}: ${heading}`,
              names: [`${title}: ${heading}`],
              lead: cellsOf(table).join(', '),
              words: '',
              parts: [{ title: '', text: plain(table) }],
            }),
          ),
  );
  return kind === 'guide' ? [page, ...tables] : [page];
}

const termRecords = (): readonly SearchRecord[] =>
  glossary.map((term) => ({
    url: `/glossary/#${anchorOf(term)}`,
    kind: 'term',
    title: term.term,
    lead: `${term.plain.charAt(0).toUpperCase()}${term.plain.slice(1)}. ${term.says}`,
    words: term.forms.join('. '),
    names: [term.term, ...term.forms],
    parts: [{ title: '', text: `${term.plain}. ${term.says}` }],
  }));

/** Each entry of the page of sources is found by who wrote it, the year and its key: whole citations would be a third of the index. The page writes an entry as one list item, the citation first. */
const sourceRecords = (root: string): readonly SearchRecord[] =>
  [...readText(root, 'sources/index.html').matchAll(/<li id="([^"]+)" data-source="([^"]*)">(.*?)<\/li>/gs)].map(
    ([, key = '', title = '', entry = '']) => {
      const citation = plain(entry.replace(/<a\b.*/s, '').replace(/<\/p>.*/s, ''));
      return { url: `/sources/#${key}`, kind: 'source', title: decoded(title), lead: citation, words: key, parts: [] };
    },
  );

/** Everything that the search of a built site finds. */
export const searchRecords = (root: string): readonly SearchRecord[] => [
  ...builtFiles(root)
    .filter((file) => /(^|\/)index\.html$/.test(file))
    .flatMap((file) => recordsOfPage(root, file)),
  ...termRecords(),
  ...sourceRecords(root),
];
