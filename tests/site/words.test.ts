import { describe, expect, it } from 'vitest';
import { addressOf, attributes, dist, filesOf, textOf } from './builtSite.ts';

const guides = filesOf(dist, /^guides\/.+\/index\.html$/);
const glossaryAnchors = new Set(attributes(textOf(dist, 'glossary/index.html'), 'id'));

describe('the trade words in a guide', () => {
  const marked = guides.map((file) => {
    const html = textOf(dist, file);
    return { file, html, targets: attributes(html, 'popovertarget'), notes: [...html.matchAll(/<span id="(term-[^"]+)"/g)].map((found) => found[1]) };
  });

  it('are marked somewhere, and nowhere too often', () => {
    expect(marked.reduce((sum, { targets }) => sum + targets.length, 0)).toBeGreaterThan(guides.length);
    for (const { file, targets } of marked) expect(targets.length, file).toBeLessThanOrEqual(12);
  });

  it('open a note of their own that leads to the glossary, and carry no other', () => {
    for (const { file, html, targets, notes } of marked) {
      expect(new Set(targets).size, file).toBe(targets.length);
      expect(notes, file).toEqual(targets);
      for (const target of targets) {
        expect(html).toContain(`/glossary/#${target.replace(/^term-/, '')}"`);
        expect(glossaryAnchors).toContain(target.replace(/^term-/, ''));
      }
    }
  });

  it('stand outside headings, links and tables', () => {
    for (const { file, html } of marked) {
      for (const [whole] of html.matchAll(/<(h[1-6]|a|table|figcaption|summary|code)\b[^>]*>.*?<\/\1>/gs))
        expect(whole, file).not.toContain('class="term"');
    }
  });
});

describe('the files for reference managers', () => {
  const pages = [...guides, 'sources/index.html'];

  it('are offered wherever sources are listed', () => {
    for (const file of pages) {
      const html = textOf(dist, file);
      if (!/class="(references|sources)"/.test(html)) continue;
      const name = file === 'sources/index.html' ? 'holdwater' : (/^guides\/(.+)\/index\.html$/.exec(file)?.[1] ?? '');
      for (const format of ['bib', 'ris']) expect(html).toContain(`/sources/${name}.${format}" download`);
    }
  });

  it('hold as many sources as the page lists', () => {
    for (const file of guides) {
      const name = /^guides\/(.+)\/index\.html$/.exec(file)?.[1] ?? '';
      const list = /<ul class="references">(.*?)<\/ul>/s.exec(textOf(dist, file))?.[1];
      if (list === undefined) continue;
      const count = list.match(/<li>/g)?.length;
      expect(textOf(dist, `sources/${name}.bib`).match(/^@/gm)?.length, addressOf(file)).toBe(count);
      expect(textOf(dist, `sources/${name}.ris`).match(/^TY {2}- /gm)?.length, addressOf(file)).toBe(count);
    }
  });
});

describe('the first page', () => {
  it('leads to every guide in two taps', () => {
    const linksOf = (file: string): readonly string[] => attributes(textOf(dist, file), 'href').map((link) => link.replace(/[?#].*/, ''));
    const first = new Set(linksOf('index.html'));
    const second = new Set(
      [...first]
        .filter((link) =>
          filesOf(dist, /\.html$/)
            .map(addressOf)
            .includes(link),
        )
        .flatMap((link) => linksOf(`${link.slice(1)}index.html`)),
    );
    expect(guides.map(addressOf).filter((address) => !second.has(address))).toEqual([]);
  });
});
