import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import packageData from '../../package.json' with { type: 'json' };
import { megabytes } from '../copy/copyWords.ts';
import { builtDay } from '../site/builtDay.ts';
import { builtFiles, parsedPages } from './builtFiles.ts';
import { writeCopy } from './copy/writeCopy.ts';
import { dropUnused } from './dropUnused.ts';
import type { namesAhead } from './fetchAhead.ts';
import { indexPages } from './indexPages.ts';
import { officeForBuild, putOffice } from './officeFile.ts';
import { offerZip } from './portable/offerZip.ts';
import { writePortable } from './portable/writePortable.ts';
import { putHandbook } from './putHandbook.ts';
import { type namesShipped, unlike } from './shipped.ts';
import { subsetFonts } from './subsetFonts.ts';

const base = (process.env['HOLDWATER_BASE'] ?? '/').replace(/\/?$/, '/');
/** Where anybody can open these pages, if that is known. */
const published = (): string | undefined => {
  const site = process.env['HOLDWATER_SITE'];
  return site === undefined ? undefined : new URL(base, site).href;
};

/** The build into `dist` leaves its folder to look at; one into another place leaves the zip alone. */
const folderFor = (root: string): string =>
  process.env['HOLDWATER_OUT'] === undefined ? join(root, '../portable') : mkdtempSync(join(tmpdir(), 'portable-'));

/** What can only be done once every page is written. The order matters: the copy for the phone holds all that the steps before it leave, the page that tells of the zip as well. */
interface Named {
  readonly shipped: Pick<ReturnType<typeof namesShipped>, 'ownersOf'>;
  readonly ahead: Pick<ReturnType<typeof namesAhead>, 'putInto'>;
}
export const afterBuild = ({ shipped, ahead }: Named): AstroIntegration => ({
  name: 'holdwater-after-build',
  hooks: {
    // Before anything is built: a wrong file stops it at once.
    'astro:build:start': () => void officeForBuild(),
    'astro:build:done': async ({ dir, logger }) => {
      const root = fileURLToPath(dir);
      putOffice(root, officeForBuild());
      putHandbook(root);
      ahead.putInto(root, base);
      const unused = dropUnused(root);
      // Before fonts get names of their own.
      const unnamed = unlike(shipped.ownersOf(builtFiles(root)));
      if (unnamed.length > 0) throw new Error(unnamed.join('\n'));
      const pages = parsedPages(root);
      await subsetFonts(root, pages);
      const entries = indexPages(root, pages);
      const folder = folderFor(root);
      const { files, zip } = await writePortable(root, folder, { base, day: builtDay, version: packageData.version, published: published() });
      if (process.env['HOLDWATER_OUT'] !== undefined) rmSync(folder, { recursive: true });
      offerZip(root, zip);
      const { core, whole, packs } = writeCopy(root);
      logger.info(`${unused.length} unused files dropped, ${entries} pages and sources indexed`);
      logger.info(`copy for the phone: ${packs} packs, ${megabytes(core.bytes)} first, ${megabytes(whole.bytes)} in all`);
      logger.info(`portable.zip: ${files} files, ${megabytes(zip.length)}`);
    },
  },
});
