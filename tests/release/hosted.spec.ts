// Copies behind the servers that `servers/` has files for: over plain http, as on a laptop in a room, and where a browser keeps a copy; at the root and in a folder.
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { test as base, expect, type Page } from '@playwright/test';
import { strFromU8, unzipSync } from 'fflate';
import { writeOffice } from '../../src/office/model/officeFile.ts';
import { copyWhole } from '../browser/copyHere.ts';
import { big, field } from '../browser/forms.ts';
import { withPasture, written } from '../browser/placePage.ts';
import { anOffice } from '../office/anOffice.ts';
import { attributes, dist, filesOf, textOf } from '../site/builtSite.ts';
import { build } from '../support/build.ts';
import { root } from '../support/files.ts';
import { readPdf } from '../support/printedTexts.ts';
import { serveBy, type WebServer } from './webServers.ts';

/** No browser takes this name for the machine itself, so a page of it is no secure context. */
const plainName = 'holdwater.lan';
const test = base.extend<object, object>({
  launchOptions: [
    async ({ launchOptions }, use) =>
      use({ ...launchOptions, args: [...(launchOptions.args ?? []), `--host-resolver-rules=MAP ${plainName} 127.0.0.1`] }),
    { scope: 'worker' },
  ],
});
test.describe.configure({ mode: 'default' });
test.use({ actionTimeout: 20_000 });

const folder = '/dry/';
const forever = 'public, max-age=31536000, immutable';
let inFolder = '';
test.beforeAll(() => {
  const given = join(root, 'node_modules/.cache/tests/office.css');
  mkdirSync(dirname(given), { recursive: true });
  writeFileSync(given, writeOffice(anOffice));
  inFolder = build('dist-base', { HOLDWATER_BASE: folder, HOLDWATER_OFFICE: given });
});

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | undefined>>;
  readonly body: Buffer;
}
const ask = (server: WebServer, path: string, headers: Readonly<Record<string, string>> = { 'accept-encoding': 'gzip' }): Promise<Answer> =>
  new Promise((resolve, reject) => {
    get({ host: '127.0.0.1', port: server.port, path, headers }, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => pieces.push(piece));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: Object.fromEntries(Object.entries(response.headers).map(([name, value]) => [name, String(value)])),
          body: Buffer.concat(pieces),
        }),
      );
    }).on('error', reject);
  });

/** What goes wrong in a page without a word to the reader: faults of scripts, and what a rule of the page or a header forbade. */
function faultsOf(page: Page): string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  return faults;
}

