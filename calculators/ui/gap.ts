import { digitsTold, type NumberQuantity } from '../kit/quantities.ts';
import { digitsIn, roundedTo } from '../units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../units/units.ts';

/** Between two results as printed, so that 4 to 10 is never told as 5; and no finer than the coarser of them. */
export function gapBetween(
  one: number,
  two: number,
  quantity: NumberQuantity,
  system: UnitSystem,
): { readonly gap: number; readonly digits: number; readonly unit: UnitName } {
  const unit = unitIn(system, quantity.unit);
  const digitsOf = (value: number): number => digitsIn(digitsTold(value, quantity), quantity.unit, unit);
  const printed = (value: number): number => roundedTo(convert(value, quantity.unit, unit), digitsOf(value));
  return { gap: printed(two) - printed(one), digits: Math.min(digitsOf(one), digitsOf(two)), unit };
}
