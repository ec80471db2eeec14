import { readdirSync, readFileSync } from 'node:fs';
import { anchorOf, findTerms, type Term, termsIn } from '../guides/glossary.ts';

interface Node {
  readonly type: string;
  readonly tagName?: string;
  readonly value?: string;
  readonly properties?: Readonly<Record<string, unknown>>;
  children?: Node[];
}

/** More would make a text look like a list of footnotes. */
const mostMarks = 12;

/** Running text is a paragraph or a list item; inside it these are left as they are. */
const leftAlone = new Set(['a', 'button', 'code', 'pre', 'table', 'figure', 'summary', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6']);
const isFormula = (node: Node): boolean => /\bkatex\b/.test(String(node.properties?.['className'] ?? ''));
const isPart = (node: Node): boolean => node.type === 'mdxJsxTextElement';

/** Text nodes in reading order, each with the list it stands in. */
function textsOf(tree: Node): readonly { readonly text: Node; readonly list: Node[] }[] {
  const found: { text: Node; list: Node[] }[] = [];
  const walk = (node: Node, running: boolean): void => {
    if (leftAlone.has(node.tagName ?? '') || isFormula(node) || isPart(node) || !node.children) return;
    const runs = running || node.tagName === 'p' || node.tagName === 'li';
    for (const child of node.children) {
      if (child.type === 'text' && runs) found.push({ text: child, list: node.children });
      else walk(child, runs);
    }
  };
  walk(tree, false);
  return found;
}

const element = (tagName: string, properties: Readonly<Record<string, unknown>>, ...children: readonly (Node | string)[]): Node => ({
  type: 'element',
  tagName,
  properties,
  children: children.map((child) => (typeof child === 'string' ? { type: 'text', value: child } : child)),
});

/** The word as a button, and behind it the note that it opens. Both are parts of a sentence, so that they may stand in a paragraph. */
function marked(term: Term, word: string): readonly Node[] {
  const anchor = anchorOf(term);
  return [
    element('button', { type: 'button', className: ['term'], popoverTarget: `term-${anchor}` }, word),
    element(
      'span',
      { id: `term-${anchor}`, className: ['term-note'], popover: 'auto', 'data-not-searched': '' },
      element('b', {}, `${term.term}: ${term.plain}.`),
      ` ${term.says} `,
      element('a', { href: `/glossary/#${anchor}` }, 'All words'),
    ),
  ];
}

/** How many guides use a term. What few use is what a reader stumbles at. */
function spreadOf(folder: string): ReadonlyMap<Term, number> {
  const spread = new Map<Term, number>();
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.mdx'))) {
    for (const term of termsIn(readFileSync(`${folder}/${file}`, 'utf8'))) spread.set(term, (spread.get(term) ?? 0) + 1);
  }
  return spread;
}

const textOf = (node: Node): string => (node.type === 'text' ? (node.value ?? '') : '');

function markFirst(tree: Node, left: Set<Term>): void {
  for (const { text, list } of textsOf(tree)) {
    const value = textOf(text);
    const parts: Node[] = [];
    let done = 0;
    for (const { term, word, at } of findTerms(value)) {
      if (!left.delete(term)) continue;
      const end = at + word.length;
      const closing = /^[^\s\p{L}\p{N}]+/u.exec(value.slice(end))?.[0] ?? '';
      // A line may break behind any button. The stop that ends the sentence must not begin the next line.
      const mark = closing === '' ? marked(term, word) : [element('span', { className: ['term-kept'] }, ...marked(term, word), closing)];
      parts.push({ type: 'text', value: value.slice(done, at) }, ...mark);
      done = end + closing.length;
    }
    if (done > 0) list.splice(list.indexOf(text), 1, ...parts, { type: 'text', value: value.slice(done) });
  }
}

/** Rehype plugin: marks the first use of the rarer trade words in a guide, so that a tap tells what each means. */
export function markTerms({ guides }: { readonly guides: string }) {
  const spread = spreadOf(guides);
  return (tree: Node): void => {
    const used = new Set<Term>();
    for (const { text } of textsOf(tree)) for (const { term } of findTerms(textOf(text))) if (!term.everyday) used.add(term);
    const chosen = new Set([...used].sort((one, other) => (spread.get(one) ?? 0) - (spread.get(other) ?? 0)).slice(0, mostMarks));
    markFirst(tree, chosen);
  };
}
