// What people do in the folder that a build makes, from the zip that they were given, in two browsers.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from '@playwright/test';
import { unzipSync } from 'fflate';
import { dist } from '../site/builtSite.ts';
import { type Driven, DrivenChromium } from './driven.ts';
import { DrivenFirefox } from './firefox.ts';
import { folderAddress, opensWhole, pages } from './folderHere.ts';

/** A folder of this test's own, with the zip extracted in it under a name that people give folders. */
function extracted(): { readonly scratch: string; readonly path: string } {
  const zip = unzipSync(readFileSync(join(dist, 'portable.zip')));
  const scratch = mkdtempSync(join(tmpdir(), 'folder-'));
  const to = join(scratch, 'Höfe #1, 100 % dürr');
  for (const [name, content] of Object.entries(zip)) {
    mkdirSync(dirname(join(to, name)), { recursive: true });
    writeFileSync(join(to, name), content);
  }
  return { scratch, path: join(to, 'holdwater') };
}

/** What people do there, in the order in which they come to it. `sharesStore`: does this browser keep one store for all pages of a disk? */
async function coreWalk(driven: Driven, at: string, sharesStore: boolean): Promise<void> {
  await driven.open(`${at}index.html`);
  await driven.shows('footer', 'This is a copy in a folder, of');
  expect(await driven.text('.extract-first')).toBe('');

  // Search, by the form at the head of the page, misspelled too; then a find.
  await driven.fill('#find', 'hay\n');
  await driven.shows('#search-status', 'found for "hay"');
  await driven.fill('#query', 'infiltraton');
  await driven.shows('#search-results', 'Infiltration');
  await driven.fill('#query', 'hay to grass');
  await driven.tap('#search-results h2 a', 'How much hay gets me to grass?');

  // A calculator: typed into, its address follows, a reload keeps it.
  await driven.until('the form is live', () => document.querySelector('[data-calculator="hay-to-grass"][data-ready]') !== null);
  const before = await driven.text('.answer .big');
  await driven.run(() => {
    const day = document.querySelector<HTMLInputElement>('#hay-to-grass-toDay');
    if (!day) throw new Error('no turn-out day');
    const later = new Date(Date.parse(`${day.value || day.defaultValue}T00:00Z`) + 20 * 86_400_000);
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(day, later.toISOString().slice(0, 10));
    day.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await driven.until(
    'the answer is another',
    (was) => !(document.querySelector<HTMLElement>('.answer .big')?.textContent ?? was).replace(/\s+/g, ' ').includes(was),
    before,
  );
  await driven.until('the address follows', () => location.search.includes('to='));
  const [address, after] = [await driven.run(() => location.href), await driven.text('.answer .big')];
  await driven.open(address);
  await driven.until('the form is live again', () => document.querySelector('[data-calculator="hay-to-grass"][data-ready]') !== null);
  expect(await driven.text('.answer .big')).toBe(after);
  await driven.tap('.working > summary');
  await driven.shows('.working', '=');

  // No link to copy, and it is said; a source behind a step leads to a page that is there.
  await driven.shows('.actions', 'no other device could follow a link');
  expect(await driven.text('.actions')).not.toContain('Copy link');
  const source = await driven.run(() => document.querySelector<HTMLAnchorElement>('.working a[href*="sources"]')?.href ?? '');
  expect(source).toMatch(/holdwater\/sources\/[a-z]+\/index\.html#/);

  // The season: no worker, in slices, and the answer follows what is typed.
  await driven.open(`${at}calculators/season/index.html`);
  await driven.until('the season is live', () => document.querySelector('[data-calculator="season"][data-ready]') !== null);
  const seasonBefore = await driven.text('.answer .big');
  await driven.run(() => {
    const count = [...document.querySelectorAll<HTMLInputElement>('[data-form] input[type="text"]')].find((each) => /count/i.test(each.id));
    if (!count) throw new Error('no head count in the season’s form');
    count.value = String(Number(count.value) * 2);
    count.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await driven.until(
    'the season ran again',
    (was) => {
      const now = document.querySelector<HTMLElement>('.answer .big')?.textContent.replace(/\s+/g, ' ').trim() ?? '';
      return now !== '' && now !== was && document.querySelector('.answer.is-waiting') === null;
    },
    seasonBefore,
  );

  // What is chosen on one page is there on the next, by a link.
  await driven.open(`${at}local/index.html`);
  await driven.tap('[data-pick="plains-range"]');
  await driven.tap('header a', 'Guides');
  await driven.until('the guides are open', () => location.pathname.endsWith('/guides/index.html'));
  expect(await driven.run(() => localStorage.getItem('holdwater-country'))).toBe('plains-range');
  expect(await driven.run(() => location.search)).toBe('');
  await driven.until('it knows how this browser keeps', () => document.documentElement.dataset['keeps'] !== undefined);
  expect(await driven.run(() => document.documentElement.dataset['keeps'])).toBe(sharesStore ? 'together' : 'by-page');
  expect((await driven.text('.kept-by-page')) !== '').toBe(!sharesStore);
  await driven.fill('#find', 'hay\n');
  await driven.shows('#search-status', 'found for "hay"');
  expect(await driven.run(() => localStorage.getItem('holdwater-country'))).toBe('plains-range');

  // The place: made, kept over a reload, saved as a file, and opened from it where nothing is kept.
  const place = `${at}place/index.html`;
  await driven.open(place);
  await driven.shows('details.from-disk', 'These pages are open from a folder');
  expect((await driven.text('.place')).includes('Was this folder elsewhere before')).toBe(!sharesStore);
  await driven.fill('#place input[type="text"]', 'Creek place');
  await driven.tap('#place button', 'Start it');
  await driven.tap('.place-views a', 'Ground');
  await driven.tap('#place button', 'Add a pasture');
  await driven.run(() => {
    const label = [...document.querySelectorAll('label')].find(
      (each) => /^Pasture 1: Size/.test((each.textContent ?? '').trim()) || /Size/.test(each.textContent ?? ''),
    );
    document.getElementById(label?.getAttribute('for') ?? '')?.focus();
  });
  await driven.type('60');
  await driven.until('the place is written', () => Object.keys(localStorage).every((key) => !key.startsWith('holdwater-journal:')));
  await new Promise((done) => setTimeout(done, 1000));
  await driven.open(`${place}#/ground`);
  await driven.shows('#place', 'Creek place');
  const saved = await driven.saved(async () => {
    await driven.tap('.place-views a', 'Files');
    await driven.tap('#place button', 'Save Creek place as a file');
  });
  expect(saved.name).toMatch(/^holdwater-creek-place-.*\.json$/);
  expect(JSON.parse(saved.text)).toMatchObject({ file: 'holdwater-place', places: [{ name: 'Creek place', pastures: [{ areaAc: 60 }] }] });
  const file = join(mkdtempSync(join(tmpdir(), 'place-')), saved.name);
  writeFileSync(file, saved.text);
  await driven.open(`${place}?keep-nothing#/files`);
  await driven.shows('#place', 'This window keeps nothing');
  await driven.give('#open-file', file);
  await driven.tap('#place button', 'Bring in one place');
  await driven.tap('.place-views a', 'Ground');
  await driven.shows('.whose-place', 'Creek place');
  rmSync(dirname(file), { recursive: true });

  // The place and a calculator.
  await driven.open(place);
  if (sharesStore) {
    await driven.open(`${at}calculators/days-of-grass/index.html`);
    await driven.until('the form is live', () => document.querySelector('[data-calculator="days-of-grass"][data-ready]') !== null);
    await driven.tap('button', 'Pasture 1');
    await driven.until('the place’s acres are in the form', () => document.querySelector<HTMLInputElement>('#days-of-grass-areaAc')?.value === '60');
  } else {
    await driven.tap('.from-disk > summary');
    await driven.tap('.from-disk-list a', 'Days of grass left');
    await driven.until(
      'the form is open with the place’s figures',
      () => location.pathname.endsWith('days-of-grass/index.html') && location.search.includes('area=60ac'),
    );
    await driven.until('it is live', () => document.querySelector('[data-calculator="days-of-grass"][data-ready]') !== null);
    // Nobody gave the place a height: the example's is told as such.
    expect(await driven.run(() => location.search)).not.toMatch(/height=|holdwater-along/);
    await driven.shows('[data-calculator="days-of-grass"]', 'from the example');
  }

  // A visit, and a result in it; where stores are apart it is said that none can go there.
  await driven.open(`${place}#/visit/new`);
  await driven.tap('#place button', 'Add a calculation');
  expect((await driven.text('.visit')).includes('can bring no result back into a visit')).toBe(!sharesStore);
  await driven.tap('.form-names a', 'Ground cover from a hundred steps');
  await driven.until('the form is live', () => document.querySelector('[data-calculator="cover-count"][data-ready]') !== null);
  expect(await driven.run(() => location.search !== '')).toBe(!sharesStore);
  if (sharesStore) {
    await driven.tap('button', 'Keep in this visit');
    await driven.shows('.coming', 'Ground cover from a hundred steps');
  } else {
    await driven.tap('.take button', 'Keep this result');
    await driven.shows('.keep-place', 'no result can go from here into a visit');
  }
}

/** An office’s walk: its forms, one file beside `index.html`, and the copy is theirs. */
async function officeWalk(driven: Driven, at: string, path: string): Promise<void> {
  await driven.open(`${at}index.html`);
  await driven.tap('footer a', 'Make it yours');
  await driven.until('the forms are there', () => document.querySelector('#make-it-yours[data-ready]') !== null);
  expect(await driven.choose('#make-it-yours select', 'Fescue belt')).toBe(true);
  await driven.tap('#make-it-yours button', 'Begin');
  await driven.shows('#make-it-yours', 'Eight steps');
  await driven.run(() => document.querySelector<HTMLInputElement>('#step-1 input[type="text"]')?.focus());
  await driven.type('Example County office');
  await driven.tap('#make-it-yours button', 'Go on to 2. People to call');
  await driven.tap('#make-it-yours button', 'Go on to 3. Prices');
  await driven.run(() => {
    const label = [...document.querySelectorAll('#step-3 label')].find((each) => (each.textContent ?? '').trim().startsWith('Hay, likely'));
    document.getElementById(label?.getAttribute('for') ?? '')?.focus();
  });
  await driven.selectAll();
  await driven.type('150');
  await driven.tap('#step-3 button', 'Make it today for “Seen”');
  const { name, text } = await driven.saved(() => driven.tap('#make-it-yours button', 'Save the office file'));
  expect(name).toBe('office.css');
  writeFileSync(join(path, 'office.css'), text);
  await driven.open(`${at}index.html`);
  await driven.shows('footer', 'Edition of Example County office');
  await driven.open(`${at}local/index.html`);
  await driven.shows('details[data-local="office"]', '150');
  await driven.open(`${at}calculators/hay-to-grass/index.html`);
  await driven.tap('button', 'Fill in local values, Example County office');
  await driven.shows('[data-local-fill]', 'Filled in from local values, Example County office');
}

test.describe('from a zip that somebody extracted', () => {
  let path = '';
  let scratch: string | undefined;
  test.beforeEach(() => {
    ({ scratch, path } = extracted());
  });
  // Only what was made: where the zip is missing there is nothing to remove.
  test.afterEach(() => {
    if (scratch !== undefined) rmSync(scratch, { recursive: true });
    scratch = undefined;
  });

  test('Chromium: search, a calculator, the season in slices, the place, a visit', async ({ page }) => {
    const driven = await DrivenChromium.on(page);
    await coreWalk(driven, folderAddress(path), true);
    expect(await driven.told()).toEqual([]);
  });
  test('Chromium: an office’s walk', async ({ page }) => {
    const driven = await DrivenChromium.on(page);
    await officeWalk(driven, folderAddress(path), path);
    expect(await driven.told()).toEqual([]);
  });
  test('Firefox: the same, with its own rules for files on a disk', async () => {
    const driven = await DrivenFirefox.start();
    try {
      const at = folderAddress(path);
      // Its rules stand as its makers set them: a page reads no other file, and shares no store.
      await driven.open(`${at}about/index.html`);
      expect(
        await driven.run(() =>
          fetch('../index.html').then(
            () => 'read',
            () => 'refused',
          ),
        ),
      ).toBe('refused');
      await driven.run(() => localStorage.setItem('holdwater-mark', 'about'));
      await driven.open(`${at}index.html`);
      expect(await driven.run(() => localStorage.getItem('holdwater-mark'))).toBeNull();
      driven.troubles.splice(0);
      await coreWalk(driven, at, false);
      expect(await driven.told()).toEqual([]);
    } finally {
      await driven.close();
    }
  });
  test('Firefox: an office’s walk', async () => {
    const driven = await DrivenFirefox.start();
    try {
      await officeWalk(driven, folderAddress(path), path);
      expect(await driven.told()).toEqual([]);
    } finally {
      await driven.close();
    }
  });
  test('Firefox: two pages of each kind open whole', async () => {
    const driven = await DrivenFirefox.start();
    try {
      const taken = new Map<string, number>();
      const some = pages.filter((page) => {
        const kind = page.replace(/^([^/]+\/)[^/]+\//, '$1*/');
        taken.set(kind, (taken.get(kind) ?? 0) + 1);
        return (taken.get(kind) ?? 0) <= 2;
      });
      expect(some.length).toBeGreaterThan(15);
      const wrong: string[] = [];
      for (const page of some) wrong.push(...(await opensWhole(driven, folderAddress(path) + page)));
      expect(wrong).toEqual([]);
    } finally {
      await driven.close();
    }
  });

  test('its starter hands it out to devices in the same network, at another port where that is taken', async ({ page }) => {
    const taken = createServer().listen(0);
    const address = taken.address();
    const asked = typeof address === 'object' && address ? address.port : 0;
    const starter = spawn('sh', [join(path, 'start-on-linux.sh'), String(asked)], { cwd: tmpdir(), stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    starter.stdout.on('data', (piece: Buffer) => {
      said += piece.toString();
    });
    try {
      await expect.poll(() => said, { timeout: 20_000 }).toMatch(/On this device: http:\/\/localhost:\d+\//);
      const [, port] = /localhost:(\d+)/.exec(said) ?? [];
      expect(said).toContain(`Another program has port ${asked}. This folder is at port ${port}.`);
      const at = `http://127.0.0.1:${port}/`;
      await expect
        .poll(
          () =>
            fetch(at).then(
              async (answer) => ((await answer.text()) === '' ? 0 : answer.status),
              () => 0,
            ),
          { timeout: 20_000 },
        )
        .toBe(200);
      const errors: string[] = [];
      page.on('console', (entry) => {
        if (entry.type() === 'error') errors.push(entry.text());
      });
      await page.goto(at);
      await page.getByRole('searchbox').fill('hay');
      await page.keyboard.press('Enter');
      await expect(page.locator('#search-status')).toContainText('found for "hay"');
      await page.getByRole('link', { name: 'How much hay gets me to grass?' }).click();
      await page.locator('[data-calculator="hay-to-grass"][data-ready]').waitFor();
      await expect(page.getByRole('button', { name: 'Copy link' })).toBeEnabled();
      await page.goto(`${at}place/index.html`);
      await expect(page.locator('.from-disk')).toContainText(`at 127.0.0.1:${port} alone`);
      expect(errors).toEqual([]);
    } finally {
      starter.kill();
      taken.close();
    }
  });
});
