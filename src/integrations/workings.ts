import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { Plugin } from 'vite';

const all = 'virtual:workings';
const one = 'virtual:working/';
const mostBytes = 50_000_000;

/** Every drawn working, by slug. */
async function drawAll(base: string): Promise<Readonly<Record<string, string>>> {
  const script = fileURLToPath(new URL('./drawWorkings.ts', import.meta.url));
  const { stdout } = await promisify(execFile)(process.execPath, [script, base], { maxBuffer: mostBytes });
  return JSON.parse(stdout);
}

/** The drawn working of each calculator as a script chunk of its own: `virtual:workings` maps a slug to what imports it. No `fetch`, so that it also opens from a disk. */
export function workings(base: string): Plugin {
  let drawn: ReturnType<typeof drawAll> | undefined;
  return {
    name: 'workings',
    resolveId: (id) => (id === all || id.startsWith(one) ? `\0${id}` : undefined),
    async load(id) {
      if (id !== `\0${all}` && !id.startsWith(`\0${one}`)) return undefined;
      drawn ??= drawAll(base);
      const htmlOf = await drawn;
      if (id.startsWith(`\0${one}`)) return `export default ${JSON.stringify(htmlOf[id.slice(one.length + 1)])};`;
      const lines = Object.keys(htmlOf).map((slug) => `${JSON.stringify(slug)}: () => import(${JSON.stringify(one + slug)})`);
      return `export default { ${lines.join(', ')} };`;
    },
  };
}
