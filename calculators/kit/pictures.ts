import type { NumberKeys, RowOf, RowsKeys } from './quantities.ts';

/**
 * Pictures are data: a kind and the names of the quantities that it draws. `ui` draws any of them, one beside the other for two managements.
 * V: inputs' values with the results; R: the results.
 */
export type Picture<V, R> =
  | SoilFace<NumberKeys<V>>
  | Shares<NumberKeys<V>>
  | DaySpans<NumberKeys<V>>
  | {
      readonly [K in RowsKeys<R>]:
        | RowSpans<K, keyof RowOf<R[K]> & string, NumberKeys<V>>
        | Bars<K, keyof RowOf<R[K]> & string>
        | Lines<K, keyof RowOf<R[K]> & string, NumberKeys<V>>
        | GroundProfile<K, keyof RowOf<R[K]> & string, NumberKeys<V>>;
    }[RowsKeys<R>];

/** A cut through the ground: rain comes down, arrows leave as wide as their depths. All depths in inches. */
export interface SoilFace<N extends string = string> {
  readonly kind: 'soilFace';
  readonly rain: N;
  readonly runsOff: N;
  /** What wets leaves, litter and hollows before any runs. */
  readonly heldFirst: N;
  readonly soaksIn: N;
  /** Covered ground, percent: how dense the sod is drawn. */
  readonly coverPercent?: N;
  /** Roots as deep as somebody dug and saw. */
  readonly rootsIn?: N;
}
/** The ground as it stands, layer by layer: how much it can hold, how full it is, how deep roots reach. All depths in inches. */
export interface GroundProfile<K extends string = string, C extends string = string, N extends string = string> {
  readonly kind: 'groundProfile';
  /** One row a layer, from the top down. */
  readonly rows: K;
  readonly top: C;
  readonly thickness: C;
  /** Inches of water that a foot of it can hold: how closely its pores stand. */
  readonly holdsInPerFt: C;
  /** How many of its pores are drawn full. */
  readonly filledPercent: C;
  readonly mostRoots: N;
  readonly deepestRoot: N;
  /** Water that the root zone holds when full, what is in it, what is missing. */
  readonly holds: N;
  readonly has: N;
  readonly missing: N;
}
/** Says when something is drawn: only while that result is this word. */
export interface OnlyWhen {
  readonly of: string;
  readonly is: string;
}
/** How a part is drawn: solid, plain, of dots or lines; hatched in clay what is lost; in waves what is water; as bales what is in the barn and what is bought. */
export type Tone = 'kept' | 'lost' | 'water' | 'other' | 'dots' | 'lines' | 'own' | 'bought';
/** A whole bar and what it is cut into. */
export interface ShareBar<N extends string = string> {
  /** Stands over the bar, with any `{number}` in it. Left out it is the name of the whole with its number. */
  readonly title?: string;
  /** Left out where it is all of something, 100 percent: then it is what the parts come to. A bar of nothing is not drawn. */
  readonly whole?: N;
  /** In order from the left. `says` is short enough to stand at a piece of the bar; left out it is the part's own name. */
  readonly parts: readonly { readonly of: N; readonly tone: Tone; readonly says?: string }[];
}
/** Whole bars to one scale, cut into their parts: where the hay comes from and where it goes. */
export interface Shares<N extends string = string> extends ShareBar<N> {
  readonly kind: 'shares';
  readonly beside?: readonly ShareBar<N>[];
  readonly onlyWhen?: OnlyWhen;
}
/** The day that matters, a line with words, with any `{number}` in them. */
export interface SpanMark<N extends string = string> {
  readonly at: N;
  readonly says: string;
  readonly onlyWhen?: OnlyWhen;
}
/** Lanes over time, one for each name in the column `lane`: which paddock is grazed when. */
export interface RowSpans<K extends string = string, C extends string = string, N extends string = string> {
  readonly kind: 'spans';
  readonly rows: K;
  readonly lane: C;
  /** A column, or one day for all of them. */
  readonly from: C | { readonly of: N };
  readonly to: C;
  /** The column told before the name of the lane, which then stands over its bar: names that need room. */
  readonly told?: C;
  /** A word for what a span is: `grazed`; and for the time between, where there is any: `rests`. */
  readonly spanSays: string;
  readonly gapSays: string;
  /** Spans that are planned and should not come to pass are drawn hollow: those whose column `of` holds the word `is`. */
  readonly hollow?: { readonly of: C; readonly is: string; readonly says: string };
  readonly mark?: SpanMark<N>;
}
/** Lanes that all begin with today and are so many days long: how long the grass lasts, by how much there is. */
export interface DaySpans<N extends string = string> {
  readonly kind: 'spans';
  readonly lanes: readonly { readonly of: N; readonly says: string }[];
  readonly spanSays: string;
  readonly mark?: SpanMark<N>;
}
export type Spans<K extends string = string, C extends string = string, N extends string = string> = RowSpans<K, C, N> | DaySpans<N>;
/** A bar for each row against what is usual: rain by month. What a bar is short is hatched. */
export interface Bars<K extends string = string, C extends string = string> {
  readonly kind: 'bars';
  readonly rows: K;
  /** A day that tells the month. */
  readonly x: C;
  readonly y: C;
  readonly usual: C;
  /** What the line across a bar and the hatch are: `the usual month`, `short of it`. */
  readonly usualSays: string;
  readonly shortSays: string;
}
/** Curves over a common axis: the first, which two managements are compared by, then others to read it against. */
export interface Lines<K extends string = string, C extends string = string, N extends string = string> {
  readonly kind: 'lines';
  readonly rows: K;
  readonly x: C;
  readonly ys: readonly C[];
  /** What stands at the curves instead of the names of their columns, in order. */
  readonly says?: readonly string[];
  /** The reader's own answer on the common axis, in the unit of its column, and the result there. */
  readonly you?: { readonly at: N; readonly value: N };
  /** A place on the common axis that has a name of its own, in the unit of the axis. Left out where it does not lie inside, or where two sides do not share it. */
  readonly mark?: SpanMark<N>;
}
export type PlainPicture = SoilFace | GroundProfile | Shares | Spans | Bars | Lines;
