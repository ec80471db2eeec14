// Whoever listens, or sees only the colors of the device, learns what the page shows.
import { expect, type Page, test } from '@playwright/test';
import { openForms } from './officeHere.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { button, go, open, placed } from './placePage.ts';
import { keepersPhone, morning, open as openRecord } from './recordOfOnes.ts';
import { begun } from './visitsOfOnes.ts';

test.use(keepersPhone);

/** Keeps from now on what is read aloud: what comes into a region that stood there before, and alerts. */
const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const heard: string[] = [];
    const isAlert = (node: Node): boolean => node instanceof Element && node.matches('[role=alert]');
    new MutationObserver((records) => {
      for (const { target, type, addedNodes } of records) {
        const around = target instanceof Element ? target : target.parentElement;
        const isHeard = around?.closest('[role=status], [role=alert], [aria-live]') != null;
        const nodes = type === 'characterData' ? [target] : [...addedNodes].filter((node) => isHeard || isAlert(node));
        if (type === 'characterData' && !isHeard) continue;
        for (const { textContent } of nodes) if (textContent) heard.push(textContent);
      }
    }).observe(document, { subtree: true, childList: true, characterData: true });
    Object.assign(window, { heard });
  });
const heard = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const found: unknown = Reflect.get(window, 'heard');
    return Array.isArray(found) ? found.map(String) : [];
  });
/** These words once, and no second time a while later. */
async function hearsOnce(page: Page, words: string): Promise<void> {
  const times = async (): Promise<number> => (await heard(page)).filter((each) => each.includes(words)).length;
  await expect.poll(times, { message: words }).toBe(1);
  await page.waitForTimeout(700);
  expect(await times(), words).toBe(1);
}

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
