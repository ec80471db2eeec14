// The copy on the device, as a browser test waits for it and changes it.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import { builtFiles } from '../../src/integrations/builtFiles.ts';
import { type Copy, copyOf } from '../../src/integrations/copy/copyOf.ts';
import { dist } from '../site/builtSite.ts';
import type { Served } from './staticServer.ts';

/** A worker fetches and unpacks the whole copy at a first visit. Only what is about the copy waits for that. */
export const withWorker = { serviceWorkers: 'allow' } as const;
export const promise = 'Everything here works with no signal.';
export const footLine = (page: Page) => page.locator('footer [data-hosted="foot"]');

/** Waits until the page says that all of the copy is here. */
export const copyWhole = (page: Page): Promise<void> => expect(footLine(page)).toHaveText(promise, { timeout: 60_000 });

/** A newer edition of the built site, with some of its files changed. */
export function newerCopy(changes: Readonly<Record<string, (text: string) => string>>): Copy {
  return copyOf(builtFiles(dist), (file) => {
    const content = readFileSync(join(dist, file));
    const change = changes[file];
    return change === undefined ? content : new TextEncoder().encode(change(content.toString()));
  });
}
/** Puts a newer copy on the server, as a whole. */
export function deploy(server: Served, copy: Copy): void {
  for (const [file, bytes] of copy.packs) server.replace(`/${file}`, bytes);
  server.replace('/worker.js', copy.worker);
}
/** Waits until all of a newer copy is here. The page that is open says so too, and stays of its edition. */
export const newerWhole = (page: Page, { index }: Copy): Promise<void> =>
  expect
    .poll(
      () => page.evaluate(async (name) => (await (await caches.open(name)).match('/copy/mark/whole')) !== undefined, `holdwater / ${index.edition}`),
      { timeout: 60_000 },
    )
    .toBe(true);
/** What the browser does by itself at each visit: it looks for a newer worker. */
export const update = (page: Page): Promise<void> => page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
