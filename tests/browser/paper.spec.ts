import { expect, type Page, test } from '@playwright/test';
import jsQR from 'jsqr';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';
import { overlapsOf, type PrintedPage, readPdf } from '../support/printedTexts.ts';
import { morning } from './signal.ts';
import { long, longUnless } from './walked.ts';

const pages = filesOf(dist, /^calculators\/[^/]+\/index\.html$/).map(addressOf);
/** Of the handout and of the pages behind it. */
const leastPt = [10, 9] as const;

test.use({ bypassCSP: true });

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
  // A season's table is longer or shorter by the day on which it is opened. A day before the copy was built would be doubted.
  await page.clock.setFixedTime(new Date(morning));
  // The handout's chunk is fetched a little behind.
  const handout = page.waitForRequest(/\/Handout\.[^/]+\.js$/);
  await page.goto(address);
  await page.locator('[data-calculator][data-ready]').waitFor();
  await (await handout).response();
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(300);
}
/** How many answers another management beside the first has of its own, where it has as many. */
const mostUnlike = 3;
/** A number a tenth lower, a day two weeks later. */
function otherText(typed: string): string | undefined {
  if (/^\d{4}-\d\d-\d\d$/.test(typed)) return new Date(Date.parse(typed) + 14 * 86_400_000).toISOString().slice(0, 10);
  if (!/^\d[\d,.]*(?:\s|$)/.test(typed)) return undefined;
  const old = Number.parseFloat(typed.replaceAll(',', ''));
  return String(Number.isInteger(old) && old > 3 ? Math.round(old * 0.9) : Math.round(old * 90) / 100);
}
/** Another management beside the first: what it is asked, and one thing more, answered a little differently. */
async function compare(page: Page): Promise<boolean> {
  const button = page.getByRole('button', { name: 'Set another management beside it' });
  if ((await button.count()) === 0) return false;
  await button.click();
  const more = page.locator('.let-differ');
  if ((await more.count()) > 0) {
    await more.locator('summary').click();
    await more.locator('button').first().click();
  }
  await page.locator('.is-that details').evaluateAll((all) => {
    for (const each of all) each.setAttribute('open', '');
  });
  const now = async () => {
    await page.waitForTimeout(600);
    return drawn(page, () => ({
      unlike: document.querySelectorAll('.is-handout .paper-put-in tbody tr').length,
      isAnswered: document.querySelector('.is-handout .big') !== null,
    }));
  };
  let unlike = 0;
  // What belongs to the place stays the same on both sides, so not every answer makes a difference; one that takes the answer away is put back.
  const keepIf = async (putBack: () => Promise<unknown>) => {
    const found = await now();
    if (found.isAnswered) unlike = found.unlike;
    else await putBack();
  };
  for (const field of await page
    .locator('.is-that :is(select, input:is([type="text"], [type="date"], [type="radio"])):not(.name-field):visible')
    .all()) {
    // A choice can take a field away.
    if (unlike >= mostUnlike || (await field.count()) === 0) break;
    const { kind, typed, isOther } = await field.evaluate((each) =>
      each instanceof HTMLSelectElement
        ? { kind: 'select', typed: each.value, isOther: true }
        : each instanceof HTMLInputElement
          ? { kind: each.type, typed: each.value, isOther: each.type !== 'radio' || !each.checked }
          : { kind: '', typed: '', isOther: false },
    );
    if (!isOther) continue;
    if (kind === 'select') {
      const others = await field.locator('option').evaluateAll((all) => all.map((each) => each.getAttribute('value') ?? ''));
      const other = others[(others.indexOf(typed) + 1) % others.length];
      if (other === undefined) continue;
      await field.selectOption(other);
      await keepIf(() => field.selectOption(typed));
    } else if (kind === 'radio') {
      const checked = page.locator(`.is-that input[name="${await field.getAttribute('name')}"]:checked`);
      const old = await checked.getAttribute('id');
      await field.check({ force: true });
      await keepIf(() => page.locator(`#${old}`).check({ force: true }));
    } else {
      const other = otherText(typed);
      if (other === undefined) continue;
      await field.fill(other);
      await keepIf(() => field.fill(typed));
    }
  }
  expect(unlike, 'answers in which the two sides differ').toBeGreaterThan(0);
  return true;
}
/** What the page drew of paper, while it is about to print. */
async function drawn<T>(page: Page, read: () => T): Promise<T> {
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate(read);
  await page.emulateMedia({ media: null });
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
    controls: [...document.querySelectorAll('.paper :is(input, select, textarea, button)')]
      .filter((each) => each.getClientRects().length > 0)
      .map((each) => each.outerHTML),
  }));
  expect(handout.controls, `${address} prints nothing to tap`).toEqual([]);
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

/** What every test run prints: a calculator whose table of readings runs long. */
const oftenPrinted = '/calculators/cover-count/';

for (const address of pages) {
  test(`${address} prints a handout and its working, alone and compared`, longUnless(address === oftenPrinted), async ({ page }) => {
    // Four prints, each read letter by letter.
    test.slow();
    await open(page, address);
    await holds(page, address);
    expect(bare(together((await printed(page, 'Letter'))[0]))).toContain('Example,notyournumbers');
    if (await compare(page)) await holds(page, `${address} compared`);
  });

  test(`${address}, emptied, prints lines to write on and no answer`, longUnless(address === oftenPrinted), async ({ page }) => {
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

/** What a telephone would read from the code as a printer of 300 dots an inch puts it down, seen a little out of focus; and how wide it is. */
async function scanned(page: Page): Promise<{ readonly link: string | undefined; readonly wideMm: number }> {
  const { svg, wideMm } = await drawn(page, () => {
    const code = document.querySelector('.paper .code');
    return { svg: code ? new XMLSerializer().serializeToString(code) : '', wideMm: ((code?.getBoundingClientRect().width ?? 0) / 96) * 25.4 };
  });
  const dots = Math.round((wideMm / 25.4) * 300);
  const { pixels, side } = await page.evaluate(
    async ({ svg, dots }) => {
      const image = new Image();
      image.src = `data:image/svg+xml,${encodeURIComponent(svg)}`;
      await image.decode();
      const sheet = (side: number, filter: string, source: CanvasImageSource): HTMLCanvasElement => {
        const canvas = document.createElement('canvas');
        canvas.width = side;
        canvas.height = side;
        const context = canvas.getContext('2d');
        if (!context) throw new Error('no canvas');
        context.fillStyle = '#ffffff';
        context.fillRect(0, 0, side, side);
        context.filter = filter;
        context.drawImage(source, 0, 0, side, side);
        return canvas;
      };
      const side = dots * 2;
      const seen = sheet(side, 'blur(1.5px)', sheet(dots, 'none', image));
      return { side, pixels: Array.from(seen.getContext('2d')?.getImageData(0, 0, side, side).data ?? []) };
    },
    { svg, dots },
  );
  return { link: jsQR(new Uint8ClampedArray(pixels), side, side)?.data, wideMm };
}

for (const slug of ['storm-runoff', 'rest-and-moves', 'carrying-capacity', 'feed-or-sell', 'rain-record', 'decision-dates']) {
  test(`the code of ${slug} opens the calculation`, long, async ({ page }) => {
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
