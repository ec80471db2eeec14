// Photos of a visit, and what they must not tell.
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { keepsFocus } from './forms.ts';
import { button, placed } from './placePage.ts';
import { begun, printedWords, visitorsPhone, visits, written } from './visitsOfOnes.ts';

test.use(visitorsPhone);

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

test('on a device that is full the photos tell what room they take, and go at a word', async ({ page }) => {
  await begun(page);
  const buffer = await photoWithPosition(page);
  await page.getByLabel('Add photos').setInputFiles(['one.jpg', 'two.jpg'].map((name) => ({ name, mimeType: 'image/jpeg', buffer })));
  await expect(page.locator('.visit-photos img')).toHaveCount(2);
  await expect.poll(async () => JSON.stringify(await visits(page, 'visits'))).toContain('"photos":[');
  await page.goto('/place/#/files');
  await page.locator('summary', { hasText: 'Photos and the room they take' }).click();
  const list = page.locator('.group .kept-places li');
  await expect(list).toHaveCount(1);
  await expect(list).toContainText(/2 photos, [\d.]+ [kM]B/);
  await button(page, /^Take them away/).click();
  expect(await visits(page, 'photos')).toHaveLength(2);
  await button(page, 'Keep them').click();
  await button(page, /^Take them away/).click();
  await button(page, 'Take 2 photos away').click();
  await expect(page.getByText('No visit of Two Bench place has photos.')).toBeVisible();
  expect(await visits(page, 'photos')).toHaveLength(0);
  expect(JSON.stringify(await visits(page, 'visits'))).not.toContain('"photos"');
});

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

/** As large as a phone’s, so that it takes a while to draw. */
const large = (page: Page): Promise<Buffer> =>
  page
    .evaluate(() => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [4000, 3000];
      const pen = canvas.getContext('2d');
      for (let at = 0; pen && at < 4000; at += 10) {
        pen.fillStyle = `hsl(${at % 360} 60% 50%)`;
        pen.fillRect(at, 0, 10, 3000);
      }
      return canvas.toDataURL('image/jpeg').split(',')[1] ?? '';
    })
    .then((text) => Buffer.from(text, 'base64'));

test('what is typed while photos are drawn stays, and photos that are added meanwhile are all in the visit', async ({ page }) => {
  await begun(page);
  const buffer = await large(page);
  const add = (...names: readonly string[]) =>
    page.getByLabel('Add photos').setInputFiles(names.map((name) => ({ name, mimeType: 'image/jpeg', buffer })));
  await add('one.jpg', 'two.jpg', 'three.jpg');
  await add('four.jpg');
  await page.getByLabel('What we saw').fill('Nightshade by the trough');
  await expect(page.locator('.visit-photos img')).toHaveCount(4);
  await expect(page.getByLabel('What we saw')).toHaveValue('Nightshade by the trough');
  await written(page, 'visits', 'Nightshade by the trough');
  await expect.poll(async () => (await visits(page, 'visits'))[0]?.['photos']).toHaveLength(4);
  expect(await visits(page, 'photos')).toHaveLength(4);
});

test('a photo and a step that were taken away come back where they stood, and the focus is on the way back', async ({ page }) => {
  await begun(page);
  const buffer = await photoWithPosition(page);
  await page.getByLabel('Add photos').setInputFiles(['one.jpg', 'two.jpg'].map((name) => ({ name, mimeType: 'image/jpeg', buffer })));
  await page.getByLabel('What it shows').first().fill('Crust');
  await page.getByLabel('What it shows').nth(1).fill('Roots');
  const photos = page.locator('.visit-photos');
  await keepsFocus(page);
  await button(page, 'Take photo 1 away').press('Enter');
  await expect(photos.getByText('Photo 1 was taken away.')).toBeVisible();
  await expect(photos.getByRole('button', { name: 'Put it back' })).toBeFocused();
  await expect(photos.locator('img')).toHaveCount(1);
  await page.keyboard.press('Enter');
  await expect(photos.locator('img')).toHaveCount(2);
  await expect(page.getByLabel('What it shows').first()).toHaveValue('Crust');
  // Gone for good on leaving.
  await button(page, 'Take photo 2 away').press('Enter');
  const steps = page.locator('.visit-steps');
  await page.getByLabel('Step 1: What').fill('Rest it');
  await page.getByLabel('Step 2: What').fill('Call');
  await button(page, 'Take step 1 away').press('Enter');
  await expect(steps.getByText('Step 1 was taken away.')).toBeVisible();
  await expect(steps.getByRole('button', { name: 'Put it back' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Step 1: What')).toHaveValue('Rest it');
  await page.goto('/place/#/visits');
  await expect.poll(() => visits(page, 'photos')).toHaveLength(1);
  expect((await visits(page, 'visits'))[0]).toMatchObject({ photos: [{ words: 'Crust' }], steps: [{ what: 'Rest it' }, { what: 'Call' }] });
});
