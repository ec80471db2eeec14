/**
 * Dry matter that stored hay loses, percent of what went in. `hayStorageLossByMonths` carries the months and feeds the interpolation;
 * `hayStorageLossReported` holds other published figures, which name no length of storage.
 */
export type StorageMethod = 'ground-uncovered' | 'raised-uncovered' | 'ground-covered' | 'raised-covered' | 'roof' | 'barn';

export interface StorageLoss {
  readonly method: StorageMethod;
  /** Low: well-made bales, under 25 in of rain a year. High: over 40 in. */
  readonly upTo9MonthsPercent: readonly [low: number, high: number];
  readonly at12To18MonthsPercent: readonly [low: number, high: number];
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const huhnke = { source: 'huhnke-bae1716', where: 'Table 2, percent dry matter loss of round hay bales', seen: 'transcription' } as const;

export const hayStorageLossByMonths = [
  { method: 'ground-uncovered', upTo9MonthsPercent: [5, 20], at12To18MonthsPercent: [15, 50], ...huhnke },
  { method: 'raised-uncovered', upTo9MonthsPercent: [3, 15], at12To18MonthsPercent: [12, 35], ...huhnke },
  { method: 'ground-covered', upTo9MonthsPercent: [5, 10], at12To18MonthsPercent: [10, 15], ...huhnke },
  { method: 'raised-covered', upTo9MonthsPercent: [2, 4], at12To18MonthsPercent: [5, 10], ...huhnke },
  { method: 'roof', upTo9MonthsPercent: [2, 5], at12To18MonthsPercent: [3, 10], ...huhnke },
  { method: 'barn', upTo9MonthsPercent: [0, 2], at12To18MonthsPercent: [2, 5], ...huhnke },
] as const satisfies readonly StorageLoss[];

export interface ReportedStorageLoss {
  readonly method: StorageMethod | 'net-wrap-outside' | 'plastic-wrapped';
  readonly percent: readonly [low: number, high: number];
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const text = { where: 'Storage losses in the text', seen: 'print' } as const;

export const hayStorageLossReported = [
  { method: 'ground-uncovered', percent: [25, 35], source: 'barnhart-storage', ...text },
  { method: 'raised-uncovered', percent: [20, 20], source: 'barnhart-storage', ...text },
  { method: 'raised-covered', percent: [10, 10], source: 'barnhart-storage', ...text },
  { method: 'plastic-wrapped', percent: [7, 7], source: 'barnhart-storage', ...text },
  { method: 'barn', percent: [5, 5], source: 'barnhart-storage', ...text },
  { method: 'ground-uncovered', percent: [15, 30], source: 'schroeder-storage', ...text },
  { method: 'net-wrap-outside', percent: [15, 25], source: 'schroeder-storage', ...text },
  { method: 'barn', percent: [4, 7], source: 'schroeder-storage', ...text },
  { method: 'ground-uncovered', percent: [37, 37], source: 'tennessee-hay-storage', ...text },
  { method: 'raised-covered', percent: [8, 8], source: 'tennessee-hay-storage', ...text },
  { method: 'raised-uncovered', percent: [29, 29], source: 'tennessee-hay-storage', ...text },
  { method: 'ground-covered', percent: [29, 29], source: 'tennessee-hay-storage', ...text },
  { method: 'net-wrap-outside', percent: [19, 19], source: 'tennessee-hay-storage', ...text },
  { method: 'barn', percent: [6, 6], source: 'tennessee-hay-storage', ...text },
  { method: 'ground-uncovered', percent: [15, 40], source: 'undersander-storage', ...text },
  { method: 'barn', percent: [2, 5], source: 'undersander-storage', ...text },
  { method: 'barn', percent: [2, 8], source: 'schick-hay-storage', ...text },
  { method: 'barn', percent: [5, 5], source: 'delaware-hay-2018', ...text },
  { method: 'raised-covered', percent: [12, 14], source: 'delaware-hay-2018', ...text },
  { method: 'net-wrap-outside', percent: [23, 23], source: 'delaware-hay-2018', ...text },
  { method: 'ground-uncovered', percent: [30, 30], source: 'delaware-hay-2018', ...text },
  { method: 'barn', percent: [3, 7], source: 'kentucky-hay-2012', ...text },
  { method: 'raised-covered', percent: [10, 17], source: 'kentucky-hay-2012', ...text },
  { method: 'ground-covered', percent: [15, 35], source: 'kentucky-hay-2012', ...text },
  { method: 'raised-uncovered', percent: [13, 20], source: 'kentucky-hay-2012', ...text },
] as const satisfies readonly ReportedStorageLoss[];
