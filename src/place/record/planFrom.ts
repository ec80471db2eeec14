import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';
import type { RowBody } from './bringLines.ts';
import { type Ground, groundsOf } from './grounds.ts';

/** A move as a form works it out: paddocks and herds by their numbers, from 1. */
export interface WorkedMove {
  readonly paddock: number;
  readonly herd: number;
  readonly inDay: number;
  readonly outDay: number;
  readonly lookDay: number;
}
const isWorked = (move: unknown): move is WorkedMove =>
  typeof move === 'object' &&
  move !== null &&
  ['paddock', 'herd', 'inDay', 'outDay', 'lookDay'].every((key) => typeof Object.entries(move).find(([name]) => name === key)?.[1] === 'number');
/** The moves among a form's results, if it works out any. */
export const workedMoves = (results: Readonly<Record<string, unknown>>): readonly WorkedMove[] => {
  const { moves } = results;
  return Array.isArray(moves) && moves.every(isWorked) ? moves : [];
};

/** Moves as lines of the plan: paddock 1 is the first of the place's, or of the pastures that were chosen. Too few paddocks make no plan. */
export function planFrom(
  place: Place,
  pastureIds: readonly string[],
  moves: readonly WorkedMove[],
): readonly RowBody[] | { readonly has: number; readonly needs: number } {
  const all = groundsOf(place);
  const chosen = all.filter(({ pasture }) => pastureIds.includes(pasture.id));
  const grounds = chosen.length > 0 ? chosen : all;
  const needs = Math.max(0, ...moves.map(({ paddock }) => paddock));
  const body = (ground: Ground, { herd, inDay, outDay, lookDay }: WorkedMove): RowBody => ({
    is: 'plan',
    paddockId: ground.id,
    paddockName: ground.name,
    herdNumber: herd,
    inDay: isoDay(inDay),
    outDay: isoDay(outDay),
    lookDay: isoDay(lookDay),
  });
  if (needs > grounds.length) return { has: grounds.length, needs };
  return moves.flatMap((move) => {
    const ground = grounds[move.paddock - 1];
    return ground === undefined ? [] : [body(ground, move)];
  });
}
