import { spawnSync } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { found, keep, kept, type Mutant, reportOf } from '../mutation/report.ts';
import { root } from '../support/files.ts';

/**
 * `npm run mutate -- math/hay` or `catalog/packed-soil`: turns comparisons, conditions and arithmetic of one folder one by one and tells which of them
 * no test notices. It leaves numbers as they are; `npm run plant` is for those. `--again` tries only what the last run left; `--tell` only tells it.
 * `catalog/hay-value asks/hay` turns a file that several calculators ask from, by the tests of one. `--apart` gives each mutant a worker of Vitest, which takes ten times as long.
 * Its packages are fetched when it first runs: nothing else needs them.
 */
const { values: given, positionals } = parseArgs({
  allowPositionals: true,
  options: { again: { type: 'boolean', default: false }, apart: { type: 'boolean', default: false }, tell: { type: 'boolean', default: false } },
});
const [area = '', ask] = positionals;
const [layer, name] = area.split('/');
if (!existsSync(join(root, 'calculators', area)) || name === undefined || (layer !== 'math' && layer !== 'catalog')) {
  console.error('npm run mutate -- math/<topic> or catalog/<slug>');
  process.exit(2);
}
const subject = ask ?? area;
// In the catalog, what speaks: steps are held by the law that draws every formula as it computes.
const files =
  ask !== undefined
    ? [`calculators/${ask}.ts`]
    : layer === 'math'
      ? [`calculators/${area}/*.ts`, `!calculators/${area}/*.cases.ts`]
      : ['cautions', 'refusals', 'compute', 'drawnYear', 'definition'].map((file) => `calculators/${area}/${file}.ts`);

const run = (command: string, args: readonly string[], env: Readonly<Record<string, string>> = {}): number =>
  spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } }).status ?? 1;
/** What the tests say of these places. */
function tried(places: readonly string[]): readonly Mutant[] {
  if (places.length === 0) return [];
  rmSync(join(root, reportOf(area)), { force: true });
  run('npx', ['stryker', 'run', 'tests/mutation/stryker.config.ts', '--mutate', places.join(',')], {
    MUTATED: area,
    MUTATED_APART: given.apart ? 'yes' : 'no',
    LAWS_RUNS: '30',
  });
  return found(area);
}
const placesOf = (mutants: readonly Mutant[]): readonly string[] => [...new Set(mutants.map(({ path, range }) => `${path}:${range}`))];
const keyOf = ({ path, range, is }: Mutant): string => `${path} ${range} ${is}`;
const isNoticed = ({ status }: Mutant): boolean => status === 'Killed' || status === 'Timeout';
const notNoticed = (mutants: readonly Mutant[]): readonly Mutant[] => mutants.filter((mutant) => !isNoticed(mutant));
/** What a test noticed stays noticed; a place that is tried again says how it stands now. */
const joined = (...lists: readonly (readonly Mutant[])[]): readonly Mutant[] => {
  const all = new Map<string, Mutant>();
  for (const mutant of lists.flat()) {
    const before = all.get(keyOf(mutant));
    if (!before || !isNoticed(before)) all.set(keyOf(mutant), mutant);
  }
  return [...all.values()];
};

if (!given.tell) {
  if (!existsSync(join(root, 'node_modules/@stryker-mutator/core')))
    run('npm', ['install', '--no-save', '--no-package-lock', '@stryker-mutator/core@10.1.1', '@stryker-mutator/vitest-runner@10.1.1']);
  const before = given.again ? kept(subject) : [];
  keep(subject, joined(before, tried(given.again ? placesOf(notNoticed(before)) : files)));
}
const all = kept(subject);
const left = notNoticed(all);
for (const { path, range, kind, was, is, status } of left) console.log(`${path}:${range} ${status} ${kind}: ${was} → ${is}`);
console.log(`${subject}: ${all.length} turned, ${all.length - left.length} noticed, ${left.length} not`);
