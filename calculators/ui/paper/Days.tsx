import { printColumn } from '../../kit/print.ts';
import type { Rows, ScalarQuantity } from '../../kit/quantities.ts';
import type { UnitSystem } from '../../units/units.ts';
import { cellClass, columnHead, isNumeric } from '../RowsResults.tsx';
import { daysOf, rowsOf } from './days.ts';
import type { Held } from './paperProps.ts';

/** Days on the first page, of both sides together; the others stand behind. */
const mostDays = 16;
/** Too few to stand in two columns. */
const fewDays = 3;
/** With words longer than `longestWord` a table takes the whole width if it is no longer than this; else those words stand on the pages behind. */
const mostWideDays = 6;
const longestWord = 14;
/** More than these do not fit into half of a page: they stand behind. */
const mostColumns = 5;
const year = /, (\d{4})$/;

interface Column {
  readonly name: string;
  readonly column: ScalarQuantity;
  readonly cells: readonly string[];
}

function DaysTable({
  columns,
  from,
  to,
  title,
  system,
}: {
  readonly columns: readonly Column[];
  readonly from: number;
  readonly to: number;
  readonly title: string;
  readonly system: UnitSystem;
}) {
  const rows = (columns[0]?.cells ?? []).slice(from, to);
  return (
    <table>
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
        {rows.map((_, index) => (
          <tr key={String(index)}>
            {columns.map(({ name, column, cells }) => (
              <td key={name} class={cellClass(column)}>
                {cells[from + index]?.replace(year, '')}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The first days of one side, in two columns unless its words need the width, or of each side beside the other; what both sides say stands once. What is the same in every line is left to the whole table. */
export function Days({ calculator, outcome, other: that, titles, system }: Held) {
  const of = daysOf(calculator, outcome);
  const quantity = of === undefined ? undefined : calculator.quantities[of];
  if (of === undefined || quantity?.kind !== 'rows') return null;
  const columnsOf = (rows: Rows): readonly Column[] =>
    (quantity.shown ?? Object.keys(quantity.columns)).flatMap((name) => {
      const column = quantity.columns[name];
      return column ? [{ name, column, cells: printColumn(rows, quantity, name, system) }] : [];
    });
  const [ours, theirs] = [outcome, that].map((side) => columnsOf(rowsOf(side, of)));
  const isSame = that !== null && JSON.stringify(ours) === JSON.stringify(theirs);
  const other = isSame ? null : that;
  const sides = [ours ?? [], ...(other && theirs ? [theirs] : [])];
  const [first = []] = sides;
  const count = first[0]?.cells.length ?? 0;
  const cellsOf = (name: string): readonly string[] => sides.flatMap((columns) => columns.find((each) => each.name === name)?.cells ?? []);
  const isLong = ({ name, column }: Column): boolean => column.kind === 'word' && cellsOf(name).some((cell) => cell.length > longestWord);
  const isWide = !other && (count <= fewDays || (count <= mostWideDays && first.some(isLong)));
  const most = other ? mostDays / 2 : mostDays;
  // The first column names its row, however long the name is.
  const tells = (each: Column, index: number): boolean => {
    if (index > 0 && !isWide && (isLong(each) || index >= mostColumns)) return false;
    const cells = cellsOf(each.name);
    return index === 0 || cells.length === 1 || new Set(cells).size > 1;
  };
  const years = [...new Set(sides.flat().flatMap(({ cells }) => cells.slice(0, most).flatMap((cell) => year.exec(cell)?.[1] ?? [])))];
  const isMore = sides.some(([one]) => (one?.cells.length ?? 0) > most);
  const half = Math.ceil(Math.min(count, most) / 2);
  const parts = other
    ? sides.map((columns, side) => ({ title: titles[side === 0 ? 0 : 1], columns, from: 0, to: most }))
    : (isWide ? [[0, most] as const] : [[0, half] as const, [half, most] as const]).map(([from, to]) => ({ title: '', columns: first, from, to }));
  return (
    <section class="paper-days">
      <h2>
        {quantity.label}
        {years.length > 0 && `, ${years.join(' and ')}`}
        {isSame && <small> (the same for both)</small>}
        {isMore && <small> (all of them on the pages behind)</small>}
      </h2>
      <div class="paper-pair">
        {parts.map(({ columns, ...part }, index) => (
          <DaysTable key={String(index)} {...part} columns={columns.filter(tells)} system={system} />
        ))}
      </div>
    </section>
  );
}
