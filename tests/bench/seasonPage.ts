/**
 * What two managements of the season take in a browser: seconds until both are told, of a link that is opened and of two changes on a page that stands
 * there; what a key takes the page while they run, on a processor slowed four times; and the most memory of the process that holds page and worker. Of a key it tells the page's own script, and the time until the page hears again: into
 * that falls the drawing of what changed, unless an answer is being drawn just then, as of short runs. Reads the built site and /proc:
 * `npm run bench:season-page`. The form makes up sixty years at most; the thousand are put into what the page asks of its worker. It fails by the memory
 * alone: times hang on what else runs.
 */
import { readFileSync } from 'node:fs';
import { type Browser, chromium } from '@playwright/test';
import config from '../../playwright.config.ts';
import { serve } from '../browser/staticServer.ts';
import { dist } from '../site/builtSite.ts';

const slowedTimes = 4;
const mostRiseMB = 200;
// No side is the form's example: that is known from the build, and no worker is asked for it.
const cases = [
  { name: '30 years, 5 paddocks beside 12', query: '?paddocks=5&that.paddocks=12&that.stay=4&v=1', values: {} },
  { name: '60 years (the most that the form makes up), 60 paddocks and a meadow', query: '?run=60&paddocks=60&that.paddocks=59&v=1', values: {} },
  { name: '1,000 years, 11 paddocks and a meadow', query: '?paddocks=11&that.paddocks=11&that.stay=4&v=1', values: { runYears: 1000 } },
] as const;

/** Changes what the worker is asked, and notes when it was asked and when it told. */
function watchWorker(values: object): void {
  const seen: { asked: number[]; told: number[] } = { asked: [], told: [] };
  Object.assign(window, { seen });
  const heard = new WeakSet<Worker>();
  const send = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (this: Worker, data: { values?: object }) {
    if (!data.values) return send.call(this, data);
    // Each worker that is asked, however many a page begins.
    if (!heard.has(this)) this.addEventListener('message', (event) => event.data.run && seen.told.push(performance.now()));
    heard.add(this);
    seen.asked.push(performance.now());
    return send.call(this, { ...data, values: { ...data.values, ...values } });
  };
}

async function renderersOf(browser: Browser): Promise<readonly number[]> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
}
/** Megabytes of the largest page's process: what it holds now, or the most that it ever held. */
const residentMB = (pids: readonly number[], field: 'VmRSS' | 'VmHWM'): number =>
  Math.max(...pids.map((pid) => Number(new RegExp(`${field}:\\s+(\\d+)`).exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024));

/** Other years of weather, and another soil under the same. */
const changes = [
  ['throwCount', '7'],
  ['texture', 'clay-loam'],
] as const;

const server = await serve(dist);
const { executablePath, args } = config.use?.launchOptions ?? {};
for (const { name, query, values } of cases) {
  const browser = await chromium.launch({ ...(executablePath === undefined ? {} : { executablePath }), ...(args ? { args } : {}) });
  const context = await browser.newContext({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await page.addInitScript(watchWorker, values);
  await page.goto(`${server.origin}/calculators/season/`);
  await page.locator('[data-calculator][data-ready]').waitFor();
  await page.waitForTimeout(2000);
  const before = residentMB(await renderersOf(browser), 'VmRSS');
  await page.goto(`${server.origin}/calculators/season/${query}`);
  const toldOf = (): Promise<readonly number[]> =>
    page.evaluate(() => {
      const { asked, told } = (window as unknown as { seen: { asked: number[]; told: number[] } }).seen;
      return told.map((at) => at - (asked[0] ?? Number.NaN));
    });
  while ((await toldOf()).length < 2) await page.waitForTimeout(100);
  const seconds = ((await toldOf())[1] ?? Number.NaN) / 1000;
  await page.waitForTimeout(2000);
  const after = residentMB(await renderersOf(browser), 'VmHWM');
  const session = await context.newCDPSession(page);
  const slow = (rate: number) => session.send('Emulation.setCPUThrottlingRate', { rate });
  await slow(slowedTimes);
  const { script, deaf } = await page.evaluate(async () => {
    const field = document.querySelector<HTMLInputElement>('#season-paddocksCount, #season-stayDays');
    if (!field) throw new Error('no field');
    const [scripts, gaps]: [number[], number[]] = [[], []];
    for (let key = 0; key < 20; key += 1) {
      field.value = String(10 + key);
      const began = performance.now();
      field.dispatchEvent(new Event('input', { bubbles: true }));
      // What the key has queued runs before this goes on.
      for (let turn = 0; turn < 3; turn += 1) await Promise.resolve();
      scripts.push(performance.now() - began);
      await new Promise((done) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = done;
        port2.postMessage(0);
      });
      gaps.push(performance.now() - began);
      await new Promise((done) => setTimeout(done, 120));
    }
    return { script: scripts.sort((one, other) => one - other), deaf: gaps.sort((one, other) => one - other) };
  });
  await slow(1);
  await page.waitForTimeout(3000);
  // Questions that are folded away have no fields.
  await page.locator('details.group').evaluateAll((all) => {
    for (const each of all) each.setAttribute('open', '');
  });
  const changed: number[] = [];
  for (const [name, value] of changes)
    changed.push(
      await page.locator(`#season-${name}`).evaluate(async (field, value) => {
        const { asked, told } = (window as unknown as { seen: { asked: number[]; told: number[] } }).seen;
        if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) throw new Error('no field');
        const [before, began] = [told.length, asked.length];
        field.value = value;
        field.dispatchEvent(new Event(field instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }));
        while (told.length < before + 2) await new Promise((done) => setTimeout(done, 5));
        return ((told[before + 1] ?? Number.NaN) - (asked[began] ?? Number.NaN)) / 1000;
      }, value),
    );
  const [ofWeather = Number.NaN, ofSoil = Number.NaN] = changed;
  const [ofScript = Number.NaN, middle = Number.NaN, worst = Number.NaN] = [script[script.length >> 1], deaf[deaf.length >> 1], deaf.at(-1)];
  console.log(
    `${name}: both told ${seconds.toFixed(2)} s after a link is opened, ${ofWeather.toFixed(2)} after other weather is asked for and ${ofSoil.toFixed(2)} after another soil; a key takes ${ofScript.toFixed(1)} ms of script, and the page hears again after ${middle.toFixed(1)} ms, at worst ${worst.toFixed(1)}; ${before.toFixed(0)} MB before, ${after.toFixed(0)} at most`,
  );
  if (!(after - before < mostRiseMB)) process.exitCode = 1;
  await browser.close();
}
await server.stop();
