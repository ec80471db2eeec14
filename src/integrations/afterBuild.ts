import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import packageData from '../../package.json' with { type: 'json' };
import { builtDay } from '../site/builtDay.ts';
import { builtFiles, parsedPages } from './builtFiles.ts';
import { writeCopy } from './copy/writeCopy.ts';
import { dropUnused } from './dropUnused.ts';
import { indexPages } from './indexPages.ts';
import { officeForBuild, putOffice } from './officeFile.ts';
import { writePortable } from './portable/writePortable.ts';
import { putHandbook } from './putHandbook.ts';
import { type namesShipped, unlike } from './shipped.ts';
import { subsetFonts } from './subsetFonts.ts';

/** A build for a folder of a server, or into another place, is for that alone. */
const isForFolder = (): boolean => (process.env['HOLDWATER_BASE'] ?? '/') === '/' && process.env['HOLDWATER_OUT'] === undefined;

/** What can only be done once every page is written. The order matters: the copy for the phone holds all that the steps before it leave. */
export const afterBuild = ({ ownersOf }: Pick<ReturnType<typeof namesShipped>, 'ownersOf'>): AstroIntegration => ({
  name: 'holdwater-after-build',
  hooks: {
    // Before anything is built: a wrong file stops it at once.
    'astro:build:start': () => void officeForBuild(),
    'astro:build:done': async ({ dir, logger }) => {
      const root = fileURLToPath(dir);
      putOffice(root, officeForBuild());
      putHandbook(root);
      const unused = dropUnused(root);
      // Before fonts get names of their own.
      const unnamed = unlike(ownersOf(builtFiles(root)));
      if (unnamed.length > 0) throw new Error(unnamed.join('\n'));
      const pages = parsedPages(root);
      await subsetFonts(root, pages);
      const entries = indexPages(root, pages);
      const { core, whole, packs } = writeCopy(root);
      logger.info(`${unused.length} unused files dropped, ${entries} pages and sources indexed`);
      logger.info(`copy for the phone: ${packs} packs, ${Math.round(core.bytes / 1000)} kB first, ${Math.round(whole.bytes / 1000)} kB in all`);
      if (isForFolder()) {
        const published = process.env['HOLDWATER_SITE']?.replace(/\/?$/, '/');
        const { files, zipBytes } = await writePortable(root, join(root, '../portable'), { day: builtDay, version: packageData.version, published });
        logger.info(`portable/ holds ${files} files, portable.zip ${Math.round(zipBytes / 1000)} kB`);
      }
    },
  },
});
