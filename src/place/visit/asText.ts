import type { Outgoing } from './audience.ts';
import type { Block, Line } from './blocks.ts';

const lineText = (line: Line): string =>
  line.map(({ text, href }) => (href === undefined || href.startsWith('tel:') ? text : `${text}: ${href}`)).join('');
const blockText = ({ title, text = '', lines, isList }: Block): string =>
  [title.toUpperCase(), ...(text.trim() === '' ? [] : [text.trim()]), ...lines.map((line) => `${isList ? '- ' : ''}${lineText(line)}`)].join('\n');

/** The note as plain text, links written out. */
export const asText = ({ title, blocks }: Outgoing): string => `${title}\n\n${blocks.map(blockText).join('\n\n')}\n`;
