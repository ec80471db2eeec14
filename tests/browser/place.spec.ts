import { expect, test } from '@playwright/test';
import { copyWhole, withWorker } from './copyHere.ts';
import { toMetric } from './forms.ts';
import { give, go, isWritten, open, savedFile, started, withPasture, written } from './placePage.ts';

// What a person keeps: made, typed in, saved, opened again.

test.use({ viewport: { width: 390, height: 844 } });

test('nothing is kept, and it says so, with the way to a file', async ({ page }) => {
  await open(page);
  await expect(page.getByText('Nothing is kept here.')).toBeVisible();
  await page.getByRole('link', { name: 'Open a file' }).click();
  await expect(page.getByLabel('A file of a place')).toBeVisible();
});

test('a place is made, typed in, kept, saved and opened again elsewhere, and comes out as it went in', async ({ page, browser }) => {
  await started(page);
  await withPasture(page, '16 ha');
  await page.getByLabel('Pasture 1: Name').fill('Low bench');
  await go(page, 'Stock');
  await page.getByRole('button', { name: 'Add a kind of stock' }).click();
  await page.getByLabel('Cows: Head').fill('45');
  await page.getByLabel('Half are born by: month').selectOption('April');
  await page.getByLabel('Half are born by: day of the month').fill('4');
  await written(page, '04-04');
  await page.reload();
  await page.locator('summary', { hasText: 'Cows' }).click();
  await expect(page.getByLabel('Cows: Head')).toHaveValue('45');
  await go(page, 'Files');
  const file = await savedFile(page, /^Save Home place as a file/);
  expect(file.name).toMatch(/^holdwater-home-place-\d{4}-\d\d-\d\d\.json$/);
  expect(JSON.parse(file.text)).toMatchObject({
    file: 'holdwater-place',
    places: [{ name: 'Home place', pastures: [{ name: 'Low bench', typed: { areaAc: '16 ha' } }], herd: [{ countHead: 45, birthsDay: '04-04' }] }],
  });
  const other = await browser.newPage();
  await open(other, 'files');
  await give(other, file.text);
  await expect(other.getByText('New here.')).toBeVisible();
  expect(await isWritten(other, 'Low bench'), 'nothing is written before the button').toBe(false);
  await other.getByRole('button', { name: 'Bring in one place' }).click();
  await go(other, 'Ground');
  await other.locator('summary', { hasText: 'Low bench' }).click();
  await expect(other.getByLabel('Low bench: Size')).toHaveValue('16 ha');
  await go(other, 'Files');
  const again = await savedFile(other, /^Save Home place as a file/);
  const bare = (text: string): string => text.replace(/"savedAt": "[^"]*"/, '');
  expect(bare(again.text)).toBe(bare(file.text));
  await other.close();
});

test('whoever begins with the place picks metric before anything is typed, and nothing typed changes', async ({ page }) => {
  await open(page);
  await toMetric(page);
  await page.getByLabel('What do you call your place?').fill('Home place');
  await page.getByRole('button', { name: 'Start it' }).click();
  await withPasture(page, '40');
  const size = page.getByLabel('Pasture 1: Size');
  await expect(size.locator('..')).toContainText('ha');
  // 40 ha over 0.40468564224 ha an acre, the international acre.
  await written(page, '"areaAc":98.842');
  const toUs = page.getByRole('button', { name: 'In inches, acres and pounds', exact: true });
  await toUs.click();
  await expect(size, 'at once, as it was typed').toHaveValue('40 ha');
  await size.fill('some 90');
  await toMetric(page);
  await expect(size, 'what cannot be read yet stays, too').toHaveValue('some 90');
  await expect(page.getByText('Size must be one number, such as 16.19.')).toBeVisible();
  await size.fill('40');
  await page.reload();
  await expect(toUs, 'it is kept').toBeVisible();
  await page.goto('/calculators/rain-on-ground/');
  await expect(page.getByRole('button', { name: 'In inches, acres and pounds', exact: true }), 'for forms, too').toBeEnabled();
});

test('wrong input is told at its field, and stays as it was typed', async ({ page }) => {
  await started(page);
  await withPasture(page, 'about forty');
  await page.getByLabel('Pasture 1: Name').focus();
  const problem = page.locator('.problem', { hasText: 'Size must be one number, such as 40.' });
  await expect(problem).toBeVisible();
  await expect(page.getByLabel('Pasture 1: Size')).toHaveAttribute('aria-invalid', 'true');
  await written(page, 'about forty');
  await page.reload();
  await page.locator('summary', { hasText: 'Pasture 1' }).click();
  await expect(page.getByLabel('Pasture 1: Size')).toHaveValue('about forty');
  await page.getByLabel('Pasture 1: Size').fill('1,250');
  await page.getByLabel('Pasture 1: Name').fill('');
  await page.getByLabel('Pasture 1: Size').focus();
  await expect(page.locator('.problem', { hasText: 'It keeps its name until you type another.' })).toBeVisible();
  await expect(problem).toBeHidden();
});

