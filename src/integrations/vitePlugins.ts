import ts from 'typescript';
import type { Plugin } from 'vite';

/** Every browser that runs this site reads WOFF2; the other formats would only swell the offline copy. */
export const katexWoff2Only: Plugin = {
  name: 'katex-woff2-only',
  enforce: 'pre',
  transform: (code, id) =>
    id.includes('katex.min.css')
      ? code.replace(/,url\([^)]*\.(?:woff|ttf)\) format\("[a-z]+"\)/g, '').replaceAll('font-display:block', 'font-display:swap')
      : undefined,
};

/** Vite's preload wrapper breaks lazy chunks when pages are opened straight from a disk. Astro overrides the plain option, hence a plugin. */
export const noModulePreload: Plugin = {
  name: 'no-module-preload',
  enforce: 'post',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
};

/** What only built pages and tests read of a definition. */
const onlyBuilt = new Set(['question', 'lead', 'searchWords', 'limits', 'sources', 'guides']);
const isDescribe = (node: ts.Node): node is ts.CallExpression =>
  ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression) && node.expression.name.text === 'describe';
function* onlyBuiltIn(node: ts.Node): Generator<ts.Expression> {
  const [words] = isDescribe(node) ? node.arguments : [];
  if (words === undefined || !ts.isObjectLiteralExpression(words)) {
    for (const child of node.getChildren()) yield* onlyBuiltIn(child);
    return;
  }
  for (const property of words.properties)
    if (ts.isPropertyAssignment(property) && onlyBuilt.has(property.name.getText())) yield property.initializer;
}

/** Words that stand in a calculator's built page already are emptied in the script that a browser fetches. */
export const leanDefinitions: Plugin = {
  name: 'lean-definitions',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  transform(code, id) {
    if (!/\/catalog\/[^/]+\/definition\.ts$/.test(id)) return undefined;
    const file = ts.createSourceFile(id, code, ts.ScriptTarget.ESNext, true);
    return [...onlyBuiltIn(file)].reduceRight(
      (text, value) => `${text.slice(0, value.getStart())}${ts.isArrayLiteralExpression(value) ? '[]' : "''"}${text.slice(value.end)}`,
      code,
    );
  },
};
