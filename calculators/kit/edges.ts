import type { Case } from './cases.ts';
import type { Calculator } from './define.ts';

/**
 * Where a calculator starts to say something: two queries a hair apart, one on each side of the limit. They hold a limit in its place and
 * prove nothing true; what the limit is, its source says.
 */

/** One side of a limit: a link's query, with records where the input is a record. What it leaves out holds its default. */
export type Side = string | { readonly query?: string; readonly records: NonNullable<Case['records']> };
interface How {
  /** What both sides share. */
  readonly on?: string;
  readonly records?: Case['records'];
  /** How far apart the two numbers may stand, in the field's own unit, where the limit cannot be met more closely. */
  readonly within?: number;
}
export type Edge = How &
  (
    | { readonly kind: 'said'; readonly words: string; readonly sides: { readonly raised: Side; readonly silent: Side } }
    | { readonly kind: 'shown'; readonly name: string; readonly sides: { readonly shown: Side; readonly hidden: Side } }
    | { readonly kind: 'told'; readonly words: string; readonly sides: { readonly told: Side; readonly untold: Side } }
    | { readonly kind: 'always'; readonly words: string }
    | { readonly kind: 'turns'; readonly path: string; readonly sides: Readonly<Record<string, Side>> }
  );
export interface EdgeList {
  readonly slug: string;
  /** From where to where each number field takes a number, in its own unit; `parts.areaAc` for a column. */
  readonly limits: Readonly<Record<string, readonly [min: number, max: number]>>;
  readonly edges: readonly Edge[];
}

/** A caution or a refusal, by its first words: said on one side, not on the other. */
export const edge = (words: string, { raised, silent, ...how }: How & { readonly raised: Side; readonly silent: Side }): Edge => ({
  kind: 'said',
  words,
  sides: { raised, silent },
  ...how,
});
/** A caution that stands before every result. */
export const always = (words: string, how: How = {}): Edge => ({ kind: 'always', words, ...how });
/** A result in words, `lines.0.side` for a row's cell: each word with a query that gives it, neighbors a hair apart. */
export const turns = (path: string, sides: Readonly<Record<string, Side>>, how: How = {}): Edge => ({ kind: 'turns', path, sides, ...how });

/** A result that stands in the list on one side and is left out on the other. */
export const shows = (name: string, { shown, hidden, ...how }: How & { readonly shown: Side; readonly hidden: Side }): Edge => ({
  kind: 'shown',
  name,
  sides: { shown, hidden },
  ...how,
});
/** Words of the note, or under a result, that one side has and the other has not. */
export const tells = (words: string, { told, untold, ...how }: How & { readonly told: Side; readonly untold: Side }): Edge => ({
  kind: 'told',
  words,
  sides: { told, untold },
  ...how,
});

export const defineEdges = (calculator: Calculator, list: Omit<EdgeList, 'slug'>): EdgeList => ({ slug: calculator.slug, ...list });
