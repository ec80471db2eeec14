import { defineConfig } from '@playwright/test';
import base from './playwright.config.ts';

process.env['HOLDWATER_WALK'] = 'all';

// What takes too long for every test run: walks over everything, installs over a bad line, a second browser, quality of every page.
export default defineConfig(base, {
  testDir: 'tests',
  testMatch: ['release/**/*.spec.ts', 'browser/{pages,paper}.spec.ts'],
  timeout: 600_000,
  reporter: [['list'], ['json', { outputFile: 'node_modules/.cache/tests/release.json' }]],
});
