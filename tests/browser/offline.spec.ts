import { expect, type Page, test } from '@playwright/test';
import { addressOf, dist, filesOf, sentBytes, textOf } from '../site/builtSite.ts';
import { copyWhole, deploy, footLine, newerCopy, newerWhole, promise, update, withWorker } from './copyHere.ts';
import { serve } from './staticServer.ts';
import { long } from './walked.ts';

test.use(withWorker);

const pages = filesOf(dist, /\.html$/).map(addressOf);
const oneBelow = (folder: string): string => {
  const found = pages.find((address) => address.startsWith(folder) && address !== folder);
  if (found === undefined) throw new Error(`no page below ${folder}`);
  return found;
};
/** A busy machine takes its time to unpack a copy. */
const slowly = { timeout: 60_000 };
const newHeading = (page: Page) => page.getByRole('heading', { level: 1, name: 'A newer page' });
const newer = () => newerCopy({ 'about/index.html': (html) => html.replace('About and cautions</h1>', 'A newer page</h1>') });

test('after one visit to the first page the whole site opens with no server and no signal', async ({ page, context }) => {
  const server = await serve(dist);
  const at = (path: string): string => server.origin + path;
  await page.goto(at('/'));
  await copyWhole(page);
  await server.stop();
  await context.setOffline(true);

  for (const address of ['/', oneBelow('/guides/'), oneBelow('/calculators/'), '/sources/', oneBelow('/sources/'), '/checks/']) {
    const response = await page.goto(at(address));
    expect(response?.status(), address).toBe(200);
    await expect(page.locator('h1'), address).toBeVisible();
    await expect(footLine(page), address).toHaveText(promise);
  }
  // A link with numbers in it, and an address typed without its last slash.
  await page.goto(at(`${oneBelow('/calculators/')}?v=1`));
  await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
  await page.goto(at('/about'));
  await expect(page.locator('h1')).toHaveText('About and cautions');
  const guides = pages.filter((address) => /^\/guides\/[^/]+\/$/.test(address)).length;
  await expect(page.locator('#copy-here')).toContainText(`Guides: ${guides} of ${guides}`);
  await expect(page.locator('#copy-here button')).toHaveCount(0);

  await page.goto(at('/search/?q=hay'));
  const first = page.locator('#search-results a').first();
  await expect(first).toBeVisible();
  await first.click();
  await expect(page.locator('h1')).toBeVisible();

  const lost = await page.goto(at('/no/such/page/'));
  expect(lost?.status()).toBe(404);
  await expect(page.locator('h1')).toHaveText('Nothing at this address');
});

test(
  'a newer copy opens with the next page once it is here; an open page stays as it is, with its parts and what was typed',
  long,
  async ({ page, context }) => {
    const server = await serve(dist);
    await page.goto(`${server.origin}/about/`);
    await copyWhole(page);
    const open = await context.newPage();
    await open.goto(`${server.origin}/search/`);
    await open.locator('#query').pressSequentially('h');
    const copy = newer();
    deploy(server, copy);
    await update(page);
    await newerWhole(page, copy);
    // The page from before asks for what it had not asked for yet; nothing has loaded it again.
    await server.stop();
    await context.setOffline(true);
    await expect(open.locator('#query')).toHaveValue('h');
    await open.locator('#query').fill('hay');
    await expect(open.locator('#search-results a').first()).toBeVisible();
    await expect(page.locator('h1')).toHaveText('About and cautions');
    await page.goto(`${server.origin}/about/`);
    await expect(newHeading(page)).toBeVisible();
  },
);

test('a page of the first visit, that was there before the worker, stays of its edition as well', async ({ page }) => {
  const server = await serve(dist);
  await page.goto(`${server.origin}/search/`);
  await copyWhole(page);
  const copy = newer();
  deploy(server, copy);
  await update(page);
  await newerWhole(page, copy);
  expect(await page.evaluate(async () => (await fetch('/about/')).text())).toContain('About and cautions</h1>');
  await server.stop();
});

test('while a newer copy is on its way the earlier one opens, and the promise holds', long, async ({ page }) => {
  const server = await serve(dist);
  await page.goto(`${server.origin}/about/`);
  await copyWhole(page);
  const copy = newer();
  // Half of a deployment: the worker is there, and one of its packs is not.
  const [changed] = [...copy.packs.keys()].filter((file) => !filesOf(dist, /\.pack$/).includes(file));
  server.replace('/worker.js', copy.worker);
  await update(page);
  await expect(footLine(page)).toHaveText(`${promise} A newer copy comes when the signal is better.`, slowly);
  await page.goto(`${server.origin}/about/`);
  await expect(page.locator('h1')).toHaveText('About and cautions');
  await expect(page.getByRole('button', { name: 'Go on now' })).toBeVisible(slowly);
  server.replace(`/${changed}`, copy.packs.get(changed ?? '') ?? '');
  await page.getByRole('button', { name: 'Go on now' }).click();
  await copyWhole(page);
  await expect(page.getByRole('button', { name: 'Go on now' })).toHaveCount(0);
  await page.goto(`${server.origin}/about/`);
  await expect(newHeading(page)).toBeVisible();
  await server.stop();
});

