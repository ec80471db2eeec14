import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { root } from '../support/files.ts';
import { big, openForm, range, result, toMetric } from './forms.ts';

const seattle = join(root, 'node_modules/vega-datasets/data/seattle-weather.csv');
const field = (page: Page) => page.getByLabel('Rain record', { exact: true });
const understood = (page: Page) => page.getByLabel('Rain record: what was understood');
const problem = (page: Page) => page.locator('#rain-record-rainRecord-problem');
const bar = (page: Page) => page.locator('.bar');

const open = (page: Page, query = ''): Promise<void> => openForm(page, 'rain-record', query);
/** Lets a file fall on the field, as a browser hands it over. */
async function drop(page: Page, text: string, name: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([content, called]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content ?? ''], called ?? '', { type: 'text/csv' }));
      return transfer;
    },
    [text, name],
  );
  await page.locator('.field.record').dispatchEvent('drop', { dataTransfer: data });
}

test('a pasted notebook is asked about, shown, confirmed, and still there after a reload', async ({ page }) => {
  await open(page, '?until=2024-03-31&window=1mo&v=1');
  await expect(bar(page)).toContainText('invented Two Bench place');
  // By hand: rain on three days of March 2024 and two of March 2023, 1.5 in against 1.0 in.
  await field(page).fill('2023-03-01,0.5\n2023-03-20,0.5\n2024-03-02,0.5\n2024-03-12,0.5\n2024-03-31,0.5');
  await expect(big(page)).toContainText('too little was read');
  await understood(page).getByLabel('No rain').check();
  await expect(big(page)).toContainText('1');
  await expect(result(page, 'Rain in these months')).toHaveText('1.50 in');
  await expect(result(page, 'Mean of the years')).toHaveText('1.25 in');
  await expect(understood(page)).toContainText('Mar 31, 2024');
  await expect(bar(page)).toContainText('look over what was understood');
  await understood(page).getByLabel('This is how the record is meant').check();
  await expect(page.locator('.bar', { hasText: 'look over' })).toHaveCount(0);
  await page.waitForTimeout(600);
  expect(page.url()).not.toContain('2023-03-01');
  await page.reload();
  await page.locator('[data-ready]').first().waitFor();
  await expect(field(page)).toHaveValue(/^2023-03-01,0.5/);
  await expect(page.locator('.notices')).toContainText('A link carries no record');
  await expect(result(page, 'Rain in these months')).toHaveText('1.50 in');
  await page.getByRole('button', { name: 'Take this record out' }).click();
  await expect(bar(page)).toContainText('invented Two Bench place');
  await page.reload();
  await page.locator('[data-ready]').first().waitFor();
  await expect(field(page)).toHaveValue('');
});

test('an open data file is dropped on the field and read right', async ({ page }) => {
  await open(page, '?until=2012-12-31&window=12mo&v=1');
  await drop(page, readFileSync(seattle, 'utf8'), 'seattle-weather.csv');
  await expect(problem(page)).toContainText('nothing says what its numbers are in');
  await understood(page).getByLabel('The numbers are in').selectOption('mm');
  await expect(problem(page)).toHaveCount(0);
  await expect(understood(page)).toContainText('1,461');
  await toMetric(page);
  // vega-datasets: 1,226.0 mm in 2012, as another program counts it.
  await expect(result(page, 'Rain in these months')).toHaveText('1,226.0 mm');
  await page.getByLabel('Up to which day').fill('2013-12-31');
  await expect(result(page, 'Rain in these months')).toHaveText('828.0 mm');
  await expect(page.locator('.results-list')).not.toContainText('Standardized precipitation index');
  await expect(bar(page)).toContainText('Under thirty years');
});

test('a file by the button; a spreadsheet and an empty file are told', async ({ page }) => {
  await open(page, '?until=2012-12-31&window=12mo&v=1');
  const chooser = page.locator('#rain-record-rainRecord-file');
  await chooser.setInputFiles({ name: 'rain.xlsx', mimeType: 'application/octet-stream', buffer: Buffer.from('PK\u0003\u0004rest') });
  await expect(problem(page)).toContainText('Save its sheet as CSV');
  await chooser.setInputFiles({ name: 'none.csv', mimeType: 'text/csv', buffer: Buffer.from(' \n') });
  await expect(problem(page)).toContainText('is empty');
  await chooser.setInputFiles(seattle);
  await understood(page).getByLabel('The numbers are in').selectOption('mm');
  await expect(page.locator('.record-long')).toContainText('from “seattle-weather.csv”');
  await expect(problem(page)).toHaveCount(0);
});

