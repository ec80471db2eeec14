import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    // Left to itself it keeps one core free, which is half of two.
    maxWorkers: '100%',
    // The laws run the season’s long record many times, and nobody measures by them.
    testTimeout: 120_000,
    // A list of faults is told whole, not as `[ Array(1) ]`.
    chaiConfig: { truncateThreshold: 2000 },
  },
});
