// The folder that a build makes, and a page of it opened from a disk.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { builtFiles } from '../../src/integrations/builtFiles.ts';
import { root } from '../support/files.ts';
import type { Driven } from './driven.ts';

export const folder = join(root, 'portable');
if (!existsSync(join(folder, 'index.html'))) throw new Error('These tests read the folder that a build makes: run `npm run build` first.');
export const files = builtFiles(folder);
export const pages = files.filter((file) => file.endsWith('.html'));
export const folderAddress = (path: string): string => pathToFileURL(`${path}/`).href;

/** Opens a page, and all on it that opens: every form taken over, every working drawn with its numbers. Gives what went wrong. */
export async function opensWhole(driven: Driven, address: string): Promise<readonly string[]> {
  const before = driven.troubles.length;
  await driven.open(address);
  await driven.run(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('details.in-guide')) fold.open = true;
  });
  await driven.until(`${address}: every form is live`, () =>
    [...document.querySelectorAll<HTMLElement>('[data-calculator]')].every((box) => box.dataset['ready'] !== undefined),
  );
  await driven.run(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('[data-calculator] details.working')) fold.open = true;
  });
  await driven.until(`${address}: every working has its numbers`, () =>
    [...document.querySelectorAll('[data-calculator] .working')].every(
      (working) => !working.querySelector('[data-steps-away]') && /\d/.test(working.textContent ?? ''),
    ),
  );
  const told = await driven.told();
  driven.troubles.splice(before);
  return told.map((each) => `${address}: ${each}`);
}
