// Stands in place of Vitest where many mutants share one process (see inProcess.ts): it keeps the tests instead of running them.
import { expect } from 'vitest';

export interface Collected {
  readonly id: string;
  readonly run: () => unknown;
}
export const collected: Collected[] = [];
const path: string[] = [];
const taken = new Map<string, number>();

type Body = (...given: never[]) => unknown;
const told = (value: unknown): string => (typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value))).slice(0, 80);
const bodyOf = (rest: readonly unknown[]): Body => {
  const body = rest.find((each) => typeof each === 'function');
  if (body === undefined) throw new TypeError('a test needs a body');
  return body as Body;
};
/** `$slug` and `%s` are not filled in: the row's place tells the tests apart. */
function each(add: (name: string, ...rest: unknown[]) => void) {
  return (rows: readonly unknown[]) =>
    (name: string, ...rest: unknown[]): void => {
      for (const [at, row] of rows.entries()) {
        const body = bodyOf(rest);
        const given = (Array.isArray(row) ? row : [row]) as never[];
        add(`${name} [${at} ${told(row)}]`, () => body(...given));
      }
    };
}
function addGroup(name: string, ...rest: unknown[]): void {
  path.push(name);
  bodyOf(rest)();
  path.pop();
}
function addTest(name: string, ...rest: unknown[]): void {
  const full = [...path, name].join(' > ');
  const times = taken.get(full) ?? 0;
  taken.set(full, times + 1);
  collected.push({ id: times === 0 ? full : `${full} (${times + 1})`, run: bodyOf(rest) });
}
const skip = (): void => undefined;

export const describe = Object.assign(addGroup, { each: each(addGroup) });
export const it = Object.assign(addTest, { each: each(addTest), skipIf: (isLeftOut: boolean) => (isLeftOut ? skip : addTest) });
export const test = it;
export { expect };
