import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';

const addresses = filesOf(dist, /\.html$/).map(addressOf);

/** Everything that a page says on the console or asks of another site. */
function watch(page: Page): readonly string[] {
  const seen: string[] = [];
  page.on('console', (message) => seen.push(`${message.type()}: ${message.text()}`));
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
  // There are no frames to look into, and nothing is said about what is right.
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'], ...(rules ? { runOnly: [...rules] } : {}) });
  const { violations: found } = await axe.analyze();
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
};

/** Pages of one making, told apart by their rows alone: they share a test, and their colours are looked at once. */
const isTable = (address: string): boolean => /^\/tables\/./.test(address);
const tablesTogether = 14;

async function look(page: Page, address: string, schemes: 'light' | 'both'): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(address, { waitUntil: 'load' });
  // Folded away it would go unseen here.
  if (address.startsWith('/calculators/'))
    await page.locator('details.working').evaluateAll((all) => {
      for (const each of all) each.setAttribute('open', '');
    });
  const overflowPx = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(overflowPx, `sideways scroll of ${address}`).toBeLessThanOrEqual(0);
  await emptyFormulas(page);
  expect(await violations(page), `${address} in light`).toEqual([]);
  if (schemes === 'light') return;
  // Only the colours differ.
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await violations(page, ['color-contrast']), `${address} in dark`).toEqual([]);
}

for (const address of addresses.filter((each) => !isTable(each))) {
  test(`${address} is quiet, fits a phone and can be used by everybody`, async ({ page }) => {
    const seen = watch(page);
    await look(page, address, 'both');
    expect(seen).toEqual([]);
  });
}

const tables = addresses.filter(isTable);
for (let from = 0; from < tables.length; from += tablesTogether) {
  const some = tables.slice(from, from + tablesTogether);
  test(`${some[0]} and the tables after it are quiet, fit a phone and can be used by everybody`, async ({ page }) => {
    const seen = watch(page);
    for (const [index, address] of some.entries()) await look(page, address, index === 0 ? 'both' : 'light');
    expect(seen).toEqual([]);
  });
}
