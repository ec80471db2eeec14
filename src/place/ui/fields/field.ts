import type { Cell, ChoiceInput, DateInput, NumberInput, Option, YesNoInput } from '../../../../calculators/kit/inputs.ts';
import { months } from '../../../../calculators/units/months.ts';
import type { UnitName } from '../../../../calculators/units/units.ts';

/** A name or a few words. */
export interface TextCell {
  readonly kind: 'text';
  readonly label: string;
  readonly help?: string;
  /** What it is called when nobody gives it a name: it must have one. */
  readonly isNeeded: boolean;
  /** Letters; those of a name where nothing is said. */
  readonly most?: number;
  /** What its words must look like, and what is said of others, which stay as they were typed. */
  readonly shape?: { readonly is: RegExp; readonly problem: string };
}
/** A day of every year. */
export interface MonthDayCell {
  readonly kind: 'monthDay';
  readonly label: string;
  readonly help?: string;
}
export type PlaceCell = Cell | TextCell | MonthDayCell;

/** One field of a record: where it stands in it, and how it is asked for. */
export interface PlaceField {
  /** `areaAc`, `tanks.acrossFt`. */
  readonly at: string;
  readonly cell: PlaceCell;
  /** Shown only while that other field of the record holds one of these. */
  readonly shownWhen?: readonly [at: string, ...words: readonly string[]];
  /** A record is none without it: it keeps its last value until another can be read. */
  readonly isNeeded?: true;
}
export const needed = (field: PlaceField): PlaceField => ({ ...field, isNeeded: true });
interface More {
  readonly help?: string;
  readonly field?: string;
  readonly shownWhen?: PlaceField['shownWhen'];
}
const fieldOf = (at: string, cell: PlaceCell, shownWhen: PlaceField['shownWhen']): PlaceField => ({ at, cell, ...(shownWhen && { shownWhen }) });
const told = ({ help, field }: More) => ({ ...(help === undefined ? {} : { help }), ...(field === undefined ? {} : { field }) });

/** `amount('areaAc', 'Acres', 'ac', [0.01, 500_000], 40)`: where it stands, label, unit, least and most, and a number such as it might be, for messages alone. */
export function amount(at: string, label: string, unit: UnitName, [min, max]: readonly [number, number], such: number, more: More = {}): PlaceField {
  const cell: NumberInput = { kind: 'number', label, unit, symbol: '', min, max, default: such, belongsTo: 'place', ...told(more) };
  return fieldOf(at, cell, more.shownWhen);
}
export function count(
  at: string,
  label: string,
  unit: 'count' | 'head' | 'd' | 'ratio',
  range: readonly [number, number],
  such: number,
  more: More = {},
): PlaceField {
  const cell: NumberInput = {
    kind: 'number',
    label,
    unit,
    symbol: '',
    min: range[0],
    max: range[1],
    default: such,
    whole: true,
    belongsTo: 'place',
    ...told(more),
  };
  return fieldOf(at, cell, more.shownWhen);
}

/** What stands in a list for no answer. */
export const notTold = '';
/** `sandy-clay-loam` as a person says it. */
const spoken = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1).replaceAll('-', ' ');
type Labels<W extends string> = Partial<Readonly<Record<W, string>>>;
const optionsOf = <W extends string>(words: readonly W[], labels: Labels<W>): Readonly<Record<string, Option>> =>
  Object.fromEntries(words.map((word) => [word, { label: labels[word] ?? spoken(word) }]));
/** One of a list, or no answer. */
export function choice<const W extends string>(at: string, label: string, words: readonly W[], labels: Labels<W> = {}, more: More = {}): PlaceField {
  const cell: ChoiceInput = {
    kind: 'choice',
    label,
    options: { [notTold]: { label: 'Not told' }, ...optionsOf(words, labels) },
    default: notTold,
    belongsTo: 'place',
    ...told(more),
  };
  return fieldOf(at, cell, more.shownWhen);
}
/** One of a list; there is always one. */
export function kind<const W extends string>(at: string, label: string, words: readonly [W, ...W[]], labels: Labels<W> = {}): PlaceField {
  const cell: ChoiceInput = { kind: 'choice', label, options: optionsOf(words, labels), default: words[0], belongsTo: 'place' };
  return fieldOf(at, cell, undefined);
}
export const month = (at: string, label: string, more: More = {}): PlaceField => choice(at, label, Object.keys(months), months, more);
/** Yes or no; what it is where a record does not tell. */
export function yesNo(at: string, label: string, isUntold: boolean, more: More = {}): PlaceField {
  const cell: YesNoInput = { kind: 'yesNo', label, default: isUntold, belongsTo: 'place', ...told(more) };
  return fieldOf(at, cell, more.shownWhen);
}
export function day(at: string, label: string, more: More = {}): PlaceField {
  const cell: DateInput = { kind: 'date', label, default: '', occurs: 'fixed', belongsTo: 'place', ...told(more) };
  return fieldOf(at, cell, more.shownWhen);
}
export const monthDay = (at: string, label: string, more: More = {}): PlaceField =>
  fieldOf(at, { kind: 'monthDay', label, ...(more.help === undefined ? {} : { help: more.help }) }, more.shownWhen);
export const text = (
  at: string,
  label: string,
  { isNeeded = false, ...more }: { readonly isNeeded?: boolean } & Pick<TextCell, 'help' | 'most' | 'shape'> = {},
): PlaceField => fieldOf(at, { kind: 'text', label, isNeeded, ...more }, undefined);
