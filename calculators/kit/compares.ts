/** How the readings of one visit are held against those of another. Read from two links, never asked for in a form. */
export type Compares =
  /** Rates, which scatter by times: the ratio of their geometric means. Or classes and densities: the difference of their means. */
  | {
      readonly as: 'ratio' | 'mean';
      /** A table of results and the column of it that holds a reading each. */
      readonly rows: string;
      readonly column: string;
      /** Inputs that must be the same both times: the tool. */
      readonly alike?: readonly string[];
      /** A result in words and the one word of it with which a test can be held against another at all. */
      readonly judgedBy?: readonly [result: string, word: string];
    }
  /** A counted share: points that were looked at, and those among them that missed. */
  | { readonly as: 'share'; readonly points: string; readonly misses: string };
