// The record kept at the gate: with one hand, its taps counted, without a signal.
import { expect, type Locator, type Page, test } from '@playwright/test';
import { aMove } from '../place/aRow.ts';
import { dist } from '../site/builtSite.ts';
import { copyWhole, withWorker } from './copyHere.ts';
import { keepPlace, keepRows, keptRows, twoBench } from './placeOfOnes.ts';
import { button } from './placePage.ts';
import { keepersPhone, morning, moves, open, placeId, rain, record } from './recordOfOnes.ts';
import { serve } from './staticServer.ts';

test.use(keepersPhone);

/** No finger has to push the page, and every target holds a thumb. */
async function expectOneHand(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.querySelector('.gate')?.getBoundingClientRect().bottom ?? Infinity)).toBeLessThanOrEqual(844);
  for (const each of await page.locator('.gate button:visible').all()) {
    const box = await each.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0), (await each.textContent()) ?? '').toBeGreaterThanOrEqual(56);
  }
}

test.describe(() => {
  test.use(withWorker);

  test('they moved: three taps from home, with no signal, and it is kept', async ({ page, context }) => {
    const server = await serve(dist);
    await page.clock.setFixedTime(morning);
    await page.goto(`${server.origin}/`);
    await expect(page.getByRole('link', { name: 'At the gate' })).toBeHidden();
    await copyWhole(page);
    await keepPlace(page, twoBench);
    await keepRows(page, record);
    await server.stop();
    await context.setOffline(true);
    await page.goto(`${server.origin}/`);
    let taps = 0;
    const tap = async (what: Locator): Promise<void> => {
      await what.tap();
      taps += 1;
    };
    await tap(page.getByRole('link', { name: 'At the gate' }));
    await expect(page.locator('.gate-herds')).toContainText('45 cows on Low bench since Jun 8 (12 days)');
    await expectOneHand(page);
    await tap(button(page, 'They moved'));
    await expectOneHand(page);
    await tap(button(page, /^High bench/));
    expect(taps).toBe(3);
    await expect(page.getByText('They went from Low bench to High bench.')).toBeVisible();
    await expectOneHand(page);
    await expect.poll(async () => (await moves(page)).length).toBe(3);
    const [, left, went] = (await moves(page)).toSorted((one, other) => ('inDay' in one && 'inDay' in other && one.inDay < other.inDay ? -1 : 1));
    expect(left).toMatchObject({ id: 'm1', outDay: '2027-06-20' });
    expect(went).toMatchObject({
      paddockId: 'high',
      inDay: '2027-06-20',
      stock: [
        { kind: 'cow', countHead: 45, weightLb: 1250 },
        { kind: 'bull', countHead: 2 },
      ],
    });
    // Its height, a half inch at a time: two more taps.
    await page.getByRole('group', { name: 'How tall it stands on High bench' }).getByRole('button', { name: 'Taller' }).tap();
    await page.getByRole('group', { name: 'How tall it stands on High bench' }).getByRole('button', { name: 'Taller' }).tap();
    await expect.poll(async () => (await moves(page)).find((row) => 'inDay' in row && row.inDay === '2027-06-20')).toMatchObject({ heightInIn: 9 });
  });
});

test('a move can be taken back, and set on an earlier day', async ({ page }) => {
  await open(page, 'gate');
  await button(page, 'They moved').tap();
  await button(page, /^High bench/).tap();
  await expect.poll(async () => (await moves(page)).length).toBe(3);
  await button(page, 'Take it back').tap();
  await expect.poll(async () => (await moves(page)).map(({ id }) => id)).toEqual(['m0', 'm1']);
  expect((await moves(page)).find(({ id }) => id === 'm1')).not.toHaveProperty('outDay');
  await expect(page.locator('.gate-herds')).toContainText('on Low bench since Jun 8');
  await button(page, 'A day back').tap();
  await expect(page.locator('.gate-day')).toContainText('Yesterday, Jun 19');
  await button(page, 'They moved').tap();
  await button(page, /^High bench/).tap();
  await expect.poll(async () => (await moves(page)).find(({ id }) => id === 'm1')).toMatchObject({ outDay: '2027-06-19' });
});

