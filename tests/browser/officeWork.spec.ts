// Work on an office's forms is lost to nothing: another office in the copy, other work begun, two windows, a store that is full or refused.
import { expect, type Page, test } from '@playwright/test';
import { readOfficeFile, writeOffice } from '../../src/office/model/officeFile.ts';
import { anOffice, officeWith } from '../office/anOffice.ts';
import { hearsOnce, listen } from './heard.ts';
import { fileOf, openForms, put, save } from './officeHere.ts';

const high = (page: Page) => page.getByRole('textbox', { name: 'Hay, high' });
const name = (page: Page) => page.getByRole('textbox', { name: 'Name', exact: true });
const prices = (page: Page) => page.locator('#step-3 > summary');
/** The file of an office with another price. */
const withHigh = (usdPerTon: number): string => fileOf(officeWith('values.hayPrice.highUsdPerTon', usdPerTon));
const asked = (page: Page) => page.getByRole('alert').filter({ hasText: 'This copy holds other values than the ones you began from.' });
const file = (css: string) => ({ name: 'office.css', mimeType: 'text/css', buffer: Buffer.from(css) });
/** Forms begun from the office of this copy, with its price of hay made another. */
async function changed(page: Page, price: string): Promise<void> {
  await put(page, writeOffice(anOffice));
  await page.goto('/make-it-yours/');
  await page.getByRole('button', { name: 'Change the values of this copy' }).click();
  await prices(page).click();
  await high(page).fill(price);
}
/** The same address with another file beside its first page. */
async function another(page: Page, css: string): Promise<void> {
  await page.unroute('**/office.css');
  await put(page, css);
  await page.goto('/make-it-yours/');
  await expect(page.getByRole('heading', { name: 'Eight steps' })).toBeVisible();
}

test.describe('where the copy holds another office than the one that work was begun from', () => {
  test('it is said at the top, the copy’s values are taken, and the work comes back after a reload', async ({ page }) => {
    await changed(page, '222');
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Eight steps' })).toBeVisible();
    await expect(asked(page)).toHaveCount(0);
    await another(page, withHigh(260));
    await expect(asked(page)).toContainText('They differ in: Hay.');
    await prices(page).click();
    await expect(high(page)).toHaveValue('222');
    await page.getByRole('button', { name: 'Take the values of this copy' }).click();
    await expect(page.getByRole('heading', { name: 'Eight steps' })).toBeFocused();
    await expect(asked(page)).toHaveCount(0);
    await page.reload();
    await prices(page).click();
    await expect(high(page)).toHaveValue('260');
    await page.getByRole('button', { name: 'Put it back' }).click();
    await expect(asked(page)).toHaveCount(0);
    await prices(page).click();
    await expect(high(page)).toHaveValue('222');
    // And once more, to what the copy holds.
    await page.getByRole('button', { name: 'Put it back' }).click();
    await prices(page).click();
    await expect(high(page)).toHaveValue('260');
  });

  test('somebody goes on with the work, and is not asked again', async ({ page }) => {
    await changed(page, '222');
    await another(page, withHigh(260));
    await page.getByRole('button', { name: 'Go on with mine' }).click();
    await expect(asked(page)).toHaveCount(0);
    await page.reload();
    await prices(page).click();
    await expect(high(page)).toHaveValue('222');
    await expect(asked(page)).toHaveCount(0);
    // The copy's own are still to be had.
    await page.locator('.start-again > summary').click();
    await page.getByRole('button', { name: 'Change the values of this copy' }).click();
    await prices(page).click();
    await expect(high(page)).toHaveValue('260');
    await another(page, withHigh(290));
    await expect(asked(page)).toBeVisible();
  });

  test('nothing is asked of what was saved and put in, nor before it is put in', async ({ page }) => {
    await changed(page, '222');
    await page.getByRole('button', { name: 'Make it today for “Seen”' }).first().click();
    const text = await save(page);
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Eight steps' })).toBeVisible();
    await expect(asked(page)).toHaveCount(0);
    await prices(page).click();
    await high(page).fill('223');
    await another(page, text);
    await expect(asked(page)).toHaveCount(0);
    await prices(page).click();
    await expect(high(page)).toHaveValue('223');
  });

  test('work that an older copy of these pages kept is asked about too, and kept', async ({ page }) => {
    await put(page, withHigh(260));
    await page.goto('/about/');
    await page.evaluate(
      (text) => localStorage.setItem('holdwater-office-draft', text),
      JSON.stringify(officeWith('values.hayPrice.highUsdPerTon', 222)),
    );
    await page.goto('/make-it-yours/');
    await expect(asked(page)).toBeVisible();
    await page.getByRole('button', { name: 'Take the values of this copy' }).click();
    await page.reload();
    await page.getByRole('button', { name: 'Put it back' }).click();
    await prices(page).click();
    await expect(high(page)).toHaveValue('222');
  });
});

test.describe('other work in place of what was begun', () => {
  const ways: Readonly<Record<string, (page: Page) => Promise<void>>> = {
    'starting anew': async (page) => {
      await page.getByLabel('Start from').selectOption({ label: 'Plains range' });
      await page.getByRole('button', { name: 'Begin' }).click();
    },
    'opening a file': (page) => page.getByLabel('Open an office file').setInputFiles(file(withHigh(260))),
    'changing the values of this copy': (page) => page.getByRole('button', { name: 'Change the values of this copy' }).click(),
  };
  for (const [way, go] of Object.entries(ways))
    test(`${way} leaves the earlier work within reach, over a reload and over more tries`, async ({ page }) => {
      await changed(page, '222');
      const start = page.locator('.start-again > summary');
      await start.click();
      await go(page);
      await expect(page.locator('.part-back')).toContainText('What stood here before is kept too: Example County office.');
      await page.reload();
      await expect(page.locator('.part-back')).toBeVisible();
      // Somebody looks at two more kinds of country.
      for (const country of ['Fescue belt', 'Plains range']) {
        await start.click();
        await page.getByLabel('Start from').selectOption({ label: country });
        await page.getByRole('button', { name: 'Begin' }).click();
        // The country has come.
        await expect(page.locator('.start-again')).not.toHaveAttribute('open');
      }
      await page.getByRole('button', { name: 'Put it back' }).click();
      await prices(page).click();
      await expect(high(page)).toHaveValue('222');
    });
});

