import { need } from '../need.ts';

/**
 * Share of a round bale in its spoiled rind: 1 - ((D - 2 t) / D)^2 where only the round side weathers, times (w - 2 t) / w off as well where both
 * ends do, with D = `diameterIn`, t = `rindIn`, w = `widthIn`.
 * @param options.diameterIn - Diameter of the bale, inches; above twice `rindIn`
 * @param options.rindIn - Thickness of the spoiled rind, inches; at least 0
 * @param options.widthIn - Width of the bale where both ends are weathered, inches; above twice `rindIn`; left out where bales stand end to end
 * @returns Share of the volume, no unit, 0 to 1
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example rindShare({ diameterIn: 60, rindIn: 6 }) //=> 0.36
 */
export function rindShare({
  diameterIn,
  rindIn,
  widthIn,
}: {
  readonly diameterIn: number;
  readonly rindIn: number;
  readonly widthIn?: number;
}): number {
  need('rindShare', 'rindIn', rindIn, { atLeast: 0 });
  need('rindShare', 'diameterIn', diameterIn, { above: 2 * rindIn });
  const core = (1 - (2 * rindIn) / diameterIn) ** 2;
  if (widthIn === undefined) return 1 - core;
  need('rindShare', 'widthIn', widthIn, { above: 2 * rindIn });
  return 1 - core * (1 - (2 * rindIn) / widthIn);
}