test('many paddocks and two herds fit on one screen, and the rest is one tap away', async ({ page }) => {
  const paddocks = Array.from({ length: 12 }, (_, index) => ({ id: `low-${index + 1}`, name: `Low bench ${index + 1}` }));
  const many = {
    ...twoBench,
    pastures: twoBench.pastures.map((each) => (each.id === 'low' ? { ...each, paddocks } : each)),
    herd: [...twoBench.herd, { id: 'ewes', kind: 'ewe' as const, countHead: 60, weightLb: 160, herdNumber: 2 }],
  };
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  await keepPlace(page, many);
  await keepRows(page, [aMove({ placeId, paddockId: 'low-1', inDay: '2027-06-18' })]);
  await page.goto('/place/#/gate');
  await button(page, 'They moved').tap();
  await button(page, 'Herd 2').tap();
  await expectOneHand(page);
  await button(page, '9 more').tap();
  await button(page, /^Low bench 12/).tap();
  await expect
    .poll(async () => (await moves(page)).find((row) => 'herdNumber' in row && row.herdNumber === 2))
    .toMatchObject({ paddockId: 'low-12', stock: [{ kind: 'ewe', countHead: 60 }] });
});

test('a herd that was split is told once, and one part of it is moved by itself', async ({ page }) => {
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  const creek = { id: 'creek', name: 'Creek flat', areaAc: 40, isCounted: true, paddocks: [] };
  await keepPlace(page, { ...twoBench, pastures: [...twoBench.pastures, creek] });
  const part = (id: string, paddockId: string, countHead: number) =>
    aMove({ id, placeId, paddockId, inDay: '2027-06-10', stock: [{ kind: 'cow', countHead, weightLb: 1250 }] });
  await keepRows(page, [part('m1', 'low', 25), part('m2', 'high', 20)]);
  await page.goto('/place/#/gate');
  await expect(page.locator('.gate-herds li')).toHaveText([/^45 cows in 2 parts: 25 cows on Low bench since .+; 20 cows on High bench since /]);
  await button(page, 'They moved').tap();
  await button(page, 'High bench').tap();
  await expectOneHand(page);
  await button(page, /^Creek flat/).tap();
  await expect(page.getByText('They went from High bench to Creek flat.')).toBeVisible();
  await expect
    .poll(async () => (await moves(page)).find((row) => 'inDay' in row && row.inDay === '2027-06-20'))
    .toMatchObject({ paddockId: 'creek', herdNumber: 1, stock: [{ kind: 'cow', countHead: 20 }] });
  const left = (await moves(page)).filter((row) => 'outDay' in row).map(({ id }) => id);
  expect(left).toEqual(['m2']);
});

test('of a herd whose old line holds all of it still, who stayed is moved as so many as stayed', async ({ page }) => {
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  const creek = { id: 'creek', name: 'Creek flat', areaAc: 40, isCounted: true, paddocks: [] };
  const cows = { id: 'cows', kind: 'cow' as const, countHead: 45, weightLb: 1250 };
  await keepPlace(page, { ...twoBench, herd: [cows], pastures: [...twoBench.pastures, creek] });
  const stock = [{ kind: 'cow' as const, countHead: 20, weightLb: 1250, lbPerDay: 30 }];
  await keepRows(page, [aMove({ placeId, inDay: '2027-06-08' }), aMove({ id: 'm2', placeId, paddockId: 'high', inDay: '2027-06-10', stock })]);
  await page.goto('/place/#/gate');
  await button(page, 'They moved').tap();
  await button(page, 'Low bench').tap();
  await button(page, /^Creek flat/).tap();
  await expect
    .poll(async () => (await moves(page)).find((row) => 'inDay' in row && row.inDay === '2027-06-20'))
    .toMatchObject({ paddockId: 'creek', stock: [{ kind: 'cow', countHead: 25 }] });
});

