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

for (const address of addresses) {
  test(`${address} is quiet, fits a phone and can be used by everybody`, async ({ page }) => {
    const seen = watch(page);
    await page.emulateMedia({ colorScheme: 'light' });
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(address, { waitUntil: 'load' });
    // Folded away it would go unseen here.
    if (address.startsWith('/calculators/'))
      await page.locator('details.working').evaluateAll((all) => {
        for (const each of all) each.setAttribute('open', '');
      });
    const overflowPx = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(overflowPx, 'sideways scroll').toBeLessThanOrEqual(0);
    await emptyFormulas(page);
    expect(await violations(page), 'light').toEqual([]);
    // Only the colours differ.
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await violations(page, ['color-contrast']), 'dark').toEqual([]);
    expect(seen).toEqual([]);
  });
}
