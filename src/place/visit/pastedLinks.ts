/** Calculations that somebody sent, in the text that was pasted: a bare link, or the whole message with links in it. */
export interface PastedLink {
  readonly slug: string;
  /** The figures, as a link carries them. */
  readonly link: string;
}
export type Pasted = { readonly is: 'found'; readonly links: readonly PastedLink[] } | { readonly is: 'none'; readonly say: string };

/** More than this in one message, and it is no message. */
export const mostPasted = 20;
/** A link of ours is shorter: `calculators/kit/openLink.ts`. */
const longestLink = 4000;
/** Far more than any message holds; a whole book is not searched. */
const longestText = 200_000;

/** `…/calculators/ring-test/?bore=6in&v=2`, from a folder with `index.html`, or the address that hands figures to the page of the place. */
const address = /(?:calculators\/([a-z][a-z0-9-]{0,79})\/(?:index\.html)?|#keep=([a-z][a-z0-9-]{0,79}))(?:\?([^\s<>"“”]*))?/gi;
/** What a sentence puts behind a link. No figure of ours ends in it. */
const behind = /[.,;:!?)\]}'’»]+$/;

/** An `&` as some programs of mail send it; a part behind `#` belongs to the page it was sent from. */
const tidy = (query: string): string => query.replaceAll('&amp;', '&').replace(/#.*$/, '').replace(behind, '');

const example = 'One ends like …/calculators/ring-test/?bore=6in&v=2';

/** All links of calculations in a text, each once, in its order; or what is wrong with it and what would be right. */
export function pastedLinks(text: string): Pasted {
  if (text.trim() === '') return { is: 'none', say: `Paste a link first, or the whole message that it came in. ${example}.` };
  const found = [...text.slice(0, longestText).matchAll(address)].map(([, one, other, query = '']) => ({
    slug: (one ?? other ?? '').toLowerCase(),
    link: tidy(query),
  }));
  const links = found.filter((each, index) => found.findIndex(({ slug, link }) => slug === each.slug && link === each.link) === index);
  if (links.length === 0)
    return {
      is: 'none',
      say: /https?:\/\//i.test(text)
        ? `There is a link in this, but not of a calculation. ${example}. If the message has been shortened, ask for the whole address.`
        : `There is no link of a calculation in this. ${example}. Copy all of it, from https to its last sign.`,
    };
  if (links.every(({ link }) => link === ''))
    return {
      is: 'none',
      say: 'This address has no figures: what stands behind “?” is missing. Copy the link once more, to its last sign, or ask for it as “Copy link” gives it.',
    };
  if (links.some(({ link }) => link.length > longestLink))
    return { is: 'none', say: 'A link in this is too long to be one of ours. Ask for it as “Copy link” gives it.' };
  if (links.length > mostPasted) return { is: 'none', say: `There are ${links.length} links in this. Paste at most ${mostPasted} at once.` };
  return { is: 'found', links: links.filter(({ link }) => link !== '') };
}
