// One way to drive a browser for all that is tried in two of them: by what stands on the page, with its own pointer and keys.
import type { Page } from '@playwright/test';
import { expect } from '@playwright/test';

type Plain = string | number | boolean | null | undefined | readonly Plain[];

/** Marks what a page does that it may not, before any of its own scripts: `driven` holds what was told. */
export function watchPage(): void {
  const told: string[] = [];
  Object.assign(globalThis, { driven: told });
  addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => told.push(`policy: ${violatedDirective} ${blockedURI}`));
  // A size that is still to be told at the end of a frame is told in the next one: the standard has this notice, and it is no fault.
  addEventListener(
    'error',
    ({ message = 'a file did not come' }) => message.startsWith('ResizeObserver loop') || told.push(`error: ${message}`),
    true,
  );
  // A window to print would stand over the page for ever.
  globalThis.print = () => told.push('printed');
  addEventListener('unhandledrejection', ({ reason }) => told.push(`rejected: ${String(reason)}`));
  const own = globalThis.Worker;
  globalThis.Worker = class extends own {
    constructor(address: string | URL, options?: WorkerOptions) {
      told.push(`worker: ${address}`);
      super(address, options);
    }
  };
}

/** Runs in the page: where to put a finger, if anything there can be tapped now and stands still; and whether the tap came. */
async function pointOf(selector: string, words: string): Promise<readonly [number, number] | null> {
  const found = [...document.querySelectorAll<HTMLElement>(selector)].find(
    (each) => each.checkVisibility() && `${each.textContent} ${each.getAttribute('aria-label') ?? ''}`.replace(/\s+/g, ' ').includes(words),
  );
  if (!found) return null;
  const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
  const away = (): number => found.getBoundingClientRect().top - innerHeight / 2;
  // By screens, as a finger pushes a page: what was never on the screen is drawn when it comes there, and moves what lies below.
  for (let screens = 0; screens < 100 && Math.abs(away()) > innerHeight; screens += 1) {
    scrollBy({ top: Math.sign(away()) * innerHeight * 0.9, behavior: 'instant' });
    await wait(30);
  }
  found.scrollIntoView({ block: 'center', behavior: 'instant' });
  const scrolled = found.getBoundingClientRect().top;
  await wait(200);
  if (found.getBoundingClientRect().top !== scrolled) return null;
  const { left, top, width, height } = found.getBoundingClientRect();
  const point = [left + width / 2, top + height / 2] as const;
  const hit = document.elementFromPoint(...point);
  if (!hit || !(found.contains(hit) || hit.contains(found))) return null;
  Object.assign(globalThis, { drivenHit: false });
  found.addEventListener('click', () => Object.assign(globalThis, { drivenHit: true }), { once: true, capture: true });
  return point;
}
const wasHit = (): boolean | undefined => (globalThis as unknown as { readonly drivenHit?: boolean }).drivenHit;

export abstract class Driven {
  /** What went wrong or went out: complaints in the console, addresses outside the disk. */
  readonly troubles: string[] = [];

  abstract open(address: string): Promise<void>;
  protected abstract runText(declaration: string, given: string): Promise<string>;
  protected abstract press(x: number, y: number): Promise<void>;
  /** Keys, one after the other, into what has the focus. */
  abstract type(text: string): Promise<void>;
  /** Takes all of a field, so that the next key replaces it. */
  abstract selectAll(): Promise<void>;
  /** Gives a file to a field for files. */
  abstract give(selector: string, path: string): Promise<void>;
  /** What was saved by the work, as a file. */
  abstract saved(work: () => Promise<void>): Promise<{ readonly name: string; readonly text: string }>;
  abstract close(): Promise<void>;

