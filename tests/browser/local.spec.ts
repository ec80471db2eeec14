import { expect, type Page, test } from '@playwright/test';
import { field, openGroups } from './forms.ts';

const pick = (page: Page, country: string) => page.addInitScript((slug) => localStorage.setItem('holdwater-country', slug), country);
const shown = (page: Page) =>
  page
    .locator('details[data-local]')
    .evaluateAll((all) => all.filter((each) => each.checkVisibility()).map((each) => each.getAttribute('data-local')));

test('a country is picked once and stays picked', async ({ page }) => {
  await page.goto('/local/');
  expect(await shown(page)).toHaveLength(6);
  await page.getByRole('button', { name: 'Mine is Plains range' }).click();
  expect(await shown(page)).toEqual(['plains-range']);
  await page.reload();
  expect(await shown(page)).toEqual(['plains-range']);
  await expect(page.getByRole('button', { name: 'Mine is Plains range' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByText('Stephan 2 NW', { exact: false })).toBeVisible();
  await page.getByRole('button', { name: 'None: show all of them' }).click();
  expect(await shown(page)).toHaveLength(6);
});

test('the others never flash by: they are gone before the page’s own scripts run', async ({ page }) => {
  await pick(page, 'fescue-belt');
  await page.route('**/_astro/*.js', (route) => route.abort());
  await page.goto('/local/');
  expect(await shown(page)).toEqual(['fescue-belt']);
  await expect(page.getByText('Tall fescue without the toxin', { exact: true }).first()).toBeVisible();
});

test('an unknown country shows them all', async ({ page }) => {
  await pick(page, 'moon');
  await page.goto('/local/');
  expect(await shown(page)).toHaveLength(6);
});

test('paper shows the picked one open', async ({ page }) => {
  await pick(page, 'southern-warm-season');
  await page.goto('/local/');
  await page.emulateMedia({ media: 'print' });
  expect(await shown(page)).toEqual(['southern-warm-season']);
  await expect(page.getByText('Bahiagrass', { exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Mine is Plains range' })).toBeHidden();
});

test('in a guide the six are one folded line between the steps until one is picked, and then it stands open', async ({ page }) => {
  await page.goto('/guides/leaving-stubble/');
  const heights = page.locator('details.local');
  await expect(heights).not.toHaveAttribute('open');
  expect(await shown(page)).toEqual([]);
  await heights.locator('summary').first().click();
  expect(await shown(page)).toHaveLength(6);
  await pick(page, 'fescue-belt');
  await page.reload();
  await expect(heights).toHaveAttribute('open');
  expect(await shown(page)).toEqual(['fescue-belt']);
  await expect(heights.locator('[data-local="fescue-belt"]').getByText('Tall fescue').first()).toBeVisible();
});

test('someone to talk to stands open, with or without a country', async ({ page }) => {
  for (const country of ['', 'mediterranean-annual-range']) {
    if (country !== '') await pick(page, country);
    await page.goto('/guides/bridging-with-hay/');
    await expect(page.getByText('call or text 988', { exact: false })).toBeVisible();
    await expect(page.getByText('Your own doctor, a neighbor', { exact: false })).toBeVisible();
  }
});

test('values are written into a form when asked for, and its link carries them', async ({ page }) => {
  await pick(page, 'fescue-belt');
  await page.goto('/calculators/hay-value/');
  const likely = page.locator('#hay-value-priceUsdPerTon');
  const offer = page.getByRole('button', { name: 'Fill in local values, Fescue belt (3 fields)' });
  await expect(offer).toBeVisible();
  await expect(likely).toHaveValue('135');
  await offer.click();
  await expect(likely).toHaveValue('125');
  await expect(page.locator('.field', { has: likely }).locator('.whose')).toHaveText('from Fescue belt');
  // Two of the three stand in a group that nobody opened.
  await openGroups(page);
  await expect(field(page, 'hay-value-lowPriceUsdPerTon')).toHaveValue('90');
  await expect(field(page, 'hay-value-highPriceUsdPerTon')).toHaveValue('160');
  await expect(page.getByText('Price, likely: $125 a ton (from local values:', { exact: false })).toBeVisible();
  await expect(page).toHaveURL(/[?&]price=125usd\/ton&low-price=90usd\/ton&high-price=160usd\/ton/);
  await page.reload();
  await expect(likely).toHaveValue('125');
  const whose = page.locator('.field', { has: likely }).locator('.whose');
  await expect(whose).toHaveText('from Fescue belt');
  await likely.fill('130');
  await page.waitForTimeout(600);
  await page.reload();
  await expect(likely).toHaveValue('130');
  await expect(whose).toHaveText('yours');
  await openGroups(page);
  await expect(page.locator('.field', { has: field(page, 'hay-value-lowPriceUsdPerTon') }).locator('.whose')).toHaveText('from Fescue belt');
});

test('what somebody typed is left alone', async ({ page }) => {
  await pick(page, 'fescue-belt');
  await page.goto('/calculators/hay-value/');
  await expect(page.locator('[data-local-fill] button')).toBeVisible();
  await page.locator('#hay-value-priceUsdPerTon').fill('150');
  await page.locator('[data-local-fill] button').click();
  await openGroups(page);
  await expect(page.locator('#hay-value-lowPriceUsdPerTon')).toHaveValue('90');
  await expect(page.locator('#hay-value-priceUsdPerTon')).toHaveValue('150');
});

test('a height to stop at is never filled in beside a height to start at that somebody typed', async ({ page }) => {
  await pick(page, 'fescue-belt');
  await page.goto('/calculators/rest-and-moves/');
  const [start, stop] = [page.locator('#rest-and-moves-startHeightIn'), page.locator('#rest-and-moves-stopHeightIn')];
  const offer = page.locator('[data-local-fill] button');
  await expect(offer).toBeVisible();
  await openGroups(page);
  await start.fill('5');
  await start.blur();
  const before = await stop.inputValue();
  await offer.click();
  await expect(start).toHaveValue('5');
  await expect(stop).toHaveValue(before);
});

test('heights are filled in from one row, the high start with the high stop', async ({ page }) => {
  await pick(page, 'southern-warm-season');
  await page.goto('/calculators/rest-and-moves/');
  await page.locator('[data-local-fill] button').click();
  await openGroups(page);
  await expect(page.locator('#rest-and-moves-startHeightIn')).toHaveValue('8');
  await expect(page.locator('#rest-and-moves-stopHeightIn')).toHaveValue('2');
});

test('nobody who picked nothing is asked, and nothing is fetched for them', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto('/calculators/hay-value/', { waitUntil: 'networkidle' });
  await expect(page.locator('[data-local-fill]')).toBeHidden();
  expect(asked.filter((url) => url.includes('/local/'))).toEqual([]);
});
