import type { HayRow } from '../model/row.ts';

/** Hay of which a table tells the pounds alone, all of them dry: one load. */
export const aLoad = (lb: number) => ({ baleCount: 1, baleLb: lb, moisturePercent: 0 }) as const;
export const isLoad = ({ baleCount, moisturePercent }: Pick<HayRow, 'baleCount' | 'moisturePercent'>): boolean =>
  baleCount === 1 && moisturePercent === 0;
