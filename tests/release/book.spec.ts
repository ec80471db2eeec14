import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { EpubCheck } from '@likecoin/epubcheck-ts';
import { expect, test } from '@playwright/test';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { assembled } from '../../book/assembled.ts';
import { epubOf } from '../../book/epub.ts';
import { cutOff, openBook, type Paper, papers, printed } from '../../book/print.ts';
import { stylesOf } from '../../book/styles.ts';
import { aboutOf, wholeBook } from '../../book/wholeBook.ts';
import { dist } from '../site/builtSite.ts';
import { root } from '../support/files.ts';

const sheet = readFileSync(join(root, 'book/book.css'), 'utf8');
const book = assembled(dist, (target) => `#${target}`, true);
const html = wholeBook(book, stylesOf(dist), aboutOf(book));
const chapters = book.parts.flatMap((part) => part.chapters);
const plain = (text: string): string => text.replace(/\s+/g, '').replaceAll('’', "'");

for (const paper of Object.keys(papers) as Paper[]) {
  test(`nothing in the book is cut at the edge of ${paper} paper`, async ({ browser }) => {
    const page = await openBook(browser, html, dist, sheet, paper);
    expect(await cutOff(page)).toEqual([]);
    // On a strip of paper words and tables do run over: the look does find them.
    await page.setViewportSize({ width: 120, height: 1000 });
    expect((await cutOff(page)).length).toBeGreaterThan(10);
    await page.close();
  });
}

test('the printed book tells the page of each chapter, and is tagged for who cannot see it', async ({ browser }) => {
  const page = await openBook(browser, html, dist, sheet, 'letter');
  const { pdf, pages, places } = await printed(page, 'letter');
  const shown = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-page-of]')].map((mark) => [mark.dataset['pageOf'] ?? '', mark.textContent ?? ''] as const),
  );
  await page.close();
  expect(pages).toBeGreaterThan(300);
  expect(shown.length).toBeGreaterThan(1000);
  for (const [place, number] of shown) expect.soft(Number(number), place).toBe(places.get(place));

  const read = getDocument({ data: new Uint8Array(pdf), verbosity: 0 });
  const file = await read.promise;
  const first = await file.getPage(places.get(chapters[0]?.id ?? '') ?? 0);
  expect(JSON.stringify(await first.getStructTree())).toContain('"H1"');
  expect((await file.getOutline()).length).toBeGreaterThan(100);
  for (const { id, title, kind } of chapters.filter((_, at) => at % 5 === 0)) {
    const { items } = await (await file.getPage(places.get(id) ?? 0)).getTextContent();
    const text = items.map((item) => ('str' in item ? item.str : '')).join('');
    expect.soft(plain(text), `${kind} ${id} on page ${places.get(id)}`).toContain(plain(title));
  }
  await read.destroy();
});

test('the EPUB passes a checker, and comes out the same twice', async ({ browser }) => {
  const made = await epubOf(browser, dist);
  const report = await EpubCheck.validate(made);
  expect(report.messages.filter(({ severity }) => severity !== 'usage' && severity !== 'info')).toEqual([]);
  expect(report.valid).toBe(true);
  expect(made.length).toBeLessThan(1_000_000);
  expect(Buffer.from(await epubOf(browser, dist)).equals(Buffer.from(made))).toBe(true);
});
