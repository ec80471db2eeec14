import { type Browser, expect, type Page, test } from '@playwright/test';
import { dialed, nationalLines } from '../../calculators/kit/helpLines.ts';
import { copyWhole, withWorker } from './copyHere.ts';

const status = '#search-status';
const results = '#search-results > li';

test('nothing of the index is fetched before something is typed', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto('/search/', { waitUntil: 'networkidle' });
  expect(asked.filter((url) => /\/search\/.+\.json/.test(url))).toEqual([]);
});

test('a question finds the calculator that answers it first, sources last', async ({ page }) => {
  await page.goto('/search/?q=hay');
  await expect(page.locator(results).first()).toBeVisible();
  await expect(page.locator(results).first().locator('.kind')).toContainText('Calculator');
  const told = await page.locator(status).textContent();
  const all = Number(/^\d+/.exec(told ?? '')?.[0]);
  for (let shown = 5; shown < all; shown += 5) {
    await expect(page.locator(results)).toHaveCount(shown);
    await page.locator('#search-more').click();
  }
  await expect(page.locator(results)).toHaveCount(all);
  await expect(page.locator('#search-more')).toBeHidden();
  const kinds = (await page.locator('#search-results .kind').allTextContents()).map((kind) => kind.split(':')[0]);
  const firstSource = kinds.indexOf('Source');
  expect(firstSource).toBeGreaterThan(0);
  expect(new Set(kinds.slice(firstSource))).toEqual(new Set(['Source']));
});

test('what is typed stands in the address, and the address opens the same search', async ({ page }) => {
  await page.goto('/search/');
  await page.locator('#query').fill('curve number');
  await expect(page).toHaveURL(/\?q=curve\+number$/);
  await expect(page.locator(results).first()).toBeVisible();
  await expect(page.locator(results)).toHaveCount(5);
  const lines = await page.locator(results).allTextContents();
  await page.reload();
  await expect(page.locator('#query')).toHaveValue('curve number');
  await expect(page.locator(results)).toHaveText(lines);
});

test('a word that nobody uses gets an answer and other ways on', async ({ page }) => {
  await page.goto('/search/?q=qqqq');
  await expect(page.locator(status)).toContainText('Nothing found for "qqqq"');
  await expect(page.locator(results)).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'all calculators' })).toBeVisible();
});

test('a misspelled word is taken for the known one, and that is said', async ({ page }) => {
  await page.goto('/search/?q=infiltrration');
  await expect(page.locator(status)).toContainText('looked for "infiltration"');
  await expect(page.locator(results).first()).toBeVisible();
});

test('a word that is too far off is not guessed; what looks like it is offered', async ({ page }) => {
  await page.goto('/search/?q=nytrait');
  await expect(page.locator(status)).toContainText('Nothing found for "nytrait"');
  await expect(page.locator(results)).toHaveCount(0);
  await page.locator('#search-near').getByRole('link', { name: 'nitrate', exact: true }).click();
  await expect(page.locator('#query')).toHaveValue('nitrate');
  await expect(page.locator(results).first()).toBeVisible();
});

test('each find says what it is', async ({ page }) => {
  await page.goto('/search/?q=slake+test+sheet');
  const kinds = page.locator('#search-results .kind');
  await expect(kinds).toHaveCount(5);
  for (const kind of await kinds.allTextContents())
    expect(kind).toMatch(/^(Calculator: .+|Guide|Word of the trade|Table|Sheet to print|Page|Source)$/);
  await expect(kinds.filter({ hasText: 'Sheet to print' }).first()).toBeVisible();
});

test('arrow keys walk from the field through the results and back', async ({ page }) => {
  await page.goto('/search/?q=hay');
  await expect(page.locator(results)).toHaveCount(5);
  await page.locator('#query').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(page.locator(results).nth(1).locator('h2 a')).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect(page.locator('#query')).toBeFocused();
});

