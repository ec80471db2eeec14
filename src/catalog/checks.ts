import ts from 'typescript';
import type { CaseList } from '../../calculators/kit/cases.ts';
import { type Check, type CheckList, failing } from '../../calculators/math/checks.ts';

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
  readonly check: Check;
  /** Does a calculator rest on it? Some functions wait for one. */
  readonly isUsed: boolean;
}

/** Every file that some calculator imports, itself or through others. */
function reached(): ReadonlySet<string> {
  const found = new Set<string>();
  const waiting = Object.keys(code).filter((path) => path.startsWith('../../calculators/catalog/'));
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (found.has(path)) continue;
    found.add(path);
    for (const { fileName } of ts.preProcessFile(code[path] ?? '', true, true).importedFiles) {
      const target = new URL(fileName, `file:///src/catalog/${path}`).pathname.replace('/calculators', '../../calculators');
      if (target in code) waiting.push(target);
    }
  }
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

/** Every value that the tests hold against our own, each once: those of functions first, then what a calculator adds. */
export function allChecks(): readonly CheckOf[] {
  const used = reached();
  const ofMath = Object.entries(mathLists).map(([path, { default: list }]) =>
    list.checks.map((check): CheckOf => ({ of: list.of, check, isUsed: used.has(path.replace(/\.cases\.ts$/, '.ts')) })),
  );
  const ofCatalog = Object.values(catalogLists).map(({ default: list }) =>
    list.checks.map((check): CheckOf => ({ of: list.slug, check, isUsed: true })),
  );
  const isUsed = (list: readonly CheckOf[]): boolean => list[0]?.isUsed === true;
  const resting = counted([counted(ofMath.filter(isUsed), cellOf), ...ofCatalog], printOf);
  return counted([resting, ...ofMath.filter((list) => !isUsed(list))], cellOf);
}
/** Read in the source itself or in somebody's copy of it; only these count as values from outside. */
export const isFromOutside = ({ check }: CheckOf): boolean => check.seen === 'print' || check.seen === 'transcription';

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
