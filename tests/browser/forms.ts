// What people do with a calculator's form, for all browser tests alike.
import { expect, type Locator, type Page } from '@playwright/test';

export async function ready(page: Page, slug: string): Promise<void> {
  await page.locator(`[data-calculator="${slug}"][data-ready]`).waitFor();
}
export async function openForm(page: Page, slug: string, query = ''): Promise<void> {
  await page.goto(`/calculators/${slug}/${query}`);
  await ready(page, slug);
}
/** What keeps the focus from falling comes behind all that can be tapped. */
export const keepsFocus = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => performance.getEntriesByType('resource').some(({ name }) => name.includes('/keepFocus.')));
export const field = (page: Page, id: string): Locator => page.locator(`#${id}`);
export const figure = (page: Page): Locator => page.locator('.answer .big-figure').first();
export const big = (page: Page): Locator => page.locator('.answer .big').first();
export const stamp = (page: Page): Locator => page.locator('.answer .stamp').first();
export const range = (page: Page): Locator => page.locator('.answer .range').first();

/** Opens every group, as somebody does who looks for a field. What stands in one is fetched for nobody else. */
export async function openGroups(page: Page): Promise<void> {
  const closed = page.locator('details.group:not([open]) > summary');
  while ((await closed.count()) > 0) await closed.first().click();
  // The fields of a group are drawn a moment after it was opened.
  await expect(page.locator('details.group[open] > .group-list')).toHaveCount(0);
}
/**
 * Nothing of it has changed for so long, and no run goes on: the answer is told first, and its list of results, picture and link follow a little later.
 * A run among busy tabs may tell nothing for longer than that, so its end is waited for.
 */
export async function standsStill(form: Locator, quietMs = 400): Promise<void> {
  await form.evaluate(
    (root, ms) =>
      new Promise<void>((resolve) => {
        const done = (): void => {
          if (root.querySelector('.running')) {
            timer = window.setTimeout(done, ms);
            return;
          }
          watcher.disconnect();
          resolve();
        };
        let timer = window.setTimeout(done, ms);
        const watcher = new MutationObserver(() => {
          window.clearTimeout(timer);
          timer = window.setTimeout(done, ms);
        });
        watcher.observe(root, { subtree: true, childList: true, characterData: true, attributes: true });
      }),
    quietMs,
  );
}
/** Lines of tables open one at a time: the one that reads so. */
export async function changeLine(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: `Change ${title}`, exact: true }).click();
}
export const compareButton = (page: Page): Locator => page.getByRole('button', { name: 'Set another management beside it' });
export async function compare(page: Page): Promise<void> {
  await compareButton(page).click();
  await expect(page.getByRole('heading', { name: 'What differs' })).toBeVisible();
}
export const toMetric = (page: Page): Promise<void> => page.getByRole('button', { name: 'In metric' }).click();
/** A result in the list of all of them, by its name. */
export const result = (page: Page, name: string): Locator =>
  page
    .locator('.results-list > div')
    .filter({ has: page.getByText(name, { exact: true }) })
    .locator('dd')
    .first();
