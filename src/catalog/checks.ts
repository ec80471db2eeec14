import ts from 'typescript';
import type { CaseList } from '../../calculators/kit/cases.ts';
import { type Check, type CheckList, failing } from '../../calculators/math/checks.ts';
import { calculatorOf } from './catalog.ts';
import { type CheckSubject, checkSubjects, subjectOfMath, subjectOfTopic } from './checkSubjects.ts';

const mathLists = import.meta.glob<{ default: CheckList }>('../../calculators/math/**/*.cases.ts', { eager: true });
const catalogLists = import.meta.glob<{ default: CaseList }>('../../calculators/catalog/*/cases.ts', { eager: true });
const code = import.meta.glob<string>(['../../calculators/{catalog,math,season}/**/*.ts', '!../../calculators/**/{*.cases,cases,edges}.ts'], {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** A value from outside with what it checks: a function of the math package or a calculator. */
export interface CheckOf {
  readonly of: string;
  readonly subject: CheckSubject;
  readonly check: Check;
  /** Does a calculator rest on it? Some functions wait for one. */
  readonly isUsed: boolean;
}

const catalogFolder = '../../calculators/catalog/';
const imported: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  Object.entries(code).map(([path, text]) => [
    path,
    ts
      .preProcessFile(text, true, true)
      .importedFiles.map(({ fileName }) => new URL(fileName, `file:///src/catalog/${path}`).pathname.replace('/calculators', '../../calculators'))
      .filter((target) => target in code),
  ]),
);

/** Every file that the files of a folder import, themselves or through others. */
function reachedFrom(folder: string): ReadonlySet<string> {
  const found = new Set(Object.keys(code).filter((path) => path.startsWith(folder)));
  for (const path of found) for (const target of imported[path] ?? []) found.add(target);
  return found;
}

type NameOf = (check: Check) => string;
const cellOf: NameOf = ({ source, where, printed }) => `${source}, ${where}: ${printed}`;
/** A calculator's case tells the place in its own words, so there the value alone must do: rather one too few than one twice. */
const printOf: NameOf = ({ source, printed }) => `${source}: ${printed}`;

/** Leaves out what was printed once and stands in an earlier list already. Within one list each value is its own. */
function counted(lists: readonly (readonly CheckOf[])[], nameOf: NameOf): readonly CheckOf[] {
  const seen = new Map<string, number>();
  return lists.flatMap((list) => {
    const left = new Map(seen);
    const fresh = list.filter(({ check }) => {
      const times = left.get(nameOf(check)) ?? 0;
      left.set(nameOf(check), times - 1);
      return times <= 0;
    });
    for (const { check } of fresh) seen.set(nameOf(check), (seen.get(nameOf(check)) ?? 0) + 1);
    return fresh;
  });
}

const codeOf = (path: string): string => path.replace(/\.cases\.ts$/, '.ts');

/** Every value that the tests hold against our own, each once: those of functions first, then what a calculator adds. */
function gathered(): readonly CheckOf[] {
  const used = reachedFrom(catalogFolder);
  const ofMath = Object.entries(mathLists).map(([path, { default: list }]) =>
    list.checks.map(
      (check): CheckOf => ({ of: list.of, subject: subjectOfMath(path.split('/').at(-2) ?? ''), check, isUsed: used.has(codeOf(path)) }),
    ),
  );
  const ofCatalog = Object.values(catalogLists).map(({ default: list }) =>
    list.checks.map((check): CheckOf => ({ of: list.slug, subject: subjectOfTopic(calculatorOf(list.slug).topic), check, isUsed: true })),
  );
  const isUsed = (list: readonly CheckOf[]): boolean => list[0]?.isUsed === true;
  const resting = counted([counted(ofMath.filter(isUsed), cellOf), ...ofCatalog], printOf);
  return counted([resting, ...ofMath.filter((list) => !isUsed(list))], cellOf);
}
const all = gathered();
export const allChecks = (): readonly CheckOf[] => all;

/** Read in the source itself or in somebody's copy of it; only these count as values from outside. */
export const isFromOutside = ({ check }: CheckOf): boolean => check.seen === 'print' || check.seen === 'transcription';

/** The values from outside that one calculator rests on: its own, and those of each function that it reaches. */
export function checksBehind(slug: string): readonly CheckOf[] {
  const files = reachedFrom(`${catalogFolder}${slug}/`);
  const functions = new Set(Object.entries(mathLists).flatMap(([path, { default: list }]) => (files.has(codeOf(path)) ? [list.of] : [])));
  return all.filter((each) => isFromOutside(each) && (each.of === slug || functions.has(each.of)));
}

/** By subject, in the order of the subjects, those without any left out. */
export const bySubject = (list: readonly CheckOf[]): readonly (readonly [CheckSubject, readonly CheckOf[]])[] =>
  checkSubjects.flatMap((subject) => {
    const own = list.filter((each) => each.subject === subject);
    return own.length > 0 ? [[subject, own] as const] : [];
  });

/** `1 value`, `12 values`. */
export const countOf = ({ length }: readonly CheckOf[]): string => (length === 1 ? '1 value' : `${length} values`);

export const isPassing = ({ check }: CheckOf): boolean => failing(check) === undefined;

/** Our value with two digits more than the source prints, so that the rounding can be seen. */
export const ourValue = ({ check }: CheckOf): string => {
  const ours = check.ours();
  if (typeof ours === 'string') return ours;
  if (/e/i.test(check.printed)) return ours.toPrecision(6);
  const decimals = check.printed.split('.')[1]?.length ?? 0;
  return ours.toLocaleString('en-US', { minimumFractionDigits: 0, maximumFractionDigits: Math.min(decimals + 2, 12) });
};

/** How a value was come by, in words for people. */
export const seenInWords: Readonly<Record<Check['seen'], string>> = {
  print: 'read in the source',
  transcription: 'read in a copy',
  practice: 'common practice',
  memory: 'from memory',
  computed: 'worked again by another route',
};
