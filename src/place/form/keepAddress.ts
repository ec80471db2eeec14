// The way from a calculator to the page of the place that needs no shared store: an address, of which nothing behind `#` is ever sent.

/** Can a page see what another of these pages keeps? From a folder only once the place's own page has left its mark here. */
export const sharesStore = (protocol: string, mark: string | null): boolean => protocol !== 'file:' || mark !== null;

export const keepAddress = (placePage: string, slug: string, link: string): string => `${placePage}#keep=${slug}?${link}`;

/** What such an address asks to keep, if it is one. */
export function askedToKeep(hash: string): { readonly slug: string; readonly link: string } | undefined {
  const found = /^#keep=([^?]*)\??([\s\S]*)$/.exec(hash);
  return found ? { slug: found[1] ?? '', link: found[2] ?? '' } : undefined;
}
