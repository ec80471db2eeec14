import { chmodSync, copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type HTMLElement, parse } from 'node-html-parser';
import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import { builtFiles, readText } from '../builtFiles.ts';
import { isLeftOut, relativeInSheet } from './addresses.ts';
import { chunksFrom } from './chunks.ts';
import { entriesOf, runtimeFile, sheetFile, toFolderPage } from './pages.ts';
import { zipFolder } from './zipFolder.ts';

const beside = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
/** What the folder is called once the zip is extracted. */
const folderName = 'holdwater';

export interface PortableOptions {
  /** The folder of the server that the site was built for, with a stroke at its end; `/` for none. */
  readonly base: string;
  /** The day of the build, `2026-11-29`. */
  readonly day: string;
  readonly version: string;
  /** Where the same pages can be had by anybody, if that is known. */
  readonly published: string | undefined;
}
export interface Portable {
  readonly files: number;
  readonly zip: Uint8Array;
}

/** Data that pages fetch where there is a server. */
const isFetched = (file: string): boolean => /^search\/.*\.json$|^local\/fields\.json$/.test(file);
/** Pictures of the whole for a device’s home screen, which a page on a disk cannot be put on. */
const isIcon = (file: string): boolean => /^icon-\d+\.png$/.test(file);

/** What stands in `noscript` is a part of the page, with links of its own. */
const parsed = (html: string): HTMLElement => parse(html, { comment: true, blockTextElements: { script: true, style: true } });

/** As the system that most of these are opened on ends a line. */
const withCarriageReturns = (text: string): string => text.replaceAll('\n', '\r\n');

function write(root: string, file: string, text: string): void {
  mkdirSync(dirname(join(root, file)), { recursive: true });
  writeFileSync(join(root, file), text);
}

/**
 * Makes of a built site a folder that opens from a disk, and a zip of that folder.
 * @param root where the built site is
 * @param to the folder to make; what was there before goes
 * @throws Error where a page or a script holds what the folder could not do
 */
export async function writePortable(root: string, to: string, { base, day, version, published }: PortableOptions): Promise<Portable> {
  rmSync(to, { recursive: true, force: true });
  const files = builtFiles(root).filter((file) => !isLeftOut(file) && !isIcon(file));
  const pages = new Map(files.filter((file) => file.endsWith('.html')).map((file) => [file, parsed(readText(root, file))] as const));
  const chunks = await chunksFrom(new Set([...pages.values()].flatMap((page) => entriesOf(page, base))), (file) => readText(root, file), base);
  const edition = { day: printDay(dayOf(day) ?? Number.NaN), version };
  for (const file of files) {
    const page = pages.get(file);
    if (page) write(to, file, toFolderPage(page, file, { base, chunks, edition, published }));
    else if (isFetched(file)) write(to, `${file}.js`, `holdwaterFolder.give(${JSON.stringify(file)},${readText(root, file)});\n`);
    else if (file.endsWith('.css')) write(to, file, relativeInSheet(readText(root, file), file, base));
    // Modules come below, as chunks; those that only a worker runs stay behind.
    else if (!/^_astro\/.*\.js$/.test(file)) {
      mkdirSync(dirname(join(to, file)), { recursive: true });
      copyFileSync(join(root, file), join(to, file));
    }
  }
  for (const [file, { code }] of chunks) write(to, file, code);
  const imports = Object.fromEntries([...chunks].flatMap(([file, chunk]) => (chunk.imports.length > 0 ? [[file, chunk.imports]] : [])));
  write(
    to,
    runtimeFile,
    readFileSync(beside('runtime.js'), 'utf8').replace('IMPORTS', () => JSON.stringify(imports)),
  );
  copyFileSync(beside('folder.css'), join(to, sheetFile));
  for (const starter of builtFiles(beside('starters'))) {
    const text = readText(beside('starters'), starter);
    write(to, starter, starter.endsWith('.bat') ? withCarriageReturns(text) : text);
    if (!starter.endsWith('.bat')) chmodSync(join(to, starter), 0o755);
  }
  const readme = readFileSync(beside('README.template.txt'), 'utf8');
  write(to, 'README.txt', withCarriageReturns(readme.replaceAll('DAY', () => edition.day).replaceAll('VERSION', () => version)));
  return { files: builtFiles(to).length, zip: zipFolder(to, folderName, day) };
}
