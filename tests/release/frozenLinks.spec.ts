// Every link that ever shipped, opened with a place kept and without: the place may change nothing in it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { openForm } from '../browser/forms.ts';
import { keepPlace, twoBench } from '../browser/placeOfOnes.ts';
import { morning } from '../browser/signal.ts';

const catalog = join(import.meta.dirname, '../../calculators/catalog');
const frozen = readdirSync(catalog).map((slug) => {
  const kept: unknown = JSON.parse(readFileSync(join(catalog, slug, 'frozen.json'), 'utf8'));
  if (!Array.isArray(kept)) throw new Error(`no frozen links of ${slug}`);
  const queries = kept.flatMap((each: unknown) =>
    typeof each === 'object' && each !== null && 'query' in each && typeof each.query === 'string' ? [each.query] : [],
  );
  return { slug, queries };
});
/** All that a form says and holds: every field that stands open, what each group is told to hold, the answer and all results, and whose they are. */
async function heldBy(page: Page): Promise<unknown> {
  const form = page.locator('[data-form]');
  // The list of results and the pictures follow a little later: told is what stood still for a while.
  await form.locator('.take').waitFor();
  await form.evaluate(
    (root, quietMs) =>
      new Promise<void>((resolve) => {
        const done = (): void => {
          watcher.disconnect();
          resolve();
        };
        let timer = window.setTimeout(done, quietMs);
        const watcher = new MutationObserver(() => {
          window.clearTimeout(timer);
          timer = window.setTimeout(done, quietMs);
        });
        watcher.observe(root, { subtree: true, childList: true, characterData: true, attributes: true });
      }),
    1500,
  );
  return form.evaluate((root) => ({
    words: root.textContent,
    fields: [...root.querySelectorAll('input, select, textarea')].map((each) => [
      each.id,
      'value' in each ? each.value : '',
      each instanceof HTMLInputElement && each.checked,
    ]),
    address: location.search,
  }));
}
test('every calculator has frozen links to walk', () => {
  expect(frozen.length).toBeGreaterThan(20);
  for (const { slug, queries } of frozen) expect(queries.length, slug).toBeGreaterThan(1);
});
for (const { slug, queries } of frozen)
  test(`all frozen links open with a place as without: ${slug}`, async ({ page }) => {
    await page.clock.setFixedTime(new Date(morning));
    const without: unknown[] = [];
    for (const query of queries) {
      await openForm(page, slug, `?${query}`);
      without.push(await heldBy(page));
    }
    await keepPlace(page, twoBench);
    for (const [index, query] of queries.entries()) {
      await openForm(page, slug, `?${query}`);
      await expect(page.getByText('These are the figures of a link.')).toBeVisible();
      expect(await heldBy(page), query).toEqual(without[index]);
    }
  });
