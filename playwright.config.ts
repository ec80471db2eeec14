import { defineConfig } from '@playwright/test';
import { launchOptions } from './chromium.ts';

// Two runs on one machine need two ports.
const port = Number(process.env['HOLDWATER_TEST_PORT'] ?? 4499);

export default defineConfig({
  testDir: 'tests/browser',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  // The longest pages take their time on a busy machine.
  timeout: 90_000,
  // One late answer of a busy machine among hundreds of tests is no fault; what passed only at the second try is named by `tests/support/tally.ts`.
  retries: 1,
  reporter: [['list'], ['json', { outputFile: 'node_modules/.cache/tests/browser.json' }]],
  // A worker that fetches the whole copy in each test took half of all the time.
  use: { baseURL: `http://127.0.0.1:${port}`, launchOptions, serviceWorkers: 'block' },
  webServer: {
    command: `${process.execPath} tests/browser/serveDist.ts ${port}`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    stdout: 'ignore',
  },
});
