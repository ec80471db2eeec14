// Visits and their note: the walk of an adviser with its taps counted, every way out of the note, and the faults of both.
import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Place } from '../../src/place/model/place.ts';
import { field, openForm, ready } from './forms.ts';
import { keepPlace, twoBench } from './placeOfOnes.ts';
import { withoutSignal } from './signal.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, permissions: ['clipboard-read', 'clipboard-write'] });

let taps = 0;
const tap = async (what: Locator): Promise<void> => {
  await what.tap();
  taps += 1;
};
const button = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name, exact: typeof name === 'string' });
const placed = (page: Page): Promise<void> => expect(page.locator('#place[data-ready]')).toBeVisible();

async function begun(page: Page, place: Place = twoBench): Promise<void> {
  await page.goto('/about/');
  await keepPlace(page, place);
  await page.goto('/place/#/visit/new');
  await placed(page);
  await expect(page.getByRole('heading', { name: 'A visit', exact: true })).toBeVisible();
  await expect(button(page, 'Add a calculation')).toBeVisible();
}
async function kept(page: Page, title: string, slug: string, answer: () => Promise<void> = async () => {}): Promise<void> {
  await tap(button(page, 'Add a calculation'));
  await tap(page.getByRole('link', { name: title, exact: true }));
  await ready(page, slug);
  await answer();
  await tap(button(page, 'Keep in this visit'));
  await placed(page);
  await expect(button(page, 'Add a calculation')).toBeVisible();
}

test('three calculations and one printed note take at most twenty taps on a kept place, with no signal', async ({ page, context }) => {
  const { server, asked } = await withoutSignal(page, context, () => keepPlace(page, twoBench));
  await page.goto(`${server.origin}/place/`);
  await placed(page);
  taps = 0;
  await tap(page.getByRole('link', { name: 'New visit' }));
  await tap(button(page, 'Low bench'));
  await tap(button(page, 'High bench'));
  await kept(page, 'Infiltration rate from a ring test', 'ring-test', async () => {
    // The day's own readings are free: nobody counts them.
    await page
      .getByRole('button', { name: /^Change/ })
      .first()
      .tap();
    await field(page, 'ring-test-rings-0-firstMin').fill('4');
  });
  await kept(page, 'Ground cover from a hundred steps', 'cover-count');
  await kept(page, 'Runoff from rainfall depth', 'storm-runoff', async () => tap(button(page, 'Set another management beside it')));
  await expect(page.locator('.coming > li')).toHaveCount(3);
  await tap(page.getByRole('link', { name: 'Write the note' }));
  const what = page.getByLabel('Step 1: What');
  await tap(what);
  await what.fill('Rest the high bench');
  const by = page.getByLabel('Step 1: By when');
  await tap(by);
  await by.fill('2027-07-20');
  await tap(button(page, 'For the producer'));
  await page.evaluate(() => {
    window.print = () => {
      dispatchEvent(new Event('beforeprint'));
      document.documentElement.dataset['printed'] = '';
    };
  });
  await tap(button(page, 'Print'));
  console.log(`taps for three calculations and a printed note: ${taps}`);
  expect(taps).toBeLessThanOrEqual(20);
  const paper = page.locator('.note-paper');
  await expect(paper).toBeVisible();
  for (const each of [
    'Two Bench place',
    'Low bench and High bench',
    'Infiltration rate from a ring test',
    'Rest the high bench (by Jul 20, 2027)',
    '988',
  ])
    await expect(paper).toContainText(each);
  await expect(paper.locator('svg.code')).toHaveCount(3);
  for (const each of asked) expect(each).not.toMatch(/bench/i);
});

const visits = (page: Page, store: 'visits' | 'results' | 'notes' | 'photos' | 'aside'): Promise<readonly Readonly<Record<string, unknown>>[]> =>
  page.evaluate(
    (name) =>
      new Promise<Record<string, unknown>[]>((done) => {
        const asked = indexedDB.open('holdwater');
        asked.onsuccess = () => {
          const all = asked.result.transaction(name).objectStore(name).getAll();
          all.onsuccess = () => {
            asked.result.close();
            done(all.result);
          };
        };
      }),
    store,
  );
