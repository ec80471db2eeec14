import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { readOfficeFile, writeOffice } from '../../src/office/model/officeFile.ts';
import { anOffice, officeWith } from '../office/anOffice.ts';
import { dist } from '../site/builtSite.ts';
import { openGroups } from './forms.ts';
import { serve } from './staticServer.ts';

const fileOf = (data: unknown): string => `:root { --holdwater-office:\n${JSON.stringify(data, null, 2)}\n}\n`;
/** Puts a text beside `index.html`, as an office does. */
const put = (page: Page, css: string) => page.route('**/office.css', (route) => route.fulfill({ body: css, contentType: 'text/css' }));
const edition = (page: Page) => page.locator('[data-office-edition]');
const shown = (page: Page) =>
  page
    .locator('details[data-local]')
    .evaluateAll((all) => all.filter((each) => each.checkVisibility()).map((each) => each.getAttribute('data-local')));
const noWorker = { serviceWorkers: 'block' } as const;

test.describe('an office’s file beside the first page', () => {
  test.use(noWorker);

  test('is one more kind of country, chosen where nobody picked another', async ({ page }) => {
    await put(page, writeOffice(anOffice));
    await page.goto('/local/');
    await expect(edition(page)).toHaveText('Edition of Example County office, 555-0100 · values of Sep 2026');
    await expect(page.getByRole('button', { name: 'Mine is Example County office' })).toHaveAttribute('aria-pressed', 'true');
    expect(await shown(page)).toEqual(['office']);
    await expect(page.getByText('county auction, large rounds', { exact: false })).toBeVisible();
    const looks = (name: string) => page.getByRole('button', { name }).evaluate((button) => button.getBoundingClientRect().height);
    expect(await looks('Mine is Example County office')).toBe(await looks('Mine is Plains range'));
    await page.getByRole('button', { name: 'Mine is Plains range' }).click();
    await page.reload();
    await expect(edition(page)).toBeVisible();
    expect(await shown(page)).toEqual(['plains-range']);
    await page.getByRole('button', { name: 'None: show all of them' }).click();
    await page.reload();
    await expect(edition(page)).toBeVisible();
    expect(await shown(page)).toHaveLength(7);
  });

  test('stands open in guides, with its lines before the national ones and its cautions beside the others', async ({ page }) => {
    await put(page, writeOffice(anOffice));
    await page.goto('/guides/leaving-stubble/');
    const heights = page.locator('details.local').first();
    await expect(heights.getByText('7 to 9')).toBeVisible();
    expect(new Set(await shown(page))).toEqual(new Set(['office']));
    await expect(page.locator('[data-office-cautions]')).toContainText('Sinkholes');
    await page.goto('/guides/bridging-with-hay/');
    const lines = page.locator('.talk li:visible');
    await expect(lines.first()).toContainText('Example County farm-stress line: call or text 555-0199, weekdays 8 to 5.');
    await expect(lines.first().getByRole('link')).toHaveAttribute('href', 'tel:555-0199');
    await expect(page.getByText('call or text 988', { exact: false })).toBeVisible();
    await expect(page.getByText('Your own doctor, a neighbor, your pastor', { exact: false })).toBeVisible();
  });

  test('offers its prices where somebody has none: hay, freight, calves, cows, buy-back', async ({ page }) => {
    await put(page, writeOffice(anOffice));
    await page.goto('/calculators/hay-to-grass/');
    await page.getByRole('button', { name: 'Fill in local values, Example County office' }).click();
    await openGroups(page);
    await expect(page.locator('#hay-to-grass-priceUsdPerTon')).toHaveValue('165');
    await expect(page.locator('#hay-to-grass-freightUsdPerLoad')).toHaveValue('450');
    await expect(page.locator('.field', { has: page.locator('#hay-to-grass-freightUsdPerLoad') }).locator('.whose')).toHaveText(
      'from Example County office',
    );
    await expect(page).toHaveURL(/price=165usd\/ton/);
    await page.goto('/calculators/feed-or-sell/');
    await page.getByRole('button', { name: 'Fill in local values, Example County office' }).click();
    await openGroups(page);
    for (const [key, value] of [
      ['calfPriceUsdPerCwt', '270'],
      ['saleUsd', '1900'],
      ['lowBuyBackUsd', '2400'],
      ['likelyBuyBackUsd', '2800'],
      ['highBuyBackUsd', '3300'],
    ])
      await expect(page.locator(`#feed-or-sell-${key}`), key).toHaveValue(value ?? '');
  });

  test('gives links and paper the address of the office’s copy, and paper its name', async ({ page, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await put(page, writeOffice(anOffice));
    await page.goto('/calculators/rain-on-ground/');
    await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
    await page.getByRole('button', { name: 'Copy link' }).click();
    const copied = () => page.evaluate(() => navigator.clipboard.readText());
    await expect.poll(copied).toMatch(/^https:\/\/office\.example\/pasture\/calculators\/rain-on-ground\/\?/);
    await page.waitForTimeout(1600);
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect(page.locator('.paper-head b').first()).toHaveText('Holdwater, Example County office, 555-0100');
    await expect(page.locator('.paper-address').first()).toHaveText('office.example/pasture/calculators/rain-on-ground');
  });

  test('says nothing and fetches nothing where no office has filled it in', async ({ page }) => {
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto('/guides/leaving-stubble/', { waitUntil: 'networkidle' });
    await expect(edition(page)).toHaveCount(0);
    expect(asked.filter((url) => /\/_astro\/office\b/.test(url))).toEqual([]);
    expect(asked.filter((url) => /\/office\.(?:css|js)$/.test(url))).toHaveLength(2);
    await page.goto('/');
    await expect(page.locator('[data-office-bar]')).toBeHidden();
  });

  test('shows words as words, whatever stands in them', async ({ page }) => {
    const bad = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    await put(page, writeOffice({ ...anOffice, head: { ...anOffice.head, name: bad }, cautions: [{ says: bad, source: bad }] }));
    await page.goto('/guides/leaving-stubble/');
    await expect(edition(page)).toContainText('<img src=x');
    await expect(page.locator('[data-office-cautions]')).toContainText('<script>');
    expect(await page.locator('main img, [data-office-cautions] script').count()).toBe(0);
    expect(await page.title()).not.toMatch(/^[12]$/);
  });
});

test.describe('styles in an office’s file', () => {
  test.use(noWorker);

  test('never reach the first paint', async ({ page }) => {
    const styled = `${writeOffice(anOffice)}html, body, main, h1 { display: none !important; background: red !important }\n@import url("https://elsewhere.example/x.css");\n`;
    const elsewhere: string[] = [];
    page.on('request', (request) => {
      if (request.url().includes('elsewhere')) elsewhere.push(request.url());
    });
    await put(page, styled);
    // The scripts of the page come late, so that there are frames to be painted before them.
    await page.route('**/_astro/*.js', async (route) => {
      await new Promise((done) => setTimeout(done, 400));
      await route.continue();
    });
    // What each frame is painted with.
    await page.addInitScript(() => {
      const frames: string[] = [];
      Object.assign(window, { frames });
      const look = () => {
        const root = document.documentElement;
        if (root) frames.push(`${getComputedStyle(root).display} ${document.body ? getComputedStyle(document.body).display : 'block'}`);
        requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    });
    await page.goto('/about/');
    await expect(page.locator('h1')).toBeVisible();
    await expect(edition(page)).toBeVisible();
    expect(await page.evaluate(() => document.querySelectorAll('link[href$="office.css"]').length)).toBe(0);
    const frames = await page.evaluate(() => {
      const seen: unknown = Reflect.get(window, 'frames');
      return Array.isArray(seen) ? seen.map(String) : [];
    });
    expect(frames.length).toBeGreaterThan(5);
    expect(frames.filter((each) => each.includes('none'))).toEqual([]);
    expect(await page.locator('h1').evaluate((title) => getComputedStyle(title).backgroundColor)).toBe('rgba(0, 0, 0, 0)');
    expect(elsewhere).toEqual([]);
  });

  test('are gone before any script of the page looks, even where no module comes at all', async ({ page }) => {
    await put(page, 'html { display: none }\n');
    await page.route('**/_astro/*.js', (route) => route.abort());
    await page.goto('/about/');
    await expect(page.locator('h1')).toBeVisible();
  });
});

test.describe('a wrong file', () => {
  test.use(noWorker);

  for (const address of ['/', '/local/', '/make-it-yours/'])
    test(`is told on ${address}, and the values of the site stand`, async ({ page }) => {
      await put(page, fileOf(officeWith('values.hayPrice.likelyUsdPerTon', 'abc')));
      await page.goto(address);
      const bar = page.locator('[data-office-bar]');
      await expect(bar).toContainText('office.css cannot be used.');
      await expect(bar).toContainText(/Line \d+, Hay, likely: “abc” is no number; write dollars a ton, such as 165\./);
      await expect(edition(page)).toHaveCount(0);
      if (address === '/local/') expect(await shown(page)).toHaveLength(6);
    });

  test('of each kind leaves the page as ever', async ({ page }) => {
    const wrongs: readonly [string, RegExp][] = [
      ['', /missing, or it is no office file/],
      ['<!doctype html><p>Log in', /missing, or it is no office file/],
      [fileOf({ a: 'x'.repeat(530_000) }), /more than 512 kB/],
      [':root { --holdwater-office:\n{ "file": "holdwater-office",\n "v": }\n}\n', /Line 3, letter \d+: a value should stand here/],
      ['html { display: none } /* no office */', /missing, or it is no office file/],
    ];
    for (const [css, sentence] of wrongs) {
      await page.unroute('**/office.css');
      await put(page, css);
      await page.goto('/');
      await expect(page.locator('[data-office-bar]')).toContainText(sentence);
      await expect(page.locator('h1')).toBeVisible();
    }
    await page.unroute('**/office.css');
    await page.route('**/office.css', (route) => route.abort());
    await page.goto('/local/');
    expect(await shown(page)).toHaveLength(6);
    await expect(page.locator('[data-office-bar]')).toBeVisible();
  });
});

const save = async (page: Page): Promise<string> => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save the office file' }).click()]);
  expect(download.suggestedFilename()).toBe('office.css');
  return readFileSync(await download.path(), 'utf8');
};
const openForms = async (page: Page, from?: string): Promise<void> => {
  await page.goto('/make-it-yours/');
  if (from !== undefined) await page.getByLabel('Start from').selectOption({ label: from });
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.getByRole('heading', { name: 'Eight steps' })).toBeVisible();
};

