import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../support/files.ts';

/**
 * `npm run mutate -- math/hay` or `catalog/packed-soil`: turns comparisons, conditions and arithmetic of one folder one by one and tells which of them
 * no test notices. It leaves numbers as they are; `npm run plant` is for those. Its packages are fetched when it first runs: nothing else needs them.
 */
const [area = ''] = process.argv.slice(2);
const [layer, name] = area.split('/');
if (!existsSync(join(root, 'calculators', area)) || name === undefined || (layer !== 'math' && layer !== 'catalog')) {
  console.error('npm run mutate -- math/<topic> or catalog/<slug>');
  process.exit(2);
}
const run = (command: string, args: readonly string[]): number =>
  spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, MUTATED: area, LAWS_RUNS: '30' } }).status ?? 1;

if (!existsSync(join(root, 'node_modules/@stryker-mutator/core')))
  run('npm', ['install', '--no-save', '--no-package-lock', '@stryker-mutator/core@10.1.1', '@stryker-mutator/vitest-runner@10.1.1']);
// In the catalog, what speaks: steps are held by the law that draws every formula as it computes.
const files =
  layer === 'math'
    ? [`calculators/${area}/*.ts`, `!calculators/${area}/*.cases.ts`]
    : ['cautions', 'refusals', 'compute', 'definition'].map((file) => `calculators/${area}/${file}.ts`);
process.exit(
  run('npx', [
    'stryker',
    'run',
    'tests/mutation/stryker.config.json',
    '--mutate',
    files.join(','),
    ...(layer === 'catalog' ? ['--ignoreStatic'] : []),
  ]),
);
