// What a calculator's own page names ahead is what its form begins with, one script after the other, where nothing is named.
import { expect, test } from '@playwright/test';
import { attributes, dist, filesOf, textOf } from '../site/builtSite.ts';
import { ready } from './forms.ts';
import { longUnless } from './walked.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

declare global {
  var fetchedByThen: readonly string[];
}
const links = /<link rel="modulepreload"[^>]*>/g;
const pages = filesOf(dist, /^calculators\/[^/]+\/index\.html$/);
/** One without dates, with dates, with tables, with a tally, with a record. */
const taken = ['storm-runoff', 'days-of-grass', 'stored-water', 'cover-count', 'rain-record'];
/** Those that run long name the form alone. */
const long = ['season'];

for (const file of pages) {
  const slug = file.split('/')[1] ?? '';
  test(`${slug} names ahead what it begins with, and nothing else`, longUnless(taken.includes(slug)), async ({ page }) => {
    const html = textOf(dist, file);
    const named = [...html.matchAll(links)].flatMap(([link]) => attributes(link, 'href'));
    const entries = [...html.matchAll(/<script type="module"[^>]*>/g)].flatMap(([script]) => attributes(script, 'src'));
    const asked = new Set<string>();
    page.on('request', (request) => {
      if (request.resourceType() === 'script') asked.add(new URL(request.url()).pathname);
    });
    await page.route(`**/${file.replace('index.html', '')}`, (route) => route.fulfill({ body: html.replace(links, ''), contentType: 'text/html' }));
    // What draws other answers than were built is asked for early, and is nothing that the form waits for.
    let letGo = () => {};
    const isLive = new Promise<void>((done) => {
      letGo = done;
    });
    await page.route(/\/later\.[^/]*$/, (route) => isLive.then(() => route.continue()));
    await page.addInitScript(() => {
      const watch = new MutationObserver(() => {
        watch.disconnect();
        globalThis.fetchedByThen = performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname);
      });
      watch.observe(document, { subtree: true, attributeFilter: ['data-ready'] });
    });
    await page.goto(`/${file.replace('index.html', '')}`);
    await ready(page, slug);
    letGo();
    const first = (await page.evaluate(() => globalThis.fetchedByThen)).filter((path) => /^\/_astro\/.*\.js$/.test(path) && !entries.includes(path));
    expect(first.length).toBeGreaterThan(3);
    const unnamed = first.filter((path) => !named.includes(path));
    if (!long.includes(slug)) expect(unnamed, 'fetched one after the other').toEqual([]);
    await expect.poll(() => named.filter((path) => !asked.has(path)), 'named in vain').toEqual([]);
  });
}
