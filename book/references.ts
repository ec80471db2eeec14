import type { HTMLElement } from 'node-html-parser';
import { type Chapter, idOf } from './contents.ts';

/** Names of places in the book: the chapter, and with two hyphens a place in it. */
export const anchorOf = (chapter: string, place: string): string => (place === '' ? chapter : `${chapter}--${place}`);

/** What the foot of a page needs to tell: where a link leads to in the book, `undefined` where its page is not in it. */
export function targetOf(address: string, from: Chapter, chapters: ReadonlySet<string>): string | undefined {
  const [, path = '', place = ''] = /^([^?#]*)(?:\?[^#]*)?(?:#(.*))?$/.exec(address) ?? [];
  if (path === '') return anchorOf(from.id, place);
  const id = idOf(path.replace(/working\/$|(?<=^\/sources\/)[a-z]+\/$/, ''));
  return chapters.has(id) ? anchorOf(id, place) : undefined;
}

/** Lists in the order of the alphabet are found without a page. */
const isAlphabetical = (target: string): boolean => /^(?:glossary|sources)(?:--|$)/.test(target);

/**
 * Leads the links of a chapter through the book. `linkTo` says how a place is written where the book is read: `#place` in one long text. With
 * `withPages` each link is followed by room for its page, but not where the alphabet leads. Links to pages that are only on the site keep their words and say so.
 */
export function leadLinks(
  main: HTMLElement,
  from: Chapter,
  chapters: ReadonlySet<string>,
  linkTo: (target: string) => string,
  withPages: boolean,
): readonly string[] {
  for (const each of main.querySelectorAll('[id]')) each.setAttribute('id', anchorOf(from.id, each.id));
  for (const each of main.querySelectorAll('[aria-labelledby]')) {
    each.setAttribute('aria-labelledby', anchorOf(from.id, each.getAttribute('aria-labelledby') ?? ''));
  }
  const targets: string[] = [];
  for (const link of main.querySelectorAll('a[href]')) {
    const address = link.getAttribute('href') ?? '';
    if (/^(?:https?|tel|sms|mailto):/.test(address)) {
      // Written as an address has to be: a sign that browsers forgive is an error in a book.
      link.setAttribute('href', new URL(address.replaceAll('&amp;', '&')).href);
      continue;
    }
    const target = targetOf(address, from, chapters);
    if (target === undefined) link.replaceWith(`<span>${link.innerHTML} <span class="on-site">(on the site)</span></span>`);
    else {
      targets.push(target);
      link.setAttribute('href', linkTo(target));
      if (withPages && !isAlphabetical(target)) link.insertAdjacentHTML('afterend', pageMark(target));
    }
  }
  return targets;
}

/** Room for the number of a page, as wide as any number that comes in. */
export const pageMark = (target: string): string => ` <span class="page-of">p.&nbsp;<span data-page-of="${target}">000</span></span>`;
