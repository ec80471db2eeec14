/** What can move the readings of a test besides what was done to the ground: how wet or frozen it was, the time of the year, whose hands. */
export type Mover = 'wetness' | 'season' | 'hands';
/** What has to hold before the readings of two visits are held against each other. */
interface Likeness {
  readonly movedBy: readonly Mover[];
  /** Inputs, or columns of a table of inputs (`rings.pours`), that should be the same both times: the tool, the way it was used. A change may come from them. */
  readonly alike?: readonly string[];
  /** Inputs that must be the same, for else nothing can be said: each with why. */
  readonly same?: Readonly<Record<string, string>>;
  /** Inputs and results in words, and those of their words with which a test tells nothing against another: each with why, as it is told of that visit. */
  readonly bars?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}
/** How the readings of one visit are held against those of another. Read from two links, never asked for in a form. */
export type Compares = Likeness &
  /** Rates, which scatter by times: the ratio of their geometric means. Or classes and densities: the difference of their means. */
  (
    | {
        readonly as: 'ratio' | 'mean';
        /** A table of results and the column of it that holds a reading each. */
        readonly rows: string;
        readonly column: string;
        /** The result that is the middle of these readings: it tells a visit, and a difference with as many digits. */
        readonly middle: string;
      }
    /** A counted share: points that were looked at, and those among them that missed. */
    | { readonly as: 'share'; readonly points: string; readonly misses: string }
  );
