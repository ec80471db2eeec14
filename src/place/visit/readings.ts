import type { Calculator } from '../../../calculators/kit/define.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { printName } from '../../../calculators/kit/print.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import { isShown } from '../../../calculators/kit/state.ts';

/** What was read on one day: each reading apart, or a count of points. */
export interface Readings {
  readonly readings: readonly number[];
  readonly count?: { readonly hits: number; readonly points: number };
  /** The tool in words: `Inside width (bore) 6 in`. */
  readonly tool: string;
  /** Something stood in its way that day, so that it tells nothing against another. */
  readonly isUnsound: boolean;
}

/** The readings of a test, from the link that was kept; nothing where it is not one that is compared, or where the form refuses the link now. */
export function readingsOf(calculator: Calculator, link: string): Readings | undefined {
  const { compares, inputs } = calculator;
  if (compares === undefined) return undefined;
  const texts = fromLink(calculator, link).form.this;
  const ran = runTexts(calculator, texts, 'us');
  if (!('outcome' in ran)) return undefined;
  const { values } = ran.outcome;
  const numberAt = (name: string): number => Number(values[name]);
  if (compares.as === 'share') {
    const [points, misses] = [numberAt(compares.points), numberAt(compares.misses)];
    return { readings: [((points - misses) / points) * 100], count: { hits: points - misses, points }, tool: '', isUnsound: false };
  }
  const rows: unknown = values[compares.rows];
  const list: readonly Readonly<Record<string, unknown>>[] = Array.isArray(rows) ? rows : [];
  const tool = (compares.alike ?? []).flatMap((name) => {
    const input = inputs[name];
    return input !== undefined && isShown(input, texts) ? [`${input.label} ${printName(calculator, values, name, 'us')}`] : [];
  });
  const [judge, word] = compares.judgedBy ?? [];
  return {
    readings: list.map((row) => Number(row[compares.column])).filter(Number.isFinite),
    tool: tool.join(', '),
    isUnsound: judge !== undefined && values[judge] !== word,
  };
}

const monthOf = (day: string): number => Number(day.slice(5, 7));
/** The same month of the year, or the one before or after. */
export function isSameSeason(one: string, other: string): boolean {
  const apart = Math.abs(monthOf(one) - monthOf(other));
  return Math.min(apart, 12 - apart) <= 1;
}
