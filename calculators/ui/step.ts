import type { NumberInput } from '../kit/inputs.ts';
import { quantityText, readCell } from '../kit/read.ts';
import { convert, type UnitSystem, unitIn, units } from '../units/units.ts';

/** What is counted goes one by one, whatever its size. */
const counted: readonly string[] = ['head', 'count', 'animal units', 'time', 'months', 'years'];
const isCounted = ({ whole, unit }: NumberInput): boolean => whole === true || counted.includes(units[unit].dimension);
/** One in the last place of a number as it is written: 0.01 of 2.35, 1 of 40; never finer than the number shows. */
const lastPlace = (value: number): number => 10 ** -(String(Number(value.toPrecision(3))).split('.')[1]?.length ?? 0);
/** The nearest of 1, 2 and 5 at its size: 5 of 6.35, 0.2 of 0.25. */
function roundStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size));
  const count = [1, 2, 5].find((each, at) => size / power < Math.sqrt(each * ([2, 5, 10][at] ?? 10))) ?? 10;
  return count * power;
}
const within = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/**
 * The text after one tap on plus or minus, inside the limits; the least where there was no number to start from. It goes by the step that the input
 * declares, else by a round figure near a hundredth of the number: 2,690 to 2,710. In the other units, and from a number that was converted, it goes
 * to the next round one: 88.9 mm to 90.
 */
export function steppedText(input: NumberInput, text: string, direction: 1 | -1, system: UnitSystem): string {
  const shown = unitIn(system, input.unit);
  const there = (value: number): number => convert(value, input.unit, shown);
  const isOwn = shown === input.unit;
  const declared = input.step ?? lastPlace(input.default);
  const smallest = isOwn ? declared : roundStep(Math.abs(there(declared) - there(0)));
  const [least, most] = [there(input.min), there(input.max)];
  const round = (value: number): string => quantityText(Number(value.toFixed(6)), shown);
  const reading = readCell(input, text, system);
  if ('problem' in reading || typeof reading.value !== 'number')
    return round(isOwn ? Math.max(least, 0) : Math.max(Math.ceil(least / smallest - 1e-6), 0) * smallest);
  const at = there(reading.value);
  const hundredth = Math.abs(at) / 100;
  const step = input.step !== undefined || isCounted(input) || hundredth <= smallest ? smallest : roundStep(hundredth);
  const lowest = Math.ceil(least / step - 1e-6);
  if (isOwn && Number(at.toFixed(3)) === at) return round(within(at + direction * step, least, most));
  const count = direction * (Math.floor((direction * at) / step + 1e-6) + 1);
  const next = within(count, lowest, Math.floor(most / step + 1e-6)) * step;
  // Between the last round one and the limit there is none to go to.
  return (next - at) * direction > 0 ? round(next) : text;
}
