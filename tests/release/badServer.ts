// A server at the far end of a bad line.
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type ServerResponse } from 'node:http';
import { extname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import type { Copy } from '../../src/integrations/copy/copyOf.ts';

/** What happens to an answer: ended half way, two seconds late, an error of the server, sent on to a page, a page in its place, the line gone. */
export type Fault = 'cut' | 'late' | 'error' | 'away' | 'page' | 'gone';

export interface BadServer {
  readonly origin: string;
  /** Paths in the order in which they were asked for. */
  readonly asked: string[];
  /** What is done to an answer; nothing by itself. */
  faultOf: (path: string) => Fault | undefined;
  /** What all answers together get through in a second. */
  bytesPerSecond: number;
  /** Serves the packs of a copy besides those that were there, and its worker. */
  readonly deploy: (copy: Copy, without?: (pack: string) => boolean) => void;
  readonly stop: () => Promise<void>;
}

const signIn = '<!doctype html><title>Sign in</title><h1>Sign in first</h1>';
const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.pack': 'application/octet-stream',
  '.svg': 'image/svg+xml',
};
const lateMs = 2000;
/** So often a slow line gets its share. */
const tickMs = 50;

export async function serveBadly(folder: string): Promise<BadServer> {
  const replaced = new Map<string, Uint8Array>();
  let freeAt = 0;
  /** One line for all answers: each piece waits until those before it are through. */
  async function send(response: ServerResponse, bytes: Uint8Array): Promise<void> {
    if (bad.bytesPerSecond === Number.POSITIVE_INFINITY) {
      response.write(bytes);
      return;
    }
    const piece = Math.ceil((bad.bytesPerSecond * tickMs) / 1000);
    for (let at = 0; at < bytes.length && !response.destroyed; at += piece) {
      const sent = bytes.subarray(at, at + piece);
      freeAt = Math.max(freeAt, performance.now()) + (sent.length / bad.bytesPerSecond) * 1000;
      await pause(freeAt - performance.now());
      response.write(sent);
    }
  }
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://site.test');
    bad.asked.push(pathname);
    const fault = bad.faultOf(pathname);
    if (fault === 'gone') return void request.socket.destroy();
    if (fault === 'away') return void response.writeHead(302, { location: '/sign-in/' }).end();
    if (fault === 'late') await pause(lateMs);
    const path = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    const file = join(folder, path);
    const found = replaced.get(path) ?? (existsSync(file) && statSync(file).isFile() ? readFileSync(file) : undefined);
    const isPage = fault === 'page' || pathname === '/sign-in/';
    const type = isPage ? 'text/html' : (types[extname(path)] ?? 'application/octet-stream');
    const content = isPage ? Buffer.from(signIn) : (found ?? readFileSync(join(folder, '404.html')));
    const isText = !['.pack', '.woff2', '.png'].includes(extname(path));
    const bytes = isText ? gzipSync(content) : content;
    const status = fault === 'error' ? 500 : found === undefined && !isPage ? 404 : 200;
    response.writeHead(status, {
      'content-type': type,
      'content-length': bytes.length,
      'cache-control': 'no-cache',
      ...(isText ? { 'content-encoding': 'gzip' } : {}),
    });
    await send(response, fault === 'cut' ? bytes.subarray(0, bytes.length / 2) : bytes);
    if (fault === 'cut') setTimeout(() => request.socket.destroy(), tickMs);
    else response.end();
    return undefined;
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('badServer: no port');
  const bad: BadServer = {
    origin: `http://127.0.0.1:${address.port}`,
    asked: [],
    faultOf: () => undefined,
    bytesPerSecond: Number.POSITIVE_INFINITY,
    deploy: (copy, without = () => false) => {
      for (const [file, bytes] of copy.packs) if (!without(file)) replaced.set(`/${file}`, bytes);
      replaced.set('/worker.js', Buffer.from(copy.worker));
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
  return bad;
}
