// The record kept at the gate: with one hand, its taps counted, without a signal; then in the record, on paper and as tables.
import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Row } from '../../src/place/model/row.ts';
import { aHay, aHeight, aMove, aRain } from '../place/aRow.ts';
import { dist } from '../site/builtSite.ts';
import { field, openForm, openGroups } from './forms.ts';
import { keepPlace, keepRows, keptRows, twoBench } from './placeOfOnes.ts';
import { serve } from './staticServer.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const morning = new Date('2027-06-20T07:00:00');
const placeId = twoBench.id;
const low = aMove({ placeId, inDay: '2027-06-08', paddockName: 'Low bench' });
const record: readonly Row[] = [
  aMove({ id: 'm0', placeId, paddockId: 'high', inDay: '2027-05-20', outDay: '2027-06-08', heightInIn: 8, heightOutIn: 4, word: '=1+1' }),
  low,
  aHeight({ placeId, paddockId: 'high', day: '2027-06-15', heightIn: 5 }),
  aRain({ placeId, day: '2027-06-17', amountIn: 0.4 }),
  aHay({ placeId, day: '2027-06-09' }),
];
async function open(page: Page, view: string, rows: readonly Row[] = record): Promise<void> {
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await keepRows(page, rows);
  await page.goto(`/place/#/${view}`);
  await expect(page.locator('#place[data-ready]')).toBeVisible();
}
const moves = async (page: Page): Promise<readonly Row[]> => (await keptRows(page)).filter(({ is }) => is === 'move');
const rain = async (page: Page): Promise<readonly Row[]> => (await keptRows(page)).filter(({ is }) => is === 'rain');
const button = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name, exact: typeof name === 'string' });
/** No finger has to push the page, and every target holds a thumb. */
async function expectOneHand(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.querySelector('.gate')?.getBoundingClientRect().bottom ?? Infinity)).toBeLessThanOrEqual(844);
  for (const each of await page.locator('.gate button:visible').all()) {
    const box = await each.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0), (await each.textContent()) ?? '').toBeGreaterThanOrEqual(56);
  }
}

test('they moved: three taps from home, with no signal, and it is kept', async ({ page, context }) => {
  const server = await serve(dist);
  await page.clock.setFixedTime(morning);
  await page.goto(`${server.origin}/`);
  await expect(page.getByRole('link', { name: 'At the gate' })).toBeHidden();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null)
      await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }));
  });
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

