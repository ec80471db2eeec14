import { gzipSync } from 'node:zlib';
import { type Browser, expect, type Page, test } from '@playwright/test';
import { addressOf, dist, filesOf, sentBytes, textOf } from '../site/builtSite.ts';
import { long } from './walked.ts';

const kB = 1000;
const guides = filesOf(dist, /^guides\/.+\/index\.html$/).map((file) => ({
  address: addressOf(file),
  calculators: new Set([...textOf(dist, file).matchAll(/data-calculator="([^"]+)"/g)].map((found) => found[1])).size,
}));
const withNone = [...guides.filter(({ calculators }) => calculators === 0).map(({ address }) => address), '/about/'];
const withOne = guides.filter(({ calculators }) => calculators === 1).map(({ address }) => address);

/** What the browser asks for from the first request until it is quiet, as a server that compresses would send it. */
async function download(browser: Browser, address: string, then: (page: Page) => Promise<void> = async () => undefined) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto(address, { waitUntil: 'networkidle' });
  const atLoad = asked.length;
  await then(page);
  await context.close();
  const sized = asked.map((path) => ({ path, bytes: sentBytes(dist, path.endsWith('/') ? `${path}index.html` : path) }));
  const sum = (parts: typeof sized): number => parts.reduce((total, { bytes }) => total + bytes, 0);
  return {
    all: sum(sized.slice(0, atLoad)),
    scripts: sum(sized.slice(0, atLoad).filter(({ path }) => path.endsWith('.js'))),
    later: sum(sized.slice(atLoad)),
    list: sized.map(({ path, bytes }) => `${bytes} ${path}`).join('\n'),
  };
}

/** Every fifth is weighed in each run, all before a release. */
for (const [which, step, details] of [
  ['some guides', 5, {}],
  ['all guides', 1, long],
] as const) {
  const taken = (all: readonly string[]): readonly string[] => all.filter((_, index) => index % step === 0);

  test(`${which} without a calculator run next to no script`, details, async ({ browser }) => {
    for (const address of taken(withNone)) {
      const { scripts, list } = await download(browser, address);
      expect(scripts, list).toBeLessThanOrEqual(4 * kB);
    }
  });

  test(`${which} with one calculator stay light`, details, async ({ browser }) => {
    expect(withOne.length).toBeGreaterThan(10);
    for (const address of taken(withOne)) {
      const { scripts, all, list } = await download(browser, address);
      expect.soft(scripts, `scripts of ${address}\n${list}`).toBeLessThanOrEqual(4 * kB);
      expect.soft(all, `all of ${address}\n${list}`).toBeLessThanOrEqual(40 * kB);
    }
  });
}

const zipped = (html: string): number => gzipSync(html, { level: 9 }).length;

test('a calculator’s page is light without its picture, and a picture adds little', () => {
  const pages = filesOf(dist, /^calculators\/[^/]+\/index\.html$/);
  expect(pages.length).toBeGreaterThan(20);
  const faces: string[] = [];
  for (const file of pages) {
    const html = textOf(dist, file);
    const bare = html.replace(/<div class="picture-box">[\s\S]*?<\/svg>/, '');
    if (bare.length < html.length && /class="picture face\b/.test(html)) faces.push(file);
    expect.soft(zipped(bare), file).toBeLessThanOrEqual(14 * kB);
    expect.soft(zipped(html) - zipped(bare), `picture of ${file}`).toBeLessThanOrEqual(14 * kB);
  }
  expect(faces.length).toBeGreaterThan(5);
});

test('a pair of faces is light, for a phone and for a wide screen', () => {
  const pairs = [...textOf(dist, 'index.html').matchAll(/<div class="for-(?:phones|wide)\b[\s\S]*?<\/figure>/g)].map(([pair]) => pair);
  expect(pairs).toHaveLength(2);
  for (const pair of pairs) expect.soft(zipped(pair), pair.slice(0, 40)).toBeLessThanOrEqual(20 * kB);
});

test('a guide fetches what a form looks like once the form is opened', async ({ browser }) => {
  const { list } = await download(browser, '/guides/where-rain-goes/', async (page) => {
    const before = await page.locator('link[rel="stylesheet"]').count();
    await page.locator('.in-guide > summary').first().click();
    await expect(page.locator('[data-calculator][data-ready]').first()).toBeVisible();
    expect(await page.locator('link[rel="stylesheet"]').count()).toBe(before + 2);
    // A rule of each sheet holds: the form's and, in the working, the formulas'.
    await expect(page.locator('.big-figure').first()).toHaveCSS('font-size', /^(36|50|64)px$/);
    expect(await page.evaluate(() => [...document.styleSheets].some(({ href }) => href?.includes('katex') === true))).toBe(true);
  });
  expect(list).toContain('katex');
});

// The index comes whole at the first letter, so a second word costs nothing.
test('the first result of the first search comes cheap', long, async ({ browser }) => {
  for (const words of ['hay', 'rest', 'stubble', 'how much hay', 'pond scum']) {
    const { later, list } = await download(browser, '/search/', async (page) => {
      await page.locator('#query').fill(words);
      await expect(page.locator('#search-results > li').first()).toBeVisible();
    });
    expect(later, list).toBeGreaterThan(0);
    expect.soft(later, `${words}\n${list}`).toBeLessThanOrEqual(130 * kB);
  }
});
