import { type Browser, type BrowserContext, expect, type Page, test } from '@playwright/test';
import { databaseVersion } from '../../src/place/store/idbBackend.ts';
import { makeDatabase } from '../place/aDatabase.ts';
import firstDatabase from '../place/fixtures/database-1.json' with { type: 'json' };
import { go, isWritten, open, plant, savedFile, started, withPasture, written } from './placePage.ts';

// Every way in which what a person keeps can go wrong, each caused here.

test.use({ viewport: { width: 390, height: 844 } });

test('reload in the middle of a word: the word is there', async ({ page }) => {
  await started(page);
  await withPasture(page, '');
  await page.getByLabel('Pasture 1: Size').pressSequentially('123');
  await page.reload();
  await page.locator('summary', { hasText: 'Pasture 1' }).click();
  await expect(page.getByLabel('Pasture 1: Size')).toHaveValue('123');
});

test('back in the middle of a word, and a page that crashes: what was typed is there', async ({ page, context }) => {
  await started(page);
  await withPasture(page, '');
  await page.goto('/about/');
  await open(page, 'ground');
  await page.locator('summary', { hasText: 'Pasture 1' }).click();
  await page.getByLabel('Pasture 1: Size').pressSequentially('123');
  await page.goBack();
  await expect(page).toHaveURL(/\/about\/$/);
  await page.goForward();
  const opened = async (of: Page): Promise<void> => {
    const size = of.getByLabel('Pasture 1: Size');
    if (!(await size.isVisible())) await of.locator('summary', { hasText: 'Pasture 1' }).click();
    await expect(size).toHaveValue('123');
  };
  await opened(page);
  await page.getByLabel('Pasture 1: Name').fill('Creek pasture');
  await written(page, 'Creek pasture');
  const session = await context.newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  const after = await context.newPage();
  await open(after, 'ground');
  await after.locator('summary', { hasText: 'Creek pasture' }).click();
  await expect(after.getByLabel('Creek pasture: Size')).toHaveValue('123');
});

test('killed in mid-write: whole or not at all, and the journal brings the last change back', async ({ page }) => {
  await page.addInitScript(() => {
    // The write hangs as it would in a browser that ends just then.
    if (sessionStorage.getItem('hang') === null) return;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('ended', 'AbortError');
    };
    Object.defineProperty(Storage.prototype, 'removeItem', { value: () => {} });
  });
  await started(page);
  await withPasture(page, '40');
  await written(page, '"areaAc":40');
  await page.evaluate(() => sessionStorage.setItem('hang', '1'));
  await page.reload();
  await page.locator('summary', { hasText: 'Pasture 1' }).click();
  await page.getByLabel('Pasture 1: Size').fill('55');
  await expect
    .poll(() => page.evaluate(() => Object.entries(localStorage).some(([key, text]) => key.startsWith('holdwater-journal:') && text.includes('55'))))
    .toBe(true);
  expect(await isWritten(page, '"areaAc":40')).toBe(true);
  await page.evaluate(() => sessionStorage.clear());
  page.on('dialog', (dialog) => dialog.accept());
  await page.reload();
  await page.locator('summary', { hasText: 'Pasture 1' }).click();
  await expect(page.getByLabel('Pasture 1: Size')).toHaveValue('55');
  expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('holdwater-journal:')))).toEqual([]);
});

test('two windows: other fields are joined, the same field shows both, and the person picks', async ({ page, context }) => {
  await started(page);
  await withPasture(page, '40');
  await written(page, '"areaAc":40');
  const second = await context.newPage();
  await open(second, 'ground');
  await second.locator('summary', { hasText: 'Pasture 1' }).click();
  await second.getByLabel('Pasture 1: Name').fill('Low bench');
  await written(page, 'Low bench');
  await expect(page.locator('summary', { hasText: 'Low bench' })).toBeVisible();
  // Both type before either has written.
  await Promise.all([page.getByLabel('Low bench: Size').fill('41'), second.getByLabel('Low bench: Size').fill('42')]);
  const asked = page.getByText('Changed in two windows, or on two devices.');
  await expect(asked).toBeVisible();
  await expect(second.getByText('Changed in two windows, or on two devices.')).toBeVisible();
  await expect(page.getByRole('button', { name: /41 ac/ })).toBeVisible();
  await page.getByRole('button', { name: /42 ac/ }).click();
  await expect(asked).toBeHidden();
  await expect(page.getByLabel('Low bench: Size')).toHaveValue('42');
  await expect(second.getByText('Changed in two windows, or on two devices.')).toBeHidden();
  await expect(second.getByLabel('Low bench: Size')).toHaveValue('42');
});

