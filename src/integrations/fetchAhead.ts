import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { builtFiles } from './builtFiles.ts';

/** What a page asks for ahead of time, by the path of its source: `<link rel="modulepreload" href="src/scripts/calculator.tsx">`. */
const wanted = /<link rel="modulepreload" href="([^"]+)"[^>]*>/g;

/** A script of a page fetches the next, and that one more: each is a journey to the server. These learn which files hold a source, and name them all in the page. */
export function namesAhead(): { readonly plugin: Plugin; readonly putInto: (root: string, base: string) => number } {
  /** The files that must be there before a source runs, and the one that holds it. */
  const filesOf = new Map<string, readonly string[]>();
  return {
    plugin: {
      name: 'names-ahead',
      generateBundle(_, bundle) {
        if (this.environment.name !== 'client') return;
        const withImports = (file: string): readonly string[] => {
          const seen = new Set([file]);
          for (const each of seen) {
            const part = bundle[each];
            if (part?.type === 'chunk') for (const next of part.imports) seen.add(next);
          }
          return [...seen].reverse();
        };
        for (const part of Object.values(bundle))
          if (part.type === 'chunk') for (const id of part.moduleIds) filesOf.set(id, withImports(part.fileName));
      },
    },
    putInto: (root, base) => {
      const holding = (source: string): readonly string[] => {
        const found = [...filesOf].find(([id]) => id.endsWith(`/${source}`));
        if (!found) throw new Error(`no script holds ${source}`);
        return found[1];
      };
      const pages = builtFiles(root).filter((file) => file.endsWith('.html'));
      const asking = pages.filter((page) => {
        const html = readFileSync(join(root, page), 'utf8');
        const files = new Set([...html.matchAll(wanted)].flatMap(([, source = '']) => holding(source)));
        let links = [...files].map((file) => `<link rel="modulepreload" fetchpriority="low" href="${base}${file}">`).join('');
        const put = html.replace(wanted, () => {
          const first = links;
          links = '';
          return first;
        });
        if (put !== html) writeFileSync(join(root, page), put);
        return put !== html;
      });
      return asking.length;
    },
  };
}
