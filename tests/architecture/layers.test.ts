import { readFileSync } from 'node:fs';
import { dirname, extname, join, posix } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { filesBelow, root } from '../support/files.ts';

/** Rooms of what a person keeps. The rest of `src/place` draws it, and is a part of the site. */
const placeRooms = ['place-model', 'place-offer', 'place-record', 'place-store', 'place-files', 'place-visit'] as const;

/** What each layer may import, besides itself. A layer that stands in no list of another is out of its reach. */
const may: Readonly<Record<string, readonly string[]>> = {
  math: ['tables'],
  tables: [],
  units: [],
  kit: ['units'],
  asks: ['math', 'tables', 'kit', 'units'],
  catalog: ['math', 'tables', 'kit', 'units', 'asks', 'season'],
  season: ['math', 'tables'],
  ui: ['kit', 'units'],
  'place-model': ['units'],
  'place-offer': ['place-model', 'place-record', 'math', 'tables', 'kit', 'units'],
  'place-record': ['place-model', 'math', 'tables', 'kit', 'units'],
  'place-store': ['place-model'],
  'place-files': ['place-model', 'place-store'],
  'place-visit': ['place-model', 'math', 'kit', 'units'],
  'office-model': ['units', 'content'],
  src: ['math', 'tables', 'kit', 'units', 'catalog', 'season', 'ui', 'content', 'office-model', ...placeRooms],
  content: ['math', 'tables', 'kit', 'units', 'catalog', 'season', 'ui', 'src'],
  book: ['src'],
  tests: ['math', 'tables', 'kit', 'units', 'asks', 'catalog', 'season', 'ui', 'src', 'content', 'office-model', 'book', ...placeRooms],
};
/** General libraries that a room of the place may use; the others use none. */
const mayUse: Readonly<Record<string, readonly string[]>> = {
  'place-model': ['valibot'],
  'place-offer': [],
  'place-record': ['d3-dsv'],
  'place-store': ['idb'],
  'place-files': ['valibot', 'fflate'],
  'place-visit': ['mdast', 'mdast-util-to-markdown'],
  'office-model': ['valibot'],
};
/** The layer of a path: `kit`, or `catalog/storm-runoff`, since one calculator may not lean on another. */
function layerOf(path: string): string | undefined {
  const inside = /^calculators\/(math|tables|units|kit|asks|season|ui|catalog\/[^/]+)\//.exec(path)?.[1];
  if (inside !== undefined) return inside;
  const room = /^src\/place\/(model|offer|record|store|files|visit)\//.exec(path)?.[1];
  if (room !== undefined) return `place-${room}`;
  if (path.startsWith('src/office/model/')) return 'office-model';
  if (/^calculators\/command(?:\.ts$|\/)/.test(path)) return 'src';
  return /^(src|content|book|tests)\//.exec(path)?.[1];
}
const kindOf = (layer: string): string => layer.split('/')[0] ?? layer;

