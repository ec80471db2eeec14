import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';

// What tests of the page of a place do there again and again.

export const placed = (page: Page): Promise<void> => expect(page.locator('#place[data-ready]')).toBeVisible();
export async function open(page: Page, view = ''): Promise<void> {
  await page.goto(`/place/#/${view}`);
  await placed(page);
}
/** By its whole name, or by a pattern. */
export const button = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name, exact: typeof name === 'string' });
export async function started(page: Page, name = 'Home place'): Promise<void> {
  await open(page);
  await page.getByLabel('What do you call your place?').fill(name);
  await page.getByRole('button', { name: 'Start it' }).click();
  await expect(page.getByRole('heading', { name: 'Pastures and soils' })).toBeVisible();
}
export const go = async (page: Page, short: string): Promise<void> =>
  page.getByRole('navigation', { name: 'Your place' }).getByRole('link', { name: short }).click();
/** One pasture of so many acres, as it is typed. */
export async function withPasture(page: Page, size: string): Promise<void> {
  await page.getByRole('button', { name: 'Add a pasture' }).click();
  await page.getByLabel('Pasture 1: Size').fill(size);
}
export const isWritten = (page: Page, words: string): Promise<boolean> =>
  page.evaluate(
    (looked) =>
      new Promise<boolean>((done) => {
        const asked = indexedDB.open('holdwater');
        asked.onsuccess = () => {
          const all = asked.result.transaction('places').objectStore('places').getAll();
          all.onsuccess = () => {
            asked.result.close();
            done(JSON.stringify(all.result).includes(looked));
          };
        };
      }),
    words,
  );
export const written = (page: Page, words: string) => expect.poll(() => isWritten(page, words)).toBe(true);
/** Writes into the store past the page, as another edition or a fault would have. */
export const plant = (page: Page, record: unknown): Promise<void> =>
  page.evaluate(
    (put) =>
      new Promise<void>((done, fail) => {
        const asked = indexedDB.open('holdwater');
        asked.onsuccess = () => {
          const tx = asked.result.transaction('places', 'readwrite');
          tx.objectStore('places').put(put);
          tx.oncomplete = () => {
            asked.result.close();
            done();
          };
          tx.onerror = () => fail(tx.error);
        };
      }),
    record,
  );
export async function savedFile(page: Page, name: RegExp): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name }).first().click()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}
export const give = (page: Page, text: string) =>
  page.getByLabel('A file of a place').setInputFiles({ name: 'holdwater-place.json', mimeType: 'application/json', buffer: Buffer.from(text) });
