import { defineConfig } from 'vitest/config';

export default defineConfig({
  // A list of faults is told whole, not as `[ Array(1) ]`.
  test: { include: ['tests/**/*.test.{ts,tsx}'], exclude: ['tests/browser/**', 'node_modules/**'], chaiConfig: { truncateThreshold: 2000 } },
});
