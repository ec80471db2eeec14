// The two walks of a producer at the gate, with their taps counted: a tap is a touch on a control or into a field, typing is free.
import { expect, type Locator, type Page, test } from '@playwright/test';
import { withWorker } from './copyHere.ts';
import { big, field, openForm, openGroups, ready, stamp } from './forms.ts';
import { keepPlace, keptPlaces, twoBench } from './placeOfOnes.ts';
import { morning, withoutSignal } from './signal.ts';
import { long } from './walked.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, permissions: ['clipboard-read', 'clipboard-write'] });

const whoseOf = (page: Page, id: string): Locator => page.locator('.field', { has: field(page, id) }).locator('.whose');

class Walk {
  taps = 0;
  readonly #page: Page;
  constructor(page: Page) {
    this.#page = page;
  }
  async tap(what: Locator): Promise<void> {
    await what.tap();
    this.taps += 1;
  }
  /** One tap into a field; the typing is free. */
  async type(what: Locator, text: string): Promise<void> {
    await this.tap(what);
    if ((await what.getAttribute('type')) === 'date') await what.fill(text);
    else {
      await this.#page.keyboard.press('ControlOrMeta+a');
      await this.#page.keyboard.type(text);
    }
  }
}

/** Nothing of the place in any address, and nothing sent anywhere. */
function expectNothingLeft(asked: readonly string[], origin: string): void {
  expect(asked.length).toBeGreaterThan(5);
  for (const each of asked) {
    expect(each.startsWith(`GET ${origin}/`) || each.startsWith('GET blob:') || each.startsWith('GET data:'), each).toBe(true);
    expect(each).not.toMatch(/bench|two.?bench|holdwater-open|latitude=/i);
  }
}

test.describe(() => {
  test.use(withWorker);

  test('on a known place the answer at the gate takes at most eight taps, then hay and selling with nothing typed again', async ({
    page,
    context,
  }) => {
    const { server, asked } = await withoutSignal(page, context, () => keepPlace(page, twoBench));
    const walk = new Walk(page);
    await walk.tap(page.locator('main a[href$="/calculators/days-of-grass/"]').first());
    await ready(page, 'days-of-grass');
    // The herd is there and is the reader's own; what only a stick can tell is still an example.
    await expect(field(page, 'days-of-grass-stock-0-countHead')).toHaveValue('45');
    await expect(whoseOf(page, 'days-of-grass-stock-0-countHead')).toHaveText('from your place');
    await expect(whoseOf(page, 'days-of-grass-heightIn')).toHaveText('example');
    await walk.tap(page.getByRole('button', { name: 'Low bench' }));
    await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('85');
    await expect(field(page, 'days-of-grass-stopHeightIn')).toHaveValue('4');
    await expect(field(page, 'days-of-grass-untilDay')).toHaveValue('2027-10-31');
    await walk.type(field(page, 'days-of-grass-heightIn'), '6');
    for (const left of ['areaAc', 'stopHeightIn', 'stock-0-countHead', 'untilDay'])
      await expect(whoseOf(page, `days-of-grass-${left}`)).toHaveText('from your place');
    await expect(whoseOf(page, 'days-of-grass-heightIn')).toHaveText('yours');
    await expect(stamp(page)).toHaveText(/^Your (?:numbers|answers)/);
    await expect(big(page)).toContainText('2027');
    await walk.tap(page.getByRole('button', { name: 'Copy link' }));
    await expect(page.locator('.actions .told')).toHaveText('Link copied.');
    expect(walk.taps).toBeLessThanOrEqual(8);
    expect(walk.taps).toBe(4);
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toContain('area=85ac');
    expect(link).not.toMatch(/bench|place/i);
    await page.getByRole('button', { name: 'Copy note' }).tap();
    await expect(page.locator('.actions .told')).toHaveText('Note copied.');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^Low bench, Two Bench place, Jun 20, 2027\n/);

    await walk.tap(page.getByRole('link', { name: 'Hay to bridge the gap' }));
    await ready(page, 'hay-to-grass');
    await expect(page.locator('.answer.is-waiting')).toHaveCount(0);
    await expect(page.getByText('These are the figures of a link')).toHaveCount(0);
    await openGroups(page);
    await expect(field(page, 'hay-to-grass-toDay')).toHaveValue('2028-04-20');
    await expect(whoseOf(page, 'hay-to-grass-toDay')).toHaveText('from your place');
    await expect(page.locator('#hay-to-grass-herd')).toContainText('45');
    await page.goBack();
    await ready(page, 'days-of-grass');
    await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('85');
    await walk.tap(page.getByRole('link', { name: 'Sell, or feed and keep' }));
    await ready(page, 'feed-or-sell');
    await expect(page.locator('.answer.is-waiting')).toHaveCount(0);
    await openGroups(page);
    await expect(field(page, 'feed-or-sell-herdHead')).toHaveValue('45');
    expect(walk.taps).toBe(6);
    expectNothingLeft(asked, server.origin);
  });
});

