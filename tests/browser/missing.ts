// A page of each kind, opened with one of its scripts missing.
import { type Browser, expect, type Page } from '@playwright/test';

export interface Kind {
  readonly name: string;
  readonly address: string;
  /** What somebody does there that fetches more. */
  readonly use?: (page: Page) => Promise<void>;
}
const openFold = (page: Page): Promise<void> => page.getByText('Work it out here').first().click();

/** One page of each kind that the site has. */
export const kinds: readonly Kind[] = [
  { name: 'home', address: '/' },
  { name: 'list of guides', address: '/guides/' },
  { name: 'guide with a form', address: '/guides/where-rain-goes/', use: openFold },
  { name: 'guide without a form', address: '/guides/hosting-a-copy/' },
  { name: 'list of calculators', address: '/calculators/' },
  { name: 'calculator', address: '/calculators/storm-runoff/?rain=6in&cover=own&curve-number=90&v=1' },
  { name: 'calculator that runs long', address: '/calculators/season/?v=1' },
  { name: 'working', address: '/calculators/storm-runoff/working/' },
  { name: 'place', address: '/place/' },
  { name: 'search', address: '/search/?q=hay' },
  { name: 'table', address: '/tables/forage-heights/' },
  { name: 'sheet', address: '/sheets/rain-gauge-year/' },
  { name: 'local values', address: '/local/' },
  { name: 'sources', address: '/sources/' },
  { name: 'sources of a letter', address: '/sources/m/' },
  { name: 'about', address: '/about/' },
  { name: 'checks', address: '/checks/' },
  { name: 'checks of a subject', address: '/checks/runoff/' },
  { name: 'glossary', address: '/glossary/' },
  { name: 'paths', address: '/paths/' },
  { name: 'make it yours', address: '/make-it-yours/' },
  { name: 'licenses', address: '/licenses/' },
  { name: 'folder', address: '/from-a-folder/' },
];
export const kindNamed = (name: string): Kind => {
  const found = kinds.find((kind) => kind.name === name);
  if (!found) throw new Error(`no kind of page "${name}"`);
  return found;
};

const viewport = { width: 390, height: 844 };
/** With a machine's own delays: the sentence is due two seconds after the page was loaded. */
const saidWithinMs = 2500;
/** By then a sheet has shown what a script was to show. */
const shownWithinMs = 8000;

/** What is wrong with a page as somebody sees it: parts that are neither live nor say that they are not, fields and buttons in none of those that say so, and words that are kept from sight. */
const faultsOf = (page: Page) =>
  page.evaluate(() => {
    const isSeen = (each: Element): boolean => each.checkVisibility({ visibilityProperty: true }) && each.getBoundingClientRect().height > 20;
    const isFolded = (each: Element): boolean => each.closest('details:not([open])') !== null;
    const nameOf = (each: Element): string => `${each.tagName}#${each.id}.${each.getAttribute('class') ?? ''}`;
    const notes = [...document.querySelectorAll('.not-come')];
    const isLive = (each: Element): boolean => each.closest('[data-ready]') !== null;
    const saying = notes.filter(isSeen).flatMap(({ parentElement }) => parentElement ?? []);
    return {
      silent: notes
        .filter((note) => !isLive(note) && !isFolded(note) && !isSeen(note))
        .map(({ parentElement }) => nameOf(parentElement ?? document.body)),
      // A word that explains itself opens without a script, and styles alone turn the seasons of /paths/.
      dead: [...document.querySelectorAll('main :is(button:not([popovertarget]), input:not([name="spring"]), select, textarea)')]
        .filter((each) => isSeen(each) && !isFolded(each) && !isLive(each) && !saying.some((part) => part.contains(each)))
        .map(nameOf),
      hidden: [...document.querySelectorAll('main *')]
        .filter((each) => {
          const isWords = [...each.childNodes].some((node) => node instanceof Text && node.data.trim() !== '');
          return isWords && !each.closest('.not-come, .one-moment, .in-view, .unseen, button') && getComputedStyle(each).visibility === 'hidden';
        })
        .map(nameOf),
    };
  });
/** All words on the glass. */
// biome-ignore lint/performance/useDomNodeTextContent: only what is shown counts
const wordsOf = (page: Page): Promise<string> => page.evaluate(() => document.body.innerText.replace(/\s+/g, ' '));

/** Everything that a page fetches as a script, and what it says when all of it has come. */
async function whole(browser: Browser, { address, use }: Kind) {
  const context = await browser.newContext({ serviceWorkers: 'block', viewport });
  const page = await context.newPage();
  const scripts = new Set<string>();
  page.on('request', (request) => {
    if (request.resourceType() === 'script') scripts.add(new URL(request.url()).pathname);
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  await use?.(page);
  const folded = 'details:not([open]) *';
  await expect(page.locator(`.not-come:not([data-ready] *, ${folded})`)).toHaveCount(0);
  await page.waitForLoadState('networkidle');
  const { hidden } = await faultsOf(page);
  const found = { scripts: [...scripts], words: await wordsOf(page), hidden };
  await context.close();
  return found;
}

/** Opens the page once for each script that it asks for, without that one. */
export async function expectSaid(browser: Browser, kind: Kind): Promise<void> {
  const { scripts, words, hidden } = await whole(browser, kind);
  expect(scripts.length, `${kind.name} asks for scripts`).toBeGreaterThan(1);
  for (const script of scripts) {
    const where = `${kind.name} without ${script}`;
    const context = await browser.newContext({ serviceWorkers: 'block', viewport });
    const page = await context.newPage();
    await page.route(`**${script}`, (route) => route.abort());
    await page.goto(kind.address);
    await kind.use?.(page);
    await expect(async () => expect(await faultsOf(page), where).toMatchObject({ silent: [], dead: [] })).toPass({
      timeout: saidWithinMs,
      intervals: [100],
    });
    await expect
      .poll(async () => (await faultsOf(page)).hidden.filter((each) => !hidden.includes(each)), {
        message: `${where}: hidden for ever`,
        timeout: shownWithinMs,
      })
      .toEqual([]);
    // Where nothing is brought to life, a missing script takes no word away.
    if ((await page.locator('.not-come, [data-ready]').count()) === 0) expect(await wordsOf(page), where).toBe(words);
    await context.close();
  }
}
