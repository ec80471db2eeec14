import type { Outcome } from '../kit/define.ts';
import { printColumn } from '../kit/print.ts';
import type { Rows, RowsQuantity, ScalarQuantity } from '../kit/quantities.ts';
import { type UnitSystem, unitIn, units } from '../units/units.ts';
import type { Sides } from './props.ts';

const isSaid = (outcome: Outcome | null, name: string): boolean => outcome?.shown.includes(name) === true;

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
              {columns.map(({ name, column, cells }, place) =>
                place === 0 ? (
                  <th scope="row" key={name} class={`row-name ${cellClass(column) ?? ''}`}>
                    {cells[index]}
                  </th>
                ) : (
                  <td key={name} class={cellClass(column)}>
                    {cells[index]}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Tables among the results: a calendar, a line a part. */
export function RowsResults({ calculator, outcome, other, titles, system }: Sides) {
  return (
    <>
      {calculator.results.flatMap(({ of }) => {
        const quantity = calculator.quantities[of];
        if (quantity?.kind !== 'rows') return [];
        return [outcome, other].flatMap((side, index) => {
          const rows = side?.computed[of];
          if (!isSaid(side, of) || typeof rows !== 'object' || rows.length === 0) return [];
          const title = other ? `${quantity.label}: ${titles[index === 0 ? 0 : 1]}` : quantity.label;
          return [<RowsResult key={`${of}-${index}`} quantity={quantity} rows={rows} system={system} title={title} />];
        });
      })}
    </>
  );
}
