/** In which order the parts of a copy come: what every page needs, then guides, calculators and search, then the rest. */
export const stages = ['base', 'core', 'rest'] as const;
export type Stage = (typeof stages)[number];

/** One pack: many files of the site in one that is fetched whole. */
export interface CopyPart {
  /** Its address, from the folder of the worker. */
  readonly file: string;
  readonly sha256: string;
  /** What is fetched for it. */
  readonly bytes: number;
  /** What its files take on a device. */
  readonly roomBytes: number;
  readonly stage: Stage;
  /** Pages of guides and of calculators in it. */
  readonly guides: number;
  readonly calculators: number;
}

/** What a whole copy of one edition of the site is made of. The build writes it into the worker. */
export interface CopyIndex {
  /** Changes when, and only when, a file of the copy does. */
  readonly edition: string;
  readonly parts: readonly CopyPart[];
}

export interface Counts {
  readonly guides: number;
  readonly calculators: number;
  readonly bytes: number;
  readonly roomBytes: number;
}
export const countsOf = (parts: readonly CopyPart[]): Counts =>
  parts.reduce<Counts>(
    (sum, part) => ({
      guides: sum.guides + part.guides,
      calculators: sum.calculators + part.calculators,
      bytes: sum.bytes + part.bytes,
      roomBytes: sum.roomBytes + part.roomBytes,
    }),
    { guides: 0, calculators: 0, bytes: 0, roomBytes: 0 },
  );
