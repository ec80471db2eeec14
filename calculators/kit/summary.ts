import { printDay, printNumber } from '../units/printQuantity.ts';
import type { UnitSystem } from '../units/units.ts';
import type { Cell, Input, Inputs, MonthsInput, Option, RowsInput } from './inputs.ts';
import { printInput } from './print.ts';
import { readCell, readMonth } from './read.ts';
import type { PlainGroup } from './screen.ts';
import { isShown, monthsIn, type RowTexts, rowsIn, type Text, type Texts, textIn } from './state.ts';

// Answers told as a line: `45 cows of 1,250 lb, 2 bulls of 1,900 lb`.

/** Rows that a line tells before it counts the rest. */
const mostRows = 4;
/** A line stands on a phone in three rows of text at most. */
const mostLetters = 110;

export interface Summary {
  readonly text: string;
  /** Labels of what is asked and has no answer yet. */
  readonly missing: readonly string[];
}

/** The few words of an option, in the reader's units, where it has some. */
export function shortOf({ short, shortMetric }: Option, system: UnitSystem, many = true): string | undefined {
  const words = (system === 'si' ? shortMetric : undefined) ?? short;
  return words === undefined || typeof words === 'string' ? words : words[many ? 1 : 0];
}
/** One answer as it is read, with its unit unless `bare`; as typed where it cannot be read. */
function tellCell(cell: Cell, text: string, system: UnitSystem, bare = false, many = true): string {
  const reading = readCell(cell, text, system);
  if ('problem' in reading) return text.trim() === '' ? '?' : `“${text.trim().slice(0, 20)}”`;
  const { value } = reading;
  switch (cell.kind) {
    case 'choice': {
      const option = cell.options[String(value)] ?? { label: text };
      return shortOf(option, system, many) ?? option.label;
    }
    case 'yesNo':
      return cell.short?.[value === true ? 0 : 1] ?? (value === true ? 'yes' : 'no');
    case 'date':
      return typeof value === 'number' ? printDay(value) : text;
    case 'number': {
      const told = printInput(typeof value === 'number' ? value : 0, cell, system);
      return bare ? told.replace(/ [^\d]*$/, '') : told;
    }
  }
}

const names = /\{(#?)(\w+)\}/g;
/** What a template names. */
export const namesIn = (template: string): readonly string[] => [...template.matchAll(names)].map(([, , name = '']) => name);
/** Fills a template of cells. A part of it between commas that names what is not asked is left out. */
function fill(
  template: string,
  cells: Readonly<Record<string, Cell>>,
  texts: RowTexts,
  beside: Readonly<Record<string, unknown>>,
  system: UnitSystem,
): string {
  const one = Object.entries(cells).some(([name, cell]) => cell.kind === 'number' && cell.unit === 'head' && Number(texts[name]) === 1);
  return template
    .split(', ')
    .filter((part) => [...part.matchAll(names)].every(([, , name = '']) => cells[name] === undefined || isShown(cells[name], beside)))
    .map((part) =>
      part.replace(names, (all, bare: string, name: string) => {
        const cell = cells[name];
        return cell ? tellCell(cell, texts[name] ?? '', system, bare !== '', !one) : all;
      }),
    )
    .join(', ');
}

/** In place of answers that are not there yet, four at most. */
export const stillWanted = (labels: readonly string[]): string => `Still wanted: ${labels.slice(0, 4).join(', ')}`;

/** One row of a table in a few words; what it still wants while a cell is blank. */
export function tellRow(input: RowsInput, row: RowTexts, texts: Texts, system: UnitSystem): string {
  const beside = { ...texts, ...row };
  const blank = Object.entries(input.columns).flatMap(([name, cell]) => (isShown(cell, beside) && !row[name]?.trim() ? [cell.label] : []));
  return blank.length > 0 ? stillWanted(blank) : fill(input.each ?? '', input.columns, row, beside, system);
}
/** The rows of a table in a line. */
export function tellRows(input: RowsInput, text: Text | undefined, texts: Texts, system: UnitSystem): string {
  const list = rowsIn(text);
  const told = list.slice(0, mostRows).map((row) => tellRow(input, row, texts, system));
  return [...told, ...(list.length > mostRows ? [`and ${list.length - mostRows} more`] : [])].join(', ');
}
function tellMonths(input: MonthsInput, text: Text | undefined, system: UnitSystem): string {
  const sizes = monthsIn(text).flatMap((each, index) => {
    const reading = readMonth(input, index, each, system);
    return 'value' in reading ? [reading.value] : [];
  });
  if (sizes.length < 12) return '?';
  const cell = { ...input, kind: 'number', default: 0 } as const;
  return `${printInput(Math.min(...sizes), cell, system)} to ${printInput(Math.max(...sizes), cell, system)} a month`;
}
/** Any answer in a few words. */
export function tellInput(input: Input, text: Text | undefined, texts: Texts, system: UnitSystem): string {
  if (input.kind === 'rows') return tellRows(input, text, texts, system);
  if (input.kind === 'months') return tellMonths(input, text, system);
  if (input.kind === 'record') {
    if (text === input.default) return 'a stand-in record';
    const { lines, isMonthly, problem } = input.read(textIn(text));
    if (problem !== undefined) return textIn(text).trim() === '' ? '?' : 'not read yet';
    return `${printNumber(lines.length, 0)} ${isMonthly ? 'month' : 'day'}${lines.length === 1 ? '' : 's'}`;
  }
  return tellCell(input, textIn(text), system);
}

const isEmpty = (text: Text | undefined): boolean =>
  typeof text === 'string'
    ? text.trim() === ''
    : text === undefined || text.length === 0 || text.every((each) => Object.values(each).every((cell) => String(cell).trim() === ''));

/** A group in a line, and what in it waits for an answer. */
export function summaryOf(inputs: Inputs, group: PlainGroup, texts: Texts, system: UnitSystem): Summary {
  const asked = group.inputs.flatMap((key) => {
    const input = inputs[key];
    return input && isShown(input, texts) ? [{ key, input }] : [];
  });
  const missing = asked.filter(({ key }) => isEmpty(texts[key])).map(({ input }) => input.label);
  if (group.summary === undefined) {
    const told = asked.map(({ key, input }) => `${input.label}: ${tellInput(input, texts[key], texts, system)}`);
    let line = '';
    for (const each of told.slice(0, 3)) {
      const longer = line === '' ? each : `${line}; ${each}`;
      if (line !== '' && longer.length > mostLetters) break;
      line = longer;
    }
    return { text: line, missing };
  }
  const text = group.summary
    .split(', ')
    .filter((part) => [...part.matchAll(names)].every(([, , name = '']) => inputs[name] === undefined || isShown(inputs[name], texts)))
    .map((part) =>
      part.replace(names, (all, bare: string, name: string) => {
        const input = inputs[name];
        if (!input) return all;
        return input.kind === 'number' ? tellCell(input, textIn(texts[name]), system, bare !== '') : tellInput(input, texts[name], texts, system);
      }),
    )
    .join(', ');
  return { text, missing };
}
