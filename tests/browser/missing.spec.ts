import { expect, test } from '@playwright/test';
import { expectSaid, kindNamed, kinds } from './missing.ts';

// A calculator and a guide: example.spec.ts. All kinds of pages: tests/release/missingScripts.spec.ts.
test('search: whichever script is missing, the page says so and hides nothing', async ({ browser }) => {
  test.slow();
  await expectSaid(browser, kindNamed('search'));
});

test.describe('with scripts off', () => {
  test.use({ javaScriptEnabled: false });
  const alive = ['guide with a form', 'calculator', 'calculator that runs long', 'place', 'search', 'local values', 'sources', 'make it yours'];
  for (const { name, address } of kinds)
    test(`${name} ${alive.includes(name) ? 'says what does not work, and how to do without' : 'needs none'}`, async ({ page }) => {
      await page.goto(address);
      for (const fold of await page.locator('details.in-guide > summary').all()) await fold.click();
      const said = page.locator('.scripts-off');
      await expect(said).toHaveCount(alive.includes(name) ? await page.locator('.not-come').count() : 0);
      for (const each of await said.all()) {
        await expect(each).toBeVisible();
        await expect(each).toContainText('needs scripts, and this browser runs none here');
      }
      if (alive.includes(name)) expect(await said.count()).toBeGreaterThan(0);
      // “One moment” would be waited for in vain, and nothing that was to come says that it has not.
      for (const each of await page.locator('.one-moment, .not-come').all()) await expect(each).toBeHidden();
    });

  test('a calculator shows its example marked as one, and leads to its steps', async ({ page }) => {
    await page.goto(kindNamed('calculator').address);
    await expect(page.locator('.stay .big-figure').first()).toBeVisible();
    await expect
      .poll(
        () =>
          page
            .locator('.stay')
            .first()
            .evaluate((stay) => getComputedStyle(stay, '::before').visibility),
        { timeout: 4000 },
      )
      .toBe('visible');
    // No button but what opens a word without a script.
    expect(await page.locator('.calculator button:not([popovertarget])').count()).toBeGreaterThan(5);
    await expect(page.locator('.calculator button:not([popovertarget]):visible')).toHaveCount(0);
    await page.locator('.scripts-off a').first().click();
    await expect(page).toHaveURL(/\/calculators\/storm-runoff\/working\/$/);
    await expect(page.locator('.step:not([hidden])').first()).toBeVisible();
    await expect(page.locator('p:has-text("Tables behind the steps:") + ul a').first()).toHaveAttribute('href', /^\/tables\/./);
  });
});
