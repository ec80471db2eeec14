import { printDay, printIn, printNumber, printQuantity, printValue } from '../units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../units/units.ts';
import type { Calculator, Outcome } from './define.ts';
import type { Input } from './inputs.ts';
import { digitsTold, type Quantity, type Scalar, type ScalarQuantity } from './quantities.ts';

/** A scalar as people read it: with its unit, a date, or the words for a word. */
export function printScalar(value: Scalar, quantity: ScalarQuantity, system: UnitSystem): string {
  if (quantity.kind === 'word') return quantity.words[String(value)] ?? String(value);
  if (typeof value !== 'number') return value;
  return quantity.kind === 'day' ? printDay(value, true) : printQuantity(value, quantity.unit, digitsTold(value, quantity), system);
}

/** The same without the unit, for a column whose head carries it. */
export function printCell(value: Scalar, quantity: ScalarQuantity, system: UnitSystem): string {
  return quantity.kind === 'number' && typeof value === 'number'
    ? printValue(value, quantity.unit, digitsTold(value, quantity), system)
    : printScalar(value, quantity, system);
}

/** As many digits as an input needs to be told exactly, at most three after the point. */
const inputDigits = (value: number): number => Math.min(3, (String(Number(value.toFixed(3))).split('.')[1] ?? '').length);

export function printInput(value: Scalar, input: Input, system: UnitSystem): string {
  if (input.kind === 'choice') return input.options[String(value)]?.label ?? String(value);
  if (typeof value !== 'number') return String(value);
  if (input.kind === 'date') return printDay(value);
  if (input.kind !== 'number') return String(value);
  const shown = unitIn(system, input.unit);
  // An input in its own unit is told as typed; converted, to a sensible number of digits.
  return shown === input.unit ? printIn(value, input.unit, inputDigits(value)) : printConverted(convert(value, input.unit, shown), shown);
}
const printConverted = (value: number, unit: UnitName): string => {
  const size = Math.abs(value);
  return printIn(value, unit, size >= 100 ? 0 : size >= 10 ? 1 : 2);
};

interface Named {
  readonly inputs: Calculator['inputs'];
  readonly quantities: Readonly<Record<string, Quantity>>;
}
/** An input or a result by name, as people read it. Unknown names throw: a text must not go out with a hole in it. */
export function printName(calculator: Named, values: Outcome['values'], name: string, system: UnitSystem): string {
  const value = values[name];
  const quantity = calculator.quantities[name];
  if (typeof value === 'object' || value === undefined) throw new RangeError(`printName needs a single value, got "${name}"`);
  if (quantity && quantity.kind !== 'rows') return printScalar(value, quantity, system);
  const input = calculator.inputs[name];
  if (!input) throw new RangeError(`printName needs an input or a result, got "${name}"`);
  return printInput(value, input, system);
}

/** Puts values into `{name}` places of a sentence. */
export const fillWords = (template: string, print: (name: string) => string): string =>
  template.replace(/\{(\w+)\}/g, (_, name: string) => print(name));

/** A number in the working: in the equation's own unit, one digit more than in the result, so that a reader can redo the step. */
export function printWorking(
  calculator: Named,
  name: string,
  value: Scalar | undefined,
  columns: Readonly<Record<string, ScalarQuantity>> = {},
): string {
  const quantity = columns[name] ?? calculator.quantities[name];
  if (typeof value !== 'number') return String(value ?? '');
  if (quantity?.kind === 'day') return printDay(value);
  if (quantity?.kind === 'number') return printNumber(value, Math.max(digitsTold(value, quantity) + 1, 0));
  return printNumber(value, inputDigits(value));
}
