import { need } from '../need.ts';

/**
 * The same feed weighed at another dryness: W2 = W1 d1 / d2, with W1 = `weightLb`, d1 = `fromDryMatterPercent`, d2 = `toDryMatterPercent`. Oven-dry
 * is 100, air-dry hay or cured forage about 90. Never compare a supply on one basis with a need on another.
 * @param options.weightLb - Weight as given, lb (or lb per acre); at least 0
 * @param options.fromDryMatterPercent - Dry matter on the basis given, percent; above 0, at most 100
 * @param options.toDryMatterPercent - Dry matter on the basis wanted, percent; above 0, at most 100
 * @returns Weight on the basis wanted, the unit of `weightLb`
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example onDryBasis({ weightLb: 2000, fromDryMatterPercent: 90, toDryMatterPercent: 100 }) //=> 1800
 */
export function onDryBasis({
  weightLb,
  fromDryMatterPercent,
  toDryMatterPercent,
}: {
  readonly weightLb: number;
  readonly fromDryMatterPercent: number;
  readonly toDryMatterPercent: number;
}): number {
  need('onDryBasis', 'weightLb', weightLb, { atLeast: 0 });
  need('onDryBasis', 'fromDryMatterPercent', fromDryMatterPercent, { above: 0, atMost: 100 });
  need('onDryBasis', 'toDryMatterPercent', toDryMatterPercent, { above: 0, atMost: 100 });
  return (weightLb * fromDryMatterPercent) / toDryMatterPercent;
}
