// Whoever listens, or sees only the colors of the device, learns what the page shows.
import { expect, type Page, test } from '@playwright/test';
import { aPlan } from '../place/aRow.ts';
import { heard, hearsOnce, listen } from './heard.ts';
import { openForms } from './officeHere.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { button, go, open, placed } from './placePage.ts';
import { keepersPhone, morning, open as openRecord, placeId, record } from './recordOfOnes.ts';
import { begun } from './visitsOfOnes.ts';

test.use(keepersPhone);

test.describe('in the colors of the device', () => {
  test.use({ forcedColors: 'active' });
  const styleOf = (page: Page, selector: string, name: 'backgroundColor' | 'borderBottomColor'): Promise<readonly string[]> =>
    page.locator(selector).evaluateAll((all, key) => [...new Set(all.map((each) => getComputedStyle(each)[key]))], name);

  test('what is chosen differs from what is not', async ({ page }) => {
    await begun(page);
    await button(page, 'High bench').tap();
    const [chosen] = await styleOf(page, '.chips [aria-pressed=true]', 'backgroundColor');
    expect(await styleOf(page, '.chips [aria-pressed=false]', 'backgroundColor')).not.toContain(chosen);
    // Else its words stand on a plate of their own color.
    await expect(button(page, 'High bench')).toHaveCSS('forced-color-adjust', 'none');
    await page.goto('/local/');
    const pick = page.locator('[data-pick]');
    await expect(pick.first()).toBeVisible();
    await pick.first().tap();
    const [mine] = await styleOf(page, '[data-pick][aria-pressed=true]', 'backgroundColor');
    expect(await styleOf(page, '[data-pick][aria-pressed=false]', 'backgroundColor')).not.toContain(mine);
  });

  test('where one is differs from where one can go, in a visit too', async ({ page }) => {
    await begun(page);
    const here = page.getByRole('navigation', { name: 'Your place' }).getByRole('link', { name: 'Visits' });
    await expect(here).toHaveAttribute('aria-current', 'true');
    for (const nav of ['.place-views a', '.top nav a']) {
      if (nav.startsWith('.top')) await page.goto('/guides/');
      const [current] = await styleOf(page, `${nav}[aria-current]`, 'borderBottomColor');
      expect(await styleOf(page, `${nav}:not([aria-current])`, 'borderBottomColor'), nav).not.toContain(current);
    }
  });
});

test('a number that the gate cannot keep is told once, by key and by button', async ({ page }) => {
  await openRecord(page, 'gate');
  await button(page, 'Rain').tap();
  await button(page, 'other').tap();
  await listen(page);
  const own = page.getByLabel('Rain', { exact: true });
  await own.fill('40');
  await page.keyboard.press('Enter');
  await expect(own).toBeFocused();
  await hearsOnce(page, 'Rain must be from 0 to 30 in.');
  await own.fill('wet');
  await button(page, 'Keep it').tap();
  await hearsOnce(page, 'Rain must be one number, such as 0.4.');
});

test('what is wrong with a field of the place or of the office is told once somebody leaves it', async ({ page }) => {
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await open(page, 'ground');
  await page.locator('summary', { hasText: 'Low bench' }).tap();
  await listen(page);
  const size = page.getByLabel('Low bench: Size');
  await size.fill('abc');
  expect(await heard(page)).toEqual([]);
  await page.keyboard.press('Tab');
  await hearsOnce(page, 'Size must be one number');
  // Passed again it is read with its field, and not told anew.
  await size.focus();
  await page.keyboard.press('Tab');
  await hearsOnce(page, 'Size must be one number');
  const name = page.getByLabel('Low bench: Name');
  await name.fill('');
  await page.keyboard.press('Tab');
  await hearsOnce(page, 'is missing');
  await openForms(page, 'Fescue belt');
  await listen(page);
  await page.locator('#step-3 > summary').tap();
  const likely = page.getByRole('textbox', { name: 'Hay, likely' });
  await likely.fill('abc');
  await page.keyboard.press('Tab');
  await hearsOnce(page, '“abc” is no number');
  await page.locator('#step-1 > summary').tap();
  const web = page.getByRole('textbox', { name: 'Web address of your copy' });
  await web.fill('nowhere');
  await page.keyboard.press('Tab');
  await hearsOnce(page, '“nowhere”');
});

test('two days that do not go together are told once, as the one that brought it is left', async ({ page }) => {
  await openRecord(page, 'record', [...record, aPlan({ placeId, inDay: '2027-07-01', outDay: '2027-07-08' })]);
  await page.locator('summary', { hasText: 'High bench, May 20' }).tap();
  await listen(page);
  // Its words name its days, so they change with them. A key goes to the next part of a day first.
  const out = page.getByLabel(/^High bench, May 20.*: Out$/);
  await out.fill('2027-05-19');
  expect(await heard(page)).toEqual([]);
  await out.blur();
  await hearsOnce(page, 'They went out before they came in. Look at both days.');
  await out.fill('2027-06-30');
  await out.blur();
  await hearsOnce(page, 'Out is a day that has not come yet.');
  await hearsOnce(page, 'Herd 1 was on Low bench then, too, from Jun 8 until now.');
  await page.locator('summary', { hasText: 'Planned moves' }).tap();
  await page.locator('summary', { hasText: 'High bench, Jul 1' }).tap();
  // Of two days it is the first that is set behind the other.
  const planned = page.getByLabel(/^High bench, Jul \d: In$/);
  await planned.fill('2027-07-09');
  await planned.blur();
  await hearsOnce(page, 'They would go out before they come in. Look at both days.');
});

