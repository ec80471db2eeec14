import { readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { Browser, Page } from '@playwright/test';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Paper as printers name it, and how wide the text runs between the margins, in CSS pixels (96 to the inch). */
export const papers = { letter: { format: 'Letter', widthIn: 8.5 }, a4: { format: 'A4', widthIn: 210 / 25.4 } } as const;
export type Paper = keyof typeof papers;
export const marginIn = 0.75;
export const textWidthPx = (paper: Paper): number => Math.floor((papers[paper].widthIn - 2 * marginIn) * 96);

const types: Readonly<Record<string, string>> = { '.css': 'text/css', '.woff2': 'font/woff2', '.svg': 'image/svg+xml' };
/** An address that nothing answers but this; the browser asks the network for nothing. */
const origin = 'http://book.invalid';

/** The book in a browser as it will be on paper. `dist`: where its sheets and fonts are; `sheet`: the book's own style, asked for as `/book.css`. */
export async function openBook(browser: Browser, html: string, dist: string, sheet: string, paper: Paper): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: textWidthPx(paper), height: 1000 } });
  await page.route('**/*', async (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === '/') return route.fulfill({ body: html, contentType: 'text/html; charset=utf-8' });
    if (pathname === '/book.css') return route.fulfill({ body: sheet, contentType: 'text/css' });
    return route.fulfill({ body: readFileSync(join(dist, pathname)), contentType: types[extname(pathname)] ?? 'application/octet-stream' });
  });
  await page.emulateMedia({ media: 'print', colorScheme: 'light' });
  await page.goto(`${origin}/`, { timeout: 120_000 });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  return page;
}

const pdfOf = (page: Page, paper: Paper): Promise<Buffer> =>
  page.pdf({
    format: papers[paper].format,
    margin: { top: `${marginIn}in`, bottom: `${marginIn}in`, left: `${marginIn}in`, right: `${marginIn}in` },
    printBackground: true,
    tagged: true,
    outline: true,
    displayHeaderFooter: true,
    headerTemplate: '<span></span>',
    footerTemplate: '<div style="width:100%;font-size:9px;text-align:center"><span class="pageNumber"></span></div>',
  });

/** Where places stand in a print: the page, from 1, of each that the print knows, and how many pages it has. */
export async function placesIn(
  pdf: Uint8Array,
  names: readonly string[],
): Promise<{ readonly pages: number; readonly places: ReadonlyMap<string, number> }> {
  const read = getDocument({ data: new Uint8Array(pdf), verbosity: 0 });
  const file = await read.promise;
  const places = new Map<string, number>();
  for (const name of names) {
    const where = (await file.getDestination(name)) as readonly [Parameters<typeof file.getPageIndex>[0]] | null;
    if (where) places.set(name, 1 + (await file.getPageIndex(where[0])));
  }
  const pages = file.numPages;
  await read.destroy();
  return { pages, places };
}

const sameEverywhere = (one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>): boolean =>
  one.size === other.size && [...one].every(([name, page]) => other.get(name) === page);

export interface Printed {
  readonly pdf: Buffer;
  /** The page, from 1, of each place that a link leads to. */
  readonly places: ReadonlyMap<string, number>;
  readonly pages: number;
}
/**
 * Prints the book, and prints it again with the pages that the first print tells. Numbers have their room from the start, so that the second is as long.
 * Throws if a link leads nowhere, or if pages still move after a third.
 */
export async function printed(page: Page, paper: Paper): Promise<Printed> {
  const names = await page.evaluate(() => [
    ...new Set([...document.querySelectorAll<HTMLElement>('[data-page-of]')].map((mark) => mark.dataset['pageOf'] ?? '')),
  ]);
  let { places } = await placesIn(await pdfOf(page, paper), names);
  const lost = names.filter((name) => !places.has(name));
  if (lost.length > 0) throw new Error(`The book has no such place: ${lost.slice(0, 10).join(', ')}`);
  for (let again = 0; again < 3; again += 1) {
    await page.evaluate(
      (known) => {
        const pages = new Map(known);
        for (const mark of document.querySelectorAll<HTMLElement>('[data-page-of]'))
          mark.textContent = String(pages.get(mark.dataset['pageOf'] ?? ''));
      },
      [...places],
    );
    const pdf = await pdfOf(page, paper);
    const now = await placesIn(pdf, names);
    if (sameEverywhere(places, now.places)) return { pdf, ...now };
    places = now.places;
  }
  throw new Error('The pages of the book still move after four prints');
}

/** What runs out of the text's width on paper, by its words: a table or a formula that would be cut. */
export const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const widthPx = document.documentElement.clientWidth;
    return [...document.querySelectorAll<HTMLElement>('table, .katex-display > .katex, pre, svg, img, p, li, h1, h2, h3')]
      .filter((each) => each.getBoundingClientRect().right > widthPx + 1)
      .map((each) => `${each.closest('section')?.querySelector('h1')?.textContent}: ${each.tagName} ${(each.textContent ?? '').trim().slice(0, 60)}`);
  });
