// Whoever goes by keys or by ear goes on from where they were, whatever a tap takes away.
import { expect, type Locator, type Page, test } from '@playwright/test';
import { changeLine, keepsFocus, openForm } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { button, give, open, savedFile } from './placePage.ts';
import { begun } from './visitsOfOnes.ts';

test.use({ viewport: { width: 390, height: 844 } });

/** Pressed by a key it leaves the focus there, and there it stays. */
async function leads(what: Locator, to: Locator, key = 'Enter'): Promise<void> {
  await what.press(key);
  await expect(to).toBeFocused();
  await what.page().evaluate(() => new Promise((done) => setTimeout(done, 60)));
  await expect(to).toBeFocused();
}
async function openKept(page: Page, view: string): Promise<void> {
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await open(page, view);
  await keepsFocus(page);
}
const summary = (page: Page, words: string): Locator => page.locator('summary', { hasText: words });

test('a tap at the gate leaves the focus there, and the page where it is', async ({ page }) => {
  await openKept(page, 'gate');
  const [rain, moved, height] = [button(page, 'Rain'), button(page, 'They moved'), button(page, 'Height')];
  await rain.press('Enter');
  await leads(button(page, '0.5'), rain);
  await rain.press('Enter');
  const own = page.locator('#gate-rain');
  await leads(button(page, 'other'), own);
  await own.fill('0.7');
  await leads(own, rain);
  await moved.press('Enter');
  await leads(button(page, /^Low bench/), moved);
  await height.press('Enter');
  await leads(button(page, 'High bench'), button(page, 'Shorter'));
  await button(page, 'Taller').press('Enter');
  await leads(button(page, 'Keep it'), height);
  await leads(button(page, 'Take it back'), moved);
  await button(page, 'A day back').press('Enter');
  await leads(button(page, 'A day on'), button(page, 'A day back'));
  expect(await page.evaluate(() => scrollY)).toBe(0);
});

test('a line of the record that is taken away leaves the focus on the next', async ({ page }) => {
  await openKept(page, 'record');
  await summary(page, 'Rain').press('Enter');
  for (const _ of [1, 2]) await button(page, 'Add a reading').press('Enter');
  const readings = page.locator('details details > summary');
  await readings.first().press('Enter');
  await leads(button(page, 'Take this line away'), readings.first());
  await readings.first().press('Enter');
  await leads(button(page, 'Take this line away'), button(page, 'Add a reading'));
  const back = button(page, 'Take it back');
  await leads(back.first(), back);
  await leads(back, page.locator('.gate-choices button').first());
});

test('a thing of the place that is taken away leaves the focus on the next, and another place on its name', async ({ page }) => {
  await openKept(page, 'ground');
  await summary(page, 'Low bench').press('Enter');
  await leads(button(page, 'Take Low bench away'), summary(page, 'High bench'));
  await leads(button(page, 'Put it back'), button(page, 'Add a pasture'));
  const title = page.locator('.place h2');
  await open(page, 'files');
  const { text } = await savedFile(page, /^Save Two Bench place as a file/);
  await give(page, text);
  await leads(button(page, 'Leave it'), page.getByRole('heading', { name: 'Where it lies' }));
  await give(page, text);
  await page.getByLabel('Bring it in').check();
  await leads(button(page, 'Bring in one place'), title);
  await leads(button(page, 'Open the demo place'), title);
  await leads(button(page, 'Throw it away'), title);
});

test('a question whether it shall go has the focus itself, so that a key held down answers nothing', async ({ page }) => {
  await begun(page);
  await keepsFocus(page);
  const ask = button(page, 'Take this visit away');
  await leads(ask, page.locator('.sure'));
  await leads(button(page, 'Keep it'), ask);
  await page.goto(page.url().replace('#/visit/', '#/note/'));
  const first = page.locator('.note-block').first();
  const down = first.getByRole('button', { name: 'Down' });
  const title = await first.getByRole('heading').textContent();
  const block = page.locator('.note-block', { has: page.getByRole('heading', { name: title ?? '', exact: true }) });
  await leads(down, block.getByRole('button', { name: 'Down' }));
  // At the end of the way it stays there: on “Down” the next press would undo it.
  await leads(block.getByRole('button', { name: 'Up' }), block.getByRole('button', { name: 'Up' }));
});

test('a row that is taken out of a form, a second side and a question that moves leave the focus in the form', async ({ page }) => {
  await openForm(page, 'herd-intake');
  await keepsFocus(page);
  await changeLine(page, 'Kind of stock 2');
  await leads(button(page, 'Take out Kind of stock 2'), button(page, 'Change Kind of stock 2'));
  await changeLine(page, 'Kind of stock 4');
  const add = button(page, 'Add another kind of stock');
  await leads(button(page, 'Take out Kind of stock 4'), add);
  await expect(page.locator('fieldset.rows > [role=status]')).toHaveText('Kind of stock 4 was taken out. Left: 3.');
  await leads(add, page.getByLabel('Kind of stock 4: Kind of stock', { exact: true }));
  await expect(page.locator('fieldset.rows > [role=status]')).toHaveText('');
  const compare = button(page, 'Set another management beside it');
  await compare.press('Enter');
  await leads(button(page, 'Stop comparing'), compare);
  await openForm(page, 'rain-demonstration');
  await keepsFocus(page);
  await summary(page, 'The jars').press('Enter');
  for (const each of ['not-yet', 'read']) {
    const answer = page.locator(`#rain-demonstration-jars-${each}`);
    await leads(answer, answer, 'Space');
  }
});

test('a field stays under the hand while the answer above it goes and comes', async ({ page }) => {
  await openForm(page, 'feed-hazards');
  const nitrate = page.locator('#feed-hazards-nitratePpmCount');
  const topPx = (): Promise<number> => nitrate.evaluate((field) => field.getBoundingClientRect().top);
  await nitrate.focus();
  await nitrate.evaluate((field) => field.scrollIntoView({ block: 'center', behavior: 'instant' }));
  await expect.poll(async () => Math.abs((await topPx()) - (await topPx()))).toBeLessThan(1);
  const top = await topPx();
  for (const typed of ['-', '2000']) {
    await nitrate.fill(typed);
    await page.waitForTimeout(400);
    expect(Math.abs((await topPx()) - top), typed).toBeLessThan(2);
  }
});
