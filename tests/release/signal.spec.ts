// What a bad line, a host or a disk does to the copy on a phone, in a real browser. tests/integrations/copyFaults.test.ts does the same to each file alone.
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { copyWhole, footLine, newerCopy, newerWhole, promise, update } from '../browser/copyHere.ts';
import { dist, filesOf } from '../site/builtSite.ts';
import { type BadServer, type Fault, serveBadly } from './badServer.ts';

test.describe.configure({ mode: 'default' });
const isPack = (path: string): boolean => path.endsWith('.pack');
const packs = filesOf(dist, /\.pack$/).length;
const coreLine = /^(?:Guides, calculators and search work|Everything here works) with no signal\./;
const slowly = { timeout: 60_000 };
const edition = (text: string) => newerCopy({ 'about/index.html': (html) => html.replace('About and cautions</h1>', `${text}</h1>`) });

let server: BadServer;
test.beforeEach(async () => {
  server = await serveBadly(dist);
});
test.afterEach(() => server.stop());

/** With the server gone and no signal, these open, and nothing else stands in their place. */
async function expectOpens(page: Page, context: BrowserContext, addresses: readonly string[]): Promise<void> {
  await server.stop();
  await context.setOffline(true);
  for (const address of addresses) {
    await page.goto(server.origin + address);
    await expect(page.locator('h1'), address).toBeVisible();
    await expect(page.locator('h1'), address).not.toContainText(/Nothing at this address|not on your device yet|Sign in/);
  }
}
const ofCore = ['/', '/about/', '/guides/', '/guides/where-rain-goes/', '/calculators/'];

// The true rate, with one pack in fourteen cut half way; asked for is one answer in a hundred.
test('at 30 kB a second and with answers cut, the core is usable in one visit, and then the whole', async ({ page, context }) => {
  server.bytesPerSecond = 30_000;
  let count = 0;
  let cuts = 0;
  server.faultOf = (path) => {
    if (!isPack(path)) return undefined;
    count += 1;
    if (count % 14 !== 7) return undefined;
    cuts += 1;
    return 'cut';
  };
  const from = Date.now();
  const seconds = (): number => Math.round((Date.now() - from) / 1000);
  await page.goto(`${server.origin}/`);
  await expect(footLine(page)).toHaveText(/^\d+ of \d+ guides are on this computer/, slowly);
  await expect(footLine(page)).toHaveText(coreLine, { timeout: 180_000 });
  test.info().annotations.push({ type: 'core', description: `${seconds()} s` });
  await expect(footLine(page)).toHaveText(promise, { timeout: 180_000 });
  test.info().annotations.push({ type: 'whole', description: `${seconds()} s` });
  expect(cuts).toBeGreaterThan(0);
  // One visit: nothing was loaded again.
  expect(server.asked.filter((path) => path === '/')).toHaveLength(1);
  await expectOpens(page, context, [...ofCore, '/sources/', '/checks/']);
  await page.goto(`${server.origin}/calculators/rain-on-ground/?rain=2in`);
  await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
});

test('the core works while the rest is still on its way', async ({ page, context }) => {
  let count = 0;
  server.faultOf = (path) => {
    if (isPack(path)) count += 1;
    return isPack(path) && /\/(?:workings|lists|entries|sources|other)-/.test(path) ? 'gone' : undefined;
  };
  await page.goto(`${server.origin}/`);
  await expect(footLine(page)).toHaveText('Guides, calculators and search work with no signal. The rest comes when the signal is better.', slowly);
  expect(count).toBeGreaterThan(10);
  await expectOpens(page, context, ofCore);
  await page.goto(`${server.origin}/search/?q=hay`);
  await expect(page.locator('#search-results a').first()).toBeVisible();
  await page.goto(`${server.origin}/calculators/rain-on-ground/?rain=2in`);
  await expect(page.locator('[data-calculator][data-ready]')).toBeVisible();
  const lost = await page.goto(`${server.origin}/sources/`);
  expect(lost?.status()).toBe(503);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This page is not on your device yet');
});

