import { createHash } from 'node:crypto';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';
import { buildSync } from 'esbuild';
import type { CopyIndex, CopyPart } from '../../copy/copyIndex.ts';
import { joinFiles } from '../../copy/packFormat.ts';
import { type ChosenPack, choosePacks } from './choosePacks.ts';

const types: Readonly<Record<string, string>> = {
  '.bib': 'text/plain; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ics': 'text/calendar; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.ris': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};
/** @throws Error for an ending of which nobody has said what it is */
function typeOf(file: string): string {
  const type = types[extname(file)];
  if (type === undefined) throw new Error(`${file}: what type this is must be told in src/integrations/copy/copyOf.ts, or phones cannot open it.`);
  return type;
}

const sha256 = (content: Uint8Array): string => createHash('sha256').update(content).digest('hex');
const addressOf = (file: string): string => file.replace(/(^|\/)index\.html$/, '$1');
const pagesBelow = (files: readonly string[], folder: string): number =>
  files.filter((file) => new RegExp(`^${folder}/[^/]+/index\\.html$`).test(file)).length;

function packed({ name, stage, files }: ChosenPack, contentOf: (file: string) => Uint8Array<ArrayBuffer>) {
  const joined = joinFiles(
    files.map((file) => {
      const content = contentOf(file);
      return { path: addressOf(file), type: typeOf(file), sha256: sha256(content), length: content.length, content };
    }),
  );
  const bytes = deflateSync(joined, { level: 9, memLevel: 9 });
  const hash = sha256(bytes);
  const part: CopyPart = {
    file: `copy/${name}.${hash.slice(0, 10)}.pack`,
    sha256: hash,
    bytes: bytes.length,
    roomBytes: joined.length,
    stage,
    guides: pagesBelow(files, 'guides'),
    calculators: pagesBelow(files, 'calculators'),
  };
  return { part, bytes };
}

/** The worker as one script. Every browser that can inflate a pack by itself reads it as it is. */
const workerScript = (): string => {
  const { outputFiles } = buildSync({
    entryPoints: [fileURLToPath(new URL('../../copy/worker/worker.ts', import.meta.url))],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    write: false,
  });
  return outputFiles.map(({ text }) => text).join('');
};

export interface Copy {
  readonly index: CopyIndex;
  /** By their paths in the site. */
  readonly packs: ReadonlyMap<string, Uint8Array>;
  readonly worker: string;
}

/** The copy for the phone of a built site: its packs, and the worker that keeps them and has their list in its first line. The same files give the same bytes. */
export function copyOf(files: readonly string[], contentOf: (file: string) => Uint8Array<ArrayBuffer>): Copy {
  const packs = choosePacks(files).map((chosen) => packed(chosen, contentOf));
  const parts = packs.map(({ part }) => part);
  const edition = sha256(new TextEncoder().encode(parts.map((part) => part.sha256).join(' '))).slice(0, 16);
  const index: CopyIndex = { edition, parts };
  return {
    index,
    packs: new Map(packs.map(({ part, bytes }) => [part.file, bytes])),
    worker: `const copyIndex=${JSON.stringify(index)};\n${workerScript()}`,
  };
}
