import type { Cited } from './shortCitation.ts';

/** The letter that a source is listed under, as its address has it: that which its first author begins with, small and without an accent; `other` for a figure or a sign. */
export function letterOf({ authors: [first = ''] }: Pick<Cited, 'authors'>): string {
  const letter = first.normalize('NFD').charAt(0).toLowerCase();
  return /[a-z]/.test(letter) ? letter : 'other';
}

/** As it is written above its sources. */
export const letterName = (letter: string): string => (letter === 'other' ? 'Other' : letter.toUpperCase());

/** The page of a letter, from the site's root. */
export const letterPath = (letter: string): string => `/sources/${letter}/`;

/** Where the whole entry of a source stands, from the site's root: `/sources/b/#ball-2015`. */
export const entryPath = (source: Pick<Cited, 'id' | 'authors'>): string => `${letterPath(letterOf(source))}#${source.id}`;
