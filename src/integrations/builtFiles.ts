import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { type HTMLElement, parse } from 'node-html-parser';

/** Paths of a built site, from its root, in one order on every machine. */
export const builtFiles = (root: string): readonly string[] =>
  readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();

export const readText = (root: string, file: string): string => readFileSync(join(root, file), 'utf8');

/** The pages of a built site, read once for all that look through them. */
export const parsedPages = (root: string): ReadonlyMap<string, HTMLElement> =>
  new Map(
    builtFiles(root)
      .filter((file) => file.endsWith('.html'))
      .map((file) => [file, parse(readText(root, file))]),
  );
