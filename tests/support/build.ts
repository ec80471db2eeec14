import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { root } from './files.ts';

/** The test runner's own variables (a base address among them) must not reach the build. */
const inherited = Object.fromEntries(['PATH', 'HOME', 'TMPDIR', 'ASTRO_TELEMETRY_DISABLED'].map((name) => [name, process.env[name] ?? '']));

/**
 * Builds the site into a folder of the project and returns where it lies.
 * @throws Error with what the build said, where it stops
 */
export function build(folder: string, variables: Readonly<Record<string, string>> = {}): string {
  execFileSync(process.execPath, [join(root, 'node_modules/astro/bin/astro.mjs'), 'build'], {
    cwd: root,
    env: { ...inherited, HOLDWATER_OUT: folder, ...variables },
    stdio: 'pipe',
  });
  return join(root, folder);
}
