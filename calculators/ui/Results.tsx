import type { Calculator, Outcome, PlainShown } from '../kit/define.ts';
import { printColumn, printName, printScalar, toldNumber } from '../kit/print.ts';
import { digitsTold, type Quantity, type Rows, type RowsQuantity, type Scalar, type ScalarQuantity } from '../kit/quantities.ts';
import { digitsIn, printIn, printNumber, roundedTo, unitBehind } from '../units/printQuantity.ts';
import { convert, type UnitSystem, unitIn, units } from '../units/units.ts';

interface Sides {
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  readonly system: UnitSystem;
}

/** The number large, its unit behind it; words as they are. */
export function Large({
  calculator,
  outcome,
  of,
  system,
}: {
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly of: string;
  readonly system: UnitSystem;
}) {
  const quantity = calculator.quantities[of];
  const value = outcome.values[of];
  if (!quantity || quantity.kind === 'rows' || value === undefined || typeof value === 'object') return null;
  const told = toldNumber(calculator, outcome.values, of, system);
  if (told) {
    const number = printNumber(told.value, told.digits);
    const print = unitBehind(number, told.unit);
    const isMoney = print.startsWith('$');
    return (
      <span class="large">
        {isMoney ? '$' : ''}
        {number}
        <span class="large-unit"> {isMoney ? print.slice(1).trim() : print}</span>
      </span>
    );
  }
  return <span class="large is-words">{printScalar(value, quantity, system)}</span>;
}

/** The first result that applies. Both sides lead with the same one. */
export const leadOf = (calculator: Calculator, outcome: Outcome): PlainShown | undefined =>
  calculator.results.find(({ of }) => outcome.shown.includes(of) && calculator.quantities[of]?.kind !== 'rows');

function Answer({
  calculator,
  outcome,
  title,
  side,
  system,
}: Omit<Sides, 'other' | 'titles'> & { readonly title: string; readonly side: 'this' | 'that' | 'alone' }) {
  const lead = leadOf(calculator, outcome);
  if (!lead) return null;
  return (
    <div class={`answer is-${side}`}>
      {side !== 'alone' && (
        <p class="side-title">
          {side === 'this' ? 'This' : 'That'}
          {title && `: ${title}`}
        </p>
      )}
      <p class="answer-number">
        <Large calculator={calculator} outcome={outcome} of={lead.of} system={system} />
      </p>
      <p class="answer-name">{calculator.quantities[lead.of]?.label}</p>
      {outcome.ranges[lead.of] !== undefined && <p class="answer-range">{outcome.ranges[lead.of]}</p>}
    </div>
  );
}

export function Answers({ calculator, outcome, other, titles, system }: Sides) {
  return (
    <div class={other ? 'answers-row is-two' : 'answers-row'}>
      <Answer calculator={calculator} outcome={outcome} title={titles[0]} side={other ? 'this' : 'alone'} system={system} />
      {other && <Answer calculator={calculator} outcome={other} title={titles[1]} side="that" system={system} />}
    </div>
  );
}

/** What lies between two results, for the table of this beside that. */
export function difference(one: Scalar | undefined, two: Scalar | undefined, quantity: Quantity, system: UnitSystem): string {
  if (quantity.kind === 'rows' || quantity.kind === 'word' || typeof one !== 'number' || typeof two !== 'number') return '';
  if (quantity.kind === 'day') return one === two ? 'same' : `${Math.abs(two - one)} days ${two > one ? 'later' : 'earlier'}`;
  const unit = unitIn(system, quantity.unit);
  const digitsOf = (value: number): number => digitsIn(digitsTold(value, quantity), quantity.unit, unit);
  // Between the two as printed, so that 4 to 10 is never told as 5; and no finer than the coarser of them.
  const printed = (value: number): number => roundedTo(convert(value, quantity.unit, unit), digitsOf(value));
  const gap = printIn(printed(two) - printed(one), unit, Math.min(digitsOf(one), digitsOf(two)));
  return two > one && /[1-9]/.test(gap) ? `+${gap}` : gap;
}
const scalarAt = (outcome: Outcome | null, name: string): Scalar | undefined => {
  const value = outcome?.values[name];
  return typeof value === 'object' ? undefined : value;
};
const isSaid = (outcome: Outcome | null, name: string): boolean => outcome?.shown.includes(name) === true;

