import { need } from '../need.ts';

/**
 * Weight of a bale from its size: W = V d, with V = `volumeFt3`, d = `densityLbPerFt3`.
 * @param options.volumeFt3 - Volume, cubic feet; above 0
 * @param options.densityLbPerFt3 - Density as fed, lb per cubic foot; above 0
 * @returns Weight as fed, lb
 * @throws RangeError if a value is outside its range
 * @source banta-2012, bale size and weight
 * @example baleWeightLb({ volumeFt3: 98.17, densityLbPerFt3: 11.21 }) //=> 1100
 */
export function baleWeightLb({ volumeFt3, densityLbPerFt3 }: { readonly volumeFt3: number; readonly densityLbPerFt3: number }): number {
  need('baleWeightLb', 'volumeFt3', volumeFt3, { above: 0 });
  need('baleWeightLb', 'densityLbPerFt3', densityLbPerFt3, { above: 0 });
  return volumeFt3 * densityLbPerFt3;
}
