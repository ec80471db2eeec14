import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { big, field, figure, openGroups } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { longUnless } from './walked.ts';

/** Opens a page on a day. Noon where the device is, so that Greenwich has another day nowhere. */
async function openOn(page: Page, day: string, address: string): Promise<void> {
  await page.clock.setFixedTime(new Date(`${day}T12:00:00`));
  await page.goto(address);
  await page.locator('[data-calculator][data-ready]').waitFor();
}

/** What each fresh form shows, by hand: the season that is under way or comes next, or the example's own dates where the form refuses that. */
const fresh: readonly (readonly [day: string, slug: string, shows: Readonly<Record<string, string>>])[] = [
  ['2026-01-15', 'carrying-capacity', { fromDay: '2026-04-20', toDay: '2026-10-31', todayDay: '2026-06-20', goDay: '2026-07-10' }],
  ['2026-07-04', 'carrying-capacity', { fromDay: '2026-04-20', toDay: '2026-10-31', todayDay: '2026-07-04', goDay: '2026-07-24' }],
  ['2027-02-28', 'carrying-capacity', { fromDay: '2026-04-20', toDay: '2026-10-31', todayDay: '2026-06-20', goDay: '2026-07-10' }],
  ['2026-01-15', 'decision-dates', { todayDay: '2026-01-15', endDay: '2026-10-31', 'steps-0-day': '2026-05-15' }],
  ['2026-07-04', 'decision-dates', { todayDay: '2026-07-04', endDay: '2026-10-31', 'steps-0-day': '2026-05-15' }],
  ['2027-02-28', 'decision-dates', { todayDay: '2027-02-28', endDay: '2027-10-31', 'steps-0-day': '2027-05-15' }],
  ['2026-01-15', 'hay-to-grass', { fromDay: '2026-01-15', toDay: '2026-04-20', baledDay: '2025-06-15', 'herd-0-birthDay': '2026-03-10' }],
  ['2026-07-04', 'hay-to-grass', { fromDay: '2026-11-01', toDay: '2027-04-20', baledDay: '2026-06-15', 'herd-0-birthDay': '2027-03-10' }],
  ['2027-02-28', 'hay-to-grass', { fromDay: '2027-02-28', toDay: '2027-04-20', baledDay: '2026-06-15', 'herd-0-birthDay': '2027-03-10' }],
];
for (const day of new Set(fresh.map(([each]) => each))) {
  test(`a fresh form on ${day} has dates that can still come, and an answer`, longUnless(day === '2027-02-28'), async ({ page }) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    for (const [, slug, shows] of fresh.filter(([each]) => each === day)) {
      await openOn(page, day, `/calculators/${slug}/`);
      await openGroups(page);
      for (const [key, value] of Object.entries(shows)) {
        const [, row] = /-(\d)-/.exec(key) ?? [];
        if (row !== undefined) await page.locator('.row-line button').nth(Number(row)).click();
        await expect(field(page, `${slug}-${key}`), `${slug} ${key}`).toHaveValue(value);
      }
      await expect(page.locator('.waiting')).toHaveCount(0);
      await expect(figure(page)).toHaveText(/\S/);
      // Nothing was typed, so the address stays bare.
      expect(new URL(page.url()).search).toBe('');
    }
    expect(errors).toEqual([]);
  });
}

test.describe('far from Greenwich', () => {
  test.use({ timezoneId: 'Pacific/Auckland' });
  test('today is the day where the device is', async ({ page }) => {
    await page.clock.setFixedTime(new Date('2026-07-04T20:00:00Z'));
    await page.goto('/calculators/rest-and-moves/');
    await expect(field(page, 'rest-and-moves-startDay')).toHaveValue('2026-07-05');
  });
});

test('a link’s dates never move, and neither do those that somebody left', async ({ page }) => {
  await openOn(page, '2027-08-01', '/calculators/rest-and-moves/?start=2026-05-01&v=3');
  await expect(field(page, 'rest-and-moves-startDay')).toHaveValue('2026-05-01');
  await openOn(page, '2027-08-01', '/calculators/rest-and-moves/');
  await expect(field(page, 'rest-and-moves-startDay')).toHaveValue('2027-08-01');
  await openGroups(page);
  await field(page, 'rest-and-moves-paddockCount').fill('12');
  await expect(page).toHaveURL(/paddock=12/);
  await expect(page).toHaveURL(/start=2027-08-01/);
  await openOn(page, '2027-08-09', page.url());
  await expect(field(page, 'rest-and-moves-startDay')).toHaveValue('2027-08-01');
});

