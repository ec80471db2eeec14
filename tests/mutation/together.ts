import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../support/files.ts';

/** The tests of one folder of code as one file, those first that tell most: the first that fails ends the run of a mutant. */
const [layer, name] = (process.env['MUTATED'] ?? '').split('/');
const tests =
  layer === 'catalog'
    ? ['catalog/frozen', `catalog/${name}`, 'catalog/options', 'catalog/definitions', 'catalog/told']
    : [
        'math/checks',
        ...readdirSync(join(root, 'tests/math')).flatMap((file) => (file.startsWith(`${name}.`) ? [`math/${file.replace('.test.ts', '')}`] : [])),
        'math/docstrings',
        'math/ranges',
      ];
for (const path of tests.map((test) => join(root, 'tests', `${test}.test.ts`))) if (existsSync(path)) await import(path);
