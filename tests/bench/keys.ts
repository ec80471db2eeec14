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

/** Changes the first question that the picture follows, to and fro, be it typed, chosen, tapped or picked, and looks when what follows from it is laid out. */
const typeKeys = (page: Page): Promise<Timed> =>
  page.evaluate(async (count) => {
    const middle = (list: number[]): number => list.sort((one, other) => one - other)[Math.floor(list.length / 2)] ?? Number.NaN;
    const wait = (ms: number) => new Promise((done) => setTimeout(done, ms));
    const none = { answerMs: Number.NaN, pictureMs: Number.NaN };
    const stay = document.querySelector<HTMLElement>('.stay');
    // The box of the built picture gives way to another with the first change.
    const boxNow = () => document.querySelector<HTMLElement>('.picture-box');
    if (!stay || !boxNow()) return none;
    type Move = (at: number) => void;
    const put = (field: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement, value: string) => {
      field.value = value;
      field.dispatchEvent(new Event(field instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }));
    };
    /** How a question is answered in two ways or more; a move is looked up anew, since an answer can redraw its field. */
    const moveOf = (field: Element): Move[] => {
      if (field instanceof HTMLSelectElement) {
        const values = [...field.options].map(({ value }) => value);
        const other = values.find((each) => each !== field.value);
        const first = field.value;
        return other === undefined ? [] : [(at) => put(field, at % 2 === 0 ? other : first)];
      }
      if (field instanceof HTMLTextAreaElement) {
        const first = field.value;
        return [(at) => put(field, at % 2 === 0 ? first.replace(/(\d)(?=\D*$)/, String((at % 8) + 1)) : first)];
      }
      if (!(field instanceof HTMLInputElement)) return [];
      const first = field.value;
      if (field.type === 'radio') {
        const all = [...document.querySelectorAll<HTMLInputElement>(`input[name="${CSS.escape(field.name)}"]`)];
        const start = all.findIndex(({ checked }) => checked);
        return all.length < 2 ? [] : [(at) => all[(start + 1 + at) % all.length]?.click()];
      }
      if (field.type === 'date') {
        const next = new Date(`${first}T00:00Z`);
        next.setUTCDate(next.getUTCDate() + 1);
        return [(at) => put(field, at % 2 === 0 ? next.toISOString().slice(0, 10) : first)];
      }
      if (!/^\d/.test(first)) return [];
      // Another last figure: a whole number stays one, so that there is an answer to lay out.
      return [(at) => put(field, at % 2 === 0 ? first.replace(/\d(?=\D*$)/, (last) => String((Number(last) + (at % 8) + 1) % 10)) : first)];
    };
    // A row of a table opens to its fields.
    if (!document.querySelector('.asks .field')) document.querySelector<HTMLElement>('.asks .row-line button')?.click();
    await wait(100);
    const moves = [...document.querySelectorAll('.asks :is(.ask, .rows) :is(input, select, textarea)')].flatMap(moveOf);
    let chosen: Move | undefined;
    let answering: Move | undefined;
    for (const move of moves) {
      const [picture, answer] = [boxNow()?.innerHTML, stay.textContent];
      move(0);
      await wait(600);
      const [hasDrawn, hasAnswered] = [boxNow()?.innerHTML !== picture, stay.textContent !== answer];
      move(1);
      await wait(600);
      if (hasAnswered) answering ??= move;
      if (hasDrawn && hasAnswered) {
        chosen = move;
        break;
      }
    }
    const move = chosen ?? answering;
    if (!move) return none;
    const [answers, pictures]: [number[], number[]] = [[], []];
    for (let at = 0; at < count; at += 1) {
      const box = boxNow();
      if (!box) return none;
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
      move(at);
      // The form draws in microtasks.
      for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
      stay.getBoundingClientRect();
      answers.push(performance.now() - start);
      const after = await drawn;
      if (!Number.isNaN(after)) pictures.push(after);
      await wait(30);
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
