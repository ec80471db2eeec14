// Visits: the walk of an adviser with its taps counted, into which visit a result goes, and visits beside earlier ones.
import { expect, type Locator, test } from '@playwright/test';
import { withWorker } from './copyHere.ts';
import { field, keepsFocus, openForm, openGroups, ready } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { button, placed } from './placePage.ts';
import { withoutSignal } from './signal.ts';
import { begun, keptBy, visitorsPhone, visits, written } from './visitsOfOnes.ts';
import { long } from './walked.ts';

test.use(visitorsPhone);

let taps = 0;
const tap = async (what: Locator): Promise<void> => {
  await what.tap();
  taps += 1;
};
const kept = keptBy(tap);

test.describe(() => {
  test.use(withWorker);

  test('three calculations and one printed note take at most twenty taps on a kept place, with no signal', long, async ({ page, context }) => {
    const { server, asked } = await withoutSignal(page, context, () => keepPlace(page, { ...twoBench, linkBase: 'https://copy.example/' }));
    await page.goto(`${server.origin}/place/`);
    await placed(page);
    taps = 0;
    await tap(page.getByRole('link', { name: 'New visit' }));
    await tap(button(page, 'Low bench'));
    await tap(button(page, 'High bench'));
    await kept(page, 'Infiltration rate from a ring test', 'ring-test', async () => {
      // The day's own readings are free: nobody counts them.
      await page
        .getByRole('button', { name: /^Change/ })
        .first()
        .tap();
      await field(page, 'ring-test-rings-0-firstMin').fill('4');
    });
    await kept(page, 'Ground cover from a hundred steps', 'cover-count');
    await kept(page, 'Runoff from rainfall depth', 'storm-runoff', async () => tap(button(page, 'Set another management beside it')));
    await expect(page.locator('.coming > li')).toHaveCount(3);
    await tap(page.getByRole('link', { name: 'Write the note' }));
    const what = page.getByLabel('Step 1: What');
    await tap(what);
    await what.fill('Rest the high bench');
    const by = page.getByLabel('Step 1: By when');
    await tap(by);
    await by.fill('2027-07-20');
    await tap(button(page, 'For the producer'));
    await page.evaluate(() => {
      window.print = () => {
        dispatchEvent(new Event('beforeprint'));
        document.documentElement.dataset['printed'] = '';
      };
    });
    await tap(button(page, 'Print'));
    console.log(`taps for three calculations and a printed note: ${taps}`);
    expect(taps).toBeLessThanOrEqual(20);
    const paper = page.locator('.note-paper');
    await expect(paper).toBeVisible();
    for (const each of [
      'Two Bench place',
      'Low bench and High bench',
      'Infiltration rate from a ring test',
      'Rest the high bench (by Jul 20, 2027)',
      '988',
    ])
      await expect(paper).toContainText(each);
    await expect(paper.locator('svg.code')).toHaveCount(3);
    for (const each of asked) expect(each).not.toMatch(/bench/i);
  });
});

test('without a place a result makes one, with its first visit; from then on it goes into that', async ({ page }) => {
  await openForm(page, 'cover-count');
  await button(page, 'Keep this result').click();
  await expect(page.getByRole('heading', { name: 'Keep this result' })).toBeFocused();
  await button(page, 'Keep').click();
  await expect(page.getByText('The place needs a name.')).toBeVisible();
  await page.getByLabel('Name of the place').fill('Home place');
  await button(page, 'Keep').click();
  await expect(page.getByText(/^Kept in the visit of/)).toBeVisible();
  await openForm(page, 'slake-test');
  await button(page, 'Keep this result').click();
  await expect(page.getByLabel('In which visit')).toBeVisible();
  await keepsFocus(page);
  await button(page, 'Keep').last().click();
  await expect(page.getByRole('link', { name: 'Open the visit' })).toBeFocused();
  await page.getByRole('link', { name: 'Open the visit' }).click();
  await placed(page);
  await expect(page.locator('.coming > li')).toHaveCount(2);
});

