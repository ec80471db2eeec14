import { need } from '../need.ts';

/** A spell of negative index that reached −1 somewhere. Positions count from 0. */
export interface DroughtEvent {
  readonly startsAt: number;
  /** Last month of the spell. */
  readonly endsAt: number;
  readonly months: number;
  /** Sum of the index over the spell, with the sign turned. */
  readonly magnitude: number;
  readonly lowestIndex: number;
}

/**
 * Droughts in a series of monthly indices: each unbroken run of values at or below 0 that reaches −1 or less; it ends before the first value above
 * 0, with the series `indices`. A run that the record breaks off counts as it stands.
 * @param indices - Standardized precipitation index of each month in order, none missing, no unit
 * @returns Droughts in order: first and last position, length in months, magnitude, lowest index
 * @throws RangeError if a value is not finite
 * @source ndmc-ranch-plan-monitoring, standard precipitation index
 * @example droughtEvents([0.2, -0.5, -1.2, 0.1]) //=> [{ startsAt: 1, endsAt: 2, months: 2, magnitude: 1.7, lowestIndex: -1.2 }]
 */
export function droughtEvents(indices: readonly number[]): DroughtEvent[] {
  const events: DroughtEvent[] = [];
  let startsAt = -1;
  const close = (endsAt: number): void => {
    const spell = indices.slice(startsAt, endsAt + 1);
    const lowestIndex = Math.min(...spell);
    if (startsAt >= 0 && lowestIndex <= -1) {
      events.push({ startsAt, endsAt, months: spell.length, magnitude: -spell.reduce((sum, each) => sum + each, 0), lowestIndex });
    }
    startsAt = -1;
  };
  for (const [position, index] of indices.entries()) {
    need('droughtEvents', 'indices', index);
    // A spell begins at a value below 0; a 0 inside it does not end it, since only a value above 0 does.
    if (startsAt < 0 && index < 0) startsAt = position;
    if (startsAt >= 0 && index > 0) close(position - 1);
  }
  if (startsAt >= 0) close(indices.length - 1);
  return events;
}
