import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { launchOptions } from '../chromium.ts';
import { assembled } from './assembled.ts';
import { epubOf } from './epub.ts';
import { openBook, type Paper, papers, printed } from './print.ts';
import { stylesOf } from './styles.ts';
import { aboutOf, wholeBook } from './wholeBook.ts';

/**
 * `npm run book [-- folder]` after `npm run build`: writes the guides, the sums by hand and the tables as a book for letter and A4 paper and as an EPUB,
 * into `handbook/` or the folder named. A build that finds `handbook/` puts it beside its pages and links it.
 */
const root = join(import.meta.dirname, '..');
const dist = join(root, 'dist');
const folder = process.argv[2] ?? join(root, 'handbook');
mkdirSync(folder, { recursive: true });

const say = (name: string, bytes: number, began: number, more = ''): void =>
  console.log(`${name}: ${(bytes / 1e6).toFixed(1)} MB${more}, ${((performance.now() - began) / 1000).toFixed(0)} s`);

const browser = await chromium.launch(launchOptions);
const book = assembled(dist, (target) => `#${target}`, true);
const html = wholeBook(book, stylesOf(dist), aboutOf(book));
for (const paper of Object.keys(papers) as Paper[]) {
  const began = performance.now();
  const page = await openBook(browser, html, dist, readFileSync(join(import.meta.dirname, 'book.css'), 'utf8'), paper);
  const { pdf, pages } = await printed(page, paper);
  await page.close();
  writeFileSync(join(folder, `holdwater-${paper}.pdf`), pdf);
  say(`holdwater-${paper}.pdf`, pdf.length, began, `, ${pages} pages`);
}
const began = performance.now();
const epub = await epubOf(browser, dist);
writeFileSync(join(folder, 'holdwater.epub'), epub);
say('holdwater.epub', epub.length, began);
await browser.close();
