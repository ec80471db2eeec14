import { expect, type Page, test } from '@playwright/test';
import jsQR from 'jsqr';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';
import { overlapsOf, type PrintedPage, readPdf } from '../support/printedTexts.ts';

const pages = filesOf(dist, /^calculators\/[^/]+\/index\.html$/).map(addressOf);
/** Of the handout and of the pages behind it. */
const leastPt = [10, 9] as const;

test.use({ serviceWorkers: 'block', bypassCSP: true });

const printed = async (page: Page, format: 'Letter' | 'A4'): Promise<readonly PrintedPage[]> => readPdf(new Uint8Array(await page.pdf({ format })));
const together = (...pages: readonly (PrintedPage | undefined)[]): string =>
  pages
    .flatMap((each) => each?.texts ?? [])
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');
/** Without spaces and signs of where a line broke. */
const bare = (text: string): string => text.replace(/[\s\u00a0\u00ad]/g, '');

async function open(page: Page, address: string): Promise<void> {
  // A season's table is longer or shorter by the day on which it is opened.
  await page.clock.setFixedTime(new Date('2026-06-20T12:00:00'));
  await page.goto(address);
  await page.locator('[data-calculator][data-ready]').waitFor();
  // The handout's chunk is fetched a little behind.
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(1800);
}
/** Another management beside the first, with one answer changed by a little. */
async function compare(page: Page): Promise<boolean> {
  const button = page.locator('.wide-button');
  if ((await button.count()) === 0) return false;
  await button.click();
  // What belongs to the place stays the same on both sides, so not every answer makes a difference.
  const differs = () => drawn(page, () => document.querySelectorAll('.is-handout .paper-put-in tbody tr').length > 0);
  for (const each of await page.locator('.is-that input[type="text"]:not(.name-field):visible').all()) {
    const typed = await each.inputValue();
    // A number, and no date.
    if (!/^\d[\d,.]*(?:\s|$)/.test(typed)) continue;
    const old = Number.parseFloat(typed.replaceAll(',', ''));
    await each.fill(String(Number.isInteger(old) && old > 3 ? Math.round(old * 0.9) : Math.round(old * 90) / 100));
    await page.waitForTimeout(1200);
    if (await differs()) return true;
    await each.fill(typed);
  }
  const choice = page.locator('.is-that select:visible').first();
  if ((await choice.count()) > 0) await choice.selectOption({ index: 1 });
  await page.waitForTimeout(1200);
  expect(await differs(), 'the two sides differ').toBe(true);
  return true;
}
/** What the page drew of paper, while it is about to print. */
async function drawn<T>(page: Page, read: () => T): Promise<T> {
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const found = await page.evaluate(read);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  return found;
}

async function holds(page: Page, address: string): Promise<void> {
  const handout = await drawn(page, () => ({
    says: [...document.querySelectorAll('.is-handout > :not(.paper-body), .paper-body > :not(.paper-picture)')].map((each) => each.textContent ?? ''),
    answers: [...document.querySelectorAll('.is-handout .run-in, .is-handout .paper-put-in td, .is-handout .paper-days td')].map(
      (each) => each.textContent ?? '',
    ),
    isAnswered: document.querySelector('.is-handout .big') !== null,
    cutOff: [...document.querySelectorAll('.paper :is(.formula, .scroll, table, .step, p)')]
      .filter((each) => each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).display !== 'inline')
      .map((each) => each.textContent?.slice(0, 60)),
  }));
  expect(handout.cutOff, `${address} cuts nothing off`).toEqual([]);
  expect(handout.isAnswered, `${address} answers`).toBe(true);
  for (const format of ['Letter', 'A4'] as const) {
    const sheets = await printed(page, format);
    const [first, second] = sheets;
    const where = `${address} on ${format}`;
    const text = bare(together(first));
    // The handout ends with its foot on the first page; the working begins the second.
    expect(text, where).toContain('Whatweagreed');
    expect(text, where).toContain('Lookagainon');
    expect(bare(together(second)), where).toContain('Theworking');
    expect(text, where).not.toContain('Stepbystep');
    for (const each of handout.answers) expect(text, where).toContain(bare(each));
    for (const [number, { texts, letters }] of sheets.entries()) {
      const least = leastPt[number === 0 ? 0 : 1];
      expect(
        texts.filter(({ sizePt }) => sizePt < least - 0.02).map(({ text, sizePt }) => `${text} ${sizePt}`),
        `${where}, page ${number + 1}`,
      ).toEqual([]);
      expect(bare(letters.map(({ text }) => text).join('')).length, `${where}, page ${number + 1}: every letter has its place`).toBe(
        bare(together({ texts, letters })).length,
      );
      expect(overlapsOf(letters), `${where}, page ${number + 1}`).toEqual([]);
    }
  }
}

test('letters that lie over each other are found, brackets between letters are not', async ({ page }) => {
  await page.setContent('<p style="margin:0">Rain (3 in)</p><p style="margin:-18px 0 0 9px">Grass</p><p>Hay <i>f</i> <b>(</b>2</p>');
  const [only] = await printed(page, 'Letter');
  const found = overlapsOf(only?.letters ?? []);
  expect(found.length).toBeGreaterThan(0);
  for (const each of found) expect(each).not.toMatch(/Hay|2/);
});

