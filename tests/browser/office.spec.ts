import { expect, type Page, test } from '@playwright/test';
import { writeOffice } from '../../src/office/model/officeFile.ts';
import { anOffice, officeWith } from '../office/anOffice.ts';
import { dist } from '../site/builtSite.ts';
import { copyWhole, deploy, newerCopy, newerWhole, update, withWorker } from './copyHere.ts';
import { openGroups } from './forms.ts';
import { edition, fileOf, put } from './officeHere.ts';
import { serve } from './staticServer.ts';
import { long } from './walked.ts';

const shown = (page: Page) =>
  page
    .locator('details[data-local]')
    .evaluateAll((all) => all.filter((each) => each.checkVisibility()).map((each) => each.getAttribute('data-local')));

test.describe('an office’s file beside the first page', () => {
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
    await expect(lines.first().getByRole('link')).toHaveAttribute('href', 'tel:5550199');
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

  test('are gone, and its values there, also where the script that takes the file does not come', async ({ page }) => {
    await put(page, `${writeOffice(anOffice)}h1 { background: red !important }\n`);
    await page.route('**/office.js', (route) => route.abort());
    for (const address of ['/local/', '/guides/leaving-stubble/']) {
      await page.goto(address);
      await expect(edition(page)).toHaveText('Edition of Example County office, 555-0100 · values of Sep 2026');
      expect(new Set(await shown(page))).toEqual(new Set(['office']));
      expect(await page.locator('h1').evaluate((title) => getComputedStyle(title).backgroundColor)).toBe('rgba(0, 0, 0, 0)');
    }
  });

  test('are gone before any script of the page looks, even where no module comes at all', async ({ page }) => {
    await put(page, 'html { display: none }\n');
    await page.route('**/_astro/*.js', (route) => route.abort());
    await page.goto('/about/');
    await expect(page.locator('h1')).toBeVisible();
  });
});

test.describe('a wrong file', () => {
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

test.describe(() => {
  test.use(withWorker);

  test(
    'a phone keeps the office’s file apart: the last one at once, a new one from the next page on, through updates and without a signal',
    long,
    async ({ browser }) => {
      const server = await serve(dist);
      const named = (name: string): string => writeOffice({ ...anOffice, head: { ...anOffice.head, name } });
      server.replace('/office.css', named('First office'));
      const context = await browser.newContext();
      const page = await context.newPage();
      await page.goto(`${server.origin}/`);
      await copyWhole(page);
      server.replace('/office.css', named('Second office'));
      await page.goto(`${server.origin}/about/`);
      await expect(edition(page)).toContainText('First office');
      await expect.poll(() => page.evaluate(async () => (await (await caches.match('/office.css'))?.text())?.includes('Second office'))).toBe(true);
      await page.goto(`${server.origin}/`);
      await expect(edition(page)).toContainText('Second office');
      // A newer version of the site leaves it as it is.
      const newer = newerCopy({ 'local/index.html': (html) => html.replace('</h1>', ', newer</h1>') });
      deploy(server, newer);
      await update(page);
      await newerWhole(page, newer);
      await server.stop();
      await context.setOffline(true);
      await page.goto(`${server.origin}/local/`);
      await expect(edition(page)).toContainText('Second office');
      expect(await shown(page)).toEqual(['office']);
      await expect(page.locator('h1')).toContainText('newer');
      await context.close();
    },
  );
});
