import type { Calculator, Outcome } from '../kit/define.ts';
import type { Cell } from '../kit/inputs.ts';
import { printWorking } from '../kit/print.ts';
import type { Rows, Scalar } from '../kit/quantities.ts';
import { counted } from '../kit/record/linesSaid.ts';
import { isShown, rowsIn, type Texts, textIn } from '../kit/state.ts';
import type { PlainStep } from '../kit/steps.ts';
import { printDay, withCommas, withUnit } from '../units/printQuantity.ts';
import { readQuantity } from '../units/readQuantity.ts';
import { isBare } from '../units/units.ts';
import { cellClass, columnHead, isNumeric } from './RowsResults.tsx';

const rowsOf = (outcome: Outcome, name: string): Rows => {
  const list = outcome.computed[name];
  return typeof list === 'object' ? list : [];
};

const scalarOf = (outcome: Outcome, name: string): Scalar | undefined => {
  const value = outcome.computed[name];
  return typeof value === 'object' ? undefined : value;
};

/** Four figures, whole units at least: what comes of a text in another unit holds dust behind them. */
const withoutDust = (value: number): number => (Math.abs(value) < 1000 ? Number(value.toPrecision(4)) : Math.round(value));
/** `75 mm = 2.953 in`: the working goes on in the equation's own unit. */
function typedLine(cell: Cell, text: string, value: unknown): string {
  if (cell.kind === 'choice') return cell.options[text]?.label ?? text;
  if (typeof value !== 'number') return text;
  if (cell.kind === 'date') return printDay(value);
  if (cell.kind !== 'number') return text;
  const told = (number: number): string => {
    const printed = withCommas(String(number));
    return isBare(cell.unit) ? printed : withUnit(printed, cell.unit);
  };
  const own = told(Number(value.toPrecision(6)));
  if (isBare(cell.unit)) return own;
  const reading = readQuantity(text, cell.unit);
  // Minutes and seconds, which name no unit.
  if (reading.is !== 'value') return `${text} = ${own}`;
  const typed = withUnit(withCommas(reading.amount), reading.unit);
  if (reading.unit !== cell.unit) return `${typed} = ${told(withoutDust(value))}`;
  return Number.isNaN(Number(reading.amount)) ? `${typed} = ${own}` : typed;
}

/** The first lines of the working: what was put in. */
export function WorkingInputs({ calculator, texts, outcome }: { readonly calculator: Calculator; readonly texts: Texts; readonly outcome: Outcome }) {
  const line = (key: string, cell: Cell, text: string, value: unknown) => (
    <li key={key}>
      {cell.label}: <b>{typedLine(cell, text, value)}</b>
    </li>
  );
  return (
    <ul class="put-in">
      {Object.entries(calculator.inputs)
        .filter(([, input]) => isShown(input, texts))
        .flatMap(([key, input]) => {
          if (input.kind === 'months') return [];
          if (input.kind === 'record') {
            const { lines, isMonthly, missing } = input.read(textIn(texts[key]));
            const days = missing.reduce((sum, each) => sum + each.days, 0);
            const [first, last] = [lines[0], lines.at(-1)];
            return [
              <li key={key}>
                {input.label}:{' '}
                <b>
                  {counted(lines.length, isMonthly ? 'month' : 'day')}
                  {first && last && `, ${printDay(first.day - (first.days ?? 1) + 1)} to ${printDay(last.day)}`}, {counted(days, 'day')} between them
                  not read
                </b>
              </li>,
            ];
          }
          const value = outcome.values[key];
          if (input.kind !== 'rows') return [line(key, input, textIn(texts[key]), value)];
          return rowsIn(texts[key]).map((row, index) => {
            const computed = typeof value === 'object' ? value[index] : undefined;
            return (
              <li key={`${key}-${String(index)}`}>
                {input.rowName} {index + 1}
                <ul>
                  {Object.entries(input.columns)
                    .filter(([, cell]) => isShown(cell, { ...texts, ...row }))
                    .map(([name, cell]) => line(name, cell, row[name] ?? '', typeof computed === 'object' ? computed[name] : undefined))}
                </ul>
              </li>
            );
          });
        })}
    </ul>
  );
}

const letters = 'abcdefgh';

/** A line a row: the row's numbers as the formulas above gave them; sums in the foot. */
export function WorkingRows({
  calculator,
  step,
  index,
  outcome,
}: {
  readonly calculator: Calculator;
  readonly step: PlainStep & { readonly kind: 'rows' };
  readonly index: number;
  readonly outcome: Outcome;
}) {
  const quantity = calculator.quantities[step.of];
  if (quantity?.kind !== 'rows') return null;
  const use = outcome.uses[index];
  const columns = Object.entries(quantity.columns);
  const sumOf = (column: string): string => Object.entries(step.sums).find(([, each]) => each === column)?.[0] ?? '';
  const hasSums = Object.keys(step.sums).length > 0;
  return (
    <table class="rows-table">
      <thead>
        <tr>
          {columns.map(([name, column]) => (
            <th scope="col" key={name} class={isNumeric(column) ? 'is-number' : undefined}>
              {columnHead(column, 'us')}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rowsOf(outcome, step.of).map((row, at) => (
          <tr key={String(at)}>
            {columns.map(([name, column]) => {
              const ways = step.formulas[name] ?? [];
              const way = typeof use === 'object' && use !== null ? use[name]?.[at] : undefined;
              const value = row[name];
              const text = column.kind === 'word' ? column.words[String(value)] : printWorking(calculator, name, value, quantity.columns);
              return (
                <td key={name} class={cellClass(column)}>
                  {text}
                  {ways.length > 1 && way !== undefined && <sup>{letters[way]}</sup>}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
      {hasSums && (
        <tfoot>
          <tr>
            {columns.map(([name]) => {
              const sum = sumOf(name);
              return (
                <td key={name} class="is-number">
                  {sum === '' ? '' : printWorking(calculator, sum, scalarOf(outcome, sum))}
                </td>
              );
            })}
          </tr>
        </tfoot>
      )}
    </table>
  );
}