const plant = (page: Page, store: string, record: unknown): Promise<void> =>
  page.evaluate(
    ([name, put]) =>
      new Promise<void>((done) => {
        const asked = indexedDB.open('holdwater');
        asked.onsuccess = () => {
          const tx = asked.result.transaction(String(name), 'readwrite');
          tx.objectStore(String(name)).put(put);
          tx.oncomplete = () => {
            asked.result.close();
            done();
          };
        };
      }),
    [store, record] as const,
  );
const written = (page: Page, store: 'visits' | 'results' | 'notes', words: string): Promise<void> =>
  expect.poll(async () => JSON.stringify(await visits(page, store))).toContain(words);
async function saved(page: Page, name: string): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}
/** A visit with people, a test, money, words and a step. */
async function told(page: Page): Promise<void> {
  await begun(page);
  await button(page, 'High bench').tap();
  await kept(page, 'Infiltration rate from a ring test', 'ring-test');
  await kept(page, 'Keep and feed, or sell and buy back', 'feed-or-sell');
  await page.getByLabel('Written by').fill('Ana Reyes');
  await page.getByLabel('Who was there').fill('Kit Moss, Lou Tanner');
  await page.getByLabel('What we saw').fill('Moss said the High bench is bare.\n<script>alert(1)</script>');
  await page.getByLabel('What you said').fill('Lou will rest it.');
  await page.getByLabel('Step 1: What').fill('Rest High bench');
  await page.getByLabel('Step 1: Who').fill('Kit Moss');
  await page.getByLabel('Step 1: By when').fill('2027-07-20');
  await written(page, 'visits', '2027-07-20');
  await page.getByRole('link', { name: 'Write the note' }).tap();
  await expect(button(page, 'For the office')).toBeVisible();
}
const names = /Reyes|Kit|Moss|Lou\b|Tanner|Two Bench|High bench|Low bench/i;
const clipboard = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const [item] = await navigator.clipboard.read();
    return item === undefined ? [] : await Promise.all(['text/html', 'text/plain'].map(async (type) => (await item.getType(type)).text()));
  });
const printedWords = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    dispatchEvent(new Event('beforeprint'));
    await new Promise((done) => setTimeout(done, 200));
    // biome-ignore lint/performance/useDomNodeTextContent: what is hidden on paper is not on it
    return document.body.innerText;
  });

test('nothing goes out before somebody says for whom; then each copy has what it says, and the office’s no name', async ({ page }) => {
  await told(page);
  await expect(button(page, 'Print')).toBeDisabled();
  await expect(button(page, 'Copy')).toBeDisabled();
  await button(page, 'For the producer').tap();
  await button(page, 'Copy').tap();
  await expect(page.getByText('Copied. Paste it')).toBeVisible();
  const [html = '', text = ''] = await clipboard(page);
  expect(html).toMatch(/<h1>.*<h2>.*<a href="http/s);
  expect(html).not.toMatch(/<script|<style|<link|<[^>]*\s(?:style|class|on\w+)=/i);
  expect(html).toContain('&lt;script&gt;');
  for (const each of ['Ana Reyes', 'Lou will rest it', '(Kit Moss, by Jul 20, 2027)', '988', 'These are planning figures'])
    expect(html + text).toContain(each);
  await button(page, 'For the office').tap();
  await expect(page.locator('.note-told')).toContainText('no other names');
  await button(page, 'Copy').tap();
  await expect(page.getByText('Copied. Paste it')).toBeVisible();
  const outputs = [...(await clipboard(page))];
  for (const name of ['Save as plain text', 'Save as Markdown', 'Dates for a calendar']) {
    const file = await saved(page, name);
    outputs.push(file.name, file.text);
  }
  await page.emulateMedia({ media: 'print' });
  const paper = await printedWords(page);
  expect(paper).toContain('Infiltration rate from a ring test');
  outputs.push(paper, await page.title());
  for (const each of outputs) {
    expect(each.replaceAll(/\r?\n[ \t]/g, '')).not.toMatch(names);
    expect(each).not.toContain('rest it.');
  }
  expect(outputs.join()).not.toContain('Keep and feed');
});

test('words of a note are changed in place and put back; the last five stay', async ({ page }) => {
  await told(page);
  const seen = page.locator('#note-seen');
  await seen.fill('Better than last year.');
  await written(page, 'notes', 'Better than last year.');
  await page.reload();
  await expect(seen).toHaveValue('Better than last year.');
  await button(page, /^Put the words back/).tap();
  await expect(seen).toHaveValue(/Moss said/);
  await button(page, 'Leave it out What you said').tap();
  for (const last of ['Before you act on it', 'Someone to talk to', 'These are planning figures', 'Sources', 'Where a copy is'])
    await expect(button(page, `Leave it out ${last}`)).toHaveCount(0);
  await button(page, 'Up Someone to talk to').tap();
  await button(page, 'For the producer').tap();
  const { text } = await saved(page, 'Save as plain text');
  expect(text).not.toContain('WHAT YOU SAID');
  expect(text.indexOf('SOMEONE TO TALK TO')).toBeLessThan(text.indexOf('BEFORE YOU ACT ON IT'));
});

test('where the browser lets no page copy, the note stands there selected', async ({ page }) => {
  await told(page);
  await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }));
  await button(page, 'For the producer').tap();
  await button(page, 'Copy').tap();
  await expect(page.getByText('press copy')).toBeVisible();
  expect(await page.evaluate(() => getSelection()?.toString())).toContain('What we agreed');
});