test('an example that is brought back has today as well', async ({ page }) => {
  await openOn(page, '2027-07-04', '/calculators/rest-and-moves/');
  await page.getByRole('button', { name: /^Clear it/ }).click();
  await expect(field(page, 'rest-and-moves-startDay')).toHaveValue('');
  await page.getByRole('button', { name: /^Example again/ }).click();
  await expect(field(page, 'rest-and-moves-startDay')).toHaveValue('2027-07-04');
  await expect(startWhose(page)).toHaveText('today, by this device');
});

test('a metric form has today as well', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('holdwater-units', 'si'));
  await openOn(page, '2027-07-04', '/calculators/carrying-capacity/');
  await expect(field(page, 'carrying-capacity-goDay')).toHaveValue('2027-07-24');
  await expect(page.locator('.waiting')).toHaveCount(0);
});

test('in a guide the dates move when the form is touched, and what was typed stays', async ({ page }) => {
  const box = page.locator('[data-calculator="hay-to-grass"]');
  await page.clock.setFixedTime(new Date('2027-02-28T12:00:00'));
  await page.goto('/guides/bridging-with-hay/');
  await expect(field(page, 'hay-to-grass-fromDay'), 'drawn once it is opened').toHaveCount(0);
  await box.getByText('Work it out here').click();
  await box.and(page.locator('[data-ready]')).waitFor();
  await expect(field(page, 'hay-to-grass-fromDay')).toHaveValue('2027-02-28');
  await field(page, 'hay-to-grass-ownCount').fill('75');
  await field(page, 'hay-to-grass-ownCount').blur();
  await page.clock.setFixedTime(new Date('2028-12-01T12:00:00'));
  await page.waitForTimeout(600);
  await page.reload();
  await box.and(page.locator('[data-ready]')).waitFor();
  await expect(field(page, 'hay-to-grass-ownCount')).toHaveValue('75');
  await expect(field(page, 'hay-to-grass-fromDay')).toHaveValue('2027-02-28');
});

const whoseOf = (page: Page, id: string) => page.locator('.field', { has: field(page, id) }).locator('.whose');
const give = (page: Page, key: string, text: string) => field(page, `hay-to-grass-${key}`).fill(text);

test('dates of the example that nobody gave go by those that somebody gives', async ({ page }) => {
  await openOn(page, '2027-05-30', '/calculators/hay-to-grass/');
  await openGroups(page);
  await expect(field(page, 'hay-to-grass-baledDay')).toHaveValue('2027-06-15');
  await page.locator('[data-carry-on][data-live]').waitFor();
  await give(page, 'fromDay', '2026-12-05');
  await give(page, 'toDay', '2027-04-25');
  await expect(page.locator('.waiting')).toHaveCount(0);
  await expect(field(page, 'hay-to-grass-baledDay')).toHaveValue('2026-06-15');
  await expect(whoseOf(page, 'hay-to-grass-baledDay')).toHaveText('example');
  await expect(whoseOf(page, 'hay-to-grass-fromDay')).toHaveText('yours');
  await expect(page).toHaveURL(/from=2026-12-05&to=2027-04-25&.*herd\.birth=2027-03-10,,2027-03-25/);
  await expect(page.getByText('birth date', { exact: false })).toHaveCount(0);
  // What somebody gave does not go along, and a step back takes all with it.
  await give(page, 'baledDay', '2026-09-15');
  await give(page, 'fromDay', '2027-12-05');
  await expect(page.locator('.waiting'), 'turn-out was given too').toContainText('Turn-out must come after');
  await give(page, 'toDay', '2028-04-25');
  await expect(field(page, 'hay-to-grass-baledDay')).toHaveValue('2026-09-15');
  await expect(page).toHaveURL(/herd\.birth=2028-03-10,,2028-03-25/);
  await field(page, 'hay-to-grass-toDay').blur();
  await page.locator('[data-carry="undo"]').click();
  await page.locator('[data-carry="undo"]').click();
  await page.locator('[data-carry="undo"]').click();
  await expect(page).toHaveURL(/from=2026-12-05&to=2027-04-25&.*herd\.birth=2027-03-10,,2027-03-25/);
  await expect(field(page, 'hay-to-grass-baledDay')).toHaveValue('2026-06-15');
});

