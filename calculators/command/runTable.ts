import { readFileSync } from 'node:fs';
import { csvFormatRows, csvParseRows } from 'd3-dsv';
import type { Calculator, Outcome } from '../kit/define.ts';
import type { Inputs } from '../kit/inputs.ts';
import { fromLink, linkName } from '../kit/link.ts';
import type { Quantity } from '../kit/quantities.ts';
import { isoDay } from '../units/printQuantity.ts';
import { Refused, run } from './runOnce.ts';

/** Every name that a column may have: those of a link, former ones too. */
const namesOf = (inputs: Inputs, head = ''): readonly string[] =>
  Object.entries(inputs).flatMap(([key, input]) => {
    const name = `${head}${linkName(key, input)}`;
    if (input.kind === 'rows') return namesOf(input.columns, `${name}.`);
    return input.kind === 'record' ? [] : [name, ...(input.aliases ?? []).map((alias) => `${head}${alias}`)];
  });

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

/**
 * A table of pastures through one calculator. Columns with the names of a link are read, others are carried along; an empty cell holds its default.
 * @throws Refused with the row's number and the form's message
 */
export function runTable(calculator: Calculator, path: string): string {
  const [header = [], ...body] = csvParseRows(readFileSync(path, 'utf8').replace(/^\ufeff/, ''));
  const names = header.map((name) => name.trim());
  const known = new Set(namesOf(calculator.inputs));
  const twice = names.find((name, at) => known.has(name) && names.indexOf(name) !== at);
  if (twice !== undefined) throw new Refused(`Two columns are named “${twice}”.`);
  if (!names.some((name) => known.has(name)))
    throw new Refused(`No column of this table is an input of ${calculator.slug}. Its inputs are: ${[...known].join(', ')}.`);
  const results = resultsOf(calculator);
  const lines = body.flatMap((cells, index) => {
    if (cells.every((cell) => cell.trim() === '')) return [];
    const query = new URLSearchParams(names.flatMap((name, at) => (known.has(name) && cells[at]?.trim() ? [[name, cells[at]]] : [])));
    const { form, notices } = fromLink(calculator, query.toString());
    // Row 1 is the header, as a spreadsheet counts.
    const row = `Row ${index + 2}`;
    if (notices.length > 0) throw new Refused(`${row}, ${notices.join(' ')}`);
    try {
      const { outcome } = run(calculator, form.this);
      return [[...names.map((_, at) => cells[at] ?? ''), ...results.map((result) => told(result, outcome))]];
    } catch (error) {
      if (error instanceof Refused) throw new Refused(error.message.replace(/^/gm, `${row}, `));
      throw error;
    }
  });
  const heads = results.map(([name, quantity]) => (quantity.kind === 'number' ? `${name} (${quantity.unit})` : name));
  return csvFormatRows([[...names, ...heads], ...lines]);
}
