import { expect, type Page, test } from '@playwright/test';
import jsQR from 'jsqr';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';

const pages = filesOf(dist, /^calculators\/[^/]+\/index\.html$/).map(addressOf);
const leastPt = 9;

test.use({ serviceWorkers: 'block', bypassCSP: true });

interface Text {
  readonly text: string;
  readonly sizePt: number;
  readonly box: readonly [left: number, bottom: number, right: number, top: number];
}
/** The texts of each page of a printed sheet, with their sizes and places in points. */
async function printed(page: Page, format: 'Letter' | 'A4'): Promise<readonly (readonly Text[])[]> {
  const document = await getDocument({ data: new Uint8Array(await page.pdf({ format })), verbosity: 0 }).promise;
  const sheets: Text[][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    sheets.push(
      items.flatMap((item): Text[] => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [, , c, d, x, y]: number[] = item.transform;
        const sizePt = Math.hypot(c ?? 0, d ?? 0);
        return [{ text: item.str, sizePt, box: [x ?? 0, y ?? 0, (x ?? 0) + item.width, (y ?? 0) + 0.6 * sizePt] }];
      }),
    );
  }
  return sheets;
}
const together = (texts: readonly Text[]): string =>
  texts
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');
/** Without spaces and signs of where a line broke. */
const bare = (text: string): string => text.replace(/[\s\u00a0\u00ad]/g, '');

/** A text with a halo is drawn twice in one place. */
function overlapsOf(texts: readonly Text[]): readonly string[] {
  const slackPt = 1.5;
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .filter(
        (two) =>
          one.text !== two.text &&
          Math.min(one.box[2], two.box[2]) - Math.max(one.box[0], two.box[0]) > slackPt &&
          Math.min(one.box[3], two.box[3]) - Math.max(one.box[1], two.box[1]) > slackPt,
      )
      .map((two) => `“${one.text}” and “${two.text}”`),
  );
}

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
  const choice = page.locator('.is-that select').first();
  const number = page.locator('.is-that input[type="text"]:not(.name-field)').first();
  if ((await number.count()) > 0) {
    const typed = Number((await number.inputValue()).replace(/[^\d.]/g, ''));
    await number.fill(String(Math.round(typed * 0.9 * 100) / 100));
  } else if ((await choice.count()) > 0) await choice.selectOption({ index: 1 });
  await page.waitForTimeout(1200);
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
  }));
  expect(handout.isAnswered, `${address} answers`).toBe(true);
  for (const format of ['Letter', 'A4'] as const) {
    const sheets = await printed(page, format);
    const [first = [], second = []] = sheets;
    const where = `${address} on ${format}`;
    const text = bare(together(first));
    // The handout ends with its foot on the first page; the working begins the second.
    expect(text, where).toContain('Whatweagreed');
    expect(text, where).toContain('Lookagainon');
    expect(bare(together(second)), where).toContain('Theworking');
    expect(text, where).not.toContain('Stepbystep');
    for (const each of handout.answers) expect(text, where).toContain(bare(each));
    for (const [number, texts] of sheets.entries()) {
      expect(
        texts.filter(({ sizePt }) => sizePt < leastPt - 0.05).map(({ text, sizePt }) => `${text} ${sizePt}`),
        `${where}, page ${number + 1}`,
      ).toEqual([]);
      expect(overlapsOf(texts), `${where}, page ${number + 1}`).toEqual([]);
    }
  }
}

for (const address of pages) {
  test(`${address} prints a handout and its working, alone and compared`, async ({ page }) => {
    await open(page, address);
    await holds(page, address);
    expect(bare(together((await printed(page, 'Letter'))[0] ?? []))).toContain('Example,notyournumbers');
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
    const [first = []] = await printed(page, 'Letter');
    expect(bare(together(first))).toContain('Noansweryet');
    expect(bare(together(first))).toContain('Whatweagreed');
    expect(first.filter(({ sizePt }) => sizePt < leastPt - 0.05)).toEqual([]);
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
  for (const day of rows.slice(0, 16).flat()) expect(bare(together(sheets[0] ?? []))).toContain(bare(day.replace(/, \d{4}$/, '')));
  for (const day of rows.flat()) expect(bare(together(sheets.slice(1).flat()))).toContain(bare(day));
});

test('sides go by their names on paper, and cautions say whose they are', async ({ page }) => {
  await open(page, '/calculators/storm-runoff/');
  await page.locator('.wide-button').click();
  await page.getByLabel('Call this side').fill('High bench');
  await page.getByLabel('Call that side').fill('Rested');
  await page.locator('#storm-runoff-that-groundCoverPercent').fill('85');
  await page.waitForTimeout(300);
  const [first = []] = await printed(page, 'Letter');
  const text = bare(together(first));
  for (const name of ['Highbench', 'Rested', 'Highbench:Lessthanhalf']) expect(text).toContain(name);
});

test('whom to call stands on both sides of a hard answer', async ({ page }) => {
  await open(page, '/calculators/feed-or-sell/');
  const [first = [], ...behind] = await printed(page, 'Letter');
  expect(bare(together(first))).toContain('callortext988');
  expect(bare(together(behind.flat()))).toContain('callortext988');
});

test('a guide prints as a guide, and a page without its script prints what stands on it', async ({ page }) => {
  await page.route('**/_astro/Handout*.js', (route) => route.abort());
  await open(page, '/calculators/storm-runoff/');
  const sheets = await printed(page, 'Letter');
  const text = bare(together(sheets.flat()));
  for (const part of ['Howmuchofthatrainranoff?', 'Example,notyournumbers', 'soilgroupB']) expect(text).toContain(part);
  expect(text).not.toContain('Copylink');
});
