import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, it } from 'vitest';
import { filesBelow, root } from '../support/files.ts';

/** Classes of one room that another styles too. It is the same thing in both; the reason says why it looks different there. */
const refined: Readonly<Record<string, string>> = {
  lead: 'smaller on paper, on a recording sheet and under a calculator',
  bottom: 'smaller on paper, on a recording sheet and under a calculator',
  katex: 'smaller on a calculator’s paper',
  'katex-display': 'closer together in the working',
  calculator: 'a guide’s paper names its page instead',
  example: 'kept in one piece on paper',
  muted: 'smaller in long lists',
  used: 'on a line of its own under a word',
  wide: 'not cut off on a recording sheet’s paper',
};

interface Block {
  readonly prelude: string;
  readonly inside: string;
}
/** The blocks of a sheet, each with what stands before its brace. A statement without a block has nothing inside. */
function blocksOf(css: string): readonly Block[] {
  const found: Block[] = [];
  let depth = 0;
  let from = 0;
  let open = 0;
  for (const { 0: sign, index } of css.matchAll(/[{};]/g)) {
    if (sign === '{' && depth++ === 0) open = index;
    else if (sign === '}' && --depth === 0) {
      found.push({ prelude: css.slice(from, open).trim(), inside: css.slice(open + 1, index) });
      from = index + 1;
    } else if (sign === ';' && depth === 0) {
      found.push({ prelude: css.slice(from, index).trim(), inside: '' });
      from = index + 1;
    }
  }
  return found;
}
const hasRules = /^@(?:layer|media|supports|container)\b/;
/** Selectors of a sheet, one by one, whatever conditions they stand under. */
const selectorsOf = (css: string): readonly string[] =>
  blocksOf(css).flatMap(({ prelude, inside }) => {
    if (hasRules.test(prelude)) return selectorsOf(inside);
    return prelude.startsWith('@') ? [] : prelude.replace(/:global\((.*?)\)(?!\))/g, '$1').split(/,(?![^(]*\))/);
  });
/** What a selector styles: the classes of its last part, not those that it only asks for. */
const styledBy = (selector: string): readonly string[] => {
  const last =
    selector
      .trim()
      .split(/[\s>+~]+(?![^(]*\))/)
      .at(-1) ?? '';
  return [...last.replace(/\(.*\)/g, '').matchAll(/\.([a-z][\w-]*)/gi)].map(([, name = '']) => name);
};

interface Sheet {
  readonly path: string;
  readonly css: string;
}
const withoutComments = (css: string): string => css.replace(/\/\*[\s\S]*?\*\//g, '');
const cssOf = (path: string): string => {
  const text = readFileSync(join(root, path), 'utf8');
  return withoutComments(path.endsWith('.css') ? text : [...text.matchAll(/<style\b[^>]*>([\s\S]*?)<\/style>/g)].map(([, css]) => css).join('\n'));
};
const first = 'src/styles/base.css';
/** Names sheets and holds no rule. */
const list = 'src/styles/calculators.css';
const order = /^@layer ([^{;]+);/.exec(cssOf(first).trim())?.[1]?.split(/,\s*/) ?? [];
const layerOf = ({ prelude, inside }: Block): string | undefined => (inside === '' ? undefined : /^@layer ([\w-]+)$/.exec(prelude)?.[1]);

/** What stands in no layer that the order names. */
const looseIn = ({ path, css }: Sheet): readonly string[] =>
  blocksOf(css)
    .filter((block) => !order.includes(layerOf(block) ?? ''))
    .map(({ prelude }) => `${path}: ${prelude}`);

/** Sheets of every page are one room, those of calculators another; what one page or component uses is a room of its own. */
const roomOf = (path: string, layer: string): string => {
  if (layer === 'page') return path;
  return layer === 'calculator' ? 'calculators' : 'every page';
};
function sharedIn(sheets: readonly Sheet[]): readonly string[] {
  const rooms = new Map<string, Set<string>>();
  for (const { path, css } of sheets)
    for (const block of blocksOf(css))
      for (const name of selectorsOf(block.inside).flatMap(styledBy))
        rooms.set(name, (rooms.get(name) ?? new Set()).add(roomOf(path, layerOf(block) ?? '')));
  return [...rooms].filter(([, where]) => where.size > 1).map(([name, where]) => `.${name}: ${[...where].join(', ')}`);
}
const nameIn = (line: string): string => /^\.([\w-]+)/.exec(line)?.[1] ?? '';

const sheets = [...filesBelow('src', /\.css$/), ...filesBelow('src', /\.astro$/)]
  .filter((path) => path !== first && path !== list)
  .map((path) => ({ path, css: cssOf(path) }))
  .filter(({ css }) => css.trim() !== '');

it('names the order of layers once, in the sheet that every page loads first', () => {
  expect(order.length).toBeGreaterThan(3);
  const rest = [...blocksOf(cssOf(first)).slice(1), ...blocksOf(cssOf(list))];
  expect(rest.filter(({ prelude }) => !/^@import "\.\/[\w-]+\.css"$/.test(prelude))).toEqual([]);
  const head = readFileSync(join(root, 'src/layouts/Base.astro'), 'utf8');
  expect(head, 'the layout links it itself, above all else').toContain(`from '../styles/${basename(first)}?url'`);
});

it('puts every rule into a layer that the order names', () => {
  expect(sheets.length).toBeGreaterThan(20);
  expect(sheets.flatMap(looseIn)).toEqual([]);
});

it('has one meaning for each class', () => {
  const shared = sharedIn(sheets);
  expect(
    shared.filter((line) => !(nameIn(line) in refined)),
    'give one of them another name, or say in `refined` why it is the same thing',
  ).toEqual([]);
  const stillShared = new Set(shared.map(nameIn));
  expect(
    Object.keys(refined).filter((name) => !stillShared.has(name)),
    'no longer shared',
  ).toEqual([]);
});

it.each([
  'p { color: red; }',
  '@layer other { p { color: red; } }',
  '@layer site; p { color: red; }',
  '@media print { @layer site { p { margin: 0; } } }',
])('sees what stands outside the layers: %s', (css) => {
  expect(looseIn({ path: 'a.css', css })).not.toEqual([]);
});
it('sees a class that is styled in two rooms, under conditions too, and not one that a selector only asks for', () => {
  const of = (css: string) =>
    sharedIn([
      { path: 'a.css', css: '@layer site { .a, .b > .c { margin: 0; } }' },
      { path: 'b.css', css },
    ]).map(nameIn);
  expect(of('@layer page { .a { margin: 0; } }')).toEqual(['a']);
  expect(of('@layer calculator { @media print { .d:has(.b) .c:not(.a) { margin: 0; } } }')).toEqual(['c']);
  expect(of('@layer page { :global(.a) { margin: 0; } }')).toEqual(['a']);
  expect(of('@layer page { .b .d { margin: 0; } }')).toEqual([]);
  expect(of('@layer site { .a { margin: 0; } }')).toEqual([]);
});
