import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostPasted, pastedLinks } from '../../src/place/visit/pastedLinks.ts';

const ring = { slug: 'ring-test', link: 'bore=6in&rings.first=4min%2C5min&v=2' };
const address = `https://example.org/field/calculators/ring-test/?${ring.link}`;

describe('a pasted text', () => {
  it.each([
    ['a bare link', address],
    ['a message around it', `Hi Ana,\nlook at this (${address}). Lou`],
    ['a message that ends with it', `Look: ${address}.`],
    ['quotes', `“${address}”`],
    ['marks of mail', `<a href="${address.replaceAll('&', '&amp;')}">ring test</a>`],
    ['a copy in a folder', `file:///media/stick/holdwater/calculators/ring-test/index.html?${ring.link}`],
    ['the way to the page of a place', `https://example.org/place/#keep=ring-test?${ring.link}`],
    ['an address without https', `example.org/calculators/ring-test/?${ring.link}`],
    ['an address in capitals', `HTTPS://EXAMPLE.ORG/CALCULATORS/RING-TEST/?${ring.link}`],
    ['another part of the page behind it', `${address}#results`],
    ['the same link twice', `${address} ${address}`],
  ])('gives the link in it: %s', (_, text) => {
    expect(pastedLinks(text)).toEqual({ is: 'found', links: [ring] });
  });
  it('gives all links of a message in their order, and leaves out an address without figures beside them', () => {
    const text = `First ${address}, then https://example.org/calculators/storm-runoff/?rain=3in&v=1 and https://example.org/calculators/soil-loss/`;
    expect(pastedLinks(text)).toEqual({ is: 'found', links: [ring, { slug: 'storm-runoff', link: 'rain=3in&v=1' }] });
  });
  it.each([
    ['nothing', '  ', 'Paste a link first'],
    ['words', 'Call me about the ring test.', 'There is no link of a calculation in this.'],
    ['another link', 'https://example.org/guides/leaving-stubble/', 'There is a link in this, but not of a calculation.'],
    ['no figures', 'https://example.org/calculators/ring-test/', 'This address has no figures'],
    ['a question mark alone', 'https://example.org/calculators/ring-test/?', 'This address has no figures'],
    ['too long', `${address}&x=${'1'.repeat(4000)}`, 'too long to be one of ours'],
    [
      'too many',
      Array.from({ length: mostPasted + 1 }, (_, index) => address.replace('6in', `${index + 3}in`)).join(' '),
      `There are ${mostPasted + 1} links in this.`,
    ],
  ])('says what is wrong and what would be right: %s', (_, text, say) => {
    const pasted = pastedLinks(text);
    expect(pasted).toMatchObject({ is: 'none', say: expect.stringContaining(say) });
  });
  it('takes as many as it says', () => {
    const pasted = pastedLinks(Array.from({ length: mostPasted }, (_, index) => address.replace('6in', `${index + 3}in`)).join(' '));
    expect(pasted.is === 'found' && pasted.links).toHaveLength(mostPasted);
  });
  it('never throws, and gives nothing that leads elsewhere', () => {
    const piece = fc.oneof(
      fc.string(),
      fc.constantFrom('javascript:', 'calculators/', 'ring-test', '/?', address, '#keep=', '..', '%', '"><script>'),
    );
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        const pasted = pastedLinks(pieces.join(''));
        if (pasted.is === 'none') return;
        for (const { slug, link } of pasted.links) {
          expect(slug).toMatch(/^[a-z][a-z0-9-]*$/);
          expect(link).not.toMatch(/[\s<>"#]/);
        }
      }),
    );
  });
});
