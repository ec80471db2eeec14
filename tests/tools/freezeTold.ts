import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { calculators, type FrozenLink, fileOf } from '../support/catalog.ts';
import { root } from '../support/files.ts';
import { drawnBy, formsBy, isOneSided, pairsBy, toldBy, turnedBy } from '../support/told.ts';

// Part of `npm run freeze`: keeps what new calculators tell, and writes anew those that are named: `npm run freeze -- rain-on-ground`, or `all`.
const named = process.argv.slice(2);
const path = join(root, 'tests/catalog/told.json');
const kept: Record<string, unknown> = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : {};
for (const calculator of calculators) {
  const { slug } = calculator;
  if (slug in kept && !named.includes(slug) && !named.includes('all')) continue;
  const frozen: readonly FrozenLink[] = JSON.parse(readFileSync(join(root, fileOf(slug, 'frozen.json')), 'utf8'));
  kept[slug] = {
    links: Object.fromEntries(frozen.filter(isOneSided).map(({ query }) => [query, toldBy(calculator, query)])),
    turns: turnedBy(calculator),
    pairs: pairsBy(calculator),
    forms: formsBy(calculator),
    draws: drawnBy(calculator),
  };
}
const inOrder = Object.fromEntries(Object.entries(kept).sort(([one], [other]) => one.localeCompare(other)));
writeFileSync(path, `${JSON.stringify(inOrder, null, 2)}\n`);
// As the formatter has it, so that its difference is what moved.
spawnSync('npx', ['biome', 'format', '--write', path], { cwd: root, stdio: 'inherit' });
