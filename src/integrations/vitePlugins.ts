import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import type { Plugin } from 'vite';
import { isUnit } from '../../calculators/units/units.ts';

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
 * option, hence a plugin. What is left of the wrapper is emptied, and taken off the imports: it made a function of each.
 */
export const noModulePreload: Plugin = {
  name: 'no-module-preload',
  enforce: 'post',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
};
/** `import("./a.js")`, or what one chunk has of another. */
const fetches = String.raw`import\("[^"]+"\)(?:\.then\(\(\w+\) => [\w$.]+\))?`;
const wrapped = new RegExp(
  String.raw`__vitePreload\((?:\(\) => (${fetches})|async \(\) => \{\s*const \{[^}]*\} = await (${fetches});\s*return \{[^}]*\};\s*\}), __VITE_PRELOAD__\)`,
  'g',
);
export const noPreloadHelper: Plugin = {
  name: 'no-preload-helper',
  enforce: 'pre',
  renderChunk: (code) => code.replace(wrapped, (_, bare?: string, taken?: string) => bare ?? taken ?? ''),
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
const catalog = 'calculators/catalog';
const slugs = readdirSync(`${root}${catalog}`);
const forAll = ['src/scripts/calculator.tsx', 'calculators/kit/define.ts', 'calculators/kit/steps.ts', 'calculators/kit/midSentence.ts'];
/** What a form fetches once it is live. */
const onceLive = ['src/scripts/later.tsx', 'calculators/ui/twoSides.ts', 'calculators/ui/pictures/readings.ts'];
/** What the place page draws: its frame, and the fields that its views fetch. */
const placeFields = ['src/scripts/place.tsx', 'src/place/ui/FieldView.tsx'];
/** What is always fetched together of a room: what draws a field of the place and tells it in words, its store, what fills a form with it, its herd, today. */
const together: readonly { readonly as: string; readonly from: string; readonly of: RegExp }[] = [
  { as: 'field-view', from: 'src/place/ui/Start.tsx', of: /\/src\/place\/ui\/(?:FieldView|FieldFrame|told|texts|fields\/field)\.tsx?$/ },
  { as: 'store', from: 'src/place/store/openStore.ts', of: /\/src\/place\/store\/|\/node_modules\/idb\// },
  { as: 'store', from: 'src/scripts/place.tsx', of: /\/form\/keepAddress\.ts$/ },
  { as: 'lines', from: 'src/place/store/rowKind.ts', of: /\/src\/place\/(?:model\/(?:row|readRow|migrations\/row)|store\/rowKind)\.ts$/ },
  {
    as: 'visit',
    from: 'src/place/store/visitKinds.ts',
    of: /\/src\/place\/(?:model\/(?:migrations\/)?(?:visit|note|result|readVisit|photo)|store\/visitKinds)\.ts$/,
  },
  { as: 'record-days', from: 'src/place/offer/recordOffers.ts', of: /\/src\/place\/(?:record\/(?:days|grounds)|offer\/stockToday)\.ts$/ },
  { as: 'at-form', from: 'src/place/form/atPlace.ts', of: /\/(?:textAt|form\/chosen)\.ts$/ },
  { as: 'clock', from: 'src/scripts/clock.ts', of: /\/clock\.ts$/ },
  { as: 'herd', from: 'src/place/offer/stockToday.ts', of: /\/src\/place\/offer\/(?!stockToday|mainOf)/ },
  { as: 'at-place', from: 'src/place/form/atPlace.ts', of: /\/src\/place\/(?:form|offer)\// },
  { as: 'today', from: 'src/scripts/today.ts', of: /\/(?:today|occurs)\.ts$/ },
];
/** Views of the place that work things out as calculators do: what they need of that belongs to no single calculator's chunk. */
const placeSums = ['src/place/ui/Gate.tsx', 'src/place/ui/Record.tsx'];
/**
 * What some calculators share, by what is fetched together as a rule: a chunk each, since a dozen short ones pack a fifth worse. A calculator that needs part of
 * one fetches all of it.
 */
const families: Readonly<Record<string, RegExp>> = {
  // Too long to go with the form of those that feed nothing.
  intake: /\/(?:tables\/intake|math\/herd\/(?:guidePercents|dailyIntakeLb))\.ts$/,
  pasture:
    /\/(?:asks\/stock|tables\/harvestShare|math\/(?:forage\/(?:availableLbPerAc|eatenLbPerAc|usableForageLb)|herd\/headToRemove|rotation\/paddockAcres))\.ts$/,
  intervals:
    /\/math\/(?:special\/(?:lnGamma|regularizedIncompleteBeta|betaQuantile|studentQuantile|exactBinomialInterval)|forage\/sampleInterval)\.ts$/,
  hay: /\/(?:asks\/hay|tables\/(?:feederWaste|hayStorageLoss)|math\/hay\/(?:storageLossPercent|eatenShare|rindShare|pricePerTonFromBale))\.ts$/,
  record: /\/calculators\/kit\/record\/(?!answers|linesSaid|nothingRead|keptReadings|laterRecord|fetchReaders)\w+\.ts$/,
};
/** A table or a formula that so many calculators share is fetched with the form. */
const mostOwners = 10;
function chunkOf(id: string, infoOf: ModuleInfo): string | null {
  const isIn = (path: string): boolean => closure(`${root}${path}`, infoOf).has(id);
  // What pages of all kinds fetch ahead of anything else, in one: each of these is too short to pack well by itself.
  if (/\/src\/(?:site\/(?:href|ownScript|folder)|scripts\/kept|office\/takeLate)\.ts$/.test(id) || id === '\0vite/preload-helper.js') return 'site';
  // A page without a calculator, and one where nobody opens it, fetch the loader alone.
  if (isIn('src/scripts/calculatorLoader.ts')) return null;
  const isForm = forAll.some(isIn);
  // A check that every sum makes.
  if (id.endsWith('/calculators/math/need.ts')) return 'fields';
  // The place page draws fields as forms do, and needs nothing else of a form.
  if (id === '\0rolldown/runtime.js' || (isForm && placeFields.some(isIn))) return 'fields';
  const isOfSums = placeSums.some(isIn);
  if (isForm) return isOfSums ? 'sums' : 'form';
  // What reads a place comes with its store; a record has parts of it, too, and would part it.
  if (isIn('src/place/model/readRecord.ts')) return 'store';
  const room = together.find(({ from, of }) => of.test(id) && isIn(from));
  // What the place page's frame has of a view's room is its own.
  if (room && (room.as !== 'field-view' || !isIn('src/scripts/place.tsx'))) return room.as;
  if (onceLive.some(isIn)) return 'later';
  if (id.includes('/pictures/face/') && isIn('calculators/ui/pictures/face/Face.tsx')) return 'face';
  const family = Object.entries(families).find(([, members]) => members.test(id));
  if (family) return family[0];
  const isOf = (slug: string, file: string): boolean => isIn(`${catalog}/${slug}/${file}.ts`);
  const owners = slugs.filter((slug) => isOf(slug, 'definition') || isOf(slug, 'compute'));
  if (owners.length >= mostOwners) return isOfSums ? 'sums' : 'form';
  const [owner] = owners;
  if (owner === undefined || owners.length > 1 || isOfSums) return null;
  // What works out one that runs long is no part of its definition.
  return isOf(owner, 'definition') ? owner : `engine-${owner}`;
}

/** What only built pages and tests read of a definition's words. */
const onlyBuilt = new Set(['question', 'lead', 'searchWords', 'limits', 'sources', 'guides']);
const isDescribe = (node: ts.Node): boolean =>
  ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression) && node.expression.name.text === 'describe';
/** What makes a step, of `calculators/kit/steps.ts`. Its words come with the drawn working. */
const isStep = (node: ts.Node): boolean => ts.isCallExpression(node) && /^(?:formula|byCase|lookup|tabulate)$/.test(node.expression.getText());
/** `number('Rain', 'P', 'in', …)`: what stands between a label and a unit is a symbol, which only formulas hold. */
function symbolIn(node: ts.Node): ts.Expression | undefined {
  const [label, symbol, unit] = ts.isCallExpression(node) ? node.arguments : [];
  const isSymbol =
    label && symbol && unit && [label, symbol, unit].every(ts.isStringLiteralLike) && ts.isStringLiteralLike(unit) && isUnit(unit.text);
  return isSymbol ? symbol : undefined;
}
/** Values that nobody reads in a browser: those words, formulas, their symbols and sentences of steps that were drawn at build, and sources. */
function* unread(node: ts.Node, isInStep = false): Generator<ts.Expression> {
  const symbol = symbolIn(node);
  if (symbol) yield symbol;
  if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'tex') yield node;
  else if (isInStep && ts.isPropertyAssignment(node) && /^(?:says|because)$/.test(node.name.getText())) yield node.initializer;
  else if (ts.isPropertyAssignment(node) && ts.isStringLiteralLike(node.initializer) && node.name.getText() === 'source') yield node.initializer;
  else if (ts.isPropertyAssignment(node) && onlyBuilt.has(node.name.getText()) && isDescribe(node.parent.parent)) yield node.initializer;
  else for (const child of node.getChildren()) yield* unread(child, isInStep || isStep(node));
}

/** Where in its source a number of a table stands, and which guide prints which intake: pages of tables print it, and no sum reads it. */
function* placesIn(node: ts.Node): Generator<ts.Expression> {
  const value = ts.isPropertyAssignment(node) ? { [node.name.getText()]: node.initializer } : {};
  if (value['where'] && ts.isStringLiteralLike(value['where'])) yield value['where'];
  else if (value['printed'] && ts.isArrayLiteralExpression(value['printed'])) yield value['printed'];
  else for (const child of node.getChildren()) yield* placesIn(child);
}

/** What a calculator's built page holds already is emptied in the script that a browser fetches. */
export const leanDefinitions: Plugin = {
  name: 'lean-definitions',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  transform(code, id) {
    const isTable = /\/calculators\/tables\/\w+\.ts$/.test(id);
    if (!isTable && !/\/calculators\/(?:catalog\/[^/]+\/(?:cautions|definition|herd|inputs|quantities|steps)|asks\/\w+)\.ts$/.test(id))
      return undefined;
    const file = ts.createSourceFile(id, code, ts.ScriptTarget.ESNext, true);
    return [...(isTable ? placesIn(file) : unread(file))].reduceRight(
      (text, value) => `${text.slice(0, value.getStart())}${ts.isArrayLiteralExpression(value) ? '[]' : "''"}${text.slice(value.end)}`,
      code,
    );
  },
};

/**
 * A worker is one file and holds the engine of a calculator that runs long anyway. Fetched inside that file, all constants of the engine would be variables,
 * looked up at each use; imported, they are built into what is compiled, and a thousand years take a fifth less.
 */
export const engineAtOnce: Plugin = {
  name: 'engine-at-once',
  enforce: 'pre',
  transform(code, id) {
    if (!/\/calculators\/catalog\/[^/]+\/definition\.ts$/.test(id)) return undefined;
    const [fetching, file] = /\bengine: \(\) => import\(('[^']+')\)/.exec(code) ?? [];
    if (fetching === undefined) throw new Error(`${id} fetches no engine: the worker takes those that run long`);
    return `import * as engine from ${file};\n${code.replace(fetching, 'engine: async () => engine')}`;
  },
};
