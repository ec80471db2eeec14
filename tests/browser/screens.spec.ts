import { expect, type Page, test } from '@playwright/test';
import { addressOf, dist, filesOf } from '../site/builtSite.ts';
import { longUnless } from './walked.ts';

const addresses = filesOf(dist, /\.html$/).map(addressOf);
const calculators = addresses.filter((address) => /^\/calculators\/[^/]+\/$/.test(address));
/** Looked at in every run: few questions and many, a tally, a long table, a long run. */
const oftenLooked = ['/', '/guides/', '/place/', '/search/', ...['days-of-grass', 'share-taken', 'season'].map((slug) => `/calculators/${slug}/`)];
/** Pages of one making are looked at once. */
const kinds = [
  '/',
  '/calculators/',
  '/guides/',
  '/sources/',
  '/checks/',
  '/glossary/',
  '/paths/',
  '/local/',
  '/search/',
  '/about/',
  '/tables/',
  '/sheets/',
  '/place/',
  '/make-it-yours/',
  '/licenses/',
  '/from-a-folder/',
  '/calculators/storm-runoff/working/',
  ...['guides', 'tables', 'sheets', 'local', 'checks', 'sources'].flatMap((folder) =>
    addresses.filter((address) => address.startsWith(`/${folder}/`) && address !== `/${folder}/`).slice(0, 2),
  ),
];
const widths = [320, 390, 768, 1280];
const sizes: Readonly<Record<number, number>> = { 320: 700, 390: 844, 768: 1024, 1280: 800 };

async function settled(page: Page, address: string): Promise<void> {
  await page.goto(address, { waitUntil: 'load' });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  // What a script brings to life has come, also on a busy machine.
  await page.waitForFunction(() => [...document.querySelectorAll('.not-come')].every((each) => getComputedStyle(each).display === 'none'));
}

/** What reaches past the glass, by tag and class. */
const sideways = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const wide = [...document.querySelectorAll('main *, header *, footer *')].filter(
      (each) => each.getBoundingClientRect().right > clientWidth + 0.5,
    );
    return [`${scrollWidth} in ${clientWidth}`, ...wide.slice(0, 4).map((each) => `${each.tagName}.${each.getAttribute('class') ?? ''}`)];
  });

/** Under 44 px, but for links inside prose, which the Web Content Accessibility Guidelines 2.2 (2.5.8) leave out, and what is not seen. */
const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const seen = (each: Element): boolean => each.checkVisibility({ checkOpacity: true }) && !each.closest('.unseen, .skip, [inert]');
    const boxOf = (each: Element): DOMRect => {
      // The label of a control is a part of its target.
      const label = each instanceof HTMLInputElement && /^(radio|checkbox)$/.test(each.type) ? each.closest('label') : null;
      return (label ?? each).getBoundingClientRect();
    };
    // A link or an explained word within a sentence: words stand beside it in its own paragraph, cell or item, some for each of its links. A row of
    // links with signs between them is none; and a number to dial is never let off. A source in brackets belongs to what it stands behind.
    const isInProse = (each: Element): boolean => {
      const around = each.closest('p, li, dd, dt, td, th, figcaption, h2, h3, label');
      const links = [...(around?.querySelectorAll('a, button') ?? [])];
      const linked = links.reduce((sum, link) => sum + (link.textContent?.trim().length ?? 0), 0);
      const beside = (around?.textContent?.trim().length ?? 0) - linked;
      return each.matches('.term, .cite a') || (each.matches('a:not([href^="tel:"])') && beside > 12 * links.length);
    };
    return [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
      .filter((each) => seen(each) && !isInProse(each))
      .flatMap((each) => {
        const { width, height } = boxOf(each);
        const isSmall = height < 43.5 || width < 43.5;
        return width === 0 || !isSmall
          ? []
          : [
              `${each.tagName}.${each.getAttribute('class') ?? ''} ${Math.round(width)} x ${Math.round(height)} "${each.textContent?.trim().slice(0, 24) ?? ''}"`,
            ];
      })
      .slice(0, 6);
  });

/** Words that their own box cuts off without a way to reach them. The strip at the bottom only repeats what the answer says in full. */
const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main *, header *, footer *')]
      .filter((each) => {
        const { overflowX, overflowY, clipPath } = getComputedStyle(each);
        if (!each.checkVisibility() || each.closest('.unseen, svg, .katex, [aria-hidden="true"]') || clipPath !== 'none') return false;
        const isHidden = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
        return (isHidden(overflowX) && each.scrollWidth > each.clientWidth + 1) || (isHidden(overflowY) && each.scrollHeight > each.clientHeight + 1);
      })
      .map((each) => `${each.tagName}.${each.getAttribute('class') ?? ''}`)
      .slice(0, 4),
  );

/** Type at twice its size and nothing else, as a reader's setting makes it, whatever unit it was given in. */
const enlarge = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const sized = [...document.querySelectorAll<HTMLElement>('body *:not(svg, svg *, .katex *)')].map((each) => ({
      each,
      sizePx: Number.parseFloat(getComputedStyle(each).fontSize),
    }));
    for (const { each, sizePx } of sized) each.style.fontSize = `${sizePx * 2}px`;
  });

async function fits(page: Page, address: string, as: string): Promise<void> {
  expect.soft(await sideways(page), `sideways scroll of ${address}, ${as}`).toEqual([]);
  expect.soft(await smallTargets(page), `small targets of ${address}, ${as}`).toEqual([]);
  expect.soft(await cutOff(page), `words cut off on ${address}, ${as}`).toEqual([]);
}

