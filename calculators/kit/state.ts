import { dayOf } from '../units/printQuantity.ts';
import { convert, type UnitSystem, unitIn } from '../units/units.ts';
import type { Cell, Input, Inputs, MonthsInput, RowsInput } from './inputs.ts';
import { type CellValue, defaultText, quantityText, readCell, readMonth, roundedText } from './read.ts';
import type { RecordLine } from './record/recordLine.ts';

export type RowTexts = Readonly<Record<string, string>>;
/** What stands in the form: texts as typed, never numbers. A row is a record of texts, monthly values are a list. */
export type Text = string | readonly string[] | readonly RowTexts[];
export type Texts = Readonly<Record<string, Text>>;
export interface Form {
  readonly this: Texts;
  readonly that: Texts | null;
}
export type Value = CellValue | readonly number[] | readonly RecordLine[] | readonly Readonly<Record<string, CellValue>>[];
export type Values = Readonly<Record<string, Value>>;
/** `at` is an input's key, or `key.row.column`, or `key.month`. */
export interface Problem {
  readonly at: string;
  readonly say: string;
}

/** Stands before any result from these texts, whatever it is. */
export interface Remark {
  readonly lead: string;
  readonly life: boolean;
  readonly say: string;
  readonly source: string;
}

export const rowsIn = (text: Text | undefined): readonly RowTexts[] =>
  typeof text === 'object' ? text.filter((row): row is RowTexts => typeof row === 'object') : [];
export const monthsIn = (text: Text | undefined): readonly string[] =>
  typeof text === 'object' ? text.filter((each) => typeof each === 'string') : [];
export const textIn = (text: Text | undefined): string => (typeof text === 'string' ? text : '');

/** A default as a reader of that unit system meets it. */
function startText(input: Cell, system: UnitSystem, value?: CellValue): string {
  const text = value === undefined ? defaultText(input) : defaultText(input, value);
  if (input.kind !== 'number' || system === 'us') return text;
  const shown = unitIn(system, input.unit);
  const size = typeof value === 'number' ? value : input.default;
  return shown === input.unit ? text : roundedText(convert(size, input.unit, shown), shown);
}
function startMonths(input: MonthsInput, system: UnitSystem): readonly string[] {
  const shown = unitIn(system, input.unit);
  return input.default.map((value) =>
    shown === input.unit ? quantityText(value, input.unit) : roundedText(convert(value, input.unit, shown), shown),
  );
}
export const startRows = (input: RowsInput, system: UnitSystem = 'us'): readonly RowTexts[] =>
  input.default.map((row) => Object.fromEntries(Object.entries(input.columns).map(([name, cell]) => [name, startText(cell, system, row[name])])));
export const startTexts = (inputs: Inputs, system: UnitSystem = 'us'): Texts =>
  Object.fromEntries(
    Object.entries(inputs).map(([key, input]): [string, Text] => {
      if (input.kind === 'rows') return [key, startRows(input, system)];
      if (input.kind === 'months') return [key, startMonths(input, system)];
      return [key, input.kind === 'record' ? input.default : startText(input, system)];
    }),
  );

/** Another unit system changes what nobody touched, of the example and of what `placedIn` put in; what was typed stays as it was typed. */
export function changeSystem(inputs: Inputs, texts: Texts, from: UnitSystem, to: UnitSystem, placedIn?: (system: UnitSystem) => Texts): Texts {
  const moved = withMoved(texts, startTexts(inputs, from), startTexts(inputs, to));
  return placedIn ? withMoved(moved, placedIn(from), placedIn(to)) : moved;
}

/** Every text that is still as the example had it, as another example has it. */
export function withMoved(texts: Texts, before: Texts, after: Texts): Texts {
  const swap = (text: string | undefined, old: string | undefined, now: string | undefined): string =>
    text === old && now !== undefined ? now : (text ?? '');
  return Object.fromEntries(
    Object.entries(texts).map(([key, text]): [string, Text] => {
      if (typeof text === 'string') return [key, swap(text, textIn(before[key]), textIn(after[key]))];
      const monthly = monthsIn(text);
      if (monthly.length > 0) return [key, monthly.map((each, index) => swap(each, monthsIn(before[key])[index], monthsIn(after[key])[index]))];
      return [
        key,
        rowsIn(text).map((row, index) =>
          Object.fromEntries(
            Object.entries(row).map(([name, each]) => [name, swap(each, rowsIn(before[key])[index]?.[name], rowsIn(after[key])[index]?.[name])]),
          ),
        ),
      ];
    }),
  );
}

