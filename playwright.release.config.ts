import { defineConfig } from '@playwright/test';
import base from './playwright.config.ts';

// What takes too long for every test run: walks over everything, installs over a bad line, a second browser, quality of every page.
export default defineConfig(base, {
  testDir: 'tests',
  timeout: 600_000,
  projects: [
    { name: 'release', testMatch: 'release/**/*.spec.ts', use: { serviceWorkers: 'allow' } },
    { name: 'pages', testMatch: 'browser/pages.spec.ts' },
    { name: 'long', testMatch: 'browser/**/*.spec.ts', grep: /@long/ },
  ],
  reporter: [['list'], ['json', { outputFile: 'node_modules/.cache/tests/release.json' }]],
});
