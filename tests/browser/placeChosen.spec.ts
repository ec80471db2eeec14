// Which of several a form is about, chosen above it: pastures, and one of several waters.
import { expect, type Page, test } from '@playwright/test';
import type { Place } from '../../src/place/model/place.ts';
import { openForm, openGroups } from './forms.ts';
import { keepPlace, keptPlaces, twoBench } from './placeOfOnes.ts';

test.use({ viewport: { width: 390, height: 844 } });

const waters: Place = {
  ...twoBench,
  water: [
    { id: 'pond', name: 'House pond', supply: 'pond', maxDepthFt: 9 },
    { id: 'well', name: 'Well', supply: 'flow', flowGpm: 4 },
  ],
};
const chip = (page: Page, name: string) => page.locator('.place-pastures').getByRole('button', { name, exact: true });
const asks = (page: Page) => page.locator('.place-said', { hasText: 'tap the one that you mean' });

test('of several waters the one that is tapped goes into the form, and into no link', async ({ page }) => {
  await page.goto('/about/');
  await keepPlace(page, waters);
  await openForm(page, 'stock-water');
  const group = page.getByRole('group', { name: 'Which water' });
  await expect(group.getByRole('button')).toHaveText(['House pond', 'Well']);
  await expect(asks(page)).toBeVisible();
  await chip(page, 'Well').click();
  await expect(chip(page, 'Well')).toHaveAttribute('aria-pressed', 'true');
  await expect(asks(page)).toHaveCount(0);
  await expect.poll(() => new URL(page.url()).searchParams.get('supply')).toBe('flow');
  await openGroups(page);
  await expect(page.locator('#stock-water-knownGpm')).toHaveValue(/^4/);
  await chip(page, 'House pond').click();
  await expect(chip(page, 'Well')).toHaveAttribute('aria-pressed', 'false');
  await expect.poll(() => new URL(page.url()).searchParams.get('supply')).toBe('pond');
  await openGroups(page);
  await expect(page.locator('#stock-water-maxDepthFt')).toHaveValue(/^9/);
  expect(page.url()).not.toMatch(/pond,|House|well/);
  // It is on for as long as the window is open, and then names the calculation.
  await page.reload();
  await expect(chip(page, 'House pond')).toHaveAttribute('aria-pressed', 'true');
});

test('what somebody typed is kept at the water that was tapped, and the others stay as they are', async ({ page }) => {
  await page.goto('/about/');
  await keepPlace(page, waters);
  await openForm(page, 'stock-water');
  await chip(page, 'House pond').click();
  await openGroups(page);
  await page.locator('#stock-water-maxDepthFt').fill('8');
  await page.getByRole('button', { name: 'Keep as my place' }).click();
  const line = page.locator('.keep-place li').filter({ hasText: '8 ft' });
  await expect(line).toContainText('in place of what stands there');
  await line.getByRole('checkbox').check();
  const which = page.locator('.keep-place').getByLabel('Which water');
  await expect(which.locator('option:checked')).toHaveText('House pond');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.locator('.keep-place')).toContainText('Kept in Two Bench place.');
  const [place] = await keptPlaces(page);
  expect(place?.water).toEqual([{ ...waters.water[0], maxDepthFt: 8 }, waters.water[1]]);
});

test('a form that asks for no water, and a place with one, show no choice of it', async ({ page }) => {
  await page.goto('/about/');
  await keepPlace(page, waters);
  await openForm(page, 'slake-test');
  await expect(chip(page, 'Low bench')).toBeVisible();
  await expect(chip(page, 'Well')).toHaveCount(0);
  await keepPlace(page, { ...waters, water: waters.water.slice(1) });
  await openForm(page, 'stock-water');
  await openGroups(page);
  await expect(page.locator('.place-open')).toBeVisible();
  await expect(page.locator('.place-pastures')).toHaveCount(0);
  await expect(page.locator('#stock-water-knownGpm')).toHaveValue(/^4/);
});

test('a tap whose script did not come says so, and chooses nothing', async ({ page }) => {
  await page.goto('/about/');
  await keepPlace(page, waters);
  await page.route('**/_astro/changes.*.js', (route) => route.abort());
  await openForm(page, 'slake-test');
  await chip(page, 'Low bench').click();
  await expect(page.locator('.place-said')).toHaveText('This could not be loaded. Load the page again when there is signal.');
  await expect(chip(page, 'Low bench')).toHaveAttribute('aria-pressed', 'false');
});

test('pastures tapped one after the other, before what a tap needs has come, are all chosen', async ({ page }) => {
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await page.route('**/_astro/changes.*.js', async (route) => {
    await new Promise((done) => setTimeout(done, 1500));
    await route.continue();
  });
  await openForm(page, 'days-of-grass');
  await chip(page, 'Low bench').click();
  await chip(page, 'High bench').click();
  for (const name of ['Low bench', 'High bench']) await expect(chip(page, name)).toHaveAttribute('aria-pressed', 'true');
  // 85 and 120 acres, by hand.
  await expect(page.locator('#days-of-grass-areaAc')).toHaveValue(/^205/);
});
