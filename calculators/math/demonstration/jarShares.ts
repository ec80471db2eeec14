import { need } from '../need.ts';

/**
 * Where the water of one tray went: over the surface R / P, through it T / P, and held in the soil and lost the rest, with P = `pouredMl`,
 * R = `runoffMl`, T = `throughMl`, as percent.
 * @param pouredMl - Water put on the tray, milliliters; above 0
 * @param runoffMl - Water in the runoff jar, milliliters; 0 or more
 * @param throughMl - Water in the jar under the tray, milliliters; 0 or more
 * @returns Shares run off, through, and held, percent of the water put on
 * @throws RangeError if a value is outside its range, or the jars hold more than was poured
 * @source common practice
 * @example jarShares(1000, 250, 600) //=> { runoffPercent: 25, throughPercent: 60, heldPercent: 15 }
 */
export function jarShares(
  pouredMl: number,
  runoffMl: number,
  throughMl: number,
): { readonly runoffPercent: number; readonly throughPercent: number; readonly heldPercent: number } {
  need('jarShares', 'pouredMl', pouredMl, { above: 0 });
  need('jarShares', 'runoffMl', runoffMl, { atLeast: 0 });
  need('jarShares', 'throughMl', throughMl, { atLeast: 0 });
  const heldMl = pouredMl - runoffMl - throughMl;
  // Jars are read by eye: up to 2 percent more than was poured is reading error, not a mistake in the numbers.
  need('jarShares', 'the water not in the jars', heldMl, { atLeast: -0.02 * pouredMl });
  const percent = (ml: number): number => (100 * ml) / pouredMl;
  return { runoffPercent: percent(runoffMl), throughPercent: percent(throughMl), heldPercent: percent(heldMl) };
}
