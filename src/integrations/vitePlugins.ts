import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import type { Plugin } from 'vite';

/** KaTeX's own sheet in a layer below ours. Every browser that runs this site reads WOFF2; other formats would only swell the offline copy. */
export const katexStyles: Plugin = {
  name: 'katex-styles',
  enforce: 'pre',
  // Asked for by its address, the sheet comes in a script first that names it.
  transform: (code, id) =>
    id.includes('katex.min.css') && !id.endsWith('?url')
      ? `@layer katex{${code.replace(/,url\([^)]*\.(?:woff|ttf)\) format\("[a-z]+"\)/g, '').replaceAll('font-display:block', 'font-display:swap')}}`
      : undefined,
};

/**
 * Vite's preload wrapper breaks lazy chunks when pages are opened straight from a disk, and no script here brings styles along. Astro overrides the plain
 * option, hence a plugin. What is left of the wrapper is emptied.
 */
export const noModulePreload: Plugin = {
  name: 'no-module-preload',
  enforce: 'post',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
};
export const noPreloadHelper: Plugin = {
  name: 'no-preload-helper',
  enforce: 'pre',
  load: { order: 'pre', handler: (id) => (id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : undefined) },
};

type ModuleInfo = (id: string) => { readonly importedIds: readonly string[] } | null;
/** A module with all that it imports, unless lazily. */
function closure(from: string, infoOf: ModuleInfo): ReadonlySet<string> {
  const seen = new Set([from]);
  for (const id of seen) for (const each of infoOf(id)?.importedIds ?? []) seen.add(each);
  return seen;
}

/**
 * What is always fetched together is one chunk, since one long text packs smaller than many short ones: all that any calculator needs; and all that any
 * cut through the ground needs.
 */
export const fewChunks: Plugin = {
  name: 'few-chunks',
  configEnvironment: (name) =>
    name === 'client'
      ? {
          build: {
            rolldownOptions: {
              preserveEntrySignatures: 'allow-extension',
              output: {
                codeSplitting: {
                  includeDependenciesRecursively: false,
                  groups: [{ name: (id, graph) => chunkOf(id, (each) => graph.getModuleInfo(each)), debugName: 'form and face' }],
                },
              },
            },
          },
        }
      : undefined,
};
const root = fileURLToPath(new URL('../../', import.meta.url));
const definitionsOf = (folder: string): readonly string[] => readdirSync(`${root}${folder}`).map((slug) => `${root}${folder}/${slug}/definition.ts`);
const forAll = ['src/scripts/calculator.tsx', 'calculators/kit/define.ts', 'calculators/kit/steps.ts', 'calculators/ui/pictures/readings.ts'];
/** What the place page draws: its frame, and the fields that its views fetch. */
const placeFields = ['src/scripts/place.tsx', 'src/place/ui/FieldView.tsx'];
/** Views of the place that work things out as calculators do: what they need of that belongs to no single calculator's chunk. */
const placeSums = ['src/place/ui/Gate.tsx', 'src/place/ui/Record.tsx'];
/** A table or a formula that so many calculators share is fetched with the form. */
const mostOwners = 8;
function chunkOf(id: string, infoOf: ModuleInfo): string | null {
  const isIn = (path: string): boolean => closure(`${root}${path}`, infoOf).has(id);
  // A page without a calculator, and one where nobody opens it, fetch the loader alone.
  if (isIn('src/scripts/calculatorLoader.ts')) return null;
  const isForm = forAll.some(isIn);
  // The place page draws fields as forms do, and needs nothing else of a form.
  if (id === '\0rolldown/runtime.js' || (isForm && placeFields.some(isIn))) return 'fields';
  const isOfSums = placeSums.some(isIn);
  if (isForm) return isOfSums ? 'sums' : 'form';
  // What reads a place is fetched with each of its views; a record has parts of it, too, and would part it.
  if (isIn('src/place/model/readRecord.ts')) return 'model';
  if (id.includes('/pictures/face/') && isIn('calculators/ui/pictures/face/Face.tsx')) return 'face';
  const owners = definitionsOf('calculators/catalog').filter((each) => closure(each, infoOf).has(id));
  if (owners.length >= mostOwners) return isOfSums ? 'sums' : 'form';
  return owners.length === 1 && !isOfSums ? (owners[0]?.match(/([^/]+)\/definition/)?.[1] ?? null) : null;
}

/** What only built pages and tests read of a definition's words. */
const onlyBuilt = new Set(['question', 'lead', 'searchWords', 'limits', 'sources', 'guides']);
const isDescribe = (node: ts.Node): boolean =>
  ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression) && node.expression.name.text === 'describe';
/** Values that nobody reads in a browser: those words, formulas that were drawn at build, and sources. */
function* unread(node: ts.Node): Generator<ts.Expression> {
  if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'tex') yield node;
  else if (ts.isPropertyAssignment(node) && ts.isStringLiteralLike(node.initializer) && node.name.getText() === 'source') yield node.initializer;
  else if (ts.isPropertyAssignment(node) && onlyBuilt.has(node.name.getText()) && isDescribe(node.parent.parent)) yield node.initializer;
  else for (const child of node.getChildren()) yield* unread(child);
}

/** What a calculator's built page holds already is emptied in the script that a browser fetches. */
export const leanDefinitions: Plugin = {
  name: 'lean-definitions',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  transform(code, id) {
    if (!/\/calculators\/(?:catalog\/[^/]+\/(?:cautions|definition|steps)|asks\/\w+)\.ts$/.test(id)) return undefined;
    const file = ts.createSourceFile(id, code, ts.ScriptTarget.ESNext, true);
    return [...unread(file)].reduceRight(
      (text, value) => `${text.slice(0, value.getStart())}${ts.isArrayLiteralExpression(value) ? '[]' : "''"}${text.slice(value.end)}`,
      code,
    );
  },
};
