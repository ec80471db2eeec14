import { need } from '../need.ts';

/** Animals of one kind that drink from the same supply. */
export interface Drinkers {
  readonly head: number;
  readonly galPerHeadDay: number;
  readonly days: number;
}

/**
 * Water that a herd drinks: Σ n g a day and Σ n g t in all, with n = `head`, g = `galPerHeadDay`, t = `days` of each row.
 * @param rows - Animals of each kind: head, 0 or more; US gallons a head a day, 0 or more; days on this water, 0 or more
 * @returns Water a day while all are there, and over all their days, US gallons
 * @throws RangeError if a value is negative
 * @source bekker-stock-water-2024, how much do you need
 * @example herdDemandGal([{ head: 80, galPerHeadDay: 15, days: 10 }]) //=> { perDayGal: 1200, totalGal: 12000 }
 */
export function herdDemandGal(rows: readonly Drinkers[]): { readonly perDayGal: number; readonly totalGal: number } {
  let perDayGal = 0;
  let totalGal = 0;
  for (const { head, galPerHeadDay, days } of rows) {
    need('herdDemandGal', 'head', head, { atLeast: 0 });
    need('herdDemandGal', 'galPerHeadDay', galPerHeadDay, { atLeast: 0 });
    need('herdDemandGal', 'days', days, { atLeast: 0 });
    perDayGal += head * galPerHeadDay;
    totalGal += head * galPerHeadDay * days;
  }
  return { perDayGal, totalGal };
}