test.describe('the forms of an office', () => {
  test.use(noWorker);

  test('say at the field what is wrong, keep the work, and save nothing wrong', async ({ page }) => {
    await openForms(page, 'Fescue belt');
    await page.locator('#step-3 > summary').click();
    const likely = page.getByRole('textbox', { name: 'Hay, likely' });
    await expect(likely).toHaveValue('125');
    await page.getByRole('textbox', { name: 'Hay, low' }).fill('130');
    await likely.fill('abc');
    await likely.blur();
    await expect(page.getByText('“abc” is no number; write dollars a ton, such as 165.')).toBeVisible();
    await page.getByRole('button', { name: 'Save the office file' }).click();
    await expect(page.getByText('Not saved yet: 2 things are to mend. All that you typed is still here.')).toBeVisible();
    await page.getByRole('link', { name: 'Name: This is missing; write a name, such as Example County office.' }).click();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toBeFocused();
    await page.keyboard.type('Example County office');
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
    await page.locator('#step-3 > summary').click();
    await expect(likely).toHaveValue('abc');
    await likely.fill('125');
    await likely.blur();
    await page.getByRole('button', { name: 'Save the office file' }).click();
    await expect(page.getByRole('link', { name: 'Hay, likely: 125 is under low (130). Low, likely, high in that order.' })).toBeVisible();
    await likely.fill('165.50');
    await page.getByRole('textbox', { name: 'Hay, high' }).fill('210');
    expect(readOfficeFile(await save(page))).toMatchObject({
      is: 'read',
      office: { head: { name: 'Example County office', startedFrom: 'fescue-belt' }, values: { hayPrice: { likelyUsdPerTon: 165.5 } } },
    });
  });

  test('open a file as text, and refuse a wrong one with its sentence', async ({ page }) => {
    await page.goto('/make-it-yours/');
    const file = (text: string) => ({ name: 'office.css', mimeType: 'text/css', buffer: Buffer.from(text) });
    const field = page.getByLabel('Open an office file');
    await field.setInputFiles(file(fileOf(officeWith('values.talkToSomeone.near', ''))));
    await expect(page.getByText(/^Line \d+, Someone near: People close by: This is empty;/)).toBeVisible();
    await field.setInputFiles(file('body { display: none }'));
    await expect(page.getByText('It is no office file: it must begin with', { exact: false })).toBeVisible();
    await field.setInputFiles(file(writeOffice(anOffice)));
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
    const saved = await save(page);
    expect(readOfficeFile(saved)).toEqual({ is: 'read', office: anOffice });
    await page.reload();
    expect(await save(page)).toBe(saved);
  });

  test('take rows and give them back, and earlier work comes back', async ({ page }) => {
    await openForms(page);
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Example County office');
    await page.locator('#step-2 > summary').click();
    await page.getByRole('button', { name: 'Add a line to call' }).click();
    await page.getByRole('textbox', { name: 'Line 1: Who answers' }).fill('County line');
    await page.getByRole('button', { name: 'Take line 1 away' }).click();
    await expect(page.getByRole('textbox', { name: 'Line 1: Who answers' })).toHaveCount(0);
    await page.locator('.start-again > summary').click();
    await page.getByLabel('Start from').selectOption({ label: 'Plains range' });
    await page.getByRole('button', { name: 'Begin' }).click();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('');
    await page.getByRole('button', { name: 'Put the earlier ones back' }).click();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
  });

  test('can be used by everybody', async ({ page }) => {
    await openForms(page, 'Mountain and irrigated');
    for (let step = 1; step <= 8; step++) {
      if (step > 1) await page.locator(`#step-${step} > summary`).click();
      await expect(page.locator(`#step-${step} .place-fields, #step-${step} .parts`).first()).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).include('main').analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`),
        `step ${step}`,
      ).toEqual([]);
    }
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});

test('the office’s walk: forms, one file beside index.html, and the copy is theirs', async ({ browser }) => {
  const folder = mkdtempSync(join(tmpdir(), 'office-'));
  const site = await serve(dist);
  const context = await browser.newContext(noWorker);
  const page = await context.newPage();
  let taps = 0;
  const tap = async (what: ReturnType<Page['locator']>): Promise<void> => {
    taps++;
    await what.click();
  };
  await page.goto(`${site.origin}/`);
  await tap(page.locator('footer').getByRole('link', { name: 'Make it yours' }));
  await tap(page.getByLabel('Start from'));
  await page.getByLabel('Start from').selectOption({ label: 'Fescue belt' });
  await tap(page.getByRole('button', { name: 'Begin' }));
  await tap(page.getByRole('textbox', { name: 'Name', exact: true }));
  await page.keyboard.type('Example County office');
  await tap(page.getByRole('button', { name: 'Go on to 2. People to call' }));
  await tap(page.getByRole('button', { name: 'Go on to 3. Prices' }));
  await tap(page.getByRole('textbox', { name: 'Hay, likely' }));
  await page.getByRole('textbox', { name: 'Hay, likely' }).fill('150');
  taps++;
  const text = await save(page);
  expect(taps).toBeLessThanOrEqual(10);

  // What somebody does in a file manager: over the one that lies there.
  writeFileSync(join(folder, 'office.css'), text);
  site.replace('/office.css', readFileSync(join(folder, 'office.css'), 'utf8'));
  await page.goto(`${site.origin}/`);
  await expect(edition(page)).toContainText('Edition of Example County office · values of ');
  await page.goto(`${site.origin}/local/`);
  await expect(page.locator('details[data-local="office"]')).toContainText('150');
  await page.goto(`${site.origin}/calculators/hay-to-grass/`);
  await page.getByRole('button', { name: 'Fill in local values, Example County office' }).click();
  await openGroups(page);
  await expect(page.locator('#hay-to-grass-priceUsdPerTon')).toHaveValue('150');
  await page.goto(`${site.origin}/make-it-yours/`);
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
  await context.close();
  await site.stop();
});

test('a phone keeps the office’s file apart: the last one at once, a new one from the next page on, through updates and without a signal', async ({
  browser,
}) => {
  const server = await serve(dist);
  const named = (name: string): string => writeOffice({ ...anOffice, head: { ...anOffice.head, name } });
  server.replace('/office.css', named('First office'));
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(`${server.origin}/`);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null)
      await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }));
  });
  server.replace('/office.css', named('Second office'));
  await page.goto(`${server.origin}/about/`);
  await expect(edition(page)).toContainText('First office');
  await expect.poll(() => page.evaluate(async () => (await (await caches.match('/office.css'))?.text())?.includes('Second office'))).toBe(true);
  await page.goto(`${server.origin}/`);
  await expect(edition(page)).toContainText('Second office');
  // A newer version of the site leaves it as it is.
  server.replace('/worker.js', readFileSync(join(dist, 'worker.js'), 'utf8').replace(/cacheName = family \+ "\w+"/, 'cacheName = family + "newer"'));
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }));
    await registration.update();
    await changed;
  });
  await server.stop();
  await context.setOffline(true);
  await page.goto(`${server.origin}/local/`);
  await expect(edition(page)).toContainText('Second office');
  expect(await shown(page)).toEqual(['office']);
  expect(readFileSync(join(dist, 'worker.js'), 'utf8')).not.toContain('"./office.css",');
  await context.close();
});
