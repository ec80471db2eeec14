import type { NumberKeys, RowOf, RowsKeys, ScalarKeys } from './quantities.ts';

/** One way to get the number; the first whose condition holds is the one that was used. */
export interface Way<V> {
  readonly when?: (values: V) => boolean;
  /** A formula template, see formula.ts. */
  readonly formula: string;
  readonly because?: string;
}
export type Ways<V> = readonly [...Way<V>[], Omit<Way<V>, 'when'>];

interface StepCommon<V> {
  /** What happens here, in plain words. `{name}` prints a quantity or an input. */
  readonly says: string;
  /** Left out of the working unless this holds. */
  readonly onlyWhen?: (values: V) => boolean;
  /** Source key, with where in it: `tr55-1986, eq. 2-3`. */
  readonly source?: string;
}
/** V: the inputs' values with the results; R: the results. */
export type Step<V, R> =
  | (StepCommon<V> & { readonly kind: 'formula'; readonly shows: NumberKeys<R>; readonly ways: Ways<V> })
  | (StepCommon<V> & { readonly kind: 'lookup'; readonly shows: ScalarKeys<R>; readonly source: string })
  | { readonly [K in RowsKeys<R>]: RowsStep<V, R, K> }[RowsKeys<R>]
  | (StepCommon<V> & { readonly kind: 'check'; readonly left: string; readonly right: string; readonly because: string });

interface RowsStep<V, R, K extends keyof R> extends StepCommon<V> {
  readonly kind: 'rows';
  readonly of: K;
  /** Formula a column, in the names of the row's columns, then of the whole calculation. */
  readonly formulas: { readonly [C in keyof RowOf<R[K]>]?: string | Ways<V & RowOf<R[K]>> };
  /** Results that are the sum of a column: in the table's foot. */
  readonly sums?: { readonly [N in NumberKeys<R>]?: keyof RowOf<R[K]> & string };
}

/** Formula templates are full of backslashes. */
export const tex = String.raw;
type FormulaStep<V, K extends string> = StepCommon<V> & { readonly kind: 'formula'; readonly shows: K; readonly ways: Ways<V> };
/** A line of the working: what it gives, the formula, then what happens here in plain words. */
export const formula = <V, const K extends string>(shows: K, template: string, more: StepCommon<NoInfer<V>>): FormulaStep<V, K> => ({
  kind: 'formula',
  shows,
  ways: [{ formula: template }],
  ...more,
});
/** The same where there are several ways to get the number: the first whose condition holds is the one that was used. */
export const byCase = <V, const K extends string>(
  shows: K,
  more: StepCommon<NoInfer<V>> & { readonly ways: Ways<NoInfer<V>> },
): FormulaStep<V, K> => ({ kind: 'formula', shows, ...more });
type LookupStep<V, K extends string> = StepCommon<V> & { readonly kind: 'lookup'; readonly shows: K; readonly source: string };
/** A number or a word read from a table. */
export const lookup = <V, const K extends string>(shows: K, more: StepCommon<NoInfer<V>> & { readonly source: string }): LookupStep<V, K> => ({
  kind: 'lookup',
  shows,
  ...more,
});

type TableStep<V, R, K extends keyof R> = Omit<RowsStep<V, R, K>, 'kind' | 'of'>;
/** A table of the working: the results of that name, with a formula for each column that has one. */
export const tabulate = <V, R, const K extends RowsKeys<R>>(of: K, more: TableStep<NoInfer<V>, NoInfer<R>, K>): RowsStep<V, R, K> => ({
  kind: 'rows',
  of,
  ...more,
});

/** Neighbors that stand in the working under one condition. */
export interface StepGroup<V, R> {
  readonly kind: 'when';
  readonly holds: (values: V) => boolean;
  readonly steps: Working<V, R>;
}
export type Working<V, R> = readonly (Step<V, R> | StepGroup<V, R>)[];
/** `when(isPond, [formula(…), lookup(…)])`: steps that are left out of the working unless this holds. */
export const when = <V, R>(holds: (values: NoInfer<V>) => boolean, steps: Working<NoInfer<V>, NoInfer<R>>): StepGroup<V, R> => ({
  kind: 'when',
  holds,
  steps,
});
/** The steps of a working one after another, each with the conditions of the groups around it. */
export const stepsOf = <V, R>(working: Working<V, R>): readonly Step<V, R>[] =>
  working.flatMap((each): readonly Step<V, R>[] =>
    each.kind === 'when'
      ? stepsOf(each.steps).map((step) => ({ ...step, onlyWhen: (values: V) => each.holds(values) && (step.onlyWhen?.(values) ?? true) }))
      : [each],
  );

/** A step as everyone else sees it: conditions are closed over by `run`. */
export interface PlainWay {
  readonly formula: string;
  readonly because?: string;
}
interface PlainCommon {
  readonly says: string;
  readonly source?: string;
}
export type PlainStep =
  | (PlainCommon & { readonly kind: 'formula'; readonly shows: string; readonly ways: readonly PlainWay[] })
  | (PlainCommon & { readonly kind: 'lookup'; readonly shows: string })
  | (PlainCommon & {
      readonly kind: 'rows';
      readonly of: string;
      readonly formulas: Readonly<Record<string, readonly PlainWay[]>>;
      readonly sums: Readonly<Record<string, string>>;
    })
  | (PlainCommon & { readonly kind: 'check'; readonly left: string; readonly right: string; readonly because: string });

/** Which way was used: `null` where the step does not apply; for rows, a way a row for each column. */
export type StepUse = null | number | Readonly<Record<string, readonly number[]>>;
