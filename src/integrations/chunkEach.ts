import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { Plugin } from 'vite';

const mostBytes = 50_000_000;
interface Chunks {
  /** Imported by this name, it maps a slug to what imports that one's chunk. */
  readonly all: string;
  /** How the name of one's module begins; its last part is what the chunk is called. */
  readonly one: string;
  /** Prints what stands in the chunks as JSON, by slug. Run by Node itself, because a build's own loader knows neither the files' way of importing nor an end. */
  readonly script: string;
  readonly args?: readonly string[];
}

/** What a script works out for each calculator at build, as a script chunk of its own. No `fetch`, so that it also opens from a disk. */
function chunkEach({ all, one, script, args = [] }: Chunks): Plugin {
  const make = async (): Promise<Readonly<Record<string, unknown>>> => {
    const file = fileURLToPath(new URL(script, import.meta.url));
    const { stdout } = await promisify(execFile)(process.execPath, [file, ...args], { maxBuffer: mostBytes });
    return JSON.parse(stdout);
  };
  let made: ReturnType<typeof make> | undefined;
  return {
    name: all,
    resolveId: (id) => (id === all || id.startsWith(one) ? `\0${id}` : undefined),
    async load(id) {
      if (id !== `\0${all}` && !id.startsWith(`\0${one}`)) return undefined;
      made ??= make();
      const bySlug = await made;
      if (id.startsWith(`\0${one}`)) return `export default ${JSON.stringify(bySlug[id.slice(one.length + 1)])};`;
      const lines = Object.keys(bySlug).map((slug) => `${JSON.stringify(slug)}: () => import(${JSON.stringify(one + slug)})`);
      return `export default { ${lines.join(', ')} };`;
    },
  };
}

/** The drawn working of each calculator, with no HTML, so that a page may refuse to read any. The copy for the phone puts these last. */
export const workings = (base: string): Plugin =>
  chunkEach({ all: 'virtual:workings', one: 'virtual:working/working-', script: './drawWorkings.ts', args: [base] });

/** What the example of each calculator that runs long came to: its page shows that as it opens, and a slow phone takes seconds to work it out. */
export const longExamples = (): Plugin =>
  chunkEach({ all: 'virtual:long-examples', one: 'virtual:example/example-', script: './workLongExamples.ts' });
