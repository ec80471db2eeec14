// The servers of Debian with the files of `servers/`, as an office would set them up: only the lines marked "yours" are changed.
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../support/files.ts';

export interface WebServer {
  readonly port: number;
  /** The copy that it serves; a test may change files in it. */
  readonly folder: string;
  /** All that it has written down. */
  readonly logged: () => string;
  readonly stop: () => Promise<void>;
}
interface Kind {
  readonly program: string;
  /** What Debian calls it. */
  readonly debianPackage: string;
  /** Writes its files into a folder and returns what starts it. */
  readonly prepare: (at: Place) => readonly string[];
}
interface Place {
  readonly scratch: string;
  readonly port: number;
  readonly www: string;
  /** `/` or such as `/dry/`. */
  readonly base: string;
}

/** Each line as it stands in the file, and what an office writes there. */
function withOurs(file: string, changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce(
    (text, [from, to]) => {
      if (text.split(from).length !== 2) throw new Error(`servers/${file} should hold “${from}” once`);
      return text.replace(from, () => to);
    },
    readFileSync(join(root, 'servers', file), 'utf8'),
  );
}

/** The Caddyfile for one address, with what Caddy is told of itself before it. */
function writeCaddyfile({ scratch, www, base }: Place, address: string, itself = ''): readonly string[] {
  const site = withOurs('Caddyfile', [
    ['\n:80 {', `\n${address}`],
    ['root * /srv/holdwater', `root * ${www}`],
    ['rewrite * /404.html', `rewrite * ${base}404.html`],
  ]);
  writeFileSync(join(scratch, 'Caddyfile'), `{\n\tadmin off\n${itself}}\n${site}`);
  return ['run', '--adapter', 'caddyfile', '--config', join(scratch, 'Caddyfile')];
}

export const kinds: Readonly<Record<'nginx' | 'caddy' | 'caddyByHttps', Kind>> = {
  nginx: {
    program: 'nginx',
    debianPackage: 'nginx-light',
    prepare: ({ scratch, port, www, base }) => {
      const site = withOurs('nginx.conf', [
        ['listen 80;', `listen 127.0.0.1:${port};`],
        ['root /srv/holdwater;', `root ${www};`],
        ['error_page 404 /404.html;', `error_page 404 ${base}404.html;`],
      ]).replaceAll('/var/log/nginx/', `${scratch}/`);
      writeFileSync(join(scratch, 'site.conf'), site);
      const temporary = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'].map((name) => `${name}_temp_path ${scratch}/${name};`).join('\n');
      const user = process.getuid?.() === 0 ? 'user root;' : '';
      writeFileSync(
        join(scratch, 'nginx.conf'),
        `${user} daemon off; worker_processes 1; pid ${scratch}/pid; events {}
http { include /etc/nginx/mime.types; ${temporary} include ${scratch}/site.conf; }\n`,
      );
      return ['-p', scratch, '-c', join(scratch, 'nginx.conf'), '-e', join(scratch, 'start.log')];
    },
  },
  caddy: { program: 'caddy', debianPackage: 'caddy', prepare: (at) => writeCaddyfile(at, `http://:${at.port} {\n\tbind 127.0.0.1`) },
  // As under a name of an office's own, with a certificate that Caddy makes itself.
  caddyByHttps: {
    program: 'caddy',
    debianPackage: 'caddy',
    prepare: (at) =>
      writeCaddyfile(
        at,
        `https://localhost:${at.port} {\n\ttls internal\n\tbind 127.0.0.1`,
        '\tskip_install_trust\n\tauto_https disable_redirects\n',
      ),
  },
};

function needProgram({ program, debianPackage }: Kind): void {
  if (spawnSync(program, ['-h']).error !== undefined)
    throw new Error(`${program} is not here: install Debian's ${debianPackage} (apt-get install ${debianPackage})`);
}
/** Programs that only an administrator starts lie where others do not look. */
const path = `${process.env['PATH'] ?? ''}:/usr/sbin:/usr/local/sbin`;
process.env['PATH'] = path;

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => (typeof address === 'object' && address !== null ? resolve(address.port) : reject(new Error('no port'))));
    });
  });
async function answers(process: ChildProcess, port: number, said: () => string): Promise<void> {
  for (let tries = 0; tries < 100; tries++) {
    if (process.exitCode !== null) break;
    if (
      await fetch(`http://127.0.0.1:${port}/`).then(
        () => true,
        () => false,
      )
    )
      return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`the server does not answer: ${said()}`);
}

/**
 * A copy of a built site behind one of them.
 * @throws Error naming Debian's package, where the server is not installed
 */
export async function serveBy(name: keyof typeof kinds, built: string, base: string): Promise<WebServer> {
  const kind = kinds[name];
  needProgram(kind);
  const scratch = mkdtempSync(join(tmpdir(), 'holdwater-'));
  const www = join(scratch, 'www');
  const folder = join(www, base);
  mkdirSync(folder, { recursive: true });
  cpSync(built, folder, { recursive: true });
  const port = await freePort();
  let said = '';
  const server = spawn(kind.program, kind.prepare({ scratch, port, www, base }), {
    env: { ...process.env, HOME: scratch, XDG_DATA_HOME: scratch, XDG_CONFIG_HOME: scratch },
  });
  for (const stream of [server.stdout, server.stderr]) stream.on('data', (piece: Buffer) => (said += piece.toString()));
  const gone = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  const read = (file: string): string => {
    try {
      return readFileSync(join(scratch, file), 'utf8');
    } catch {
      return '';
    }
  };
  const logged = (): string => [said, ...['start.log', 'holdwater.log', 'holdwater-error.log'].map(read)].join('\n');
  await answers(server, port, logged);
  return {
    port,
    folder,
    logged,
    stop: async () => {
      server.kill();
      await gone;
      rmSync(scratch, { recursive: true });
    },
  };
}
