// The folder that a build makes, opened from a disk as somebody does who was given it: its files, and every page of it in Chromium.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from '@playwright/test';
import { unzipSync } from 'fflate';
import { attributes, dist, readingText, textOf } from '../site/builtSite.ts';
import { DrivenChromium } from './driven.ts';
import { files, folder, folderAddress, opensWhole, pages } from './folderHere.ts';

test.describe('the files of the folder', () => {
  test('lead to one another and to nothing else: each address to a file that is there, each anchor to its place', () => {
    const there = new Set(files);
    const anchors = new Map(pages.map((page) => [page, new Set(attributes(textOf(folder, page), 'id'))]));
    const problems: string[] = [];
    let count = 0;
    for (const page of pages) {
      const html = textOf(folder, page);
      const addresses = ['href', 'src', 'action', 'data-page', 'data-styles'].flatMap((name) =>
        attributes(html, name).flatMap((each) => each.split(' ')),
      );
      for (const address of addresses.filter((each) => !/^(?:https?:|mailto:|tel:|sms:|data:)/.test(each) && each !== '')) {
        count++;
        if (address.startsWith('/')) problems.push(`${page}: from the root: ${address}`);
        const { pathname, hash } = new URL(address, `file:///${page}`);
        const file = decodeURIComponent(pathname.slice(1));
        if (!there.has(file)) problems.push(`${page}: nothing at ${address}`);
        // The page of the place draws its views behind `#/` by itself.
        else if (hash.length > 1 && !hash.startsWith('#/') && !anchors.get(file)?.has(decodeURIComponent(hash.slice(1))))
          problems.push(`${page}: no anchor for ${address}`);
      }
    }
    expect(count).toBeGreaterThan(10_000);
    expect(problems).toEqual([]);
    const sheets = files
      .filter((file) => file.endsWith('.css'))
      .flatMap((sheet) => [...textOf(folder, sheet).matchAll(/url\(["']?(?!data:)([^"')]+)/g)].map(([, at = '']) => ({ sheet, at })));
    expect(sheets.length).toBeGreaterThan(10);
    expect(sheets.filter(({ sheet, at }) => at.startsWith('/') || !there.has(join(dirname(sheet), at)))).toEqual([]);
  });

  test('hold no module, no worker and nothing that is true of a hosted copy alone', () => {
    expect(files.filter((file) => /worker|webmanifest|404/i.test(file))).toEqual([]);
    for (const page of pages) {
      const html = textOf(folder, page);
      expect(html, page).not.toMatch(/type="module"|data-hosted|rel="preload"/);
      expect(html, page).toMatch(/This is a copy in a folder, of [A-Z][a-z]{2} \d{1,2}, \d{4}, version \d+\.\d+\.\d+/);
      // A guide may speak of signal; what the page says of itself may not.
      if (!page.startsWith('guides/'))
        expect(readingText(html), page).not.toMatch(/after the first visit|where there is signal|when there is signal/i);
    }
    const scripts = files.filter((file) => file.startsWith('_astro/') && file.endsWith('.js'));
    expect(scripts.length).toBeGreaterThan(100);
    for (const script of scripts) expect(textOf(folder, script).startsWith(`holdwaterFolder.define("${script}",`), script).toBe(true);
  });

  test('are those of the zip, which the hosted page offers with its size and checksum, and the folder’s own page does not', async () => {
    const content = readFileSync(join(dist, 'portable.zip'));
    const zip = unzipSync(content);
    expect(Object.keys(zip)).toEqual(files.map((file) => `holdwater/${file}`));
    for (const file of files) expect(readFileSync(join(folder, file)).equals(zip[`holdwater/${file}`] ?? Buffer.alloc(0)), file).toBe(true);
    const digest = Buffer.from(await crypto.subtle.digest('SHA-256', new Uint8Array(content))).toString('hex');
    const [hosted, own] = [dist, folder].map((root) => textOf(root, 'from-a-folder/index.html'));
    expect(hosted).toContain('href="/portable.zip" download');
    expect(readingText(hosted ?? '')).toContain(`(${(content.length / 1e6).toFixed(1)} MB)`);
    expect(readingText(hosted ?? '')).toContain(digest);
    expect(own).not.toMatch(/href="[^"]*portable\.zip|ZIP_/);
    expect(own).toContain('You have it');
    // People carry it in a mail or over a poor line; every name must fit the paths of any system.
    expect(content.length).toBeLessThan(4_500_000);
    expect(files.filter((file) => file.length > 100)).toEqual([]);
    expect(new Set(files.map((file) => file.toLowerCase())).size).toBe(files.length);
  });
});

const parts = 4;
for (let part = 0; part < parts; part++)
  test(`every page opens whole in Chromium from a disk, part ${part + 1} of ${parts}`, async ({ page }) => {
    const driven = await DrivenChromium.on(page);
    const mine = pages.filter((_, index) => index % parts === part);
    expect(mine.length).toBeGreaterThan(30);
    const wrong: string[] = [];
    for (const file of mine) wrong.push(...(await opensWhole(driven, folderAddress(folder) + file)));
    expect(wrong).toEqual([]);
  });

test('what a page does that it may not is seen by these tests', async ({ page }) => {
  const driven = await DrivenChromium.on(page);
  await driven.open(`${folderAddress(folder)}about/index.html`);
  await driven.run(() => {
    document.body.append(Object.assign(document.createElement('img'), { src: 'http://127.0.0.1:9/x.png' }));
  });
  await expect.poll(() => driven.told()).toContainEqual(expect.stringContaining('policy: img-src'));
  const sent = await driven.run(() =>
    fetch('http://127.0.0.1:9/x').then(
      () => 'sent',
      () => 'refused',
    ),
  );
  expect(sent).toBe('refused');
  await expect.poll(() => driven.told()).toContainEqual(expect.stringContaining('policy: connect-src'));
});

// W3C, Trusted Types: the policy holds from a disk, where it stands in the page.
test('what is planted in a page from a disk is refused: markup, and the address of a script', async ({ page }) => {
  const driven = await DrivenChromium.on(page);
  await driven.open(`${folderAddress(folder)}about/index.html`);
  const tried = await driven.run(() => {
    const refusal = (sink: () => unknown): string => {
      try {
        sink();
        return 'taken';
      } catch (error) {
        return error instanceof TypeError ? 'refused' : String(error);
      }
    };
    const box = document.body.appendChild(document.createElement('div'));
    const policy = (name: string) => () => trustedTypes?.createPolicy(name, { createScriptURL: (address) => address });
    return [
      refusal(() => box.insertAdjacentHTML('beforeend', '<b>planted</b>')),
      refusal(() => {
        box.innerHTML = '<b>planted</b>';
      }),
      refusal(() => {
        document.createElement('script').src = '../office.js';
      }),
      ...['planted', 'folder-file'].map((name) => refusal(policy(name))),
      `${box.childElementCount} left`,
    ];
  });
  expect(tried).toEqual([...Array(5).fill('refused'), '0 left']);
});