for (const name of ['nginx', 'caddy'] as const)
  for (const at of ['/', folder]) {
    test.describe(`${name}, at ${at}`, () => {
      let server: WebServer;
      test.beforeAll(async () => {
        server = await serveBy(name, at === '/' ? dist : inFolder, at);
      });
      test.afterAll(() => server?.stop());

      test('sends each kind of file as it should be kept, compressed and with its rules', async () => {
        const fingerprinted = filesOf(server.folder, /^(?:_astro|copy)\//);
        // Kept for a year, they must not change under one name.
        expect(fingerprinted.filter((file) => !/[.-](?:[\w-]{8}|[\da-f]{10})\.\w+$/.test(file))).toEqual([]);
        // What fits into one packet is sent as it is.
        const isSmall = (file: string): boolean => statSync(join(server.folder, file)).size < 1024;
        const oneOf = (ending: string): string => fingerprinted.find((file) => file.endsWith(ending) && !isSmall(file)) ?? ending;
        const kinds = [
          ['', 'text/html', 'no-cache', true],
          ['calculators/storm-runoff/?rain=3in&v=1', 'text/html', 'no-cache', true],
          ['office.css', 'text/css', 'no-cache', undefined],
          ['office.js', 'javascript', 'no-cache', undefined],
          ['worker.js', 'javascript', 'no-cache', true],
          ['search/index.json', 'application/json', 'no-cache', true],
          ['site.webmanifest', 'application/manifest+json', 'no-cache', undefined],
          ['favicon.svg', 'image/svg+xml', 'no-cache', undefined],
          [oneOf('.js'), 'javascript', forever, true],
          [oneOf('.css'), 'text/css', forever, true],
          [oneOf('.woff2'), 'font/woff2', forever, false],
          // For a disk; packed when it was built.
          ['portable.zip', 'application/zip', 'no-cache', false],
          // Of the copy for the phone: packed when it was built.
          [oneOf('.pack'), '', forever, false],
        ] as const;
        for (const [path, type, cache, isPacked] of kinds) {
          const { status, headers, body } = await ask(server, at + path);
          expect(status, path).toBe(200);
          expect(headers['content-type'] ?? '', path).toContain(type);
          expect(headers['cache-control'], path).toBe(cache);
          expect(headers['x-content-type-options'], path).toBe('nosniff');
          expect(headers['referrer-policy'], path).toBe('no-referrer');
          expect(headers['content-security-policy'], path).toBe("frame-ancestors 'self'");
          expect(headers['x-frame-options'], path).toBe('SAMEORIGIN');
          expect(headers['permissions-policy'], path).toContain('geolocation=()');
          const isGzip = headers['content-encoding'] === 'gzip';
          if (isPacked !== undefined) expect(isGzip, path).toBe(isPacked);
          const file = path.replace(/\?.*/, '').replace(/(^|\/)$/, '$1index.html');
          expect((isGzip ? gunzipSync(body) : body).equals(readFileSync(join(server.folder, file))), path).toBe(true);
          // Asked again by one who has it: a line, not the file.
          const again = await ask(server, at + path, { 'accept-encoding': 'gzip', 'if-none-match': headers['etag'] ?? '' });
          expect(again.status, path).toBe(304);
        }
      });

      test('says what is missing, and forgets that', async () => {
        for (const path of ['no/such/page/', '_astro/gone.12345678.js']) {
          const { status, headers, body } = await ask(server, at + path, {});
          expect(status, path).toBe(404);
          expect(body.toString(), path).toContain('Nothing at this address');
          expect(headers['cache-control'] ?? 'no-cache', path).toBe('no-cache');
          expect(headers['x-content-type-options'], path).toBe('nosniff');
        }
        const redirect = await ask(server, `${at}about`);
        expect([301, 308]).toContain(redirect.status);
        expect(redirect.headers['location']).toBe(`${at}about/`);
      });

      test('writes down no word of what stands behind a question mark', async () => {
        for (const path of ['calculators/storm-runoff/', 'search/', 'search', 'no-such-page', '_astro/gone.js', 'office.css'])
          await ask(server, `${at}${path}?rain=7654in&q=sellingtheherd`, { referer: `http://elsewhere.example/?from=sellingtheherd` });
        if (name === 'nginx') {
          await expect.poll(() => server.logged()).toMatch(/ 200 GET \S*\/calculators\/storm-runoff\/ \d+\n/);
          expect(server.logged()).toMatch(/ 404 GET \S*\/no-such-page \d+\n/);
        }
        expect(server.logged()).not.toMatch(/7654|sellingtheherd/);
      });

      test('over plain http: a calculator, search, paper, a place made and kept', async ({ browser }) => {
        const context = await browser.newContext({ baseURL: `http://${plainName}:${server.port}${at}` });
        const page = await context.newPage();
        const faults = faultsOf(page);
        const cameFrom: string[] = [];
        page.on('request', (request) => {
          const from = request.headers()['referer'] ?? '';
          if (from !== '') cameFrom.push(from);
        });
        await page.goto('.');
        expect(await page.evaluate(() => [isSecureContext, 'serviceWorker' in navigator, 'randomUUID' in crypto])).toEqual([false, false, false]);

        await page.goto('calculators/rain-on-ground/?rain=1in&area=1ac&v=2');
        await page.locator('[data-calculator="rain-on-ground"][data-ready]').waitFor();
        // An inch on an acre is 27,154 gallons, told to four figures (the source stands in the calculator's cases).
        await expect(big(page)).toContainText('27,150');
        await field(page, 'rain-on-ground-rainIn').fill('2');
        await expect(big(page)).toContainText('54,310');
        // A tenth of a second behind the answer comes what carries it on.
        await expect(page).toHaveURL(/rain=2in/);
        await page.getByRole('button', { name: 'Copy link' }).click();
        await expect(page.locator('.actions .told')).toContainText('Mark it here: http');
        await page.evaluate(() => {
          window.print = () => document.body.classList.add('was-printed');
        });
        await page.locator('.actions').getByRole('button', { name: 'Print' }).click();
        await page.locator('body.was-printed').waitFor();
        // An office's file names the address that its paper leads to.
        const sheet = await readPdf(new Uint8Array(await page.pdf({ format: 'Letter' })));
        expect(sheet.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ')).toContain(
          at === '/' ? `${plainName}:${server.port}` : 'office.example',
        );

        await page.goto('search/?q=hay');
        await page.locator('#search-results a').first().click();
        await expect(page.locator('[data-calculator][data-ready]').first()).toBeVisible();

        await page.goto('place/');
        await expect(page.locator('#place[data-ready]')).toBeVisible();
        await page.getByLabel('What do you call your place?').fill('Room by the road');
        await page.getByRole('button', { name: 'Start it' }).click();
        await withPasture(page, '85');
        await written(page, '"areaAc":85');
        await page.reload();
        await expect(page.locator('body')).toContainText('Room by the road');
        await page.goto('calculators/days-of-grass/');
        await page.locator('[data-calculator][data-ready]').waitFor();
        await expect(page.locator('body')).toContainText('Room by the road');
        expect(faults).toEqual([]);
        expect(cameFrom).toEqual([]);
        await context.close();
      });

      test('from the machine itself the worker keeps a copy; a new office.css shows without waiting', async ({ browser }) => {
        const named = (office: string): void =>
          writeFileSync(join(server.folder, 'office.css'), writeOffice({ ...anOffice, head: { ...anOffice.head, name: office } }));
        named('First office');
        const plain = await browser.newContext({ baseURL: `http://${plainName}:${server.port}${at}` });
        const room = await plain.newPage();
        await room.goto('about/');
        await expect(room.locator('footer')).toContainText('Edition of First office');
        named('Second office');
        await room.goto('.');
        await expect(room.locator('footer')).toContainText('Edition of Second office');
        await plain.close();

        const context = await browser.newContext({ baseURL: `http://127.0.0.1:${server.port}${at}` });
        const page = await context.newPage();
        const faults = faultsOf(page);
        await page.goto('.');
        await copyWhole(page);
        await context.setOffline(true);
        await page.goto('guides/where-rain-goes/');
        await expect(page.locator('h1')).toBeVisible();
        expect(faults).toEqual([]);
        await context.close();
      });
    });
  }

test('a copy for a folder keeps every link under that folder', () => {
  // With the file of an office, given as it is.
  expect(textOf(inFolder, 'office.css')).toBe(writeOffice(anOffice));
  const inPages = filesOf(inFolder, /\.html$/).flatMap((page) =>
    ['href', 'src', 'action'].flatMap((name) => attributes(textOf(inFolder, page), name)),
  );
  const inStyles = filesOf(inFolder, /\.css$/).flatMap((file) =>
    [...textOf(inFolder, file).matchAll(/url\(["']?([^"')]+)/g)].map((found) => found[1] ?? ''),
  );
  const fromRoot = [...inPages, ...inStyles].filter((link) => /^\/(?!\/)/.test(link));
  expect(fromRoot.length).toBeGreaterThan(100);
  expect(fromRoot.filter((link) => !link.startsWith(folder))).toEqual([]);
  // The same site otherwise.
  expect(filesOf(inFolder, /\.html$/)).toEqual(filesOf(dist, /\.html$/));
});

test('the folder that a copy below another address offers is that of any copy', () => {
  expect(attributes(textOf(inFolder, 'from-a-folder/index.html'), 'href')).toContain(`${folder}portable.zip`);
  /** Pages by their names, without the fingerprints in what they name. */
  const pagesIn = (site: string): ReadonlyMap<string, string> =>
    new Map(
      Object.entries(unzipSync(readFileSync(join(site, 'portable.zip'))))
        .filter(([file]) => file.endsWith('.html'))
        .map(([file, content]) => [file, strFromU8(content).replace(/[.-][\w-]{8}(?=\.(?:js|css|woff2)\b)/g, '')]),
    );
  const [below, atRoot] = [pagesIn(inFolder), pagesIn(dist)];
  expect([...below.keys()]).toEqual([...atRoot.keys()]);
  expect([...below].filter(([file, html]) => html !== atRoot.get(file)).map(([file]) => file)).toEqual([]);
});
