// An office's file as a text, what a page says of it, and the forms that make it.
import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';

/** The file with any data in it, right or wrong. */
export const fileOf = (data: unknown): string => `:root { --holdwater-office:\n${JSON.stringify(data, null, 2)}\n}\n`;
export const edition = (page: Page) => page.locator('[data-office-edition]');
/** Puts a text beside `index.html`, as an office does. */
export const put = (page: Page, css: string) => page.route('**/office.css', (route) => route.fulfill({ body: css, contentType: 'text/css' }));

/** Saves by the button, and gives what was saved. */
export async function save(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save the office file' }).click()]);
  expect(download.suggestedFilename()).toBe('office.css');
  return readFileSync(await download.path(), 'utf8');
}
export async function openForms(page: Page, from?: string): Promise<void> {
  await page.goto('/make-it-yours/');
  if (from !== undefined) await page.getByLabel('Start from').selectOption({ label: from });
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.getByRole('heading', { name: 'Eight steps' })).toBeVisible();
}
