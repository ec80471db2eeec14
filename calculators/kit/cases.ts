import type { Calculator, Outcome } from './define.ts';
import { fromLink } from './openLink.ts';
import type { Scalar } from './quantities.ts';
import { type Ran, runTexts } from './runTexts.ts';

/** A worked example from outside: what to type, and what the source prints. Never made by our own code. */
export interface Case {
  readonly name: string;
  /** A link's query; what it leaves out holds its default. */
  readonly query: string;
  /** Records by the name of their input, as a person would paste them: a link has none. */
  readonly records?: Readonly<Record<string, string>>;
  /** Results by name, `moves.0.lookDay` for a row's cell, as the source prints them, in the declared unit. The tolerance is half the last digit. */
  readonly expect: Readonly<Record<string, string>>;
  /** Key of a file in `content/sources`. */
  readonly source: string;
  readonly where: string;
  /** How the print was come by, as in the math package's checks. */
  readonly seen: 'print' | 'transcription' | 'practice' | 'memory' | 'computed';
  readonly differs?: { readonly by: string; readonly because: string };
}
export interface CaseList {
  readonly slug: string;
  readonly cases: readonly Case[];
  readonly checks: readonly (Omit<Case, 'name' | 'query' | 'records' | 'expect'> & {
    readonly what: string;
    readonly printed: string;
    readonly ours: () => Scalar;
  })[];
}

/** Runs one query from beginning to end. */
export const runLink = (calculator: Calculator, query: string, records: Case['records'] = {}): Ran =>
  runTexts(calculator, { ...fromLink(calculator, query).form.this, ...records });

/**
 * The same where it must compute.
 * @throws RangeError with the message for people if the query does not compute
 */
export function runQuery(calculator: Calculator, query: string, records: Case['records'] = {}): Outcome {
  const run = runLink(calculator, query, records);
  if ('refusals' in run) throw new RangeError(run.refusals.map(({ at, say }) => `${calculator.slug}, ${at}: ${say}`).join(' '));
  return run.outcome;
}

/** A result by its path; numbers, days and words only. */
export function resultAt(outcome: Outcome, path: string): Scalar {
  let here: unknown = outcome.values;
  for (const part of path.split('.')) here = typeof here === 'object' && here !== null ? new Map(Object.entries(here)).get(part) : undefined;
  if (typeof here !== 'number' && typeof here !== 'string') throw new RangeError(`resultAt needs the path of a number or a word, got "${path}"`);
  return here;
}

export const defineCases = (calculator: Calculator, cases: readonly Case[]): CaseList => ({
  slug: calculator.slug,
  cases,
  checks: cases.flatMap(({ name, query, records, expect, ...from }) => {
    // Some run long: once for all figures of a case.
    let outcome: Outcome | undefined;
    const run = (): Outcome => {
      outcome ??= runQuery(calculator, query, records);
      return outcome;
    };
    return Object.entries(expect).map(([path, printed]) => ({ ...from, what: `${name}: ${path}`, printed, ours: () => resultAt(run(), path) }));
  }),
});
