// Visits to a kept place: begun, added to, and as they lie in the browser's own database.
import { expect, type Locator, type Page } from '@playwright/test';
import type { Place } from '../../src/place/model/place.ts';
import { ready } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { button, placed } from './placePage.ts';

/** The phone of somebody who visits. */
export const visitorsPhone = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
  permissions: ['clipboard-read', 'clipboard-write'],
};

export async function begun(page: Page, place: Place = twoBench): Promise<void> {
  await page.goto('/about/');
  await keepPlace(page, place);
  await page.goto('/place/#/visit/new');
  await placed(page);
  await expect(page.getByRole('heading', { name: 'A visit', exact: true })).toBeVisible();
  await expect(button(page, 'Add a calculation')).toBeVisible();
}
/** Adds a calculation to the visit that stands open, by these taps. */
export const keptBy =
  (tap: (what: Locator) => Promise<void>) =>
  async (page: Page, title: string, slug: string, answer: () => Promise<void> = async () => {}): Promise<void> => {
    await tap(button(page, 'Add a calculation'));
    await tap(page.getByRole('link', { name: title, exact: true }));
    await ready(page, slug);
    await answer();
    await tap(button(page, 'Keep in this visit'));
    await placed(page);
    await expect(button(page, 'Add a calculation')).toBeVisible();
  };
export const kept = keptBy((what) => what.tap());
export const visits = (
  page: Page,
  store: 'visits' | 'results' | 'notes' | 'photos' | 'aside',
): Promise<readonly Readonly<Record<string, unknown>>[]> =>
  page.evaluate(
    (name) =>
      new Promise<Record<string, unknown>[]>((done) => {
        const asked = indexedDB.open('holdwater');
        asked.onsuccess = () => {
          const all = asked.result.transaction(name).objectStore(name).getAll();
          all.onsuccess = () => {
            asked.result.close();
            done(all.result);
          };
        };
      }),
    store,
  );
export const plant = (page: Page, store: string, record: unknown): Promise<void> =>
  page.evaluate(
    ([name, put]) =>
      new Promise<void>((done) => {
        const asked = indexedDB.open('holdwater');
        asked.onsuccess = () => {
          const tx = asked.result.transaction(String(name), 'readwrite');
          tx.objectStore(String(name)).put(put);
          tx.oncomplete = () => {
            asked.result.close();
            done();
          };
        };
      }),
    [store, record] as const,
  );
export const written = (page: Page, store: 'visits' | 'results' | 'notes', words: string): Promise<void> =>
  expect.poll(async () => JSON.stringify(await visits(page, store))).toContain(words);
export const printedWords = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    dispatchEvent(new Event('beforeprint'));
    await new Promise((done) => setTimeout(done, 200));
    // biome-ignore lint/performance/useDomNodeTextContent: what is hidden on paper is not on it
    return document.body.innerText;
  });
