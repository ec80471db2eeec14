import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};
/** Packed already. */
const isPacked = (path: string): boolean => ['.woff2', '.png', '.webp'].includes(extname(path));
const yearSec = 31_536_000;

export interface Served {
  readonly origin: string;
  /** Answers one path with other content than the file's. */
  readonly replace: (path: string, content: string | Uint8Array) => void;
  readonly stop: () => Promise<void>;
}

/** The simplest server that a copy of the site needs; a test may stop it. As a host does, it can compress, and let browsers keep what has its content's hash in its name. */
export async function serve(folder: string, port = 0, { isHost = false } = {}): Promise<Served> {
  const replaced = new Map<string, string | Uint8Array>();
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://site.test');
    const path = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    const file = join(folder, path);
    const content = replaced.get(path) ?? (existsSync(file) && statSync(file).isFile() ? readFileSync(file) : undefined);
    const sent = content ?? readFileSync(join(folder, '404.html'));
    const isZipped = isHost && !isPacked(path);
    response.writeHead(content === undefined ? 404 : 200, {
      'content-type': types[extname(path)] ?? 'application/octet-stream',
      'cache-control': isHost && path.startsWith('/_astro/') ? `public, max-age=${yearSec}, immutable` : 'no-cache',
      ...(isZipped && { 'content-encoding': 'gzip' }),
    });
    response.end(isZipped ? gzipSync(sent) : sent);
  });
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('staticServer: no port');
  return {
    origin: `http://127.0.0.1:${address.port}`,
    replace: (path, content) => replaced.set(path, content),
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