test('a note’s link opens the same figures where the site was never seen', async ({ page, browser }) => {
  await told(page);
  const result = (await visits(page, 'results')).find(({ slug }) => slug === 'ring-test');
  const address = await page.locator('.note-block a[href*="/calculators/ring-test/"]').first().getAttribute('href');
  const other = await (await browser.newContext()).newPage();
  await other.goto(address ?? '');
  await ready(other, 'ring-test');
  const figures = JSON.stringify(result?.['shown']);
  await expect(other.locator('.results-list > div dd').first()).toBeVisible();
  expect(figures).toContain((await other.locator('.results-list > div dd').first().textContent()) ?? 'no figure');
  expect(address).not.toMatch(names);
  await other.close();
});

test('without a place a result makes one, with its first visit; from then on it goes into that', async ({ page }) => {
  await openForm(page, 'cover-count');
  await button(page, 'Keep this result').click();
  await button(page, 'Keep').click();
  await expect(page.getByText('The place needs a name.')).toBeVisible();
  await page.getByLabel('Name of the place').fill('Home place');
  await button(page, 'Keep').click();
  await expect(page.getByText(/^Kept in the visit of/)).toBeVisible();
  await openForm(page, 'slake-test');
  await button(page, 'Keep this result').click();
  await expect(page.getByLabel('In which visit')).toBeVisible();
  await button(page, 'Keep').last().click();
  await page.getByRole('link', { name: 'Open the visit' }).click();
  await placed(page);
  await expect(page.locator('.coming > li')).toHaveCount(2);
});