/** Bottoms and tops of what the first screen must show. */
const firstScreen = (page: Page) =>
  page.evaluate(() => {
    const endOf = (selector: string): number =>
      Math.max(0, ...[...document.querySelectorAll(`main ${selector}`)].slice(0, 1).map((each) => each.getBoundingClientRect().bottom));
    const tops = [...document.querySelectorAll('main .screen figure.picture, main .asks .ask')]
      .map((each) => each.getBoundingClientRect().top)
      .filter((top) => top > 0);
    return {
      figurePx: Math.round(endOf('.big')),
      rangePx: Math.round(Math.max(endOf('.big'), endOf('.range'))),
      nextPx: Math.round(Math.min(9999, ...tops)),
    };
  });

/** What stays in view beside the questions, from the stamp to the last word under the picture. */
const stayPx = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const [from, to] = ['main .stay .stamp-line', 'main .stay figure.picture'].map((selector) =>
      document.querySelector(selector)?.getBoundingClientRect(),
    );
    return from && to ? Math.round(to.bottom - from.top) : 0;
  });

/** The questions that stand open, how many fields each has, and groups. */
const standsOpen = (page: Page) =>
  page.evaluate(() => ({
    asks: document.querySelectorAll('main .asks .ask').length,
    // Radios of one question are one field.
    fields: [...document.querySelectorAll('main .asks .ask')].map(
      (ask) =>
        [...ask.querySelectorAll('input, select, textarea')].filter(
          (each) =>
            each.checkVisibility() &&
            !each.matches('[type=file]') &&
            !(each.matches('[type=radio]') && each.closest('fieldset')?.querySelector('input') !== each),
        ).length,
    ),
    groups: document.querySelectorAll('main .group[open]').length,
  }));
const scrollers = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('main .screen *')]
      .filter(
        (each) => /auto|scroll/.test(getComputedStyle(each).overflowY) && each.scrollHeight > each.clientHeight + 1 && each.tagName !== 'TEXTAREA',
      )
      .map((each) => each.getAttribute('class') ?? each.tagName),
  );

/** How far the answer reaches into what stands below the questions, once somebody has read down to there. */
const overBelowPx = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const [stay, below] = ['main .stay', 'main .below'].map((selector) => document.querySelector(selector));
    if (!stay || !below) throw new Error('no answer, or nothing below it');
    below.scrollIntoView();
    await new Promise(requestAnimationFrame);
    return stay.getBoundingClientRect().bottom - below.getBoundingClientRect().top;
  });

/** A calculator that was loaded at a width answers on the first screen and asks little. */
const answersAt: Readonly<Record<number, (page: Page) => Promise<unknown>>> = {
  320: async (page) => {
    const narrow = await firstScreen(page);
    expect.soft(narrow.figurePx, 'answer ends on a small phone').toBeLessThanOrEqual(600);
    return narrow;
  },
  390: async (page) => {
    const [phone, open] = [await firstScreen(page), await standsOpen(page)];
    expect.soft(phone.figurePx, 'there is an answer').toBeGreaterThan(0);
    expect.soft(phone.rangePx, 'answer and range end').toBeLessThanOrEqual(620);
    expect.soft(phone.nextPx, 'a picture or a field begins').toBeLessThanOrEqual(780);
    expect.soft(open.groups, 'groups open').toBe(0);
    expect.soft(open.asks, 'questions that stand open').toBeLessThanOrEqual(5);
    expect.soft(Math.max(...open.fields), 'readings of one question that stand open').toBeLessThanOrEqual(8);
    // A table of readings is one question.
    expect.soft(open.fields.filter((each) => each > 1).length, 'tables of readings that stand open').toBeLessThanOrEqual(1);
    return { phone, open };
  },
  1280: async (page) => {
    const wide = await scrollers(page);
    expect.soft(wide, 'scrollers in the page').toEqual([]);
    // The picture is drawn again once it knows its width.
    await expect.poll(() => stayPx(page), { message: 'stamp to caption, where that stays in view' }).toBeLessThanOrEqual(500);
    expect.soft(await overBelowPx(page), 'the answer over what stands below it').toBeLessThanOrEqual(0);
    return wide;
  },
};

// Each page is loaded once at each width for all that is looked at there.
for (const address of [...kinds, ...calculators]) {
  const isCalculator = calculators.includes(address);
  const name = `${address} fits every glass, large type and forced colors${isCalculator ? '; answers on the first screen and asks little' : ''}`;
  test(name, longUnless(oftenLooked.includes(address)), async ({ page }, { annotations }) => {
    for (const width of widths) {
      await page.setViewportSize({ width, height: sizes[width] ?? 800 });
      await settled(page, address);
      // First, while what is off the glass keeps its stand-in size: to look at every box lays it out within that.
      const measured = isCalculator ? await answersAt[width]?.(page) : undefined;
      await fits(page, address, `${width} px`);
      if (measured !== undefined) annotations.push({ type: 'measured', description: JSON.stringify({ address, width, measured }) });
      // Pages that stand right below the first one, which itself is still 10 px too wide then.
      if (width === 320 && /^\/[^/]+\/$/.test(address)) {
        await enlarge(page);
        expect.soft(await sideways(page), `sideways scroll of ${address}, type at 200 % on the smallest phone`).toEqual([]);
      }
      if (width !== 390) continue;
      await page.emulateMedia({ forcedColors: 'active' });
      await fits(page, address, 'forced colors');
      await page.emulateMedia({ forcedColors: null });
      await enlarge(page);
      expect.soft(await sideways(page), `sideways scroll of ${address}, type at 200 %`).toEqual([]);
      expect.soft(await cutOff(page), `words cut off on ${address}, type at 200 %`).toEqual([]);
    }
  });
}
