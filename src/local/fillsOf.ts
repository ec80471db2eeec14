import type { Calculator } from '../../calculators/kit/define.ts';
import type { Cell, Input } from '../../calculators/kit/inputs.ts';
import { isShown, monthsIn, rowsIn, startTexts, type Text, type Texts } from '../../calculators/kit/state.ts';
import { textAt } from '../../calculators/kit/textAt.ts';
import { withTextAt } from '../../calculators/kit/withTextAt.ts';
import { keptText } from '../../calculators/ui/fieldText.ts';
import { dayOf, printDay, printIn } from '../../calculators/units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../../calculators/units/units.ts';
import type { FieldValue, LocalField, LocalFields } from './fieldValues.ts';

export interface Fill {
  /** Of a column, `table.row.column`. */
  readonly at: string;
  readonly label: string;
  readonly text: string | readonly string[];
  /** The same with its unit, to be read. */
  readonly shown: string;
  readonly source: string;
}
type Fit = Pick<Fill, 'text' | 'shown'>;

/** A number as somebody would type it in their units, and as it is read. */
function typedIn(unit: UnitName, value: number, system: UnitSystem): { readonly text: string; readonly shown: string } {
  const own = unitIn(system, unit);
  const typed = own === unit ? String(value) : String(Number(convert(value, unit, own).toPrecision(4)));
  const digits = /\.(\d+)$/.exec(typed)?.[1]?.length ?? 0;
  return { text: keptText(typed, unit, system), shown: printIn(Number(typed), own, digits) };
}
/** What a value is in a field; nothing where the field cannot take it, or has it. A day of every year keeps the year that the field has. */
function fitOf(input: Cell, value: FieldValue, now: string, system: UnitSystem): Fit | undefined {
  if (input.kind === 'number') {
    const isFine = typeof value === 'number' && value >= input.min && value <= input.max;
    return isFine && value !== input.default ? typedIn(input.unit, value, system) : undefined;
  }
  if (typeof value !== 'string') return undefined;
  if (input.kind === 'choice') {
    const option = input.options[value];
    return option && value !== now ? { text: value, shown: option.label } : undefined;
  }
  const text = `${now.slice(0, 5)}${value}`;
  const day = input.kind === 'date' ? dayOf(text) : undefined;
  return day === undefined || text === now ? undefined : { text, shown: printDay(day) };
}

/** One form, and what it can take of a country's values. */
class Taking {
  private readonly inputs: Calculator['inputs'];
  private readonly now: Texts;
  private readonly system: UnitSystem;
  private readonly starts: readonly Texts[];
  constructor({ inputs }: Calculator, now: Texts, system: UnitSystem) {
    this.inputs = inputs;
    this.now = now;
    this.system = system;
    this.starts = [startTexts(inputs, 'us'), startTexts(inputs, 'si')];
  }
  /** As the example has it. Its dates move with today, so of those the day of the year counts. */
  private isUntouched(at: string, kind: string): boolean {
    const part = (text: string | undefined) => (kind === 'date' ? text?.slice(5) : text);
    return this.starts.some((start) => part(textAt(start, at)) === part(textAt(this.now, at)));
  }
  private ofCell(at: string, input: Cell, { value, source }: LocalField): readonly Fill[] {
    const now = textAt(this.now, at);
    const fit = now !== undefined && this.isUntouched(at, input.kind) ? fitOf(input, value, now, this.system) : undefined;
    return fit ? [{ at, label: input.label, source, ...fit }] : [];
  }
  private ofMonths(key: string, input: Extract<Input, { kind: 'months' }>, { value, source }: LocalField): readonly Fill[] {
    const isWhole = typeof value === 'object' && value.every((each) => each >= input.min && each <= input.max);
    if (!isWhole || !monthsIn(this.now[key]).every((_, index) => this.isUntouched(`${key}.${index}`, input.kind))) return [];
    const each = value.map((month) => typedIn(input.unit, month, this.system));
    return [{ at: key, label: input.label, source, text: each.map(({ text }) => text), shown: each.map(({ shown }) => shown).join(', ') }];
  }
  fillsOf(field: LocalField): readonly Fill[] {
    const [key = '', column = ''] = field.key.split('.');
    const input = this.inputs[key];
    if (!input || !isShown(input, this.now) || input.kind === 'record') return [];
    if (input.kind === 'months') return this.ofMonths(key, input, field);
    if (input.kind !== 'rows') return this.ofCell(key, input, field);
    const cell = input.columns[column];
    if (!cell) return [];
    return rowsIn(this.now[key]).flatMap((row, index) =>
      isShown(cell, { ...this.now, ...row }) ? this.ofCell(`${key}.${index}.${column}`, cell, field) : [],
    );
  }
  /** Whether the form's example has the very value. */
  hasAlready({ key, value }: LocalField): boolean {
    const input = this.inputs[key];
    if (!input || !isShown(input, this.now) || !this.isUntouched(key, input.kind)) return false;
    return (input.kind === 'number' || input.kind === 'choice') && input.default === value;
  }
}

/**
 * Fields that apply, still hold what they were built with, and would get another value. Of one row all or none: a height to stop at
 * beside a height to start at that somebody typed is no pair.
 */
export function fillsOf(calculator: Calculator, now: Texts, system: UnitSystem, local: LocalFields): readonly Fill[] {
  const taking = new Taking(calculator, now, system);
  const offered = (local.calculators[calculator.slug] ?? []).map((field) => ({ field, fills: taking.fillsOf(field) }));
  const isTorn = ({ field, fills }: (typeof offered)[number]): boolean => fills.length === 0 && !taking.hasAlready(field);
  const torn = new Set(offered.flatMap((each) => (each.field.row !== undefined && isTorn(each) ? [each.field.row] : [])));
  return offered.flatMap(({ field: { row }, fills }) => (row !== undefined && torn.has(row) ? [] : fills));
}
/** Each field that a fill is put into. */
export const pathsOf = ({ at, text }: Fill): readonly string[] => (typeof text === 'string' ? [at] : text.map((_, month) => `${at}.${month}`));
/** The inputs that are filled, with the fills in them. */
export function filledTexts(now: Texts, fills: readonly Fill[]): Texts {
  let all = now;
  for (const { at, text } of fills) all = typeof text === 'string' ? withTextAt(all, at, text) : { ...all, [at]: text };
  return Object.fromEntries(
    fills.flatMap(({ at }): readonly (readonly [string, Text])[] => {
      const [key = ''] = at.split('.');
      const text = all[key];
      return text === undefined ? [] : [[key, text]];
    }),
  );
}
