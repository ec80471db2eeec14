import { expect, test } from '@playwright/test';

test('a trade word in a guide opens its meaning by tap and by keyboard, and closes', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/guides/resting-grass/');
  const word = page.locator('button.term').first();
  const note = page.locator('button.term + .term-note').first();
  await expect(note).toBeHidden();
  await word.click();
  await expect(note).toBeVisible();
  const box = await note.boundingBox();
  expect(box?.width).toBeLessThanOrEqual(390);
  await page.keyboard.press('Escape');
  await expect(note).toBeHidden();
  await word.press('Enter');
  await expect(note).toBeVisible();
  await note.getByRole('link', { name: 'All words' }).click();
  await expect(page).toHaveURL(/\/glossary\/#/);
});
