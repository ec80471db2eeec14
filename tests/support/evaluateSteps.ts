import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { evaluate, readFormula } from '../../calculators/kit/formula.ts';
import type { Scalar } from '../../calculators/kit/quantities.ts';

/** Which ways of which formulas some run has used: `3 runoffIn` → { 0, 2 }. */
export type Hits = Map<string, Set<number>>;
const hit = (hits: Hits, name: string, way: number): void => {
  hits.set(name, (hits.get(name) ?? new Set()).add(way));
};

const parsed = new Map<string, ReturnType<typeof readFormula>>();
function parse(template: string): ReturnType<typeof readFormula> {
  const formula = parsed.get(template) ?? readFormula(template);
  parsed.set(template, formula);
  return formula;
}

type Scope = Readonly<Record<string, unknown>>;
/** The number that a formula stands for, and the largest number in it, which sets how far rounding can reach. */
function worth(template: string, scopes: readonly Scope[]): { readonly value: number; readonly largest: number } {
  let largest = 0;
  const value = evaluate(parse(template), (name) => {
    const found = scopes.find((scope) => Object.hasOwn(scope, name))?.[name];
    if (typeof found !== 'number') throw new Error(`"${name}" in ${template} is not a number but ${String(found)}`);
    largest = Math.max(largest, Math.abs(found));
    return found;
  });
  return { value, largest };
}
/** Equal to a part in a billion, or as near as the largest term lets a difference come. */
const agrees = (one: number, other: number, largest: number): boolean =>
  Math.abs(one - other) <= Math.max(1e-9 * Math.max(Math.abs(one), Math.abs(other)), 1e-13 * largest);

/**
 * Holds the drawn working against `compute`: each formula of each step that applies, each row of each table, each sum, both sides of each check.
 * @returns What disagrees
 */
export function failingSteps({ steps }: Pick<Calculator, 'steps'>, { values, uses }: Outcome, hits: Hits): readonly string[] {
  const wrong: string[] = [];
  const hold = (what: string, template: string, scopes: readonly Scope[], computed: unknown): void => {
    const { value, largest } = worth(template, scopes);
    if (typeof computed !== 'number' || !agrees(value, computed, largest))
      wrong.push(`${what}: the formula ${template} gives ${value}, compute ${String(computed)}`);
  };
  for (const [at, step] of steps.entries()) {
    const use = uses[at];
    if (use === null || use === undefined) continue;
    if (step.kind === 'formula' && typeof use === 'number') {
      hit(hits, `${at} ${step.shows}`, use);
      hold(step.shows, step.ways[use]?.formula ?? '', [values], values[step.shows]);
    } else if (step.kind === 'check') {
      const right = worth(step.right, [values]);
      hold(`check ${at}`, step.left, [values, { largest: right.largest }], right.value);
      hit(hits, `${at} check`, 0);
    } else if (step.kind === 'rows' && typeof use === 'object') {
      const list = values[step.of];
      const rows = Array.isArray(list) ? list.filter((row): row is Readonly<Record<string, Scalar>> => typeof row === 'object') : [];
      for (const [column, ways] of Object.entries(step.formulas)) {
        for (const [index, row] of rows.entries()) {
          const way = use[column]?.[index] ?? -1;
          hit(hits, `${at} ${step.of}.${column}`, way);
          hold(`${step.of}.${index}.${column}`, ways[way]?.formula ?? '', [row, values], row[column]);
        }
      }
      for (const [name, column] of Object.entries(step.sums)) {
        const sum = rows.reduce((total, row) => total + Number(row[column]), 0);
        const largest = Math.max(0, ...rows.map((row) => Math.abs(Number(row[column]))));
        if (!agrees(sum, Number(values[name]), largest)) wrong.push(`${name}: the rows add up to ${sum}, compute ${String(values[name])}`);
      }
    }
  }
  return wrong;
}

/** Every way that a definition draws and no run has used. */
export const waysNeverUsed = ({ steps }: Pick<Calculator, 'steps'>, hits: Hits): readonly string[] =>
  steps.flatMap((step, at) => {
    const unused = (name: string, count: number): readonly string[] =>
      Array.from({ length: count }, (_, way) => way)
        .filter((way) => !hits.get(`${at} ${name}`)?.has(way))
        .map((way) => `step ${at + 1}, ${name}, way ${way + 1}`);
    switch (step.kind) {
      case 'formula':
        return unused(step.shows, step.ways.length);
      case 'check':
        return unused('check', 1);
      case 'rows':
        return Object.entries(step.formulas).flatMap(([column, ways]) => unused(`${step.of}.${column}`, ways.length));
      default:
        return [];
    }
  });
