import { need } from '../need.ts';

/**
 * How a published convention counts a nursing calf. weights: its weight is added once it is three months old (Nebraska). fixed: 0.3 unit once it is
 * over four months (eXtension). within: cow and calf are one cow's units until weaning at six months (Range Society, handbook).
 */
export type CalfConvention = 'weights' | 'fixed' | 'within';

const fixedCalfUnits = 0.3;

/**
 * Animal units of a nursing cow and her calf: W / 1,000, plus w / 1,000 or 0.3 or nothing for the calf by `convention`, with W = `cowLb`, w =
 * `calfLb`.
 * @param options.cowLb - Weight of the cow, lb; above 0
 * @param options.calfLb - Weight of the calf, lb; at least 0
 * @param options.calfMonths - Age of the calf, months; at least 0
 * @param options.convention - How the calf counts: weights, fixed or within
 * @returns Animal units of the pair, no unit
 * @throws RangeError if a value is outside its range
 * @source unl-stocking-creep, calf of three months; extension-pasture-rent, calf over four months; nrph-2003, chapter 6
 * @example pairAnimalUnits({ cowLb: 1200, calfLb: 300, calfMonths: 4, convention: 'weights' }) //=> 1.5
 */
export function pairAnimalUnits({
  cowLb,
  calfLb,
  calfMonths,
  convention,
}: {
  readonly cowLb: number;
  readonly calfLb: number;
  readonly calfMonths: number;
  readonly convention: CalfConvention;
}): number {
  need('pairAnimalUnits', 'cowLb', cowLb, { above: 0 });
  need('pairAnimalUnits', 'calfLb', calfLb, { atLeast: 0 });
  need('pairAnimalUnits', 'calfMonths', calfMonths, { atLeast: 0 });
  const cowUnits = cowLb / 1000;
  if (convention === 'weights') return cowUnits + (calfMonths >= 3 ? calfLb / 1000 : 0);
  if (convention === 'fixed') return cowUnits + (calfMonths > 4 ? fixedCalfUnits : 0);
  return cowUnits;
}