test('an empty field goes back to the invitation', async ({ page }) => {
  await page.goto('/search/?q=hay');
  await expect(page.locator(results).first()).toBeVisible();
  await page.locator('#query').fill('');
  await expect(page.locator(status)).toContainText('Type a word');
  await expect(page.locator(results)).toHaveCount(0);
  await expect(page).toHaveURL(/\/search\/$/);
});

const index = '**/search/index.json';

test('an index that does not come is owned up to, and tried again at the next word', async ({ browser }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  for (const answer of [
    { status: 0 },
    { status: 404, contentType: 'text/html', body: '<p>Not here</p>' },
    { status: 200, contentType: 'text/html', body: '<p>Sign in first</p>' },
  ]) {
    await page.route(index, (route) => (answer.status === 0 ? route.abort() : route.fulfill(answer)));
    await page.goto('/search/?q=hay');
    await expect(page.locator(status)).toContainText('did not load');
    await expect(page.locator(status)).not.toContainText('Nothing found');
    await page.unroute(index);
    await page.locator('#query').fill('hay bales');
    await expect(page.locator(results).first()).toBeVisible();
    await expect(page.locator(status)).toContainText(/^\d+ found for "hay bales"\.$/);
  }
  await context.close();
});

/** A page of search that runs on what the device has kept. */
async function offlinePage(browser: Browser): Promise<Page> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto('/search/');
  await copyWhole(page);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return page;
}

test.describe(() => {
  test.use(withWorker);

  test('offline, the index is there; one that was not kept is told apart from nothing found', async ({ browser }) => {
    const page = await offlinePage(browser);
    await page.context().setOffline(true);
    await page.locator('#query').fill('hay');
    await expect(page.locator(results).first()).toBeVisible();
    await page.context().setOffline(false);
    // A fresh page that has asked for nothing yet.
    await page.goto('/search/');
    const dropped = await page.evaluate(async () => {
      let count = 0;
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) if (request.url.endsWith('/search/index.json') && (await cache.delete(request))) count += 1;
      }
      return count;
    });
    expect(dropped).toBeGreaterThan(0);
    await page.context().setOffline(true);
    await page.locator('#query').fill('hay bales');
    await expect(page.locator(status)).toContainText('did not load');
    await page.context().close();
  });
});

test.describe(() => {
  test.use(withWorker);

  test('whoever asks in despair sees the lines to call above every result, a tap from calling', async ({ browser, page }) => {
    const lines = page.locator('#search-help-lines');
    await page.goto('/search/?q=cant+sleep+worried+about+the+ranch');
    await expect(lines).toBeVisible();
    await expect(lines.locator('> ul > li')).toHaveCount(nationalLines.length);
    for (const { dials } of nationalLines.map(dialed)) await expect(lines.locator(`a[href="tel:${dials}"]`)).toBeVisible();
    await expect(lines.locator('> ul')).not.toContainText(/Farm Progress|common practice|n\.d\./);
    await expect(lines.locator('details')).not.toHaveAttribute('open');
    await expect(page.locator(status)).not.toContainText(/No page here|Nothing/);
    await expect(page.locator(results).first()).toBeVisible();
    const top = async (selector: string): Promise<number> => (await page.locator(selector).first().boundingBox())?.y ?? Number.NaN;
    expect(await top('#search-help-lines')).toBeLessThan(await top(results));
    for (const plain of ['kill weeds', 'dead cows', 'end of season', 'lose weight']) {
      await page.locator('#query').fill(plain);
      await expect(page.locator(status)).toContainText(/found for|No page here|Nothing found/);
      await expect(lines).toBeHidden();
    }
    // With no signal and no index the lines stand all the same.
    const offline = await offlinePage(browser);
    await offline.route(index, (route) => route.abort());
    await offline.context().setOffline(true);
    await offline.locator('#query').fill('suicide');
    await expect(offline.locator('#search-help-lines a[href="tel:988"]')).toBeVisible();
    await offline.context().close();
  });
});

