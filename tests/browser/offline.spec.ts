import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';
import { serve } from './staticServer.ts';

const pages = filesOf(dist, /\.html$/).map(addressOf);
const oneBelow = (folder: string): string => {
  const found = pages.find((address) => address.startsWith(folder) && address !== folder);
  if (found === undefined) throw new Error(`no page below ${folder}`);
  return found;
};

const waitForWorker = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null) {
      await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }));
    }
  });

test('after one visit to the first page the whole site opens with no server and no signal', async ({ page, context }) => {
  const server = await serve(dist);
  const at = (path: string): string => server.origin + path;
  await page.goto(at('/'));
  await waitForWorker(page);
  await server.stop();
  await context.setOffline(true);

  for (const address of ['/', oneBelow('/guides/'), oneBelow('/calculators/'), '/sources/', '/checks/']) {
    const response = await page.goto(at(address));
    expect(response?.status(), address).toBe(200);
    await expect(page.locator('h1'), address).toBeVisible();
  }
  // A link with numbers in it, and an address typed without its last slash.
  await page.goto(at(`${oneBelow('/calculators/')}?v=1`));
  await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
  await page.goto(at('/about'));
  await expect(page.locator('h1')).toHaveText('About and cautions');

  await page.goto(at('/search/?q=hay'));
  const first = page.locator('#search-results a').first();
  await expect(first).toBeVisible();
  await first.click();
  await expect(page.locator('h1')).toBeVisible();

  const lost = await page.goto(at('/no/such/page/'));
  expect(lost?.status()).toBe(404);
  await expect(page.locator('h1')).toHaveText('Nothing at this address');
});

test('a newer copy takes over at the next visit, and a page of the older one keeps its parts', async ({ page, context }) => {
  const server = await serve(dist);
  await page.goto(`${server.origin}/about/`);
  await waitForWorker(page);

  const newer = readFileSync(join(dist, 'about/index.html'), 'utf8').replace('About and cautions</h1>', 'A newer page</h1>');
  server.replace('/about/index.html', newer);
  server.replace('/worker.js', readFileSync(join(dist, 'worker.js'), 'utf8').replace(/cacheName = family \+ "\w+"/, 'cacheName = family + "newer"'));
  const open = await context.newPage();
  await open.goto(`${server.origin}/search/`);
  await open.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }));
    await registration.update();
    await changed;
  });
  await server.stop();
  await context.setOffline(true);
  await open.locator('#query').fill('hay');
  await expect(open.locator('#search-results a').first()).toBeVisible();
  await page.goto(`${server.origin}/about/`);
  await expect(page.locator('h1')).toHaveText('A newer page');
});
