import type { Calculator, Outcome } from '../../kit/define.ts';
import { fillWords, printName } from '../../kit/print.ts';
import type { Rows, ScalarQuantity } from '../../kit/quantities.ts';
import type { UnitSystem } from '../../units/units.ts';

/** What every picture is handed: one outcome, or two managements side by side. */
export interface PictureProps<P> {
  readonly calculator: Calculator;
  readonly picture: P;
  readonly outcome: Outcome;
  /** The second management. */
  readonly other: Outcome | null;
  /** What tells the two apart; both empty when there is nothing to tell. */
  readonly titles: readonly [string, string];
  readonly system: UnitSystem;
  /** Unique on the page: names inside a drawing are made from it. */
  readonly id: string;
  /** The width that it gets, pixels: it is drawn for that and never scaled. */
  readonly widthPx?: number;
  /** Of a face: how tall its air and its ground are where a page has less room, or more, than a calculator gives them. */
  readonly heights?: { readonly sky: number; readonly soil: number };
}
export interface Side {
  readonly outcome: Outcome;
  readonly title: string;
  /** Ending of its classes: the first management and the second. */
  readonly is: 'this' | 'that';
}
export const sidesOf = ({ outcome, other, titles }: Pick<PictureProps<unknown>, 'outcome' | 'other' | 'titles'>): readonly Side[] => [
  { outcome, title: titles[0], is: 'this' },
  ...(other ? [{ outcome: other, title: titles[1], is: 'that' } as const] : []),
];

/** A number by name, never below nothing: a picture has no negative widths. */
export function sizeIn(outcome: Outcome, name: string): number {
  const value = outcome.values[name];
  return typeof value === 'number' && Number.isFinite(value) ? Math.max(0, value) : 0;
}
export function labelOf(calculator: Calculator, name: string): string {
  return calculator.quantities[name]?.label ?? calculator.inputs[name]?.label ?? name;
}
export function rowsIn(outcome: Outcome, name: string): Rows {
  const list = outcome.values[name];
  return typeof list === 'object' ? list.filter((row) => typeof row === 'object') : [];
}
export function columnOf(calculator: Calculator, rows: string, name: string): ScalarQuantity | undefined {
  const quantity = calculator.quantities[rows];
  return quantity?.kind === 'rows' ? quantity.columns[name] : undefined;
}
/** A phone, less the edge of earth along the page. */
export const usualWidthPx = 376;
/** Words of a picture with their numbers in them. */
export const fillIn = (calculator: Calculator, outcome: Outcome, system: UnitSystem, words: string): string =>
  fillWords(words, (name) => printName(calculator, outcome.values, name, system));
/** More than so many letters have no room at a curve. */
const longestName = 30;
/** What one side is called where two are drawn. */
export const sideName = ({ title, is }: Side): string => (title !== '' && title.length <= longestName ? title : is === 'this' ? 'This' : 'That');
/** To a tenth of a drawing unit: finer is only bytes. */
export const tenth = (size: number): number => Math.round(size * 10) / 10;
