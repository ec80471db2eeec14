import { monthName } from '../units/months.ts';
import { dayOf, printNumber, withCommas } from '../units/printQuantity.ts';
import { type QuantityReading, readQuantity } from '../units/readQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn, units } from '../units/units.ts';
import type { Cell, ChoiceInput, MonthsInput } from './inputs.ts';

/** Text as typed, turned into a value, or one sentence on what is wrong and what would be right. */
export type Reading<V> = { readonly value: V } | { readonly problem: string };
export type CellValue = number | string | boolean;

interface Range {
  readonly label: string;
  readonly unit: UnitName;
  readonly min: number;
  readonly max: number;
  readonly default: number;
  readonly whole?: boolean;
}
/** To four digits; a limit inward, so that whoever types what is told is inside. */
function bound(value: number, inward: 'up' | 'down'): string {
  const near = Number(value.toPrecision(4));
  const off = near - value;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(near) || 1)) - 3);
  // A billionth is the dust of converting.
  const isPast = Math.abs(off) > 1e-9 * Math.abs(value) && (inward === 'up' ? off < 0 : off > 0);
  return withCommas(String(isPast ? Number((near + (off < 0 ? step : -step)).toPrecision(4)) : near));
}
/** The limits as the reader counts. */
function rangeOf({ min, max, unit }: Range, system: UnitSystem): string {
  const shown = unitIn(system, unit);
  return `${bound(convert(min, unit, shown), 'up')} to ${bound(convert(max, unit, shown), 'down')} ${units[shown].print}`.trim();
}

function readNumber(input: Range, text: string, system: UnitSystem): Reading<number> {
  const reading = readQuantity(text, input.unit);
  // Half a part in a billion, so that a limit typed in the other unit system is still inside.
  const slack = 5e-10 * Math.max(Math.abs(input.min), Math.abs(input.max));
  if ((reading.is === 'value' || reading.is === 'duration') && reading.value >= input.min - slack && reading.value <= input.max + slack) {
    if (input.whole === true && !Number.isInteger(reading.value))
      return { problem: `${input.label} must be a whole number, such as ${Math.max(input.min, Math.round(reading.value))}.` };
    return { value: Math.min(Math.max(reading.value, input.min), input.max) };
  }
  return { problem: whatIsWrong(input, reading, system) };
}

/** Said only when it is needed: printing a number takes longer than all the rest. */
function whatIsWrong(input: Range, reading: QuantityReading, system: UnitSystem): string {
  const range = rangeOf(input, system);
  const shown = unitIn(system, input.unit);
  const near = (value: number, digits: number): number => Number(convert(value, input.unit, shown).toPrecision(digits));
  switch (reading.is) {
    case 'empty':
      return `${input.label} is missing. Type a number from ${range}.`;
    case 'comma':
      return `${input.label}: a comma here can mean two things. Write ${reading.instead}, if that is meant.`;
    case 'off watch':
      return `${input.label}: minutes and seconds run from 00 to 59, in two figures. Write ${reading.instead}.`;
    case 'words':
      return `${input.label} must be one number, such as ${withCommas(String(near(input.default, 4)))}. It can be from ${range}.`;
    case 'unit':
      if (reading.small !== undefined)
        return `${input.label} can’t be in “${reading.tail.slice(0, 20)}”: a capital M means a million. Write ${reading.small}.`;
      return `${input.label} can’t be in “${reading.tail.slice(0, 20)}”. ${units[shown].print === '' ? 'Type the number alone' : `Use ${units[shown].words}`}.`;
    case 'value':
    case 'duration': {
      // Just past a limit, four digits would tell the limit itself.
      const [this4, least, most] = [near(reading.value, 4), near(input.min, 7), near(input.max, 7)];
      return `${input.label} must be from ${range}. This is ${withCommas(String(this4 < least || this4 > most ? this4 : near(reading.value, 7)))}.`;
    }
  }
}

function readChoice(input: ChoiceInput, text: string): Reading<string> {
  return Object.hasOwn(input.options, text) ? { value: text } : { problem: `${input.label}: choose one of the list.` };
}

export function readCell(input: Cell, text: string, system: UnitSystem = 'us'): Reading<CellValue> {
  switch (input.kind) {
    case 'number':
      return readNumber(input, text, system);
    case 'choice':
      return readChoice(input, text);
    case 'yesNo':
      return text === 'yes' || text === 'no' ? { value: text === 'yes' } : { problem: `${input.label}: answer yes or no.` };
    case 'date': {
      const day = dayOf(text);
      return day === undefined ? { problem: `${input.label} must be a day of the calendar, such as 2026-11-01.` } : { value: day };
    }
  }
}

/** One of the twelve, with its month in the message. */
export const readMonth = (input: MonthsInput, index: number, text: string, system: UnitSystem): Reading<number> =>
  readNumber({ ...input, default: input.default[index] ?? input.min, label: `${input.label}, ${monthName(index)}` }, text, system);

/** A number with its unit, as the state of a form holds it: a no-break space marks a unit that the form added and the field need not show. */
export const unitMark = '\u00a0';
export const quantityText = (value: number, unit: UnitName): string => {
  const text = String(Number(value.toPrecision(12)));
  return units[unit].print === '' || unit === 'head' || unit === 'au' ? text : `${text}${unitMark}${unit}`;
};
export const defaultText = (input: Cell, value: CellValue = input.default): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' && input.kind === 'number' ? quantityText(value, input.unit) : String(value);
};
export const roundedText = (value: number, unit: UnitName): string =>
  quantityText(
    Number(
      printNumber(value, Math.max(0, 3 - Math.floor(Math.log10(Math.max(Math.abs(value), 1e-9)))))
        .replaceAll(',', '')
        .replace('−', '-'),
    ),
    unit,
  );
