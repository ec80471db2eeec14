// Firefox as its makers package it, driven over WebDriver BiDi (w3.org/TR/webdriver-bidi), with the rules that it has for files on a disk left as they are.
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { Driven, watchPage } from './driven.ts';

const program = process.env['FIREFOX_PATH'] ?? '/usr/bin/firefox-esr';
const startMs = 60_000;

/** Nothing at the first start, nothing to a network, files saved without asking. What a page on a disk may do is the browser’s own default, named here so that no driver loosens it. */
const settings = (downloads: string): Readonly<Record<string, string | number | boolean>> => ({
  'security.fileuri.strict_origin_policy': true,
  'remote.prefs.recommended': false,
  'browser.shell.checkDefaultBrowser': false,
  'browser.startup.page': 0,
  'browser.startup.homepage_override.mstone': 'ignore',
  'browser.aboutwelcome.enabled': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'datareporting.policy.dataSubmissionPolicyBypassNotification': true,
  'toolkit.telemetry.reportingpolicy.firstRun': false,
  'app.normandy.enabled': false,
  'app.update.auto': false,
  'extensions.update.enabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'browser.download.folderList': 2,
  'browser.download.dir': downloads,
  'browser.download.useDownloadDir': true,
  'browser.download.alwaysOpenPanel': false,
});

interface Answer {
  readonly id?: number;
  readonly type: string;
  readonly method?: string;
  readonly result?: Readonly<Record<string, unknown>>;
  readonly message?: string;
  readonly params?: {
    readonly level?: string;
    readonly text?: string | null;
    readonly request?: { readonly url: string };
    readonly context?: string;
    readonly errorText?: string;
  };
}
type Given = Readonly<Record<string, unknown>>;

/** Sends commands over the one socket, and hears what the browser tells by itself. */
class Wire {
  readonly #socket: WebSocket;
  readonly #waiting = new Map<number, (answer: Answer) => void>();
  #next = 0;
  constructor(socket: WebSocket, onEvent: (event: Answer) => void) {
    this.#socket = socket;
    socket.addEventListener('message', ({ data }) => {
      const answer: Answer = JSON.parse(String(data));
      if (answer.id === undefined) return onEvent(answer);
      this.#waiting.get(answer.id)?.(answer);
      this.#waiting.delete(answer.id);
    });
  }
  send(method: string, params: Given): Promise<Given> {
    this.#next += 1;
    const id = this.#next;
    return new Promise((done, fail) => {
      this.#waiting.set(id, ({ type, result, message }) =>
        type === 'success' && result ? done(result) : fail(new Error(`${method}: ${message ?? type}`)),
      );
      this.#socket.send(JSON.stringify({ id, method, params }));
    });
  }
  close(): void {
    this.#socket.close();
  }
}

function opened(address: string): Promise<WebSocket> {
  return new Promise((done, fail) => {
    const socket = new WebSocket(address);
    socket.addEventListener('open', () => done(socket));
    socket.addEventListener('error', () => fail(new Error(`no answer at ${address}`)));
  });
}
/** The address at which the browser takes commands: it says so in its log. */
function addressOf(browser: ChildProcess): Promise<string> {
  return new Promise((done, fail) => {
    let log = '';
    const timer = setTimeout(() => fail(new Error(`Firefox did not start:\n${log}`)), startMs);
    browser.stderr?.on('data', (piece: Buffer) => {
      log += piece.toString();
      const found = /WebDriver BiDi listening on (ws:\/\/\S+)/.exec(log)?.[1];
      if (found === undefined) return;
      clearTimeout(timer);
      done(`${found}/session`);
    });
    browser.on('exit', (code) => fail(new Error(`Firefox ended with ${code}:\n${log}`)));
  });
}

const isInside = (address: string): boolean => /^(?:file|data|blob|about|moz-extension|resource|chrome):/.test(address);
const controlKey = '\uE009';
const enterKey = '\uE007';

export class DrivenFirefox extends Driven {
  readonly #browser: ChildProcess;
  readonly #folder: string;
  #wire: Wire | undefined;
  #context = '';
  private constructor(browser: ChildProcess, folder: string) {
    super();
    this.#browser = browser;
    this.#folder = folder;
  }

