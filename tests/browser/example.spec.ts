import { type Browser, expect, type Page, test } from '@playwright/test';
import { longUnless } from './walked.ts';

const own = '/calculators/storm-runoff/?rain=6in&cover=own&curve-number=90&v=1';
const guide = '/guides/where-rain-goes/';
const box = '[data-calculator="storm-runoff"]';

/** The block's own script, what it rests on, the calculator and its definition. */
const needed = [/\/Calculator\.astro/, /\/site\./, /\/form\./, /\/storm-runoff\./];

/** What somebody does there: a guide's form is fetched when it is touched. */
async function touch(page: Page, address: string): Promise<void> {
  if (address === guide) await page.locator(box).getByText('Work it out here').click();
}
async function scriptsOf(browser: Browser, address: string): Promise<readonly string[]> {
  const context = await browser.newContext();
  const page = await context.newPage();
  const scripts = new Set<string>();
  page.on('request', (request) => {
    if (request.resourceType() === 'script') scripts.add(new URL(request.url()).pathname);
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  await touch(page, address);
  await page.locator(`${box}[data-ready]`).waitFor();
  await context.close();
  return [...scripts];
}
/** What somebody sees of the form: live, or an example that says so. */
const seen = (page: Page) =>
  page.locator(box).evaluate((form) => {
    const [note, answers] = [form.querySelector('.not-come'), form.querySelector('.stay')];
    const isSeen = (element: Element | null, pseudo?: string) => element !== null && getComputedStyle(element, pseudo).visibility === 'visible';
    return {
      isLive: form.hasAttribute('data-ready'),
      // A guide holds no example that could pass for anybody's numbers: its form is drawn, or it is not there, with the way to the calculator's own page.
      isEmpty: answers === null && form.querySelector('[data-form]')?.childElementCount === 0 && isSeen(form.querySelector('[data-own-page]')),
      isSaid: isSeen(note) && (note?.getBoundingClientRect().height ?? 0) > 20,
      isMarked: isSeen(answers, '::before') && getComputedStyle(answers ?? form, '::before').content.includes('An example'),
      showsAnswers: isSeen(answers),
    };
  });

for (const [name, address] of [
  ['a calculator’s own page, with a link', own],
  ['a guide', guide],
] as const) {
  for (const [way, answer] of [
    ['is refused', 'abort'],
    ['never comes', 'hang'],
  ] as const) {
    test(
      `${name}: a script that ${way} is said within two seconds, and an example is marked`,
      longUnless(answer === 'hang' && address === guide),
      async ({ browser }) => {
        // A page for each script, some of them seconds long.
        test.slow();
        const all = await scriptsOf(browser, address);
        expect(all.length).toBeGreaterThan(5);
        // Each is refused in turn. To wait for each would take minutes and show the same.
        const scripts = answer === 'abort' ? all : all.filter((script) => needed.some((part) => part.test(script)));
        const owned: string[] = [];
        for (const script of scripts) {
          const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
          const page = await context.newPage();
          await page.route(`**${script}`, (route) => (answer === 'abort' ? route.abort() : undefined));
          await page.goto(address, { waitUntil: 'commit' });
          await page.locator(box).waitFor({ state: 'attached' });
          await touch(page, address);
          await expect(async () => {
            const { isLive, isSaid, isMarked, isEmpty } = await seen(page);
            expect(isLive || (isSaid && (address === guide ? isEmpty : isMarked)), script).toBe(true);
          }).toPass({ timeout: 2500, intervals: [100] });
          if (!(await seen(page)).isLive) {
            owned.push(script);
            const shows = address === guide ? 'isEmpty' : 'showsAnswers';
            await expect.poll(async () => (await seen(page))[shows], { message: `${script}: hidden for ever`, timeout: 8000 }).toBe(true);
            expect(address === guide || (await seen(page)).isMarked, script).toBe(true);
          }
          await context.close();
        }
        for (const part of needed)
          expect(
            owned.some((script) => part.test(script)),
            `${part} in ${owned.join(' ')}`,
          ).toBe(true);
      },
    );
  }
}

test('a form that is live says nothing of an example, and a guide’s form nothing before it is touched', async ({ page }) => {
  await page.goto(own);
  await page.locator(`${box}[data-ready]`).waitFor();
  await page.waitForTimeout(2200);
  expect(await seen(page)).toMatchObject({ isLive: true, isSaid: false, isMarked: false, showsAnswers: true });
  await page.goto(guide);
  await page.waitForTimeout(2200);
  expect(await seen(page)).toMatchObject({ isLive: false, isSaid: false, isMarked: false, showsAnswers: false });
  await touch(page, guide);
  await page.locator(`${box}[data-ready]`).waitFor();
  expect(await seen(page)).toMatchObject({ isLive: true, isSaid: false, isMarked: false, showsAnswers: true });
});
