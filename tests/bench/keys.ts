/**
 * How long a key takes until answer, range and stamp are laid out, and until the picture follows, on a processor slowed four times; and what a calculator's
 * scripts weigh by the time that it is live. Reads the built site: `npm run bench:keys -- hay-to-grass rain-record`, or all of them.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import config from '../../playwright.config.ts';
import { serve } from '../browser/staticServer.ts';
import { dist, sentBytes } from '../site/builtSite.ts';

const keys = 40;
const slowedTimes = 4;

interface Timed {
  readonly answerMs: number;
  readonly pictureMs: number;
}

/** Types into the first number that is asked, and looks when what follows from it is laid out. */
const typeKeys = (page: Page): Promise<Timed> =>
  page.evaluate(async (count) => {
    const middle = (list: number[]): number => list.sort((one, other) => one - other)[Math.floor(list.length / 2)] ?? Number.NaN;
    const field = [...document.querySelectorAll<HTMLInputElement>('.asks .ask input[type="text"], .asks input[type="text"]')].find(({ value }) =>
      /^\d/.test(value),
    );
    const stay = document.querySelector<HTMLElement>('.stay');
    const box = document.querySelector<HTMLElement>('.picture-box');
    if (!field || !stay || !box) return { answerMs: Number.NaN, pictureMs: Number.NaN };
    const first = field.value;
    const [answers, pictures]: [number[], number[]] = [[], []];
    for (let at = 0; at < count; at += 1) {
      const start = performance.now();
      const drawn = new Promise<number>((done) => {
        const watch = new MutationObserver(() => {
          watch.disconnect();
          box.getBoundingClientRect();
          done(performance.now() - start);
        });
        watch.observe(box, { subtree: true, childList: true, attributes: true, characterData: true });
        setTimeout(() => done(Number.NaN), 900);
      });
      field.value = at % 2 === 0 ? `${first}.${(at % 9) + 1}`.replace(/(\..*)\./, '$1') : first;
      field.dispatchEvent(new Event('input', { bubbles: true }));
      // The form draws in microtasks.
      for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
      stay.getBoundingClientRect();
      answers.push(performance.now() - start);
      const after = await drawn;
      if (!Number.isNaN(after)) pictures.push(after);
      await new Promise((done) => setTimeout(done, 30));
    }
    return { answerMs: middle(answers), pictureMs: middle(pictures) };
  }, keys);

async function open(browser: Browser, base: string, slug: string) {
  const context = await browser.newContext({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const scripts: string[] = [];
  page.on('request', (request) => {
    const { pathname } = new URL(request.url());
    if (pathname.endsWith('.js')) scripts.push(pathname);
  });
  await page.goto(`${base}/calculators/${slug}/`);
  await page.locator('[data-calculator][data-ready]').waitFor();
  const weights = [...new Set(scripts)].map((path) => [path, sentBytes(dist, path)] as const);
  // What comes ahead for print comes first.
  await page.waitForTimeout(2000);
  await (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: slowedTimes });
  return { page, weights, close: () => context.close() };
}

const ms = (value: number): string => value.toFixed(1).padStart(7);
const wanted = process.argv.slice(2);
const slugs =
  wanted.length > 0
    ? wanted
    : readdirSync(join(dist, 'calculators'), { withFileTypes: true }).flatMap((each) => (each.isDirectory() ? [each.name] : []));
const server = await serve(dist);
const { executablePath, args } = config.use?.launchOptions ?? {};
const browser = await chromium.launch({ ...(executablePath === undefined ? {} : { executablePath }), ...(args ? { args } : {}) });
console.log(`${'calculator'.padEnd(20)} scripts B  answer ms  picture ms  two sides: answer ms, picture ms`);
for (const slug of slugs) {
  const { page, weights, close } = await open(browser, server.origin, slug);
  const one = await typeKeys(page);
  const compare = page.getByRole('button', { name: 'Set another management beside it' });
  let two: Timed | undefined;
  if ((await compare.count()) > 0) {
    await compare.click();
    await page.waitForTimeout(500);
    two = await typeKeys(page);
  }
  const bytes = weights.reduce((sum, [, each]) => sum + each, 0);
  console.log(
    `${slug.padEnd(20)} ${String(bytes).padStart(9)} ${ms(one.answerMs)}  ${ms(one.pictureMs)}  ${two ? `${ms(two.answerMs)} ${ms(two.pictureMs)}` : ''}`,
  );
  if (wanted.length > 0) for (const [path, each] of weights) console.log(`   ${String(each).padStart(7)} ${path}`);
  await close();
}
await browser.close();
await server.stop();
