import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

export interface Served {
  readonly origin: string;
  /** Answers one path with other content than the file's. */
  readonly replace: (path: string, content: string) => void;
  readonly stop: () => Promise<void>;
}

/** The simplest server that a copy of the site needs; a test may stop it. */
export async function serve(folder: string, port = 0): Promise<Served> {
  const replaced = new Map<string, string>();
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://site.test');
    const path = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    const file = join(folder, path);
    const content = replaced.get(path) ?? (existsSync(file) && statSync(file).isFile() ? readFileSync(file) : undefined);
    response.writeHead(content === undefined ? 404 : 200, {
      'content-type': types[extname(path)] ?? 'application/octet-stream',
      'cache-control': 'no-cache',
    });
    response.end(content ?? readFileSync(join(folder, '404.html')));
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
