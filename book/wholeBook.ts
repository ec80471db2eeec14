import type { Assembled } from './assembled.ts';

export const title = 'Holdwater';
export const subtitle = 'Grazing through drought: guides, sums by hand and tables';

/** The list of what is in it, by part. */
const contents = ({ parts }: Assembled): string =>
  `<nav class="book-contents"><h1 id="contents">Contents</h1>${parts
    .map(
      (part) =>
        `<h2>${part.title}</h2><ol>${part.chapters
          .map((each) => `<li><a href="#${each.id}">${each.title}</a><span class="dots"></span><span data-page-of="${each.id}">000</span></li>`)
          .join('')}</ol>`,
    )
    .join('')}<ol><li><a href="#word-index">Index</a><span class="dots"></span><span data-page-of="word-index">000</span></li></ol></nav>`;

/** What the page behind the title tells: what the book is made of, and its day. */
export const aboutOf = ({ built }: Assembled, isPaged = true): string =>
  [
    `Made from the pages of the site as they stood on ${new Date(`${built}T12:00:00Z`).toLocaleDateString('en-US', { dateStyle: 'long', timeZone: 'UTC' })}.`,
    'Every sum in it has an example on an invented place. A name and a year in brackets lead to the sources at the end.',
    ...(isPaged ? ['A number after “p.” is a page of this book.'] : []),
  ].join(' ');

const wordIndex = ({ index }: Assembled): string =>
  `<section class="word-index"><h1 id="word-index">Index</h1><ul>${index
    .map(
      ({ word, targets }) =>
        `<li>${word} ${targets.map((target) => `<a href="#${target}"><span data-page-of="${target}">000</span></a>`).join(', ')}</li>`,
    )
    .join('')}</ul></section>`;

/** The book as one page, to be printed. `styles`: addresses of its sheets; `about`: what stands on the page behind the title. */
export function wholeBook(book: Assembled, styles: readonly string[], about: string): string {
  const chapters = book.parts.map(({ title: part, chapters: own }) =>
    own
      .map(({ id, kind }, at) => {
        const text = book.texts.get(id)?.innerHTML ?? '';
        return `<section class="chapter is-${kind}">${at === 0 ? `<p class="part-title">${part}</p>` : ''}${text}</section>`;
      })
      .join('\n'),
  );
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}: ${subtitle}</title>${styles
    .map((address) => `<link rel="stylesheet" href="${address}">`)
    .join('')}</head><body class="book"><section class="book-title"><p class="book-name">${title}</p><p class="book-subtitle">${subtitle}</p>
    <p>${book.promise}</p><p>${about}</p></section>${contents(book)}${chapters.join('\n')}${wordIndex(book)}</body></html>`;
}
