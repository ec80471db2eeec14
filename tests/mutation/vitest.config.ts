import { defineConfig } from 'vitest/config';

// Each file by itself: without isolation, constants that are computed while a module loads keep the value of the mutant before.
const [layer, name] = (process.env['MUTATED'] ?? '').split('/');
const catalog = ['tests/catalog/definitions.test.ts', 'tests/catalog/frozen.test.ts', `tests/catalog/${name}.test.ts`];

export default defineConfig({
  test: {
    include:
      layer === 'catalog'
        ? catalog
        : [`tests/math/${name}.properties.test.ts`, 'tests/math/checks.test.ts', 'tests/math/docstrings.test.ts', 'tests/math/ranges.test.ts'],
  },
});