test('thrown away in another window while somebody works on it here: said with what is gone for good, and the place itself can stay', async ({
  page,
  context,
}) => {
  await started(page);
  const second = await context.newPage();
  await open(second);
  await second.getByRole('button', { name: 'Throw Home place away' }).click();
  await second.getByRole('button', { name: 'Throw it away' }).click();
  await expect(page.getByText('was thrown away in another window, with its record, visits, notes and photos.')).toBeVisible();
  await expect(page.getByText('The rest comes back only from a file that was saved.')).toBeVisible();
  await page.getByRole('button', { name: 'Keep the place itself' }).click();
  await written(page, 'Home place');
});

test('storage full: the work goes on, a bar says so, the file holds all of it, nothing older is lost', async ({ page }) => {
  await started(page);
  await withPasture(page, '40');
  await written(page, '"areaAc":40');
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await page.getByLabel('Pasture 1: Size').fill('55');
  await expect(page.getByRole('alert').filter({ hasText: 'This device is full. Save the file now.' })).toBeVisible();
  await page.getByLabel('Pasture 1: Name').fill('Low bench');
  await expect(page.getByLabel('Low bench: Size')).toHaveValue('55');
  const { text } = await savedFile(page, /^Save the file/);
  expect(JSON.parse(text)).toMatchObject({ places: [{ pastures: [{ name: 'Low bench', areaAc: 55 }] }] });
  expect(await isWritten(page, '"areaAc":40')).toBe(true);
});

const refusing = async (browser: Browser, refuse: () => void): Promise<{ readonly context: BrowserContext; readonly page: Page }> => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  await context.addInitScript(refuse);
  return { context, page: await context.newPage() };
};
for (const [name, refuse] of [
  [
    'refused',
    () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('no', 'SecurityError');
      };
    },
  ],
  [
    'without an answer',
    () => {
      // Asked, and nobody says anything.
      IDBFactory.prototype.open = () => Object.create(IDBOpenDBRequest.prototype, { addEventListener: { value: () => {} } });
    },
  ],
] as const) {
  test(`storage ${name}: the same screens, a bar from the start, file in and out, and a question on leaving`, async ({ browser }) => {
    const { context, page } = await refusing(browser, refuse);
    await open(page);
    await expect(page.getByText('This window keeps nothing.').first()).toBeVisible();
    await page.getByLabel('What do you call your place?').fill('Home place');
    await page.getByRole('button', { name: 'Start it' }).click();
    await withPasture(page, '40');
    const { text } = await savedFile(page, /^Save the file/);
    expect(JSON.parse(text)).toMatchObject({ places: [{ pastures: [{ areaAc: 40 }] }] });
    const asked = page.waitForEvent('dialog');
    const leaving = page.close({ runBeforeUnload: true });
    expect((await asked).type()).toBe('beforeunload');
    await (await asked).accept();
    await leaving;
    await context.close();
  });
}

test('a damaged record is set aside and can be saved, the rest opens', async ({ page }) => {
  await started(page);
  await written(page, 'Home place');
  await plant(page, { id: 'broken', v: 1, name: 'Broken place', pastures: 'none' });
  await page.reload();
  await expect(page.getByText('was set aside')).toBeVisible();
  await go(page, 'Files');
  await expect(page.getByRole('heading', { name: 'Set aside' })).toBeVisible();
  const { text } = await savedFile(page, /^Save it as a file/);
  expect(JSON.parse(text)).toMatchObject({ name: 'Broken place' });
  await page.getByRole('button', { name: 'Take it off this list' }).click();
  await expect(page.getByRole('heading', { name: 'Set aside' })).toBeHidden();
  await go(page, 'Start');
  await expect(page.getByRole('heading', { name: 'Home place' })).toBeVisible();
});

test('a damaged store: what can be read is saved first, then it starts anew, and never by itself', async ({ page }) => {
  await page.goto('/about/');
  // A store is missing, as after a write that the device lost half of.
  await page.evaluate(makeDatabase, { version: databaseVersion, stores: { places: [{ id: 'left', name: 'What is left' }] } });
  await open(page);
  const bar = page.getByRole('alert').filter({ hasText: 'damaged' });
  await expect(bar).toContainText('This window keeps nothing.');
  await expect(page.getByRole('button', { name: 'Start anew' })).toHaveCount(0);
  await page.reload();
  await expect(bar).toBeVisible();
  const { name, text } = await savedFile(page, /Save what can still be read/);
  expect(name).toMatch(/^holdwater-raw-\d{4}-\d\d-\d\d\.json$/);
  expect(JSON.parse(text)).toMatchObject({ stores: { places: [{ id: 'left', name: 'What is left' }] } });
  // Nothing has gone by that.
  expect(await isWritten(page, 'What is left')).toBe(true);
  await page.getByRole('button', { name: 'Start anew' }).click();
  await expect(page.getByText('Nothing is kept here.')).toBeVisible();
  await expect(bar).toHaveCount(0);
  await started(page, 'New place');
  await written(page, 'New place');
});