/** Every result in order, this beside that, and the difference. */
export function ResultsTable({ calculator, outcome, other, titles, system }: Sides) {
  const wanted = calculator.results.filter(({ of }) => calculator.quantities[of]?.kind !== 'rows' && (isSaid(outcome, of) || isSaid(other, of)));
  if (wanted.length < 2 && !other) return null;
  const cell = (side: Outcome | null, shown: PlainShown) => {
    const value = scalarAt(side, shown.of);
    const quantity = calculator.quantities[shown.of];
    if (!side || !isSaid(side, shown.of) || value === undefined || !quantity || quantity.kind === 'rows') return <td>–</td>;
    return (
      <td>
        {printName(calculator, side.values, shown.of, system)}
        {side.ranges[shown.of] !== undefined && <span class="cell-range">{side.ranges[shown.of]}</span>}
      </td>
    );
  };
  return (
    <table class="results-table">
      <caption class="unseen">Results</caption>
      {other && (
        <thead>
          <tr>
            <td />
            <th scope="col" class="is-this">
              This{titles[0] && <span class="head-title">{titles[0]}</span>}
            </th>
            <th scope="col" class="is-that">
              That{titles[1] && <span class="head-title">{titles[1]}</span>}
            </th>
            <th scope="col">Difference</th>
          </tr>
        </thead>
      )}
      <tbody>
        {wanted.map((shown) => {
          const quantity = calculator.quantities[shown.of];
          return (
            quantity && (
              <tr key={shown.of}>
                <th scope="row">{quantity.label}</th>
                {cell(outcome, shown)}
                {other && cell(other, shown)}
                {other && (
                  <td class="difference">
                    {isSaid(outcome, shown.of) && isSaid(other, shown.of)
                      ? difference(scalarAt(outcome, shown.of), scalarAt(other, shown.of), quantity, system)
                      : ''}
                  </td>
                )}
              </tr>
            )
          );
        })}
      </tbody>
    </table>
  );
}

/** `Area (ac)`: a column's head carries its unit, so that its cells need not. */
export function columnHead(quantity: ScalarQuantity, system: UnitSystem): string {
  if (quantity.kind !== 'number') return quantity.label;
  const { print } = units[unitIn(system, quantity.unit)];
  return print === '' ? quantity.label : `${quantity.label} (${print})`;
}
/** Numbers stand right; a day stays on one line. */
export const cellClass = (quantity: ScalarQuantity | undefined): string | undefined =>
  quantity?.kind === 'number' ? 'is-number' : quantity?.kind === 'day' ? 'is-day' : undefined;
export const isNumeric = (quantity: ScalarQuantity | undefined): boolean => quantity?.kind === 'number';

export function RowsResult({
  quantity,
  rows,
  system,
  title,
}: {
  readonly quantity: RowsQuantity<Readonly<Record<string, ScalarQuantity>>>;
  readonly rows: Rows;
  readonly system: UnitSystem;
  readonly title: string;
}) {
  const columns = (quantity.shown ?? Object.keys(quantity.columns)).flatMap((name) => {
    const column = quantity.columns[name];
    return column ? [{ name, column, cells: printColumn(rows, quantity, name, system) }] : [];
  });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <section class="scroll" tabIndex={0} aria-label={title}>
      <table class="rows-table">
        <caption>{title}</caption>
        <thead>
          <tr>
            {columns.map(({ name, column }) => (
              <th scope="col" key={name} class={isNumeric(column) ? 'is-number' : undefined}>
                {columnHead(column, system)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={`${index}-${String(row[columns[0]?.name ?? ''])}`}>
              {columns.map(({ name, column, cells }) => (
                <td key={name} class={cellClass(column)}>
                  {cells[index]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Tables among the results: a calendar, a line a part. */
export function RowsResults({ calculator, outcome, other, system }: Sides) {
  return (
    <>
      {calculator.results.flatMap(({ of }) => {
        const quantity = calculator.quantities[of];
        if (quantity?.kind !== 'rows') return [];
        return [outcome, other].flatMap((side, index) => {
          const rows = side?.computed[of];
          if (!isSaid(side, of) || typeof rows !== 'object' || rows.length === 0) return [];
          const title = other ? `${quantity.label}: ${index === 0 ? 'this' : 'that'}` : quantity.label;
          return [<RowsResult key={`${of}-${index}`} quantity={quantity} rows={rows} system={system} title={title} />];
        });
      })}
    </>
  );
}
