import { expect, type Page, test } from '@playwright/test';
import { field, figure, openGroups } from './forms.ts';

test.use({ serviceWorkers: 'block' });

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
  ['2026-01-15', 'hay-to-grass', { fromDay: '2026-11-01', toDay: '2027-04-20', baledDay: '2026-06-15', 'herd-0-birthDay': '2027-03-10' }],
  ['2026-07-04', 'hay-to-grass', { fromDay: '2026-11-01', toDay: '2027-04-20', baledDay: '2026-06-15', 'herd-0-birthDay': '2027-03-10' }],
  ['2027-02-28', 'hay-to-grass', { fromDay: '2027-11-01', toDay: '2028-04-20', baledDay: '2027-06-15', 'herd-0-birthDay': '2028-03-10' }],
];
for (const day of new Set(fresh.map(([each]) => each))) {
  test(`a fresh form on ${day} has dates that can still come, and an answer`, async ({ page }) => {
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
  await openOn(page, '2027-08-01', '/calculators/rest-and-moves/?start=2026-05-01&v=2');
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
  await expect(field(page, 'hay-to-grass-fromDay')).toHaveValue('2026-11-01');
  await box.getByText('Work it out here').click();
  await box.and(page.locator('[data-ready]')).waitFor();
  await expect(field(page, 'hay-to-grass-fromDay')).toHaveValue('2027-11-01');
  await field(page, 'hay-to-grass-ownCount').fill('75');
  await field(page, 'hay-to-grass-ownCount').blur();
  await page.clock.setFixedTime(new Date('2028-12-01T12:00:00'));
  await page.waitForTimeout(600);
  await page.reload();
  await box.and(page.locator('[data-ready]')).waitFor();
  await expect(field(page, 'hay-to-grass-ownCount')).toHaveValue('75');
  await expect(field(page, 'hay-to-grass-fromDay')).toHaveValue('2027-11-01');
});