for (const address of pages) {
  test(`${address} prints a handout and its working, alone and compared`, async ({ page }) => {
    await open(page, address);
    await holds(page, address);
    expect(bare(together((await printed(page, 'Letter'))[0]))).toContain('Example,notyournumbers');
    if (await compare(page)) await holds(page, `${address} compared`);
  });

  test(`${address}, emptied, prints lines to write on and no answer`, async ({ page }) => {
    await open(page, address);
    await page.locator('.stamp-line button').click();
    await page.waitForTimeout(300);
    const { lines, figures } = await drawn(page, () => ({
      lines: document.querySelectorAll('.write-on, .blank-table td').length,
      figures: document.querySelectorAll('.paper .big, .paper [data-worked]').length,
    }));
    expect(figures).toBe(0);
    expect(lines).toBeGreaterThan(0);
    for (const format of ['Letter', 'A4'] as const) {
      const [first] = await printed(page, format);
      for (const part of ['Noansweryet', 'Whatweagreed', 'Lookagainon']) expect(bare(together(first)), format).toContain(part);
      expect(first?.texts.filter(({ sizePt }) => sizePt < leastPt[0] - 0.02)).toEqual([]);
      expect(overlapsOf(first?.letters ?? [])).toEqual([]);
    }
  });
}

/** What a telephone would read from the modules as they are drawn, and how wide the code is. */
async function scanned(page: Page): Promise<{ readonly link: string | undefined; readonly wideMm: number }> {
  const { size, path, wideMm } = await drawn(page, () => {
    const code = document.querySelector('.paper .code');
    return {
      size: Number(code?.getAttribute('viewBox')?.split(' ')[2]),
      path: code?.querySelector('path')?.getAttribute('d') ?? '',
      wideMm: ((code?.getBoundingClientRect().width ?? 0) / 96) * 25.4,
    };
  });
  const scale = 4;
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let down = 0; down < scale; down += 1)
      for (let across = 0; across < scale; across += 1)
        pixels.set([0, 0, 0, 255], ((Number(y) * scale + down) * side + Number(x) * scale + across) * 4);
  return { link: jsQR(pixels, side, side)?.data, wideMm };
}

for (const slug of ['storm-runoff', 'rest-and-moves', 'carrying-capacity', 'feed-or-sell', 'rain-record', 'decision-dates']) {
  test(`the code of ${slug} opens the calculation`, async ({ page }) => {
    await open(page, `/calculators/${slug}/`);
    const { link, wideMm } = await scanned(page);
    expect(link).toMatch(new RegExp(`^http://[^ ]+/calculators/${slug}/\\?.+v=\\d+$`));
    expect(wideMm).toBeGreaterThanOrEqual(23.9);
    const answer = await page.locator('.answer .big').first().textContent();
    await page.goto(link ?? '');
    await page.locator('[data-calculator][data-ready]').waitFor();
    await expect(page.locator('.answer .big').first()).toHaveText(answer ?? '');
  });
}

test('sixteen days stand on the first page and the rest behind', async ({ page }) => {
  await open(page, '/calculators/rest-and-moves/');
  const sheets = await printed(page, 'Letter');
  const rows = await page
    .locator('.rows-table tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.querySelectorAll('.is-day')].map((day) => day.textContent ?? '')));
  for (const day of rows.slice(0, 16).flat()) expect(bare(together(sheets[0]))).toContain(bare(day.replace(/, \d{4}$/, '')));
  for (const day of rows.flat()) expect(bare(together(...sheets.slice(1)))).toContain(bare(day));
});

test('sides go by their names on paper, and cautions say whose they are', async ({ page }) => {
  await open(page, '/calculators/storm-runoff/');
  await page.locator('.wide-button').click();
  await page.getByLabel('Call this side').fill('High bench');
  await page.getByLabel('Call that side').fill('Rested');
  await page.locator('#storm-runoff-that-groundCoverPercent').fill('85');
  await page.waitForTimeout(300);
  const [first] = await printed(page, 'Letter');
  const text = bare(together(first));
  for (const name of ['Highbench', 'Rested', 'Highbench:Lessthanhalf']) expect(text).toContain(name);
});

test('whom to call stands on both sides of a hard answer', async ({ page }) => {
  await open(page, '/calculators/feed-or-sell/');
  const [first, ...behind] = await printed(page, 'Letter');
  expect(bare(together(first))).toContain('callortext988');
  expect(bare(together(...behind))).toContain('callortext988');
});

test('a guide prints as a guide, and a page without its script prints what stands on it', async ({ page }) => {
  await page.route('**/_astro/Handout*.js', (route) => route.abort());
  await open(page, '/calculators/storm-runoff/');
  const sheets = await printed(page, 'Letter');
  const text = bare(together(...sheets));
  for (const part of ['Howmuchofthatrainranoff?', 'Example,notyournumbers', 'soilgroupB']) expect(text).toContain(part);
  expect(text).not.toContain('Copylink');
});
