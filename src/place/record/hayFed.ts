import type { Place } from '../model/place.ts';
import type { HayRow, MoveRow, Row } from '../model/row.ts';
import { inDayOf, outDayOf, rowsOf } from './days.ts';

/** Water in hay of which nobody told how wet it is, percent: bales that keep have about this (common practice). */
const usualMoisturePercent = 15;
/** The hay of a row with the water out, lb; nothing where nobody told what a bale weighs. */
export const dryLb = ({
  baleCount,
  baleLb,
  moisturePercent = usualMoisturePercent,
}: Pick<HayRow, 'baleCount' | 'baleLb' | 'moisturePercent'>): number | undefined =>
  baleLb === undefined ? undefined : baleCount * baleLb * (1 - moisturePercent / 100);

/** What a bale of the place weighs, with its water: of the largest stack on hand, else of those that are bought. */
export function baleOf({ hay }: Pick<Place, 'hay'>): { readonly baleLb?: number; readonly moisturePercent?: number } {
  const weighed = (hay?.stacks ?? []).flatMap((stack) =>
    stack.baleLb === undefined ? [] : [{ ...stack, lb: (stack.baleCount ?? 0) * stack.baleLb }],
  );
  const bale = weighed.toSorted((one, other) => other.lb - one.lb)[0] ?? hay?.bought;
  if (bale?.baleLb === undefined) return {};
  return { baleLb: bale.baleLb, ...(bale.moisturePercent === undefined ? {} : { moisturePercent: bale.moisturePercent }) };
}

/** Where each herd stood when a day was over, by the numbers of the herds: hay of that day was fed there. */
export const standingOn = (rows: readonly Row[], day: number): readonly MoveRow[] =>
  rowsOf(rows, 'move')
    .filter((move) => inDayOf(move) <= day && day < (outDayOf(move) ?? Number.POSITIVE_INFINITY))
    .toSorted((one, other) => one.herdNumber - other.herdNumber);
