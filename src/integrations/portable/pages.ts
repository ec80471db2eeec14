import type { HTMLElement } from 'node-html-parser';
import { backFrom, relative, underRoot } from './addresses.ts';
import { type Chunk, inOrder } from './chunks.ts';
import { type Edition, toldInFolder } from './texts.ts';

/** No address to connect to: these pages cannot send anything. A form of another page needs `file:` in one of the browsers, `'self'` where the folder is handed out in a room. */
export const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "style-src-attr 'unsafe-inline'",
  "img-src 'self' data:",
  "font-src 'self'",
  "form-action 'self' file:",
  "base-uri 'none'",
  // Scripts of this folder alone are put into a page, by its loader.
  "require-trusted-types-for 'script'",
  'trusted-types folder-file own-script',
].join('; ');

export const runtimeFile = 'folder.js';
export const sheetFile = 'folder.css';
/** What one sees of a page that was opened inside a zip: words alone, this first. */
const extractFirst =
  '<p class="extract-first">Do you see only words, without colors and lines? Then this page was opened inside the zip. Extract the whole zip first, open the folder that comes of it, and open index.html there.</p>';

interface Parts {
  /** The folder of the server that the site was built for, with a stroke at its end. */
  readonly base: string;
  readonly chunks: ReadonlyMap<string, Chunk>;
  readonly edition: Edition;
  /** Where the same pages can be had by anybody, if that is known. */
  readonly published: string | undefined;
}

const addressed = ['href', 'src', 'action', 'data-page'];
const isModule = (script: HTMLElement): boolean => script.getAttribute('type') === 'module';
/** The first scripts of a page, as files. */
export const entriesOf = (page: HTMLElement, base: string): readonly string[] =>
  page
    .querySelectorAll('script')
    .filter(isModule)
    .map((script) => underRoot(script.getAttribute('src') ?? '', base).slice(1));

/** Turns a built page into one that opens from a disk. The page is changed in place. */
export function toFolderPage(page: HTMLElement, file: string, { base, chunks, edition, published }: Parts): string {
  for (const gone of page.querySelectorAll(
    'link[rel="preload"], link[rel="modulepreload"], link[rel="manifest"], link[rel="apple-touch-icon"], meta[http-equiv]',
  ))
    gone.remove();
  const loaded = new Set<string>();
  for (const script of page.querySelectorAll('script').filter(isModule)) {
    const entry = underRoot(script.getAttribute('src') ?? '', base).slice(1);
    const files = inOrder(entry, chunks).filter((each) => each === entry || !loaded.has(each));
    for (const each of files) loaded.add(each);
    script.replaceWith(files.map((each) => `<script defer src="${base}${each}"${each === entry ? ' data-run' : ''}></script>`).join(''));
  }
  for (const element of page.querySelectorAll('[data-hosted]')) {
    element.textContent = toldInFolder(element.getAttribute('data-hosted') ?? '', edition);
    element.removeAttribute('data-hosted');
  }
  for (const element of page.querySelectorAll(addressed.map((name) => `[${name}]`).join(', ')))
    for (const name of addressed) {
      const address = element.getAttribute(name);
      if (address !== undefined) element.setAttribute(name, relative(address, file, base));
    }
  for (const element of page.querySelectorAll('[data-styles]')) {
    const sheets = element.getAttribute('data-styles')?.split(' ') ?? [];
    element.setAttribute('data-styles', sheets.map((sheet) => relative(sheet, file, base)).join(' '));
  }
  if (published !== undefined) page.querySelector('html')?.setAttribute('data-copy-at', published);
  const back = backFrom(file);
  page
    .querySelector('meta[charset]')
    ?.insertAdjacentHTML('afterend', `<meta http-equiv="content-security-policy" content="${policy}"><script src="${back}${runtimeFile}"></script>`);
  // Behind the sheet that names the order of the layers.
  page.querySelector('link[rel="stylesheet"]')?.insertAdjacentHTML('afterend', `<link rel="stylesheet" href="${back}${sheetFile}">`);
  page.querySelector('body')?.insertAdjacentHTML('afterbegin', extractFirst);
  page
    .querySelector('footer.bottom')
    ?.insertAdjacentHTML(
      'beforeend',
      `<p class="kept-by-page">This browser keeps what you choose and type for each page of a folder alone. What should last, and go from page to page, is kept on <a href="${back}place/index.html">the page of your place</a>, and in the file that you save there.</p>`,
    );
  return page.toString();
}