  /** @throws Error that names the package where the browser is absent */
  static async start(size = { width: 1280, height: 900 }, allowed: (address: string) => boolean = () => false): Promise<DrivenFirefox> {
    if (!existsSync(program))
      throw new Error(
        `There is no Firefox at ${program}. Debian’s package firefox-esr brings it (apt-get install firefox-esr); FIREFOX_PATH names another.`,
      );
    const folder = mkdtempSync(join(tmpdir(), 'firefox-'));
    const downloads = join(folder, 'downloads');
    mkdirSync(downloads);
    const lines = Object.entries(settings(downloads)).map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`);
    writeFileSync(join(folder, 'user.js'), lines.join('\n'));
    const browser = spawn(program, ['--headless', '--no-remote', '--profile', folder, '--remote-debugging-port', '0'], {
      env: { ...process.env, HOME: folder, MOZ_HEADLESS_WIDTH: String(size.width), MOZ_HEADLESS_HEIGHT: String(size.height + 90) },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    const driven = new DrivenFirefox(browser, folder);
    try {
      await driven.#begin(await addressOf(browser), size, allowed);
    } catch (error) {
      await driven.close();
      throw error;
    }
    return driven;
  }
  async #begin(address: string, size: { width: number; height: number }, allowed: (address: string) => boolean): Promise<void> {
    this.#wire = new Wire(await opened(address), ({ method, params }) => {
      if (method === 'log.entryAdded' && params?.level === 'error') this.troubles.push(params.text ?? '');
      const asked = params?.request?.url ?? '';
      if (method === 'network.beforeRequestSent' && params?.context === this.#context && !isInside(asked) && !allowed(asked))
        this.troubles.push(`asked for ${asked}`);
    });
    await this.#send('session.new', { capabilities: {} });
    await this.#send('session.subscribe', { events: ['log.entryAdded', 'network.beforeRequestSent'] });
    await this.#send('script.addPreloadScript', { functionDeclaration: watchPage.toString() });
    const { contexts } = await this.#send('browsingContext.getTree', {});
    const first: unknown = Array.isArray(contexts) ? contexts[0]?.context : undefined;
    if (typeof first !== 'string') throw new Error('Firefox opened no page');
    this.#context = first;
    await this.#send('browsingContext.setViewport', { context: first, viewport: size });
  }
  #send(method: string, params: Given): Promise<Given> {
    if (!this.#wire) throw new Error('Firefox is closed');
    return this.#wire.send(method, params);
  }
  async open(address: string): Promise<void> {
    await this.#send('browsingContext.navigate', { context: this.#context, url: 'about:blank', wait: 'complete' });
    await this.#send('browsingContext.navigate', { context: this.#context, url: address, wait: 'complete' });
  }
  async reload(): Promise<void> {
    await this.#send('browsingContext.reload', { context: this.#context, wait: 'complete' });
  }
  async #called(declaration: string, given: string): Promise<Given> {
    const { result, exceptionDetails } = await this.#send('script.callFunction', {
      functionDeclaration: declaration,
      awaitPromise: true,
      target: { context: this.#context },
      arguments: [{ type: 'string', value: given }],
    });
    if (exceptionDetails !== undefined) throw new Error(JSON.stringify(exceptionDetails));
    return typeof result === 'object' && result !== null ? { ...result } : {};
  }
  protected async runText(declaration: string, given: string): Promise<string> {
    const { value } = await this.#called(declaration, given);
    return String(value);
  }
  async #act(source: Given): Promise<void> {
    await this.#send('input.performActions', { context: this.#context, actions: [source] });
  }
  protected press(x: number, y: number): Promise<void> {
    const move = { type: 'pointerMove', x: Math.round(x), y: Math.round(y) };
    return this.#act({
      ...{ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' } },
      actions: [move, { type: 'pointerDown', button: 0 }, { type: 'pointerUp', button: 0 }],
    });
  }
  #keys(actions: readonly Given[]): Promise<void> {
    return this.#act({ type: 'key', id: 'keys', actions });
  }
  type(text: string): Promise<void> {
    return this.#keys(
      [...text.replaceAll('\n', enterKey)].flatMap((value) => [
        { type: 'keyDown', value },
        { type: 'keyUp', value },
      ]),
    );
  }
  selectAll(): Promise<void> {
    return this.#keys([
      { type: 'keyDown', value: controlKey },
      { type: 'keyDown', value: 'a' },
      { type: 'keyUp', value: 'a' },
      { type: 'keyUp', value: controlKey },
    ]);
  }
  async give(selector: string, path: string): Promise<void> {
    const { sharedId } = await this.#called('(at) => document.querySelector(at)', selector);
    await this.#send('input.setFiles', { context: this.#context, element: { sharedId }, files: [path] });
  }
  async saved(work: () => Promise<void>): Promise<{ readonly name: string; readonly text: string }> {
    const downloads = join(this.#folder, 'downloads');
    const before = readdirSync(downloads);
    await work();
    const fresh = (): readonly string[] => readdirSync(downloads).filter((name) => !before.includes(name) && !name.endsWith('.part'));
    await expect.poll(() => fresh().length, { message: 'a file is saved', timeout: 30_000 }).toBeGreaterThan(0);
    const [name = ''] = fresh();
    await expect.poll(() => readFileSync(join(downloads, name)).length, { timeout: 30_000 }).toBeGreaterThan(0);
    return { name, text: readFileSync(join(downloads, name), 'utf8') };
  }
  async close(): Promise<void> {
    const ended = new Promise((done) => this.#browser.once('exit', done));
    await this.#wire?.send('browser.close', {}).catch(() => undefined);
    this.#wire?.close();
    if (this.#browser.exitCode === null) this.#browser.kill();
    if (this.#browser.exitCode === null) await ended;
    rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}
