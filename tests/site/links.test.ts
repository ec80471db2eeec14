import { describe, expect, it } from 'vitest';
import { views } from '../../src/place/ui/views.ts';
import { addressOf, attributes, dist, filesOf, textOf } from './builtSite.ts';

const pages = filesOf(dist, /\.html$/);
const addresses = new Set(filesOf(dist, /./).map(addressOf));
const anchors = new Map(pages.map((page) => [addressOf(page), new Set(attributes(textOf(dist, page), 'id'))]));

/** One page draws these itself, behind `#`. */
const drawn = new Map([['/place/', new Set(views.map(({ key }) => `/${key}`))]]);

/** What is wrong with a link that stands on a page; links to other sites are not followed. */
function problem(page: string, link: string): string | undefined {
  const url = new URL(link, `https://site.test${addressOf(page)}`);
  if (url.origin !== 'https://site.test') return undefined;
  if (!addresses.has(url.pathname)) return `${addressOf(page)}: nothing at ${link}`;
  const anchor = decodeURIComponent(url.hash.slice(1));
  if (anchor !== '' && !anchors.get(url.pathname)?.has(anchor) && !drawn.get(url.pathname)?.has(anchor))
    return `${addressOf(page)}: no anchor for ${link}`;
  return undefined;
}

describe('links', () => {
  it('lead to a page and an anchor that exist', () => {
    const links = pages.flatMap((page) =>
      ['href', 'src', 'action'].flatMap((name) => attributes(textOf(dist, page), name).map((link) => ({ page, link }))),
    );
    expect(links.length).toBeGreaterThan(10 * pages.length);
    expect(links.map(({ page, link }) => problem(page, link)).filter((each) => each !== undefined)).toEqual([]);
  });

  it('go from a sheet that a place can fill, and from the guide about it, to the one with its figures', () => {
    for (const [page, view] of [
      ['sheets/drought-plan/index.html', 'plan'],
      ['guides/writing-a-drought-plan/index.html', 'plan'],
      ['sheets/grazing-record/index.html', 'record'],
    ] as const)
      expect(attributes(textOf(dist, page), 'href'), page).toContain(`/place/#/${view}`);
  });

  it('are caught when they lead nowhere', () => {
    expect(problem('index.html', '/no-such-page/')).toContain('nothing at');
    expect(problem('index.html', '/sources/#no-such-source')).toContain('no anchor');
    expect(problem('index.html', '/place/#/no-such-view')).toContain('no anchor');
    expect(problem('index.html', '/sources/#/files')).toContain('no anchor');
    expect(problem('index.html', '/guides')).toContain('nothing at');
  });

  it('in styles lead to files that exist', () => {
    const missing = filesOf(dist, /\.css$/).flatMap((file) =>
      [...textOf(dist, file).matchAll(/url\(["']?([^"')]+)["']?\)/g)]
        .map((found) => found[1] ?? '')
        .filter((link) => !link.startsWith('data:') && !addresses.has(new URL(link, `https://site.test/${file}`).pathname))
        .map((link) => `${file}: ${link}`),
    );
    expect(missing).toEqual([]);
  });

  it('ids on a page are used once', () => {
    const doubled = pages.flatMap((page) => {
      const ids = attributes(textOf(dist, page), 'id');
      return ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${page}: ${id}`);
    });
    expect(doubled).toEqual([]);
  });
});