test.describe(() => {
  test.use(withWorker);

  test('with nothing kept it takes at most fifteen, and makes the place; next morning it is there', long, async ({ page, context }) => {
    const { server, asked } = await withoutSignal(page, context, () => Promise.resolve());
    const walk = new Walk(page);
    await walk.tap(page.locator('main a[href$="/calculators/days-of-grass/"]').first());
    await ready(page, 'days-of-grass');
    await expect(stamp(page)).toHaveText('Example, not your numbers');
    await walk.type(field(page, 'days-of-grass-areaAc'), '60');
    await walk.type(field(page, 'days-of-grass-heightIn'), '8');
    await walk.type(field(page, 'days-of-grass-stopHeightIn'), '4');
    await walk.type(field(page, 'days-of-grass-stock-0-countHead'), '38');
    await walk.type(field(page, 'days-of-grass-untilDay'), '2027-09-15');
    await expect(page.locator('.ask .whose', { hasText: 'example' })).toHaveCount(0);
    await walk.tap(page.getByRole('button', { name: 'Keep as my place' }));
    await walk.type(page.getByLabel('Name of the place'), 'Creek place');
    await walk.tap(page.getByRole('button', { name: 'Keep', exact: true }));
    await expect(page.getByText('Kept in Creek place.', { exact: false })).toBeVisible();
    expect(walk.taps).toBeLessThanOrEqual(15);
    expect(walk.taps).toBe(9);
    const [place, ...others] = await keptPlaces(page);
    expect(others).toEqual([]);
    expect(place).toMatchObject({
      name: 'Creek place',
      season: { endDay: '09-15' },
      pastures: [{ name: 'Pasture 1', areaAc: 60, stopHeightIn: 4 }],
      herd: [{ kind: 'cow', countHead: 38, told: { stage: 'nursing', day: '2027-06-20' } }],
    });
    // Only what was typed: the example's weight and appetite are nobody's.
    expect(place?.herd[0]).not.toHaveProperty('weightLb');
    expect(page.url()).not.toContain('Creek');

    await page.clock.setFixedTime(new Date('2027-06-21T07:00:00'));
    await page.goto(`${server.origin}/`);
    const next = new Walk(page);
    await next.tap(page.locator('main a[href$="/calculators/days-of-grass/"]').first());
    await ready(page, 'days-of-grass');
    await next.type(field(page, 'days-of-grass-heightIn'), '7.5');
    await expect(field(page, 'days-of-grass-stock-0-countHead')).toHaveValue('38');
    await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('60');
    await expect(page.locator('.ask .whose', { hasText: 'example' })).toHaveCount(0);
    await next.tap(page.getByRole('button', { name: 'Copy link' }));
    expect(next.taps).toBe(3);
    expectNothingLeft(asked, server.origin);
  });
});

test('in winter the way on to hay counts from the day on which the grass ends to the next turn-out', async ({ page }) => {
  await page.clock.setFixedTime(new Date('2027-11-29T07:00:00'));
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await openForm(page, 'days-of-grass');
  await page.getByRole('button', { name: 'Low bench' }).tap();
  await field(page, 'days-of-grass-heightIn').fill('6');
  // What lies far down is laid out as it comes near, and no finger taps in that same frame.
  const hay = page.getByRole('link', { name: 'Hay to bridge the gap' });
  await hay.scrollIntoViewIfNeeded();
  // What takes the place along comes half a second behind the form, and no finger is there before.
  await page.locator('[data-carry-on][data-live]').waitFor();
  await hay.tap();
  await ready(page, 'hay-to-grass');
  await expect(page.locator('.answer.is-waiting')).toHaveCount(0);
  await openGroups(page);
  await expect(field(page, 'hay-to-grass-fromDay')).toHaveValue(/^2027-12-/);
  await expect(field(page, 'hay-to-grass-toDay')).toHaveValue('2028-04-20');
});

