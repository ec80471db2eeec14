import { describe, expect, it } from 'vitest';
import { attributes, dist, filesOf, readingText, textOf } from './builtSite.ts';

const pages = filesOf(dist, /\.html$/);
const scripts = filesOf(dist, /\.js$/);
const isElsewhere = (link: string): boolean => /^(https?:)?\/\//.test(link);

/** Nobody fetches these: names of XML languages. */
const withoutNamespaces = (text: string): string => text.replaceAll(/http:\/\/www\.w3\.org\/\d{4}\/[\w/]+/g, '');

describe('nothing is asked of another site', () => {
  it('by a page: only plain links lead away', () => {
    const asked = pages.flatMap((page) => {
      const html = withoutNamespaces(textOf(dist, page)).replace(/<a\b[^>]*>/g, '');
      return ['href', 'src', 'srcset', 'action', 'data', 'poster']
        .flatMap((name) => attributes(html, name).filter(isElsewhere))
        .map((link) => `${page}: ${link}`);
    });
    expect(asked).toEqual([]);
  });

  it('by a style', () => {
    const asked = filesOf(dist, /\.css$/).flatMap((file) => textOf(dist, file).match(/url\(["']?(https?:)?\/\/[^)]*|@import[^;]*/g) ?? []);
    expect(asked).toEqual([]);
  });

  it('by a script: no address outside stands in one', () => {
    const asked = scripts.flatMap((file) =>
      (withoutNamespaces(textOf(dist, file)).match(/(https?|wss?):\/\/[^\s"'`…]+/g) ?? []).map((link) => `${file}: ${link}`),
    );
    expect(asked).toEqual([]);
  });

  it('and the policy on every page forbids it', () => {
    for (const page of pages) {
      const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/.exec(textOf(dist, page))?.[1] ?? '';
      expect(policy, page).toContain("default-src 'self'");
      expect(policy, page).toContain("connect-src 'self'");
      expect(policy, page).not.toMatch(/https?:|\*|script-src[^;]*'unsafe-inline'/);
    }
  });
});

describe('what is said of it is true', () => {
  it('no page tells the next one where somebody came from: its address may hold numbers', () => {
    for (const page of pages) {
      const html = textOf(dist, page);
      const meta = html.indexOf('<meta name="referrer" content="no-referrer">');
      expect(meta, page).toBeGreaterThan(0);
      // It counts for what comes after it.
      expect(meta, page).toBeLessThan(html.search(/<(?:link|script|a)\b/));
      expect(html, page).not.toMatch(/referrerpolicy/i);
    }
  });

  it('no page promises that nothing leaves the device: an opened link and a search go to the host as an address', () => {
    const promised = [...pages, ...scripts].filter((file) =>
      /nothing (?:that )?you type (?:ever )?leaves|never leaves (?:your|the|this) device|nothing leaves (?:your|the|this) device/i.test(
        textOf(dist, file),
      ),
    );
    expect(promised).toEqual([]);
  });

  it('the foot of each page leads to who sees what', () => {
    for (const page of pages) expect(attributes(textOf(dist, page), 'href'), page).toContain('/about/#privacy');
    const about = readingText(textOf(dist, 'about/index.html'));
    for (const said of [
      'The computer that hosts this copy sees them too when the link is opened on a device that does not keep the pages yet',
      'A search that you send off',
      'takes a secure address (https)',
      'which pages were asked for',
    ])
      expect(about).toContain(said);
    expect(textOf(dist, 'about/index.html')).toContain('id="privacy"');
  });
});