const spoken = (value: unknown): string => (typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value));
/** Does this input apply, given the texts or values beside it? */
export const isShown = (input: { readonly shownWhen?: Input['shownWhen'] }, beside: Readonly<Record<string, unknown>>): boolean =>
  input.shownWhen === undefined ||
  Object.entries(input.shownWhen).every(([key, is]) => (typeof is === 'string' ? is === spoken(beside[key]) : is.includes(spoken(beside[key]))));

/** Before any result from a record that nobody has looked over. */
const unconfirmed = (label: string): string =>
  `${label}: look over what was understood of it, under the field, and say that it is right. Until then do not rely on the result.`;

/** A hidden record holds nothing: to read one only to leave it out would be felt. */
const noLines: readonly RecordLine[] = [];

/** Texts to values. A hidden input holds its default, and a test proves that it changes nothing. */
export function readForm(
  inputs: Inputs,
  texts: Texts,
  system: UnitSystem = 'us',
): { readonly values: Values; readonly problems: readonly Problem[]; readonly remarks: readonly Remark[] } {
  const problems: Problem[] = [];
  const remarks: Remark[] = [];
  const cell = (input: Cell, text: string, shown: boolean, at: string): CellValue => {
    if (shown) {
      const reading = readCell(input, text, system);
      if ('value' in reading) return reading.value;
      problems.push({ at, say: reading.problem });
    }
    return input.kind === 'date' ? (dayOf(input.default) ?? 0) : input.default;
  };
  const values = Object.fromEntries(
    Object.entries(inputs).map(([key, input]): [string, Value] => {
      const shown = isShown(input, texts);
      const text = texts[key];
      switch (input.kind) {
        case 'rows': {
          // A hidden table has as many rows as at first, each cell at its default: what stands in it cannot matter.
          const list: readonly RowTexts[] = shown ? rowsIn(text) : input.default.map(() => ({}));
          if (shown && list.length === 0) problems.push({ at: key, say: `${input.label}: add at least one ${input.rowName}.` });
          if (list.length > input.maxRows) problems.push({ at: key, say: `${input.label}: at most ${input.maxRows} fit here.` });
          return [
            key,
            list.map((row, index) =>
              Object.fromEntries(
                Object.entries(input.columns).map(([name, column]) => [
                  name,
                  cell(column, row[name] ?? '', shown && isShown(column, { ...texts, ...row }), `${key}.${index}.${name}`),
                ]),
              ),
            ),
          ];
        }
        case 'months':
          return [
            key,
            input.default.map((fallback, index) => {
              const reading = shown ? readMonth(input, index, monthsIn(text)[index] ?? '', system) : { value: fallback };
              if ('value' in reading) return reading.value;
              problems.push({ at: `${key}.${index}`, say: reading.problem });
              return fallback;
            }),
          ];
        case 'record': {
          if (!shown) return [key, noLines];
          const { lines, problem, isConfirmed } = input.read(textIn(text));
          const remark = textIn(text) === input.default ? input.standIn : isConfirmed ? undefined : unconfirmed(input.label);
          if (remark !== undefined)
            remarks.push({
              lead: textIn(text) === input.default ? 'This record is an example, not yours.' : 'First look over what was understood of the record.',
              life: false,
              say: remark,
              source: 'our own',
            });
          if (problem === undefined) return [key, lines];
          problems.push({ at: key, say: problem });
          return [key, []];
        }
        default:
          return [key, cell(input, textIn(text), shown, key)];
      }
    }),
  );
  return { values, problems, remarks };
}

/** What the other management shares with the first: all that belongs to the place. */
export function withPlaceOf(inputs: Inputs, place: Texts, own: Texts): Texts {
  return Object.fromEntries(
    Object.entries(inputs).map(([key, input]): [string, Text] => {
      const [theirs, mine] = [place[key] ?? '', own[key] ?? ''];
      if (input.kind !== 'rows') return [key, input.belongsTo === 'place' ? theirs : mine];
      if (!Object.values(input.columns).some((column) => column.belongsTo === 'place')) return [key, mine];
      const ownRows = rowsIn(mine);
      return [
        key,
        rowsIn(theirs).map((row, index) =>
          Object.fromEntries(
            Object.entries(input.columns).map(([name, column]) => [
              name,
              (column.belongsTo === 'place' ? row[name] : (ownRows[index]?.[name] ?? row[name])) ?? '',
            ]),
          ),
        ),
      ];
    }),
  );
}

/** Is anything that is asked here a matter of management? Only then can two be compared. Without texts: is there such a question at all? */
export const canCompare = (inputs: Inputs, texts?: Texts): boolean =>
  Object.values(inputs).some((input) => {
    if (texts && !isShown(input, texts)) return false;
    return input.kind === 'rows'
      ? Object.values(input.columns).some((column) => column.belongsTo === 'management')
      : input.belongsTo === 'management';
  });
