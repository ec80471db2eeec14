import { need } from '../need.ts';

/**
 * Mean of a value over parts of different size: Σ(A v) / ΣA, with A = `areaAc` and v = `value` of each of the `parts`.
 * @param parts - Parts, each with its area in acres (0 or more, at least one above 0) and its value in any one unit
 * @returns Area-weighted mean, in the unit of the values
 * @throws RangeError if an area is negative, a value is not finite, or the areas add up to 0
 * @source tr55-1986, worksheet 2
 * @example areaWeightedMean([{ areaAc: 75, value: 70 }, { areaAc: 100, value: 80 }, { areaAc: 75, value: 74 }]) //=> 75.2
 */
export function areaWeightedMean(parts: readonly { readonly areaAc: number; readonly value: number }[]): number {
  let totalAc = 0;
  let sum = 0;
  for (const { areaAc, value } of parts) {
    need('areaWeightedMean', 'areaAc', areaAc, { atLeast: 0 });
    need('areaWeightedMean', 'value', value);
    totalAc += areaAc;
    sum += areaAc * value;
  }
  need('areaWeightedMean', 'the sum of areaAc', totalAc, { above: 0 });
  return sum / totalAc;
}
