import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { builtFiles } from '../../src/integrations/builtFiles.ts';
import { root } from '../support/files.ts';

/** The site as `npm run build` leaves it. */
export const dist = join(root, 'dist');

if (!existsSync(join(dist, 'worker.js'))) throw new Error('These tests read the built site: run `npm run build` first.');

export const textOf = (folder: string, file: string): string => readFileSync(join(folder, file), 'utf8');

export const filesOf = (folder: string, ending: RegExp): readonly string[] => builtFiles(folder).filter((file) => ending.test(file));

/** What a server that compresses sends for a file; fonts are compressed already. */
export function sentBytes(folder: string, file: string): number {
  const content = readFileSync(join(folder, file));
  return file.endsWith('.woff2') ? content.length : gzipSync(content, { level: 9 }).length;
}

const decoded = (text: string): string => text.replaceAll('&amp;', '&').replaceAll('&#38;', '&').replaceAll('&#39;', "'").replaceAll('&quot;', '"');

/** Values of an attribute in a page. */
export const attributes = (html: string, name: string): readonly string[] =>
  [...html.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map((found) => decoded(found[1] ?? ''));

/** A page's text without its head, scripts, styles and tags. */
export const readingText = (html: string): string =>
  html
    .replace(/<head\b.*?<\/head>|<(script|style)\b.*?<\/\1>/gs, ' ')
    .replace(/<annotation\b.*?<\/annotation>/gs, ' ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

/** The address under which a file is served. */
export const addressOf = (file: string): string => `/${file.replace(/(^|\/)index\.html$/, '$1')}`;
