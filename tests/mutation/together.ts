import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../support/files.ts';

/**
 * The tests of one folder of code as one file, so that each mutant needs one worker and loads the code once. The quick ones first (`MUTATED_BY=quick`);
 * what they do not notice is tried by the others (`slow`), and what is worked out while a module loads by all of them.
 */
const [layer = 'math', name] = (process.env['MUTATED'] ?? '').split('/');
const by = process.env['MUTATED_BY'] ?? 'all';
const tests: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  math: { quick: ['math/checks', `math/${name}.properties`, `math/${name}.openData`], slow: ['math/docstrings', 'math/ranges'] },
  catalog: { quick: ['catalog/frozen', `catalog/${name}`, 'catalog/options', 'catalog/definitions'], slow: [] },
};
const wanted = Object.entries(tests[layer] ?? {}).flatMap(([key, list]) => (by === 'all' || by === key ? list : []));
for (const path of wanted.map((test) => join(root, 'tests', `${test}.test.ts`))) if (existsSync(path)) await import(path);
