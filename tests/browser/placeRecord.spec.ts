// The record of a place: shown and mended, on paper, as tables, in the file of its place, and in forms.
import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { unitsKey } from '../../src/scripts/kept.ts';
import { aHay, aHeight, aMove, aPlan, aRain } from '../place/aRow.ts';
import { field, openForm, openGroups } from './forms.ts';
import { keepPlace, keepRows, keptRows, twoBench } from './placeOfOnes.ts';
import { button, placed } from './placePage.ts';
import { keepersPhone, morning, moves, open, placeId, rain, record } from './recordOfOnes.ts';

test.use(keepersPhone);

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
  await expect(page.locator('.problem', { hasText: 'Head must be one number, such as 45.' })).toBeVisible();
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

test('a day is typed by keys, year and all: its line stays open until it is left, and then stands under its year', async ({ page }) => {
  await open(page, 'record');
  await page.locator('summary', { hasText: 'High bench, May 20 to Jun 8' }).click();
  const typedDay = page.locator('#m0-inDay');
  await typedDay.focus();
  await page.keyboard.type('0512202');
  await expect(typedDay).toBeFocused();
  await expect(page.locator('.problem', { hasText: 'In must be a day of the calendar' }), 'not while it is typed').toBeHidden();
  // A year of three figures is none.
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(page.locator('.problem', { hasText: 'In must be a day of the calendar, from 1900 to 2199. What was there stays.' })).toBeVisible();
  await expect(button(page, '202')).toHaveCount(0);
  await expect.poll(async () => (await moves(page)).find(({ id }) => id === 'm0')).toMatchObject({ inDay: '2027-05-12' });
  await typedDay.focus();
  await page.keyboard.type('05122026');
  await expect(typedDay).toBeFocused();
  await expect(typedDay).toHaveValue('2026-05-12');
  await expect(page.getByText('This line is of 2026')).toHaveCount(0);
  await page.locator('#m0-outDay').fill('2026-05-20');
  await expect(page.getByText('This line is of 2026: once you leave it, it stands there.')).toBeVisible();
  await page.locator('summary', { hasText: 'Low bench, Jun 8, there now' }).focus();
  await expect(page.locator('summary', { hasText: 'High bench' })).toHaveCount(0);
  await button(page, '2026').click();
  await expect(page.locator('summary', { hasText: 'High bench, May 12, 2026 to May 20, 2026' })).toBeVisible();
});

test('a day that puts a line elsewhere in its list leaves the key in its field', async ({ page }) => {
  const days = ['2027-05-04', '2027-05-20', '2027-05-25', '2027-05-28', '2027-06-10'];
  await open(
    page,
    'record',
    days.map((day, index) => aRain({ id: `r${index + 1}`, placeId, day })),
  );
  await page.locator('summary', { hasText: 'Rain' }).click();
  await page.locator('summary', { hasText: 'Jun 10' }).click();
  const typedDay = page.locator('#r5-day');
  await typedDay.focus();
  await page.keyboard.type('05');
  await expect(typedDay).toBeFocused();
  await page.keyboard.type('15');
  await expect(typedDay).toHaveValue('2027-05-15');
  await expect.poll(async () => (await rain(page)).map((row) => 'day' in row && row.day)).toEqual([...days.slice(0, -1), '2027-05-15']);
});

test('each line that was taken away can come back, not the last alone', async ({ page }) => {
  await open(page, 'record');
  for (const line of ['Low bench, Jun 8, there now', 'High bench, May 20 to Jun 8']) {
    await page.locator('summary', { hasText: line }).click();
    await button(page, 'Take this line away').click();
  }
  await expect.poll(() => moves(page)).toEqual([]);
  const status = page.locator('.record-status');
  await expect(status).toContainText('Low bench, Jun 8, there now was taken away.');
  await button(page, 'Take it back').first().click();
  await expect.poll(async () => (await moves(page)).map(({ id }) => id)).toEqual(['m0']);
  await button(page, 'Add a move').click();
  await expect(status).toContainText('A move was added.');
  await button(page, 'Take it back').last().click();
  await expect.poll(async () => (await moves(page)).map(({ id }) => id)).toEqual(expect.arrayContaining(['m0', 'm1']));
});

