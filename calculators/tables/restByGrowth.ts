/** Rest that published guides give for the speed of growth, days, fast spring growth to hot and dry. */
export interface RestByGrowth {
  readonly place: string;
  readonly growth: 'fast' | 'normal' | 'slow';
  readonly restDays: readonly [low: number, high: number];
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const text = { where: 'Rest days in the text', seen: 'print' } as const;

export const restByGrowth = [
  { place: 'Wisconsin', growth: 'fast', restDays: [16, 16], source: 'schriefer-rest', ...text },
  { place: 'Wisconsin', growth: 'normal', restDays: [24, 30], source: 'schriefer-rest', ...text },
  { place: 'Wisconsin', growth: 'slow', restDays: [45, 60], source: 'schriefer-rest', ...text },
  { place: 'NRCS, no place given', growth: 'fast', restDays: [14, 14], source: 'shelton-rest', ...text },
  { place: 'NRCS, no place given', growth: 'normal', restDays: [30, 30], source: 'shelton-rest', ...text },
  { place: 'NRCS, no place given', growth: 'slow', restDays: [45, 60], source: 'shelton-rest', ...text },
  { place: 'West Virginia, grass and clover', growth: 'fast', restDays: [21, 21], source: 'rayburn-1992', ...text },
  { place: 'West Virginia, grass and clover', growth: 'normal', restDays: [42, 42], source: 'rayburn-1992', ...text },
  { place: 'Oklahoma', growth: 'fast', restDays: [12, 12], source: 'hamilton-2014', ...text },
  { place: 'Oklahoma', growth: 'normal', restDays: [28, 28], source: 'hamilton-2014', ...text },
  { place: 'Missouri, grazed to 3 in', growth: 'normal', restDays: [30, 30], source: 'kallenbach-2013', ...text },
] as const satisfies readonly RestByGrowth[];
