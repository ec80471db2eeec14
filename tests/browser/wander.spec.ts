// Whatever is done to a form or a place, in whatever order: nothing is thrown, no nonsense is told, no tap drops the focus, each answer has its picture, all fits
// the glass, and an address opens the same elsewhere. `HOLDWATER_WANDER=7` takes other walks, and longer ones.
import { expect, type Page, test } from '@playwright/test';
import { allPictures } from '../../calculators/kit/pictures.ts';
import { views } from '../../src/place/ui/views.ts';
import { calculators } from '../support/catalog.ts';
import { openForm, standsStill } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { open } from './placePage.ts';
import { long } from './walked.ts';
import { type Ground, wander } from './wandering.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });

const wanted = process.env['HOLDWATER_WANDER'];
const steps = wanted === undefined ? 12 : 30;
const seedOf = (index: number): number => Number(wanted ?? 1) * 100 + index;

const form: Ground = {
  root: 'main form.screen',
  buttons: '.asks button, .answer button',
  undo: '[data-carry="undo"]',
  ready: '[data-calculator][data-ready]',
};
const pictured: Ground = {
  ...form,
  alsoWrong: (root) =>
    root.querySelector('.answer .big-figure') && !root.classList.contains('is-waiting') && !root.querySelector('.pictured figure svg')
      ? ['an answer without its picture']
      : [],
};
const answer = (page: Page): Promise<string | null> => page.locator('.answer .big').first().textContent();

for (const [index, calculator] of calculators.entries()) {
  const { slug } = calculator;
  const isAlwaysPictured = allPictures(calculator).some(({ shownWhen }) => shownWhen === undefined);
  test(`whatever is done to ${slug}, it tells no nonsense, and its address opens the same`, long, async ({ page, context }) => {
    test.setTimeout(240_000);
    await openForm(page, slug);
    const done = await wander(page, isAlwaysPictured ? pictured : form, { seed: seedOf(index), steps });
    const other = await context.newPage();
    await other.goto(page.url());
    await other.locator(form.ready).waitFor();
    await standsStill(other.locator(form.root));
    expect(await answer(other), done).toBe(await answer(page));
  });
}

const place: Ground = { root: '#place', buttons: 'button', undo: 'button:text-is("Undo")', ready: '#place[data-ready]' };
/** All that stands in fields, by the name of each; but for what waits for a button, and is kept nowhere until then. */
async function inFields(page: Page): Promise<readonly string[]> {
  const closed = page.locator('#place details:not([open]) > summary:visible');
  // What is in a fold is drawn once it is open, and may hold folds.
  for (let count = -1; count !== 0; ) {
    await standsStill(page.locator(place.root));
    count = await closed.count();
    for (let index = 0; index < count; index += 1) await closed.first().click();
  }
  return page
    .locator('#place')
    .evaluate((root) =>
      [
        ...root.querySelectorAll<HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>(
          ':is(input:not([type=file]), select, textarea):not(#new-place, #pasted)',
        ),
      ].map(
        (each) =>
          `${each.getAttribute('aria-label') ?? each.labels?.[0]?.textContent ?? each.id}: ${each instanceof HTMLInputElement && each.type === 'checkbox' ? each.checked : each.value}`,
      ),
    );
}

for (const [index, { key, title }] of views.entries())
  test(`whatever is done to “${title}”, it tells no nonsense, and a reload loses nothing`, long, async ({ page }) => {
    test.setTimeout(240_000);
    await open(page);
    await keepPlace(page, twoBench);
    await page.goto(`/place/#/${key}`);
    await page.reload();
    await page.locator(place.ready).waitFor();
    const done = await wander(page, place, { seed: seedOf(index), steps });
    const before = await inFields(page);
    await page.reload();
    await page.locator(place.ready).waitFor();
    expect(await inFields(page), done).toEqual(before);
  });
