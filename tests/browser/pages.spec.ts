import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';
import { isAll } from './walked.ts';

/** Looked at in every test run; before a release all. */
const oftenLooked = ['/', '/calculators/decision-dates/', '/guides/where-rain-goes/', '/local/', '/place/', '/search/', '/tables/access/'];
const addresses = filesOf(dist, /\.html$/)
  .map(addressOf)
  .filter((address) => isAll || oftenLooked.includes(address));

/** Said by the driver of the browser itself, of the worker that it keeps out. */
const saidByDriver = 'Service Worker registration blocked by Playwright';
/** Everything that a page says on the console or asks of another site. */
function watch(page: Page): string[] {
  const seen: string[] = [];
  page.on('console', (message) => {
    if (message.text() !== saidByDriver) seen.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => seen.push(`error: ${error.message}`));
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (protocol !== 'data:' && protocol !== 'blob:' && hostname !== '127.0.0.1') seen.push(`request: ${request.url()}`);
  });
  return seen;
}

/** A formula is thousands of spans that a library draws, and walking them takes most of the time. Its box stays, as wide as it was. */
const emptyFormulas = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const formulas = [...document.querySelectorAll<HTMLElement>('.katex')].map((formula) => ({ formula, widthPx: formula.scrollWidth }));
    for (const { formula, widthPx } of formulas) {
      formula.style.width = `${widthPx}px`;
      formula.replaceChildren();
    }
  });

const violations = async (page: Page, rules?: readonly string[]): Promise<readonly string[]> => {
  // Left alone, the checker would put its 1.5 MB into the page twice at each look, which costs more than most looks.
  const isThere = await page.evaluate(() => 'axe' in globalThis);
  // There are no frames to look into, and nothing is said about what is right.
  const axe = new AxeBuilder({ page, ...(isThere ? { axeSource: 'void 0' } : {}) })
    .setLegacyMode()
    .options({ resultTypes: ['violations'], ...(rules ? { runOnly: [...rules] } : {}) });
  const { violations: found } = await axe.analyze();
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
};

/** Tables are of one making, told apart by their rows alone: their colours are looked at once. */
const isTable = (address: string): boolean => /^\/tables\/./.test(address);
/** A page opened in a browser that is warm takes half the time. */
const together = 7;

/** A phone, and a laptop, on which other things stand beside each other. */
const glasses = { phone: { width: 390, height: 844 }, laptop: { width: 1280, height: 800 } } as const;

async function look(page: Page, address: string, glass: keyof typeof glasses, schemes: 'light' | 'both'): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize(glasses[glass]);
  await page.goto(address, { waitUntil: 'load' });
  // Folded away it would go unseen here.
  if (address.startsWith('/calculators/')) {
    await page.locator('details.working, details.group, details.bar, .let-differ').evaluateAll((all) => {
      for (const each of all) each.setAttribute('open', '');
    });
    // The steps come once their fold is open.
    await page.locator('[data-steps-away]').waitFor({ state: 'detached' });
  }
  const overflowPx = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect.soft(overflowPx, `sideways scroll of ${address} on a ${glass}`).toBeLessThanOrEqual(0);
  await emptyFormulas(page);
  expect.soft(await violations(page), `${address} in light on a ${glass}`).toEqual([]);
  if (schemes === 'light') return;
  // Only the colours differ.
  await page.emulateMedia({ colorScheme: 'dark' });
  expect.soft(await violations(page, ['color-contrast']), `${address} in dark on a ${glass}`).toEqual([]);
}

for (let from = 0; from < addresses.length; from += together) {
  const some = addresses.slice(from, from + together);
  test(`${some[0]} to ${some.at(-1)} are quiet, fit ${isAll ? 'a phone and a laptop' : 'a phone'} and can be used by everybody`, async ({ page }) => {
    // The longest lists take a minute each on a busy machine.
    test.setTimeout(600_000);
    expect(oftenLooked.filter((each) => !addresses.includes(each))).toEqual([]);
    const seen = watch(page);
    for (const [index, address] of some.entries()) {
      const schemes = index > 0 && isTable(address) ? 'light' : 'both';
      await look(page, address, 'phone', schemes);
      // The same colours on the same grounds, beside each other: looked at before a release.
      if (isAll) await look(page, address, 'laptop', schemes);
      expect.soft(seen.splice(0), address).toEqual([]);
    }
  });
}
