import { csvFormatRows } from 'd3-dsv';
import type { Calculator, Outcome } from '../kit/define.ts';
import type { Input } from '../kit/inputs.ts';
import { linkName } from '../kit/link.ts';
import { fromLink } from '../kit/openLink.ts';
import type { Quantity } from '../kit/quantities.ts';
import { defaultText } from '../kit/read.ts';
import { isShown } from '../kit/state.ts';
import { isoDay } from '../units/printQuantity.ts';
import { csvRows } from './csvRows.ts';
import { didYouMean, namesOf } from './nearestName.ts';
import { Refused, run } from './runOnce.ts';
import { spreadsheetCell } from './spreadsheetCell.ts';

type Told = readonly [string, Exclude<Quantity, { readonly kind: 'rows' }>];
/** Results that fit in one cell, each headed by its name and, for a number, its unit. */
const resultsOf = ({ quantities, results }: Calculator): readonly Told[] =>
  results.flatMap(({ of }): readonly Told[] => {
    const quantity = quantities[of];
    return quantity === undefined || quantity.kind === 'rows' ? [] : [[of, quantity]];
  });
function told([name, quantity]: Told, { values, shown }: Outcome): string {
  const value = values[name];
  if (!shown.includes(name) || typeof value === 'object' || value === undefined) return '';
  if (quantity.kind === 'word') return quantity.words[String(value)] ?? String(value);
  return quantity.kind === 'day' ? isoDay(Number(value)) : String(value);
}

interface Columns {
  readonly names: readonly string[];
  /** Names of inputs among them. */
  readonly known: ReadonlySet<string>;
}
/** @throws Refused for a column that is neither an input nor named as carried along */
function columnsOf({ slug, inputs }: Calculator, header: readonly string[], carried: readonly string[]): Columns {
  const names = header.map((name) => name.trim());
  const labels = namesOf(inputs);
  const known = new Set(names.filter((name) => labels.has(name)));
  const twice = names.find((name, at) => known.has(name) && names.indexOf(name) !== at);
  if (twice !== undefined) throw new Refused(`Two columns are named “${twice}”.`);
  const lost = carried.find((name) => known.has(name) || !names.includes(name));
  if (lost !== undefined)
    throw new Refused(known.has(lost) ? `“${lost}” is an input, so --carry cannot take it.` : `--carry: this table has no column “${lost}”.`);
  const all = `Its inputs are: ${[...labels.keys()].join(', ')}.`;
  const faults = names
    .filter((name) => name !== '' && !known.has(name) && !carried.includes(name))
    .map((name) => `“${name}” is no input of ${slug}.${didYouMean(name, labels)} If it is only to be carried along, say --carry "${name}".`);
  if (known.size === 0) throw new Refused([`No column of this table is an input of ${slug}.`, ...faults, all].join('\n'));
  if (faults.length > 0) throw new Refused([...faults, all].join('\n'));
  return { names, known };
}

const defaultSaid = (input: Input): string =>
  input.kind === 'rows' || input.kind === 'months' || input.kind === 'record' ? 'its example' : defaultText(input).replace('\u00a0', ' ');
