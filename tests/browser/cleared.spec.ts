// An emptied form names what it waits for, three at a time, and each name leads to its field: whatever folds around that opens, and a keyboard is in it.
import { expect, type Page, test } from '@playwright/test';
import { startTexts } from '../../calculators/kit/state.ts';
import { calculators } from '../support/catalog.ts';
import { openForm, standsStill } from './forms.ts';
import { longUnless } from './walked.ts';

test.use({ viewport: { width: 390, height: 844 } });

const clear = (page: Page) => page.getByRole('button', { name: /^Clear it/ }).click();
const links = (page: Page) => page.locator('.waiting a');

/** With closed groups, with a table that shares its rows with the open questions, with a record; the others in a release. */
const usual = ['hay-to-grass', 'season', 'carrying-capacity', 'ring-test'];

for (const calculator of calculators) {
  const { slug, inputs } = calculator;
  const start = startTexts(inputs);
  /** What the example has at that path. */
  const exampleAt = (at: string): string => {
    const [key = '', index = '', column = ''] = at.split('-');
    const text = start[key] ?? '';
    if (typeof text === 'string') return text;
    const each = text[Number(index)] ?? text[0] ?? '';
    return typeof each === 'string' ? each : (each[column] ?? '');
  };
  test(`what ${slug} waits for once it is cleared leads to its fields, all of them`, longUnless(usual.includes(slug)), async ({ page }) => {
    test.setTimeout(180_000);
    await openForm(page, slug);
    await clear(page);
    // What the cleared answer leaves behind is gone.
    await standsStill(page.locator('main form.screen'));
    const seen = new Set<string>();
    const next = async (): Promise<string | undefined> =>
      (await links(page).evaluateAll((all) => all.map((each) => each.getAttribute('href') ?? ''))).find((href) => !seen.has(href));
    for (let href = await next(); href !== undefined; href = await next()) {
      seen.add(href);
      await page.locator(`.waiting a[href="${href}"]`).focus();
      await page.keyboard.press('Enter');
      const focused = page.locator(`${href}:is(input, select, textarea):focus, fieldset${href} :is(input, select, textarea):focus`);
      await expect(focused, `leads into ${href}`).toHaveCount(1);
      await expect(focused).toBeInViewport();
      const is = await focused.evaluate((field) => (field instanceof HTMLInputElement && field.type === 'radio' ? 'radio' : field.localName));
      const example = exampleAt(href.slice(slug.length + 2));
      if (is === 'radio') await page.locator(`fieldset${href} input[value="${example}"]`).check({ force: true });
      else if (is === 'select') await focused.selectOption(example);
      else if (is === 'textarea') await page.getByRole('button', { name: 'Take this record out' }).click();
      else await focused.fill(example);
    }
    expect(seen.size).toBeGreaterThan(0);
    // What is still told now was answered, and is refused beside the other answers.
    await expect(page.locator('.stamp').first()).not.toHaveText(/^Waits for [2-9]/);
  });
}

test('a line of a table that is still blank says what it wants, as groups do', async ({ page }) => {
  await openForm(page, 'hay-to-grass');
  await clear(page);
  await page.locator('.waiting a', { hasText: 'Kind of stock 1, Kind of stock' }).click();
  await page
    .locator('#hay-to-grass-herd')
    .getByRole('button', { name: /^Close/ })
    .click();
  await expect(page.locator('#hay-to-grass-herd .row-told').first()).toHaveText(/^Still wanted: Kind of stock, /);
  await expect(page.locator('.asks')).not.toContainText('? ?');
  // What was closed since opens again.
  await page.locator('.waiting a', { hasText: 'Kind of stock 1, Kind of stock' }).click();
  await expect(page.locator('#hay-to-grass-herd-0-stock')).toBeFocused();
});

test('what an example decided is asked too, and nothing is said any more of its dates', async ({ page }) => {
  await page.clock.setFixedTime(new Date('2026-12-01T12:00:00'));
  await openForm(page, 'carrying-capacity');
  const said = page.locator('.notices', { hasText: 'Example dates' });
  await expect(said).toBeVisible();
  await clear(page);
  await expect(said).toHaveCount(0);
  await page.getByRole('button', { name: /^Example again/ }).click();
  await expect(said).toBeVisible();
  await openForm(page, 'hay-to-grass');
  await clear(page);
  await expect(page.locator('#hay-to-grass-feeder')).toHaveValue('');
});
