import { defineConfig } from 'vitest/config';

// A worker of its own for each mutant: without, constants that are computed while a module loads keep the value of the mutant before.
export default defineConfig({ test: { include: ['tests/mutation/together.ts'], isolate: true, fileParallelism: false, testTimeout: 30_000 } });
