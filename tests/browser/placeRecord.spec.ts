// The record of a place: shown and mended, on paper, as tables, in the file of its place, and in forms.
import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { aHeight } from '../place/aRow.ts';
import { field, openForm, openGroups } from './forms.ts';
import { keepPlace, keepRows, keptRows, twoBench } from './placeOfOnes.ts';
import { button } from './placePage.ts';
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
  await expect(page.getByText('Head must be one number, such as 45.')).toBeVisible();
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
