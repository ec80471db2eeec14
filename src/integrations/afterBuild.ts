import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { parsedPages } from './builtFiles.ts';
import { dropUnused } from './dropUnused.ts';
import { indexPages } from './indexPages.ts';
import { officeForBuild, putOffice } from './officeFile.ts';
import { subsetFonts } from './subsetFonts.ts';
import { writeWorker } from './writeWorker.ts';

/** What can only be done once every page is written. The order matters: the worker lists all that the steps before it leave. */
export const afterBuild = (): AstroIntegration => ({
  name: 'holdwater-after-build',
  hooks: {
    // Before anything is built: a wrong file stops it at once.
    'astro:build:start': () => void officeForBuild(),
    'astro:build:done': async ({ dir, logger }) => {
      const root = fileURLToPath(dir);
      putOffice(root, officeForBuild());
      const unused = dropUnused(root);
      const pages = parsedPages(root);
      await subsetFonts(root, pages);
      const entries = indexPages(root, pages);
      const keptBytes = writeWorker(root);
      logger.info(`${unused.length} unused files dropped, ${entries} pages and sources indexed, ${Math.round(keptBytes / 1000)} kB kept offline`);
    },
  },
});
