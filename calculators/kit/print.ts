import { digitsIn, printDay, printIn, printNumber, printQuantity, printValue } from '../units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../units/units.ts';
import type { Input, Inputs } from './inputs.ts';
import { digitsTold, type PlainValues, type Quantity, type Rows, type RowsQuantity, type Scalar, type ScalarQuantity } from './quantities.ts';
import { add, asPrinted, roundTogether, type Whole } from './wholes.ts';

/** A scalar as people read it: with its unit, a date, or the words for a word. */
export function printScalar(value: Scalar, quantity: ScalarQuantity, system: UnitSystem): string {
  if (quantity.kind === 'word') return (system === 'si' ? quantity.si?.[String(value)] : undefined) ?? quantity.words[String(value)] ?? String(value);
  if (typeof value !== 'number') return value;
  return quantity.kind === 'day' ? printDay(value, true) : printQuantity(value, quantity.unit, digitsTold(value, quantity), system);
}

/** The same without the unit, for a column whose head carries it. */
export function printCell(value: Scalar, quantity: ScalarQuantity, system: UnitSystem): string {
  return quantity.kind === 'number' && typeof value === 'number'
    ? printValue(value, quantity.unit, digitsTold(value, quantity), system)
    : printScalar(value, quantity, system);
}

/** A column as its cells are printed: one that makes up a whole is rounded so that it adds up. */
export function printColumn(
  rows: Rows,
  { columns, addsUp = [] }: RowsQuantity<Readonly<Record<string, ScalarQuantity>>>,
  name: string,
  system: UnitSystem,
): readonly string[] {
  const column = columns[name];
  if (!column) throw new RangeError(`printColumn needs a column of the table, got "${name}"`);
  const cells = rows.map((row) => row[name]);
  const sizes = cells.filter((cell) => typeof cell === 'number');
  if (column.kind !== 'number' || !addsUp.includes(name) || sizes.length < cells.length)
    return cells.map((cell) => (cell === undefined ? '' : printCell(cell, column, system)));
  const shown = unitIn(system, column.unit);
  const digits = digitsIn(column.digits, column.unit, shown);
  const told = sizes.map((size) => convert(size, column.unit, shown));
  const sum = asPrinted(add(told), digits);
  return roundTogether(told, sum, digits).map((size) => printNumber(size, digits));
}

/** As many digits as an input needs to be told exactly, at most three after the point. */
const inputDigits = (value: number): number => Math.min(3, (String(Number(value.toFixed(3))).split('.')[1] ?? '').length);

export function printInput(value: Scalar, input: Input, system: UnitSystem): string {
  if (input.kind === 'choice') return input.options[String(value)]?.label ?? String(value);
  if (typeof value !== 'number') return String(value);
  if (input.kind === 'date') return printDay(value);
  if (input.kind !== 'number') return String(value);
  const told = toldInput(value, input.unit, system);
  return printIn(told.value, told.unit, told.digits);
}

/** A number as it is told: in the reader's unit, to so many digits. */
interface Told {
  readonly value: number;
  readonly unit: UnitName;
  readonly digits: number;
}
/** An input in its own unit is told as typed; converted, to a sensible number of digits. */
function toldInput(value: number, unit: UnitName, system: UnitSystem): Told {
  const shown = unitIn(system, unit);
  if (shown === unit) return { value, unit, digits: inputDigits(value) };
  const converted = convert(value, unit, shown);
  const size = Math.abs(converted);
  return { value: converted, unit: shown, digits: size >= 100 ? 0 : size >= 10 ? 1 : 2 };
}

