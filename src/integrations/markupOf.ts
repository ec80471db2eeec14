import { HTMLElement, parse } from 'node-html-parser';
import type { Markup } from '../../calculators/ui/markup.ts';

const partsOf = (element: HTMLElement): readonly Markup[] =>
  element.childNodes.map((node) => (node instanceof HTMLElement ? [node.rawTagName, node.attributes, ...partsOf(node)] : node.text));

/** HTML as data, for `elementsOf` to build in a browser. It has no comments. */
export const markupOf = (html: string): readonly Markup[] => partsOf(parse(html));