test('what an older copy kept is brought up and opens, in a form before the page of the place was seen', async ({ page }) => {
  await page.goto('/about/');
  await page.evaluate(makeDatabase, firstDatabase);
  await page.evaluate(() => localStorage.setItem('holdwater-open', 'p1'));
  await page.goto('/calculators/days-of-grass/');
  await page.locator('[data-calculator][data-ready]').waitFor();
  await page.getByRole('button', { name: 'Low bench' }).click();
  await expect(page.locator('#days-of-grass-areaAc')).toHaveValue('85');
  await open(page);
  await expect(page.getByRole('heading', { name: 'Home place' })).toBeVisible();
  await expect(page.getByRole('alert')).toHaveCount(0);
  await go(page, 'Ground');
  await page.locator('summary', { hasText: 'Low bench' }).click();
  await page.getByLabel('Low bench: Size').fill('86');
  await written(page, '"areaAc":86');
});

test('an unreadable store is told as damaged, and its fault is in what is saved', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('Internal error opening backing store', 'UnknownError');
    };
  });
  await open(page);
  await expect(page.getByRole('alert').filter({ hasText: 'damaged' })).toBeVisible();
  const { text } = await savedFile(page, /Save what can still be read/);
  expect(text).toContain('Internal error opening backing store');
});

test('what a killed window left in its journal is in a form before the page of the place was seen again', async ({ page }) => {
  await started(page, 'Creek place');
  await withPasture(page, '60');
  await written(page, '"areaAc":60');
  // A window that ended between journal and store: written as it would have been.
  await page.goto('/about/');
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const asked = indexedDB.open('holdwater');
        asked.onsuccess = () => {
          const all = asked.result.transaction('places').objectStore('places').getAll();
          all.onsuccess = () => {
            const [place] = all.result;
            asked.result.close();
            localStorage.setItem(
              'holdwater-journal:killed',
              JSON.stringify([
                {
                  ...{ store: 'places', id: place.id, rev: place.rev, by: 'a window', at: new Date().toISOString() },
                  changes: [{ path: ['pastures', place.pastures[0].id, 'areaAc'], from: 60, to: 77 }],
                },
              ]),
            );
            done();
          };
        };
      }),
  );
  await page.goto('/calculators/days-of-grass/');
  await page.locator('[data-calculator][data-ready]').waitFor();
  await expect(page.locator('#days-of-grass-areaAc')).toHaveValue('77');
  await written(page, '"areaAc":77');
  expect(await page.evaluate(() => localStorage.getItem('holdwater-journal:killed'))).toBeNull();
});

test('newer data is said, not touched, and can be saved', async ({ page }) => {
  await started(page);
  await written(page, 'Home place');
  const newer = { id: 'newer', v: 99, name: 'From the future', hologram: true };
  await plant(page, newer);
  await page.reload();
  await expect(page.getByText('made by a newer copy of these pages, cannot be opened')).toBeVisible();
  await go(page, 'Files');
  const { text } = await savedFile(page, /^Save it as a file/);
  expect(JSON.parse(text)).toEqual(newer);
  expect(await isWritten(page, 'hologram')).toBe(true);
});

test('wiped while nobody looked: it says that nothing is kept, and offers the file', async ({ page }) => {
  await started(page);
  await written(page, 'Home place');
  await page.goto('/about/');
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        indexedDB.deleteDatabase('holdwater').onsuccess = () => done();
      }),
  );
  await open(page);
  await expect(page.getByText('Nothing is kept here.')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Open a file' })).toBeVisible();
});

test('the demo place opens without its visits where they do not come, and says so', async ({ page }) => {
  await page.route('**/demoVisits*', (route) => route.abort());
  await open(page);
  await page.getByRole('button', { name: 'Open the demo place' }).click();
  await expect(page.getByText('The visits of the demo place could not be loaded; the rest of it is here.')).toBeVisible();
  await expect(page.getByText('Demo place: invented.')).toBeVisible();
  await go(page, 'Visits');
  await expect(page.getByText('No visit yet.')).toBeVisible();
  // As it says: a browser does not ask again for what failed before the page is loaded anew.
  await page.unroute('**/demoVisits*');
  await page.reload();
  await page.getByRole('button', { name: 'Throw it away' }).click();
  await go(page, 'Start');
  await page.getByRole('button', { name: 'Open the demo place' }).click();
  await go(page, 'Visits');
  await expect(page.locator('.visit-link').first()).toBeVisible();
});
test('a demo place that does not come is said, and nothing is opened', async ({ page }) => {
  await page.route('**/openDemo*', (route) => route.abort());
  await open(page);
  await page.getByRole('button', { name: 'Open the demo place' }).click();
  await expect(page.getByText('The demo place could not be loaded.')).toBeVisible();
  await expect(page.getByText('Nothing is kept here.')).toBeVisible();
});