test('a pasture that was taken away can be put back after another was added', async ({ page }) => {
  await open(page, 'ground');
  await page.locator('summary', { hasText: 'High bench' }).click();
  await button(page, 'Take High bench away').click();
  await button(page, 'Add a pasture').click();
  await button(page, 'Put it back').click();
  await expect(page.locator('summary', { hasText: 'High bench' })).toBeVisible();
  await expect(page.locator('summary', { hasText: 'Pasture 2' })).toBeVisible();
});

test('at New Year this year is open with what comes next, and a line that is added stands in the year that is shown', async ({ page }) => {
  const plan = aPlan({ placeId, inDay: '2028-02-03', outDay: '2028-02-01' });
  await open(page, 'record', [...record, plan]);
  await expect(page.getByRole('heading', { name: 'Next' })).toBeVisible();
  await expect(button(page, '2027')).toHaveAttribute('aria-pressed', 'true');
  await page.clock.setFixedTime(new Date('2028-01-05T07:00:00'));
  await page.reload();
  await placed(page);
  await expect(button(page, '2028')).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByRole('heading', { name: 'Next' })).toBeVisible();
  // They are on Low bench since last June: five days of this year.
  await expect(page.locator('summary', { hasText: 'Low bench, Jun 8, 2027, there now' })).toContainText('4 days of 2028 so far');
  await expect(page.getByText('High bench, Feb 3, cannot be: out before in')).toBeVisible();
  await button(page, '2027').click();
  await button(page, 'Add a move').click();
  await expect(page.locator('.record-status')).toContainText('A move was added on Jun 17, 2027.');
  await expect(page.locator('summary', { hasText: 'Low bench, Jun 17, 2027 to Jun 17, 2027' })).toBeVisible();
});

test('the same field of a line in two windows is told in words, by its name', async ({ page }) => {
  const clash = (path: string, other: string) => ({ path, other, otherBy: 'Kitchen window', otherAt: '2027-06-20T20:00:00.000Z' });
  const low = aMove({ placeId, inDay: '2027-06-08', paddockName: 'Low bench', word: 'left the fescue' });
  await open(page, 'record', [{ ...low, clash: [clash('word', '"ate the fescue"'), clash('paddockId', '"high"'), clash('inDay', '"2027-06-07"')] }]);
  await page.locator('summary', { hasText: 'Low bench, Jun 8' }).click();
  const asked = page.locator('.place-bar', { hasText: 'was changed in two windows, or on two devices.' });
  await expect(asked).toContainText([
    'A word was changed in two windows, or on two devices. It says: left the fescue. Kitchen window has: ate the fescue.',
    'Paddock was changed in two windows, or on two devices. It says: Low bench. Kitchen window has: High bench.',
    'In was changed in two windows, or on two devices. It says: Jun 8, 2027. Kitchen window has: Jun 7, 2027.',
  ]);
  await asked.first().getByRole('button', { name: 'Take the other' }).click();
  await expect(page.locator('#m1-word')).toHaveValue('ate the fescue');
  await expect(asked).toHaveCount(2);
});

