import { need } from '../need.ts';

/**
 * Live weight on the ground that is being grazed now: N = n W / A, with n = `head`, W = `weightLb`, A = `areaAc`.
 * @param options.head - Animals in the paddock, number; at least 0
 * @param options.weightLb - Weight of one, lb; above 0
 * @param options.areaAc - Area of the paddock, acres; above 0
 * @returns Stock density, lb live weight per acre
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example stockDensityLbPerAc({ head: 15, weightLb: 1200, areaAc: 15 }) //=> 1200
 */
export function stockDensityLbPerAc({
  head,
  weightLb,
  areaAc,
}: {
  readonly head: number;
  readonly weightLb: number;
  readonly areaAc: number;
}): number {
  need('stockDensityLbPerAc', 'head', head, { atLeast: 0 });
  need('stockDensityLbPerAc', 'weightLb', weightLb, { above: 0 });
  need('stockDensityLbPerAc', 'areaAc', areaAc, { above: 0 });
  return (head * weightLb) / areaAc;
}
