// What comes to the page of the place from elsewhere, and the plan that goes from it onto paper.
import { expect, type Page, test } from '@playwright/test';
import ringTest from '../../calculators/catalog/ring-test/definition.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { ready } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { give, go, open } from './placePage.ts';

test.use({ viewport: { width: 390, height: 844 } });

const readings = 'bore=6in&rings.first=4min,4min,4min&rings.pours=twice,twice,twice&rings.second=30min,40min,50min&rings.end=gone,gone,gone&v=2';
// As “Copy link” gives it: every value named.
const sent = toLink(ringTest, fromLink(ringTest, readings).form);
const message = `Hi, this is what we found: https://elsewhere.example/pasture/calculators/ring-test/?${sent}.\nLou`;
async function opened(page: Page, view: string): Promise<void> {
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await page.goto(`/place/#/${view}`);
  await expect(page.locator('#place[data-ready]')).toBeVisible({ timeout: 20_000 });
}

test('a link out of a message opens in this copy with its own figures, and nothing of the place goes in', async ({ page }) => {
  await opened(page, '');
  await page.getByRole('link', { name: 'Open a link' }).click();
  const box = page.getByLabel('Link, or message with links');
  await box.fill('Call me about the ring test.');
  await expect(page.getByText('There is no link of a calculation in this.')).toBeVisible();
  await expect(box).toHaveAttribute('aria-invalid', 'true');
  await box.fill('https://elsewhere.example/calculators/moon-phase/?v=1');
  await expect(page.getByText('This copy of the pages has no calculator called “moon-phase”.')).toBeVisible();
  await box.fill(message);
  await expect(page.getByRole('heading', { name: 'Infiltration rate from a ring test' })).toBeVisible();
  await expect(page.locator('.pasted-says')).toContainText('in an hour');
  const said = (await page.locator('.pasted-says').textContent()) ?? '';
  await page.getByRole('button', { name: 'Open it Infiltration rate from a ring test', exact: true }).click();
  await ready(page, 'ring-test');
  expect(new URL(page.url()).host).not.toBe('elsewhere.example');
  expect(new URL(page.url()).searchParams.get('rings.second')).toBe('30min,40min,50min');
  const figure = (await page.locator('.big-figure').first().textContent()) ?? '';
  expect(Number(figure)).toBeGreaterThan(0);
  expect(said).toContain(figure);
  await expect(page.getByText('These are the figures of a link.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Keep in this visit' })).toHaveCount(0);
});

test('a link out of a message is kept in a visit, which is begun where there is none', async ({ page }) => {
  await opened(page, 'link');
  await page.getByLabel('Link, or message with links').fill(message);
  await page.getByRole('button', { name: /^Open it to keep it in a new visit/ }).click();
  await ready(page, 'ring-test');
  await page.getByRole('button', { name: 'Keep in this visit' }).click();
  await expect(page.locator('.coming > li')).toHaveCount(1, { timeout: 20_000 });
  // From that visit the way back into it is chosen.
  await page.getByRole('button', { name: 'Add a calculation' }).click();
  await page.getByRole('link', { name: 'A link that somebody sent' }).click();
  await page.getByLabel('Link, or message with links').fill(message);
  await expect(page.getByRole('button', { name: /^Open it to keep it in the visit of/ })).toBeVisible();
});

test('a place that came in a file asks the browser to keep it, as one that was begun here does; the demo place does not', async ({ page }) => {
  await page.addInitScript(() => {
    const asked: string[] = [];
    Object.assign(globalThis, { asked });
    StorageManager.prototype.persisted = async () => false;
    StorageManager.prototype.persist = async () => asked.push('asked') > 0;
  });
  const count = (): Promise<number> => page.evaluate(() => Object.entries(globalThis).find(([name]) => name === 'asked')?.[1].length);
  await open(page);
  await page.getByRole('button', { name: 'Open the demo place' }).click();
  await expect(page.getByText('Demo place: invented.')).toBeVisible();
  expect(await count()).toBe(0);
  await go(page, 'Files');
  await give(page, JSON.stringify({ file: 'holdwater-place', v: 1, edition: '0.1.0', savedAt: '2026-06-20T12:00:00.000Z', places: [twoBench] }));
  await page.getByRole('button', { name: /^Bring/ }).click();
  await expect.poll(count).toBe(1);
});

test('the drought plan has what the place knows, says what is missing, and fits one side of letter and of A4', async ({ page }) => {
  await opened(page, 'plan');
  const sheet = page.locator('.plan-sheet');
  await expect(sheet).toContainText('Two Bench place');
  await expect(sheet).toContainText('988');
  await expect(page.getByRole('link', { name: 'Normal rain' })).toHaveAttribute('href', '#/season');
  await expect(page.getByRole('link', { name: 'Days, rain and grass that are too little' })).toHaveAttribute('href', /calculators\/decision-dates/);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  for (const format of ['Letter', 'A4'] as const) {
    const pdf = await page.pdf({ format, preferCSSPageSize: false, margin: { top: '11mm', bottom: '11mm', left: '12mm', right: '12mm' } });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
  }
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Could stand here, too:')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Print the plan' })).toBeHidden();
});