/** The two ways in which a browser says it. */
const savingData: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'of its connection': (page) => page.addInitScript(() => Object.defineProperty(navigator, 'connection', { value: { saveData: true } })),
  // Chromium has it behind a switch yet.
  'as a media feature': (page) =>
    page.addInitScript(() => {
      const asked = window.matchMedia.bind(window);
      window.matchMedia = (query) => asked(query === '(prefers-reduced-data: reduce)' ? 'all' : query);
    }),
};
for (const [way, saveData] of Object.entries(savingData))
  test(
    `whoever’s browser says ${way} to save data gets the core, is told so, and gets the rest at the press of a button`,
    long,
    async ({ page, context }) => {
      const server = await serve(dist);
      await saveData(page);
      await page.goto(`${server.origin}/`);
      await expect(footLine(page)).toHaveText(
        /^Guides, calculators and search work with no signal\. The rest, \d\.\d MB, waits because you save data\.$/,
        slowly,
      );
      await context.setOffline(true);
      expect((await page.goto(`${server.origin}/sources/`))?.status()).toBe(503);
      await expect(page.getByRole('heading', { level: 1, name: 'This page is not on your device yet' })).toBeVisible();
      await context.setOffline(false);
      await page.getByRole('link', { name: 'About the copy' }).click();
      await expect(page).toHaveURL(/\/about\/#offline$/);
      await page.getByRole('button', { name: /^Fetch the rest now \(\d\.\d MB\)$/ }).click();
      await copyWhole(page);
      await server.stop();
      await context.setOffline(true);
      await page.goto(`${server.origin}/sources/`);
      await expect(page.locator('h1')).toBeVisible();
    },
  );

test('what is reached is said aloud once, and a page that opens on it says nothing', async ({ page }) => {
  const server = await serve(dist);
  await page.addInitScript(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    addEventListener('load', () => {
      const watch = new MutationObserver(() => {
        const text = document.querySelector('footer [role="status"]')?.textContent ?? '';
        if (text !== '' && said.at(-1) !== text) said.push(text);
      });
      const foot = document.querySelector('footer');
      if (foot) watch.observe(foot, { subtree: true, childList: true });
    });
  });
  const said = () => page.evaluate(() => ('said' in window ? window.said : undefined));
  await page.goto(`${server.origin}/`);
  await copyWhole(page);
  expect(await said()).toEqual(['Guides, calculators and search work with no signal. The rest is on its way.', promise]);
  await page.goto(`${server.origin}/about/`);
  await copyWhole(page);
  expect(await said()).toEqual([]);
  await server.stop();
});

test('a guide without a calculator runs next to no script with the line about the copy as well', async ({ page }) => {
  const server = await serve(dist);
  const asked = new Set<string>();
  // Asked by the page itself; the worker's own requests are told apart by their frame.
  page.on('request', (request) => {
    if (request.serviceWorker() === null && request.url().endsWith('.js')) asked.add(new URL(request.url()).pathname);
  });
  await page.goto(`${server.origin}/about/`);
  await copyWhole(page);
  const scripts = [...asked].filter((path) => path !== '/worker.js');
  expect(scripts.some((path) => textOf(dist, path.slice(1)).includes('copy-go-on'))).toBe(true);
  expect(
    scripts.reduce((sum, path) => sum + sentBytes(dist, path.slice(1)), 0),
    scripts.join('\n'),
  ).toBeLessThanOrEqual(4000);
  await server.stop();
});

const hasWorker = (page: Page): Promise<boolean> => page.evaluate(async () => (await navigator.serviceWorker.getRegistration()) !== undefined);

test('the copy waits for a form that comes slowly', async ({ page }) => {
  let letGo = () => {};
  const isAwaited = new Promise<void>((done) => {
    letGo = done;
  });
  await page.route(/\/form\.[^/]*\.js$/, (route) => isAwaited.then(() => route.continue()));
  await page.goto('/calculators/storm-runoff/', { waitUntil: 'commit' });
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  // Longer than a page without a form takes to begin its copy.
  await page.waitForTimeout(3000);
  expect(await hasWorker(page)).toBe(false);
  letGo();
  await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
  await expect.poll(() => hasWorker(page), slowly).toBe(true);
});

test('the copy does not wait for ever for a form that never comes', long, async ({ page }) => {
  await page.route(/\/form\.[^/]*\.js$/, (route) => route.abort());
  await page.goto('/calculators/storm-runoff/');
  await expect.poll(() => hasWorker(page), slowly).toBe(true);
  await expect(page.locator('[data-calculator][data-ready]')).toHaveCount(0);
});
