import type { Outgoing } from './audience.ts';
import type { Block, Line } from './blocks.ts';
import { sectionsOf } from './sections.ts';

// Built by calls, never from text: what somebody typed can be nothing but text here. Neither script nor style sheet.

type Make = Pick<Document, 'createElement' | 'createTextNode'>;

function lineInto(parent: HTMLElement, line: Line, make: Make): void {
  for (const { text, href, isStrong } of line) {
    const words = make.createTextNode(text);
    if (href === undefined && isStrong !== true) {
      parent.append(words);
      continue;
    }
    const around = make.createElement(href === undefined ? 'strong' : 'a');
    if (href !== undefined) around.setAttribute('href', href);
    around.append(words);
    parent.append(around);
  }
}
function headingInto(parent: HTMLElement, level: 'h1' | 'h2' | 'h3', words: string, make: Make): void {
  const heading = make.createElement(level);
  heading.append(make.createTextNode(words));
  parent.append(heading);
}
function blockInto(article: HTMLElement, level: 'h2' | 'h3', { title, text = '', lines, isList }: Block, make: Make): void {
  headingInto(article, level, title, make);
  for (const each of text.split(/\n+/).filter((line) => line.trim() !== '')) {
    const paragraph = make.createElement('p');
    paragraph.append(make.createTextNode(each.trim()));
    article.append(paragraph);
  }
  if (lines.length === 0) return;
  const list = isList ? make.createElement('ul') : article;
  for (const line of lines) {
    const item = make.createElement(isList ? 'li' : 'p');
    lineInto(item, line, make);
    list.append(item);
  }
  if (isList) article.append(list);
}

/** The note as it is pasted into a message: headings, lists, links. */
export function asHtml({ title, blocks }: Outgoing, make: Make): HTMLElement {
  const article = make.createElement('article');
  headingInto(article, 'h1', title, make);
  for (const { heading, parts } of sectionsOf(blocks)) {
    if (heading !== undefined) headingInto(article, 'h2', heading, make);
    for (const block of parts) blockInto(article, heading === undefined ? 'h2' : 'h3', block, make);
  }
  return article;
}
