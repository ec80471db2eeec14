import { pageAt } from '../../site/folder.ts';

/** A calculator with a link's figures, seen from the page of the place. */
export const formAddress = (slug: string, link = ''): string => pageAt(`../calculators/${slug}/${link === '' ? '' : `?${link}`}`, location.href);
