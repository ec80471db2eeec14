// The note of a visit: every way out of it, for whom each is, and its words changed in place.
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { Place } from '../../src/place/model/place.ts';
import { ready } from './forms.ts';
import { twoBench } from './placeOfOnes.ts';
import { button } from './placePage.ts';
import { begun, kept, printedWords, visitorsPhone, visits, written } from './visitsOfOnes.ts';

test.use(visitorsPhone);

async function saved(page: Page, name: string): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}
/** A visit with people, a test, money, words and a step. */
async function told(page: Page, place: Place = { ...twoBench, linkBase: test.info().project.use.baseURL }): Promise<void> {
  await begun(page, place);
  await button(page, 'High bench').tap();
  await kept(page, 'Infiltration rate from a ring test', 'ring-test');
  await kept(page, 'Keep and feed, or sell and buy back', 'feed-or-sell');
  await page.getByLabel('Written by').fill('Ana Reyes');
  await page.getByLabel('Who was there').fill('Kit Moss, Lou Tanner');
  await page.getByLabel('What we saw').fill('Moss said the High bench is bare.\n<script>alert(1)</script>');
  await page.getByLabel('What you said').fill('Lou will rest it.');
  await page.getByLabel('Step 1: What').fill('Rest High bench');
  await page.getByLabel('Step 1: Who').fill('Kit Moss');
  await page.getByLabel('Step 1: By when').fill('2027-07-20');
  await written(page, 'visits', '2027-07-20');
  await page.getByRole('link', { name: 'Write the note' }).tap();
  await expect(button(page, 'For the office')).toBeVisible();
}
const names = /Reyes|Kit|Moss|Lou\b|Tanner|Two Bench|High bench|Low bench/i;
const clipboard = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const [item] = await navigator.clipboard.read();
    return item === undefined ? [] : await Promise.all(['text/html', 'text/plain'].map(async (type) => (await item.getType(type)).text()));
  });

test('nothing goes out before somebody says for whom; then each copy has what it says, and the office’s no name', async ({ page }) => {
  await told(page);
  await expect(button(page, 'Print')).toBeDisabled();
  await expect(button(page, 'Copy')).toBeDisabled();
  await button(page, 'For the producer').tap();
  await button(page, 'Copy').tap();
  await expect(page.getByText('Copied. Paste it')).toBeVisible();
  const [html = '', text = ''] = await clipboard(page);
  expect(html).toMatch(/<h1>.*<h2>.*<a href="http/s);
  expect(html).not.toMatch(/<script|<style|<link|<[^>]*\s(?:style|class|on\w+)=/i);
  expect(html).toContain('&lt;script&gt;');
  for (const each of ['Ana Reyes', 'Lou will rest it', '(Kit Moss, by Jul 20, 2027)', '988', 'These are planning figures'])
    expect(html + text).toContain(each);
  await button(page, 'For the office').tap();
  await expect(page.locator('.note-told')).toContainText('no other names');
  await button(page, 'Copy').tap();
  await expect(page.getByText('Copied. Paste it')).toBeVisible();
  const outputs = [...(await clipboard(page))];
  for (const name of ['Save as plain text', 'Save as Markdown', 'Dates for a calendar']) {
    const file = await saved(page, name);
    outputs.push(file.name, file.text);
  }
  await page.emulateMedia({ media: 'print' });
  const paper = await printedWords(page);
  expect(paper).toContain('Infiltration rate from a ring test');
  outputs.push(paper, await page.title());
  // The title of a source is nobody's name, and stays whole.
  const source = 'Soil Quality Test Kit Guide';
  expect(outputs.join()).toContain(source);
  for (const each of outputs) {
    expect(each.replaceAll(/\r?\n[ \t]/g, '').replaceAll(source, '')).not.toMatch(names);
    expect(each).not.toContain('rest it.');
  }
  expect(outputs.join()).not.toContain('Keep and feed');
});

test('words of a note are changed in place and put back; the last five stay', async ({ page }) => {
  await told(page);
  const seen = page.locator('#note-seen');
  await seen.fill('Better than last year.');
  await written(page, 'notes', 'Better than last year.');
  await page.reload();
  await expect(seen).toHaveValue('Better than last year.');
  await button(page, /^Put the words back/).tap();
  await expect(seen).toHaveValue(/Moss said/);
  await button(page, 'Leave it out What you said').tap();
  for (const last of ['Before you act on it', 'Someone to talk to', 'These are planning figures', 'Sources', 'Where a copy is'])
    await expect(button(page, `Leave it out ${last}`)).toHaveCount(0);
  await button(page, 'Up Someone to talk to').tap();
  await button(page, 'For the producer').tap();
  const { text } = await saved(page, 'Save as plain text');
  expect(text).not.toContain('WHAT YOU SAID');
  expect(text.indexOf('SOMEONE TO TALK TO')).toBeLessThan(text.indexOf('BEFORE YOU ACT ON IT'));
});

test('where the browser lets no page copy, the note stands there selected', async ({ page }) => {
  await told(page);
  await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }));
  await button(page, 'For the producer').tap();
  await button(page, 'Copy').tap();
  await expect(page.getByText('press copy')).toBeVisible();
  expect(await page.evaluate(() => getSelection()?.toString())).toContain('What we agreed');
});

test('a note made on a device or network of one’s own has no dead link: it asks where a copy is, and says how to open it by hand', async ({
  page,
}) => {
  await told(page, twoBench);
  await expect(page.getByText(/^This copy is at 127\.0\.0\.1:\d+, which opens on this device or its own network alone/)).toBeVisible();
  await expect(page.locator('.note-block a[href*="/calculators/"]')).toHaveCount(0);
  await expect(page.getByText('To open it: in any copy of these pages open “Infiltration rate from a ring test”')).toBeVisible();
  // It stays while it is typed, key by key.
  const address = page.getByLabel('Address of the copy of these pages that people reach');
  await address.pressSequentially('https://office.example/field');
  await expect(address).toHaveValue('https://office.example/field');
  await expect(page.locator('.note-block a[href^="https://office.example/field/calculators/ring-test/"]')).toHaveCount(1);
});

test('a note’s link opens the same figures where the site was never seen', async ({ page, browser }) => {
  await told(page);
  const result = (await visits(page, 'results')).find(({ slug }) => slug === 'ring-test');
  const address = await page.locator('.note-block a[href*="/calculators/ring-test/"]').first().getAttribute('href');
  const other = await (await browser.newContext()).newPage();
  await other.goto(address ?? '');
  await ready(other, 'ring-test');
  const figures = JSON.stringify(result?.['shown']);
  await expect(other.locator('.results-list > div dd').first()).toBeVisible();
  expect(figures).toContain((await other.locator('.results-list > div dd').first().textContent()) ?? 'no figure');
  expect(address).not.toMatch(names);
  await other.close();
});
