// Carrying on: a step back, what was worked out before, a copy, and names on paper that no link carries.
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { big, compare, field, openForm, openGroups, ready, stamp, standsStill } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';

test.use({ viewport: { width: 390, height: 844 }, permissions: ['clipboard-read', 'clipboard-write'] });

const morning = '2027-06-20T07:00:00';
const live = (page: Page) => page.locator('[data-carry-on][data-live]').waitFor();
const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });
const told = (page: Page) => page.locator('.carry-told');
async function leave(page: Page, id: string, text: string): Promise<void> {
  await field(page, id).fill(text);
  await field(page, id).blur();
  await expect(undo(page)).toBeEnabled();
}
const copiedNote = async (page: Page): Promise<string> => {
  await page.getByRole('button', { name: 'Copy note' }).click();
  await expect(page.locator('.actions .told')).toHaveText(/copied/);
  return page.evaluate(() => navigator.clipboard.readText());
};

test('a step back takes a field, a line, a filled group and a side, one at a time', async ({ page }) => {
  await page.clock.setSystemTime(new Date(morning));
  await openForm(page, 'days-of-grass');
  await live(page);
  await expect(undo(page)).toBeDisabled();
  const begins = await big(page).textContent();
  await leave(page, 'days-of-grass-areaAc', '60');
  await leave(page, 'days-of-grass-heightIn', '8');
  await openGroups(page);
  const lines = page.locator('#days-of-grass-stock .row');
  await page
    .getByRole('button', { name: /^Add another/ })
    .first()
    .click();
  await compare(page);
  // Back through all of it.
  await undo(page).click();
  await expect(told(page)).toHaveText('Taken back: the other side.');
  await expect(page.getByRole('heading', { name: 'What differs' })).toHaveCount(0);
  await openGroups(page);
  const before = await lines.count();
  expect(before).toBeGreaterThan(1);
  await undo(page).click();
  await expect(told(page)).toHaveText(/^Taken back: Stock/);
  expect(await lines.count()).toBeLessThan(before);
  await undo(page).click();
  await expect(field(page, 'days-of-grass-heightIn')).not.toHaveValue('8');
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('60');
  await undo(page).click();
  await expect(field(page, 'days-of-grass-areaAc')).not.toHaveValue('60');
  await expect(undo(page)).toBeDisabled();
  await expect(big(page)).toHaveText(begins ?? 'none');
  await expect(stamp(page)).toHaveText('Example, not your numbers');
  // The address goes back as well, or what was taken back would return with the next visit.
  await standsStill(page.locator('main form.screen'));
  await page.reload();
  await ready(page, 'days-of-grass');
  await expect(field(page, 'days-of-grass-areaAc')).not.toHaveValue('60');
  await expect(big(page)).toHaveText(begins ?? 'none');
  await expect(stamp(page)).toHaveText('Example, not your numbers');
});

test('what is done one after the other on a device that is busy stays steps of their own', async ({ page }) => {
  // Timers wait there until there is room: here for as long as all of it takes.
  await page.addInitScript(() => {
    const later = window.setTimeout.bind(window);
    Object.assign(window, { setTimeout: (act: () => void, ms = 0) => later(act, ms === 0 && 'slow' in window ? 5000 : ms) });
  });
  await openForm(page, 'days-of-grass');
  await live(page);
  await page.evaluate(() => Object.assign(window, { slow: true }));
  const first = await field(page, 'days-of-grass-areaAc').inputValue();
  for (const [id, text] of [
    ['days-of-grass-areaAc', '60'],
    ['days-of-grass-heightIn', '8'],
    ['days-of-grass-areaAc', '70'],
  ] as const) {
    await field(page, id).fill(text);
    await field(page, id).blur();
  }
  await page.evaluate(() => Reflect.deleteProperty(window, 'slow'));
  await expect(undo(page)).toBeEnabled();
  await undo(page).click();
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('60');
  await expect(field(page, 'days-of-grass-heightIn')).toHaveValue('8');
  await undo(page).click();
  await expect(field(page, 'days-of-grass-heightIn')).not.toHaveValue('8');
  await undo(page).click();
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue(first);
  await expect(undo(page)).toBeDisabled();
});

test('the key takes a step back outside text fields and leaves the browser’s own undo inside them', async ({ page }) => {
  await openForm(page, 'rain-on-ground');
  await live(page);
  await leave(page, 'rain-on-ground-rainIn', '3');
  await field(page, 'rain-on-ground-rainIn').press('End');
  await page.keyboard.type('4');
  await page.keyboard.press('ControlOrMeta+z');
  // The browser took back what was typed there; the step before it still stands.
  await expect(field(page, 'rain-on-ground-rainIn')).toHaveValue('3');
  await field(page, 'rain-on-ground-rainIn').blur();
  await page.keyboard.press('ControlOrMeta+z');
  await expect(field(page, 'rain-on-ground-rainIn')).toHaveValue('1');
});