test('what a place would change in a link’s figures is told before it does', async ({ page }) => {
  await page.clock.setFixedTime(new Date(morning));
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await openForm(page, 'days-of-grass', '?area=25ac&height=7in&stock.kind=cow-nursing&stock.count=40&v=1');
  await page.getByRole('button', { name: /^Use my place’s \(\d fields?\)$/ }).tap();
  await expect(page.locator('.place-link dl')).toContainText('25 ac; yours: 205 ac');
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('25');
  await page.getByRole('button', { name: 'Put these in' }).tap();
  await expect(field(page, 'days-of-grass-areaAc')).toHaveValue('205');
  await expect(field(page, 'days-of-grass-stock-0-countHead')).toHaveValue('45');
  await expect(field(page, 'days-of-grass-heightIn')).toHaveValue('7');
});

test('a field that holds something else says what the place has, and takes it back', async ({ page }) => {
  await page.clock.setFixedTime(new Date(morning));
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await openForm(page, 'days-of-grass');
  const count = field(page, 'days-of-grass-stock-0-countHead');
  await count.fill('50');
  const whose = whoseOf(page, 'days-of-grass-stock-0-countHead');
  await expect(whose).toHaveText(/^yours your place: 45.* · use it · change it at my place$/);
  await expect(whose.getByRole('link')).toHaveAttribute('href', /\/place\/#\/stock$/);
  // It is still so after a reload: the address carries the figures, not the marks.
  await page.waitForTimeout(600);
  await page.reload();
  await ready(page, 'days-of-grass');
  await expect(page.getByText('These are the figures of a link')).toHaveCount(0);
  await whose.getByRole('button', { name: 'use it' }).tap();
  await expect(count).toHaveValue('45');
  await expect(whose).toHaveText('from your place');
});

test('the demo place says so on every kind of page, and goes from any of them', async ({ page }) => {
  const line = page.getByText('Demo place: invented. Nothing here is yours.');
  const pages = ['/', '/guides/keeping-your-place/', '/sources/', '/calculators/', '/calculators/ponding/', '/search/', '/sheets/', '/place/'];
  for (const address of pages) {
    await page.goto(address);
    await expect(line).toHaveCount(0);
  }
  // As the page of the place makes it, not as a test would.
  await page.getByRole('button', { name: 'Open the demo place' }).tap();
  await expect(page.getByText('Demo place: invented.')).toHaveCount(1);
  await expect.poll(() => keptPlaces(page).then((places) => places.length)).toBe(1);
  for (const address of pages) {
    await page.goto(address);
    await expect(page.getByText('Demo place: invented.'), address).toHaveCount(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  }
  await page.goto('/guides/keeping-your-place/');
  await page.getByRole('button', { name: 'Throw it away' }).tap();
  await expect(line).toHaveCount(0);
  expect(await keptPlaces(page)).toEqual([]);
  // A place of one's own is nobody's invention.
  await keepPlace(page, twoBench);
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(line).toHaveCount(0);
});

test('the demo place never passes for one’s own, and is thrown away from here', async ({ page }) => {
  await page.clock.setFixedTime(new Date(morning));
  await page.goto('/about/');
  await keepPlace(page, { ...twoBench, id: 'demo-two-bench', isDemo: true });
  await openForm(page, 'days-of-grass');
  await expect(page.getByText('Demo place: invented. Nothing here is yours.')).toBeVisible();
  await expect(stamp(page)).toHaveText('Example, not your numbers');
  await expect(whoseOf(page, 'days-of-grass-stock-0-countHead')).toHaveText('from the demo place');
  await page.getByRole('button', { name: 'Throw it away' }).tap();
  await expect(page.getByText('Demo place: invented.')).toHaveCount(0);
  await ready(page, 'days-of-grass');
  expect(await keptPlaces(page)).toEqual([]);
  await expect(field(page, 'days-of-grass-stock-0-countHead')).toHaveValue('40');
});
