import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { filesBelow, root } from '../support/files.ts';
import { isNarrowed, isWantedPath } from '../support/mutated.ts';

/** What a docstring says of one parameter: `rainIn - Rain, inches; at least 0`. */
interface Range {
  readonly path: readonly [string] | readonly [string, string];
  readonly low?: { readonly at: number; readonly isInside: boolean };
  readonly high?: { readonly at: number; readonly isInside: boolean };
  readonly isWhole: boolean;
}
const number = String.raw`(-?\d[\d,]*(?:\.\d+)?)`;
function boundIn(says: string, inside: RegExp, outside: RegExp): Range['low'] {
  const [taken, kept] = [inside.exec(says)?.slice(1).find(Boolean), outside.exec(says)?.[1]];
  const text = taken ?? kept;
  return text === undefined ? undefined : { at: Number(text.replaceAll(',', '')), isInside: taken !== undefined };
}
function rangesIn(comment: string): readonly Range[] {
  return [...comment.matchAll(/@param (?:(\w+)\.)?(\w+) - ([^;\n]*); ([^;\n]*)/g)].flatMap(([, options, name = '', what = '', says = '']) => {
    const low = boundIn(says, new RegExp(`at least ${number}|${number} or more|^${number} to|, ${number} to`), new RegExp(`above ${number}`));
    const high = boundIn(says, new RegExp(`at most ${number}|to ${number}$`), new RegExp(`below ${number}`));
    const isWhole = /(?:^|, )a whole number/.test(says) || /, (?:a )?whole(?: number| days)?$/.test(what);
    if (!low && !high && !isWhole) return [];
    const path = options === undefined ? ([name] as const) : ([options, name] as const);
    return [{ path, isWhole, ...(low ? { low } : {}), ...(high ? { high } : {}) }];
  });
}

interface Documented {
  readonly name: string;
  readonly parameters: readonly string[];
  readonly ranges: readonly Range[];
  readonly example: string;
}
function functionsOf(path: string): readonly Documented[] {
  const text = readFileSync(join(root, path), 'utf8');
  return ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true).statements.flatMap((statement) => {
    if (!ts.isFunctionDeclaration(statement) || !statement.name) return [];
    const range = ts.getLeadingCommentRanges(text, statement.getFullStart())?.at(-1);
    const comment = range ? text.slice(range.pos, range.end) : '';
    const name = statement.name.text;
    const example = new RegExp(`@example .*?\\b${name}\\((.*)\\).*? //=>`).exec(comment)?.[1];
    return example === undefined
      ? []
      : [{ name, parameters: statement.parameters.map((each) => each.name.getText()), ranges: rangesIn(comment), example }];
  });
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value);
// Options are written `{ areaAc, … }` in the head of the function and `options.areaAc` in its docstring.
const placeOf = ({ parameters }: Documented, { path: [first, key] }: Range): number =>
  key === undefined ? parameters.indexOf(first) : parameters.findIndex((name) => name === first || name.startsWith('{'));
/** The example's own number. */
function numberAt(documented: Documented, given: readonly unknown[], range: Range): number {
  const old = given[placeOf(documented, range)];
  const key = range.path[1];
  return Number(key !== undefined && isRecord(old) ? old[key] : old);
}
/** The example's arguments with one number in another's place; nothing if it is not there or is no number. */
function argumentsWith(documented: Documented, given: readonly unknown[], range: Range, value: number): readonly unknown[] | undefined {
  const at = placeOf(documented, range);
  const key = range.path[1];
  const old = given[at];
  if (key === undefined) return typeof old === 'number' ? given.with(at, value) : undefined;
  return isRecord(old) && typeof old[key] === 'number' ? given.with(at, { ...old, [key]: value }) : undefined;
}

const paths = filesBelow('calculators/math', /(?<!\.cases)\.ts$/).filter((path) => !/\/(?:need|checks)\.ts$/.test(path) && isWantedPath(path));
let held = 0;

it.each(paths)('%s refuses what its docstring rules out, and nothing else', async (path) => {
  const exported: Readonly<Record<string, unknown>> = await import(join(root, path));
  const names = Object.keys(exported);
  for (const documented of functionsOf(path)) {
    const call = exported[documented.name];
    if (typeof call !== 'function') continue;
    let given: readonly unknown[];
    try {
      given = new Function(...names, `return [${documented.example}]`)(...names.map((each) => exported[each]));
    } catch {
      // An example that calls twice or goes on is run by the docstrings' own test.
      continue;
    }
    for (const range of documented.ranges) {
      const parameter = range.path.at(-1) ?? '';
      const outcome = (value: number): string => {
        const args = argumentsWith(documented, given, range, value);
        if (!args) return 'not given';
        try {
          call(...args);
          return 'taken';
        } catch (error) {
          return error instanceof RangeError ? error.message : `no RangeError: ${String(error)}`;
        }
      };
      if (outcome(Number.NaN) === 'not given') continue;
      held++;
      const refused = (value: number): void =>
        expect(outcome(value), `${documented.name} with ${parameter} ${value}`).toMatch(/ needs | outside | must /);
      const notBlamed = (value: number): void =>
        expect(outcome(value), `${documented.name} with ${parameter} ${value}`).not.toContain(`${documented.name} needs ${parameter} `);
      refused(Number.NaN);
      const step = range.isWhole ? 1 : 1e-7;
      for (const [bound, outward] of [
        [range.low, -step],
        [range.high, step],
      ] as const) {
        if (!bound) continue;
        refused(bound.isInside ? bound.at + outward : bound.at);
        notBlamed(bound.isInside ? bound.at : bound.at - outward);
      }
      // Half of one past the example, which lies inside whatever bounds there are.
      if (range.isWhole) refused(numberAt(documented, given, range) + 0.5);
    }
  }
});

it.skipIf(isNarrowed)('holds most of the ranges that are written', () => {
  expect(held).toBeGreaterThan(300);
});
