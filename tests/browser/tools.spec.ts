import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { big, compare, openGroups, ready } from './forms.ts';

test.use({ viewport: { width: 390, height: 844 } });

const bucket = '/calculators/stock-water/?supply=flow&flow-from=bucket&v=2';
const watch = (page: Page) => page.getByRole('button', { name: /^(Start the watch|Stop) for Time to fill it/ });
const openBucket = async (page: Page) => {
  await page.clock.install({ time: new Date('2026-07-01T12:00:00') });
  await page.goto(bucket);
  await ready(page, 'stock-water');
};

test('a watch writes what it measured into its field, as if typed', async ({ page }) => {
  await openBucket(page);
  const time = page.getByRole('textbox', { name: 'Time to fill it' });
  await expect(watch(page)).toBeEnabled();
  await page.clock.pauseAt(new Date('2026-07-01T12:01:00'));
  await watch(page).click();
  await page.clock.runFor(12_000);
  await expect(page.getByRole('timer')).toHaveText('0:12');
  await expect(time, 'nothing is written before it stops').toHaveValue('60');
  await page.clock.runFor(400);
  await watch(page).click();
  await expect(time).toHaveValue('12.4');
  await expect(page.getByRole('timer')).toHaveCount(0);
  await page.clock.runFor(1000);
  await expect(page).toHaveURL(/bucket-fill=12\.4s/);
});

test('a watch goes on through a locked screen and a reload', async ({ page }) => {
  await openBucket(page);
  const startMs = await page.evaluate(() => Date.now());
  await watch(page).click();
  // Time passes and no timer fires: a locked screen, a sleeping tab.
  await page.clock.fastForward('03:00');
  await page.reload();
  await ready(page, 'stock-water');
  await expect(page.getByRole('timer')).toHaveText(/^3:0\d$/);
  await page.clock.fastForward('17:05');
  await watch(page).click();
  const measuredS = Number(await page.getByRole('textbox', { name: 'Time to fill it' }).inputValue());
  const passedS = (await page.evaluate(() => Date.now())) / 1000 - startMs / 1000;
  expect(passedS).toBeGreaterThan(1200);
  // The clock of the page goes on between the taps and the readings around them.
  expect(measuredS).toBeLessThanOrEqual(passedS + 0.05);
  expect(measuredS).toBeGreaterThan(passedS - 5);
});

test('a watch does not follow the device’s clock when that is set', async ({ page }) => {
  // Only the device's clock can be moved here; the browser's steady one goes on by itself.
  await page.addInitScript(() => {
    const real = Date.now.bind(Date);
    Reflect.set(window, 'moveClockMs', 0);
    Date.now = () => real() + Number(Reflect.get(window, 'moveClockMs'));
  });
  await page.goto(bucket);
  await ready(page, 'stock-water');
  const move = (ms: number) => page.evaluate((by) => Reflect.set(window, 'moveClockMs', by), ms);
  for (const jumpMs of [3_600_000, -3_600_000]) {
    await move(0);
    const from = Date.now();
    await watch(page).click();
    await page.waitForTimeout(500);
    await move(jumpMs);
    await expect(page.getByRole('timer')).toHaveText(/^0:0[1-9]$/);
    await watch(page).click();
    const measuredS = Number(await page.getByRole('textbox', { name: 'Time to fill it' }).inputValue());
    expect(measuredS).toBeGreaterThanOrEqual(1);
    expect(measuredS).toBeLessThanOrEqual((Date.now() - from) / 1000 + 0.1);
  }
});

test('starting a watch over asks first', async ({ page }) => {
  await openBucket(page);
  await watch(page).click();
  await page.clock.runFor(30_000);
  const over = page.getByRole('button', { name: 'Start over for Time to fill it' });
  await over.click();
  await page.getByRole('button', { name: 'No, keep it' }).click();
  await expect(page.getByRole('timer')).toHaveText('0:30');
  await over.click();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: 'Yes, start over' }).click();
  await expect(over).toBeFocused();
  await page.clock.runFor(5000);
  await expect(page.getByRole('timer')).toHaveText('0:05');
});

const cover = '/calculators/cover-count/';
const kind = (page: Page, label: string) => page.locator('.tally-buttons').first().getByRole('button', { name: label });
const total = (page: Page) => page.locator('.tally-total').first();

test('counts typed over stay open until they are whole, whatever was wrong before', async ({ page }) => {
  await page.goto(cover);
  await ready(page, 'cover-count');
  await page.getByRole('button', { name: 'Start my own count' }).click();
  // It takes the focus with the next drawing.
  await expect(kind(page, 'Plant base')).toBeFocused();
  const plant = page.locator('#cover-count-plantCount');
  await plant.press('ControlOrMeta+a');
  await plant.pressSequentially('42');
  await expect(plant).toBeFocused();
  await expect(plant).toHaveValue('42');
});

