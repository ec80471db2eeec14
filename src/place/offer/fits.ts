import type { Input, NumberInput, RowsInput } from '../../../calculators/kit/inputs.ts';
import { defaultText, quantityText, readCell, roundedText } from '../../../calculators/kit/read.ts';
import { sameDayIn, yearOf } from '../../../calculators/units/days.ts';
import { dayOf, isoDay } from '../../../calculators/units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn, units } from '../../../calculators/units/units.ts';
import type { Offered } from './offered.ts';

/** A text for one field, or a sentence why there is none, or neither where the place does not tell. */
type Fit = { readonly text: string | readonly string[] } | { readonly say: string } | undefined;

/** More figures than anybody types come of a conversion or a mean. */
const mostTypedFigures = 6;
/** A number of the place as a form in these units shows it. */
const inUnit = (value: number, unit: UnitName, system: UnitSystem): string => {
  const shown = unitIn(system, unit);
  const isAsTold = shown === unit && Number(value.toPrecision(mostTypedFigures)) === value;
  return isAsTold ? quantityText(value, unit) : roundedText(convert(value, unit, shown), shown);
};
/** An input takes an offer in the offer's own unit; a test looks at each. */
function amountFit(
  input: NumberInput,
  { amount: given, typed }: { readonly amount: number; readonly typed?: string | undefined },
  system: UnitSystem,
): Fit {
  const value = input.whole === true ? Math.round(given) : given;
  if (value >= input.min && value <= input.max) return { text: asTyped(input, typed, value) ?? inUnit(value, input.unit, system) };
  const told = `${Number(value.toPrecision(4))} ${units[input.unit].print}`.trim();
  return { say: `${input.label}: your place’s ${told} is more or less than this form can take.` };
}
function monthsFit(input: Extract<Input, { kind: 'months' }>, months: readonly number[], system: UnitSystem): Fit {
  if (months.every((each) => each >= input.min && each <= input.max)) return { text: months.map((each) => inUnit(each, input.unit, system)) };
  return { say: `${input.label}: a month of your place is more or less than this form can take.` };
}
/** What somebody wrote at the place, if this form reads the same in it: `16 ha`. */
function asTyped(input: NumberInput, typed: string | undefined, value: number): string | undefined {
  const read = typed === undefined ? undefined : readCell(input, typed);
  return read && 'value' in read && typeof read.value === 'number' && Math.abs(read.value - value) <= 1e-9 * Math.abs(value) ? typed : undefined;
}
/** `yearOf` any year: `exampleOn` moves it to the one that is meant. */
const anyYear = 2000;
/** A fresh form counts on from today there: a day that the place names is the next one to come. */
export const countsOn = (input: Input): boolean => input.kind === 'date' && typeof input.occurs === 'object' && 'daysAfterToday' in input.occurs;
/** A form of one grazing season: it takes no day before the turn-in that was last. */
export const isSinceTurnIn = (input: Input): boolean =>
  input.kind === 'date' && input.offeredBy === 'season.turnIn' && typeof input.occurs === 'object' && 'lastBy' in input.occurs;
export function nextAfter(monthDay: string, todayDay: number): string {
  const day = dayOf(`${anyYear}-${monthDay}`);
  if (day === undefined) throw new RangeError(`no month and day: ${monthDay}`);
  const thisYear = sameDayIn(day, yearOf(todayDay));
  return isoDay(thisYear > todayDay ? thisYear : sameDayIn(day, yearOf(todayDay) + 1));
}

/** What the place offers, as this field takes it on a day. */
export function fitOf(
  input: Exclude<Input, RowsInput>,
  offered: Exclude<Offered, { readonly isToBeTold: true }>,
  system: UnitSystem,
  todayDay: number,
): Fit {
  if ('amount' in offered) return input.kind === 'number' ? amountFit(input, offered, system) : undefined;
  if ('isYes' in offered) return input.kind === 'yesNo' ? { text: defaultText(input, offered.isYes) } : undefined;
  if ('monthDay' in offered) {
    if (input.kind !== 'date') return undefined;
    return { text: countsOn(input) ? nextAfter(offered.monthDay, todayDay) : `${anyYear}-${offered.monthDay}` };
  }
  if ('day' in offered) return input.kind === 'date' ? { text: offered.day } : undefined;
  if ('months' in offered) return input.kind === 'months' ? monthsFit(input, offered.months, system) : undefined;
  if ('record' in offered) {
    if (input.kind !== 'record') return undefined;
    const { lines, problem } = input.read(offered.record);
    const isRead = problem === undefined && lines.length > 0;
    return isRead ? { text: offered.record } : { say: `${input.label}: this form cannot take the record of your place.` };
  }
  if (input.kind !== 'choice') return undefined;
  const [own] = offered.words;
  const taken = input.takesNot?.includes(own) === true ? undefined : offered.words.find((each) => Object.hasOwn(input.options, each));
  return taken === undefined ? { say: `${input.label}: this form has nothing for your place’s “${own.replaceAll('-', ' ')}”.` } : { text: taken };
}
