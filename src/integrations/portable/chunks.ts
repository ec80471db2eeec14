import { posix } from 'node:path';
import { transform } from 'esbuild';
import { relative } from './addresses.ts';

/** A module of the built site as a script that runs from a disk, where no module may be imported. */
export interface Chunk {
  readonly code: string;
  /** Files of the modules that must be there before it runs. */
  readonly imports: readonly string[];
  /** Files of those that it fetches when somebody needs them. */
  readonly fetched: readonly string[];
}

/** Pages that hold a calculator all lie two folders deep; the drawn working of one goes into any of them. */
export const deepPage = 'calculators/one/index.html';

const fileAt = (name: string, from: string): string => posix.join(posix.dirname(from), name);

/**
 * Wraps a module into a call that hands it to the folder's own loader; names, split and laziness stay as they were.
 * @throws Error for code that says `import` in a way that it does not know
 */
export async function toChunk(file: string, code: string, base: string): Promise<Chunk> {
  // Drawn steps are data, and their links stand from the root of the server.
  const inPlace = code.replace(
    /\b("?href"?:\s*)(["'`])(\/(?!\/)[^"'`$]*)\2/g,
    (_, name: string, quote: string, address: string) => `${name}${quote}${relative(address, deepPage, base)}${quote}`,
  );
  const { code: common } = await transform(inPlace, {
    format: 'cjs',
    target: 'es2022',
    minifyWhitespace: true,
    // Only the worker asks for its own address, and a folder has none.
    define: { 'import.meta.url': 'undefined' },
    logLevel: 'silent',
  });
  const fetched: string[] = [];
  const imports: string[] = [];
  const loaded = common.replace(/\bimport\((["'`])(\.{1,2}\/[^"'`]+)\1\)/g, (_, _quote: string, name: string) => {
    fetched.push(fileAt(name, file));
    return `load(${JSON.stringify(fileAt(name, file))})`;
  });
  const required = loaded.replace(/\brequire\((["'`])(\.{1,2}\/[^"'`]+)\1\)/g, (_, _quote: string, name: string) => {
    imports.push(fileAt(name, file));
    return `require(${JSON.stringify(fileAt(name, file))})`;
  });
  if (/\bimport\(|\bimport\.meta\b/.test(required)) throw new Error(`${file}: an import that the folder’s loader does not know`);
  return { code: `holdwaterFolder.define(${JSON.stringify(file)},(require,module,load)=>{${required}});\n`, imports, fetched };
}

/** All chunks that pages reach from their first scripts. */
export async function chunksFrom(entries: Iterable<string>, read: (file: string) => string, base: string): Promise<ReadonlyMap<string, Chunk>> {
  const chunks = new Map<string, Chunk>();
  const wanted = new Set(entries);
  for (const file of wanted) {
    const chunk = await toChunk(file, read(file), base);
    chunks.set(file, chunk);
    for (const next of [...chunk.imports, ...chunk.fetched]) wanted.add(next);
  }
  return new Map([...chunks].toSorted(([one], [other]) => (one < other ? -1 : 1)));
}

/** A chunk with all that must run before it, in the order in which it runs. */
export function inOrder(entry: string, chunks: ReadonlyMap<string, Pick<Chunk, 'imports'>>): readonly string[] {
  const order = new Set<string>();
  const seen = new Set<string>();
  const visit = (file: string): void => {
    if (seen.has(file)) return;
    seen.add(file);
    for (const before of chunks.get(file)?.imports ?? []) visit(before);
    order.add(file);
  };
  visit(entry);
  return [...order];
}
