/** Values of one attribute of a component, in the order in which they come. */
export const attributesIn = (text: string, component: string, attribute: string): readonly string[] =>
  [...text.matchAll(new RegExp(`<${component}\\s[^>]*?\\b${attribute}="([^"]+)"`, 'g'))].map((found) => found[1] ?? '');

export interface Block {
  readonly kind: 'paragraph' | 'item' | 'row' | 'heading';
  /** As written, with `{{Cite}}` and the like where a component stands. */
  readonly text: string;
  /** What stands right above the list or table that this block is part of. */
  readonly above: string;
  /** Of a table row: whether a cell of the column headed "Source" has something in it. */
  readonly hasSourceCell: boolean;
}

/** Components shrunk to `{{Name}}`, a figure of a table without its source to `{{BareTabled}}`; containers, drawings and formulas taken out, what a caution says kept. */
const withoutMarkup = (body: string): string =>
  body
    .replaceAll(/<svg[\s\S]*?<\/svg>/g, '')
    .replaceAll(/\$\$[\s\S]*?\$\$/g, '')
    .replaceAll(/<Tabled\b[^>]*\bisBare\b[^>]*\/>/g, '{{BareTabled}}')
    .replaceAll(/<([A-Z]\w*)\b[^>]*?\/>/g, '{{$1}}')
    .replaceAll(/<\/?[A-Za-z][^>]*>/g, '\n\n')
    .replaceAll(/\{\/\*[\s\S]*?\*\/\}/g, '');

const cellsOf = (row: string): readonly string[] =>
  row
    .split(/(?<!\\)\|/)
    .slice(1, -1)
    .map((cell) => cell.trim());

function tableBlocks(rows: readonly string[], above: string): readonly Block[] {
  const [head = '', , ...body] = rows;
  const sourceColumn = cellsOf(head).findIndex((cell) => /^sources?$/i.test(cell));
  return body.map((text) => ({ kind: 'row', text, above, hasSourceCell: sourceColumn >= 0 && (cellsOf(text)[sourceColumn] ?? '') !== '' }));
}

const itemStart = /^\s*(?:[-*]|\d+\.)\s+/;

/** The text of a guide in the pieces that must each carry their own source. */
export function blocksOf(body: string): readonly Block[] {
  const blocks: Block[] = [];
  let above = '';
  for (const chunk of withoutMarkup(body).split(/\n\s*\n/)) {
    const lines = chunk.split('\n').filter((line) => line.trim() !== '');
    const [first] = lines;
    if (first === undefined) continue;
    if (first.startsWith('#')) {
      blocks.push({ kind: 'heading', text: chunk.trim(), above: '', hasSourceCell: false });
      above = '';
    } else if (first.startsWith('|')) {
      blocks.push(...tableBlocks(lines, above));
    } else if (itemStart.test(first)) {
      const items = chunk.split(/\n(?=\s*(?:[-*]|\d+\.)\s)/);
      for (const item of items) blocks.push({ kind: 'item', text: item.replace(itemStart, '').trim(), above, hasSourceCell: false });
    } else {
      above = chunk.trim();
      blocks.push({ kind: 'paragraph', text: above, above: '', hasSourceCell: false });
    }
  }
  return blocks;
}

/** What is read aloud of a block: without components, addresses and marks; a computed figure counts as one short number. */
export const spoken = (text: string): string =>
  text
    .replaceAll('{{Computed}}', '12 days')
    .replaceAll('{{Tabled}}', '12 inches')
    .replaceAll('{{BareTabled}}', '12')
    .replaceAll(/\s*\{\{\w+\}\},?/g, '')
    .replaceAll(/(?<!\\)\$[^$\n]+(?<!\\)\$/g, 'x')
    .replaceAll(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replaceAll(/[*_`\\]/g, '')
    .replaceAll(/\s*\((?:common practice|from memory)\)/g, '')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/ (?=[.,;:])/g, '')
    .trim();
