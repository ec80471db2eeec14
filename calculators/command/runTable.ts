import { csvFormatRows } from 'd3-dsv';
import type { Calculator } from '../kit/define.ts';
import { fromLink } from '../kit/openLink.ts';
import type { Texts } from '../kit/state.ts';
import { csvRows } from './csvRows.ts';
import { RowList } from './rowList.ts';
import { Refused, run } from './runOnce.ts';
import { spreadsheetCell } from './spreadsheetCell.ts';
import { type Columns, columnsOf } from './tableColumns.ts';
import { resultColumns } from './tableResults.ts';

/** Rows of a file from one up to and with another, as a spreadsheet counts them: the header is row 1. */
export interface RowRange {
  readonly from: number;
  readonly to: number;
}
const allRows: RowRange = { from: 2, to: Number.POSITIVE_INFINITY };

/** @throws Refused for what is no range of rows below the header */
export function rowRangeOf(text: string): RowRange {
  const [, from, to] = /^(\d{1,9})-(\d{1,9})$/.exec(text) ?? [];
  const range = { from: Number(from), to: Number(to) };
  if (range.from >= 2 && range.to >= range.from) return range;
  throw new Refused(`--rows takes a first and a last row, such as 2001-4000, not “${text}”. The header is row 1, so the first can be 2.`);
}

/** Of a wrong column each row would say the same. */
const mostDoubts = 5;

/** What is told of the rows at the end, in room that does not grow with them. */
class Told {
  readonly #doubts: string[] = [];
  #moreDoubts = 0;
  readonly #atDefault = new Map<string, string>();
  readonly #emptyRows = new RowList();
  readonly #emptyNames = new Set<string>();
  doubt(row: number, doubts: readonly string[]): void {
    for (const doubt of doubts) {
      if (this.#doubts.length < mostDoubts) this.#doubts.push(`Row ${row}, ${doubt}`);
      else this.#moreDoubts += 1;
    }
  }
  withoutColumn({ asked }: Columns, texts: Texts): void {
    for (const { name, headers, fallback, isAsked } of asked) if (headers.length === 0 && isAsked(texts)) this.#atDefault.set(name, fallback);
  }
  empty(row: number, names: readonly string[]): void {
    this.#emptyRows.add(row);
    for (const name of names) this.#emptyNames.add(name);
  }
  *lines({ asked }: Columns): Generator<string> {
    yield* this.#doubts;
    if (this.#moreDoubts > 0) yield `And ${this.#moreDoubts} more numbers that look wrong.`;
    const whole = asked.flatMap(({ name }) => (this.#atDefault.has(name) ? [`${name} (${this.#atDefault.get(name)})`] : []));
    if (whole.length > 0) yield `No column, so at its default wherever it counts: ${whole.join(', ')}.`;
    if (this.#emptyNames.size > 0)
      yield `Not worked out, for a cell that is asked for stands empty (${[...this.#emptyNames].join(', ')}): ${this.#emptyRows.said()}.`;
  }
}

/**
 * A table of pastures through one calculator, a piece at a time. Columns with the names of a link are read, those in `carried` go along as
 * they are. A row whose cell stands empty where it is asked for comes back without results: the example's figure would be taken for that
 * place's. What has no column stands at its default, and that is told at the end.
 * @throws Refused with the row's number and the form's message
 */
export async function* runTable(
  calculator: Calculator,
  path: string,
  carried: readonly string[],
  tell: (line: string) => void,
  rows: RowRange = allRows,
): AsyncGenerator<string> {
  const results = resultColumns(calculator);
  const told = new Told();
  let columns: Columns | undefined;
  // Row 1 is the header, as a spreadsheet counts.
  let at = 0;
  for await (const piece of csvRows(path)) {
    const lines: (readonly string[])[] = [];
    if (at > rows.to) break;
    for (const cells of piece) {
      at += 1;
      if (!columns) {
        columns = columnsOf(calculator, cells, carried);
        lines.push([...columns.names, ...results.map(({ head }) => head), 'cautions']);
        continue;
      }
      if (at < rows.from || at > rows.to || cells.every((cell) => cell.trim() === '')) continue;
      const { texts, empty } = readRow(calculator, columns, cells, at);
      if (empty.length > 0) {
        told.empty(at, empty);
        lines.push([...cells, ...results.map(() => ''), `Not worked out, empty: ${empty.join(', ')}`]);
        continue;
      }
      const { outcome, doubts } = runRow(calculator, texts, at);
      told.withoutColumn(columns, texts);
      told.doubt(at, doubts);
      lines.push([...cells, ...results.map(({ cellOf }) => cellOf(outcome)), outcome.cautions.map(({ lead }) => lead).join(' / ')]);
    }
    if (lines.length > 0) yield `${csvFormatRows(lines.map((cells) => cells.map(spreadsheetCell)))}\n`;
  }
  if (!columns) throw new Refused('This table is empty.');
  if (at < rows.from && rows.from > 2) throw new Refused(`--rows begins at row ${rows.from}, and this table ends at row ${at}.`);
  for (const line of told.lines(columns)) tell(line);
}

/** The texts of a form from a row, and the names of what is asked there and stands empty. */
function readRow(
  calculator: Calculator,
  { names, known, asked }: Columns,
  cells: readonly string[],
  row: number,
): { readonly texts: Texts; readonly empty: readonly string[] } {
  if (cells.length !== names.length) {
    const counted = (count: number): string => `${count} cell${count === 1 ? '' : 's'}`;
    const hint = cells.length > names.length ? ' A decimal comma? Write 1.5, not 1,5. A name with a comma in it stands between quotes.' : '';
    throw new Refused(`Row ${row} has ${counted(cells.length)}, the header has ${names.length}.${hint}`);
  }
  const given = new Map(
    names.map((name, index) => [name, cells[index] ?? ''] as const).filter(([name, cell]) => known.has(name) && cell.trim() !== ''),
  );
  const { form, notices } = fromLink(calculator, new URLSearchParams([...given]).toString());
  if (notices.length > 0) throw new Refused(`Row ${row}, ${notices.join(' ')}`);
  const isEmpty = (headers: readonly string[]): boolean => headers.length > 0 && !headers.some((name) => given.has(name));
  return { texts: form.this, empty: asked.flatMap(({ name, headers, isAsked }) => (isEmpty(headers) && isAsked(form.this) ? [name] : [])) };
}

function runRow(calculator: Calculator, texts: Texts, row: number): ReturnType<typeof run> {
  try {
    return run(calculator, texts);
  } catch (error) {
    if (error instanceof Refused) throw new Refused(error.message.replace(/^/gm, `Row ${row}, `));
    throw error;
  }
}
