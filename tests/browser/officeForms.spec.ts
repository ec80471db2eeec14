// The forms by which an office makes its file, and its walk from them to a copy of its own.
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { readOfficeFile, writeOffice } from '../../src/office/model/officeFile.ts';
import { anOffice, officeWith } from '../office/anOffice.ts';
import { dist } from '../site/builtSite.ts';
import { openGroups } from './forms.ts';
import { edition, fileOf, openForms, save } from './officeHere.ts';
import { serve } from './staticServer.ts';
import { long } from './walked.ts';

test.describe('the forms of an office', () => {
  test('say at the field what is wrong, keep the work, and save nothing wrong', async ({ page }) => {
    await openForms(page, 'Fescue belt');
    await page.locator('#step-3 > summary').click();
    const likely = page.getByRole('textbox', { name: 'Hay, likely' });
    await expect(likely).toHaveValue('125');
    await page.getByRole('textbox', { name: 'Hay, low' }).fill('130');
    await likely.fill('abc');
    await likely.blur();
    await expect(page.locator('.problem', { hasText: '“abc” is no number; write dollars a ton, such as 165.' })).toBeVisible();
    await page.getByRole('button', { name: 'Save the office file' }).click();
    await expect(page.getByText('Not saved yet: 3 things are to mend. All that you typed is still here.')).toBeVisible();
    await page.getByRole('link', { name: 'Name: This is missing; write a name, such as Example County office.' }).click();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toBeFocused();
    await page.keyboard.type('Example County office');
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
    await page.locator('#step-3 > summary').click();
    await expect(likely).toHaveValue('abc');
    await likely.fill('125');
    await likely.blur();
    await page.getByRole('button', { name: 'Save the office file' }).click();
    await expect(page.getByRole('link', { name: 'Hay, likely: 125 is under low (130). Low, likely, high in that order.' })).toBeVisible();
    await likely.fill('165.50');
    await page.getByRole('textbox', { name: 'Hay, high' }).fill('210');
    await page.getByRole('textbox', { name: 'Seen', exact: true }).first().fill('2026-11');
    expect(readOfficeFile(await save(page))).toMatchObject({
      is: 'read',
      office: { head: { name: 'Example County office', startedFrom: 'fescue-belt' }, values: { hayPrice: { likelyUsdPerTon: 165.5 } } },
    });
  });

  test('save a changed price without where and when the old one was seen, and the rest with it', async ({ page }) => {
    await page.clock.setFixedTime(new Date('2026-11-20T12:00:00'));
    await openForms(page, 'Plains range');
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Example County office');
    await page.locator('#step-3 > summary').click();
    const seen = page.getByRole('textbox', { name: 'Seen', exact: true }).first();
    const [high, was] = [page.getByRole('textbox', { name: 'Hay, high' }), await seen.inputValue()];
    const price = await high.inputValue();
    await high.fill('230');
    await expect(seen).toHaveValue('');
    await expect(page.getByText('This is missing; write a day, a month or a year, such as 2026-09.')).toBeVisible();
    // What was typed by mistake and taken back leaves no gap.
    await high.fill(price);
    await expect(seen).toHaveValue(was);
    await high.fill('230');
    await page.getByRole('button', { name: 'Make it today for “Seen”' }).first().click();
    await expect(seen).toHaveValue('2026-11-20');
    await expect(seen).toBeFocused();
    const read = readOfficeFile(await save(page));
    if (read.is !== 'read') throw new Error('the file that was saved cannot be read');
    expect(read.office.values.hayPrice).toMatchObject({ highUsdPerTon: 230, seen: '2026-11-20' });
    expect(read.office.values.hayPrice).not.toHaveProperty('at');
    expect(read.office.values.yields).toHaveProperty('at');
  });

  test('say of which month their values are before they are saved, and make it today', async ({ page }) => {
    await page.clock.setFixedTime(new Date('2026-11-20T12:00:00'));
    await page.goto('/make-it-yours/');
    await page
      .getByLabel('Open an office file')
      .setInputFiles({ name: 'office.css', mimeType: 'text/css', buffer: Buffer.from(writeOffice(anOffice)) });
    await expect(page.getByText('The foot of every page will say “values of Sep 2026”.')).toBeVisible();
    await page.getByRole('button', { name: 'Make it today for “These values are of”' }).last().click();
    await expect(page.getByText('The foot of every page will say', { exact: false })).toHaveCount(0);
    await expect(page.getByLabel('These values are of', { exact: true })).toHaveValue('2026-11-20');
    expect(readOfficeFile(await save(page))).toMatchObject({ office: { head: { valuesDay: '2026-11-20' } } });
  });

  test('open a file as text, and refuse a wrong one with its sentence', async ({ page }) => {
    await page.goto('/make-it-yours/');
    const file = (text: string) => ({ name: 'office.css', mimeType: 'text/css', buffer: Buffer.from(text) });
    const field = page.getByLabel('Open an office file');
    await field.setInputFiles(file(fileOf(officeWith('values.talkToSomeone.near', ''))));
    await expect(page.getByText(/^Line \d+, Someone near: People close by: This is empty;/)).toBeVisible();
    await field.setInputFiles(file('body { display: none }'));
    await expect(page.getByText('It is no office file: it must begin with', { exact: false })).toBeVisible();
    await field.setInputFiles(file(writeOffice(anOffice)));
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
    const saved = await save(page);
    expect(readOfficeFile(saved)).toEqual({ is: 'read', office: anOffice });
    await page.reload();
    expect(await save(page)).toBe(saved);
  });

  test('take rows and give them back, and earlier work comes back', async ({ page }) => {
    await openForms(page);
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Example County office');
    await page.locator('#step-2 > summary').click();
    await page.getByRole('button', { name: 'Add a line to call' }).click();
    await page.getByRole('textbox', { name: 'Line 1: Who answers' }).fill('County line');
    await page.getByRole('button', { name: 'Take line 1 away' }).click();
    await expect(page.getByRole('textbox', { name: 'Line 1: Who answers' })).toHaveCount(0);
    const putBack = page.getByRole('button', { name: 'Put it back' });
    await expect(putBack).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('button', { name: 'Add a line to call' })).toBeFocused();
    await page.locator('summary', { hasText: 'County line' }).click();
    await expect(page.getByRole('textbox', { name: 'Line 1: Who answers' })).toHaveValue('County line');
    await page.getByRole('button', { name: 'Take line 1 away' }).click();
    await page.locator('.start-again > summary').click();
    await page.getByLabel('Start from').selectOption({ label: 'Plains range' });
    await page.getByRole('button', { name: 'Begin' }).click();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('');
    await putBack.click();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
  });

  test('skip a section that a kind of country has filled in, and say where a whole section lacks something', async ({ page }) => {
    await openForms(page, 'Fescue belt');
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Example County office');
    await page.locator('#step-3 > summary').click();
    await page.locator('#office-values-stockPrices-of').fill('county auction');
    await page.locator('#office-values-stockPrices-source').fill('common practice');
    await page.locator('#office-values-stockPrices-seen').fill('2026-11');
    await page.locator('#step-5 > summary').click();
    for (const key of ['of', 'source']) await page.locator(`#office-values-yields-${key}`).fill('');
    await page.getByRole('button', { name: 'Save the office file' }).click();
    await expect(page.getByText('Not saved yet: 1 thing is to mend.', { exact: false })).toBeVisible();
    await page.getByRole('link', { name: 'Calves and cows: No price stands here.' }).click();
    await expect(page.locator('#office-values-stockPrices')).toBeFocused();
    await expect(page.locator('#office-values-stockPrices')).toContainText('No price stands here. Give one, or leave all of it out.');
    await page.locator('#office-values-stockPrices-cowSaleUsd').fill('1900');
    await page.getByRole('button', { name: 'Make it today for “Seen”' }).nth(1).click();
    const read = readOfficeFile(await save(page));
    expect(read).toMatchObject({ is: 'read', office: { values: { stockPrices: { cowSaleUsd: 1900 } } } });
    expect(JSON.stringify(read)).not.toContain('"yields"');
    await expect(page.getByText('Saved among your downloads as office.css.')).toBeVisible();
    await page.locator('#office-values-stockPrices-of').fill('county auction, calves');
    await expect(page.getByText('Changed since office.css was saved.', { exact: false })).toBeVisible();
  });

  test('show a long sentence whole, and keep it one paragraph', async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await openForms(page, 'Fescue belt');
    await page.locator('#step-7 > summary').click();
    await page.locator('summary', { hasText: 'Date 4' }).click();
    const says = page.getByRole('textbox', { name: 'Date 4: What to decide' });
    expect(await says.evaluate((box) => Math.max(box.scrollHeight - box.clientHeight, box.scrollWidth - box.clientWidth))).toBeLessThanOrEqual(1);
    await says.fill('Decide.\nThen act.');
    await expect(says).toHaveValue('Decide. Then act.');
  });

  test('can be used by everybody', long, async ({ page }) => {
    await openForms(page, 'Mountain and irrigated');
    for (let step = 1; step <= 8; step++) {
      if (step > 1) await page.locator(`#step-${step} > summary`).click();
      await expect(page.locator(`#step-${step} .place-fields, #step-${step} .parts`).first()).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).include('main').analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`),
        `step ${step}`,
      ).toEqual([]);
    }
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});

test('the office’s walk: forms, one file beside index.html, and the copy is theirs', async ({ browser }) => {
  const folder = mkdtempSync(join(tmpdir(), 'office-'));
  const site = await serve(dist);
  const context = await browser.newContext();
  const page = await context.newPage();
  let taps = 0;
  const tap = async (what: ReturnType<Page['locator']>): Promise<void> => {
    taps++;
    await what.click();
  };
  await page.goto(`${site.origin}/`);
  await tap(page.locator('footer').getByRole('link', { name: 'Make it yours' }));
  await tap(page.getByLabel('Start from'));
  await page.getByLabel('Start from').selectOption({ label: 'Fescue belt' });
  await tap(page.getByRole('button', { name: 'Begin' }));
  await tap(page.getByRole('textbox', { name: 'Name', exact: true }));
  await page.keyboard.type('Example County office');
  await tap(page.getByRole('button', { name: 'Go on to 2. People to call' }));
  await tap(page.getByRole('button', { name: 'Go on to 3. Prices' }));
  await tap(page.getByRole('textbox', { name: 'Hay, likely' }));
  await page.getByRole('textbox', { name: 'Hay, likely' }).fill('150');
  await tap(page.getByRole('button', { name: 'Make it today for “Seen”' }).first());
  taps++;
  const text = await save(page);
  expect(taps).toBeLessThanOrEqual(10);

  // What somebody does in a file manager: over the one that lies there.
  writeFileSync(join(folder, 'office.css'), text);
  site.replace('/office.css', readFileSync(join(folder, 'office.css'), 'utf8'));
  await page.goto(`${site.origin}/`);
  await expect(edition(page)).toContainText('Edition of Example County office · values of ');
  await page.goto(`${site.origin}/local/`);
  await expect(page.locator('details[data-local="office"]')).toContainText('150');
  await page.goto(`${site.origin}/calculators/hay-to-grass/`);
  await page.getByRole('button', { name: 'Fill in local values, Example County office' }).click();
  await openGroups(page);
  await expect(page.locator('#hay-to-grass-priceUsdPerTon')).toHaveValue('150');
  await page.goto(`${site.origin}/make-it-yours/`);
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Example County office');
  await context.close();
  await site.stop();
});