for (const fault of ['cut', 'late', 'error', 'away', 'page', 'gone'] as const satisfies readonly Fault[])
  test(`every file once ${fault}: nothing is promised too early, and a few visits bring it all`, async ({ page, context }) => {
    const had = new Set<string>();
    server.faultOf = (path) => {
      if (!isPack(path) || had.has(path)) return undefined;
      had.add(path);
      return fault;
    };
    let line = '';
    for (let visits = 0; visits < 12 && line !== promise; visits += 1) {
      await page.goto(`${server.origin}/`);
      await expect(footLine(page)).toHaveText(/signal is better\.$|^Everything here works with no signal\.$/, slowly);
      line = (await footLine(page).textContent()) ?? '';
      if (had.size < packs) expect(line).not.toContain(promise);
    }
    expect(had.size).toBe(packs);
    await copyWhole(page);
    await expectOpens(page, context, [...ofCore, '/sources/']);
  });

test('the server gone after each tenth of the packs: the next visit goes on from there', async ({ browser }) => {
  for (let tenth = 0; tenth < 10; tenth += 1) {
    const most = Math.round((packs * tenth) / 10);
    const context = await browser.newContext();
    const page = await context.newPage();
    let left = most;
    server.faultOf = (path) => {
      if (isPack(path)) left -= 1;
      return isPack(path) && left < 0 ? 'gone' : undefined;
    };
    server.asked.length = 0;
    await page.goto(`${server.origin}/`);
    await expect(footLine(page), `${tenth} tenths`).toHaveText(/when the signal is better\.$/, slowly);
    const came = server.asked.filter(isPack).slice(0, most);
    server.faultOf = () => undefined;
    server.asked.length = 0;
    await page.goto(`${server.origin}/about/`);
    await copyWhole(page);
    const asked = server.asked.filter(isPack);
    expect(
      asked.filter((path) => came.includes(path)),
      `${tenth} tenths`,
    ).toEqual([]);
    expect(asked).toHaveLength(packs - most);
    await context.close();
  }
});

test('three editions in a row with the second half kept: the first opens until the third is whole', async ({ page, context }) => {
  const heading = page.locator('h1');
  await page.goto(`${server.origin}/about/`);
  await copyWhole(page);
  // Only what changed is fetched; that one does not come.
  const second = edition('Second edition');
  server.deploy(second, (pack) => !filesOf(dist, /\.pack$/).includes(pack));
  await update(page);
  await expect(footLine(page)).toHaveText(`${promise} A newer copy comes when the signal is better.`, slowly);
  await page.goto(`${server.origin}/about/`);
  await expect(heading).toHaveText('About and cautions');
  const third = edition('Third edition');
  server.deploy(third);
  await update(page);
  await newerWhole(page, third);
  await expect(heading).toHaveText('About and cautions');
  await server.stop();
  await context.setOffline(true);
  await page.goto(`${server.origin}/about/`);
  await expect(heading).toHaveText('Third edition');
  await expect(footLine(page)).toHaveText(promise, slowly);
  await expect.poll(() => page.evaluate(async () => (await caches.keys()).filter((name) => name.startsWith('holdwater / ')).length), slowly).toBe(1);
});

test('a full disk is said with what to do, and the copy goes on once there is room', async ({ page, context }) => {
  const session = await context.newCDPSession(page);
  await page.goto(`${server.origin}/about/`);
  await session.send('Storage.overrideQuotaForOrigin', { origin: server.origin, quotaSize: 4_000_000 });
  await page.goto(`${server.origin}/about/`);
  await expect(footLine(page)).toContainText('There is no room for', slowly);
  await expect(page.locator('#copy-here')).toContainText('The disk is full. Delete photos');
  await session.send('Storage.overrideQuotaForOrigin', { origin: server.origin });
  await page.getByRole('button', { name: 'There is room now: go on' }).click();
  await copyWhole(page);
});
