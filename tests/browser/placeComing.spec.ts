import { expect, test } from '@playwright/test';
import { give, go, isWritten, savedFile, started, withPasture, written } from './placePage.ts';

// What comes to the page of the place from elsewhere: by an address and by a file.

test.use({ viewport: { width: 390, height: 844 } });

const kept = 'area=60ac&height=8in&stop-height=4in&stock.kind=cow-nursing&stock.count=38&v=1';
test('an address brings a calculation’s figures in, and writes nothing before it is told to', async ({ page }) => {
  await page.goto(`/place/#keep=days-of-grass?${kept}`);
  await expect(page.getByText('From “Days of grass left”.')).toBeVisible();
  const list = page.locator('.keep-place li');
  await expect(list.filter({ hasText: '60 ac' })).toBeVisible();
  await expect(list.filter({ hasText: '38' })).toBeVisible();
  expect(await page.evaluate(() => localStorage.getItem('holdwater-open'))).toBeNull();
  await page.getByLabel('Name of the place').fill('Creek place');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.getByText('Kept in Creek place.', { exact: false })).toBeVisible();
  await written(page, '"areaAc":60');
  // Once more: there is nothing that it does not know.
  await go(page, 'Stock');
  await expect(page.getByText('38')).toBeVisible();
  await page.goto('/about/');
  await page.goto(`/place/#keep=days-of-grass?${kept}`);
  await expect(page.locator('.keep-place')).toBeVisible();
});

test('a wrong address is told in a sentence, and nothing is kept', async ({ page }) => {
  for (const [hash, says] of [
    ['#keep=', 'names no calculator'],
    ['#keep=no-such-thing?area=1ac', 'names no calculator'],
    ['#keep=__proto__?area=1ac', 'names no calculator'],
    ['#keep=<img src=x onerror=alert(1)>?x', 'names no calculator'],
    ['#keep=days-of-grass', 'carries no figures'],
    ['#keep=days-of-grass?nonsense=1&more=2', 'Not known here, left out: nonsense, more.'],
    [`#keep=days-of-grass?area=${'9'.repeat(5000)}`, 'too long to be one of ours'],
  ]) {
    await page.goto('/about/');
    await page.goto(`/place/${hash}`);
    await expect(page.getByText(says ?? 'none', { exact: false }), hash).toBeVisible();
  }
  expect(await isWritten(page, 'id')).toBe(false);
});

test('a calculator that can keep nothing sends its figures by an address', async ({ page }) => {
  await page.addInitScript(() => {
    if (location.pathname.startsWith('/calculators/')) Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await page.goto('/calculators/days-of-grass/');
  await page.locator('[data-calculator][data-ready]').waitFor();
  await page.locator('#days-of-grass-areaAc').fill('61');
  await page.getByRole('button', { name: 'Keep as my place' }).click();
  await page.getByRole('link', { name: 'Keep it at the page of your place' }).click();
  await expect(page.locator('.keep-place li').filter({ hasText: '61 ac' })).toBeVisible();
});

test('hostile files: refused with a sentence or shown as plain words, and nothing runs or is written', async ({ page }) => {
  await started(page);
  await withPasture(page, '40');
  await go(page, 'Files');
  const file = await savedFile(page, /^Save Home place as a file/);
  let ran = false;
  await page.exposeFunction('wasRun', () => {
    ran = true;
  });
  const said = page.getByRole('alert').filter({ hasText: /file/ });
  for (const text of [
    'no json',
    '[]',
    '{"file":"holdwater-place","v":1,"__proto__":{"polluted":1}}',
    '['.repeat(100_000),
    file.text.replace('"v": 1', '"v": 99'),
  ]) {
    await give(page, text);
    await expect(said).toBeVisible();
    expect(await said.textContent()).not.toMatch(/JSON|undefined|unexpected|token|schema|stack/i);
  }
  const markup = '<img src=x onerror=wasRun()><script>wasRun()</script>';
  await give(page, file.text.replaceAll('Home place', markup).replace(/"id": "[^"]*"/, '"id": "other"'));
  await expect(page.locator('.coming b', { hasText: markup })).toBeVisible();
  await page.getByRole('button', { name: 'Bring in one place' }).click();
  await expect(page.getByText(markup).first()).toBeVisible();
  expect(await page.locator('main img, main script:not([src])').count()).toBe(0);
  expect(ran).toBe(false);
  expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
});

test('a file of what changed here and there shows both, after the person has asked for it', async ({ page }) => {
  await started(page);
  await withPasture(page, '40');
  await go(page, 'Files');
  const { text } = await savedFile(page, /^Save Home place as a file/);
  const there = JSON.parse(text);
  there.places[0].pastures[0].areaAc = 44;
  there.places[0].past.push('9-zzzzzz');
  await go(page, 'Ground');
  await page.locator('summary', { hasText: 'Pasture 1' }).click();
  await page.getByLabel('Pasture 1: Size').fill('41');
  await written(page, '"areaAc":41');
  await go(page, 'Files');
  await give(page, JSON.stringify(there));
  await expect(page.getByText('Changed here and in the file.')).toBeVisible();
  await page.getByRole('button', { name: 'Bring in one place' }).click();
  await page.getByRole('button', { name: /44 ac/ }).click();
  await written(page, '"areaAc":44');
});
