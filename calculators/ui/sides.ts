import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import type { Cell, MonthsInput, RecordInput } from '../kit/inputs.ts';
import { printInput } from '../kit/print.ts';
import { runTexts } from '../kit/runTexts.ts';
import { type Form, isShown, type Problem, rowsIn, type Texts, textIn, withPlaceOf } from '../kit/state.ts';
import { dayOf } from '../units/printQuantity.ts';
import { readQuantity } from '../units/readQuantity.ts';
import type { UnitSystem } from '../units/units.ts';

export interface RanSide {
  readonly outcome: Outcome | null;
  readonly problems: readonly Problem[];
  /** While a long run goes on: how far it is, and a way to stop it. */
  readonly running?: VNode;
}
/** One side of a form, as it is typed: computed at once, or beside the form. */
export type UseSide = (calculator: Calculator, texts: Texts | null, system: UnitSystem) => RanSide | null;

/** Reads and computes one side. A fault of ours must not leave the results of other numbers standing. */
export function runSide(calculator: Calculator, texts: Texts, system: UnitSystem): RanSide {
  try {
    const ran = runTexts(calculator, texts, system);
    return 'outcome' in ran ? { ...ran, problems: [] } : { outcome: null, problems: ran.refusals };
  } catch (error) {
    console.error(error);
    return { outcome: null, problems: [{ at: '', say: 'This cannot be computed. The fault is in this page, not in what you typed.' }] };
  }
}

export const useSide: UseSide = (calculator, texts, system) => useMemo(() => texts && runSide(calculator, texts, system), [texts, system]);

/** The other side with the place of the first, or nothing when there is no comparison. */
export const otherTexts = (calculator: Calculator, form: Form): Texts | null => form.that && withPlaceOf(calculator.inputs, form.this, form.that);

/** An option in few words: its own short ones, or its label up to where that begins to explain. */
function shortOption({ options }: Extract<Cell, { kind: 'choice' }>, text: string): string {
  const { short, label } = options[text] ?? { label: text };
  const told = typeof short === 'string' ? short : short?.[1];
  return told ?? label.split(/[:;] /)[0] ?? label;
}
/** What was typed in another unit, 75 mm, would come to 2.953 in: two digits after the point say as much. */
const asToldShort = (value: number, text: string): number => (/[a-z]/i.test(text) && Math.abs(value) >= 1 ? Math.round(value * 100) / 100 : value);
/** More differences than this are counted, not told: a title has to fit above a column. */
const mostTold = 2;
const titleOf = (parts: readonly string[]): string =>
  `${parts.slice(0, mostTold).join(', ')}${parts.length > mostTold ? `, and ${parts.length - mostTold} more` : ''}`;

/** What tells the two managements apart, in the words of the inputs that differ. */
export function sideTitles(calculator: Calculator, mine: Texts, theirs: Texts | null, system: UnitSystem): readonly [string, string] {
  if (!theirs) return ['', ''];
  const differing = Object.entries(calculator.inputs).flatMap(([key, input]): (readonly [string, string])[] => {
    const say = (cell: Cell | MonthsInput | RecordInput, text: string): string => {
      if (cell.kind === 'choice') return shortOption(cell, text);
      const day = cell.kind === 'date' ? dayOf(text) : undefined;
      const reading = cell.kind === 'number' ? readQuantity(text, cell.unit) : undefined;
      const value = reading?.is === 'value' ? asToldShort(reading.value, text) : day;
      return `${cell.label.toLowerCase()} ${value === undefined ? text : printInput(value, cell, system)}`;
    };
    if (input.kind === 'rows') {
      return rowsIn(mine[key]).flatMap((row, index) =>
        Object.entries(input.columns).flatMap(([name, cell]): (readonly [string, string])[] => {
          const [one, other] = [row[name] ?? '', rowsIn(theirs[key])[index]?.[name] ?? ''];
          return one !== other && cell.belongsTo === 'management' ? [[say(cell, one), say(cell, other)]] : [];
        }),
      );
    }
    const [one, other] = [textIn(mine[key]), textIn(theirs[key])];
    return one !== other && isShown(input, mine) && isShown(input, theirs) ? [[say(input, one), say(input, other)]] : [];
  });
  return [titleOf(differing.map(([one]) => one)), titleOf(differing.map(([, other]) => other))];
}