interface Named {
  readonly inputs: Inputs;
  readonly quantities: Readonly<Record<string, Quantity>>;
  /** Left out where nothing is cut into parts. */
  readonly wholes?: readonly Whole[];
  readonly results?: readonly { readonly of: string }[];
}
/** A number by itself, whatever stands beside it; nothing for words, days and rows. */
function toldAlone({ inputs, quantities }: Named, values: PlainValues, name: string, system: UnitSystem): Told | undefined {
  const value = values[name];
  const quantity = quantities[name];
  if (typeof value !== 'number') return undefined;
  if (quantity?.kind === 'number') {
    const shown = unitIn(system, quantity.unit);
    const digits = digitsIn(digitsTold(value, quantity), quantity.unit, shown);
    const told = convert(value, quantity.unit, shown);
    // A millionth of the last figure is the arithmetic's own.
    return { value: quantity.isLeast ? Math.ceil(told * 10 ** digits - 1e-6) / 10 ** digits : told, unit: shown, digits };
  }
  const input = inputs[name];
  return quantity === undefined && input?.kind === 'number' ? toldInput(value, input.unit, system) : undefined;
}
/** A number by name. A result that is a part of a whole is told as fine as its fellows, and so that all of them add up; inputs stand as typed. */
export function toldNumber(calculator: Named, values: PlainValues, name: string, system: UnitSystem): Told | undefined {
  const { quantities, wholes = [], results = [] } = calculator;
  const alone = toldAlone(calculator, values, name, system);
  const partOf = (each: string): Whole | undefined => wholes.find(({ parts }) => parts.includes(each));
  const group = partOf(name) ?? wholes.find(({ whole }) => whole === name);
  if (alone === undefined || alone.value === 0 || group === undefined || quantities[name] === undefined) return alone;
  /** What is typed, and a whole that is itself a part of something larger, stand already. */
  const fixed = (each: string): Told | undefined => {
    if (quantities[each] === undefined) return toldAlone(calculator, values, each, system);
    return each === group.whole && partOf(each) ? toldNumber(calculator, values, each, system) : undefined;
  };
  const found = [...group.parts, ...(group.whole === undefined ? [] : [group.whole])].flatMap((each) => {
    const standing = fixed(each);
    const told = standing ?? toldAlone(calculator, values, each, system);
    return told ? [{ name: each, stands: standing !== undefined, ...told }] : [];
  });
  const digitsOf = (stands: boolean): readonly number[] => found.filter((each) => each.stands === stands).map((each) => each.digits);
  const total = found.find((each) => each.name === group.whole);
  // As coarse as the coarsest result, since a finer one would claim too much, but never coarser than what stands already or than the whole needs.
  const needed = total === undefined ? [] : [Math.min(total.digits, inputDigits(total.value))];
  const coarse = Math.max(Math.min(...digitsOf(false)), ...digitsOf(true), ...needed);
  // A result that there is must not be told as next to nothing because it is a part of something large: 1.6 tons to buy are not 1.
  const small = wholes
    .flatMap(({ whole, parts }) => (whole === group.whole ? parts : []))
    .map((each) => (results.some(({ of }) => of === each) ? toldAlone(calculator, values, each, system) : undefined))
    .flatMap((told) => (told && told.value > 0 && told.value < 2 * 10 ** -coarse ? [told.digits] : []));
  const digits = Math.max(coarse, ...small);
  if (name === group.whole) return { ...alone, digits };
  const parts = found.filter((each) => each.name !== group.whole);
  const whole = total?.value ?? add(parts.map(({ value }) => value));
  const isByItself = (each: string): boolean => group.stands?.includes(each) === true;
  if (isByItself(name)) return { ...alone, digits };
  const shared = parts.filter((each) => !each.stands && !isByItself(each.name));
  const standing = add(parts.flatMap((each) => (shared.includes(each) ? [] : [each.stands ? each.value : asPrinted(each.value, digits)])));
  const rounded = roundTogether(
    shared.map(({ value }) => value),
    asPrinted(whole, digits) - standing,
    digits,
  );
  return { ...alone, value: rounded[shared.findIndex((each) => each.name === name)] ?? alone.value, digits };
}

/** An input or a result by name, as people read it. Unknown names throw: a text must not go out with a hole in it. */
export function printName(calculator: Named, values: PlainValues, name: string, system: UnitSystem): string {
  const value = values[name];
  const quantity = calculator.quantities[name];
  if (typeof value === 'object' || value === undefined) throw new RangeError(`printName needs a single value, got "${name}"`);
  const told = toldNumber(calculator, values, name, system);
  if (told) return printIn(told.value, told.unit, told.digits);
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