test('what goes by a date moves with it, in one drawing', async ({ page }) => {
  await openOn(page, '2027-05-30', '/calculators/hay-to-grass/');
  await openGroups(page);
  await page.locator('[data-carry-on][data-live]').waitFor();
  await give(page, 'toDay', '2027-04-25');
  const drawings = await field(page, 'hay-to-grass-fromDay').evaluate(async (from: HTMLInputElement) => {
    const answer = document.querySelector('.answer');
    const baled = document.querySelector<HTMLInputElement>('#hay-to-grass-baledDay');
    if (!answer || !baled) throw new Error('no answer, or no such date');
    const seen: string[] = [];
    // Told between one drawing and the next.
    const watch = new MutationObserver(() => seen.push(baled.value));
    watch.observe(answer, { subtree: true, childList: true, characterData: true });
    from.value = '2026-12-05';
    from.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise(requestAnimationFrame);
    watch.disconnect();
    return seen;
  });
  expect(drawings).toEqual(['2026-06-15']);
});

test('a place with hay on hand plans the winter that is under way, and judges its hay anew where the dates change', async ({ page }) => {
  const stack = { id: 'a', baleCount: 120, baleLb: 950, baledDay: '2026-06-20' };
  await page.clock.setFixedTime(new Date('2026-11-30T12:00:00'));
  await page.goto('/about/');
  await keepPlace(page, { ...twoBench, hay: { stacks: [stack] } });
  await openOn(page, '2026-11-30', '/calculators/hay-to-grass/');
  const [bales, left] = [field(page, 'hay-to-grass-ownCount'), page.getByText('The hay that your place has on hand is not counted here.')];
  await expect(field(page, 'hay-to-grass-fromDay')).toHaveValue('2026-11-30');
  await expect(whoseOf(page, 'hay-to-grass-fromDay')).toHaveText('today, by this device');
  await expect(field(page, 'hay-to-grass-toDay')).toHaveValue('2027-04-20');
  await expect(whoseOf(page, 'hay-to-grass-toDay')).toHaveText('from your place');
  await expect(bales).toHaveValue('120');
  await expect(whoseOf(page, 'hay-to-grass-ownCount')).toHaveText('from your place');
  await expect(left).toHaveCount(0);
  // For the winter after this hay is too old: it says so, and none of the example’s is counted in its stead.
  await give(page, 'fromDay', '2027-11-01');
  await expect(field(page, 'hay-to-grass-toDay')).toHaveValue('2028-04-20');
  await expect(left).toHaveCount(1);
  await expect(bales).toHaveCount(0);
  await expect(whoseOf(page, 'hay-to-grass-onHand')).toContainText('from your place, what lies there is not counted');
  await give(page, 'fromDay', '2026-12-05');
  await expect(left).toHaveCount(0);
  await expect(bales).toHaveValue('120');
  await expect(whoseOf(page, 'hay-to-grass-ownCount')).toHaveText('from your place');
  // Bales that somebody counted stay, and the place’s are offered beside them as soon as they fit.
  await give(page, 'ownCount', '90');
  await give(page, 'fromDay', '2027-11-01');
  await expect(left).toHaveCount(1);
  await give(page, 'fromDay', '2026-12-05');
  await expect(bales).toHaveValue('90');
  await page.locator('.field', { has: bales }).getByRole('button', { name: 'use it' }).click();
  await expect(bales).toHaveValue('120');
  await expect(left).toHaveCount(0);
});

const asked = (page: Page) => page.locator('.clock-asked');
const startDay = (page: Page) => field(page, 'rest-and-moves-startDay');
const startWhose = (page: Page) => whoseOf(page, 'rest-and-moves-startDay');
const builtOn = async (page: Page): Promise<string> => (await page.locator('[data-built]').first().getAttribute('data-built')) ?? '';

