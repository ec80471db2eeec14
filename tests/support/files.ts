import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';

export const root = join(import.meta.dirname, '../..');

/** Paths below a folder, relative to the project, in a fixed order. */
export const filesBelow = (folder: string, matches: RegExp): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && matches.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .sort();
