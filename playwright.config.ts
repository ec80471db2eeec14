import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from '@playwright/test';

// The browser unpacks itself here; a folder shared with another version would be taken for its own.
const unpacked = join(import.meta.dirname, 'node_modules/.cache/chromium-153');
process.env['TMPDIR'] = unpacked;
mkdirSync(unpacked, { recursive: true });
const { default: chromium, inflate, setupLambdaEnvironment } = await import('@sparticuz/chromium');
const executablePath = process.env['CHROMIUM_PATH'] ?? (await chromium.executablePath());
// Its own fonts, whatever the machine has: with none at all the browser stops at the first web font.
const fonts = join(unpacked, 'own-fonts.conf');
writeFileSync(fonts, `<fontconfig><dir>${unpacked}/fonts</dir><cachedir>${unpacked}/fonts-cache</cachedir></fontconfig>`);
process.env['FONTCONFIG_FILE'] = fonts;
if (spawnSync(executablePath, ['--version']).status !== 0) {
  // A bare machine lacks system libraries that the package brings along.
  await inflate(join(import.meta.dirname, 'node_modules/@sparticuz/chromium/bin/al2023.tar.br'));
  setupLambdaEnvironment(join(unpacked, 'al2023/lib'));
}

// Two runs on one machine need two ports.
const port = Number(process.env['HOLDWATER_TEST_PORT'] ?? 4499);

export default defineConfig({
  testDir: 'tests/browser',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  // The longest pages take their time on a busy machine.
  timeout: 90_000,
  reporter: [['list'], ['json', { outputFile: 'node_modules/.cache/tests/browser.json' }]],
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    launchOptions: {
      executablePath,
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
    },
  },
  webServer: {
    command: `${process.execPath} tests/browser/serveDist.ts ${port}`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    stdout: 'ignore',
  },
});