test('a clock that can be right is not asked about, and nothing is fetched to ask', async ({ page }) => {
  const scripts: string[] = [];
  page.on('request', (request) => scripts.push(new URL(request.url()).pathname));
  await page.goto('/calculators/rest-and-moves/');
  await page.locator('[data-calculator][data-ready]').waitFor();
  await page.waitForTimeout(600);
  await expect(startWhose(page)).toHaveText('today, by this device');
  await expect(asked(page)).toHaveCount(0);
  expect(scripts.filter((path) => /\/today\./.test(path))).toHaveLength(1);
  expect(scripts.filter((path) => /askToday/.test(path))).toEqual([]);
});

test('a clock from before the copy was built is asked about above the answer, and the answer holds in this window', async ({ page, browser }) => {
  await openOn(page, '2019-01-03', '/calculators/rest-and-moves/');
  const built = await builtOn(page);
  await expect(asked(page)).toContainText('This device says Jan 3, 2019. Is that today?');
  const today = asked(page).getByLabel('Today is');
  await expect(today).toHaveValue('2019-01-03');
  const [notice, answer] = [await asked(page).boundingBox(), await big(page).boundingBox()];
  expect((notice?.y ?? Number.NaN) + (notice?.height ?? Number.NaN)).toBeLessThanOrEqual(answer?.y ?? Number.NaN);
  const go = asked(page).getByRole('button', { name: 'Go by this day' });
  await go.click();
  await expect(asked(page).locator('.problem')).toContainText('so today cannot be Jan 3, 2019');
  await expect(today).toHaveAttribute('aria-invalid', 'true');
  expect((await new AxeBuilder({ page }).include('.calculator').analyze()).violations).toEqual([]);
  await today.fill(built);
  await go.click();
  await expect(startDay(page)).toHaveValue(built);
  await expect(startWhose(page)).toHaveText('today, as you said');
  await expect(asked(page)).toContainText('as you said');
  // Nobody has changed anything in the form.
  await page.waitForTimeout(600);
  expect(new URL(page.url()).search).toBe('');

  await openOn(page, '2019-01-04', '/calculators/rest-and-moves/');
  const next = new Date(Date.parse(built) + 86_400_000).toISOString().slice(0, 10);
  await expect(startDay(page), 'a day later').toHaveValue(next);
  await openOn(page, '2019-01-03', '/calculators/hay-to-grass/');
  await openGroups(page);
  expect((await field(page, 'hay-to-grass-fromDay').inputValue()) >= built, 'the winter that comes').toBe(true);
  await expect(asked(page)).not.toContainText('Is that today?');
  await asked(page).getByRole('button', { name: 'Change it' }).click();
  await expect(asked(page).getByLabel('Today is')).toHaveValue(built);

  const another = await browser.newContext();
  const elsewhere = await another.newPage();
  await openOn(elsewhere, '2019-01-03', new URL('/calculators/rest-and-moves/', page.url()).href);
  await expect(asked(elsewhere)).toContainText('Is that today?');
  await another.close();
});

test('when a doubted clock is put right, what was typed stays, and dates of a link are not asked about', async ({ page }) => {
  await openOn(page, '2019-01-03', '/calculators/rest-and-moves/');
  await openGroups(page);
  await field(page, 'rest-and-moves-paddockCount').fill('12');
  await expect(page).toHaveURL(/paddock=12/);
  const built = await builtOn(page);
  await asked(page).getByLabel('Today is').fill(built);
  await asked(page).getByRole('button', { name: 'Go by this day' }).click();
  await expect(field(page, 'rest-and-moves-paddockCount')).toHaveValue('12');
  await expect(startDay(page)).toHaveValue(built);
  await expect(page).toHaveURL(new RegExp(`start=${built}`));
  await page.reload();
  await page.locator('[data-calculator][data-ready]').waitFor();
  await page.waitForTimeout(600);
  await expect(field(page, 'rest-and-moves-startDay')).toHaveValue(built);
  await expect(asked(page)).toHaveCount(0);
});