test('of two herds one is moved on an earlier day than the other came, and is asked for its own heights', async ({ page }) => {
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  await keepPlace(page, { ...twoBench, herd: [...twoBench.herd, { id: 'ewes', kind: 'ewe' as const, countHead: 60, weightLb: 160, herdNumber: 2 }] });
  await keepRows(page, [aMove({ placeId, inDay: '2027-06-20' })]);
  await page.goto('/place/#/gate');
  await button(page, 'A day back').tap();
  await button(page, 'They moved').tap();
  await expect(page.getByRole('alert').filter({ hasText: 'They came to Low bench on Jun 20' })).toBeVisible();
  await button(page, 'Herd 2').tap();
  await expect(page.getByRole('alert')).toHaveCount(0);
  await button(page, /^High bench/).tap();
  await expect
    .poll(async () => (await moves(page)).find((row) => 'herdNumber' in row && row.herdNumber === 2))
    .toMatchObject({ paddockId: 'high', inDay: '2027-06-19' });
  await page.getByRole('group', { name: 'How tall it stands on High bench' }).getByRole('button', { name: 'Taller' }).tap();
  await expect.poll(async () => (await moves(page)).find((row) => 'herdNumber' in row && row.herdNumber === 2)).toHaveProperty('heightInIn');
  await expect(page.getByRole('group', { name: /Low bench/ })).toHaveCount(0);
});

test('with type twice as large the day stands between its buttons, and under neither', async ({ page }) => {
  await open(page, 'gate');
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  await expect(page.locator('.gate-day > *')).toHaveCount(3);
  const [before, day, after] = await page.locator('.gate-day > *').evaluateAll((all) => all.map((each) => each.getBoundingClientRect().toJSON()));
  expect(before.right).toBeLessThanOrEqual(day.left);
  expect(day.right).toBeLessThanOrEqual(after.left);
});

test('a move before they came there is refused in words', async ({ page }) => {
  await open(page, 'gate', [aMove({ placeId, inDay: '2027-06-20' })]);
  await button(page, 'A day back').tap();
  await button(page, 'They moved').tap();
  await expect(page.getByRole('alert').filter({ hasText: 'They came to Low bench on Jun 20' })).toBeVisible();
});

test('a device whose day lies before the record is told so, before a tap is written under it', async ({ page }) => {
  await open(page, 'gate');
  await expect(page.getByText('Set the date of the device before you tap')).toHaveCount(0);
  await page.clock.setFixedTime(new Date('2019-01-03T07:00:00'));
  await page.reload();
  await expect(
    page.getByText('This device says Jan 3, 2019, and your record goes to Jun 17, 2027. Set the date of the device before you tap'),
  ).toBeVisible();
});

test('a device whose day lies before the copy was built is asked what day it is, and its taps are written under the answer', async ({ page }) => {
  await page.clock.setFixedTime(new Date('2019-01-03T07:00:00'));
  await page.goto('/about/');
  await keepPlace(page, { ...twoBench, changedAt: '2019-01-01T08:00:00.000Z' });
  const asked = page.locator('.clock-asked');
  for (const view of ['gate', 'visits', 'files']) {
    await page.goto('about:blank');
    await page.goto(`/place/#/${view}`);
    await expect(asked, view).toContainText('This device says Jan 3, 2019. Is that today?');
  }
  const built = (await page.locator('#place').getAttribute('data-built')) ?? '';
  await page.goto('/place/#/gate');
  await asked.getByLabel('Today is').fill('2019-01-03');
  await button(page, 'Go by this day').tap();
  await expect(asked.locator('.problem')).toContainText('so today cannot be Jan 3, 2019');
  await asked.getByLabel('Today is').fill(built);
  await button(page, 'Go by this day').tap();
  await expect(asked).toContainText('as you said');
  await button(page, 'Rain').tap();
  await button(page, '0.5').tap();
  await expect.poll(async () => (await rain(page)).map((row) => 'day' in row && row.day)).toEqual([built]);
  // The forms of this window go by the same answer, and the page does when it is opened again.
  await page.goto('/calculators/rest-and-moves/');
  await expect(page.locator('.clock-asked')).toContainText('as you said');
  await page.goto('/place/#/gate');
  await expect(asked).toContainText('as you said');
});

test('a clock that can be right is not asked about at the place, and nothing is fetched to ask', async ({ page }) => {
  const scripts: string[] = [];
  page.on('request', (request) => scripts.push(new URL(request.url()).pathname));
  await open(page, 'gate');
  await expect(page.locator('.gate')).toBeVisible();
  await expect(page.locator('.clock-asked')).toHaveCount(0);
  expect(scripts.filter((path) => /clockAsked/.test(path))).toEqual([]);
});