test('in metric the sheet of the year has metric heads over metric numbers', async ({ page }) => {
  await open(page, 'record');
  await page.evaluate((key) => localStorage.setItem(key, 'si'), unitsKey);
  await page.reload();
  await placed(page);
  await expect(page.getByRole('heading', { name: 'Moves of 2027' })).toBeVisible();
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const paper = page.locator('.record-paper');
  // 1,250 lb are 566.99 kg, 30 lb a day 13.6; 30 lb on 85 ac, 45 of them for 12 days, less 900 lb of hay: 180 lb an acre, 202 kg a hectare.
  await expect(paper).toContainText('Weight of one, kg');
  await expect(paper.locator('tbody').first()).toContainText('567');
  await expect(paper).toContainText(/that eat 1\d\.\d\skg a day/);
  await expect(paper).not.toContainText(/Acres|Inches|\blb\b|Pounds an/);
  await expect(paper.locator('tr', { hasText: 'Low bench' }).last()).toContainText('202');
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
    // Long unsaved, it is told so on the screen, and nobody else on paper.
    await page.evaluate((id) => localStorage.setItem(`holdwater-backup:${id}`, '{"at":"2027-05-01T08:00:00.000Z","rev":-20,"isFile":true}'), placeId);
    await page.reload();
    const due = page.getByText('was last saved as a file.');
    await expect(due).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Moves of 2027' })).toBeVisible();
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.record-paper')).toBeVisible();
    await expect(due).toBeHidden();
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
  await page.locator('summary', { hasText: 'Save or bring in a table' }).click();
  const [saved] = await Promise.all([page.waitForEvent('download'), button(page, 'Save moves.csv').click()]);
  const text = readFileSync(await saved.path(), 'utf8');
  expect(text).toContain(`,'=1+1,`);
  const give = (table: string) =>
    page.getByLabel('Bring in a table of moves or of rain').setInputFiles({ name: 'moves.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });
  await give(text);
  await expect(button(page, 'Nothing new to bring in')).toBeDisabled();
  await give('paddock,in,out,kind,head\nLow bench,2027-05-25,2027-06-01,cow,40\n');
  await expect(
    page.locator('.preview').getByText('counted in both: herd 1 on High bench, May 20 to Jun 8, and on Low bench, May 25 to Jun 1.'),
  ).toBeVisible();
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

test('in metric the table of moves goes out in metric, and changes nothing when it comes back', async ({ page }) => {
  await page.goto('/about/');
  await page.evaluate((key) => localStorage.setItem(key, 'si'), unitsKey);
  await open(page, 'record');
  await page.locator('summary', { hasText: 'Save or bring in a table' }).click();
  const [saved] = await Promise.all([page.waitForEvent('download'), button(page, 'Save moves.csv').click()]);
  const text = readFileSync(await saved.path(), 'utf8');
  // 1,250 lb are 566.9905 kg.
  expect(text).toMatch(/^paddock,hectares,.*weight_kg,height_in_mm,height_out_mm,hay_kg,word,kg_day\n/);
  expect(text).toContain(',45,566.9905,');
  await page.getByLabel('Bring in a table of moves or of rain').setInputFiles({ name: 'moves.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await expect(button(page, 'Nothing new to bring in')).toBeDisabled();
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

test('hay that was fed is taken off the stack in a form, and what is told of it fits the phone', async ({ page }) => {
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  await keepPlace(page, { ...twoBench, hay: { stacks: [{ id: 'a', baleCount: 60, baleLb: 1000, countedDay: '2027-03-01' }] } });
  await keepRows(page, [aMove({ placeId, inDay: '2027-03-01' }), aHay({ placeId, day: '2027-03-05', baleCount: 12 })]);
  await openForm(page, 'feed-or-sell');
  await openGroups(page);
  await expect(field(page, 'feed-or-sell-hayOnHandLb')).toHaveValue('48000');
  await expect(page.getByText('bales: 60 counted Mar 1, 2027, 12 fed since')).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0);
});

test('over the medians of the place its own rain is asked for, and no example stands there', async ({ page }) => {
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  await keepPlace(page, { ...twoBench, stationMonthsIn: [2, 2, 3, 3, 5, 4, 3, 2, 3, 3, 3, 2] });
  await openForm(page, 'rain-record');
  const rainIn = field(page, 'rain-record-ownRainIn');
  await expect(rainIn).toHaveValue('');
  await expect(page.locator('.field', { has: rainIn })).not.toContainText('example');
  await expect(page.getByText('Waits for one answer', { exact: true })).toBeVisible();
  await rainIn.fill('12');
  await expect(page.locator('.answer')).toContainText('%');
});
