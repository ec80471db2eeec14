import { defineConfig } from 'vitest/config';

/** These draw, take files in as a build does, or watch a function of another file. */
const throughBuild = [
  'tests/**/*.test.tsx',
  'tests/catalog/occurs.test.ts',
  'tests/content/checks.test.ts',
  'tests/place/demoVisits.test.ts',
  'tests/season/{behavior,fit}.test.ts',
  'tests/ui/{answer,between,results}.test.ts',
];
const site = ['tests/site/**/*.test.ts'];

export default defineConfig({
  test: {
    // Left to itself it keeps one core free, which is half of two.
    maxWorkers: '100%',
    // The laws run the season’s long record many times, and nobody measures by them.
    testTimeout: 120_000,
    // A list of faults is told whole, not as `[ Array(1) ]`.
    chaiConfig: { truncateThreshold: 2000 },
    projects: [
      // As Node itself loads them: the build's loader looks up each function of another file at each call, which takes the season's laws twice the time.
      {
        extends: true,
        test: {
          name: 'plain',
          include: ['tests/**/*.test.ts'],
          exclude: ['node_modules/**', ...throughBuild, ...site],
          experimental: { viteModuleRunner: false },
        },
      },
      { extends: true, test: { name: 'through the build', include: throughBuild } },
      // What was built.
      { extends: true, test: { name: 'site', include: site } },
    ],
  },
});
