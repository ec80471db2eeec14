import { builtFiles, readText } from '../src/integrations/builtFiles.ts';

/** Pages whose sheets give the book's tables, drawings, formulas and steps their look. */
const lookOf = [
  'guides/growing-roots/index.html',
  'tables/curve-numbers-pasture/index.html',
  'calculators/storm-runoff/working/index.html',
  'glossary/index.html',
];

/** Addresses of the sheets that the book prints with, the site's first, KaTeX's among them, and its own last. Throws if a page is missing. */
export function stylesOf(dist: string): readonly string[] {
  const linked = lookOf.flatMap((file) =>
    [...readText(dist, file).matchAll(/<link rel="stylesheet" href="([^"]+)"/g)].map((found) => found[1] ?? ''),
  );
  const formulas = builtFiles(dist)
    .filter((file) => /_astro\/katex\..*\.css$/.test(file))
    .map((file) => `/${file}`);
  return [...new Set([...linked, ...formulas]), '/book.css'];
}
