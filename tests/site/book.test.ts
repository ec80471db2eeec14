import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Assembled, assembled } from '../../book/assembled.ts';
import { dist, filesOf } from './builtSite.ts';

let book: Assembled;
beforeAll(() => {
  book = assembled(dist, (target) => `#${target}`, true);
}, 60_000);
const inBook = (kind: string): readonly string[] =>
  book.parts.flatMap(({ chapters }) => chapters.filter((each) => each.kind === kind).map(({ id }) => id));
const pagesIn = (folder: string): readonly string[] =>
  filesOf(dist, new RegExp(`^${folder}/[^/]+/index\\.html$`)).map((file) => file.replace('/index.html', '').replaceAll('/', '-'));

describe('the book', () => {
  it('holds every guide, every calculation by hand and every table', () => {
    expect(inBook('guide').toSorted()).toEqual(pagesIn('guides').toSorted());
    expect(inBook('working').toSorted()).toEqual(pagesIn('calculators').toSorted());
    expect(inBook('table').toSorted()).toEqual(pagesIn('tables').toSorted());
  });

  it('works every calculation out, with what was put in, and says what it cannot tell', () => {
    for (const id of inBook('working')) {
      const text = book.texts.get(id);
      expect.soft(text?.querySelectorAll('.put-in li').length, id).toBeGreaterThan(0);
      expect.soft(text?.querySelectorAll('.step').length, id).toBeGreaterThan(0);
      expect.soft(text?.querySelectorAll('h2 + ul li').length, id).toBeGreaterThan(0);
    }
  });

  it('holds the whole entry of each source that it names, under its letter', () => {
    const chapter = book.texts.get('sources');
    const entries = chapter?.querySelectorAll('section.source-letter > ul > li') ?? [];
    expect(entries.length).toBeGreaterThan(300);
    expect(entries.filter((entry) => !entry.querySelector('.muted')).map(({ id }) => id)).toEqual([]);
    expect(entries.filter((entry) => entry.querySelector('.printed-address')).length).toBeGreaterThan(entries.length / 2);
  });

  it('leads every link to a place that it has', () => {
    const places = new Set([...book.texts.values()].flatMap((text) => text.querySelectorAll('[id]').map(({ id }) => id)));
    const links = [...book.texts].flatMap(([id, text]) =>
      text.querySelectorAll('a[href]').map((link) => [id, link.getAttribute('href') ?? ''] as const),
    );
    expect(links.length).toBeGreaterThan(3000);
    expect(links.filter(([, to]) => (to.startsWith('#') ? !places.has(to.slice(1)) : !/^(?:https?|tel|sms|mailto):/.test(to)))).toEqual([]);
    expect(book.index.flatMap(({ targets }) => targets).filter((target) => !places.has(target))).toEqual([]);
  });

  it('keeps nothing of a screen', () => {
    for (const [id, text] of book.texts) {
      expect
        .soft(
          text.querySelectorAll('script, button, form, input, details, [hidden], .calculator').map(({ tagName }) => tagName),
          id,
        )
        .toEqual([]);
    }
  });

  it('keeps every caution of the guides', () => {
    for (const id of inBook('guide')) {
      const built = readFileSync(join(dist, `${id.replace('guides-', 'guides/')}/index.html`), 'utf8').match(/<aside class="caution/g)?.length ?? 0;
      expect.soft(book.texts.get(id)?.querySelectorAll('aside.caution').length, id).toBe(built);
    }
  });
});
