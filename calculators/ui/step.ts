import type { NumberInput } from '../kit/inputs.ts';
import { quantityText, readCell, roundedText } from '../kit/read.ts';
import { convert, type UnitSystem, unitIn } from '../units/units.ts';

/** One in the last place of a number as it is written: 0.05 of 2.35, 1 of 40; never finer than the number shows. */
const lastPlace = (value: number): number => 10 ** -(String(Number(value.toPrecision(4))).split('.')[1]?.length ?? 0);

/** The text after one tap on plus or minus, inside the limits; the least or the example's where there was no number to start from. */
export function steppedText(input: NumberInput, text: string, direction: 1 | -1, system: UnitSystem): string {
  const shown = unitIn(system, input.unit);
  const reading = readCell(input, text, system);
  const there = (value: number): number => convert(value, input.unit, shown);
  if ('problem' in reading || typeof reading.value !== 'number') return quantityText(there(Math.max(input.min, 0)), shown);
  const start = Number(there(input.default).toPrecision(3));
  const step = shown === input.unit && input.step !== undefined ? input.step : lastPlace(start);
  const next = Number((there(reading.value) + direction * step).toFixed(6));
  const [least, most] = [there(input.min), there(input.max)];
  const inside = Math.min(Math.max(next, least), most);
  return shown === input.unit ? quantityText(inside, shown) : roundedText(inside, shown);
}