test('a move before they came there is refused in words', async ({ page }) => {
  await open(page, 'gate', [aMove({ placeId, inDay: '2027-06-20' })]);
  await button(page, 'A day back').tap();
  await button(page, 'They moved').tap();
  await expect(page.getByRole('alert').filter({ hasText: 'They came to Low bench on Jun 20' })).toBeVisible();
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
  await page.getByLabel('Rain', { exact: true }).fill('wet');
  await expect(button(page, 'Keep it')).toBeDisabled();
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

test('the record shows the year, is mended, and what is taken away can come back', async ({ page }) => {
  await open(page, 'record');
  await expect(page.getByRole('heading', { name: 'Moves of 2027' })).toBeVisible();
  await page.locator('summary', { hasText: 'Low bench, Jun 8, there now' }).click();
  const out = page.getByLabel('Low bench, Jun 8, there now: Out');
  await out.fill('2027-06-18');
  await expect.poll(async () => (await moves(page)).find(({ id }) => id === 'm1')).toMatchObject({ outDay: '2027-06-18' });
  const head = page.getByLabel('Stock, line 1: Head');
  await head.fill('forty');
  await head.blur();
  await expect(page.getByText('Head must be a number, such as 45.')).toBeVisible();
  await expect
    .poll(async () => (await moves(page)).find(({ id }) => id === 'm1'))
    .toMatchObject({ stock: [{ countHead: 45, typed: { countHead: 'forty' } }] });
  await head.fill('44');
  await expect.poll(async () => (await moves(page)).find(({ id }) => id === 'm1')).toMatchObject({ stock: [{ countHead: 44 }] });
  await button(page, 'Take this line away').click();
  await expect.poll(async () => (await moves(page)).map(({ id }) => id)).toEqual(['m0']);
  await button(page, 'Take it back').click();
  await expect.poll(async () => (await moves(page)).map(({ id }) => id)).toEqual(['m0', 'm1']);
});

test('the record is free of faults that a program can find, at the gate too', async ({ page }) => {
  for (const view of ['gate', 'record']) {
    await open(page, view);
    await expect(page.locator(view === 'gate' ? '.gate' : '.record-next')).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    for (const width of [320, 390, 1280]) {
      await page.setViewportSize({ width, height: 844 });
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
        `${view} at ${width}`,
      ).toBeLessThanOrEqual(0);
    }
    await page.setViewportSize({ width: 390, height: 844 });
  }
});

for (const format of ['Letter', 'A4'] as const)
  test(`prints the sheet of the year, on its side, on ${format}`, async ({ page, browserName }) => {
    expect(browserName).toBe('chromium');
    await open(page, 'record');
    await expect(page.getByRole('heading', { name: 'Moves of 2027' })).toBeVisible();
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.record-paper')).toBeVisible();
    await expect(page.locator('.record-paper')).toContainText('Two Bench place, 2027');
    const heads = JSON.parse(readFileSync('content/sheets/grazing-record.json', 'utf8')).parts[1].columns.map(
      ({ name }: { readonly name: string }) => name,
    );
    const printed = await page.locator('.record-paper thead').first().locator('th').allTextContents();
    expect(heads.filter((head: string) => !printed.includes(head))).toEqual([]);
    const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString('latin1');
    const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
    expect(Number(width)).toBeGreaterThan(Number(height));
  });

test('tables go out and come in again, line by line, and nothing is written before the button', async ({ page }) => {
  await open(page, 'record');
  const [saved] = await Promise.all([page.waitForEvent('download'), button(page, 'Save moves.csv').click()]);
  const text = readFileSync(await saved.path(), 'utf8');
  expect(text).toContain(`,'=1+1,`);
  const give = (table: string) =>
    page.getByLabel('Bring in a table of moves or of rain').setInputFiles({ name: 'moves.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });
  await give(text);
  await expect(button(page, 'Nothing new to bring in')).toBeDisabled();
  await give('paddock,in,out,kind,head\nHigh bench,2026-05-01,2026-05-09,cow,40\nLost bench,2026-05-09,,cow,40\n');
  await expect(page.getByText('Line 3, left out: Your place has no paddock “Lost bench”.')).toBeVisible();
  expect((await moves(page)).length).toBe(2);
  await button(page, 'Bring in 1').click();
  await expect.poll(async () => (await moves(page)).length).toBe(3);
  await give('day,rain_in,days\n2026-05-04,0.5,1\n');
  await button(page, 'Bring in 1').click();
  await expect.poll(async () => (await rain(page)).length).toBe(2);
  await give('<!doctype html><script>alert(1)</script>');
  await expect(page.getByText('The first line must name the columns.')).toBeVisible();
});

test('the rain that a calculator kept before is offered once', async ({ page }) => {
  await page.goto('/about/');
  await page.evaluate(() => localStorage.setItem('holdwater-record:rainRecord', '#= unit=in; unlisted=not-read\n2026-05-01, 0.3\n2026-05-02, 0.1'));
  await open(page, 'record');
  await expect(page.getByText('2 readings that are not here')).toBeVisible();
  await button(page, 'Put them in').click();
  await expect.poll(async () => (await rain(page)).length).toBe(3);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Print it' })).toBeVisible();
  await expect(page.getByText('A calculator in this browser keeps a rain record')).toBeHidden();
});

test('the record goes into the file of its place and out of it again', async ({ page, browser }) => {
  await open(page, 'files');
  const [saved] = await Promise.all([page.waitForEvent('download'), button(page, /^Save Two Bench place as a file/).click()]);
  const text = readFileSync(await saved.path(), 'utf8');
  expect(JSON.parse(text).rows).toHaveLength(record.length);
  const other = await browser.newPage();
  await other.goto('/place/#/files');
  await other.getByLabel('A file of a place').setInputFiles({ name: 'p.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(other.getByText(`Its record: ${record.length} lines. ${record.length} new here.`)).toBeVisible();
  await other.getByRole('button', { name: 'Bring in one place' }).click();
  await expect.poll(async () => (await keptRows(other)).length).toBe(record.length);
  await other.close();
});

test('two heights of a resting paddock open rests and moves, and its moves become the plan', async ({ page }) => {
  const four = Array.from({ length: 8 }, (_, index) => ({ id: `high-${index + 1}`, name: `High bench ${index + 1}` }));
  const place = { ...twoBench, pastures: twoBench.pastures.map((each) => (each.id === 'high' ? { ...each, paddocks: four } : each)) };
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  await keepPlace(page, place);
  await keepRows(page, [
    aHeight({ placeId, paddockId: 'high-2', day: '2027-06-05', heightIn: 4 }),
    aHeight({ id: 'h2', placeId, paddockId: 'high-2', day: '2027-06-15', heightIn: 5.5 }),
  ]);
  await openForm(page, 'rest-and-moves');
  await openGroups(page);
  await expect(field(page, 'rest-and-moves-firstHeightIn')).toHaveValue('4');
  await expect(field(page, 'rest-and-moves-betweenDays')).toHaveValue('10');
  await expect(page.locator('.field', { has: field(page, 'rest-and-moves-secondHeightIn') }).locator('.whose')).toHaveText(
    'from your place, High bench 2, Jun 15, 2027',
  );
  await button(page, 'Keep as my place').click();
  await button(page, /^Keep these \d+ moves as the plan/).click();
  await expect(page.getByText('in the plan of Two Bench place.')).toBeVisible();
  const plan = (await keptRows(page)).filter(({ is }) => is === 'plan');
  expect(plan.length).toBeGreaterThan(7);
  expect(plan.some((row) => 'inDay' in row && row.inDay === '2027-06-20')).toBe(true);
});
