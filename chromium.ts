import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

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

/** How the browser that comes with the packages is started: for tests, for pictures, for the book. */
export const launchOptions = {
  executablePath,
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
};
