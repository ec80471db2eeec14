import { createHash } from 'node:crypto';
import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { HTMLElement, type Node } from 'node-html-parser';
import subsetFont from 'subset-font';
import { builtFiles, readText } from './builtFiles.ts';

/** What people may type or a calculator may print, whatever the pages hold today. */
const ascii = Array.from({ length: 0x7e - 0x20 + 1 }, (_, index) => String.fromCharCode(0x20 + index)).join('');
const punctuation =
  '\u00a0\u00b0\u00b1\u00b2\u00b3\u00b7\u00bd\u00bc\u00be\u00d7\u2009\u2013\u2014\u2018\u2019\u201c\u201d\u2026\u2192\u2212\u2248\u2264\u2265';
/** Numbers are put into a formula in the browser. */
const typedInFormulas = '0123456789,.+-()\u2212\u00d7';

const letters = (text: string): string => [...new Set(text)].sort().join('');

/** The pieces of text under a node; of those in drawn formulas it is known. */
const piecesOf = (node: Node, isDrawn = false): readonly { readonly text: string; readonly isDrawn: boolean }[] =>
  node instanceof HTMLElement
    ? node.childNodes.flatMap((child) => piecesOf(child, isDrawn || node.classNames === 'katex-html'))
    : [{ text: node.text, isDrawn }];

const nameFor = (file: string, content: Uint8Array): string =>
  file.replace(/\.[\w-]+\.(\w+)$/, `.${createHash('sha256').update(content).digest('base64url').slice(0, 8)}.$1`);

/**
 * Cuts every font down to the letters that the built site needs, and names it for what is left: a browser that kept the longer-lived
 * copy of an older one would miss letters.
 */
export async function subsetFonts(root: string, parsed: ReadonlyMap<string, HTMLElement>): Promise<void> {
  const read = [...parsed.values()].flatMap((page) => piecesOf(page));
  const files = builtFiles(root);
  const pages = files.filter((file) => file.endsWith('.html'));
  const styles = files.filter((file) => file.startsWith('_astro/') && file.endsWith('.css'));
  const scripts = files.filter((file) => file.endsWith('.js'));
  const css = styles.map((file) => readText(root, file)).join('');
  // The pages as they are written, for what stands in attributes; as they are read, for letters that are written as numbers.
  const texts = [...pages.map((file) => readText(root, file)), ...read.map(({ text }) => text), ...scripts.map((file) => readText(root, file))];
  const forText = letters(ascii + punctuation + css + texts.join(''));
  const drawn = read.filter(({ isDrawn }) => isDrawn).map(({ text }) => text);
  const forFormulas = letters(typedInFormulas + drawn.join(''));

  const renamed = new Map<string, string>();
  for (const file of files.filter((each) => each.endsWith('.woff2'))) {
    const full = readFileSync(join(root, file));
    const isFormula = basename(file).startsWith('KaTeX_');
    const cut = await subsetFont(full, isFormula ? forFormulas : forText, {
      targetFormat: 'woff2',
      ...(isFormula ? {} : { variationAxes: { wght: { min: 400, max: 750 } } }),
    });
    const name = nameFor(file, cut);
    rmSync(join(root, file));
    writeFileSync(join(root, name), cut);
    renamed.set(basename(file), basename(name));
  }
  const withNewNames = (text: string): string => [...renamed].reduce((result, [from, to]) => result.replaceAll(from, to), text);
  for (const file of styles) {
    const text = withNewNames(readText(root, file));
    const name = nameFor(file, Buffer.from(text));
    renameSync(join(root, file), join(root, name));
    writeFileSync(join(root, name), text);
    renamed.set(basename(file), basename(name));
  }
  for (const file of pages) writeFileSync(join(root, file), withNewNames(readText(root, file)));
}
