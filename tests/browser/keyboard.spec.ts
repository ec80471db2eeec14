import { expect, type Locator, type Page, test } from '@playwright/test';
import { field, figure, openForm, ready } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { long } from './walked.ts';

test('the first key press offers a way past the header', async ({ page }) => {
  await page.goto('/');
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'Skip to the text' });
  await expect(skip).toBeFocused();
  await expect(skip).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.locator('#main')).toBeFocused();
});

test('the header is walked in reading order, each stop with a ring', async ({ page }) => {
  await page.goto('/');
  const stops = ['Skip to the text', 'Holdwater', 'Guides', 'Calculators', 'Sources'];
  for (const name of stops) {
    await page.keyboard.press('Tab');
    const stop = page.getByRole('link', { name, exact: true }).first();
    await expect(stop).toBeFocused();
    expect(await stop.evaluate((element) => getComputedStyle(element).outlineStyle)).toBe('solid');
  }
});

test('search from any page without a mouse', async ({ page }) => {
  await page.goto('/about/');
  await page.keyboard.press('/');
  await expect(page.getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('hay');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/search\/\?q=hay$/);
  const first = page.locator('#search-results a').first();
  await expect(first).toBeVisible();
  await expect(page.locator('#search-status')).toContainText('for "hay"');
  await page.locator('#query').focus();
  await page.keyboard.press('Tab');
  await expect(first).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).not.toHaveURL(/\/search\//);
  await expect(page.locator('h1')).toBeVisible();
});

test('a slash that is typed into a field stays a slash', async ({ page }) => {
  await page.goto('/search/');
  await page.locator('#query').fill('');
  await page.locator('#query').press('/');
  await expect(page.locator('#query')).toHaveValue('/');
});

test('a formula is a stop on the way while it is too wide for its line, and only then', async ({ page }) => {
  const stops = () =>
    page.evaluate(() => {
      const seen = [...document.querySelectorAll<HTMLElement>('.working .katex-display')].filter((each) => each.checkVisibility());
      const isWide = (each: HTMLElement): boolean => each.scrollWidth > each.clientWidth;
      return {
        drawn: seen.length > 0,
        // With numbers put in.
        someWide: seen.some((each) => each.matches('.is-numbers > *') && isWide(each)),
        wrong: seen.filter((each) => isWide(each) !== (each.tabIndex === 0)).map((each) => each.textContent?.slice(0, 40)),
      };
    });
  const openSteps = () => page.locator('details.working > summary').click();
  const [narrow, none] = [
    { drawn: true, someWide: true, wrong: [] },
    { drawn: true, someWide: false, wrong: [] },
  ];

  // Its steps have a line of their own that is wider than a phone, whatever is typed.
  await page.setViewportSize({ width: 390, height: 844 });
  await openForm(page, 'early-weaning');
  await openSteps();
  await expect.poll(stops).toEqual(narrow);

  // These fit a narrow window, until the numbers grow.
  await page.setViewportSize({ width: 306, height: 700 });
  await openForm(page, 'rain-on-ground', '?rain=1in&v=2');
  await openSteps();
  await expect.poll(stops).toEqual(none);
  await field(page, 'rain-on-ground-rainIn').fill('29.123456789');
  await field(page, 'rain-on-ground-areaAc').fill('9876.54321');
  await expect.poll(stops).toEqual(narrow);
  await page.setViewportSize({ width: 700, height: 700 });
  await expect.poll(stops).toEqual(none);
  await page.setViewportSize({ width: 306, height: 700 });
  await expect.poll(stops).toEqual(narrow);
});

/** What has the focus, and whether that is seen: in view, with a ring around itself, its label or the box of its unit. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return { name: '', isSeen: true };
    const around = [at, at.closest('label'), at.closest('.control'), at.nextElementSibling].flatMap((each) => each ?? []);
    const { top, bottom } = at.getBoundingClientRect();
    return {
      name: `${at.tagName}#${at.id} ${at.textContent?.trim().slice(0, 40) ?? ''}, ${top} to ${bottom} of ${innerHeight}`,
      isSeen: around.some((each) => getComputedStyle(each).outlineStyle === 'solid') && bottom > 0 && top < innerHeight,
    };
  });
/** More than any page has between two things that belong together. */
const mostStops = 120;
/** Goes on with Tab alone until that has the focus; every stop on the way must be seen. */
async function tabTo(page: Page, to: Locator): Promise<void> {
  for (let stop = 0; stop < mostStops; stop += 1) {
    if ((await to.count()) > 0 && (await to.evaluate((each) => each === document.activeElement))) return;
    await page.keyboard.press('Tab');
    // A page scrolls a little behind the key.
    const unseen = async () => {
      const { name, isSeen } = await focused(page);
      return isSeen ? 'nothing' : name;
    };
    await expect.poll(unseen, { message: 'what has the focus and is not seen', timeout: 2000 }).toBe('nothing');
  }
  throw new Error(`no way to ${to} by Tab`);
}
async function press(page: Page, to: Locator, key = 'Enter'): Promise<void> {
  await tabTo(page, to);
  await page.keyboard.press(key);
}
const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

test('a visit from its first calculation to its note without a mouse', long, async ({ page }) => {
  test.slow();
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await page.goto('/place/#/visit/new');
  await expect(button(page, 'Add a calculation')).toBeVisible();
  await press(page, button(page, 'Low bench'));
  await press(page, button(page, 'Add a calculation'));
  await press(page, page.getByRole('link', { name: 'Ground cover from a hundred steps', exact: true }));
  await ready(page, 'cover-count');
  await press(page, button(page, 'Keep in this visit'));
  await expect(button(page, 'Add a calculation')).toBeVisible();
  await press(page, page.getByRole('link', { name: 'Write the note' }));
  // A view that comes late pushes down what has the focus at the foot.
  await expect(page.getByLabel('Step 1: What')).toBeVisible();
  await tabTo(page, page.getByLabel('Step 1: What'));
  await page.keyboard.type('Rest the high bench');
  await tabTo(page, page.getByLabel('Step 1: By when'));
  await press(page, button(page, 'For the producer'));
  await page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset['printed'] = '';
    };
  });
  await press(page, button(page, 'Print'));
  await expect(page.locator('html[data-printed]')).toHaveCount(1);
  await expect(page.getByLabel('Step 1: What')).toHaveValue('Rest the high bench');
});

test('the season is asked, compared and followed step by step without a mouse', async ({ page }) => {
  test.slow();
  await openForm(page, 'season');
  const before = await figure(page).textContent();
  await press(page, field(page, 'season-texture'), 'ArrowDown');
  await expect(figure(page)).not.toHaveText(before ?? '', { timeout: 15_000 });
  const group = page.locator('details.group > summary').first();
  await press(page, group);
  await expect(page.locator('details.group[open]')).toHaveCount(1);
  const inGroup = page.locator('details.group[open] :is(input, select, button):visible').first();
  await expect(inGroup).toBeVisible();
  await tabTo(page, inGroup);
  await press(page, page.locator('details.working > summary'));
  await expect(page.locator('.working .step:visible').first()).toBeVisible();
});