test('two windows work on the same forms: what is typed in one stands in the other, and nothing is lost', async ({ page, context }) => {
  await openForms(page, 'Plains range');
  const other = await context.newPage();
  await other.goto('/make-it-yours/');
  await name(page).fill('Example County office');
  await expect(name(other)).toHaveValue('Example County office');
  await other.getByRole('textbox', { name: 'Phone' }).fill('555-0100');
  await prices(page).click();
  await high(page).fill('233');
  for (const each of [page, other]) {
    await each.reload();
    await expect(name(each)).toHaveValue('Example County office');
    await expect(each.getByRole('textbox', { name: 'Phone' })).toHaveValue('555-0100');
    await prices(each).click();
    await expect(high(each)).toHaveValue('233');
  }
  // Begun anew in one, the work is within reach in both.
  await other.locator('.start-again > summary').click();
  await other.getByRole('button', { name: 'Begin' }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(name(page)).toHaveValue('Example County office');
  await expect(name(other)).toHaveValue('Example County office');
});

test('a window that heard of no other writes over nothing', async ({ page, context }) => {
  await openForms(page);
  // As a window that lies asleep.
  await page.evaluate(() => addEventListener('storage', (event) => event.stopImmediatePropagation(), { capture: true }));
  const other = await context.newPage();
  await other.addInitScript(() => addEventListener('storage', (event) => event.stopImmediatePropagation()));
  await other.goto('/make-it-yours/');
  await name(page).fill('Example County office');
  await expect(name(other)).toHaveValue('');
  await other.getByRole('textbox', { name: 'Phone' }).fill('555-0100');
  await expect(name(other)).toHaveValue('Example County office');
});

/** Full up to the last letter. */
const fillUp = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (let size = 1024 * 1024; size >= 1; size = Math.floor(size / 2))
      try {
        for (let index = 0; ; index++) localStorage.setItem(`full-${size}-${index}`, 'x'.repeat(size));
      } catch {
        // The next smaller one.
      }
  });

test.describe('a store that keeps nothing', () => {
  const bar = (page: Page) => page.getByText('This window keeps nothing. Save the file before you close it.');

  test('refused: forms work, it is said, and the file is saved', async ({ page }) => {
    await page.addInitScript(() =>
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('refused', 'SecurityError');
        },
      }),
    );
    await openForms(page, 'Plains range');
    await expect(bar(page)).toBeVisible();
    await name(page).fill('Example County office');
    await page.getByRole('textbox', { name: 'Phone' }).fill('555-0100');
    await page.locator('.start-again > summary').click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.getByRole('button', { name: 'Put it back' }).click();
    expect(readOfficeFile(await save(page))).toMatchObject({ office: { head: { name: 'Example County office', phone: '555-0100' } } });
  });

  test('full: what was kept stays, work goes on in the window, and it asks before it is closed', async ({ page }) => {
    await openForms(page, 'Plains range');
    await name(page).fill('Example County office');
    await fillUp(page);
    await page.locator('.start-again > summary').click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await expect(bar(page)).toBeVisible();
    await name(page).fill('Another office');
    await page.getByRole('textbox', { name: 'Phone' }).fill('555-0100');
    await expect(name(page)).toHaveValue('Another office');
    expect(readOfficeFile(await save(page))).toMatchObject({ office: { head: { name: 'Another office', phone: '555-0100' } } });
    let isAsked = false;
    page.on('dialog', async (dialog) => {
      isAsked = dialog.type() === 'beforeunload';
      await dialog.accept();
    });
    await page.reload();
    expect(isAsked).toBe(true);
    await expect(name(page)).toHaveValue('Example County office');
  });

  test('full while somebody types: it is said once, all that is typed stands and is saved, and it is kept as soon as there is room', async ({
    page,
  }) => {
    await openForms(page, 'Plains range');
    await name(page).fill('Example County office');
    await fillUp(page);
    await listen(page);
    await name(page).fill('Example County office, upper valley');
    await expect(bar(page)).toBeVisible();
    await page.getByRole('textbox', { name: 'Phone' }).fill('555-0100');
    await hearsOnce(page, 'This window keeps nothing. Save the file before you close it.');
    await prices(page).click();
    await high(page).fill('222');
    await page.getByRole('button', { name: 'Make it today for “Seen”' }).first().click();
    const typed = { head: { name: 'Example County office, upper valley', phone: '555-0100' }, values: { hayPrice: { highUsdPerTon: 222 } } };
    expect(readOfficeFile(await save(page))).toMatchObject({ office: typed });
    // What lay there before was not torn in two.
    expect(await page.evaluate(() => localStorage.getItem('holdwater-office-draft'))).toContain('Example County office');
    await page.evaluate(() => {
      for (const key of Object.keys(localStorage)) if (key.startsWith('full-')) localStorage.removeItem(key);
    });
    await high(page).fill('223');
    await expect(bar(page)).toHaveCount(0);
    await page.reload();
    await expect(name(page)).toHaveValue('Example County office, upper valley');
    await expect(page.getByRole('textbox', { name: 'Phone' })).toHaveValue('555-0100');
    await prices(page).click();
    await expect(high(page)).toHaveValue('223');
  });
});
