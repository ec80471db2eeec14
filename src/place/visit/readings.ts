import type { Calculator } from '../../../calculators/kit/define.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { printName } from '../../../calculators/kit/print.ts';
import type { PlainValues } from '../../../calculators/kit/quantities.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import { isShown, type Texts } from '../../../calculators/kit/state.ts';

/** An answer that should be the same on both days, in words. */
interface Likeness {
  readonly label: string;
  readonly told: string;
}
/** What was read on one day: each reading apart, or a count of points. */
export interface Readings {
  readonly readings: readonly number[];
  /** As the form works it out: their mean, of rates the geometric one. */
  readonly middle: number;
  readonly count?: { readonly hits: number; readonly points: number };
  /** By the name of its input: the tool and the way it was used. Only what the form asked. */
  readonly alike: ReadonlyMap<string, Likeness>;
  /** Why it tells nothing against another test: what stood in its way that day. */
  readonly bars: readonly string[];
  /** Answers without which nothing can be said of two days, by why. */
  readonly same: ReadonlyMap<string, unknown>;
}

type Rows = readonly Readonly<Record<string, unknown>>[];
const rowsAt = (values: Readonly<Record<string, unknown>>, name: string): Rows => {
  const rows = values[name];
  return Array.isArray(rows) ? rows : [];
};
/** The answers to a choice in a table, each once: `No, Once more`. */
function columnWords({ inputs }: Calculator, values: PlainValues, table: string, column: string): Likeness | undefined {
  const input = inputs[table];
  const asked = input?.kind === 'rows' ? input.columns[column] : undefined;
  if (asked?.kind !== 'choice') return undefined;
  const answers = new Set(rowsAt(values, table).map((row) => String(row[column])));
  const words = Object.entries(asked.options).flatMap(([key, { label }]) => (answers.has(key) ? [label] : []));
  return { label: asked.label, told: words.join(', ') };
}
function likenessOf(calculator: Calculator, texts: Texts, values: PlainValues, name: string): Likeness | undefined {
  const [key = '', column] = name.split('.');
  if (column !== undefined) return columnWords(calculator, values, key, column);
  const input = calculator.inputs[key];
  return input === undefined || !isShown(input, texts) ? undefined : { label: input.label, told: printName(calculator, values, key, 'us') };
}

/** The readings of a test, from the link that was kept; nothing where it is not one that is compared, or where the form refuses the link now. */
export function readingsOf(calculator: Calculator, link: string): Readings | undefined {
  const { compares } = calculator;
  if (compares === undefined) return undefined;
  const texts = fromLink(calculator, link).form.this;
  const ran = runTexts(calculator, texts, 'us');
  if (!('outcome' in ran)) return undefined;
  const { values } = ran.outcome;
  const likeness = {
    alike: new Map(
      (compares.alike ?? []).flatMap((name) => {
        const told = likenessOf(calculator, texts, values, name);
        return told === undefined ? [] : [[name, told] as const];
      }),
    ),
    bars: Object.entries(compares.bars ?? {}).flatMap(([name, words]) => words[String(values[name])] ?? []),
    same: new Map(Object.entries(compares.same ?? {}).map(([name, why]) => [why, values[name]])),
  };
  if (compares.as === 'share') {
    const [points, misses] = [Number(values[compares.points]), Number(values[compares.misses])];
    const coveredPercent = ((points - misses) / points) * 100;
    return { readings: [coveredPercent], middle: coveredPercent, count: { hits: points - misses, points }, ...likeness };
  }
  return {
    readings: rowsAt(values, compares.rows)
      .map((row) => Number(row[compares.column]))
      .filter(Number.isFinite),
    middle: Number(values[compares.middle]),
    ...likeness,
  };
}
/** The tool and the way it was used, in words: `Inside width (bore): 6 in; …`. */
export const toolWords = ({ alike }: Readings): string => [...alike.values()].map(({ label, told }) => labeled(label, told)).join('; ');
/** A question takes no colon. */
export const labeled = (label: string, told: string): string => `${label}${/[?]$/.test(label) ? '' : ':'} ${told}`;

const monthOf = (day: string): number => Number(day.slice(5, 7));
/** The same month of the year, or the one before or after. */
export function isSameSeason(one: string, other: string): boolean {
  const apart = Math.abs(monthOf(one) - monthOf(other));
  return Math.min(apart, 12 - apart) <= 1;
}
