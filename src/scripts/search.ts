import type { Answer, Hit } from '../search/ask.ts';
import { speaksOfDespair } from '../search/despair.ts';
import { nearWords } from '../search/nearestWord.ts';
import { kindNames } from '../search/records.ts';
import { loadAgain } from '../site/folder.ts';
import { href } from '../site/href.ts';
import { citationOf, namingWords, searchSite } from './searchIndex.ts';

const pageSize = 5;
const shortestWord = 2;
/** Long enough that somebody who types a word asks once. */
const pauseMs = 150;

const element = <T extends Element>(selector: string, type: new () => T): T => {
  const found = document.querySelector(selector);
  if (!(found instanceof type)) throw new Error(`search: no ${selector} on this page`);
  return found;
};
const root = element('#searching', HTMLElement);
const form = element('#search', HTMLFormElement);
const field = element('#query', HTMLInputElement);
const status = element('#search-status', HTMLElement);
const near = element('#search-near', HTMLElement);
const list = element('#search-results', HTMLElement);
const more = element('#search-more', HTMLButtonElement);
const helpLines = element('#search-help-lines', HTMLElement);
const invitation = status.textContent;

const textElement = (tag: string, text: string, className = ''): HTMLElement => {
  const made = document.createElement(tag);
  made.textContent = text;
  made.className = className;
  return made;
};

const link = (text: string, address: string): HTMLAnchorElement => {
  const made = document.createElement('a');
  made.textContent = text;
  made.href = address;
  return made;
};

const drawn = ({ kind, url, title, lead, question = title, inside: places }: Hit): HTMLElement => {
  const item = document.createElement('li');
  const head = document.createElement('h2');
  const isCalculator = kind === 'calculator';
  head.append(link(isCalculator ? question : title, href(url)));
  item.append(head, textElement('p', isCalculator ? `${kindNames[kind]}: ${title}` : kindNames[kind], 'kind'), textElement('p', lead));
  if (places.length > 0) {
    const inside = textElement('p', 'In it: ', 'inside');
    places.forEach(([anchor, heading], index) => {
      inside.append(index > 0 ? ', ' : '', link(heading, href(`${url}#${anchor}`)));
    });
    item.append(inside);
  }
  return item;
};

let hits: Answer['hits'] = [];
let isReading = false;

const clear = (says: string): void => {
  hits = [];
  list.replaceChildren();
  near.replaceChildren();
  more.hidden = true;
  status.textContent = says;
};

const drawMore = async (words: string, count = pageSize): Promise<void> => {
  const from = list.childElementCount;
  // Two clicks must not draw the same lines twice.
  more.hidden = true;
  for (const hit of hits.slice(from, from + count)) {
    const line = hit.kind === 'source' ? { ...hit, lead: await citationOf(hit.url) } : hit;
    if (words !== field.value.trim()) return;
    list.append(drawn(line));
  }
  more.hidden = list.childElementCount >= hits.length;
};

const quoted = (words: readonly string[]): string => words.map((word) => `"${word}"`).join(', ');

/** What was found, what was looked for in place of words that nothing is called by, and whom to ask about what is not here. Who needs somebody to talk to is told none of that: the lines to call are the answer. */
const told = ({ hits: found, taken, unknown, elsewhere }: Answer, words: string): string => {
  if (speaksOfDespair(words)) return found.length === 0 ? '' : 'Pages about the land and the herd stand below, for when you want them.';
  if (found.length === 0) {
    const ask = elsewhere === undefined ? '' : ` If it is not a slip of the keys, ask ${elsewhere}.`;
    return `Nothing found for "${words}". Try one plain word, the one you would use at the gate.${ask}`;
  }
  const looked = taken.map(({ typed, as }) => ` Nothing here is called "${typed}": looked for "${as}".`).join('');
  if (elsewhere !== undefined) return `No page here answers that. Ask ${elsewhere}.${looked} The nearest page here:`;
  const left = unknown.length > 0 ? ` Nothing found for ${quoted(unknown)}; these have the other words.` : '';
  return `${found.length} found for "${words}".${looked}${left}`;
};

const tellFailure = (): void => clear(`The search index did not load. ${loadAgain()} The lists below still work.`);

const suggest = (words: readonly string[]): void => {
  if (words.length === 0) return;
  near.append('Did you mean ');
  words.forEach((word, index) => {
    near.append(index > 0 ? ', ' : '', link(word, `?q=${encodeURIComponent(word)}`));
  });
};

const search = async (): Promise<void> => {
  const words = field.value.trim();
  const address = new URL(location.href);
  if (words === '') address.searchParams.delete('q');
  else address.searchParams.set('q', words);
  history.replaceState(history.state, '', address);
  // Before anything is fetched: these lines must stand whatever comes of the rest.
  helpLines.hidden = !speaksOfDespair(words);
  if (words.length < shortestWord) return clear(invitation);
  if (import.meta.env.DEV) return clear('Search works on the built site: npm start.');
  if (!isReading) status.textContent = 'Looking ...';
  isReading = true;
  try {
    const answer = await searchSite(words);
    const suggested = answer.hits.length === 0 ? nearWords(answer.unknown, await namingWords()) : [];
    if (words !== field.value.trim()) return;
    clear(told(answer, words));
    if (!speaksOfDespair(words)) suggest(suggested);
    hits = answer.hits;
    await drawMore(words, answer.elsewhere === undefined ? pageSize : 1);
  } catch {
    tellFailure();
  } finally {
    isReading = false;
    root.dataset['answered'] = '';
  }
};

form.addEventListener('submit', (event) => {
  event.preventDefault();
  void search();
});
let pause: ReturnType<typeof setTimeout> | undefined;
field.addEventListener('input', () => {
  clearTimeout(pause);
  pause = setTimeout(() => void search(), pauseMs);
});
more.addEventListener('click', () => {
  const next = list.childElementCount;
  void drawMore(field.value.trim())
    .then(() => list.children[next]?.querySelector('a')?.focus())
    .catch(tellFailure);
});

/** Up and down go from the field through the results and back; the caret has no other use for them in a field of one line. */
addEventListener('keydown', (event) => {
  const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
  const active = document.activeElement;
  if (step === 0 || !(active instanceof HTMLElement) || event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
  const stops: readonly HTMLElement[] = [field, ...list.querySelectorAll<HTMLElement>('h2 a')];
  const at = stops.indexOf(active);
  const next = stops[at + step];
  if (at < 0 || !next) return;
  event.preventDefault();
  next.focus();
});

root.dataset['ready'] = '';
field.value = new URLSearchParams(location.search).get('q') ?? '';
if (field.value !== '') void search();
// Opening a keyboard over the page is unwelcome on a phone.
if (matchMedia('(pointer: fine)').matches) field.focus();
