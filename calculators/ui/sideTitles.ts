import type { Calculator } from '../kit/define.ts';
import { type Cell, type MonthsInput, type RecordInput, sharesRows } from '../kit/inputs.ts';
import { printInput } from '../kit/print.ts';
import { tallyOf } from '../kit/screen.ts';
import { isShown, rowsIn, type Texts, textIn } from '../kit/state.ts';
import { shortOf } from '../kit/summary.ts';
import { dayOf } from '../units/printQuantity.ts';
import { readQuantity } from '../units/readQuantity.ts';
import type { UnitSystem } from '../units/units.ts';

/** An option in few words: its own short ones, or its label up to where that begins to explain. */
function shortOption({ options }: Extract<Cell, { kind: 'choice' }>, text: string, system: UnitSystem): string {
  const option = options[text] ?? { label: text };
  return shortOf(option, system) ?? option.label.split(/[:;] /)[0] ?? option.label;
}
/** What was typed in another unit, 75 mm, would come to 2.953 in: two digits after the point say as much. */
const asToldShort = (value: number, text: string): number => (/[a-z]/i.test(text) && Math.abs(value) >= 1 ? Math.round(value * 100) / 100 : value);
/** More differences than this are counted, not told: a title has to fit above a column. */
const mostTold = 2;
const titleOf = (parts: readonly string[]): string =>
  `${parts.slice(0, mostTold).join(', ')}${parts.length > mostTold ? `, and ${parts.length - mostTold} more` : ''}`;

/** What tells the two managements apart, in the words of the inputs that differ. What was read or counted on each side names neither. */
export function sideTitles(calculator: Calculator, mine: Texts, theirs: Texts | null, system: UnitSystem): readonly [string, string] {
  if (!theirs) return ['', ''];
  const differing = Object.entries(calculator.inputs).flatMap(([key, input]): (readonly [string, string])[] => {
    const say = (cell: Cell | MonthsInput | RecordInput, text: string): string => {
      if (cell.kind === 'choice') return shortOption(cell, text, system);
      const day = cell.kind === 'date' ? dayOf(text) : undefined;
      const reading = cell.kind === 'number' ? readQuantity(text, cell.unit) : undefined;
      const value = reading?.is === 'value' ? asToldShort(reading.value, text) : day;
      const [label, told] = [cell.label.toLowerCase(), value === undefined ? text : printInput(value, cell, system)];
      // “45 head”, not “head 45 head”.
      const unit = told.split(/\s/).at(-1) ?? '';
      return `${label} `.startsWith(`${unit} `) ? `${told}${label.slice(unit.length)}` : `${label} ${told}`;
    };
    const isRead = input.kind === 'rows' ? !sharesRows(input) : tallyOf(input) !== undefined || calculator.readings?.includes(key);
    if (isRead) return [];
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
