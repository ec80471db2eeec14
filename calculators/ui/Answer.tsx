import type { Calculator, Outcome } from '../kit/define.ts';
import { printScalar, toldNumber } from '../kit/print.ts';
import type { Scalar } from '../kit/quantities.ts';
import type { PlainShown } from '../kit/shown.ts';
import { printNumber, unitBehind } from '../units/printQuantity.ts';
import type { UnitName, UnitSystem } from '../units/units.ts';

/** A figure in its parts: what stands large, its unit, what it is. */
export interface Figure {
  readonly figure: string;
  readonly unit: string;
  readonly what: string;
  readonly isWords: boolean;
}
/** One side as it is told. */
export interface ToldSide {
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly system: UnitSystem;
}

/** The first result that applies. Both sides lead with the same one. */
export const leadOf = (calculator: Calculator, outcome: Outcome): PlainShown | undefined =>
  calculator.results.find(({ of }) => outcome.shown.includes(of) && calculator.quantities[of]?.kind !== 'rows');

/** Money stands before its number, every other unit behind. */
export function figureOf(number: string, unit: UnitName, what: string): Figure {
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
export function figureAlone({ calculator, outcome, system }: ToldSide): Figure | undefined {
  const lead = leadOf(calculator, outcome);
  const quantity = lead && calculator.quantities[lead.of];
  const value = lead && scalarAt(outcome, lead.of);
  if (!lead || !quantity || quantity.kind === 'rows' || value === undefined) return undefined;
  const what = lead.said ?? quantity.label;
  const told = toldNumber(calculator, outcome.values, lead.of, system);
  return told ? figureOf(printNumber(told.value, told.digits), told.unit, what) : wordsFigure(printScalar(value, quantity, system), what);
}

/** Long figures and words are set smaller, so that they stay on one line of a phone; and a whole sentence smaller again. */
const sizeOf = ({ figure, isWords }: Figure): string =>
  isWords ? (figure.length > longestWords ? 'big is-words is-sentence' : 'big is-words') : figure.length >= 6 ? 'big is-long' : 'big';
const longestWords = 40;

/** At twice the size of type a long number may break, but only between its thousands. */
const breakable = (number: string) => number.split(/(?<=,)/).map((part, place) => [part, <wbr key={place} />]);

export function Big({ figure }: { readonly figure: Figure | undefined }) {
  if (figure === undefined)
    return (
      <p class="big" aria-hidden="true">
        –
      </p>
    );
  return (
    <p class={sizeOf(figure)}>
      <span class="big-figure">{figure.isWords ? figure.figure : breakable(figure.figure)}</span>
      {figure.unit !== '' && <span class="big-unit"> {figure.unit}</span>}
      {figure.what !== '' && <span class="big-what"> {figure.what}</span>}
    </p>
  );
}
