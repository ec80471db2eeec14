import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

const ready = (page: Page, slug: string) => page.locator(`[data-calculator="${slug}"][data-ready]`).waitFor();
const bucket = '/calculators/stock-water/?supply=flow&flow-from=bucket&v=1';
const watch = (page: Page) => page.getByRole('button', { name: /^(Start the watch|Stop) for Time to fill it/ });
const openBucket = async (page: Page) => {
  await page.clock.install({ time: new Date('2026-07-01T12:00:00') });
  await page.goto(bucket);
  await ready(page, 'stock-water');
};

test('a watch writes what it measured into its field, as if typed', async ({ page }) => {
  await openBucket(page);
  const time = page.getByRole('textbox', { name: 'Time to fill it' });
  await expect(watch(page)).toBeEnabled();
  await page.clock.pauseAt(new Date('2026-07-01T12:01:00'));
  await watch(page).click();
  await page.clock.runFor(12_000);
  await expect(page.getByRole('timer')).toHaveText('0:12');
  await expect(time, 'nothing is written before it stops').toHaveValue('60');
  await page.clock.runFor(400);
  await watch(page).click();
  await expect(time).toHaveValue('12.4');
  await expect(page.getByRole('timer')).toHaveCount(0);
  await page.clock.runFor(1000);
  await expect(page).toHaveURL(/bucket-fill=12\.4s/);
});

test('a watch goes on through a locked screen and a reload', async ({ page }) => {
  await openBucket(page);
  const startMs = await page.evaluate(() => Date.now());
  await watch(page).click();
  // Time passes and no timer fires: a locked screen, a sleeping tab.
  await page.clock.fastForward('03:00');
  await page.reload();
  await ready(page, 'stock-water');
  await expect(page.getByRole('timer')).toHaveText(/^3:0\d$/);
  await page.clock.fastForward('17:05');
  await watch(page).click();
  const measuredS = Number(await page.getByRole('textbox', { name: 'Time to fill it' }).inputValue());
  const passedS = (await page.evaluate(() => Date.now())) / 1000 - startMs / 1000;
  expect(passedS).toBeGreaterThan(1200);
  // The clock of the page goes on between the taps and the readings around them.
  expect(measuredS).toBeLessThanOrEqual(passedS + 0.05);
  expect(measuredS).toBeGreaterThan(passedS - 5);
});

test('starting a watch over asks first', async ({ page }) => {
  await openBucket(page);
  await watch(page).click();
  await page.clock.runFor(30_000);
  const over = page.getByRole('button', { name: 'Start over for Time to fill it' });
  await over.click();
  await page.getByRole('button', { name: 'No, keep it' }).click();
  await expect(page.getByRole('timer')).toHaveText('0:30');
  await over.click();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: 'Yes, start over' }).click();
  await expect(over).toBeFocused();
  await page.clock.runFor(5000);
  await expect(page.getByRole('timer')).toHaveText('0:05');
});