/** Follows which inputs hold their default though they count. A column inside a cell is only followed as a whole. */
function watchDefaults({ inputs }: Calculator, { known }: Columns) {
  const watched = Object.entries(inputs).map(([key, input]) => {
    const name = linkName(key, input);
    const names = input.kind === 'rows' ? Object.entries(input.columns).map(([column, cell]) => `${name}.${linkName(column, cell)}`) : [name];
    const aliases = input.kind === 'rows' ? [] : (input.aliases ?? []);
    return { name, input, names: [...names, ...aliases].filter((each) => known.has(each)), rows: 0, first: 0 };
  });
  return {
    see(row: number, given: ReadonlySet<string>, values: Parameters<typeof isShown>[1]) {
      for (const each of watched) {
        if (each.names.some((name) => given.has(name)) || !isShown(each.input, values)) continue;
        if (each.rows === 0) each.first = row;
        each.rows += 1;
      }
    },
    said(): readonly string[] {
      const whole = watched.filter(({ names, rows }) => names.length === 0 && rows > 0).map(({ name, input }) => `${name} (${defaultSaid(input)})`);
      const some = watched
        .filter(({ names, rows }) => names.length > 0 && rows > 0)
        .map(
          ({ name, input, rows, first }) =>
            `${name} (${defaultSaid(input)}) in ${rows === 1 ? `row ${first}` : `${rows} rows, the first row ${first}`}`,
        );
      return [
        ...(whole.length > 0 ? [`No column, so at its default wherever it counts: ${whole.join(', ')}.`] : []),
        ...(some.length > 0 ? [`No value in the cell, so at its default: ${some.join('; ')}.`] : []),
      ];
    },
  };
}

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

/**
 * A table of pastures through one calculator, a piece at a time. Columns with the names of a link are read, those in `carried` go along as
 * they are; an empty cell holds its default. What stood at a default is told at the end.
 * @throws Refused with the row's number and the form's message
 */
export async function* runTable(
  calculator: Calculator,
  path: string,
  carried: readonly string[],
  tell: (line: string) => void,
  rows: RowRange = allRows,
): AsyncGenerator<string> {
  const results = resultsOf(calculator);
  let columns: Columns | undefined;
  let defaults: ReturnType<typeof watchDefaults> | undefined;
  const doubts: string[] = [];
  let moreDoubts = 0;
  // Row 1 is the header, as a spreadsheet counts.
  let at = 0;
  for await (const piece of csvRows(path)) {
    const lines: (readonly string[])[] = [];
    if (at > rows.to) break;
    for (const cells of piece) {
      at += 1;
      if (!columns || !defaults) {
        columns = columnsOf(calculator, cells, carried);
        defaults = watchDefaults(calculator, columns);
        lines.push([...columns.names, ...results.map(([name, quantity]) => (quantity.kind === 'number' ? `${name} (${quantity.unit})` : name))]);
        continue;
      }
      if (at < rows.from || at > rows.to || cells.every((cell) => cell.trim() === '')) continue;
      const { names, known } = columns;
      const given = names.flatMap((name, index): [string, string][] => {
        const cell = cells[index];
        return cell !== undefined && cell.trim() !== '' && known.has(name) ? [[name, cell]] : [];
      });
      const ran = runRow(calculator, new URLSearchParams(given).toString(), `Row ${at}`);
      defaults.see(at, new Set(given.map(([name]) => name)), ran.values);
      for (const doubt of ran.doubts) {
        if (doubts.length < mostDoubts) doubts.push(`Row ${at}, ${doubt}`);
        else moreDoubts += 1;
      }
      lines.push([...names.map((_, index) => cells[index] ?? ''), ...results.map((result) => told(result, ran.outcome))]);
    }
    if (lines.length > 0) yield `${csvFormatRows(lines.map((cells) => cells.map(spreadsheetCell)))}\n`;
  }
  if (!columns) throw new Refused('This table is empty.');
  if (at < rows.from && rows.from > 2) throw new Refused(`--rows begins at row ${rows.from}, and this table ends at row ${at}.`);
  for (const line of [...doubts, ...(moreDoubts > 0 ? [`And ${moreDoubts} more numbers that look wrong.`] : []), ...(defaults?.said() ?? [])])
    tell(line);
}

function runRow(calculator: Calculator, query: string, row: string): ReturnType<typeof run> {
  const { form, notices } = fromLink(calculator, query);
  if (notices.length > 0) throw new Refused(`${row}, ${notices.join(' ')}`);
  try {
    return run(calculator, form.this);
  } catch (error) {
    if (error instanceof Refused) throw new Refused(error.message.replace(/^/gm, `${row}, `));
    throw error;
  }
}
