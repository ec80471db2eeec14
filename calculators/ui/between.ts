import type { Calculator, Outcome } from '../kit/define.ts';
import { printName } from '../kit/print.ts';
import { digitsTold, type NumberQuantity } from '../kit/quantities.ts';
import { digitsIn, printIn, printNumber, roundedTo } from '../units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../units/units.ts';
import { type Figure, figureAlone, figureOf, leadOf, scalarAt, type ToldSide } from './Answer.tsx';

// What lies between two sides.

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

/** The gap between two sides in their first result. */
export function figureBetween({ calculator, outcome, other, system }: ToldSide & { readonly other: Outcome }): Figure | undefined {
  const lead = leadOf(calculator, outcome);
  const quantity = lead && calculator.quantities[lead.of];
  if (!lead || !quantity || quantity.kind === 'rows') return undefined;
  const [one, two] = [scalarAt(outcome, lead.of), scalarAt(other, lead.of)];
  if (typeof one !== 'number' || typeof two !== 'number' || quantity.kind === 'word' || !other.shown.includes(lead.of)) {
    const theirs = leadOf(calculator, other);
    const words = [printName(calculator, outcome.values, lead.of, system), theirs ? printName(calculator, other.values, theirs.of, system) : '–'];
    return {
      figure: words[0] === words[1] ? 'The same' : words.join(', against '),
      unit: '',
      what: words[0] === words[1] ? 'for both' : '',
      isWords: true,
    };
  }
  if (quantity.kind === 'day') {
    const days = Math.abs(two - one);
    if (days === 0) return { figure: 'The same day', unit: '', what: 'for both', isWords: true };
    return { figure: String(days), unit: days === 1 ? 'day' : 'days', what: `${two > one ? 'later' : 'earlier'} on that side`, isWords: false };
  }
  const { gap, digits, unit } = gapBetween(one, two, quantity, system);
  const number = printNumber(Math.abs(gap), digits);
  if (!/[1-9]/.test(number)) return { figure: 'The same', unit: '', what: 'for both', isWords: true };
  const [less, more] = lead.gap ?? [`less ${lead.said ?? ''} on that side`, `more ${lead.said ?? ''} on that side`];
  return figureOf(number, unit, gap < 0 ? less : more);
}

/** The gap at the same end of both ranges: what is unsure of the year is unsure of both sides. */
export function rangeBetween({ calculator, outcome, other, system }: ToldSide & { readonly other: Outcome }): string | undefined {
  const lead = leadOf(calculator, outcome);
  const quantity = lead?.range && calculator.quantities[lead.range.low];
  if (!lead?.range || quantity?.kind !== 'number' || !other.shown.includes(lead.of)) return undefined;
  const gaps = [lead.range.low, lead.range.high].flatMap((name) => {
    const [one, two] = [scalarAt(outcome, name), scalarAt(other, name)];
    return typeof one === 'number' && typeof two === 'number' ? [gapBetween(one, two, quantity, system)] : [];
  });
  const [low, high] = gaps;
  if (!low || !high) return undefined;
  if (low.gap === 0 && high.gap === 0) return undefined;
  if (low.gap * high.gap < 0) return 'the ranges cross: it can go either way';
  const [least, most] = [Math.abs(low.gap), Math.abs(high.gap)].toSorted((one, two) => one - two);
  const digits = Math.min(low.digits, high.digits);
  if (least === undefined || most === undefined) return undefined;
  const [from, to] = [printNumber(least, digits), printIn(most, low.unit, digits)];
  return from === printNumber(most, digits) ? `${to} at either end of both ranges` : `${from} to ${to}, both at the same end`;
}

/** The figure that stands large: of one side, or between two. */
export const figureFor = (calculator: Calculator, outcome: Outcome, other: Outcome | null, system: UnitSystem): Figure | undefined =>
  other ? figureBetween({ calculator, outcome, other, system }) : figureAlone({ calculator, outcome, system });