test('the rings of an earlier visit stand beside today’s, in the form that the next visit lists first', async ({ page }) => {
  const tool = 'bore-from=measured&bore=6in&inserted=3in&water=444ml&site=none&moisture=moist&beside=no';
  const rings = 'rings.first=5min,6min,7min&rings.pours=twice,twice,twice&rings.second=18min,11min,32min&rings.end=gone,gone,gone';
  const readings = `?${tool}&${rings}&v=2`;
  await page.clock.setFixedTime(new Date('2027-06-20T07:00:00'));
  await begun(page);
  await button(page, 'High bench').tap();
  await button(page, 'Add a calculation').tap();
  await page.getByRole('link', { name: 'Infiltration rate from a ring test', exact: true }).tap();
  await ready(page, 'ring-test');
  await openForm(page, 'ring-test', readings);
  await button(page, 'Keep in this visit').tap();
  await placed(page);
  await page.getByLabel('Day of the visit').fill('2026-06-18');
  await written(page, 'visits', '2026-06-18');
  await page.goto('/place/#/visit/new');
  await expect(page.getByText('Nothing yet.')).toBeVisible();
  await button(page, 'High bench').tap();
  await button(page, 'Add a calculation').tap();
  await expect(page.locator('.form-names a').first()).toHaveText('Infiltration rate from a ring test');
  await page.locator('.form-names a').first().tap();
  await ready(page, 'ring-test');
  await expect(page.locator('.place-said')).toContainText('High bench: the readings of your visit of Jun 18, 2026 stand beside today’s.');
  await openGroups(page);
  await expect(page.locator('#ring-test-others .whose')).toHaveText(Array.from({ length: 3 }, () => 'from your place, visit of Jun 18, 2026'));
  // 444 mL stand 0.958 in deep in a ring of 6 in; gone in 18 minutes, that is 3.194 in an hour.
  await expect(field(page, 'ring-test-others-0-thenInPerHr')).toHaveValue('3.194');
});

test('a visit in which nothing was done yet is the one that is begun again that day', async ({ page }) => {
  await begun(page);
  for (let time = 0; time < 2; time += 1) {
    await page.goto('/place/#/visits');
    await page.getByRole('link', { name: 'New visit' }).tap();
    await expect(button(page, 'High bench')).toBeVisible();
  }
  expect(await visits(page, 'visits')).toHaveLength(1);
  await button(page, 'High bench').tap();
  await page.goto('/place/#/visits');
  await page.getByRole('link', { name: 'New visit' }).tap();
  await expect.poll(() => visits(page, 'visits')).toHaveLength(2);
});

test('a result at the demo place goes into no visit of another place', async ({ page }) => {
  await begun(page);
  await button(page, 'Add a calculation').tap();
  await page.getByRole('link', { name: 'Infiltration rate from a ring test', exact: true }).tap();
  await ready(page, 'ring-test');
  await expect(button(page, 'Keep in this visit')).toBeVisible();
  await keepPlace(page, { ...twoBench, id: 'demo-two-bench', isDemo: true });
  await openForm(page, 'ring-test');
  await button(page, 'Keep this result').tap();
  await expect(page.getByRole('heading', { name: 'Keep this result' })).toBeVisible();
  await expect(page.getByLabel('In which visit')).toHaveCount(0);
  await expect(button(page, 'Keep in this visit')).toHaveCount(0);
  await button(page, 'Keep').tap();
  await expect(page.getByText(/^Kept in the visit of/)).toBeVisible();
  expect((await visits(page, 'visits')).map(({ placeId, results }) => [placeId, JSON.parse(JSON.stringify(results)).length])).toEqual(
    expect.arrayContaining([
      ['two-bench', 0],
      ['demo-two-bench', 1],
    ]),
  );
});

test('two visits are set side by side, with what was not alike', async ({ page }) => {
  await begun(page);
  await button(page, 'High bench').tap();
  await kept(page, 'Ground cover from a hundred steps', 'cover-count');
  await page.getByLabel('Day of the visit').fill('2025-06-18');
  await page.getByLabel('How the ground felt').selectOption('Moist');
  await written(page, 'visits', '2025-06-18');
  await page.goto('/place/#/visit/new');
  await expect(page.getByText('Nothing yet.')).toBeVisible();
  await button(page, 'High bench').tap();
  await kept(page, 'Ground cover from a hundred steps', 'cover-count');
  await page.getByLabel('How the ground felt').selectOption('Wet');
  await page.goto('/place/#/visits');
  // The list comes with its chunk.
  await expect(page.locator('.kept-places input')).toHaveCount(2);
  for (const tick of await page.locator('.kept-places input').all()) await tick.check();
  await page.getByRole('link', { name: /side by side/ }).tap();
  await expect(page.getByRole('heading', { name: 'High bench: Ground cover from a hundred steps' })).toBeVisible();
  await expect(page.getByText('The change cannot be told from chance.')).toBeVisible();
  await expect(page.getByText(/the ground felt moist then and wet now/).first()).toBeVisible();
  await expect(page.locator('.visits-plot:not(.range-plot) circle')).toHaveCount(2);
  await expect(page.locator('.range-plot')).toHaveAttribute('aria-label', /^Range of the change: .*19 times in 20/);
  await expect(page.locator('.range-plot')).toContainText('no change');
});
