/**
 * What visits weigh, by the log of nginx with the file of `servers/`: bytes that went out, heads of answers included; and what a million of them cost at some
 * prices. Reads the built site and needs Debian's nginx-light: `npm run bench:visits`, or with prices of your own, `npm run bench:visits -- 0.02 0.08`.
 */
import { type BrowserContext, chromium } from '@playwright/test';
import config from '../../playwright.config.ts';
import { serveBy } from '../release/webServers.ts';
import { dist } from '../site/builtSite.ts';

/** Dollars a gigabyte (10^9 bytes) sent. Assumed: from giving it away over a small host's price to the list price of large ones, from memory. */
const pricesUsdPerGB = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [0.01, 0.05, 0.09];
const visits = 1_000_000;
/** A year of somebody who uses it: one first visit, new editions fetched whole, and all the other visits. Assumed. */
const year = { firsts: 1, editions: 2, returns: 30 } as const;
const people = 10_000;

const guide = 'guides/where-rain-goes/';
const calculator = 'calculators/storm-runoff/';

interface Weight {
  readonly answers: number;
  readonly bytes: number;
  /** Of files that never change under their name: a network of caches asks for each once. */
  readonly foreverBytes: number;
}
const server = await serveBy('nginx', dist, '/');
const { executablePath, args } = config.use?.launchOptions ?? {};
const browser = await chromium.launch({ ...(executablePath === undefined ? {} : { executablePath }), ...(args ? { args } : {}) });

let read = 0;
const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
/** What the log has more than last time, once nothing has come for a while. */
async function weightSince(): Promise<Weight> {
  let length = -1;
  while (server.logged().length !== length) {
    length = server.logged().length;
    await wait(4000);
  }
  const lines = [...server.logged().matchAll(/^\S+ \d{3} GET (\S+) (\d+)$/gm)].slice(read);
  read += lines.length;
  const sum = (matches: RegExp): number => lines.reduce((total, [, path = '', bytes]) => total + (matches.test(path) ? Number(bytes) : 0), 0);
  return { answers: lines.length, bytes: sum(/./), foreverBytes: sum(/\/(?:_astro|copy)\//) };
}
async function visit(context: BrowserContext, paths: readonly string[]): Promise<Weight> {
  const page = await context.newPage();
  for (const path of paths) await page.goto(`http://127.0.0.1:${server.port}/${path}`, { waitUntil: 'load' });
  const weight = await weightSince();
  await page.close();
  return weight;
}
await weightSince();
const phone = { viewport: { width: 390, height: 844 } } as const;
const without = await browser.newContext({ ...phone, serviceWorkers: 'block' });
const oneGuide = await visit(without, [guide]);
const itsCalculator = await visit(without, [calculator]);
const again = await visit(without, ['', guide, calculator]);
await without.close();
const withCopy = await browser.newContext(phone);
const first = await visit(withCopy, ['']);
const back = await visit(withCopy, ['', guide, calculator]);
await withCopy.close();
await browser.close();
await server.stop();

const rows: readonly (readonly [name: string, weight: Weight])[] = [
  ['a guide, no copy kept', oneGuide],
  ['its calculator after that', itsCalculator],
  ['home and both again, no copy kept', again],
  ['first visit, home and the whole copy', first],
  ['return visit, from the copy', back],
];
const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`.padStart(11);
const usd = (bytes: number, price: number): string => `$${((bytes / 1e9) * price).toFixed(2)}`.padStart(10);
console.log(
  `${'visit'.padEnd(38)}answers     bytes    forever  ${pricesUsdPerGB.map((price) => `  at $${price}/GB`).join('')}  for ${visits.toLocaleString('en-US')}`,
);
for (const [name, { answers, bytes, foreverBytes }] of rows)
  console.log(
    `${name.padEnd(38)}${String(answers).padStart(7)}${kB(bytes)}${kB(foreverBytes)}${pricesUsdPerGB.map((price) => usd(bytes * visits, price)).join('  ')}`,
  );
const yearBytes = people * ((year.firsts + year.editions) * first.bytes + year.returns * back.bytes);
console.log(
  `\n${people.toLocaleString('en-US')} people for a year, each ${year.firsts} first visit, ${year.editions} new editions fetched whole, ${year.returns} returns: ` +
    `${(yearBytes / 1e9).toFixed(1)} GB, ${pricesUsdPerGB.map((price) => `${usd(yearBytes, price).trim()} at $${price}/GB`).join(', ')}`,
);
