import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import placeExamples from '../../content/place/examples.json' with { type: 'json' };
import config from '../../playwright.config.ts';
import { serve } from '../browser/staticServer.ts';
import { dist } from '../site/builtSite.ts';
import { root } from '../support/files.ts';

/** `npm run pictures` after `npm run build`: draws the two pictures of README.md from the built site, one rain on two managements on a phone and the handout that it prints. */
const port = Number(process.env['HOLDWATER_TEST_PORT'] ?? 4498);
const folder = join(root, 'public/pictures');
const mostBytes = 60_000;

const { slug, query } = placeExamples['bench-storm'];
const address = `http://127.0.0.1:${port}/calculators/${slug}/?${query}`;

async function ready(page: Page): Promise<void> {
  await page.goto(address, { waitUntil: 'networkidle' });
  await page.locator('[data-calculator][data-ready]').first().waitFor();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.locator('.picture svg').first().waitFor();
}

/** The browser packs its own picture: on a sheet as wide as `widthPx` with a margin around, and as well as the size allows. */
async function keep(browser: Browser, name: string, shot: Buffer, widthPx: number, marginShare: number): Promise<void> {
  const page = await browser.newPage();
  const packed = await page.evaluate(
    async ({ source, widthPx, marginShare, mostBytes }) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const margin = Math.round(widthPx * marginShare);
      const canvas = document.createElement('canvas');
      canvas.width = widthPx;
      canvas.height = Math.round(((widthPx - 2 * margin) * image.height) / image.width) + 2 * margin;
      const context = canvas.getContext('2d');
      if (!context) throw new Error('no canvas');
      context.fillStyle = '#ffffff';
      context.fillRect(0, 0, canvas.width, canvas.height);
      context.imageSmoothingQuality = 'high';
      context.drawImage(image, margin, margin, widthPx - 2 * margin, canvas.height - 2 * margin);
      for (const quality of [0.9, 0.8, 0.7, 0.6, 0.5]) {
        const base64 = canvas.toDataURL('image/webp', quality).split(',')[1] ?? '';
        if (base64.length * 0.75 <= mostBytes) return base64;
      }
      throw new Error(`no more than ${mostBytes} bytes cannot be had`);
    },
    { source: `data:image/png;base64,${shot.toString('base64')}`, widthPx, marginShare, mostBytes },
  );
  await page.close();
  const bytes = Buffer.from(packed, 'base64');
  writeFileSync(join(folder, name), bytes);
  console.log(`${name}: ${bytes.length} bytes`);
}

mkdirSync(folder, { recursive: true });
const site = await serve(dist, port);
const browser = await chromium.launch(config.use?.launchOptions);
try {
  const phone = await browser.newPage({ viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, colorScheme: 'light' });
  await ready(phone);
  await keep(browser, 'comparison-on-a-phone.webp', await phone.screenshot(), 585, 0);
  await phone.close();

  // Letter paper without its margins, which a screen does not draw: 7.5 by 10.1 inches at 96 pixels an inch.
  const sheet = await browser.newPage({ viewport: { width: 720, height: 971 }, deviceScaleFactor: 2, colorScheme: 'light' });
  await ready(sheet);
  // What draws paper is fetched a little behind the page.
  await sheet.waitForTimeout(4000);
  await sheet.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await sheet.emulateMedia({ media: 'print' });
  await sheet.locator('.is-handout').waitFor();
  await keep(browser, 'printed-handout.webp', await sheet.screenshot(), 640, 0.06);
  await sheet.close();
} finally {
  await browser.close();
  await site.stop();
}
