import { type Found, type Hit, searchPages } from './searchIndex.ts';

const pageSize = 5;
const shortestWord = 2;
/** Long enough that somebody who types a word asks once. */
const pauseMs = 150;
const kindNames: Readonly<Record<string, string>> = { calculator: 'Calculator', guide: 'Guide', source: 'Source', page: 'Page' };

const element = <T extends Element>(selector: string, type: new () => T): T => {
  const found = document.querySelector(selector);
  if (!(found instanceof type)) throw new Error(`search: no ${selector} on this page`);
  return found;
};
const form = element('#search', HTMLFormElement);
const field = element('#query', HTMLInputElement);
const status = element('#search-status', HTMLElement);
const list = element('#search-results', HTMLElement);
const more = element('#search-more', HTMLButtonElement);
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

/** The excerpt marks the words found; only its text and its marks are taken over. */
const marked = (excerpt: string): HTMLElement => {
  const made = document.createElement('p');
  const parsed = new DOMParser().parseFromString(excerpt, 'text/html');
  for (const node of parsed.body.childNodes)
    made.append(node instanceof HTMLElement ? textElement('mark', node.textContent) : (node.textContent ?? ''));
  return made;
};

/** The index falls back on words that begin alike, down to one letter. Whether the words found are really the ones asked for. */
const answers = ({ excerpt }: Found, words: string): boolean => {
  const asked = words.toLowerCase().split(/\s+/);
  const found = [...excerpt.matchAll(/<mark>(.*?)<\/mark>/g)].map(([, word = '']) => word.toLowerCase());
  return found.length === 0 || found.some((word) => asked.some((each) => word.startsWith(each.slice(0, 4))));
};

const drawn = ({ url, excerpt, meta, sub_results }: Found): HTMLElement => {
  const item = document.createElement('li');
  const { title = url, kind = 'page', lead, question = title } = meta;
  const isCalculator = kind === 'calculator';
  const head = document.createElement('h2');
  head.append(link(isCalculator ? question : title, url));
  const name = kindNames[kind] ?? kind;
  // A page that says what it is about says it better than the words around the find.
  item.append(
    head,
    textElement('p', isCalculator ? `${name}: ${title}` : name, 'kind'),
    lead === undefined ? marked(excerpt) : textElement('p', lead),
  );
  const places = kind === 'guide' ? sub_results.filter((place) => place.url.includes('#')).slice(0, 2) : [];
  if (places.length > 0) {
    const inside = textElement('p', 'In it: ', 'inside');
    places.forEach((place, index) => {
      inside.append(index > 0 ? ', ' : '', link(place.title, place.url));
    });
    item.append(inside);
  }
  return item;
};

let hits: readonly Hit[] = [];
let isReading = false;

const clear = (says: string): void => {
  hits = [];
  list.replaceChildren();
  more.hidden = true;
  status.textContent = says;
};

/** The first line stands before the next one is fetched: on a slow signal it is often the one that is wanted. */
const drawMore = async (words: string): Promise<void> => {
  const from = list.childElementCount;
  // Two clicks must not draw the same lines twice.
  more.hidden = true;
  for (const hit of hits.slice(from, from + pageSize)) {
    const page = await hit.data();
    if (words !== field.value.trim()) return;
    if (list.childElementCount === 0 && !answers(page, words)) status.textContent = `Nothing found for "${words}". The nearest words are in these.`;
    list.append(drawn(page));
  }
  more.hidden = list.childElementCount >= hits.length;
};

const search = async (): Promise<void> => {
  const words = field.value.trim();
  const address = new URL(location.href);
  if (words === '') address.searchParams.delete('q');
  else address.searchParams.set('q', words);
  history.replaceState(history.state, '', address);
  if (words.length < shortestWord) return clear(invitation);
  if (import.meta.env.DEV) return clear('Search works on the built site: npm start.');
  if (!isReading) status.textContent = 'Looking ...';
  isReading = true;
  try {
    const found = await searchPages(words);
    if (words !== field.value.trim()) return;
    clear(
      found.length === 0
        ? `Nothing found for "${words}". Try one plain word, or the other word for it: stubble for residual, paddock for pasture.`
        : `${found.length} ${found.length === 1 ? 'page' : 'pages'} for "${words}".`,
    );
    hits = found;
    await drawMore(words);
  } catch {
    clear('The search index did not load. With a signal, type again; without one, the lists below still work.');
  } finally {
    isReading = false;
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
  void drawMore(field.value.trim()).then(() => list.children[next]?.querySelector('a')?.focus());
});

field.value = new URLSearchParams(location.search).get('q') ?? '';
if (field.value !== '') void search();
// Opening a keyboard over the page is unwelcome on a phone.
if (matchMedia('(pointer: fine)').matches) field.focus();
