import { shownText } from '../../../calculators/ui/fieldText.ts';
import { monthName } from '../../../calculators/units/months.ts';
import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { isBare, unitIn, units } from '../../../calculators/units/units.ts';
import { type Data, dataAt } from './edit.ts';
import type { PlaceField } from './fields/field.ts';
import { printed, textIn } from './texts.ts';

const monthDayWords = (text: string): string => {
  const [month = '', day = ''] = text.split('-');
  return `${monthName(Number(month) - 1).slice(0, 3)} ${Number(day)}`;
};
const dateWords = (iso: string): string => {
  const day = dayOf(iso);
  return day === undefined ? iso : printDay(day);
};
/** A value in words: `16 ha`, `Silt loam`, `Apr 20`. */
export function valueWords({ cell }: PlaceField, value: Data, system: UnitSystem): string {
  if (value === undefined || value === null) return 'nothing';
  if (cell.kind === 'choice') return (typeof value === 'string' && cell.options[value]?.label) || String(value);
  if (cell.kind === 'date') return dateWords(String(value));
  if (cell.kind === 'monthDay' && typeof value === 'string') return monthDayWords(value);
  if (cell.kind !== 'number') return cell.kind === 'yesNo' ? (value === true ? 'yes' : 'no') : String(value);
  return withUnit(shownText(printed(cell, value, system), cell.unit, system), cell.unit, system);
}
/** `2,400`: what is told is read, and not typed again. */
const grouped = (text: string): string => text.replace(/^\d{4,}(?=\.\d+$|$)/, (whole) => whole.replace(/\B(?=(?:\d{3})+$)/g, ','));
function withUnit(typed: string, unit: Parameters<typeof unitIn>[1], system: UnitSystem): string {
  const text = grouped(typed);
  const shown = unitIn(system, unit);
  const { print } = units[shown];
  if (isBare(shown) || /[a-z%]/i.test(text)) return text;
  return print.startsWith('$') ? `$${text}${print.slice(1)}` : `${text} ${print}`;
}
/** What was typed there, with its unit; nothing where nothing is told. */
export function saidOf(record: Data, field: PlaceField, system: UnitSystem): string | undefined {
  const text = textIn(record, field, system);
  if (text === '') return undefined;
  const value = dataAt(record, field.at.split('.'));
  if (value === undefined) return `“${text.slice(0, 20)}”`;
  return field.cell.kind === 'number'
    ? withUnit(shownText(text, field.cell.unit, system), field.cell.unit, system)
    : valueWords(field, value, system);
}
/** Several of them in a line. */
export const lineOf = (record: Data, fields: readonly PlaceField[], ats: readonly string[], system: UnitSystem): string =>
  ats
    .flatMap((at) => {
      const field = fields.find((each) => each.at === at);
      const said = field && saidOf(record, field, system);
      return said === undefined ? [] : [said];
    })
    .join(', ');
