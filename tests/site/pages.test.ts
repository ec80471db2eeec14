import { describe, expect, it } from 'vitest';
import { guideTexts } from '../support/guideHeads.ts';
import { addressOf, attributes, dist, filesOf, readingText, textOf } from './builtSite.ts';

const pages = filesOf(dist, /\.html$/);

describe('every page', () => {
  it.each(pages)('%s names itself, in English, under one heading', (page) => {
    const html = textOf(dist, page);
    expect(html).toContain('<html lang="en">');
    expect(html).toMatch(/<title>[^<]+<\/title>/);
    expect(html.match(/<h1\b/g)).toHaveLength(1);
    expect(html).toContain('href="#main"');
  });

  it('loads the order of layers before any other style', () => {
    const late = pages.filter(
      (page) => !/\/_astro\/base\.[\w-]+\.css$/.test(/<link rel="stylesheet" href="([^"]*)"|<style\b/.exec(textOf(dist, page))?.[1] ?? ''),
    );
    expect(late).toEqual([]);
  });

  it('has a title of its own', () => {
    const titles = pages.map((page) => /<title>([^<]+)<\/title>/.exec(textOf(dist, page))?.[1]);
    expect(new Set(titles).size).toBe(pages.length);
  });
});

describe('guides and calculators', () => {
  it.each(guideTexts)('$slug is named on the pages of its calculators', ({ slug, head }) => {
    const silent = head.calculators.filter((each) => !textOf(dist, `calculators/${each}/index.html`).includes(`/guides/${slug}/"`));
    expect(silent).toEqual([]);
  });

  it.each(guideTexts.filter(({ head }) => head.calculators.length > 0))('$slug leads to a form before its first chapter', ({ slug }) => {
    const [, opening = ''] =
      /<p class="lead\b[^>]*>([\s\S]*?)<h2\b/.exec(
        textOf(dist, `guides/${slug}/index.html`).replace(/<details class="contents\b[\s\S]*?<\/details>/, ''),
      ) ?? [];
    expect(opening).toMatch(/href="\/calculators\/[a-z-]+\//);
  });
});

describe('formulas', () => {
  const withFormulas = pages.filter((page) => textOf(dist, page).includes('class="katex-html"'));

  it('are drawn', () => {
    expect(withFormulas.map(addressOf)).not.toEqual([]);
    for (const page of withFormulas) expect(textOf(dist, page), page).toContain('<math ');
  });

  it('come with the styles that lay them out, which guides without any do without', () => {
    const laidOut = (page: string): boolean =>
      [...textOf(dist, page).matchAll(/<link rel="stylesheet" href="\/([^"]*)"/g)].some(
        ([, sheet]) => sheet !== undefined && textOf(dist, sheet).includes('.katex-html'),
      );
    for (const page of withFormulas) expect(laidOut(page), page).toBe(true);
    for (const page of pages.filter((each) => each.startsWith('guides/') && !withFormulas.includes(each))) expect(laidOut(page), page).toBe(false);
  });

  it('keep no calculator from its first paint: their styles count on paper, until the working is brought', () => {
    const waitedFor = /<link rel="stylesheet" href="\/_astro\/(\w+)(?!.*media=)/;
    const onPaper = /<link rel="stylesheet" href="\/_astro\/(\w+)(?=.*media="print")/;
    const linked = filesOf(dist, /^calculators\/[^/]+\/index\.html$/).map((page) => textOf(dist, page).match(/<link rel="stylesheet"[^>]*>/g) ?? []);
    expect(linked.length).toBeGreaterThan(20);
    for (const links of linked) {
      expect(links.flatMap((link) => waitedFor.exec(link)?.[1] ?? [])).toEqual(['base', 'calculators']);
      expect(links.flatMap((link) => onPaper.exec(link)?.[1] ?? [])).toEqual(['katex']);
    }
  });

  it('are never left as they were typed, nor drawn as an error', () => {
    for (const page of pages) {
      expect(textOf(dist, page), page).not.toContain('katex-error');
      expect(readingText(textOf(dist, page)), page).not.toMatch(/\$\$|\\(frac|sqrt|times|text|mathrm)\b/);
    }
  });
});

describe('the pages of checks', () => {
  const subjects = filesOf(dist, /^checks\/[^/]+\/index\.html$/);

  it('show no value that does not agree, and count what they show', () => {
    const [, agreeing, all] = /(\d+) of the (\d+) published values/.exec(readingText(textOf(dist, 'checks/index.html'))) ?? [];
    expect(Number(all)).toBeGreaterThan(1000);
    expect(agreeing).toBe(all);
    const counted = subjects.map((page) => {
      const html = textOf(dist, page);
      expect(html, page).not.toContain('Does not agree.');
      const [, read = ''] = /<h2>\s*Read in published sources([\s\S]*?)(?:<h2>|<\/main>)/.exec(html) ?? [];
      return read.match(/<td class="printed">/g)?.length ?? 0;
    });
    expect(counted.reduce((sum, count) => sum + count, 0)).toBe(Number(all));
  });

  it('are reached from their index, from the sources and from each calculator', () => {
    const linked = (page: string) => attributes(textOf(dist, page), 'href').map((address) => address.replace(/#.*/, ''));
    const index = linked('checks/index.html');
    const sources = filesOf(dist, /^sources\/[^/]+\/index\.html$/).flatMap(linked);
    expect(subjects.length).toBeGreaterThan(5);
    for (const page of subjects) {
      expect.soft(index, page).toContain(addressOf(page));
      expect.soft(sources, page).toContain(addressOf(page));
    }
    const silent = filesOf(dist, /^calculators\/[^/]+\/index\.html$/).filter(
      (page) => !linked(page).some((address) => subjects.map(addressOf).includes(address)),
    );
    expect(silent).toEqual([]);
  });

  it('are light enough for a phone: some two thousand elements at most', () => {
    for (const page of ['checks/index.html', ...subjects]) expect.soft(textOf(dist, page).match(/<[a-z]/g)?.length, page).toBeLessThan(2100);
  });
});
