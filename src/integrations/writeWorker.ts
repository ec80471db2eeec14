import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { officeFileName } from '../office/model/officeFile.ts';
import { builtFiles } from './builtFiles.ts';

/** Writes the worker that keeps every file of the built site but the pictures of the README, which no page shows, and the office's file, which changes by itself. Its version changes when, and only when, a file does. Returns the bytes that it keeps. */
export function writeWorker(root: string): number {
  const files = builtFiles(root).filter((file) => !['worker.js', officeFileName].includes(file) && !file.startsWith('pictures/'));
  const hash = createHash('sha256');
  let bytes = 0;
  for (const file of files) {
    const content = readFileSync(join(root, file));
    bytes += content.length;
    hash.update(`${file} ${content.length} `).update(content);
  }
  // Relative to the worker itself, so that the same list holds under any folder.
  const paths = files.map((file) => `./${file.replace(/(^|\/)index\.html$/, '$1')}`);
  const template = readFileSync(new URL('./worker.template.js', import.meta.url), 'utf8');
  const filled = template.replace('FILES', () => JSON.stringify(paths)).replace('VERSION', () => JSON.stringify(hash.digest('hex').slice(0, 16)));
  writeFileSync(join(root, 'worker.js'), filled);
  return bytes;
}