test('rain is one tap and one more; a day that nobody tapped is not read, and never dry by itself', async ({ page }) => {
  await open(page, 'gate');
  await button(page, 'Rain').tap();
  await expectOneHand(page);
  await expect(page.getByText('What you tap now counts for all 3 days.')).toBeVisible();
  await button(page, '0.5').tap();
  await expect.poll(async () => (await rain(page)).find((row) => 'day' in row && row.day === '2027-06-20')).toMatchObject({ days: 3, amountIn: 0.5 });
  await button(page, 'Take it back').tap();
  await expect.poll(async () => (await rain(page)).length).toBe(1);
  await button(page, 'Rain').tap();
  await button(page, 'Dry since I last read').tap();
  await expect.poll(async () => (await rain(page)).find((row) => 'day' in row && row.day === '2027-06-19')).toMatchObject({ days: 2, amountIn: 0 });
  await button(page, 'trace').tap();
  await expect
    .poll(async () => (await rain(page)).find((row) => 'day' in row && row.day === '2027-06-20'))
    .toMatchObject({ days: 1, amountIn: 0, isTrace: true });
  // Read again that day: it adds up.
  await button(page, 'Rain').tap();
  await button(page, 'other').tap();
  for (const [typed, says] of [
    ['wet', 'Rain must be one number, such as 0.4.'],
    ['-1', 'Rain must be from 0 to 30 in.'],
    ['1,25', 'Write 1.25, if that is meant'],
    ['45', 'Rain must be from 0 to 30 in.'],
  ] as const) {
    await page.getByLabel('Rain', { exact: true }).fill(typed);
    await page.keyboard.press('Enter');
    await expect(page.locator('.gate-own .problem')).toContainText(says);
    await button(page, 'Keep it').tap();
    await expect(page.locator('.gate-own .problem')).toContainText(says);
  }
  await page.getByLabel('Rain', { exact: true }).fill('0.37');
  await button(page, 'Keep it').tap();
  await expect.poll(async () => (await rain(page)).find((row) => 'day' in row && row.day === '2027-06-20')).toMatchObject({ amountIn: 0.37 });
});

test('hay and heights are kept where they belong', async ({ page }) => {
  await open(page, 'gate');
  await button(page, 'Hay').tap();
  await expectOneHand(page);
  await button(page, '2').tap();
  await expect
    .poll(async () => (await keptRows(page)).find((row) => row.is === 'hay' && row.day === '2027-06-20'))
    .toMatchObject({ paddockId: 'low', baleCount: 2 });
  await button(page, 'Height').tap();
  await button(page, 'High bench').tap();
  await expectOneHand(page);
  await button(page, 'Taller').tap();
  await button(page, 'Keep it').tap();
  await expect
    .poll(async () => (await keptRows(page)).find((row) => row.is === 'height' && row.day === '2027-06-20'))
    .toMatchObject({ paddockId: 'high', heightIn: 5.5 });
});

test('hay is kept on ground that was taken away while stock stand on it', async ({ page }) => {
  await open(page, 'gate', [aMove({ placeId, paddockId: 'river', paddockName: 'River trap', inDay: '2027-06-08' })]);
  await button(page, 'Hay').tap();
  await expect(page.getByText('Bales fed on River trap')).toBeVisible();
  await button(page, '2').tap();
  await expect
    .poll(async () => (await keptRows(page)).find(({ is }) => is === 'hay'))
    .toMatchObject({ paddockId: 'river', paddockName: 'River trap', baleCount: 2 });
});

test('two windows add lines to one record, and each shows the other’s', async ({ page, context }) => {
  await open(page, 'gate');
  const other = await context.newPage();
  await other.clock.setFixedTime(morning);
  await other.goto('/place/#/gate');
  await button(other, 'Rain').tap();
  await button(page, 'They moved').tap();
  await button(page, /^High bench/).tap();
  await button(other, '1').tap();
  await expect(other.locator('.gate-herds')).toContainText('High bench');
  await expect.poll(async () => (await keptRows(page)).length).toBe(record.length + 2);
  expect((await keptRows(page)).filter(({ clash }) => clash !== undefined)).toEqual([]);
});
