// The two walks of a producer at the gate, in a second browser, on the hosted site with no signal: its taps are counted as tests/browser/walks.spec.ts counts them. Its days follow the clock of the machine.
import { expect, test } from '@playwright/test';
import { promise } from '../browser/copyHere.ts';
import { putPlace, toldPlace, twoBench } from '../browser/placeOfOnes.ts';
import { type Served, serve } from '../browser/staticServer.ts';
import { dist } from '../site/builtSite.ts';
import type { Driven } from './driven.ts';
import { DrivenFirefox } from './firefox.ts';

const phone = { width: 390, height: 844 };

/** Counts taps; typing is free. */
class Walk {
  taps = 0;
  readonly #driven: Driven;
  constructor(driven: Driven) {
    this.#driven = driven;
  }
  async tap(selector: string, words = ''): Promise<void> {
    await this.#driven.tap(selector, words);
    this.taps += 1;
  }
  async type(selector: string, text: string): Promise<void> {
    await this.tap(selector);
    await this.#driven.selectAll();
    await this.#driven.type(text);
  }
  /** A day: which part of the field a finger hits is chance, so it is put in whole. */
  async day(selector: string, day: string): Promise<void> {
    await this.tap(selector);
    await this.#driven.run(
      (at, value) => {
        const field = document.querySelector<HTMLInputElement>(at);
        if (!field) throw new Error(`no ${at}`);
        field.value = value;
        field.dispatchEvent(new Event('input', { bubbles: true }));
      },
      selector,
      day,
    );
  }
}
const live = (driven: Driven, slug: string): Promise<void> =>
  driven.until(`${slug} is live`, (name) => document.querySelector(`[data-calculator="${name}"][data-ready]`) !== null, slug);
const holds = (driven: Driven, id: string, value: string): Promise<void> =>
  driven.until(`${id} holds ${value}`, (at, text) => document.querySelector<HTMLInputElement>(`#${at}`)?.value === text, id, value);

/** Whose the figure in a field is. */
const whose = (driven: Driven, id: string, words: string): Promise<void> => driven.shows(`.field:has(#${id}) .whose`, words);

/** The site after a first visit, with the server gone. */
async function withoutSignal(
  work: (driven: Driven, server: Served) => Promise<void>,
  before: (driven: Driven) => Promise<void> = async () => {},
): Promise<void> {
  const server = await serve(dist);
  const driven = await DrivenFirefox.start(phone, (address) => address.startsWith(server.origin));
  try {
    await driven.open(`${server.origin}/`);
    await driven.until('all of the copy is here', (says) => document.querySelector('footer [data-hosted="foot"]')?.textContent === says, promise);
    await before(driven);
    await server.stop();
    await driven.open(`${server.origin}/`);
    await work(driven, server);
    // The worker keeps on asking for what is newer, and says so where nobody answers.
    expect((await driven.told()).filter((each) => !each.includes(server.origin))).toEqual([]);
  } finally {
    await driven.close();
    await server.stop().catch(() => undefined);
  }
}

test('Firefox, no signal: with nothing kept it takes at most fifteen, and makes the place', async () => {
  await withoutSignal(async (driven, { origin }) => {
    const walk = new Walk(driven);
    await walk.tap('main a[href$="/calculators/days-of-grass/"]');
    await live(driven, 'days-of-grass');
    await driven.shows('.answer .stamp', 'Example, not your numbers');
    await walk.type('#days-of-grass-areaAc', '60');
    await walk.type('#days-of-grass-heightIn', '8');
    await walk.type('#days-of-grass-stopHeightIn', '4');
    await walk.type('#days-of-grass-stock-0-countHead', '38');
    const until = await driven.run(() => document.querySelector<HTMLInputElement>('#days-of-grass-untilDay')?.value ?? '');
    await walk.day('#days-of-grass-untilDay', new Date(Date.parse(`${until}T00:00Z`) - 86_400_000).toISOString().slice(0, 10));
    await driven.shows('.answer .stamp', 'Your');
    await walk.tap('.take button', 'Keep as my place');
    await walk.type('#days-of-grass-keep-name', 'Creek place');
    await walk.tap('.keep-place button[type="submit"]', 'Keep');
    await driven.shows('.keep-place', 'Kept in Creek place.');
    expect(walk.taps).toBeLessThanOrEqual(15);
    expect(walk.taps).toBe(9);
    await driven.open(`${origin}/calculators/days-of-grass/`);
    await live(driven, 'days-of-grass');
    await holds(driven, 'days-of-grass-stock-0-countHead', '38');
  });
});

test('Firefox, no signal: on a known place the answer takes at most eight, then hay and selling with nothing typed again', async () => {
  const keep = (driven: Driven): Promise<void> => driven.run(putPlace, JSON.stringify(toldPlace(twoBench)));
  await withoutSignal(async (driven) => {
    const walk = new Walk(driven);
    await walk.tap('main a[href$="/calculators/days-of-grass/"]');
    await live(driven, 'days-of-grass');
    await holds(driven, 'days-of-grass-stock-0-countHead', '45');
    await whose(driven, 'days-of-grass-heightIn', 'example');
    await walk.tap('.place-pastures button', 'Low bench');
    await holds(driven, 'days-of-grass-areaAc', '85');
    await walk.type('#days-of-grass-heightIn', '6');
    for (const left of ['areaAc', 'stopHeightIn', 'stock-0-countHead', 'untilDay']) await whose(driven, `days-of-grass-${left}`, 'from your place');
    await driven.shows('.answer .stamp', 'Your');
    await walk.tap('.actions button', 'Copy link');
    await driven.shows('.actions .told', 'Link copied.');
    expect(walk.taps).toBeLessThanOrEqual(8);
    expect(walk.taps).toBe(4);
    await walk.tap('.actions button', 'Copy note');
    await driven.shows('.actions .told', 'Note copied.');

    const address = await driven.run(() => location.href);
    await walk.tap('main a[href*="/calculators/hay-to-grass/"]', 'Hay to bridge the gap');
    await live(driven, 'hay-to-grass');
    await driven.until('hay has an answer', () => document.querySelector('.answer.is-waiting') === null);
    await driven.until('the herd is there', () => document.querySelector('#hay-to-grass-herd')?.textContent?.includes('45') === true);
    await driven.until('it is no stranger’s link', () => document.querySelector('.place-link') === null);
    await driven.open(address);
    await live(driven, 'days-of-grass');
    await holds(driven, 'days-of-grass-areaAc', '85');
    await walk.tap('main a[href*="/calculators/feed-or-sell/"]', 'Sell, or feed and keep');
    await live(driven, 'feed-or-sell');
    await driven.until('selling has an answer', () => document.querySelector('.answer.is-waiting') === null);
    // What stands in a group is drawn once somebody opens it.
    await driven.run(() => {
      for (const each of document.querySelectorAll<HTMLElement>('details.group:not([open]) > summary')) each.click();
    });
    await holds(driven, 'feed-or-sell-herdHead', '45');
    expect(walk.taps).toBe(7);
  }, keep);
});
