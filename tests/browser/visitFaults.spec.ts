// Visits where something is amiss: two windows on one, a full device, damaged and older results.
import { expect, test } from '@playwright/test';
import { button, placed } from './placePage.ts';
import { begun, kept, plant, visitorsPhone, visits, written } from './visitsOfOnes.ts';

test.use(visitorsPhone);

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
  await expect(page.getByText('What we saw was changed in two windows, or on two devices.')).toBeVisible();
  // Nor does a note go out before somebody has seen that its visit says two things.
  await page.goto(page.url().replace('#/visit/', '#/note/'));
  await placed(page);
  const still = page.getByText('Its visit still says two things. Pick before this note goes out:');
  await expect(still).toBeVisible();
  await expect(page.getByText('What we saw was changed in two windows, or on two devices.')).toBeVisible();
  await page.goBack();
  await placed(page);
  await expect(button(page, 'Take the other')).toBeVisible();
  await button(page, 'Keep both').tap();
  await expect(page.getByLabel('What we saw')).toHaveValue('Seen here.\nSeen otherwise.');
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
