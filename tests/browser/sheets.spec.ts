import { expect, test } from '@playwright/test';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';

const sheets = filesOf(dist, /^sheets\/.+\/index\.html$/).map(addressOf);

test('every recording sheet fits one side of letter and of A4', async ({ page }) => {
  expect(sheets.length).toBeGreaterThan(0);
  for (const address of sheets) {
    await page.goto(address);
    for (const format of ['Letter', 'A4']) {
      const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString('latin1');
      const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length;
      expect(pages, `${address} on ${format}`).toBe(1);
    }
  }
});
