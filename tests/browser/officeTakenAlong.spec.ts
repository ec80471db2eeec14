// What leaves a copy that an office has made its own: notes, calendar files and paper name it, and its lines stand before the national ones.
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { writeOffice } from '../../src/office/model/officeFile.ts';
import { anOffice } from '../office/anOffice.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';

// A worker would fetch the office's file past these tests.
test.use({ permissions: ['clipboard-read', 'clipboard-write'] });

const named = 'Example County office, 555-0100';
const put = (page: Page) => page.route('**/office.css', (route) => route.fulfill({ body: writeOffice(anOffice), contentType: 'text/css' }));
const copied = (page: Page) => page.evaluate(() => navigator.clipboard.readText());
async function fileOf(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Dates for a calendar' }).click()]);
  return readFileSync(await download.path(), 'utf8').replaceAll(/\r?\n[ \t]/g, '');
}

test('a calculator’s note, dates and paper name the office and whom it says to call', async ({ page }) => {
  await put(page);
  await page.goto('/calculators/decision-dates/');
  await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('data-office', named);
  await page.getByRole('button', { name: 'Copy note' }).click();
  await expect.poll(() => copied(page)).toContain(named);
  const note = await copied(page);
  expect(note.indexOf('555-0199')).toBeGreaterThan(0);
  expect(note.indexOf('555-0199')).toBeLessThan(note.indexOf('988'));
  expect(await fileOf(page)).toContain('DESCRIPTION:Example County office\\, 555-0100');
  await page.waitForTimeout(1600);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.locator('.paper-help').first()).toHaveText(/555-0199.*988/);
});

test('somebody who picked another kind of country gets its name and the national lines alone', async ({ page }) => {
  await put(page);
  await page.addInitScript(() => localStorage.setItem('holdwater-country', 'none'));
  await page.goto('/calculators/decision-dates/');
  await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('data-office', named);
  await page.getByRole('button', { name: 'Copy note' }).click();
  await expect.poll(() => copied(page)).toContain('988');
  expect(await copied(page)).not.toContain('555-0199');
});

test('the note of a visit names the office, its lines and the address of its copy, on paper too', async ({ page }) => {
  await put(page);
  await page.goto('/about/');
  await keepPlace(page, { ...twoBench, linkBase: 'https://elsewhere.example/' });
  await page.goto('/place/#/visit/new');
  await page.getByLabel('What we saw').fill('Bare steps on the high bench.');
  await page.getByLabel('Step 1: What').fill('Rest the high bench');
  await page.getByLabel('Step 1: By when').fill('2027-07-20');
  await page.getByRole('link', { name: 'Write the note' }).click();
  await page.getByRole('button', { name: 'For the producer' }).click();
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await expect.poll(() => copied(page)).toContain(named);
  const note = await copied(page);
  expect(note.indexOf('555-0199')).toBeLessThan(note.indexOf('988'));
  // Its own copy, not the address that the place was told before.
  expect(note).toContain('https://office.example/pasture/');
  expect(note).not.toContain('elsewhere.example');
  expect(await fileOf(page)).toContain('DESCRIPTION:Example County office\\, 555-0100');
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const paper = page.locator('.note-paper');
  for (const each of [named, '555-0199', '988', 'values of Sep 2026']) await expect(paper).toContainText(each);
});