/** The code in a file: of a page its front matter, scripts and script sources; of a text its import and export blocks. */
function codeOf(path: string, text: string): string {
  if (extname(path) === '.mdx') return (text.match(/^(?:import|export)\s[\s\S]*?(?=\n\s*\n|$(?![\s\S]))/gm) ?? []).join('\n;\n');
  if (extname(path) !== '.astro') return text;
  return [
    /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '',
    ...[...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((found) => found[1] ?? ''),
    ...[...text.matchAll(/<script[^>]*\ssrc="(\.[^"]+)"/g)].map((found) => `import "${found[1]}"`),
    // Imports inside the markup: {await import('…')}.
    ...[...text.matchAll(/\bimport\(\s*['"]([^'"]+)['"]/g)].map((found) => `import "${found[1]}"`),
  ].join('\n;\n');
}
/** Patterns of `import.meta.glob(…)`, which draws in files as an import does. */
function globsIn(node: ts.Node): readonly string[] {
  const inside = (ts.isCallExpression(node) && node.expression.getText() === 'import.meta.glob' ? node.arguments.slice(0, 1) : []).flatMap(
    (patterns) => (ts.isArrayLiteralExpression(patterns) ? [...patterns.elements] : [patterns]).filter(ts.isStringLiteralLike),
  );
  const found = inside.map(({ text }) => text.replace(/^!/, ''));
  ts.forEachChild(node, (child) => {
    found.push(...globsIn(child));
  });
  return found;
}
function importsOf(path: string, text: string): readonly string[] {
  const code = codeOf(path, text);
  const globs = code.includes('import.meta.glob') ? globsIn(ts.createSourceFile(`${path}.tsx`, code, ts.ScriptTarget.ESNext, true)) : [];
  return [...ts.preProcessFile(code, true, true).importedFiles.map((file) => file.fileName), ...globs];
}
function pathOf(from: string, specifier: string): string | undefined {
  if (specifier.startsWith('#calc/')) return posix.normalize(specifier.replace('#calc', 'calculators'));
  if (specifier.startsWith('/')) return specifier.slice(1);
  return specifier.startsWith('.') ? posix.normalize(posix.join(dirname(from), specifier)) : undefined;
}

function forbiddenIn(from: string, text: string): readonly string[] {
  const layer = layerOf(from);
  if (layer === undefined) return [];
  return importsOf(from, text).flatMap((specifier) => {
    const to = pathOf(from, specifier);
    if (to === undefined && mayUse[layer]?.includes(specifier) === false) return [`${from} may not use ${specifier}`];
    const target = to === undefined ? undefined : layerOf(to);
    if (target === undefined || target === layer || may[kindOf(layer)]?.includes(kindOf(target))) return [];
    return [`${from} may not import ${specifier}`];
  });
}

/** Files that import each other round in a ring, types too: each ring once, from its first file on. */
function ringsIn(importsOfFile: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const rings = new Set<string>();
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]): void => {
    const from = trail.indexOf(path);
    if (from >= 0) rings.add(trail.slice(from).toSorted().join(', '));
    if (from >= 0 || done.has(path)) return;
    for (const next of importsOfFile.get(path) ?? []) walk(next, [...trail, path]);
    done.add(path);
  };
  for (const path of importsOfFile.keys()) walk(path, []);
  return [...rings];
}

const files = ['calculators', 'src', 'content', 'book', 'tests'].flatMap((folder) => filesBelow(folder, /\.(?:ts|tsx|astro|mdx)$/));

it('lets each layer import only what stands below it', () => {
  expect(files.length).toBeGreaterThan(200);
  expect(files.flatMap((path) => forbiddenIn(path, readFileSync(join(root, path), 'utf8')))).toEqual([]);
});

it('has no files that import each other round in a ring', () => {
  const known = new Set(files);
  const found = files.map((path): readonly [string, readonly string[]] => [
    path,
    importsOf(path, readFileSync(join(root, path), 'utf8')).flatMap((specifier) => {
      const to = pathOf(path, specifier);
      return to !== undefined && known.has(to) ? [to] : [];
    }),
  ]);
  expect(ringsIn(new Map(found))).toEqual([]);
  expect(
    ringsIn(
      new Map([
        ['a', ['b']],
        ['b', ['c']],
        ['c', ['b']],
      ]),
    ),
  ).toEqual(['b, c']);
});

