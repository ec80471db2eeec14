import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { build } from 'vite';
import { root } from '../support/files.ts';

test.use({ viewport: { width: 390, height: 844 } });

let script = '';
/** One of everything in a page of its own, so that these tests hang on no calculator of the trade. */
test.beforeAll(async () => {
  const built = await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: { write: false, lib: { entry: join(root, 'tests/support/kitchenSinkEntry.tsx'), formats: ['iife'], name: 'sink' } },
  });
  const [{ output }] = Array.isArray(built) ? built : [{ output: [] }];
  script = output?.map((chunk) => ('code' in chunk ? chunk.code : '')).join('\n') ?? '';
  expect(script).not.toBe('');
});

async function open(page: Page): Promise<void> {
  await page.route('**/sink.js', (route) => route.fulfill({ contentType: 'text/javascript', body: script }));
  await page.route('**/sink/', (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: '<!doctype html><html lang="en"><meta charset="utf-8"><title>One of everything</title><main><h1>One of everything</h1><div id="form"></div></main><script src="/sink.js"></script><script>for (const group of document.querySelectorAll(".group")) group.open = true</script>',
    }),
  );
  await page.clock.install({ time: new Date('2026-07-01T12:00:00') });
  await page.addInitScript(() => {
    const shaken: unknown[] = [];
    Object.assign(globalThis, { shaken });
    Object.defineProperty(navigator, 'vibrate', { value: (pattern: unknown) => shaken.push(pattern) > 0 });
  });
  await page.goto('/sink/');
}
const crumb = (page: Page) => page.locator('.tool.is-marks').filter({ hasText: 'The crumb goes in' });
const shakes = (page: Page) => page.evaluate(() => (globalThis as unknown as { shaken: unknown[] }).shaken.length);

test('a clock calls out at its marks, in words, to listeners and to the hand', async ({ page }) => {
  await open(page);
  const call = crumb(page).locator('.tool-call');
  await expect(call).toHaveAttribute('aria-live', 'polite');
  await expect(call).toHaveText('');
  await crumb(page).getByRole('button', { name: 'Start the clock' }).click();
  await page.clock.pauseAt(new Date('2026-07-01T12:01:00'));
  await crumb(page).getByRole('button', { name: 'Start over' }).click();
  await crumb(page).getByRole('button', { name: 'Yes, start over' }).click();
  await page.clock.runFor(4500);
  await expect(call).toHaveText('');
  await expect(crumb(page).locator('.is-next')).toHaveText('5 seconds (in 1 second): look');
  const before = await shakes(page);
  await page.clock.runFor(700);
  await expect(call).toHaveText('5 seconds: look');
  expect(await shakes(page)).toBe(before + 1);
  await page.clock.runFor(25_000);
  await expect(call).toHaveText('30 seconds: look again');
  await expect(crumb(page).getByRole('listitem').first()).toHaveText('5 seconds (passed 25 seconds ago): look');
  await crumb(page).getByRole('button', { name: 'Stop' }).click();
  await page.clock.runFor(100);
  await expect(call).toHaveText('');
});

test('marks that passed behind a locked screen or a closed page are told as passed', async ({ page }) => {
  await open(page);
  await crumb(page).getByRole('button', { name: 'Start the clock' }).click();
  // Time passes and no timer fires in it.
  await page.clock.fastForward('00:50');
  await expect(crumb(page).locator('.tool-call')).toHaveText(
    /^5 seconds, passed 4\d seconds ago: look; 30 seconds, passed 2\d seconds ago: look again$/,
  );
  await page.clock.fastForward('06:00');
  await page.reload();
  await expect(crumb(page).getByRole('timer')).toHaveText(/^6:5\d$/);
  await expect(crumb(page).locator('.tool-call')).toHaveText(/5 minutes, passed 2 minutes ago: lift it out$/);
});

test('a table carries its clock once, above its rows', async ({ page }) => {
  await open(page);
  const herd = page.getByRole('button', { name: 'Start the clock for All go through the gate' });
  await expect(herd).toHaveCount(1);
  await herd.click();
  await page.clock.fastForward('01:01');
  await expect(page.locator('.tool-call').filter({ hasText: 'count them' })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations).toEqual([]);
});
