import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, type Locator, type Page, type Request, test } from '@playwright/test';
import ical from 'ical.js';
import { addressOf, dist, filesOf, textOf } from '../site/builtSite.ts';
import { big, compare, field, figure, openGroups, ready, toMetric } from './forms.ts';
import { long } from './walked.ts';

const slugs = filesOf(dist, /^calculators\/[^/]+\/index\.html$/).map((file) => addressOf(file).split('/')[2] ?? '');
const storm = '/calculators/storm-runoff/';
const rainOf = (page: Page | Locator) => page.locator('#storm-runoff-rainIn');

test('a link opens without ever painting another number, late chunks too', async ({ page }) => {
  await page.route('**/_astro/*.js', async (route) => {
    await new Promise((done) => setTimeout(done, 400));
    await route.continue();
  });
  await page.addInitScript(() => {
    const painted: string[] = [];
    Object.assign(globalThis, { painted });
    const look = () => {
      const number = document.querySelector('.answer .big');
      if (number && getComputedStyle(number).visibility === 'visible') painted.push(number.textContent ?? '');
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.goto(`${storm}?rain=6in&cover=own&curve-number=90&v=1`);
  await ready(page, 'storm-runoff');
  await page.waitForTimeout(300);
  const painted = await page.evaluate(() => [...new Set((globalThis as unknown as { painted: string[] }).painted)]);
  // Table 2-1 of the handbook prints 4.85.
  expect(painted).toEqual(['4.8 in ran off']);
});

test('wrong input is told at its field, kept, and mended; Back and reload keep it', async ({ page }) => {
  await page.goto('/calculators/');
  await page.goto(storm);
  await ready(page, 'storm-runoff');
  const rain = rainOf(page);
  for (const [typed, say] of [
    ['', 'is missing'],
    ['a lot', 'must be one number'],
    ['-2', 'must be from'],
    ['400', 'must be from'],
    ['3 lb', 'can’t be in'],
    ['1,5', 'Write 1.5, if that is meant'],
  ] as const) {
    await rain.fill(typed);
    await rain.blur();
    await expect(page.locator('#storm-runoff-rainIn-problem')).toContainText(say);
    await expect(rain).toHaveAttribute('aria-invalid', 'true');
    await expect(rain).toHaveValue(typed);
    await expect(page.locator('.waiting')).toBeVisible();
  }
  await page.waitForTimeout(600);
  await page.reload();
  await ready(page, 'storm-runoff');
  await expect(rain).toHaveValue('1,5');
  await rain.fill('3 1/2');
  await expect(page.locator('#storm-runoff-rainIn-problem')).toHaveCount(0);
  await page.goto('/calculators/');
  await page.goBack();
  await ready(page, 'storm-runoff');
  await expect(rain).toHaveValue('3 1/2');
  await page.goBack();
  await expect(page).toHaveURL(/\/calculators\/$/);
});

test('a link with rubbish opens with a word about it, never with a broken number', async ({ page }) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  for (const query of [
    'rain=abc&soil-group=__proto__&constructor=1&v=1',
    `rain=${'9'.repeat(9000)}`,
    'rain=1e999&that.rain=%E0%A4%A&v=99',
    'ground=parts&parts.area=1ac,,x&parts.cover=pasture',
  ]) {
    await page.goto(`${storm}?${query}`);
    await ready(page, 'storm-runoff');
    await expect(page.locator('.notices, .problem').first()).toBeVisible();
    expect(await page.locator('main').textContent()).not.toMatch(/NaN|Infinity|undefined|\[object/);
  }
  expect(errors).toEqual([]);
});

test('two managements stand side by side, with the working of either', async ({ page }) => {
  await page.goto(storm);
  await ready(page, 'storm-runoff');
  await compare(page);
  await field(page, 'storm-runoff-that-groundCoverPercent').fill('85');
  await field(page, 'storm-runoff-that-grazing').selectOption('light');
  // 3 in on group B pasture, poor (79) against good (61): 1.2 and 0.4 in by the handbook's equation.
  const runoff = page.locator('.pairs tr', { hasText: 'Ran off' }).first().locator('td');
  await expect(runoff).toHaveText(['1.2 in', '0.4 in', '−0.8 in']);
  await page.getByText('The working, step by step').click();
  await page.getByRole('button', { name: 'Work out that' }).click();
  await expect(page.locator('.working [data-result="tabledCurveNumber"]')).toHaveText('61.0');
  // Formulas are laid out: what a screen reader is told of them isn't drawn as well.
  await expect(page.locator('.working .katex-mathml:visible').first()).toHaveCSS('position', 'absolute');
  await page.waitForTimeout(600);
  expect(page.url()).toContain('that.ground-cover=85pct&that.grazing=light&v=1');
});

test('the unit switch changes results and what nobody touched, never what was typed', async ({ page }) => {
  await page.goto(storm);
  await ready(page, 'storm-runoff');
  await rainOf(page).fill('75 mm');
  await toMetric(page);
  await expect(rainOf(page)).toHaveValue('75 mm');
  await openGroups(page);
  await expect(field(page, 'storm-runoff-areaAc')).toHaveValue('16.19');
  await expect(big(page)).toContainText(' mm');
  await page.reload();
  await ready(page, 'storm-runoff');
  await expect(big(page)).toContainText(' mm');
  await expect(rainOf(page), 'its unit stands beside it').toHaveValue('75');
  await page.getByRole('button', { name: 'In inches, acres and pounds' }).click();
  await expect(rainOf(page)).toHaveValue('75 mm');
  // 75 mm is 2.953 in; 1.154 in by the handbook's equation at 79. How finely it is told is not asked here.
  await expect(big(page)).toHaveText(/^1\.(?:2|15|154) in ran off$/);
});

test('two calculators on one guide do not disturb each other', async ({ page }) => {
  const other = /<section class="calculator"[\s\S]*?<\/details>\s*<\/section>/.exec(textOf(dist, 'guides/resting-grass/index.html'))?.[0] ?? '';
  expect(other).toContain('data-calculator="rest-and-moves"');
  await page.route('**/guides/where-rain-goes/', async (route) => {
    const body = textOf(dist, 'guides/where-rain-goes/index.html').replace(
      '<section class="calculator"',
      () => `${other}<section class="calculator"`,
    );
    await route.fulfill({ body, contentType: 'text/html' });
  });
  await page.goto('/guides/where-rain-goes/');
  const [first, second] = [page.locator('[data-calculator="rest-and-moves"]'), page.locator('[data-calculator="storm-runoff"]')];
  await first.getByText('Work it out here').click();
  await ready(page, 'rest-and-moves');
  const before = await first.locator('.answer').textContent();
  expect(before).toMatch(/\d/);
  await second.getByText('Work it out here').click();
  await ready(page, 'storm-runoff');
  await rainOf(second).fill('6');
  await expect(second.locator('.note').first()).toContainText('Of 6 in of rain');
  expect(await first.locator('.answer').textContent()).toBe(before);
  expect(new URL(page.url()).search).toBe('');
  await page.waitForTimeout(600);
  await page.reload();
  await ready(page, 'storm-runoff');
  await expect(rainOf(second)).toHaveValue('6');
  await expect(second.locator('.note').first()).toBeVisible();
  await expect(second.locator('.note').first()).toContainText('Of 6 in of rain');
  await expect(first).not.toHaveAttribute('data-ready');
});

test('what is typed or chosen before the script has come is not lost', async ({ page }) => {
  await page.route('**/_astro/form*.js', async (route) => {
    await new Promise((done) => setTimeout(done, 800));
    await route.continue();
  });
  await page.goto(storm, { waitUntil: 'commit' });
  const box = page.locator('[data-calculator="storm-runoff"]');
  await box.getByRole('textbox', { name: 'Rain in the storm' }).fill('5');
  await box.getByLabel('How wet the ground was before').selectOption('wet');
  await ready(page, 'storm-runoff');
  await expect(box.getByRole('textbox', { name: 'Rain in the storm' })).toHaveValue('5');
  await expect(box.getByLabel('How wet the ground was before')).toHaveValue('wet');
  await expect(box.locator('.note').first()).toContainText('Of 5 in of rain');
});

test('a number that looks wrong is asked about at its field, and taken', async ({ page }) => {
  await page.goto(storm);
  await ready(page, 'storm-runoff');
  const rain = page.getByRole('textbox', { name: 'Rain in the storm' });
  await rain.fill('25');
  await expect(rain).toHaveAccessibleDescription(/^inches /);
  await expect(page.locator('.doubt')).toHaveText('Is 25 in right? Rain in the storm: seldom above 12 in. Look at the decimal point and the unit.');
  await expect(page.locator('.note').first()).toContainText('Of 25 in of rain');
  await expect(rain).not.toHaveAttribute('aria-invalid');
  await expect(rain).toHaveAccessibleDescription(/Is 25 in right\?/);
  await rain.fill('2.5');
  await expect(page.locator('.doubt')).toHaveText('');
  await expect(rain).not.toHaveAccessibleDescription(/right\?/);
});

test('the working comes to a guide when somebody asks for it, with the numbers typed there', async ({ page }) => {
  await page.goto('/guides/where-rain-goes/');
  const box = page.locator('[data-calculator="storm-runoff"]');
  await box.getByText('Work it out here').click();
  await ready(page, 'storm-runoff');
  await box.getByRole('textbox', { name: 'Rain in the storm' }).fill('5');
  await expect(box.locator('.steps')).toHaveCount(0);
  await box.getByText('The working, step by step').click();
  await expect(box.locator('.put-in')).toContainText('Rain in the storm: 5 in');
  await expect(box.locator('.steps [data-q="rainIn"]').first()).toHaveText('5');
  await box.getByRole('textbox', { name: 'Rain in the storm' }).fill('6');
  await expect(box.locator('.put-in')).toContainText('Rain in the storm: 6 in');
});

test('a guide that loses its script says so and stays readable', async ({ page }) => {
  await page.route('**/_astro/storm-runoff*.js', (route) => route.abort());
  await page.goto(`${storm}?rain=6in`);
  await expect(page.locator('.not-come')).toContainText('could not be loaded');
  await expect(figure(page)).toBeVisible();
});

test('the dates come as a calendar that other programs read', async ({ page }) => {
  await page.goto('/calculators/rest-and-moves/');
  await ready(page, 'rest-and-moves');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Dates for a calendar' }).click();
  const file = await (await coming).path();
  const events = new ical.Component(ical.parse(readFileSync(file, 'utf8'))).getAllSubcomponents('vevent').map((each) => new ical.Event(each));
  expect(events.length).toBeGreaterThan(2);
  for (const event of events) {
    expect(event.summary).toMatch(/look at paddock \d+/i);
    expect(event.startDate.isDate).toBe(true);
  }
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
});

test('whom to call stands under a hard answer and in the note', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/calculators/feed-or-sell/');
  await page.locator('[data-calculator][data-ready]').waitFor();
  await expect(page.locator('.short-help a').first()).toHaveAttribute('href', 'tel:988');
  await expect(page.locator('.short-help')).toBeVisible();
  await page.getByRole('button', { name: 'Copy note' }).click();
  const note = await page.evaluate(() => navigator.clipboard.readText());
  expect(note).toContain('If it weighs on you: call or text 988');
  await page.goto('/calculators/storm-runoff/');
  await expect(page.locator('.talk, .short-help')).toHaveCount(0);
});

/** Scripts of a calculator, gzip: until a key is answered, and with its picture and all results, which follow. Each as it was measured, and a hundred bytes or two
 * for the names of chunks, which change with each build. */
const mostBytes: Readonly<Record<string, readonly [live: number, whole: number]>> = {
  'rain-demonstration': [44_000, 64_350],
  'rain-on-ground': [45_350, 68_950],
  'share-taken': [45_800, 60_750],
  'feed-or-sell': [46_700, 63_600],
  'cover-count': [48_100, 66_550],
  'storm-runoff': [47_050, 67_500],
  'early-weaning': [47_550, 62_500],
  ponding: [47_450, 73_200],
  'slake-test': [49_600, 64_550],
  'packed-soil': [50_500, 72_450],
  'herd-intake': [50_300, 65_250],
  'hay-value': [49_250, 64_200],
  'sown-feed': [48_750, 63_700],
  'soil-loss': [49_550, 73_450],
  'stored-water': [50_400, 69_600],
  'ring-test': [51_950, 75_800],
  'standing-feed': [55_200, 72_150],
  'feed-hazards': [57_150, 68_800],
  'rest-and-moves': [58_150, 73_700],
  'days-of-grass': [58_200, 75_150],
  // What works out its thirty years of days comes behind it, 21 kB, and once more with its worker where somebody goes into a field.
  season: [55_200, 82_900],
  'carrying-capacity': [59_400, 76_300],
  'stock-water': [59_350, 83_900],
  'hay-to-grass': [61_650, 76_600],
  'forage-on-hand': [61_700, 77_300],
  'rain-record': [63_950, 78_650],
  'decision-dates': [68_250, 83_850],
};

/** All that these scripts import, and they. */
function closureOf(paths: Iterable<string>): ReadonlySet<string> {
  const all = new Set(paths);
  for (const path of all)
    for (const [, name] of textOf(dist, path).matchAll(/(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g)) all.add(`/_astro/${name}`);
  return all;
}
const bytesOf = (paths: Iterable<string>): number =>
  [...paths].reduce((sum, path) => sum + gzipSync(readFileSync(join(dist, path)), { level: 9 }).length, 0);
const isScript = (path: string): boolean => path.endsWith('.js') && !/uqr|dist\./.test(path);
/** What draws all results, and a picture. */
const follows = /\/(?:later|Shares|Spans|Bars|Lines|rowMarks|Strip|read[A-Z][a-z]+)\.[^/]+\.js$/;

/** When the form was live, by the page's own clock: on a busy machine the page fetches what comes later before this process hears of it. */
const readyAt = (page: Page): Promise<number> => page.evaluate(() => Number(document.documentElement.dataset['readyAt']));

/** The lightest, one with a herd, the heaviest of the short ones, and the season: weighed in every test run, all of them before a release. */
const oftenWeighed = ['rain-demonstration', 'days-of-grass', 'decision-dates', 'season'];
for (const [which, weighed, details] of [
  ['some calculators weigh', oftenWeighed, {}],
  ['every calculator weighs', slugs, long],
] as const)
  test(`${which} what was measured, not more`, details, async ({ page }) => {
    await page.addInitScript(() =>
      new MutationObserver((_, watcher) => {
        if (!document.querySelector('[data-calculator][data-ready]')) return;
        watcher.disconnect();
        document.documentElement.dataset['readyAt'] = String(performance.timeOrigin + performance.now());
      }).observe(document, { subtree: true, childList: true, attributeFilter: ['data-ready'] }),
    );
    for (const slug of weighed) {
      const address = `/calculators/${slug}/`;
      const asked: Request[] = [];
      // What the page before fetches a little later is no part of this one.
      await page.goto('about:blank');
      page.on('request', (request) => asked.push(request));
      await page.goto(address);
      await page.locator('[data-calculator][data-ready]').waitFor();
      const until = await readyAt(page);
      expect(until).toBeGreaterThan(0);
      await Promise.all(asked.map((request) => request.response()));
      const pathOf = (request: Request): string => new URL(request.url()).pathname;
      const early = new Set(
        asked
          .filter((request) => request.timing().startTime <= until)
          .map(pathOf)
          .filter(isScript),
      );
      // Half a second behind them.
      await expect.poll(() => asked.some((request) => /startCarrying/.test(request.url()))).toBe(true);
      const behind = asked.map(pathOf).filter((path) => follows.test(path));
      expect(behind.length, address).toBeGreaterThan(0);
      // Where other answers stand than were built, what follows is asked for within a millisecond or two of the answer, which no clock tells apart.
      const brought = closureOf(behind);
      // So are what works out a long run and what follows a date; what the form needs of them too is imported by the rest.
      const apart = closureOf(asked.map(pathOf).filter((path) => /\/(?:engine-|followDates\.)/.test(path)));
      const live = closureOf([...early].filter((path) => !brought.has(path) && !apart.has(path)));
      const weighs = [bytesOf(live), bytesOf(new Set([...live, ...brought]))] as const;
      for (const [which, sum] of weighs.entries())
        expect
          .soft(sum, `${address} ${['live', 'with all'][which]}: ${[...live, ...behind].join(' ')}`)
          .toBeLessThanOrEqual(mostBytes[slug]?.[which] ?? 0);
      page.removeAllListeners('request');
    }
  });