test('a step and a next look before the visit are told once, whichever day brought it', async ({ page }) => {
  await begun(page);
  await page.getByLabel('Day of the visit').fill('2027-06-18');
  await page.getByLabel('Step 1: What').fill('Rest High bench');
  await listen(page);
  const by = page.getByLabel('Step 1: By when');
  await by.fill('2027-06-17');
  expect(await heard(page)).toEqual([]);
  await by.blur();
  await hearsOnce(page, 'That day comes before the visit. Look at both days.');
  const next = page.getByLabel('Day of the next look');
  await next.fill('2027-06-10');
  await next.blur();
  await hearsOnce(page, 'The next look comes before the visit. Look at both days.');
  await next.fill('2027-06-20');
  await by.fill('2027-06-20');
  await by.blur();
  await listen(page);
  const day = page.getByLabel('Day of the visit');
  await day.fill('2027-06-21');
  await day.blur();
  await hearsOnce(page, 'comes before the visit. Look at both days.');
});

test('the day on which a price was seen is told to be missing, once that price is another and is left', async ({ page }) => {
  await openForms(page, 'Plains range');
  await page.locator('#step-3 > summary').tap();
  await page.getByRole('button', { name: 'Make it today for “Seen”' }).first().tap();
  const high = page.getByRole('textbox', { name: 'Hay, high' });
  await listen(page);
  await high.fill('444');
  await expect(page.locator('#step-3').getByText('This is missing').first()).toBeVisible();
  expect(await heard(page)).toEqual([]);
  await page.keyboard.press('Tab');
  await hearsOnce(page, 'This is missing');
});

test('whoever adds something goes on in its first field', async ({ page }) => {
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await open(page, 'ground');
  await button(page, 'Add a pasture').press('Enter');
  await expect(page.getByLabel('Pasture 3: Name')).toBeFocused();
  await button(page, 'Add a soil').press('Enter');
  await expect(page.getByLabel('Soil 1: Name')).toBeFocused();
  await go(page, 'Stock');
  await button(page, 'Add a kind of stock').press('Enter');
  await expect(page.locator('details[open] :is(input, select)').first()).toBeFocused();
  await openForms(page);
  await page.locator('#step-2 > summary').press('Enter');
  const line = page.locator('#step-2 .parts details[open] :is(input, textarea)').first();
  await button(page, 'Add a line to call').press('Enter');
  await expect(line).toBeFocused();
});

test('a tap at the gate is told once, and so is taking it back', async ({ page }) => {
  await page.clock.install({ time: morning });
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await page.goto('/place/#/gate');
  await placed(page);
  await button(page, 'Rain').tap();
  await listen(page);
  await button(page, '0.5').tap();
  await hearsOnce(page, 'Rain Jun 20: 0.50 in.');
  await page.clock.fastForward(11_000);
  await expect(page.getByRole('link', { name: 'In the record' })).toBeVisible();
  await hearsOnce(page, 'Rain Jun 20: 0.50 in.');
  // The same once more is told once more.
  await button(page, 'Hay').tap();
  await expect(page.locator('.gate')).toContainText('They moved');
  await button(page, 'Rain').tap();
  await listen(page);
  await button(page, '1').tap();
  await hearsOnce(page, 'Rain Jun 20: 1.00 in.');
  await button(page, 'Take it back').tap();
  await hearsOnce(page, 'Taken back: Rain Jun 20: 1.00 in.');
});

test('a part of a note says where it went, and keeps the focus at the top; its words go by its name', async ({ page }) => {
  await begun(page);
  await page.getByLabel('What we saw').fill('Bare.');
  await page.getByLabel('What you said').fill('Rest it.');
  await page.getByRole('link', { name: 'Write the note' }).tap();
  await expect(page.getByLabel('What we saw: Words of the note')).toHaveValue('Bare.');
  await expect(page.getByLabel('What you said: Words of the note')).toHaveValue('Rest it.');
  const first = await page.locator('.note-block h3').first().textContent();
  const second = (await page.locator('.note-block h3').nth(1).textContent()) ?? '';
  const count = await page.locator('.note-block').count();
  const up = button(page, `Up ${second}`);
  await listen(page);
  await up.press('Enter');
  await expect(page.locator('.note-block h3').first()).toHaveText(second);
  await hearsOnce(page, `${second}: now 1 of ${count}`);
  await expect(up).toBeFocused();
  await page.keyboard.press('Enter');
  await page.waitForTimeout(200);
  await expect(page.locator('.note-block h3').first()).toHaveText(second);
  await expect(page.locator('.note-block h3').nth(1)).toHaveText(first ?? '');
});
