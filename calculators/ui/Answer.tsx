import type { Calculator, Outcome, PlainShown } from '../kit/define.ts';
import { printName, printScalar, toldNumber } from '../kit/print.ts';
import { digitsTold, type NumberQuantity, type Scalar } from '../kit/quantities.ts';
import { digitsIn, printIn, printNumber, roundedTo, unitBehind } from '../units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../units/units.ts';

/** A figure in its parts: what stands large, its unit, what it is. */
export interface Figure {
  readonly figure: string;
  readonly unit: string;
  readonly what: string;
  readonly isWords: boolean;
}
interface Asked {
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly system: UnitSystem;
}

/** The first result that applies. Both sides lead with the same one. */
export const leadOf = (calculator: Calculator, outcome: Outcome): PlainShown | undefined =>
  calculator.results.find(({ of }) => outcome.shown.includes(of) && calculator.quantities[of]?.kind !== 'rows');

/** Money stands before its number, every other unit behind. */
function figureOf(number: string, unit: UnitName, what: string): Figure {
  const print = unitBehind(number, unit);
  const isMoney = print.startsWith('$');
  return { figure: `${isMoney ? '$' : ''}${number}`, unit: (isMoney ? print.slice(1) : print).trim(), what, isWords: false };
}
/** Of an answer in words the first sentence stands large, and the rest of it where else it is said what the figure is. */
function wordsFigure(words: string, what: string): Figure {
  const [figure = words, ...rest] = words.split(/(?<=\w)\. (?=[A-Z])/);
  return { figure, unit: '', what: rest.length > 0 ? rest.join('. ') : what, isWords: true };
}
export const scalarAt = (outcome: Outcome | null, name: string): Scalar | undefined => {
  const value = outcome?.values[name];
  return typeof value === 'object' ? undefined : value;
};

/** The answer of one side. */
export function figureAlone({ calculator, outcome, system }: Asked): Figure | undefined {
  const lead = leadOf(calculator, outcome);
  const quantity = lead && calculator.quantities[lead.of];
  const value = lead && scalarAt(outcome, lead.of);
  if (!lead || !quantity || quantity.kind === 'rows' || value === undefined) return undefined;
  const what = lead.said ?? quantity.label;
  const told = toldNumber(calculator, outcome.values, lead.of, system);
  return told ? figureOf(printNumber(told.value, told.digits), told.unit, what) : wordsFigure(printScalar(value, quantity, system), what);
}

/** Between two results as printed, so that 4 to 10 is never told as 5; and no finer than the coarser of them. */
export function gapBetween(
  one: number,
  two: number,
  quantity: NumberQuantity,
  system: UnitSystem,
): { readonly gap: number; readonly digits: number; readonly unit: UnitName } {
  const unit = unitIn(system, quantity.unit);
  const digitsOf = (value: number): number => digitsIn(digitsTold(value, quantity), quantity.unit, unit);
  const printed = (value: number): number => roundedTo(convert(value, quantity.unit, unit), digitsOf(value));
  return { gap: printed(two) - printed(one), digits: Math.min(digitsOf(one), digitsOf(two)), unit };
}

/** The gap between two sides in their first result. */
export function figureBetween({ calculator, outcome, other, system }: Asked & { readonly other: Outcome }): Figure | undefined {
  const lead = leadOf(calculator, outcome);
  const quantity = lead && calculator.quantities[lead.of];
  if (!lead || !quantity || quantity.kind === 'rows') return undefined;
  const [one, two] = [scalarAt(outcome, lead.of), scalarAt(other, lead.of)];
  if (typeof one !== 'number' || typeof two !== 'number' || quantity.kind === 'word' || !other.shown.includes(lead.of)) {
    const theirs = leadOf(calculator, other);
    const words = [printName(calculator, outcome.values, lead.of, system), theirs ? printName(calculator, other.values, theirs.of, system) : '–'];
    return {
      figure: words[0] === words[1] ? 'The same' : words.join(', against '),
      unit: '',
      what: words[0] === words[1] ? 'for both' : '',
      isWords: true,
    };
  }
  if (quantity.kind === 'day') {
    const days = Math.abs(two - one);
    if (days === 0) return { figure: 'The same day', unit: '', what: 'for both', isWords: true };
    return { figure: String(days), unit: days === 1 ? 'day' : 'days', what: `${two > one ? 'later' : 'earlier'} on that side`, isWords: false };
  }
  const { gap, digits, unit } = gapBetween(one, two, quantity, system);
  const number = printNumber(Math.abs(gap), digits);
  if (!/[1-9]/.test(number)) return { figure: 'The same', unit: '', what: 'for both', isWords: true };
  const [less, more] = lead.gap ?? [`less ${lead.said ?? ''} on that side`, `more ${lead.said ?? ''} on that side`];
  return figureOf(number, unit, gap < 0 ? less : more);
}

/** The gap at the same end of both ranges: what is unsure of the year is unsure of both sides. */
export function rangeBetween({ calculator, outcome, other, system }: Asked & { readonly other: Outcome }): string | undefined {
  const lead = leadOf(calculator, outcome);
  const quantity = lead?.range && calculator.quantities[lead.range.low];
  if (!lead?.range || quantity?.kind !== 'number' || !other.shown.includes(lead.of)) return undefined;
  const gaps = [lead.range.low, lead.range.high].flatMap((name) => {
    const [one, two] = [scalarAt(outcome, name), scalarAt(other, name)];
    return typeof one === 'number' && typeof two === 'number' ? [gapBetween(one, two, quantity, system)] : [];
  });
  const [low, high] = gaps;
  if (!low || !high) return undefined;
  if (low.gap === 0 && high.gap === 0) return undefined;
  if (low.gap * high.gap < 0) return 'the ranges cross: it can go either way';
  const [least, most] = [Math.abs(low.gap), Math.abs(high.gap)].toSorted((one, two) => one - two);
  const digits = Math.min(low.digits, high.digits);
  if (least === undefined || most === undefined) return undefined;
  const [from, to] = [printNumber(least, digits), printIn(most, low.unit, digits)];
  return from === printNumber(most, digits) ? `${to} at either end of both ranges` : `${from} to ${to}, both at the same end`;
}

/** Long figures and words are set smaller, so that they stay on one line of a phone; and a whole sentence smaller again. */
const sizeOf = ({ figure, isWords }: Figure): string =>
  isWords ? (figure.length > longestWords ? 'big is-words is-sentence' : 'big is-words') : figure.length >= 6 ? 'big is-long' : 'big';
const longestWords = 40;

/** At twice the size of type a long number may break, but only between its thousands. */
const breakable = (number: string) => number.split(/(?<=,)/).map((part, place) => [part, <wbr key={place} />]);

export function Big({ figure }: { readonly figure: Figure | undefined }) {
  if (figure === undefined) return <p class="big">–</p>;
  return (
    <p class={sizeOf(figure)}>
      <span class="big-figure">{figure.isWords ? figure.figure : breakable(figure.figure)}</span>
      {figure.unit !== '' && <span class="big-unit"> {figure.unit}</span>}
      {figure.what !== '' && <span class="big-what"> {figure.what}</span>}
    </p>
  );
}
