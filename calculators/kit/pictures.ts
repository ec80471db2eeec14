import type { NumberKeys, RowOf, RowsKeys } from './quantities.ts';

/**
 * Pictures are data: a kind and the names of the quantities that it draws. `ui` draws any of them, one beside the other for two managements.
 * V: inputs' values with the results; R: the results.
 */
export type Picture<V, R> =
  | SoilFace<NumberKeys<V>>
  | Shares<NumberKeys<V>>
  | {
      readonly [K in RowsKeys<R>]:
        | Spans<K, keyof RowOf<R[K]> & string>
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
/** One bar cut into its parts, largest quantity whole: where the hay goes. */
export interface Shares<N extends string = string> {
  readonly kind: 'shares';
  readonly whole: N;
  readonly parts: readonly { readonly of: N; readonly tone: 'kept' | 'lost' | 'water' | 'other' }[];
}
/** `shares('haveTon', { eatenTon: 'kept', lostTon: 'lost' })`: the whole, then its parts in order, each with its tone. */
export const shares = <const W extends string, const P extends string>(
  whole: W,
  tones: Readonly<Record<P, Shares['parts'][number]['tone']>>,
): Shares<W | P> => ({ kind: 'shares', whole, parts: namesOf(tones).map((of) => ({ of, tone: tones[of] })) });
const namesOf = <P extends string>(tones: Readonly<Record<P, unknown>>): readonly P[] =>
  Object.keys(tones).filter((name): name is P => Object.hasOwn(tones, name));
/** Lanes over time: which paddock is grazed when. */
export interface Spans<K extends string = string, C extends string = string> {
  readonly kind: 'spans';
  readonly rows: K;
  readonly lane: C;
  readonly from: C;
  readonly to: C;
  /** A word for what a span is: `grazed`; and for the time between: `rests`. */
  readonly spanSays: string;
  readonly gapSays: string;
  /** Spans that are planned and should not come to pass are drawn hollow: those whose column `of` holds the word `is`. */
  readonly hollow?: { readonly of: C; readonly is: string; readonly says: string };
}
/** Curves over a common axis. */
export interface Lines<K extends string = string, C extends string = string, N extends string = string> {
  readonly kind: 'lines';
  readonly rows: K;
  readonly x: C;
  readonly ys: readonly C[];
  /** Many thin curves behind them on the same axes, one for each word in the column `of`: all years behind this one. */
  readonly behind?: {
    readonly rows: string;
    readonly of: string;
    readonly x: string;
    readonly y: string;
    /** What they are, a sentence. */
    readonly says: string;
  };
  /** A place on the common axis that has a name of its own, in the unit of the axis. Left out where it does not lie inside, or where two curves share one plot. */
  readonly mark?: { readonly at: N; readonly says: string };
}
export type PlainPicture = SoilFace | GroundProfile | Shares | Spans | Lines;
