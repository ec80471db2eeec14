import { need } from '../need.ts';

/** Weight of the standard animal, lb. */
const standardWeightLb = 1000;

/**
 * Animal units of one animal by weight: W / 1,000 by the linear rule, (W / 1,000)^0.75 by the metabolic one, with W = `weightLb`. The two part by a
 * tenth at 1,400 lb: name the rule.
 * @param weightLb - Live weight, lb; above 0 (add a calf's weight where the convention counts it)
 * @param rule - Rule: linear or metabolic
 * @returns Animal units, no unit
 * @throws RangeError if `weightLb` is not above 0
 * @source manske-1998, method (metabolic); unl-stocking-creep, weight over 1,000 lb (linear)
 * @example animalUnits(1400, 'metabolic') //=> 1.287
 */
export function animalUnits(weightLb: number, rule: 'linear' | 'metabolic'): number {
  need('animalUnits', 'weightLb', weightLb, { above: 0 });
  const ratio = weightLb / standardWeightLb;
  return rule === 'linear' ? ratio : ratio ** 0.75;
}
