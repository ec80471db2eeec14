import type { Outgoing } from './audience.ts';
import type { Block, Line } from './blocks.ts';

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
function blockInto(article: HTMLElement, { title, text = '', lines, isList }: Block, make: Make): void {
  const heading = make.createElement('h2');
  heading.append(make.createTextNode(title));
  article.append(heading);
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
  const heading = make.createElement('h1');
  heading.append(make.createTextNode(title));
  article.append(heading);
  for (const block of blocks) blockInto(article, block, make);
  return article;
}
