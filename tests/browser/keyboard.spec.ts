import { expect, test } from '@playwright/test';

test('the first key press offers a way past the header', async ({ page }) => {
  await page.goto('/');
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'Skip to the text' });
  await expect(skip).toBeFocused();
  await expect(skip).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.locator('#main')).toBeFocused();
});

test('the header is walked in reading order, each stop with a ring', async ({ page }) => {
  await page.goto('/');
  const stops = ['Skip to the text', 'Holdwater', 'Guides', 'Calculators', 'Sources'];
  for (const name of stops) {
    await page.keyboard.press('Tab');
    const stop = page.getByRole('link', { name, exact: true }).first();
    await expect(stop).toBeFocused();
    expect(await stop.evaluate((element) => getComputedStyle(element).outlineStyle)).toBe('solid');
  }
});

test('search from any page without a mouse', async ({ page }) => {
  await page.goto('/about/');
  await page.keyboard.press('/');
  await expect(page.getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('hay');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/search\/\?q=hay$/);
  const first = page.locator('#search-results a').first();
  await expect(first).toBeVisible();
  await expect(page.locator('#search-status')).toContainText('for "hay"');
  await page.locator('#query').focus();
  await page.keyboard.press('Tab');
  await expect(first).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).not.toHaveURL(/\/search\//);
  await expect(page.locator('h1')).toBeVisible();
});

test('a slash that is typed into a field stays a slash', async ({ page }) => {
  await page.goto('/search/');
  await page.locator('#query').fill('');
  await page.locator('#query').press('/');
  await expect(page.locator('#query')).toHaveValue('/');
});
