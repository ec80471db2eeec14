// What the pages' policy says of Trusted Types (W3C, Trusted Types, and Content Security Policy Level 3): no text is read as markup or as a script's address.
import { expect, type Page, test } from '@playwright/test';
import { figure, openForm, openGroups, ready } from './forms.ts';

/** Everything that the policy refuses on any page that is opened from now on. */
async function listen(page: Page): Promise<() => Promise<readonly string[]>> {
  const seen: string[] = [];
  await page.exposeFunction('tellRefused', (what: string) => seen.push(what));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ violatedDirective, sourceFile, sample }) =>
      (globalThis as unknown as { tellRefused: (what: string) => void }).tellRefused(`${violatedDirective} ${sourceFile} ${sample}`),
    );
  });
  return async () => {
    await page.waitForTimeout(200);
    return seen;
  };
}
const openAll = (page: Page): Promise<void> =>
  page.locator('details').evaluateAll((all) => {
    for (const each of all) each.setAttribute('open', '');
  });
const printNow = async (page: Page): Promise<void> => {
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.locator('.paper .is-handout')).toHaveCount(1);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
};

const walks: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'a calculator with its working, its groups and its paper': async (page) => {
    await openForm(page, 'storm-runoff', '?rain=6in&v=1');
    await openGroups(page);
    await page.locator('.working > summary').click();
    await expect(page.locator('.working [data-result]').first()).not.toBeEmpty();
    await page.waitForTimeout(1800);
    await printNow(page);
  },
  'the season, which runs in a worker': async (page) => {
    await openForm(page, 'season');
    await expect(figure(page)).toBeVisible();
    // What it opens with was worked out at build.
    expect(page.workers()).toHaveLength(0);
    await page.getByRole('button', { name: 'More: Paddocks' }).click();
    await expect.poll(() => page.workers().length).toBe(1);
  },
  'a guide with its form, and local values': async (page) => {
    await page.goto('/guides/where-rain-goes/');
    await page.getByText('Work it out here').first().click();
    await ready(page, 'storm-runoff');
    await page.goto('/local/');
    await page
      .getByRole('button', { name: /^Mine is/ })
      .first()
      .click();
    await page.goto('/guides/where-rain-goes/');
    await openAll(page);
  },
  'the demo place in all its views': async (page) => {
    await page.goto('/place/');
    await page.getByRole('button', { name: 'Open the demo place' }).click();
    const views = page.getByRole('navigation', { name: 'Your place' }).getByRole('link');
    await expect(views.first()).toBeVisible();
    const addresses = await views.evaluateAll((all) => all.map((each) => each.getAttribute('href') ?? ''));
    expect(addresses.length).toBeGreaterThan(5);
    for (const address of addresses) {
      await page.goto(`/place/${address}`);
      await page.waitForLoadState('networkidle');
      await openAll(page);
    }
  },
  'search, sources and the form of an office': async (page) => {
    await page.goto('/search/?q=hay');
    await expect(page.locator('#search-results a').first()).toBeVisible();
    await page.goto('/sources/');
    await page.locator('#source-words').fill('stubble');
    await page.goto('/make-it-yours/');
    await expect(page.locator('#make-it-yours[data-ready]')).toBeVisible();
    await page.locator('#make-it-yours button').first().click();
  },
};
for (const [name, walk] of Object.entries(walks))
  test(`the policy has nothing to refuse: ${name}`, async ({ page }) => {
    test.slow();
    const refused = await listen(page);
    await walk(page);
    expect(await refused()).toEqual([]);
  });

test('what is planted is refused: markup, code and the address of a script or a worker', async ({ page }) => {
  const refused = await listen(page);
  await page.goto('/about/');
  const tried = await page.evaluate(() => {
    const refusal = (sink: () => unknown): string => {
      try {
        sink();
        return 'taken';
      } catch (error) {
        return error instanceof TypeError ? 'refused' : String(error);
      }
    };
    const box = document.body.appendChild(document.createElement('div'));
    return {
      innerHTML: refusal(() => {
        box.innerHTML = '<img src="/planted.png" alt="">';
      }),
      outerHTML: refusal(() => {
        box.outerHTML = '<p>planted</p>';
      }),
      insertAdjacentHTML: refusal(() => box.insertAdjacentHTML('beforeend', '<b>planted</b>')),
      DOMParser: refusal(() => new DOMParser().parseFromString('<b>planted</b>', 'text/html')),
      script: refusal(() => {
        document.createElement('script').src = '/office.js';
      }),
      worker: refusal(() => new Worker('/worker.js')),
      policy: refusal(() => trustedTypes?.createPolicy('planted', { createScriptURL: (address) => address })),
      again: refusal(() => trustedTypes?.createPolicy('own-script', { createScriptURL: (address) => address })),
      left: box.childElementCount,
    };
  });
  expect(tried).toEqual({
    innerHTML: 'refused',
    outerHTML: 'refused',
    insertAdjacentHTML: 'refused',
    DOMParser: 'refused',
    script: 'refused',
    worker: 'refused',
    policy: 'refused',
    again: 'refused',
    left: 0,
  });
  expect((await refused()).length).toBeGreaterThanOrEqual(8);
});