test('a cleared count answers by what was tapped: what nobody saw is none', async ({ page }) => {
  await page.goto(cover);
  await ready(page, 'cover-count');
  await page.getByRole('button', { name: /^Clear it/ }).click();
  await expect(page.locator('.waiting')).toContainText('Steps on a plant base');
  await kind(page, 'Bare soil').click();
  await expect(page.locator('.waiting')).not.toContainText('Steps on');
  await expect(page.locator('#cover-count-litterCount')).toHaveValue('0');
  await page.goto('/calculators/share-taken/');
  await ready(page, 'share-taken');
  await page.getByRole('button', { name: /^Clear it/ }).click();
  await page.getByText('Type the counts').click();
  await page.locator('#share-taken-fiftyCount').fill('50');
  await expect(page.locator('.waiting')).not.toContainText('Plants');
  await expect(total(page)).toContainText('50 of 50 plants');
  await openGroups(page);
  await page.locator('#share-taken-headDaysCount').fill('1200');
  await expect(big(page)).toContainText('50');
});

test('steps are tallied, taken back in their order, and outlive reload and Back', async ({ page }) => {
  await page.goto('/calculators/');
  await page.goto(cover);
  await ready(page, 'cover-count');
  // The example is a whole count: nothing is added to it by mistake.
  await expect(total(page)).toHaveText(/100 of 100 steps/);
  await expect(kind(page, 'Litter')).toBeDisabled();
  await page.getByRole('button', { name: 'Start my own count' }).click();
  await expect(kind(page, 'Plant base')).toBeFocused();
  await expect(page.locator('.waiting')).toContainText('Nothing is counted yet');
  for (const label of ['Plant base', 'Bare soil', 'Bare soil', 'Litter']) await kind(page, label).click();
  await page.keyboard.press('Enter');
  await expect(kind(page, 'Litter')).toHaveText('Litter 2');
  await expect(total(page)).toContainText('5 of 100 steps');
  // Five steps are no share yet: the answer says so, and how far off it may be.
  await expect(big(page)).toContainText('Too few steps to say');
  await expect(page.locator('.note, .results-range').filter({ hasText: '60 % of 5 steps' }).first()).toBeVisible();
  const undo = page.getByRole('button', { name: 'Undo the last tap' });
  await undo.click();
  await undo.click();
  await undo.click();
  await expect(kind(page, 'Litter')).toHaveText('Litter 0');
  await expect(kind(page, 'Bare soil')).toHaveText('Bare soil 1');
  await page.waitForTimeout(600);
  await expect(page).toHaveURL(/plant=1&litter=0&rock=0&bare=1/);

  await page.reload();
  await ready(page, 'cover-count');
  await expect(total(page)).toHaveText(/2 of 100 steps/);
  await kind(page, 'Rock').click();
  await page.waitForTimeout(600);
  await page.goto('/calculators/');
  await page.goBack();
  await ready(page, 'cover-count');
  await expect(total(page)).toHaveText(/3 of 100 steps/);
  await undo.click();
  await undo.click();
  await expect(kind(page, 'Bare soil')).toHaveText('Bare soil 0');
  await expect(kind(page, 'Plant base')).toHaveText('Plant base 1');

  await page.getByRole('button', { name: 'Start over for steps' }).click();
  await page.getByRole('button', { name: 'No, keep it' }).click();
  await expect(total(page)).toHaveText(/1 of 100 steps/);
  await page.getByRole('button', { name: 'Start over for steps' }).click();
  await page.getByRole('button', { name: 'Yes, start over' }).click();
  await expect(total(page)).toHaveText(/0 of 100 steps/);
});

test('counts can be typed beside the buttons, and a full count goes on only when told to', async ({ page }) => {
  await page.goto(`${cover}?plant=40&litter=30&rock=0&bare=29&v=1`);
  await ready(page, 'cover-count');
  await kind(page, 'Bare soil').click();
  await expect(total(page)).toHaveText(/100 of 100 steps/);
  await expect(kind(page, 'Bare soil')).toBeEnabled();
  await page.getByText('Type the counts').click();
  const bare = page.getByRole('textbox', { name: 'Steps on bare soil' });
  await bare.fill('thirty');
  await bare.blur();
  await expect(page.locator('#cover-count-bareCount-problem')).toContainText('must be one number');
  await bare.fill('31');
  await expect(total(page)).toHaveText(/101 steps/);
  await expect(page.getByRole('button', { name: 'Undo the last tap' }), 'typed over: there is no last tap').toBeDisabled();
  await page.getByRole('button', { name: 'Go on with this one' }).click();
  await kind(page, 'Rock').click();
  await expect(total(page)).toHaveText(/102 steps/);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('the buttons fit a glove, two beside each other over the whole width', async ({ page }) => {
  await page.goto(cover);
  await ready(page, 'cover-count');
  const boxes = await page
    .locator('.tally-buttons button')
    .evaluateAll((buttons) => buttons.map((button) => button.getBoundingClientRect().toJSON()));
  expect(boxes).toHaveLength(4);
  for (const { height, width } of boxes) {
    expect(height).toBeGreaterThanOrEqual(64);
    expect(width).toBeGreaterThan(150);
  }
  expect(boxes[0]?.y).toBe(boxes[1]?.y);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  // The other side has a tally of its own, and a copied count is a whole one.
  await compare(page);
  await expect(page.locator('.is-that').getByRole('button', { name: 'Start my own count' })).toBeVisible();
});
