import { type HTMLElement, parse } from 'node-html-parser';
import { type Chapter, type Kind, pageAt } from './contents.ts';

/** What needs a screen, or stands elsewhere in the book. */
const leftOut: Readonly<Record<Kind | 'all', string>> = {
  all: 'script, style, link, button[data-side], .reference-files, [hidden], .term-note, .letters',
  guide: '.contents, .form-first, .local-invite, .local-picked, .example .lone-link',
  working: '.working-sides',
  table: '.lone-link, section.after',
  words: '.used',
  sources: '.used, search',
};

/** An element in place of another. */
const swap = (old: HTMLElement, html: string): void => void old.replaceWith(parse(html));

/** What folds on a screen lies open on paper, its line as a heading. */
function unfold(main: HTMLElement): void {
  // The inner ones first, for the outer are written out with them.
  for (const fold of main.querySelectorAll('details').reverse()) {
    const line = fold.querySelector('summary');
    const words = line?.innerHTML ?? '';
    line?.remove();
    swap(fold, `<div class="${fold.getAttribute('class') ?? ''} opened"><p class="opened-title">${words}</p>${fold.innerHTML}</div>`);
  }
}

/** A form in a guide becomes the way to the same sum by hand. */
function formsToWays(main: HTMLElement): void {
  for (const form of main.querySelectorAll('section.calculator')) {
    const question = form.querySelector('.in-guide-question')?.text.trim() ?? '';
    swap(form, `<p class="by-hand">By hand: <a href="${form.getAttribute('data-page')}">${question}</a></p>`);
  }
}

/** The end of a guide: its sources stand together at the end of the book. */
function endOfGuide(main: HTMLElement): void {
  const end = main.querySelector('.guide-end');
  for (const heading of end?.querySelectorAll('h2') ?? []) {
    const list = heading.nextElementSibling;
    const words = heading.text.trim();
    if (words === 'Where the numbers come from' || words === 'Paper for the field') {
      list?.remove();
      heading.remove();
    } else heading.set_content(words === 'Put your own numbers in' ? 'Work it out by hand' : words);
  }
}

/** A word with a meaning behind it leads to the list of words. */
function termsToWords(main: HTMLElement): void {
  for (const term of main.querySelectorAll('button.term')) {
    const word = (term.getAttribute('popovertarget') ?? '').replace(/^term-/, '');
    swap(term, `<a class="term" href="/glossary/#${word}">${term.innerHTML}</a>`);
  }
}

/** The working with what was put in, and of the calculator's own page what it cautions on the example and what it cannot tell. */
function workingOf(dist: string, { address }: Chapter): HTMLElement {
  const own = pageAt(dist, address).querySelector('main');
  const main = pageAt(dist, `${address}working/`).querySelector('main');
  if (!own || !main) throw new Error(`${address} has no working to print`);
  const cautions = own.querySelectorAll('.bar-says').map((each) => `<div class="caution">${each.innerHTML}</div>`);
  const limits = own.querySelector('.limits ul')?.outerHTML ?? '';
  const tables = own.querySelectorAll('.sources section.more').find((each) => !each.classList.contains('words'));
  return parse(
    `<main><h1>${own.getAttribute('data-question')}</h1><p class="lead">${own.getAttribute('data-lead')}</p>${cautions.join('')}
    ${main.querySelector('section.working')?.outerHTML ?? ''}<h2>What this cannot tell</h2>${limits}
    ${tables ? `<h2>Tables behind this</h2>${tables.querySelector('ul')?.outerHTML ?? ''}` : ''}</main>`,
  ).querySelector('main') as HTMLElement;
}

/** The list of sources, with the whole entries of each letter in place of its lines. */
function sourcesOf(dist: string, { address }: Chapter): HTMLElement | null {
  const main = pageAt(dist, address).querySelector('main');
  for (const lines of main?.querySelectorAll('ul.sources') ?? []) {
    const letter = lines.querySelector('a')?.getAttribute('href')?.replace(/#.*/, '') ?? '';
    lines.replaceWith(pageAt(dist, letter).querySelector('ul.sources') ?? '');
  }
  return main;
}

const pageOf = (dist: string, { address }: Chapter): HTMLElement | null => pageAt(dist, address).querySelector('main');
const mainOf: Readonly<Record<Kind, typeof pageOf>> = { guide: pageOf, working: workingOf, table: pageOf, words: pageOf, sources: sourcesOf };

/**
 * A page of the built site as a chapter: nothing of the screen, nothing folded, headings one level lower where they stand in a part.
 * Links and ids are as on the site. Throws if the page is not there.
 */
export function chapterOf(dist: string, chapter: Chapter): HTMLElement {
  const main = mainOf[chapter.kind](dist, chapter);
  if (!main) throw new Error(`${chapter.address} has no text`);
  for (const kind of ['all', chapter.kind] as const) for (const each of main.querySelectorAll(leftOut[kind])) each.remove();
  formsToWays(main);
  endOfGuide(main);
  termsToWords(main);
  unfold(main);
  for (const each of main.querySelectorAll('[class]')) {
    const kept = [...each.classList.values()].filter((name) => !name.startsWith('astro-'));
    if (kept.length > 0) each.setAttribute('class', kept.join(' '));
    else each.removeAttribute('class');
  }
  for (const each of main.querySelectorAll('*'))
    for (const name of Object.keys(each.attributes)) if (name.startsWith('data-')) each.removeAttribute(name);
  return main;
}
