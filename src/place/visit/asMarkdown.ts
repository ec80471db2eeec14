import type { ListItem, PhrasingContent, Root, RootContent } from 'mdast';
import { toMarkdown } from 'mdast-util-to-markdown';
import type { Outgoing } from './audience.ts';
import type { Block, Line } from './blocks.ts';
import { sectionsOf } from './sections.ts';

const runsOf = (line: Line): PhrasingContent[] =>
  line
    .filter(({ text }) => text !== '')
    .map(({ text, href, isStrong }): PhrasingContent => {
      const words: PhrasingContent = { type: 'text', value: text };
      if (href !== undefined) return { type: 'link', url: href, children: [words] };
      // Stars must stand against words: a blank inside them would leave them as they are.
      const [, before = '', inner = '', after = ''] = /^(\s*)([\s\S]*?)(\s*)$/.exec(text) ?? [];
      return isStrong === true && before === '' && after === '' && inner !== '' ? { type: 'strong', children: [words] } : words;
    });
const paragraph = (line: Line): RootContent => ({ type: 'paragraph', children: runsOf(line) });
const headed = (depth: 1 | 2 | 3, value: string): RootContent => ({ type: 'heading', depth, children: [{ type: 'text', value }] });
function blockNodes(depth: 2 | 3, { title, text = '', lines, isList }: Block): RootContent[] {
  const words = text
    .split(/\n+/)
    .map((each) => each.trim())
    .filter((each) => each !== '');
  const item = (line: Line): ListItem => ({ type: 'listItem', spread: false, children: [{ type: 'paragraph', children: runsOf(line) }] });
  return [
    headed(depth, title),
    ...words.map((each): RootContent => ({ type: 'paragraph', children: [{ type: 'text', value: each }] })),
    ...(isList && lines.length > 0 ? [{ type: 'list' as const, ordered: false, spread: false, children: lines.map(item) }] : lines.map(paragraph)),
  ];
}
/** The note as the tree that Markdown is written from. */
export const markdownTree = ({ title, blocks }: Outgoing): Root => ({
  type: 'root',
  children: [
    headed(1, title),
    ...sectionsOf(blocks).flatMap(({ heading, parts }) =>
      heading === undefined
        ? parts.flatMap((block) => blockNodes(2, block))
        : [headed(2, heading), ...parts.flatMap((block) => blockNodes(3, block))],
    ),
  ],
});
export const asMarkdown = (note: Outgoing): string => toMarkdown(markdownTree(note), { bullet: '-', emphasis: '*', listItemIndent: 'one' });
