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

/** Vite's preload wrapper breaks lazy chunks when pages are opened straight from a disk. Astro overrides the plain option, hence a plugin. */
export const noModulePreload: Plugin = {
  name: 'no-module-preload',
  enforce: 'post',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
};

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
