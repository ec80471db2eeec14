import { need } from '../need.ts';

/**
 * Yield as a share of what full water would give: Ya / Ym = 1 − Ky (1 − ETa / ETm), 0 at least, with Ky = `responseFactor`, ETa / ETm = `useShare`.
 * Meant for use down to about half; use Ky = 1 where nobody measured it (grass).
 * @param responseFactor - Yield response factor Ky over the season, no unit; 0 to 2
 * @param useShare - Water used over the season as a share of what well-supplied plants use; 0 to 1
 * @returns Share of full yield, 0 to 1
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 90
 * @example relativeYield(1.1, 0.7) //=> 0.67
 */
export function relativeYield(responseFactor: number, useShare: number): number {
  need('relativeYield', 'responseFactor', responseFactor, { atLeast: 0, atMost: 2 });
  need('relativeYield', 'useShare', useShare, { atLeast: 0, atMost: 1 });
  return Math.max(0, 1 - responseFactor * (1 - useShare));
}
