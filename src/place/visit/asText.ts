import type { Outgoing } from './audience.ts';
import type { Block, Line } from './blocks.ts';
import { sectionsOf } from './sections.ts';

const lineText = (line: Line): string =>
  line.map(({ text, href }) => (href === undefined || href.startsWith('tel:') ? text : `${text}: ${href}`)).join('');
const blockText = ({ title, text = '', lines, isList }: Block): string =>
  [title, ...(text.trim() === '' ? [] : [text.trim()]), ...lines.map((line) => `${isList ? '- ' : ''}${lineText(line)}`)].join('\n');

/** The note as plain text, links written out. */
export const asText = ({ title, blocks }: Outgoing): string =>
  `${title}\n\n${sectionsOf(blocks)
    .map(({ heading, parts }) =>
      heading === undefined
        ? parts.map((block) => blockText({ ...block, title: block.title.toUpperCase() })).join('\n\n')
        : [heading.toUpperCase(), ...parts.map(blockText)].join('\n\n'),
    )
    .join('\n\n')}\n`;
