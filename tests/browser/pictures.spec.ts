import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';
import { build } from 'vite';
import { faceCases, faceWidths } from '../support/faceCases.ts';
import { root } from '../support/files.ts';

test.use({ viewport: { width: 700, height: 844 } });

const styles = ['base', 'tokens', 'type', 'pictures', 'face-colors', 'face'].map((name) =>
  readFileSync(join(root, `src/styles/${name}.css`), 'utf8')
    .replace(/@import[^;]*;/g, '')
    .replace(/url\("@fontsource[^"]*"\)/g, 'url("/face.woff2")'),
);
const font = join(root, 'node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2');

const faceCount = Object.values(faceCases).flat().length * faceWidths.length;

let script = '';
test.beforeAll(async () => {
  const built = await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: { write: false, lib: { entry: join(root, 'tests/support/facesEntry.tsx'), formats: ['iife'], name: 'faces' } },
  });
  const [{ output }] = Array.isArray(built) ? built : [{ output: [] }];
  script = output?.map((chunk) => ('code' in chunk ? chunk.code : '')).join('\n') ?? '';
  expect(script).not.toBe('');
});

async function open(page: Page): Promise<void> {
  await page.route('**/faces.js', (route) => route.fulfill({ contentType: 'text/javascript', body: script }));
  await page.route('**/face.woff2', (route) => route.fulfill({ contentType: 'font/woff2', path: font }));
  await page.route('**/faces/', (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: `<!doctype html><html lang="en"><meta charset="utf-8"><title>Faces</title><style>${styles.join('\n')}</style><div id="faces"></div><script src="/faces.js"></script>`,
    }),
  );
  const errors: string[] = [];
  page.on('pageerror', ({ message }) => errors.push(message));
  await page.goto('/faces/');
  await page.evaluate(() => document.fonts.ready);
  expect(errors).toEqual([]);
  await expect(page.locator('[data-face] svg[role="img"]')).toHaveCount(faceCount);
}
interface Word {
  readonly face: string;
  readonly words: string;
  readonly fontPx: number;
  readonly width: number;
  readonly taken: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly frame: { readonly width: number; readonly height: number };
}
/** Every text with its true box, in the picture's own pixels, and how wide the layout took it to be. */
const wordsOf = (page: Page): Promise<readonly Word[]> =>
  page.evaluate(() => {
    const { boxOf } = globalThis as unknown as { boxOf: (label: object) => { left: number; right: number } };
    return [...document.querySelectorAll<HTMLElement>('[data-face]')].flatMap((face) => {
      const svg = face.querySelector<SVGSVGElement>('svg[role="img"]');
      return [...(svg?.querySelectorAll<SVGTextElement>('text') ?? [])].map((text) => {
        const size = Number.parseFloat(getComputedStyle(text).fontSize);
        const box = text.getBBox();
        const taken = boxOf({ words: text.textContent, size, x: 0, y: 0, anchor: 'start' });
        // Letters, without the leading of the line.
        const base = Number(text.getAttribute('y'));
        return {
          ...{ face: face.dataset['face'] ?? '', words: text.textContent ?? '', fontPx: size, width: text.getComputedTextLength() },
          ...{ taken: taken.right - taken.left, left: box.x, right: box.x + box.width, top: base - size * 0.72, bottom: base + size * 0.2 },
          frame: { width: svg?.viewBox.baseVal.width ?? 0, height: svg?.viewBox.baseVal.height ?? 0 },
        };
      });
    });
  });

test('no two texts of a face lie over each other, none leaves it, none is small, at every width', async ({ page }) => {
  await open(page);
  const words = await wordsOf(page);
  expect(words.length).toBeGreaterThan(900);
  const faces = Map.groupBy(words, ({ face }) => face);
  expect(faces.size).toBeGreaterThan(120);
  const faults: string[] = [];
  for (const [face, all] of faces)
    for (const [index, one] of all.entries()) {
      if (one.left < 0 || one.right > one.frame.width || one.top < 0 || one.bottom > one.frame.height)
        faults.push(`${face}: ${one.words} leaves the picture`);
      if (one.fontPx < 15) faults.push(`${face}: ${one.words} at ${one.fontPx} px`);
      for (const other of all.slice(index + 1))
        if (one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom)
          faults.push(`${face}: ${one.words} over ${other.words}`);
    }
  expect(faults).toEqual([]);
});

test('the table of letters is no narrower than the font, and not much wider', async ({ page }) => {
  await open(page);
  for (const { words, width, taken } of await wordsOf(page)) {
    expect.soft(width, words).toBeLessThanOrEqual(taken + 0.5);
    expect.soft(taken, words).toBeLessThanOrEqual(width * 1.16 + 4);
  }
});

test('a face is as wide as it was drawn for, and the page does not scroll sideways', async ({ page }) => {
  await open(page);
  const widths = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-face]')].map((face) => [
      face.dataset['face'],
      face.querySelector('svg[role="img"]')?.getBoundingClientRect().width,
      face.clientWidth,
      face.scrollWidth,
    ]),
  );
  for (const [face, drawn, given, needs] of widths) {
    expect.soft(drawn, String(face)).toBe(given);
    expect.soft(needs, String(face)).toBe(given);
  }
});

const subjects = ['Water', 'Tray', 'Lying', 'Layers', 'Counts', 'Hard', 'Ring', 'Loss', 'Pond'];
test('the code of a face is 8 KB at the most, without what every calculator has', async () => {
  for (const subject of subjects) {
    const built = await build({
      root,
      configFile: false,
      logLevel: 'error',
      build: {
        write: false,
        rollupOptions: {
          input: join(root, `calculators/ui/pictures/face/read${subject}.tsx`),
          preserveEntrySignatures: 'strict',
          external: (id) => /^preact|\/(?:kit|units)\//.test(id),
        },
      },
    });
    const output = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
    const code = output.map((chunk) => ('code' in chunk ? chunk.code : '')).join('');
    expect(code, subject).toContain('picture face');
    expect.soft(gzipSync(code, { level: 9 }).length, subject).toBeLessThanOrEqual(8 * 1024);
  }
});
