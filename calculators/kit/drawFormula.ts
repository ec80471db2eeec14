// Build only: KaTeX must never reach the browser.
import katex from 'katex';
import { readFormula, toTex } from './formula.ts';

const options = { strict: 'error', throwOnError: true, output: 'htmlAndMathml', displayMode: true } as const;
/** The TeX source that KaTeX leaves inside would be read aloud and searched. */
const strip = (html: string): string => html.replace(/<annotation[\s\S]*?<\/annotation>/g, '').replace(/<semantics>([\s\S]*?)<\/semantics>/g, '$1');

/** `Q = …` with symbols. */
export const drawSymbols = (template: string, symbol: (name: string) => string, lead = ''): string =>
  strip(katex.renderToString(lead + toTex(readFormula(template), symbol, false), options));

/** A symbol alone, small, for the head of a table. */
export const drawSymbol = (symbol: string): string => strip(katex.renderToString(symbol, { ...options, displayMode: false }));

// No formula holds a number this long, so these stand for the holes until KaTeX has drawn them.
const firstMark = 8_000_000_000;

/**
 * The same with a hole for each number: `data-q="rainIn"` in the HTML and in the MathML, to be filled in the browser.
 * @param print - What stands in the holes at build
 * @throws Error if KaTeX swallowed a hole
 */
export function drawHoles(template: string, print: (name: string) => string, lead = ''): string {
  const names: string[] = [];
  const tex = toTex(readFormula(template), (name) => `{${firstMark + names.push(name) - 1}}`, true);
  let html = strip(katex.renderToString(lead + tex, options));
  for (const [at, name] of names.entries()) {
    const mark = String(firstMark + at);
    html = html
      .replaceAll(`<mn>${mark}</mn>`, `<mn data-q="${name}">${print(name)}</mn>`)
      .replaceAll(new RegExp(`<span class="(mord[^"]*)">${mark}</span>`, 'g'), `<span class="$1" data-q="${name}">${print(name)}</span>`);
    if (html.includes(mark)) throw new Error(`drawHoles lost the place of ${name} in ${template}`);
  }
  return html;
}
