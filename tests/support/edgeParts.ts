import type { Calculator, Run } from '../../calculators/kit/define.ts';
import type { Edge, EdgeList, Side } from '../../calculators/kit/edges.ts';
import type { Cell, Inputs } from '../../calculators/kit/inputs.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import type { WordQuantity } from '../../calculators/kit/quantities.ts';
import { readCell } from '../../calculators/kit/read.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { monthsIn, rowsIn, type Texts, textIn } from '../../calculators/kit/state.ts';
import { readQuantity } from '../../calculators/units/readQuantity.ts';
import { convert, type UnitName } from '../../calculators/units/units.ts';

/** All that a run says of its input: why it stops, or what stands before its result. */
export const saidIn = (run: Run): readonly string[] => ('refusals' in run ? run.refusals : run.outcome.cautions).map(({ say }) => say);

/** Every message that has a limit of its own, told as often as it is declared. */
export const messagesOf = ({ cautions, refusals, slug }: Calculator): readonly { readonly kind: string; readonly say: string }[] => [
  ...cautions.map(({ say }) => ({ kind: `${slug}: the caution`, say })),
  ...refusals.map(({ at, say }) => ({ kind: `${slug}: the refusal at ${at}`, say })),
];

/** The limits of every field that takes numbers, by the path of the field. */
export const limitsOf = (inputs: Inputs): EdgeList['limits'] =>
  Object.fromEntries(
    Object.entries(inputs).flatMap(([key, input]) => {
      const fields =
        input.kind === 'rows' ? Object.entries(input.columns).map(([name, cell]) => [`${key}.${name}`, cell] as const) : [[key, input] as const];
      return fields.flatMap(([path, field]) => ('min' in field ? [[path, [field.min, field.max]] as const] : []));
    }),
  );

const optionsIn = (inputs: Inputs): readonly (readonly string[])[] =>
  Object.values(inputs)
    .flatMap((input) => (input.kind === 'rows' ? Object.values(input.columns) : [input]))
    .flatMap((cell) => (cell.kind === 'choice' ? [Object.keys(cell.options)] : []));
/** More words than these are names in a list; the numbers behind them stand in tables, which have laws of their own. */
const mostClasses = 12;
/** Results that judge: in a few words, and not those of a choice that somebody made. */
export function judgingWords(calculator: Calculator): readonly (readonly [string, WordQuantity])[] {
  const options = optionsIn(calculator.inputs);
  const isEcho = (words: readonly string[]): boolean => options.some((list) => words.every((word) => list.includes(word)));
  return Object.entries(calculator.quantities).flatMap(([path, quantity]) => {
    if (quantity.kind !== 'word') return [];
    const words = Object.keys(quantity.words);
    return words.length > mostClasses || isEcho(words) ? [] : [[path, quantity] as const];
  });
}

export interface Typed {
  readonly query: string;
  readonly records: Readonly<Record<string, string>>;
}
/** What is typed on one side, with what both sides share. */
export function typedOn({ on, records }: Edge, side: Side): Typed {
  const own = typeof side === 'string' ? { query: side, records: {} } : { query: side.query ?? '', records: side.records };
  return { query: [on ?? '', own.query].filter((part) => part !== '').join('&'), records: { ...records, ...own.records } };
}
export const textsTyped = (calculator: Calculator, { query, records }: Typed): Texts => ({ ...fromLink(calculator, query).form.this, ...records });
export const runTyped = (calculator: Calculator, typed: Typed): Run => runTexts(calculator, textsTyped(calculator, typed));

export interface Difference {
  readonly at: string;
  readonly field: Cell | { readonly kind: 'row' | 'record' } | { readonly kind: 'month'; readonly unit: UnitName };
  readonly texts: readonly [string, string];
}
/** Each field in which two forms differ. One row more at the end is one difference. */
export function differencesOf(inputs: Inputs, one: Texts, other: Texts): readonly Difference[] {
  return Object.entries(inputs).flatMap(([key, input]): readonly Difference[] => {
    const pair = (at: string, field: Difference['field'], texts: readonly [string, string]): readonly Difference[] =>
      texts[0] === texts[1] ? [] : [{ at, field, texts }];
    switch (input.kind) {
      case 'rows': {
        const [mine, theirs] = [rowsIn(one[key]), rowsIn(other[key])];
        const shared = Math.min(mine.length, theirs.length);
        const extra = Array.from(
          { length: Math.abs(mine.length - theirs.length) },
          (_, past): Difference => ({
            at: `${key}.${shared + past}`,
            field: { kind: 'row' },
            texts: [mine.length > theirs.length ? 'a row' : 'none', mine.length > theirs.length ? 'none' : 'a row'],
          }),
        );
        const cells = mine
          .slice(0, shared)
          .flatMap((row, index) =>
            Object.entries(input.columns).flatMap(([name, cell]) =>
              pair(`${key}.${index}.${name}`, cell, [row[name] ?? '', theirs[index]?.[name] ?? '']),
            ),
          );
        return [...cells, ...extra];
      }
      case 'months':
        return monthsIn(one[key]).flatMap((text, month) =>
          pair(`${key}.${month}`, { kind: 'month', unit: input.unit }, [text, monthsIn(other[key])[month] ?? '']),
        );
      case 'record':
        return pair(key, { kind: 'record' }, [textIn(one[key]), textIn(other[key])]);
      default:
        return pair(key, input, [textIn(one[key]), textIn(other[key])]);
    }
  });
}

/** One in the last digit that somebody typed, in the field's own unit. */
function lastDigit(text: string, unit: UnitName): number {
  const reading = readQuantity(text, unit);
  if (reading.is !== 'value') return 0;
  const step = 10 ** -(/\.(\d+)/.exec(reading.amount)?.[1]?.length ?? 0);
  return Math.abs(convert(step, reading.unit, unit) - convert(0, reading.unit, unit));
}
/** Two numbers are a hair apart within 1 %, or within one in the last digit typed where that is not more than 10 %. */
export function isHairApart(field: Difference['field'], [one, other]: Difference['texts'], within = 0): boolean {
  if (field.kind === 'date') {
    const days = [readCell(field, one), readCell(field, other)].map((reading) => ('value' in reading ? Number(reading.value) : Number.NaN));
    return Math.abs((days[0] ?? Number.NaN) - (days[1] ?? Number.NaN)) <= Math.max(1, within);
  }
  if (field.kind !== 'number' && field.kind !== 'month') return true;
  const values = [one, other].map((text) => {
    const reading = readQuantity(text, field.unit);
    return reading.is === 'value' ? reading.value : Number.NaN;
  });
  const apart = Math.abs((values[0] ?? Number.NaN) - (values[1] ?? Number.NaN));
  const size = Math.max(...values.map(Math.abs));
  const typed = Math.min(lastDigit(one, field.unit), lastDigit(other, field.unit));
  const least = field.kind === 'number' && field.whole === true ? 1 : Math.min(typed, size / 10);
  return apart <= Math.max(within, size / 100, least) * (1 + 1e-9);
}