test('a chosen pasture and a figure of the place that was used go back as well', async ({ page }) => {
  await page.clock.setSystemTime(new Date(morning));
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await openForm(page, 'days-of-grass');
  await live(page);
  const low = page.getByRole('button', { name: 'Low bench' });
  await low.click();
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('85');
  await leave(page, 'days-of-grass-areaAc', '50');
  await page.getByRole('button', { name: 'use it' }).click();
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('85');
  await undo(page).click();
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('50');
  await undo(page).click();
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('85');
  await expect(low).toHaveAttribute('aria-pressed', 'true');
  await undo(page).click();
  await expect(low).toHaveAttribute('aria-pressed', 'false');
  await expect(field(page, 'days-of-grass-areaAc')).not.toHaveValue('85');
});

test('what was worked out is listed with whose it is, and opens as it was', async ({ page }) => {
  await page.clock.setSystemTime(new Date(morning));
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await openForm(page, 'days-of-grass');
  await live(page);
  await page.getByRole('button', { name: 'Low bench' }).click();
  await leave(page, 'days-of-grass-heightIn', '6');
  await standsStill(page.locator('[data-form]'));
  const answer = await big(page).textContent();
  await openForm(page, 'rain-on-ground');
  await live(page);
  await leave(page, 'rain-on-ground-rainIn', '2');
  await page.getByRole('button', { name: 'Recent' }).click();
  const list = page.getByRole('list', { name: 'Recent calculations' }).getByRole('listitem');
  await expect(list).toHaveCount(2);
  await expect(list.nth(1)).toContainText('Days of grass left');
  await expect(list.nth(1)).toContainText('Low bench, Two Bench place');
  await expect(list.nth(1)).toContainText('Jun 20, 2027');
  await list.nth(1).getByRole('link').click();
  await ready(page, 'days-of-grass');
  await expect(big(page)).toHaveText(answer ?? 'none');
  await expect(page.getByRole('button', { name: 'Low bench' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByText('These are the figures of a link')).toHaveCount(0);
  await expect(stamp(page)).toHaveText(/^Your (?:numbers|answers)/);
  expect(page.url()).not.toMatch(/bench/i);
  // Carried on, it stays the one entry that it was.
  await live(page);
  await leave(page, 'days-of-grass-heightIn', '7');
  await page.getByRole('button', { name: 'Recent' }).click();
  await expect(list).toHaveCount(2);
  await expect(list.first()).toContainText('Days of grass left');
  await page.getByRole('button', { name: 'Forget all of these' }).click();
  await page.getByRole('button', { name: 'Recent' }).click();
  await page.getByRole('button', { name: 'Recent' }).click();
  await expect(page.getByText('Nothing yet.')).toBeVisible();
});

test('a copy leaves the first one as it was', async ({ page }) => {
  await openForm(page, 'rain-on-ground');
  await live(page);
  await leave(page, 'rain-on-ground-rainIn', '2');
  await page.getByRole('button', { name: 'Duplicate' }).click();
  await expect(told(page)).toContainText('stays under Recent');
  await leave(page, 'rain-on-ground-rainIn', '5');
  await page.getByRole('button', { name: 'Recent' }).click();
  const links = page.getByRole('list', { name: 'Recent calculations' }).getByRole('link');
  await expect(links).toHaveCount(2);
  await expect(links.first()).toHaveAttribute('href', /rain=5in/);
  await expect(links.last()).toHaveAttribute('href', /rain=2in/);
});

test('without a place, for whom and by whom go onto paper and into notes and calendars, and into no link', async ({ page }) => {
  await page.clock.setSystemTime(new Date(morning));
  await openForm(page, 'rest-and-moves');
  await live(page);
  await page.getByRole('button', { name: 'For: … By: …' }).click();
  await page.getByLabel('For', { exact: true }).fill('Creek place');
  await page.getByLabel('By', { exact: true }).fill('A. R.');
  await expect(page.getByRole('button', { name: 'For: Creek place By: A. R.' })).toBeVisible();
  expect(await copiedNote(page)).toMatch(/^Creek place, Jun 20, 2027, by A\. R\.\n/);
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Dates for a calendar' }).click()]);
  expect(readFileSync(await file.path(), 'utf8').replaceAll(/\r\n[ \t]/g, '')).toContain('Creek place\\, Jun 20\\, 2027\\, by A. R.');
  await page.getByRole('button', { name: 'Copy link' }).click();
  await expect(page.locator('.actions .told')).toHaveText('Link copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).not.toMatch(/creek|a\.\s?r\./i);
  expect(page.url()).not.toMatch(/creek/i);
  await page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset['printed'] = '';
    };
  });
  await page.getByRole('button', { name: 'Print' }).click();
  await expect(page.locator('html[data-printed]')).toHaveCount(1);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.locator('.paper-whose').first()).toHaveText('Creek place, Jun 20, 2027');
  await expect(page.locator('.paper-by').first()).toHaveText('By A. R.');
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  // The adviser is the same at the next calculator, and beside a place.
  await keepPlace(page, twoBench);
  await openForm(page, 'rain-on-ground');
  await live(page);
  await expect(page.getByRole('button', { name: 'By: A. R.' })).toBeVisible();
  expect(await copiedNote(page)).toMatch(/^Two Bench place, Jun 20, 2027, by A\. R\.\n/);
});

for (const width of [320, 390])
  test(`the line stays within ${width}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    await openForm(page, 'days-of-grass');
    await live(page);
    await leave(page, 'days-of-grass-heightIn', '6');
    for (const name of ['Recent', 'For: … By: …']) await page.getByRole('button', { name }).click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