test('two windows on one visit: each keeps its field and its result', async ({ page, context }) => {
  await begun(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await placed(other);
  await page.getByLabel('What we saw').fill('Seen here.');
  await other.getByLabel('What you said').fill('Said there.');
  await written(page, 'visits', 'Seen here.');
  await written(page, 'visits', 'Said there.');
  await expect(page.getByLabel('What you said')).toHaveValue('Said there.');
  await expect(other.getByLabel('What we saw')).toHaveValue('Seen here.');
  // The same field, changed in each before either has heard of the other.
  const [stored] = await visits(page, 'visits');
  await plant(page, 'visits', {
    ...stored,
    clash: [{ path: 'seen', other: '"Seen otherwise."', otherBy: 'Kitchen window', otherAt: '2027-06-20T20:00:00.000Z' }],
  });
  await other.close();
  await page.reload();
  await placed(page);
  await expect(page.getByText('What we saw was changed in two windows.')).toBeVisible();
  await button(page, 'Take the other').tap();
  await expect(page.getByLabel('What we saw')).toHaveValue('Seen otherwise.');
  await expect(page.getByText('was changed in two windows')).toHaveCount(0);
});

test('a device that is full keeps what is typed in the window and the journal, and says so', async ({ page }) => {
  await begun(page);
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await page.getByLabel('What we saw').fill('Typed with no room.');
  await expect(page.getByText(/device is full/i)).toBeVisible();
  await expect(page.getByLabel('What we saw')).toHaveValue('Typed with no room.');
  await page.reload();
  await placed(page);
  await expect(page.getByLabel('What we saw')).toHaveValue('Typed with no room.');
});

test('a damaged result is set aside, and the visit opens with the rest', async ({ page }) => {
  await begun(page);
  await kept(page, 'Infiltration rate from a ring test', 'ring-test');
  await kept(page, 'Ground cover from a hundred steps', 'cover-count');
  const [first] = await visits(page, 'results');
  await plant(page, 'results', { ...first, link: 17 });
  await page.reload();
  await placed(page);
  await expect(page.locator('.coming > li')).toHaveCount(1);
  expect(await visits(page, 'aside')).toHaveLength(1);
});

test('a calculator that has changed since says both; one that this copy has not keeps its words', async ({ page }) => {
  await begun(page);
  await kept(page, 'Infiltration rate from a ring test', 'ring-test');
  const [first] = await visits(page, 'results');
  await plant(page, 'results', { ...first, version: 1, note: 'It said 3 in/hr then.' });
  await page.reload();
  await expect(page.getByText('It said 3 in/hr then.')).toBeVisible();
  await expect(page.getByText('The calculator has changed since this was kept.')).toBeVisible();
  await expect(page.getByText(/^Now it says: /)).toBeVisible();
  await plant(page, 'results', { ...first, slug: 'moon-phase', title: 'Moon phase', note: 'It was full.' });
  await page.reload();
  await expect(page.getByText('It was full.')).toBeVisible();
  await expect(page.getByText('This copy of the pages has no such calculator')).toBeVisible();
  await expect(page.locator('.coming a')).toHaveCount(0);
});

/** A photo as a phone writes it: with where it was taken in its head. */
async function photoWithPosition(page: Page): Promise<Buffer> {
  const bare = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [2400, 1200];
    const pen = canvas.getContext('2d');
    if (pen) {
      pen.fillStyle = '#7a5';
      pen.fillRect(0, 0, 2400, 1200);
    }
    return canvas.toDataURL('image/jpeg').split(',')[1] ?? '';
  });
  const jpeg = Buffer.from(bare, 'base64');
  // A TIFF head, one field that points to the positions, and two of those: latitude N and longitude W, by the standard of such heads (Exif 2.3, GPS IFD).
  const field = (tag: number, type: number, count: number, value: number): Buffer => {
    const bytes = Buffer.alloc(12);
    bytes.writeUInt16LE(tag, 0);
    bytes.writeUInt16LE(type, 2);
    bytes.writeUInt32LE(count, 4);
    bytes.writeUInt32LE(value, 8);
    return bytes;
  };
  const list = (...fields: readonly Buffer[]): Buffer => {
    const count = Buffer.alloc(2);
    count.writeUInt16LE(fields.length);
    return Buffer.concat([count, ...fields, Buffer.alloc(4)]);
  };
  const tiff = Buffer.concat([
    Buffer.from('II*\0\x08\0\0\0', 'latin1'),
    list(field(0x8825, 4, 1, 26)),
    list(field(1, 2, 2, 0x4e), field(3, 2, 2, 0x57)),
    Buffer.from('FIELDPOSITION 38.1234567 -97.7654321'),
  ]);
  const body = Buffer.concat([Buffer.from('Exif\0\0'), tiff]);
  const head = Buffer.from([0xff, 0xe1, (body.length + 2) >> 8, (body.length + 2) & 0xff]);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}
const tellsPosition = (bytes: Buffer): boolean => /Exif|FIELDPOSITION|38\.1234567/.test(bytes.toString('latin1'));

