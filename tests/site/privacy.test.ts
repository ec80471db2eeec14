import { describe, expect, it } from 'vitest';
import { attributes, dist, filesOf, textOf } from './builtSite.ts';

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
      (withoutNamespaces(textOf(dist, file)).match(/(https?|wss?):\/\/[^\s"'`]+/g) ?? []).map((link) => `${file}: ${link}`),
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