test('wrong lines and open dates are told at the field, and mended there', async ({ page }) => {
  await open(page, '?until=2024-08-31&window=1mo&v=1');
  await field(page).fill('I like cows');
  await field(page).blur();
  await expect(problem(page)).toContainText('no line begins with a day');
  await expect(field(page)).toHaveAttribute('aria-invalid', 'true');
  await field(page).fill('3/4/2024,0.5\n5/6/2024,0.7\n7/8/2024,wet\n8/8/2024,1\n8/9/2024,1\n8/10/2024,1');
  await field(page).blur();
  await expect(problem(page)).toContainText('“3/4/2024” can be two days');
  await understood(page).getByLabel('Mar 4, 2024').check();
  await expect(problem(page)).toContainText('line 3: “wet” is no amount of rain');
  await understood(page).getByRole('button', { name: 'Count as not read' }).click();
  await expect(problem(page)).toHaveCount(0);
  await expect(understood(page)).toContainText('Counted as not read');
  const { violations } = await new AxeBuilder({ page }).include('.calculator').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
});

const pagesOf = async (page: Page): Promise<number> =>
  (await page.pdf({ format: 'Letter' })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? Number.NaN;

test('a hundred years of days are read, computed and drawn, and print on no more sheets than a short record', async ({ page }) => {
  const days = Array.from({ length: 36_525 }, (_, day) => {
    const iso = new Date(Date.UTC(1925, 0, 1 + day)).toISOString().slice(0, 10);
    return `${iso},${day % 4 === 0 ? ((day * 7) % 130) / 100 : 0}`;
  });
  await open(page, '?until=2024-12-31&window=12mo&v=1');
  // The sheet’s chunk is fetched a little behind.
  await page.waitForTimeout(1800);
  const ofExample = await pagesOf(page);
  expect(ofExample).toBeGreaterThan(1);
  await drop(page, `day,rain (in)\n${days.join('\n')}`, 'century.csv');
  await expect(understood(page)).toContainText('36,525');
  await expect(range(page)).toHaveText(/^place \d+ from the dry end of 100 years$/);
  await expect(page.locator('.results-range').first()).toContainText('of 100 years');
  await expect(page.locator('.bars .fell').first()).toBeAttached();
  // A long record does not print whole: the sheet is as long as the example’s.
  expect(await pagesOf(page)).toBe(ofExample);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.locator('.paper .is-handout')).toContainText('36,525 days');
});

/** Days with a remark beside them that fill the store of a browser: some 5 MB a site. */
const large = (): string => {
  const day = (index: number) => new Date(Date.UTC(1900, 0, 1 + index)).toISOString().slice(0, 10);
  return `date,rain (in),remarks\n${Array.from({ length: 45_000 }, (_, index) => `${day(index)},${((index * index * 7919) % 97) / 100},${'x'.repeat(120)}`).join('\n')}`;
};
const fileField = (page: Page) => page.locator('#rain-record-rainRecord-file');

test('a record that does not fit the store is told, and the older one does not come back for it', async ({ page }) => {
  await open(page);
  await field(page).fill('2024-03-01,0.5\n2024-03-02,0');
  await expect(page.locator('.field.record')).toContainText('stays in this browser');
  await fileField(page).setInputFiles({ name: 'large.csv', mimeType: 'text/csv', buffer: Buffer.from(large()) });
  // Six million characters on their way into the browser and through the reader.
  await expect(page.locator('.field.record')).toContainText('cannot keep a record of this size, and keeps no older one', { timeout: 30_000 });
  await expect(page.locator('.field.record'), 'nothing that contradicts it').not.toContainText('stays in this browser');
  await expect(understood(page)).toContainText('45,000');
  await page.reload();
  await page.locator('[data-ready]').first().waitFor();
  await expect(field(page)).toHaveValue('');
});

test('a cell of half a million blanks is told at once, and does not slow the next visit', async ({ page }) => {
  await open(page);
  const from = Date.now();
  await fileField(page).setInputFiles({
    name: 'blanks.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`date,rain\n2024-03-01,0.5\n2024-03-02,${' '.repeat(500_000)}x\n`),
  });
  await expect(problem(page)).toContainText('line 3 is too long: 10,000 characters are the most');
  await page.reload();
  await page.locator('[data-ready]').first().waitFor();
  await expect(problem(page)).toContainText('line 3 is too long');
  // Half a minute for each reading when the time grows with the square.
  expect(Date.now() - from).toBeLessThan(10_000);
});

test('what is pasted has the size limit of a file', async ({ page }) => {
  await open(page);
  await field(page).evaluate((target) => {
    const data = new DataTransfer();
    data.setData('text/plain', '2024-03-01,0.5\n'.repeat(700_000));
    target.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
  });
  await expect(problem(page)).toContainText('This text is too large for a rain record: 10 MB is the most.');
});
