import { readPerson } from './authorName.ts';

/** What a short citation is made of. */
export interface Cited {
  readonly id: string;
  readonly authors: readonly string[];
  readonly year: string;
}

const familyName = (author: string): string => readPerson(author)?.family ?? author;

export const listed = (names: readonly string[]): string => {
  if (names.length < 3) return names.join(' and ');
  return `${names.slice(0, -1).join(', ')}, and ${names.at(-1)}`;
};

const byline = ({ authors }: Cited): string => {
  const [first = '', ...others] = authors.map(familyName);
  return others.length > 1 ? `${first} et al.` : listed([first, ...others]);
};

const order = ({ id, authors, year }: Cited): string => `${authors.join(' ')} ${year} ${id}`;
/** In the order of a list of references. */
export const byAuthor = (one: Cited, other: Cited): number => order(one).localeCompare(order(other), 'en');

interface ShortCitation {
  /** `2015`; where two sources would read alike, `2015a` and `2015b`, or `n.d.-a` and `n.d.-b`. */
  readonly year: string;
  /** `Ball et al. 2015`. */
  readonly short: string;
}

/** How each of these sources is cited in a sentence. It takes all of them, because two that read alike are told apart by a letter. */
export function shortCitations(sources: readonly Cited[]): ReadonlyMap<string, ShortCitation> {
  const alike = Map.groupBy([...sources].sort(byAuthor), (each) => `${byline(each)} ${each.year}`);
  return new Map(
    [...alike.values()].flatMap((group) =>
      group.map((each, at) => {
        const letter = group.length < 2 ? '' : `${/\d$/.test(each.year) ? '' : '-'}${String.fromCharCode('a'.charCodeAt(0) + at)}`;
        const year = `${each.year}${letter}`;
        return [each.id, { year, short: `${byline(each)} ${year}` }] as const;
      }),
    ),
  );
}
