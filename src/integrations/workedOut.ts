import { execFile } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import type { Plugin } from 'vite';

/** Modules whose exports are numbers that come of tables alone. */
const ofTables = /\/src\/place\/offer\/likelyPercents\.ts$/;

/** Puts in what the exports of a module come to, so that browsers fetch the numbers and none of the tables. Run by Node itself, as `chunkEach.ts` does. */
export const workedOut: Plugin = {
  name: 'worked-out',
  apply: 'build',
  applyToEnvironment: ({ name }) => name === 'client',
  async load(id) {
    if (!ofTables.test(id)) return undefined;
    const print = `import * as all from ${JSON.stringify(pathToFileURL(id).href)}; process.stdout.write(JSON.stringify(all));`;
    const { stdout } = await promisify(execFile)(process.execPath, ['--input-type=module', '--eval', print]);
    const values: Readonly<Record<string, unknown>> = JSON.parse(stdout);
    return Object.entries(values)
      .map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`)
      .join('\n');
  },
};
