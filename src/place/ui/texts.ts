import { quantityText, readCell, roundedText } from '../../../calculators/kit/read.ts';
import { monthName } from '../../../calculators/units/months.ts';
import { convert, type UnitSystem, unitIn } from '../../../calculators/units/units.ts';
import { isUsualDay, longestTyped } from '../model/parts.ts';
import { type Data, dataAt } from './edit.ts';
import type { PlaceCell, PlaceField } from './fields/field.ts';

/** What a typed text gives a record: its value, none where it is empty, or what is wrong with it. */
export type FieldReading = { readonly value: Data } | { readonly problem: string };

const longestName = 200;
const monthDayShape = /^(\d\d)-(\d\d)$/;
const daysIn = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function readMonthDay(label: string, text: string): FieldReading {
  const [month = '', day = ''] = text.split('-');
  if (month === '' && day === '') return { value: undefined };
  const most = daysIn[Number(month) - 1];
  if (most === undefined) return { problem: `${label}: choose its month, too.` };
  if (day === '') return { problem: `${label}: type its day, 1 to ${most}.` };
  const number = Number(day);
  if (!Number.isInteger(number) || number < 1 || number > most)
    return { problem: `${label}: ${monthName(Number(month) - 1)} has days from 1 to ${most}. This is “${day.slice(0, 20)}”.` };
  return { value: `${month}-${String(number).padStart(2, '0')}` };
}
/** A day as it stands in the field, without the nought that is kept: `4` of `04-04`. */
export const dayPart = (text: string): string => {
  const [month = '', day = ''] = text.split('-');
  return monthDayShape.test(text) && month !== '' ? String(Number(day)) : day;
};
export const monthPart = (text: string): string => text.split('-')[0] ?? text;

export function readText(cell: PlaceCell, text: string, system: UnitSystem): FieldReading {
  if (cell.kind === 'monthDay') return readMonthDay(cell.label, text);
  if (cell.kind === 'text') {
    const { most = longestName, shape } = cell;
    if (text.length > most) return { problem: `${cell.label}: at most ${most} letters. These are ${text.length}. What was there stays.` };
    if (text.trim() !== '') return shape === undefined || shape.is.test(text) ? { value: text } : { problem: shape.problem };
    return cell.isNeeded ? { problem: `${cell.label} is missing. It keeps its name until you type another.` } : { value: undefined };
  }
  if (text === '' && cell.kind !== 'yesNo') return { value: undefined };
  if (cell.kind === 'date')
    return 'problem' in readCell(cell, text) || !isUsualDay(text)
      ? { problem: `${cell.label} must be a day of the calendar, from 1900 to 2199. What was there stays.` }
      : { value: text };
  return readCell(cell, text, system);
}

/** A value as a text of its field. */
export function printed(cell: PlaceCell, value: Data, system: UnitSystem): string {
  if (cell.kind === 'yesNo') return (value ?? cell.default) === true ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  if (typeof value !== 'number' || cell.kind !== 'number') return '';
  const shown = unitIn(system, cell.unit);
  return shown === cell.unit ? quantityText(value, cell.unit) : roundedText(convert(value, cell.unit, shown), shown);
}
const pathOf = (at: string): readonly string[] => at.split('.');

/** What a field of a record shows: the text as it was typed as long as it says the same as the value, else the value. */
export function textIn(record: Data, field: PlaceField, system: UnitSystem): string {
  const { at, cell } = field;
  const value = dataAt(record, pathOf(at));
  const typed = dataAt(record, ['typed', at]);
  if (typeof typed !== 'string') return printed(cell, value, system);
  const read = readField(field, typed, system);
  const isOf = 'problem' in read ? value === undefined || isKept(field) : read.value === value;
  return isOf ? typed : printed(cell, value, system);
}
/** What must always have a value keeps its last one while the text says none; and so does a day that is being typed, and words that are too many. */
const isKept = ({ cell, isNeeded }: PlaceField): boolean => isNeeded === true || cell.kind === 'text' || cell.kind === 'date';
/** The same of a whole field: one that is needed cannot be empty. */
const readField = ({ cell, isNeeded }: PlaceField, text: string, system: UnitSystem): FieldReading =>
  isNeeded === true && text.trim() === ''
    ? { problem: `${cell.label} is missing. The last one stays until you type another.` }
    : readText(cell, text, system);

/** What typing a text changes in a record. What cannot be read stays as it was typed, and the record has no value there, or its last one. */
export function changesOf(field: PlaceField, text: string, system: UnitSystem): readonly { readonly path: readonly string[]; readonly to: Data }[] {
  const { at, cell } = field;
  const typed = cell.kind === 'text' ? text : text.slice(0, longestTyped);
  const read = readField(field, typed, system);
  const isPlain = 'value' in read && printed(cell, read.value, 'us') === typed;
  const value = 'value' in read ? read.value : undefined;
  return [
    ...('problem' in read && isKept(field) ? [] : [{ path: pathOf(at), to: value }]),
    { path: ['typed', at], to: isPlain || (value === undefined && typed === '' && 'value' in read) ? undefined : typed.slice(0, longestTyped) },
  ];
}
export const problemIn = (record: Data, field: PlaceField, system: UnitSystem): string | undefined => {
  const read = readField(field, textIn(record, field, system), system);
  return 'problem' in read ? read.problem : undefined;
};
/** Whether a field stands open beside what the others of its record hold. */
export function isShown(record: Data, { shownWhen }: PlaceField): boolean {
  if (shownWhen === undefined) return true;
  const [at, ...words] = shownWhen;
  return words.includes(String(dataAt(record, pathOf(at))));
}
