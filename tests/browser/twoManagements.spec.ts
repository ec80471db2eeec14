// Two managements side by side, from the form to paper and into a visit.
import { expect, type Page, test } from '@playwright/test';
import { compare, field, figure, openForm, stamp, standsStill } from './forms.ts';

const trays = 'rain-demonstration';
const that = (page: Page, key: string) => field(page, `${trays}-that-${key}`);
/** The example's tray beside one that was rested, all of it read anew. */
async function restedBeside(page: Page): Promise<void> {
  await openForm(page, trays);
  await compare(page);
  for (const key of ['cover', 'firstRunS', 'runoffMl', 'throughMl']) await expect(that(page, key), key).toBeVisible();
  await that(page, 'cover').selectOption('rested-sod');
  await that(page, 'runoffMl').fill('300');
  await that(page, 'firstRunS').fill('600');
  await that(page, 'throughMl').fill('1200');
  await field(page, `${trays}-name-this`).fill('Overgrazed');
  await field(page, `${trays}-name-that`).fill('Rested');
  await standsStill(page.locator('form.screen'));
}

test('two trays are told by what ran off, each by its own jars', async ({ page }) => {
  await restedBeside(page);
  await expect(figure(page)).toHaveText('49');
  await expect(page.locator('.answer .big-what')).toHaveText('less of the water ran off');
  await expect(page.locator('.in-view-what')).toHaveText('less of the water ran off');
  await expect(page.locator('.note').nth(1)).toContainText('it ran after 0.50 in of rain, and 6 % ran off; 26 % came out below');
  await expect(page.locator('.is-that .field', { hasText: 'Seconds from the first drop' }).locator('.whose')).toHaveText('yours');
  await page.reload();
  await expect(that(page, 'throughMl')).toHaveValue(/^1,?200/);
});

test('whose figures two sides are reads alike on screen, on paper and in a visit, where both stand', async ({ page }) => {
  await restedBeside(page);
  const line = /^4 of \d+ yours; the rest from the example$/;
  await expect(stamp(page)).toHaveText(line);
  await page.evaluate(() => {
    window.print = () => {
      dispatchEvent(new Event('beforeprint'));
    };
  });
  // Prints once the sheet has come.
  await page.getByRole('button', { name: 'Print' }).click();
  const paper = page.locator('.is-handout');
  await expect(paper.locator('.paper-stamp')).toHaveText(line);
  await expect(paper.locator('.big')).toContainText('49 % less of the water ran off');
  await expect(paper.locator('.paper-results tr', { hasText: 'Stayed in the tray' })).toContainText('34 %');
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await page.getByRole('button', { name: 'Keep this result' }).click();
  await page.getByLabel('Name of the place').fill('Home place');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByRole('link', { name: 'Open the visit' }).click();
  const kept = page.locator('.coming > li');
  await expect(kept.locator('b').first()).toHaveText(line);
  await expect(kept.locator('dt')).toHaveText([
    'Overgrazed: Rain that was on when it began to run',
    'Rested: Rain that was on when it began to run',
    'Overgrazed: Ran off the top',
    'Rested: Ran off the top',
  ]);
});