  /** Runs in the page; what goes in and comes out is plain data. */
  async run<A extends readonly Plain[], R>(work: (...given: A) => R | Promise<R>, ...given: A): Promise<R> {
    const back = await this.runText(
      `async (text) => JSON.stringify({ back: await (${work.toString()})(...JSON.parse(text)) })`,
      JSON.stringify(given),
    );
    return JSON.parse(back).back;
  }
  /** Waits until something holds in the page. */
  async until<A extends readonly Plain[]>(says: string, work: (...given: A) => boolean, ...given: A): Promise<void> {
    await expect.poll(() => this.run(work, ...given).catch(() => false), { message: says, timeout: 30_000 }).toBe(true);
  }
  /** The text of the first that is seen, all spaces as one. */
  text(selector: string): Promise<string> {
    return this.run((at) => {
      const all = [...document.querySelectorAll<HTMLElement>(at)].filter((each) => each.checkVisibility());
      return (all[0]?.textContent ?? '').replace(/\s+/g, ' ').trim();
    }, selector);
  }
  /** Until a text is seen there. */
  async shows(selector: string, words: string): Promise<void> {
    await expect.poll(() => this.text(selector).catch(() => ''), { message: `${selector} says ${words}`, timeout: 30_000 }).toContain(words);
  }
  /** Taps the first of these that is seen and reads so, as a finger would: what lies over it would be hit. What moved away under the finger is tapped again. */
  async tap(selector: string, words = ''): Promise<void> {
    await expect
      .poll(
        async () => {
          const at = await this.run(pointOf, selector, words);
          if (!at) return false;
          await this.press(...at);
          // Where the page is another by now, it was hit.
          return (await this.run(wasHit).catch(() => true)) !== false;
        },
        { message: `${selector} "${words}" can be tapped`, timeout: 30_000 },
      )
      .toBe(true);
  }
  /** Puts a text over what a field holds. */
  async fill(selector: string, text: string, words = ''): Promise<void> {
    await this.tap(selector, words);
    await this.selectAll();
    await this.type(text);
  }
  /** A choice by its words. */
  choose(selector: string, words: string): Promise<boolean> {
    return this.run(
      (at, says) => {
        const select = document.querySelector<HTMLSelectElement>(at);
        const option = [...(select?.options ?? [])].find((each) => each.text === says);
        if (!select || !option) return false;
        select.value = option.value;
        return select.dispatchEvent(new Event('change', { bubbles: true }));
      },
      selector,
      words,
    );
  }
  /** What the page has told of itself, and what the browser told of it. */
  async told(): Promise<readonly string[]> {
    const inPage = await this.run(() => (globalThis as unknown as { readonly driven: readonly string[] }).driven);
    return [...inPage, ...this.troubles];
  }
}

const isInside = (address: string): boolean => /^(?:file|data|blob|about):/.test(address);

/** Chromium, as all other tests have it. */
export class DrivenChromium extends Driven {
  readonly #page: Page;
  constructor(page: Page) {
    super();
    this.#page = page;
    page.on('console', (entry) => {
      if (['error', 'warning'].includes(entry.type())) this.troubles.push(`${page.url()} ${entry.text()}`);
    });
    page.on('pageerror', (error) => this.troubles.push(`${page.url()} ${error.message}`));
    page.on('request', (request) => {
      if (!isInside(request.url())) this.troubles.push(`asked for ${request.url()}`);
    });
    page.on('requestfailed', (request) => {
      // Whoever leaves a page stops what was still on its way.
      if (request.failure()?.errorText !== 'net::ERR_ABORTED') this.troubles.push(`${request.failure()?.errorText} ${request.url()}`);
    });
  }
  static async on(page: Page): Promise<DrivenChromium> {
    await page.addInitScript(watchPage);
    return new DrivenChromium(page);
  }
  async open(address: string): Promise<void> {
    // Another anchor of the same page would not load it again.
    await this.#page.goto('about:blank');
    await this.#page.goto(address);
  }
  protected runText(declaration: string, given: string): Promise<string> {
    return this.#page.evaluate(`(${declaration})(${JSON.stringify(given)})`);
  }
  protected press(x: number, y: number): Promise<void> {
    return this.#page.mouse.click(x, y);
  }
  type(text: string): Promise<void> {
    return this.#page.keyboard.type(text);
  }
  selectAll(): Promise<void> {
    return this.#page.keyboard.press('ControlOrMeta+a');
  }
  give(selector: string, path: string): Promise<void> {
    return this.#page.locator(selector).setInputFiles(path);
  }
  async saved(work: () => Promise<void>): Promise<{ readonly name: string; readonly text: string }> {
    const { readFileSync } = await import('node:fs');
    const [download] = await Promise.all([this.#page.waitForEvent('download'), work()]);
    return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
  }
  close(): Promise<void> {
    return this.#page.close();
  }
}
