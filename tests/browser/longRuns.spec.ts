// What runs long runs in a worker; where none comes, in the page.
import { expect, type Page, test } from '@playwright/test';
import { openForm, standsStill } from './forms.ts';
import { long } from './walked.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

const worker = /\/longWorker[.-][^/]*\.js$/;
const engine = /\/engine-season\.[^/]*\.js$/;
/** How often each of these was asked for, and kept from coming. */
async function keepAway(page: Page, ...files: readonly RegExp[]): Promise<readonly number[]> {
  const kept = files.map(() => 0);
  for (const [at, file] of files.entries())
    await page.route(file, (route) => {
      kept[at] = (kept[at] ?? 0) + 1;
      return route.abort();
    });
  return kept;
}
/** Scripts that a page asks for, engine or worker. */
function heavyAsked(page: Page): readonly string[] {
  const asked: string[] = [];
  page.on('request', (request) => {
    const { pathname } = new URL(request.url());
    for (const [name, file] of Object.entries({ worker, engine })) if (file.test(pathname)) asked.push(name);
  });
  return asked;
}

const twoSides = '?paddocks=5&that.paddocks=12&that.stay=4d&v=1';
/** All that is told of both managements, and what each difference does alone. */
async function told(page: Page): Promise<readonly string[]> {
  await openForm(page, 'season', twoSides);
  const form = page.locator('[data-calculator="season"]');
  await standsStill(form);
  await page.getByRole('button', { name: 'Run each alone' }).click();
  await expect(page.locator('.alone table tbody tr')).toHaveCount(2);
  return page.locator('.answer, .results, .results-list, .tables').allInnerTexts();
}

test('what works out the season comes behind the form, and its worker once somebody goes into a field', async ({ page }) => {
  const asked = heavyAsked(page);
  await openForm(page, 'season');
  await standsStill(page.locator('[data-calculator="season"]'));
  expect(asked).toEqual(['engine']);
  await page.locator('#season-paddocksCount').focus();
  await expect.poll(() => asked).toEqual(['engine', 'worker']);
  await page.getByRole('button', { name: 'More: Paddocks' }).click();
  await standsStill(page.locator('[data-calculator="season"]'));
  expect(page.workers()).toHaveLength(1);
  expect(asked).toEqual(['engine', 'worker']);
});

test('once it is live the form answers without a signal, in the page', async ({ page, context }) => {
  const figure = page.locator('.answer .big-figure').first();
  await openForm(page, 'season', '?paddocks=2&v=1');
  await standsStill(page.locator('[data-calculator="season"]'));
  const ofTwo = (await figure.textContent()) ?? '';
  await openForm(page, 'season');
  await page.waitForLoadState('networkidle');
  await expect(figure).not.toHaveText(ofTwo);
  // Not even of what was kept from the page before.
  await page.route(worker, (route) => route.abort());
  await context.setOffline(true);
  await page.locator('#season-paddocksCount').fill('2');
  await expect(figure).toHaveText(ofTwo);
  expect(page.workers()).toHaveLength(0);
});

test('where the worker does not come, the page works out both managements, and tells what the worker tells', long, async ({ page, context }) => {
  const beside = await told(page);
  expect(page.workers()).toHaveLength(1);
  expect(beside.join().length).toBeGreaterThan(1000);
  const other = await context.newPage();
  const kept = await keepAway(other, worker);
  expect(await told(other)).toEqual(beside);
  expect([...kept, other.workers().length]).toEqual([1, 0]);
});

test('where nothing comes that works it out, the form says so, and what was typed stays', async ({ page }) => {
  await keepAway(page, worker, engine);
  await openForm(page, 'season');
  const paddocks = page.locator('#season-paddocksCount');
  await paddocks.fill('9');
  await expect(page.getByText('What works this out did not come. Load the page again when there is signal. What you typed stays.')).toBeVisible();
  await expect(page).toHaveURL(/[?&]paddocks=9&/);
  await page.unroute(worker);
  await page.reload();
  await expect(paddocks).toHaveValue('9');
  await expect(page.locator('.answer .big-figure').first()).toBeVisible();
});

test('once what works it out can come, the next change works it out, and so does going back to what could not be', async ({ page }) => {
  await keepAway(page, worker, engine);
  await openForm(page, 'season');
  const paddocks = page.locator('#season-paddocksCount');
  const refused = page.getByText('What works this out did not come.');
  await paddocks.fill('9');
  await expect(refused).toBeVisible();
  await page.unrouteAll();
  for (const count of ['8', '9']) {
    await paddocks.fill(count);
    await standsStill(page.locator('[data-calculator="season"]'));
    await expect(refused).toHaveCount(0);
    await expect(page.locator('.answer .big-figure').first()).toBeVisible();
  }
});

test('until the new numbers are worked out, both managements stand with the words of the numbers before', async ({ page }) => {
  await page.addInitScript(() => {
    const send = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (this: Worker, data: { values?: object }) {
      if (!data.values || !document.documentElement.dataset['holds']) send.call(this, data);
    };
  });
  await openForm(page, 'season', twoSides);
  await standsStill(page.locator('[data-calculator="season"]'));
  const told = page.locator('.pictured, .answer .big-figure');
  await expect(page.locator('.pictured')).toContainText('paddocks 12');
  const before = await told.allInnerTexts();
  const hold = (holds: string) => page.evaluate((to) => (document.documentElement.dataset['holds'] = to), holds);
  await hold('yes');
  await page.locator('#season-that-paddocksCount').fill('24');
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(page.getByText('What stands here is of the numbers before.')).toBeVisible();
  expect(await told.allInnerTexts()).toEqual(before);
  await hold('');
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(page.locator('.pictured')).toContainText('paddocks 24');
  expect(await told.allInnerTexts()).not.toEqual(before);
});

test('a run alone that fails is told as one that cannot be, and the button comes to an end', async ({ page }) => {
  await page.route(worker, (route) =>
    route.fulfill({ contentType: 'text/javascript', body: `onmessage = ({ data: { id, slug } }) => slug && postMessage({ id, fault: 'planted' });` }),
  );
  await openForm(page, 'season');
  await page.getByRole('button', { name: 'Run them' }).click();
  const lines = page.locator('.alone table tbody tr');
  await expect(lines).toHaveCount(5);
  await expect(lines.first()).toContainText('cannot be');
});