/** What a page fetches at once must not bring a person's store, their offers and their files: those come with `import()`. */
function broughtAlong(from: string, text: string): readonly string[] {
  if (/^(?:src\/place|src\/pages\/place|tests)\//.test(from) || !from.startsWith('src/')) return [];
  const code = codeOf(from, text);
  const file = ts.createSourceFile(`${from}.tsx`, code, ts.ScriptTarget.ESNext, true);
  return file.statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) return [];
    const isType = ts.isImportDeclaration(statement) ? statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword : statement.isTypeOnly;
    const named = statement.moduleSpecifier && ts.isStringLiteral(statement.moduleSpecifier) ? statement.moduleSpecifier.text : '';
    const room = layerOf(pathOf(from, named) ?? '');
    return !isType && room !== undefined && room.startsWith('place-') ? [`${from} brings ${named} along`] : [];
  });
}
it('fetches what a person keeps only on demand', () => {
  expect(files.flatMap((path) => broughtAlong(path, readFileSync(join(root, path), 'utf8')))).toEqual([]);
  expect(broughtAlong('src/scripts/a.ts', `import { openStore } from '../place/store/openStore.ts';`)).toHaveLength(1);
  expect(broughtAlong('src/scripts/a.ts', `export { openStore } from '../place/store/openStore.ts';`)).toHaveLength(1);
  expect(broughtAlong('src/components/a.astro', `<p />\n<script>import { b } from '../place/offer/fillTexts.ts';</script>`)).toHaveLength(1);
  expect(broughtAlong('src/scripts/a.ts', `import type { Store } from '../place/store/store.ts';`)).toEqual([]);
  expect(broughtAlong('src/scripts/a.ts', `const { openStore } = await import('../place/store/openStore.ts');`)).toEqual([]);
});

