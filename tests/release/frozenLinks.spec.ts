// Every link that ever shipped, opened with a place kept and without: the place may change nothing in it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { openForm, standsStill } from '../browser/forms.ts';
import { keepPlace, twoBench } from '../browser/placeOfOnes.ts';
import { morning } from '../browser/signal.ts';

test.use({ serviceWorkers: 'block' });

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
  await standsStill(form, 1500);
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
/** Each link waits for a form that stands still, so some wait together. */
const atOnce = 4;
/** What each of these links shows, in their order, and what else `look` finds there. */
async function heldByEach(
  context: BrowserContext,
  slug: string,
  queries: readonly string[],
  look?: (page: Page) => Promise<void>,
): Promise<readonly unknown[]> {
  const held: unknown[] = [];
  const waiting = [...queries.entries()];
  const oneByOne = async (): Promise<void> => {
    const page = await context.newPage();
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const [index, query] = next;
      await openForm(page, slug, `?${query}`);
      await look?.(page);
      held[index] = await heldBy(page);
    }
    await page.close();
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, queries.length) }, oneByOne));
  return held;
}
for (const { slug, queries } of frozen)
  test(`all frozen links open with a place as without: ${slug}`, async ({ page, context }) => {
    await context.clock.setFixedTime(new Date(morning));
    const without = await heldByEach(context, slug, queries);
    await page.goto('/');
    await keepPlace(page, twoBench);
    const kept = await heldByEach(context, slug, queries, (tab) => expect(tab.getByText('These are the figures of a link.')).toBeVisible());
    for (const [index, query] of queries.entries()) expect(kept[index], query).toEqual(without[index]);
  });
