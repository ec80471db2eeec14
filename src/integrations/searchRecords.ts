import { HTMLElement, type Node } from 'node-html-parser';
import { anchorOf, glossary } from '../guides/glossary.ts';
import { isKind, type SearchRecord } from '../search/records.ts';

/** Forms, folded notes, formulas, citations and lists that only lead elsewhere would find every page for every word. */
const leftOut =
  '[data-not-searched], .katex, .cite, .references, .contents, .used, .letters, .guide-end, .reference-files, svg, script, style, noscript';

/** The pieces of text under some nodes, in reading order. */
const piecesOf = (nodes: readonly Node[]): readonly string[] =>
  nodes.flatMap((node) => (node instanceof HTMLElement ? piecesOf(node.childNodes) : [node.text]));
const textOf = (...nodes: readonly Node[]): string => piecesOf(nodes).join(' ').replace(/\s+/g, ' ').trim();

const required = (text: string | undefined, what: string): string => {
  if (text === undefined || text === '') throw new Error(`search: no ${what}`);
  return text;
};

interface Part {
  readonly anchor?: string | undefined;
  readonly title: string;
  readonly texts: Node[];
  readonly tables: HTMLElement[];
}
/** A page cut at the headings that have an anchor; its beginning has no heading. */
function partsOf(main: HTMLElement): readonly Part[] {
  const parts: [Part, ...Part[]] = [{ title: '', texts: [], tables: [] }];
  const walk = (node: Node): void => {
    const part = parts.at(-1) ?? parts[0];
    if (!(node instanceof HTMLElement)) part.texts.push(node);
    else if (node.tagName === 'H2' && node.id !== '') parts.push({ anchor: node.id, title: textOf(node), texts: [], tables: [] });
    else {
      if (node.tagName === 'TABLE') part.tables.push(node);
      node.childNodes.forEach(walk);
    }
  };
  main.childNodes.forEach(walk);
  return parts;
}

/** A published table has a page of its own; a guide's own tables are found where they stand, one for each heading. */
const tablesOf = (url: string, title: string, parts: readonly Part[]): readonly SearchRecord[] =>
  parts.flatMap(({ anchor, title: heading, tables }) => {
    const table = tables.find(({ classList }) => !classList.contains('reference-table'));
    if (anchor === undefined || !table) return [];
    const name = `${title}: ${heading}`;
    return [
      {
        url: `${url}#${anchor}`,
        kind: 'table',
        title: name,
        names: [name],
        lead: table
          .querySelectorAll('th')
          .map((cell) => textOf(cell))
          .join(', '),
        words: [],
        parts: [{ title: '', text: textOf(table) }],
      } as const,
    ];
  });

const addressOf = (file: string): string => `/${file.replace(/index\.html$/, '')}`;

type Pages = ReadonlyMap<string, HTMLElement>;
/** A calculator's page holds little of its form; its working's page names all that the form asks, and what can be chosen there. */
const choicesOf = (file: string, pages: Pages): string =>
  required(
    pages.get(file.replace('index.html', 'working/index.html'))?.querySelector('[data-choices]')?.getAttribute('data-choices'),
    `choices for ${file}`,
  );

/** Takes out of the page what is not to be searched. */
function recordsOfPage(file: string, read: HTMLElement, pages: Pages): readonly SearchRecord[] {
  const main = read.querySelector('main');
  const kind = main?.getAttribute('data-kind');
  if (!main || !isKind(kind)) return [];
  const head = main.querySelector('h1');
  const url = addressOf(file);
  // A calculator's heading is its question.
  const title = required(main.getAttribute('data-title') ?? (head ? textOf(head) : undefined), `title in ${file}`);
  const question = main.getAttribute('data-question');
  for (const element of [...main.querySelectorAll(leftOut), ...(head ? [head] : [])]) element.remove();
  const parts = partsOf(main);
  const page: SearchRecord = {
    url,
    kind,
    title,
    lead: required(main.getAttribute('data-lead'), `lead in ${file}`),
    question,
    words: (main.getAttribute('data-search-words') ?? '').split('. '),
    names: [title, ...(question === undefined ? [] : [question])],
    // Each word of the trade is a record of its own.
    choices: kind === 'calculator' ? choicesOf(file, pages) : '',
    parts: url === '/glossary/' ? [] : parts.map(({ anchor, title: heading, texts }) => ({ anchor, title: heading, text: textOf(...texts) })),
  };
  return kind === 'guide' ? [page, ...tablesOf(url, title, parts)] : [page];
}

const termRecords = (): readonly SearchRecord[] =>
  glossary.map((term) => ({
    url: `/glossary/#${anchorOf(term)}`,
    kind: 'term',
    title: term.term,
    lead: `${term.plain.charAt(0).toUpperCase()}${term.plain.slice(1)}. ${term.says}`,
    words: term.forms,
    names: [term.term, ...term.forms],
    parts: [],
  }));

/** Each entry of a page of sources is found by who wrote it, the year and its key: whole citations would be a third of the index. The page writes an entry as one list item, the citation first. */
const sourceRecords = (file: string, page: HTMLElement): readonly SearchRecord[] =>
  page.querySelectorAll('li[data-source]').map((entry) => {
    const pieces = entry.querySelector('p')?.childNodes ?? [];
    const address = pieces.findIndex((node) => node instanceof HTMLElement && node.tagName === 'A');
    return {
      url: `${addressOf(file)}#${entry.id}`,
      kind: 'source',
      title: required(entry.getAttribute('data-source'), `title of source ${entry.id}`),
      lead: textOf(...(address < 0 ? pieces : pieces.slice(0, address))),
      words: [entry.id],
      names: [],
      parts: [],
    };
  });

/** Everything that the search of a built site finds; sources come last. */
export function searchRecords(pages: Pages): readonly SearchRecord[] {
  // Before the pages are stripped of what is not searched.
  const sources = [...pages].flatMap(([file, page]) => (file.startsWith('sources/') ? sourceRecords(file, page) : []));
  const found = [...pages].filter(([file]) => /(^|\/)index\.html$/.test(file)).flatMap(([file, page]) => recordsOfPage(file, page, pages));
  return [...found, ...termRecords(), ...sources];
}
