// Narrows the list of sources while somebody types. Without it the list is whole.
const box = document.querySelector<HTMLElement>('#source-filter');
const field = document.querySelector<HTMLInputElement>('#source-words');
const count = document.querySelector<HTMLElement>('#source-count');

/** As it is compared: no capitals, no accents, one kind of apostrophe. */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').replaceAll('’', "'").toLowerCase();

/** A pause this long ends a word: whoever hears how many are left hears it once. */
const pauseMs = 900;

if (box && field && count) {
  const all = Number(count.dataset['of']);
  // Read when somebody types: most come by a link or go by the letters.
  const readSections = () =>
    [...document.querySelectorAll<HTMLElement>('.source-letter')].map((section) => ({
      section,
      letter: document.querySelector<HTMLElement>(`.letters a[href="#${section.querySelector('h2')?.id}"]`),
      items: [...section.querySelectorAll<HTMLElement>('.sources > li')].map((item) => ({ item, text: plain(item.textContent) })),
    }));
  let sections: ReturnType<typeof readSections> | undefined;

  let timer = 0;
  const tell = (words: string): void => {
    clearTimeout(timer);
    timer = window.setTimeout(
      () => {
        count.textContent = words;
      },
      sections ? pauseMs : 0,
    );
  };
  const narrow = (): void => {
    const words = plain(field.value).split(/\s+/).filter(Boolean);
    if (words.length === 0) tell(`${all} sources`);
    if (words.length === 0 && !sections) return;
    sections ??= readSections();
    let found = 0;
    for (const { section, letter, items } of sections) {
      let here = 0;
      for (const { item, text } of items) {
        item.hidden = !words.every((word) => text.includes(word));
        if (!item.hidden) here += 1;
      }
      section.hidden = here === 0;
      if (letter) letter.hidden = here === 0;
      found += here;
    }
    if (words.length === 0) return;
    if (found > 0) tell(`${found} of ${all} sources`);
    else tell(words.length === 1 ? 'No source has that word' : 'No source has all of those words');
  };

  /** Whoever follows a link to one source must find it, whatever was typed. */
  const showTarget = (): void => {
    const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (!target?.closest('[hidden]')) return;
    field.value = '';
    narrow();
    target.scrollIntoView();
  };

  box.hidden = false;
  const note = document.querySelector<HTMLElement>('[data-filter]');
  if (note) note.dataset['ready'] = '';
  narrow();
  field.addEventListener('input', narrow);
  addEventListener('hashchange', showTarget);
  addEventListener('pageshow', narrow);
}