test('a photo keeps nothing of where it was taken: not where it is stored, not in the file, not on paper', async ({ page, browser }) => {
  await begun(page);
  const photo = await photoWithPosition(page);
  expect(tellsPosition(photo)).toBe(true);
  await page.getByLabel('Add photos').setInputFiles({ name: 'gate.jpg', mimeType: 'image/jpeg', buffer: photo });
  await expect(page.locator('.visit-photos img')).toHaveCount(1);
  await page.getByLabel('Photo 1: What it shows').fill('Crust by the gate');
  await page.getByLabel('Add photos').setInputFiles({ name: 'words.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') });
  await expect(page.getByText('This device could not read words.txt as a picture.')).toBeVisible();
  await written(page, 'visits', 'Crust by the gate');
  const [stored] = await visits(page, 'photos');
  const bytes = Buffer.from(String(stored?.['data']), 'base64');
  expect(bytes.length).toBeGreaterThan(100);
  expect(tellsPosition(bytes)).toBe(false);
  expect(JSON.stringify(await visits(page, 'visits'))).not.toMatch(/gate\.jpg|FIELDPOSITION/);
  expect(
    await page.locator('.visit-photos img').evaluate((image) => (image instanceof HTMLImageElement ? [image.naturalWidth, image.naturalHeight] : [])),
  ).toEqual([1600, 800]);
  await page.goto('/place/#/files');
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, /^Save Two Bench place as a file/).click()]);
  expect(download.suggestedFilename()).toMatch(/\.zip$/);
  const zip = readFileSync(await download.path());
  // Pictures lie in it unpacked.
  expect(zip.includes(bytes)).toBe(true);
  expect(tellsPosition(zip)).toBe(false);
  const other = await (await browser.newContext()).newPage();
  await other.goto('/place/#/files');
  await placed(other);
  await other.getByLabel('A file of a place').setInputFiles({ name: 'place.zip', mimeType: 'application/zip', buffer: zip });
  await other.getByRole('button', { name: 'Bring in one place' }).click();
  await expect.poll(async () => (await visits(other, 'photos')).length).toBe(1);
  expect((await visits(other, 'photos'))[0]?.['data']).toBe(stored?.['data']);
  await other.close();
  await page.goto('/place/#/visits');
  await page.locator('.visit-link').click();
  await page.getByRole('link', { name: 'Write the note' }).click();
  await button(page, 'For the office').click();
  await page.emulateMedia({ media: 'print' });
  await printedWords(page);
  await expect(page.locator('.note-photo img')).toHaveCount(0);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await page.emulateMedia({ media: 'screen' });
  await button(page, 'For the producer').click();
  await page.emulateMedia({ media: 'print' });
  await printedWords(page);
  await expect(page.locator('.note-photo img')).toHaveCount(1);
});

test('two visits are set side by side, with what was not alike', async ({ page }) => {
  await begun(page);
  await button(page, 'High bench').tap();
  await kept(page, 'Ground cover from a hundred steps', 'cover-count');
  await page.getByLabel('Day of the visit').fill('2025-06-18');
  await page.getByLabel('How the ground felt').selectOption('Moist');
  await written(page, 'visits', '2025-06-18');
  await page.goto('/place/#/visit/new');
  await expect(page.getByText('Nothing yet.')).toBeVisible();
  await button(page, 'High bench').tap();
  await kept(page, 'Ground cover from a hundred steps', 'cover-count');
  await page.getByLabel('How the ground felt').selectOption('Wet');
  await page.goto('/place/#/visits');
  // The list comes with its chunk.
  await expect(page.locator('.kept-places input')).toHaveCount(2);
  for (const tick of await page.locator('.kept-places input').all()) await tick.check();
  await page.getByRole('link', { name: /side by side/ }).tap();
  await expect(page.getByRole('heading', { name: 'High bench: Ground cover from a hundred steps' })).toBeVisible();
  await expect(page.getByText('The change cannot be told from chance.')).toBeVisible();
  await expect(page.getByText(/the ground felt moist then and wet now/).first()).toBeVisible();
  await expect(page.locator('.visits-plot circle')).toHaveCount(2);
});
