import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { calculators, type FrozenLink, fileOf } from '../support/catalog.ts';
import { root } from '../support/files.ts';
import { drawnBy, formsBy, isOneSided, pairsBy, toldBy, turnedBy } from '../support/told.ts';

// Part of `npm run freeze`: keeps what new calculators tell, and writes anew those that are named: `npm run freeze -- rain-on-ground`, or `all`.
const named = process.argv.slice(2);
const written: string[] = [];
for (const calculator of calculators) {
  const { slug } = calculator;
  const path = join(root, fileOf(slug, 'told.json'));
  if (existsSync(path) && !named.includes(slug) && !named.includes('all')) continue;
  const frozen: readonly FrozenLink[] = JSON.parse(readFileSync(join(root, fileOf(slug, 'frozen.json')), 'utf8'));
  const told = {
    links: Object.fromEntries(frozen.filter(isOneSided).map(({ query }) => [query, toldBy(calculator, query)])),
    turns: turnedBy(calculator),
    pairs: pairsBy(calculator),
    forms: formsBy(calculator),
    draws: drawnBy(calculator),
  };
  writeFileSync(path, `${JSON.stringify(told, null, 2)}\n`);
  written.push(path);
}
// As the formatter has it, so that its difference is what moved.
if (written.length > 0) spawnSync('npx', ['biome', 'format', '--write', ...written], { cwd: root, stdio: 'inherit' });