test('what is taken away can come back', async ({ page }) => {
  await started(page);
  await withPasture(page, '40');
  await page.getByRole('button', { name: 'Take Pasture 1 away' }).click();
  await expect(page.getByText('No pasture yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByLabel('Pasture 1: Size')).toHaveValue('40');
});

test('every view takes what is typed', async ({ page }) => {
  await started(page);
  await page.getByRole('button', { name: 'Add a soil' }).click();
  await page.getByLabel('Soil 1: Texture of the topsoil').selectOption('Silt loam');
  await go(page, 'Feed');
  await page.getByRole('button', { name: 'Add a stack' }).click();
  await page.getByLabel('Stack 1: Bales', { exact: true }).fill('60');
  await page.getByLabel('Hay, likely').fill('165');
  await go(page, 'Water');
  await page.getByRole('button', { name: 'Add a place with water' }).click();
  await page.getByLabel('Water 1: Where the water comes from').selectOption('A pond');
  await page.getByLabel('Water 1: Deepest water').fill('8');
  await go(page, 'Season');
  await page.getByLabel('Turn-in: month').selectOption('April');
  await page.getByLabel('Turn-in: day of the month').fill('31');
  await page.getByLabel('Rain in a usual year', { exact: true }).fill('38');
  await expect(page.locator('.problem', { hasText: 'Turn-in: April has days from 1 to 30. This is “31”.' })).toBeVisible();
  await page.getByLabel('Turn-in: day of the month').fill('20');
  await go(page, 'Tools');
  await page.getByLabel('Your clipping frame').selectOption('A hoop, measured around its edge');
  await page.getByLabel('Inside of the hoop, around its edge').fill('93');
  for (const kept of [
    '"silt-loam"',
    '"baleCount":60',
    '"hayLikelyUsdPerTon":165',
    '"maxDepthFt":8',
    '"turnInDay":"04-20"',
    '"yearRainIn":38',
    '"aroundIn":93',
  ])
    await written(page, kept);
});

test('the demo place is a copy that says so everywhere, and goes at one word', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Open the demo place' }).click();
  for (const view of ['Ground', 'Stock', 'Feed', 'Files']) {
    await go(page, view);
    await expect(page.getByText('Demo place: invented.')).toBeVisible();
  }
  await written(page, '"isDemo":true');
  await page.getByRole('button', { name: 'Throw it away' }).click();
  await go(page, 'Start');
  await expect(page.getByText('Nothing is kept here.')).toBeVisible();
  expect(await isWritten(page, 'isDemo')).toBe(false);
});

test('several places: one is open, another opens with a tap, one is thrown away after a question', async ({ page }) => {
  await started(page);
  await go(page, 'Start');
  await page.getByLabel('Another place: its name').fill('Summer range');
  await page.getByRole('button', { name: 'Start another place' }).click();
  await go(page, 'Start');
  await expect(page.getByRole('heading', { name: 'Summer range' })).toBeVisible();
  await page.getByRole('button', { name: 'Open Home place' }).click();
  await expect(page.getByRole('heading', { name: 'Home place' })).toBeVisible();
  await page.getByLabel('Its name', { exact: true }).fill('The home place');
  await written(page, 'The home place');
  await page.getByRole('button', { name: 'Throw The home place away' }).click();
  await page.getByRole('button', { name: 'Throw it away' }).click();
  await expect(page.getByRole('heading', { name: 'Summer range' })).toBeVisible();
  expect(await isWritten(page, 'The home place')).toBe(false);
});

test('a clock that says a day before the last change of a place is asked about', async ({ page }) => {
  await page.clock.setSystemTime(new Date('2027-06-20T09:00:00'));
  await started(page, 'Creek place');
  await written(page, 'Creek place');
  await page.clock.setSystemTime(new Date('2027-06-21T09:00:00'));
  await page.goto('/calculators/days-of-grass/');
  await page.locator('[data-calculator][data-ready]').waitFor();
  await expect(page.locator('.clock-asked')).toHaveCount(0);
  // After the day on which the copy was built, so that this alone can be what is asked about.
  await page.clock.setSystemTime(new Date('2027-06-18T09:00:00'));
  await page.reload();
  await expect(page.getByText('This device says Jun 18, 2027. Is that today?')).toBeVisible();
});

test('after two weeks and ten changes it asks for a file, and later is a week', async ({ page }) => {
  await started(page);
  await written(page, 'Home place');
  const id = await page.evaluate(() => localStorage.getItem('holdwater-open'));
  await page.evaluate(
    (of) => localStorage.setItem(`holdwater-backup:${of}`, JSON.stringify({ at: '2020-01-01T00:00:00.000Z', rev: -20, isFile: true })),
    id,
  );
  await page.reload();
  const line = page.getByText('Much has changed since Home place was last saved as a file.');
  await expect(line).toBeVisible();
  await page.getByRole('button', { name: 'Later' }).click();
  await expect(line).toBeHidden();
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Pastures and soils' })).toBeVisible();
  await expect(line).toBeHidden();
});

test.describe(() => {
  test.use(withWorker);

  test('with no network it opens, keeps and saves', async ({ browser }) => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    await page.goto('/');
    await copyWhole(page);
    await page.reload();
    await context.setOffline(true);
    await started(page);
    await withPasture(page, '40');
    await go(page, 'Files');
    const { text } = await savedFile(page, /^Save Home place as a file/);
    expect(text).toContain('"areaAc": 40');
    await context.close();
  });
});