test('what no page answers is told so, with whom to ask and the nearest page named as such', async ({ page }) => {
  await page.goto('/search/?q=crop+insurance');
  await expect(page.locator(status)).toContainText('No page here answers that. Ask your county');
  await expect(page.locator(status)).toContainText('The nearest page here:');
  await expect(page.locator(results)).toHaveCount(1);
  await page.locator('#search-more').click();
  await expect(page.locator(results)).toHaveCount(6);
  await page.locator('#query').fill('hay');
  await expect(page.locator(status)).toContainText(/^\d+ found for "hay"\.$/);
  await expect(page.locator(results)).toHaveCount(5);
});

test('a source shows its whole citation', async ({ page }) => {
  await page.goto('/search/?q=achouri');
  await expect(page.locator(results).first().locator('.kind')).toHaveText('Source');
  await expect(page.locator(results).first()).toContainText('Journal of Range Management');
  await page.locator(results).first().getByRole('link').click();
  await expect(page).toHaveURL(/\/sources\/a\/#achouri/);
  await expect(page.locator('.sources > li:target')).toContainText('Used in:');
});

test('a link to a source or a letter lands on it, however long the list above it is', async ({ page }) => {
  const topOf = (at: string): Promise<number> => page.locator(at).evaluate((found) => found.getBoundingClientRect().top);
  await page.goto('/sources/');
  const late = await page
    .locator('.sources > li')
    .nth(400)
    .evaluate(({ id }) => id);
  await page.goto('about:blank');
  await page.goto(`/sources/#${late}`);
  await page.waitForTimeout(300);
  expect(await topOf(`#${late}`)).toBeGreaterThanOrEqual(0);
  expect(await topOf(`#${late}`)).toBeLessThan(60);
  // The line is marked, and leads to the whole entry.
  await expect(page.locator(`.sources > li[id="${late}"]`)).toHaveCSS('border-left-width', '8px');
  await page.locator(`.sources > li[id="${late}"] a`).click();
  await expect(page).toHaveURL(new RegExp(`/sources/[a-z]+/#${late}$`));
  await expect(page.locator(`.sources > li[id="${late}"]`)).toHaveCSS('border-left-width', '8px');
  await expect(page.locator(`.sources > li[id="${late}"] .muted`)).toBeInViewport();
  await page.goto('about:blank');
  await page.goto('/sources/');
  await page.getByRole('navigation', { name: 'Letters' }).getByRole('link', { name: 'S', exact: true }).click();
  await page.waitForTimeout(300);
  expect(await topOf('#letter-s')).toBeGreaterThanOrEqual(0);
  expect(await topOf('#letter-s')).toBeLessThan(60);
});

test('the list of sources keeps those whose citation has every word that is typed', async ({ page }) => {
  await page.goto('/sources/');
  const shown = page.locator('.sources > li:visible');
  const all = await shown.count();
  await page.locator('#source-words').fill('range MANAGEMENT 1984');
  await expect(page.locator('#source-count')).toHaveText(new RegExp(`^\\d+ of ${all} sources$`));
  const left = await shown.allTextContents();
  expect(left.length).toBeGreaterThan(0);
  expect(left.length).toBeLessThan(all / 10);
  for (const each of left) for (const word of ['range', 'management', '1984']) expect(each.toLowerCase()).toContain(word);
  // Letters with none left go too, as do their headings.
  const headings = await page.locator('.source-letter h2:visible').allTextContents();
  expect(headings.length).toBeLessThan(await page.locator('.source-letter h2').count());
  expect(await page.locator('.letters a:visible').allTextContents()).toEqual(headings);
  await page.locator('#source-words').fill('range zzzz');
  await expect(page.locator('#source-count')).toHaveText('No source has all of those words');
  await page.locator('#source-words').fill('');
  await expect(shown).toHaveCount(all);
});