it('works out what a place offers, and reads what it holds, where there is no page and no storage', () => {
  const page = /\b(?:document|window|localStorage|sessionStorage|indexedDB|navigator|BroadcastChannel|fetch)\b(?=[.(])/;
  const pure = files.filter((path) => ['place-model', 'place-offer', 'place-record', 'place-files', 'place-visit'].includes(layerOf(path) ?? ''));
  expect(pure.length).toBeGreaterThan(15);
  expect(pure.filter((path) => page.test(readFileSync(join(root, path), 'utf8')))).toEqual([]);
  expect(page.test('const a = window.localStorage.getItem(b);')).toBe(true);
});

it('has a layer for every file of the calculators, and no drawing in the catalog', () => {
  expect(files.filter((path) => path.startsWith('calculators/') && layerOf(path) === undefined)).toEqual([]);
  expect(files.filter((path) => path.startsWith('calculators/catalog/') && path.endsWith('.tsx'))).toEqual([]);
});

it.each([
  ['calculators/math/runoff/a.ts', `import { b } from '../../kit/link.ts';`],
  ['calculators/math/runoff/a.ts', `import type { UnitName } from '../../units/units.ts';`],
  ['calculators/tables/a.ts', `import { b } from '../math/need.ts';`],
  ['calculators/units/a.ts', `export { b } from '../kit/read.ts';`],
  ['calculators/kit/a.ts', `const b = await import('../math/need.ts');`],
  ['calculators/kit/a.ts', `import definition from '../catalog/storm-runoff/definition.ts';`],
  ['calculators/catalog/a/definition.ts', `import { b } from '../b/compute.ts';`],
  ['calculators/catalog/a/definition.ts', `import { b } from '../../ui/Field.tsx';`],
  ['calculators/catalog/a/definition.ts', `const b = import.meta.glob('../../../content/local/*.json');`],
  ['calculators/catalog/a/definition.ts', `const b = import.meta.glob<{ c: (d: string) => void }>(['../b/*.ts', './x.ts']);`],
  ['calculators/season/a.ts', `import { b } from '../kit/state.ts';`],
  ['calculators/season/a.ts', `import { b } from '../asks/stock.ts';`],
  ['calculators/asks/a.ts', `import definition from '../catalog/storm-runoff/definition.ts';`],
  ['calculators/kit/a.ts', `import { b } from '../asks/stock.ts';`],
  ['calculators/ui/a.tsx', `import { b } from '../asks/stock.ts';`],
  ['calculators/ui/a.tsx', `import { b } from '../math/need.ts';`],
  ['calculators/ui/a.tsx', `type B = import('../catalog/b/definition.ts').B;`],
  ['calculators/command/a.ts', `import { b } from '../../tests/support/files.ts';`],
  ['src/pages/a.astro', `---\nimport { b } from '../../tests/support/files.ts';\n---\n<p />`],
  ['src/pages/a.astro', `<p />\n<script>import '../../tests/support/files.ts';</script>`],
  ['src/pages/a.astro', `<p />\n<script src="../../tests/support/files.ts"></script>`],
  ['src/a.ts', `const b = import.meta.glob('/tests/**/*.ts', { eager: true });`],
  ['src/a.ts', `import { b } from '#calc/../tests/support/files.ts';`],
  ['calculators/ui/a.tsx', `import { b } from '../../src/place/model/place.ts';`],
  ['calculators/kit/a.ts', `import type { Place } from '../../src/place/model/place.ts';`],
  ['src/place/model/a.ts', `import { b } from '../../../calculators/kit/offers.ts';`],
  ['src/place/model/a.ts', `import { openDB } from 'idb';`],
  ['src/place/offer/a.ts', `import { b } from '../store/openStore.ts';`],
  ['src/place/offer/a.ts', `import definition from '../../../calculators/catalog/storm-runoff/definition.ts';`],
  ['src/place/offer/a.ts', `import * as v from 'valibot';`],
  ['src/place/record/a.ts', `import { b } from '../store/openStore.ts';`],
  ['src/place/record/a.ts', `import { b } from '../offer/stages.ts';`],
  ['src/place/store/a.ts', `import { b } from '../../../calculators/kit/state.ts';`],
  ['src/place/store/a.ts', `import { b } from '../files/read.ts';`],
  ['src/place/store/a.ts', `import { b } from '../../scripts/kept.ts';`],
  ['src/place/files/a.ts', `import { b } from '../offer/offersOf.ts';`],
  ['src/place/visit/a.ts', `import { b } from '../store/openStore.ts';`],
  ['src/place/visit/a.ts', `import { b } from '../../../calculators/ui/Field.tsx';`],
  ['content/guides/a.mdx', `Words.\n\nimport b from '../../tests/support/files.ts'\n\nMore words.`],
])('catches a forbidden import in %s: %s', (path, text) => {
  expect(forbiddenIn(path, text)).toHaveLength(1);
});

it.each([
  ['calculators/math/runoff/a.ts', `import { b } from '../../tables/curveNumbers.ts';`],
  ['calculators/kit/a.ts', `import { b } from '../units/units.ts';\nimport { c } from './link.ts';\nimport katex from 'katex';`],
  [
    'calculators/catalog/a/cases.ts',
    `import { b } from '../../kit/cases.ts';\nimport { c } from './compute.ts';\nimport { d } from '../../season/day.ts';`,
  ],
  ['calculators/asks/a.ts', `import { b } from '../kit/inputs.ts';\nimport { c } from '../math/need.ts';\nimport { d } from './stock.ts';`],
  ['calculators/catalog/a/inputs.ts', `import { b } from '../../asks/stock.ts';`],
  ['calculators/command.ts', `import { b } from './kit/link.ts';\nimport { c } from './command/catalog.ts';`],
  ['src/a.ts', `const b = import.meta.glob('../calculators/catalog/*/definition.ts');`],
  ['src/place/offer/a.ts', `import { b } from '../model/place.ts';\nimport { c } from '../../../calculators/kit/state.ts';`],
  ['src/place/store/a.ts', `import { openDB } from 'idb';\nimport { b } from '../model/place.ts';`],
  ['src/place/ui/a.tsx', `import { b } from '../store/openStore.ts';\nimport { c } from '../../../calculators/ui/Field.tsx';`],
  ['content/guides/a.mdx', `The word import '../../tests/x.ts' in a sentence.`],
])('lets pass what is allowed in %s', (path, text) => {
  expect(forbiddenIn(path, text)).toEqual([]);
});
