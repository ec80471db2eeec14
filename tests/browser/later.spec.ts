// What a live form has not fetched yet: its picture, all results, what compares, what draws tables.
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { big, compareButton, field, openForm, stamp, standsStill } from './forms.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 }, permissions: ['clipboard-read', 'clipboard-write'] });

const slug = 'storm-runoff';
const below = (page: Page) => page.locator('.below');
const rain = (page: Page) => field(page, `${slug}-rainIn`);
const results = /\/later\.[^/]*$/;
const tables = /\/tables\.[^/]*$/;

/** Keeps scripts of that name back until they are let go. */
async function hold(page: Page, name: RegExp): Promise<{ readonly asked: () => number; readonly letGo: () => void }> {
  let [asked, letGo] = [0, () => {}];
  const gone = new Promise<void>((done) => {
    letGo = done;
  });
  await page.route(name, async (route) => {
    asked += 1;
    await gone;
    await route.continue();
  });
  return { asked: () => asked, letGo };
}

test('a tap on what has not come yet is done when it comes', async ({ page }) => {
  const held = await hold(page, results);
  await openForm(page, slug);
  await expect.poll(held.asked).toBe(1);
  await page.getByRole('button', { name: 'Copy note' }).click();
  await expect(below(page).locator('.told')).toHaveText('');
  held.letGo();
  await expect(below(page).locator('.told')).toHaveText('Note copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('Of 3 in of rain');
});

test('a tap on what never comes is told within seconds that it waits, and is not lost', async ({ page }) => {
  const held = await hold(page, results);
  await openForm(page, slug);
  await expect.poll(held.asked).toBe(1);
  await page.getByRole('button', { name: 'Copy note' }).click();
  await expect(below(page).getByRole('status')).toHaveText('Still loading. “Copy note” is done when the rest of this page has come.', {
    timeout: 3000,
  });
  // The form goes on answering meanwhile.
  const before = await big(page).textContent();
  await rain(page).fill('5');
  await expect(big(page)).not.toHaveText(before ?? '');
  held.letGo();
  await expect(below(page).locator('.told')).toHaveText('Note copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('Of 5 in of rain');
});

test('nobody sees the built picture under other answers, and the questions stay where they are', async ({ page }) => {
  const held = await hold(page, results);
  await openForm(page, slug);
  const picture = page.locator('.pictured figure').first();
  await expect(picture).toBeVisible();
  const said = page.locator('.pictured .note');
  const before = { words: await said.textContent(), drawn: await picture.textContent() };
  await rain(page).fill('5');
  await expect(picture).toBeHidden();
  await expect(said).toBeHidden();
  const { y = 0 } = (await rain(page).boundingBox()) ?? {};
  held.letGo();
  await expect(picture).toBeVisible();
  await expect(said).not.toHaveText(before.words ?? '');
  await expect(picture).not.toHaveText(before.drawn ?? '');
  expect(Math.abs(((await rain(page).boundingBox())?.y ?? 0) - y)).toBeLessThan(1);
});

test('another kind of picture comes when it is first shown', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await openForm(page, 'rain-on-ground');
  await expect.poll(() => asked.some((url) => /readLying/.test(url))).toBe(true);
  await expect(page.locator('.pictured .face')).toBeVisible();
  expect(asked.filter((url) => /\/Shares\./.test(url))).toHaveLength(0);
  await field(page, 'rain-on-ground-surface').selectOption('roof');
  await expect(page.locator('.pictured figure:not(.face)').first()).toBeVisible();
  await expect(page.locator('.pictured .face')).toHaveCount(0);
  expect(asked.filter((url) => /\/Shares\./.test(url))).toHaveLength(1);
});

test('whom to call stays where nothing that follows comes', async ({ page }) => {
  await page.route(results, (route) => route.abort());
  await openForm(page, 'feed-or-sell');
  await expect(below(page).getByRole('status')).toContainText('have not come');
  await expect(page.locator('.short-help a').first()).toBeVisible();
  await expect(page.locator('.pictured figure, .pictured .note')).toHaveCount(0);
});

test('nobody reads the built results under other answers, and nothing jumps when theirs come', async ({ page }) => {
  const held = await hold(page, results);
  await openForm(page, slug);
  const first = below(page).locator('.results-list dd').first();
  await expect(first).toBeVisible();
  await rain(page).fill('5');
  await expect(first).toBeHidden();
  const figure = (await big(page).locator('.big-figure').textContent()) ?? '';
  expect(figure).not.toBe('');
  const { y: before = 0 } = (await below(page).boundingBox()) ?? {};
  held.letGo();
  await expect(first).toBeVisible();
  await expect(first).toContainText(figure);
  const { y: after = 0 } = (await below(page).boundingBox()) ?? {};
  expect(Math.abs(after - before)).toBeLessThan(1);
  await rain(page).fill('4');
  await expect(first).not.toContainText(figure);
  await expect(first).toBeVisible();
});

test('a form that is opened with a link shows no result of the example while its own are on their way', async ({ page }) => {
  const held = await hold(page, results);
  await openForm(page, slug, '?rain=6in&cover=own&curve-number=90&v=1');
  await expect(below(page).locator('.results-list dd').first()).toBeHidden();
  held.letGo();
  await expect(below(page).locator('.results-list dd').first()).toHaveText(`${await big(page).locator('.big-figure').textContent()} in`);
});

test('without them a form goes on answering, and says what is missing', async ({ page }) => {
  await page.route(results, (route) => route.abort());
  await openForm(page, slug);
  await expect(below(page).getByRole('status')).toContainText('have not come');
  const before = await big(page).textContent();
  await rain(page).fill('5');
  await expect(big(page)).not.toHaveText(before ?? '');
  await expect(page).toHaveURL(/rain=5in/);
  await expect(below(page).getByRole('status')).toBeVisible();
  await compareButton(page).click();
  await expect(page.locator('.notices')).toContainText('What compares two managements has not come.');
  await expect(stamp(page)).toHaveText('1 of 9 yours; the rest from the example');
});

test('a group with a table that was opened early keeps its list until its fields come', async ({ page }) => {
  const held = await hold(page, tables);
  await openForm(page, 'rest-and-moves');
  const group = page.locator('details.group', { hasText: 'The stock' });
  await group.locator('summary').click();
  await expect(group.locator('.group-list')).toBeVisible();
  held.letGo();
  await expect(group.locator('.group-list')).toHaveCount(0);
  await expect(group.locator('.rows')).toBeVisible();
});

test('two managements may be asked for before what compares them has come', async ({ page }) => {
  const held = await hold(page, results);
  await openForm(page, slug);
  await compareButton(page).click();
  await expect(page.locator('.both')).toHaveCount(0);
  held.letGo();
  await expect(page.locator('.both').first()).toBeVisible();
});

test('what was built is taken over once, also where a link sets the same beside it', async ({ page }) => {
  const kept: readonly { readonly query: string }[] = JSON.parse(
    readFileSync(new URL('../../calculators/catalog/season/frozen.json', import.meta.url), 'utf8'),
  );
  const compared = kept.filter(({ query }) => query.includes('that=same'));
  expect(compared.length).toBeGreaterThan(0);
  for (const { query } of compared) {
    await openForm(page, 'season', `?${query}`);
    await page.locator('.take').first().waitFor();
    await standsStill(page.locator('[data-form]'));
    await expect(page.locator('.take')).toHaveCount(1);
    await expect(below(page).getByRole('heading', { name: 'All results' })).toHaveCount(1);
    await expect(below(page).getByRole('columnheader', { name: 'The gap' }).first()).toBeVisible();
  }
  await openForm(page, slug, '?that=same');
  await expect(page.locator('.pictured figure svg').first()).toHaveAttribute('aria-label', /^.+: .+; .+: /);
});

/** The first picture: is it the one that was built, how wide it was drawn and stands, how wide its box is. */
const standing = (page: Page) =>
  page.locator('.pictured .picture-box').evaluate((box) => {
    const svg = box.querySelector('figure > svg');
    if (!svg) throw new Error('no picture');
    return {
      isBuilt: svg.hasAttribute('data-seen'),
      drawnPx: Number(svg.getAttribute('width')),
      widePx: Math.round(svg.getBoundingClientRect().width),
      boxPx: box.clientWidth,
    };
  });
/** Opens a form with a mark on the picture that the page was built with. */
async function openMarked(page: Page, widthPx: number): Promise<void> {
  await page.setViewportSize({ width: widthPx, height: 844 });
  const held = await hold(page, results);
  await openForm(page, slug);
  await page.locator('.pictured figure > svg').evaluate((svg) => svg.setAttribute('data-seen', ''));
  held.letGo();
  // Alive once its buttons lead somewhere.
  await page.getByRole('button', { name: 'Copy note' }).click();
  await expect(below(page).locator('.told')).toHaveText('Note copied.');
}

for (const widthPx of [360, 390, 412, 428])
  test(`a phone ${widthPx} px wide shows the picture that was built, at its own width, until something changes`, async ({ page }) => {
    await openMarked(page, widthPx);
    await standsStill(page.locator('.pictured'));
    const { isBuilt, widePx, boxPx } = await standing(page);
    expect(isBuilt).toBe(true);
    expect(widePx).toBe(boxPx);
    const before = await page.locator('.pictured figure').first().textContent();
    await rain(page).fill('5');
    await expect(page.locator('.pictured figure').first()).not.toHaveText(before ?? '');
    const drawn = await standing(page);
    expect(drawn.isBuilt).toBe(false);
    expect(drawn.drawnPx).toBe(drawn.boxPx);
  });

test('results and tables that were built stay as they are until something changes', async ({ page }) => {
  const wrong: string[] = [];
  page.on('pageerror', ({ message }) => wrong.push(message));
  const held = await hold(page, results);
  await openForm(page, 'ring-test');
  const built = below(page).locator('[data-seen]');
  await below(page)
    .locator('.results-list, .tables table')
    .evaluateAll((parts) => {
      for (const part of parts) part.setAttribute('data-seen', '');
    });
  const count = await built.count();
  expect(count).toBeGreaterThan(1);
  held.letGo();
  await page.getByRole('button', { name: 'Copy note' }).click();
  await expect(below(page).locator('.told')).toHaveText('Note copied.');
  await expect(built).toHaveCount(count);
  const before = await below(page).locator('.results-list dd').first().textContent();
  const first = page.locator('.asks input[type="text"]').first();
  await first.fill((Number(await first.inputValue()) * 1.1).toFixed(2));
  await expect(built).toHaveCount(0);
  await expect(below(page).locator('.results-list dd').first()).not.toHaveText(before ?? '');
  await expect(below(page).locator('.results-list, .tables table')).toHaveCount(count);
  expect(wrong).toEqual([]);
});

test('the ground under a strip of weeks is drawn as it comes onto the glass', async ({ page }) => {
  await openForm(page, 'season');
  // Alive, or it would be drawn again under the finger.
  await expect(page.locator('.strip-day input')).toBeEnabled();
  await page.locator('.strip-day').scrollIntoViewIfNeeded();
  await page.mouse.wheel(0, 120);
  await expect(page.locator('.strip-ground .face svg').first()).toBeVisible();
});

for (const widthPx of [320, 500, 1280])
  test(`at ${widthPx} px the picture is drawn anew at the width that it gets`, async ({ page }) => {
    await openMarked(page, widthPx);
    await expect.poll(async () => (await standing(page)).isBuilt).toBe(false);
    const { drawnPx, boxPx } = await standing(page);
    expect(drawnPx).toBe(boxPx);
  });

test('a phone that is turned, and turned back, has its picture drawn for each width', async ({ page }) => {
  const wrong: string[] = [];
  page.on('pageerror', ({ message }) => wrong.push(message));
  await openMarked(page, 390);
  for (const [width, height] of [
    [844, 390],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expect
      .poll(async () => {
        const { isBuilt, drawnPx, boxPx } = await standing(page);
        return !isBuilt && drawnPx === boxPx;
      })
      .toBe(true);
  }
  expect(wrong).toEqual([]);
});

test('the knob stands under the week that is drawn, on a phone and on a wide screen', async ({ page }) => {
  /** How far the middle of the knob, half of it over each end, lies from the line through the lanes. */
  const offPx = () =>
    page.locator('.strip-day input').evaluate((knob: HTMLInputElement) => {
      const knobPx = 16;
      const { left, width } = knob.getBoundingClientRect();
      const line = document.querySelector('.strip .day')?.getBoundingClientRect();
      return line
        ? Math.abs(left + knobPx / 2 + (knob.valueAsNumber / Number(knob.max)) * (width - knobPx) - (line.left + line.width / 2))
        : Number.NaN;
    });
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 844 });
    await openForm(page, 'season');
    const knob = page.locator('.strip-day input');
    await expect(knob).toBeEnabled();
    for (const key of ['Home', 'PageUp', 'End']) {
      await knob.press(key);
      expect(await offPx(), `${width} px, ${key}`).toBeLessThan(3);
    }
  }
});

test('a button whose own script does not come says so, at the button', async ({ page }) => {
  await page.route(/\/(?:keepHere|calendarFile)[^/]*\.js$/, (route) => route.abort());
  await openForm(page, 'rest-and-moves');
  for (const [at, name] of ['Keep as my place', 'Keep this result', 'Dates for a calendar'].entries()) {
    await page.getByRole('button', { name, exact: true }).click();
    await expect(below(page).locator('.told'), name).toHaveText('This could not be loaded. Load the page again when there is signal.');
    // What is told of one set of answers goes with them.
    await field(page, 'rest-and-moves-ownPaddockAc').fill(String(6 - at));
    await expect(below(page).locator('.told'), name).toHaveText('');
  }
});
